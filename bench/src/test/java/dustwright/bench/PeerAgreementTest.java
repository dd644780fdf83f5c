package dustwright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dustwright.engine.network.LegResult;
import dustwright.engine.network.Network;
import dustwright.engine.network.StateSweep;
import dustwright.engine.plant.Plant;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
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
        assumeTrue(Files.isExecutable(Path.of(PYTHON)) && run("-c", "import numba, scipy") == 0, "python peers");
        Plant plant = TreePlants.plant(5, 12);
        int[][] states = TreePlants.states(24, 60, 4, 7);
        Path input = folder.resolve("tree.json");
        Files.writeString(input, new PeerInput(plant).json(states));
        assertThat(run("peers/tree_scipy.py", input.toString(), "answers")).isZero();

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
                assertThat(hoseFlow_kgPerS(
                                sweep, plant.inlets().get(states[n][user]).id()))
                        .isCloseTo(theirs_kgPerS, within(FLOW_AGREEMENT * theirs_kgPerS));
            }
        }
    }

    private static double hoseFlow_kgPerS(StateSweep sweep, String inlet) {
        for (int piece = 0; piece < sweep.pieces(); piece++) {
            if (sweep.kind(piece) == LegResult.Kind.HOSE && sweep.id(piece).equals(inlet)) {
                return sweep.flow_kgPerS(piece);
            }
        }
        throw new AssertionError("no hose at " + inlet);
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
