package dustwright.engine.hazard;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.quantity.OutOfRangeException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds both vent methods against a script written apart from them, over a grid that reaches past every range. */
class VentPeerTest {
    private static final Path PYTHON = Path.of("/usr/bin/python3");
    private static final Path SCRIPT = Path.of("..", "bench", "peers", "vent_peer.py");
    private static final double BAR_Pa = 100_000;
    private static final double[] VOLUMES_m3 = {0.05, 0.1, 0.7, 4.5, 30, 1000, 20_000};
    private static final double[] KSTS_barMPerS = {5, 30, 150, 300, 415, 850};
    private static final double[] GREATEST_bar = {4, 7, 9.5, 11, 13};
    private static final double[] OPENS_bar = {0.05, 0.1, 0.5};
    private static final double[] REDUCED_bar = {0.08, 0.25, 0.6, 1.5};
    private static final double[] SLENDERNESSES = {1, 2.5, 7};
    private static final double DUCT_m = 1.5;
    private static final double DUCT_K = 1.8;

    @TempDir
    Path folder;

    @Test
    void both_methods_agree_with_the_script_on_number_and_refusal_over_a_grid() throws Exception {
        List<Explosion> cases = cases();
        assertThat(cases).hasSizeGreaterThan(5000);
        List<String> answers = ask(cases);
        assertThat(answers).hasSameSizeAs(cases);
        int numbers = 0;
        for (int n = 0; n < cases.size(); n++) {
            Explosion e = cases.get(n);
            String[] theirs = answers.get(n).split(" ");
            OptionalDouble nfpa = asked(() -> VentNfpa68.area_m2(e));
            numbers += same(e + " EN 14491", asked(() -> VentEn14491.area_m2(e)), theirs[0], 1e-12);
            numbers += same(e + " NFPA 68", nfpa, theirs[1], 1e-12);
            OptionalDouble ducted = nfpa.isPresent()
                    ? VentNfpa68.withDuct_m2(e, nfpa.getAsDouble(), DUCT_m, DUCT_K)
                    : OptionalDouble.empty();
            numbers += same(e + " NFPA 68 with duct", ducted, theirs[2], 1e-9);
        }
        assertThat(numbers).isGreaterThan(2000);
        System.out.println(
                "[peer] vent_peer.py: " + cases.size() + " points, " + numbers + " areas agree, all refusals too");
    }

    private static int same(String what, OptionalDouble ours, String theirs, double relative) {
        assertThat(ours.isEmpty()).as(what + ": " + ours + " against " + theirs).isEqualTo(theirs.equals("-"));
        if (ours.isEmpty()) {
            return 0;
        }
        assertClose(what, ours.getAsDouble(), Double.parseDouble(theirs), relative);
        return 1;
    }

    private static OptionalDouble asked(Supplier<Double> area) {
        try {
            return OptionalDouble.of(area.get());
        } catch (OutOfRangeException outside) {
            return OptionalDouble.empty();
        }
    }

    private static List<Explosion> cases() {
        List<Explosion> cases = new ArrayList<>();
        for (double v : VOLUMES_m3) {
            for (double kst : KSTS_barMPerS) {
                for (double greatest : GREATEST_bar) {
                    for (double opens : OPENS_bar) {
                        for (double reduced : REDUCED_bar) {
                            for (double slender : SLENDERNESSES) {
                                cases.add(new Explosion(
                                        v, kst * BAR_Pa, greatest * BAR_Pa, opens * BAR_Pa, reduced * BAR_Pa, slender));
                            }
                        }
                    }
                }
            }
        }
        return cases;
    }

    private List<String> ask(List<Explosion> cases) throws IOException, InterruptedException {
        List<String> lines = cases.stream()
                .map(e -> String.format(
                        Locale.ROOT,
                        "%.17g %.17g %.17g %.17g %.17g %.17g %s %s",
                        e.volume_m3(),
                        e.kst_barMPerS(),
                        e.greatest_bar(),
                        e.opens_bar(),
                        e.reduced_bar(),
                        e.slenderness(),
                        DUCT_m,
                        DUCT_K))
                .toList();
        if (!Files.isExecutable(PYTHON)) {
            System.out.println("[peer] NOT COMPARED with vent_peer.py: there is no " + PYTHON);
            Assumptions.abort("there is no " + PYTHON);
        }
        Path in = Files.write(folder.resolve("cases.txt"), lines);
        Path out = folder.resolve("answers.txt");
        Path errors = folder.resolve("errors.txt");
        int status = new ProcessBuilder(PYTHON.toString(), SCRIPT.toString())
                .redirectInput(in.toFile())
                .redirectOutput(out.toFile())
                .redirectError(errors.toFile())
                .start()
                .waitFor();
        assertThat(status).as(Files.readString(errors)).isZero();
        return Files.readAllLines(out, StandardCharsets.UTF_8);
    }
}
