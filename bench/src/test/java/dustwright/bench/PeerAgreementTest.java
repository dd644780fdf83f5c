package dustwright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dustwright.engine.network.Network;
import dustwright.engine.network.StateSweep;
import dustwright.engine.plant.Plant;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A race is worth something only between routes that give the same answer. Needs Debian's python3-numba and python3-scipy. */
class PeerAgreementTest {
    private static final String PYTHON = "/usr/bin/python3";
    private static final double BAROMETER_Pa = 101_325;
    private static final double FLOW_AGREEMENT = 1e-9;

    @TempDir
    Path folder = Path.of("");

    @Test
    void folded_states_equal_those_of_the_scipy_script() throws IOException, InterruptedException {
        assertAgrees("peers/tree_scipy.py", "own");
    }

    @Test
    void folded_states_and_their_slowest_velocities_equal_those_of_the_compiled_peer()
            throws IOException, InterruptedException {
        assertAgrees("peers/tree_numba.py", "lent-slowest");
    }

    private void assertAgrees(String script, String variant) throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of(PYTHON)) && run("-c", "import numba, scipy") == 0, "python peers");
        Plant plant = TreePlants.plant(5, 12);
        int[][] states = TreePlants.states(24, 60, 4, 7);
        Path input = folder.resolve("tree.json");
        Files.writeString(input, new PeerInput(plant).json(states));
        assertThat(run(script, input.toString(), "answers", variant)).isZero();

        String text = Files.readString(folder.resolve("out")).strip();
        String[] rows = text.substring(2, text.length() - 2).split("\\], \\[", -1);
        assertThat(rows).hasSize(states.length);
        StateSweep sweep = new StateSweep(Network.compile(plant), TreePlants.state(plant));
        for (int n = 0; n < states.length; n++) {
            double[] answer = Arrays.stream(rows[n].split(", ", -1))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            assertThat(sweep.solve(states[n])).isEmpty();
            assertThat(sweep.receiver_Pa()).isCloseTo(answer[0], within(1e-10 * BAROMETER_Pa));
            for (int user = 0; user < 4; user++) {
                double theirs_kgPerS = answer[2 + user];
                assertThat(sweep.inletFlow_kgPerS(user))
                        .isCloseTo(theirs_kgPerS, within(FLOW_AGREEMENT * theirs_kgPerS));
            }
            if (variant.endsWith("slowest")) {
                double slowest_mPerS = IntStream.range(0, sweep.pieces())
                        .mapToDouble(sweep::slowest_mPerS)
                        .min()
                        .orElseThrow();
                assertThat(slowest_mPerS).isCloseTo(answer[6], within(FLOW_AGREEMENT * slowest_mPerS));
            }
        }
    }

    private int run(String... arguments) throws IOException, InterruptedException {
        String[] command = new String[arguments.length + 1];
        command[0] = PYTHON;
        System.arraycopy(arguments, 0, command, 1, arguments.length);
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectOutput(folder.resolve("out").toFile())
                .redirectError(folder.resolve("err").toFile());
        builder.environment().put("PYTHONDONTWRITEBYTECODE", "1");
        builder.environment().put("PYTHONIOENCODING", StandardCharsets.UTF_8.name());
        return builder.start().waitFor();
    }
}
