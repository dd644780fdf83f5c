package dustwright.engine.conveying;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds the saltation laws and the terminal velocity against python3-fluids, which is a program by others. */
class SaltationPeerTest {
    private static final Path PYTHON = Path.of("/usr/bin/python3");
    private static final Path SCRIPT = Path.of("..", "bench", "peers", "saltation_peer.py");
    private static final int LIBRARY_MISSING = 3;
    private static final int CASES = 1000;

    @TempDir
    Path folder;

    @Test
    void agrees_with_python3_fluids_to_one_in_a_million_over_a_thousand_streams() throws Exception {
        double[][] cases = cases();
        List<String> answers = ask(cases);
        assertThat(answers).hasSize(CASES);
        for (int n = 0; n < CASES; n++) {
            double[] c = cases[n];
            double[] ours = {
                Saltation.rizk_mPerS(c[0], c[2], c[3], c[4]),
                Saltation.matsumoto1974_mPerS(c[0], c[1], c[2], c[3], c[4], c[6]),
                Saltation.matsumoto1975_mPerS(c[0], c[1], c[2], c[3], c[4], c[6]),
                Saltation.matsumoto1977_mPerS(c[0], c[1], c[2], c[3], c[4], c[6]),
                Saltation.schade_mPerS(c[0], c[1], c[2], c[3], c[4]),
                Saltation.weber_mPerS(c[0], c[2], c[3], c[4], c[6]),
                Saltation.geldartLing_mPerS(c[0], c[3], c[4], c[5]),
                TerminalVelocity.ofSphere(Streams.particle(c[2], c[1]), c[3], c[5])
                        .metresPerSecond()
            };
            String[] theirs = answers.get(n).split(" ");
            assertThat(theirs).hasSize(ours.length);
            for (int law = 0; law < ours.length; law++) {
                assertClose("case " + n + " law " + law, ours[law], Double.parseDouble(theirs[law]), 1e-6);
            }
        }
        System.out.println("[peer] python3-fluids: " + CASES + " streams, 8 laws each, agree to 1e-6");
    }

    private static double[][] cases() {
        SplittableRandom random = new SplittableRandom(20261125);
        double[][] cases = new double[CASES][];
        for (int n = 0; n < CASES; n++) {
            cases[n] = new double[] {
                between(random, 1e-3, 3),
                between(random, 200, 9000),
                between(random, 2e-5, 5e-3),
                between(random, 0.4, 1.4),
                between(random, 0.025, 0.3),
                between(random, 1.6e-5, 2.1e-5),
                between(random, 0.02, 15)
            };
        }
        return cases;
    }

    /** Even in the logarithm. */
    private static double between(SplittableRandom random, double least, double most) {
        return least * Math.pow(most / least, random.nextDouble());
    }

    private List<String> ask(double[][] cases) throws IOException, InterruptedException {
        List<String> lines = new ArrayList<>();
        for (double[] c : cases) {
            StringBuilder line = new StringBuilder();
            for (double value : c) {
                line.append(String.format(Locale.ROOT, "%.17g ", value));
            }
            lines.add(line.toString());
        }
        Path in = Files.write(folder.resolve("cases.txt"), lines);
        Path out = folder.resolve("answers.txt");
        Path errors = folder.resolve("errors.txt");
        if (!Files.isExecutable(PYTHON)) {
            skip("there is no " + PYTHON);
        }
        int status = new ProcessBuilder(PYTHON.toString(), SCRIPT.toString())
                .redirectInput(in.toFile())
                .redirectOutput(out.toFile())
                .redirectError(errors.toFile())
                .start()
                .waitFor();
        if (status == LIBRARY_MISSING) {
            skip("python module fluids is not installed");
        }
        assertThat(status).as(Files.readString(errors)).isZero();
        return Files.readAllLines(out, StandardCharsets.UTF_8);
    }

    private static void skip(String why) {
        System.out.println("[peer] NOT COMPARED with python3-fluids: " + why);
        Assumptions.abort(why);
    }
}
