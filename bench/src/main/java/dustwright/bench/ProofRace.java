package dustwright.bench;

import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Promela;
import dustwright.engine.interlock.Proof;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.interlock.Spin;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Proves default sequences, and lets SPIN search the same assignments: {@code ProofRace [VARIANT...]}. Ours first, one fresh Java per variant, begun as the launcher begins it, wall
 * time from its start to its end; then SPIN, one variant after the other on one core, generating and compiling its program not counted.
 */
public final class ProofRace {
    /** The usual with every single option; besides, each discharge, with and without shut-off valve and purge, bare and with all options together. */
    private static final int[] DEFAULTS = {
        0, 1, 2, 4, 8, 16, 32, 62, 63, 64, 126, 127, 128, 190, 192, 254, 255, 256, 318, 384, 447, 448, 510, 512, 574,
        576, 639, 640, 703, 704, 767
    };

    private ProofRace() {}

    public static void main(String[] args) throws IOException {
        if (args.length == 2 && args[0].equals("one")) {
            Proof proof = Proof.of(sequence(Integer.parseInt(args[1])), Proof.Adversary.PLAIN);
            System.out.printf("%d states, %s", proof.states(), proof.broken().isEmpty() ? "all holds" : proof.broken());
            return;
        }
        int[] variants = args.length == 0
                ? DEFAULTS
                : Arrays.stream(args).mapToInt(Integer::parseInt).toArray();
        String[] ours = new String[variants.length];
        double slowest_s = 0;
        for (int i = 0; i < variants.length; i++) {
            long begun = System.nanoTime();
            String said = alone(variants[i]);
            double took_s = (System.nanoTime() - begun) / 1e9;
            slowest_s = Math.max(slowest_s, took_s);
            ours[i] = String.format(Locale.ROOT, "variant %d: %s, ours %.2f s", variants[i], said, took_s);
            System.out.println(ours[i]);
        }
        System.out.printf(Locale.ROOT, "ours, slowest of %d variants: %.2f s%n", variants.length, slowest_s);
        Path folder = Files.createTempDirectory("spin");
        IntStream.range(0, variants.length)
                .forEach(i -> System.out.println(ours[i] + ", SPIN " + spin(folder, variants[i])));
    }

    private static Sequence sequence(int variant) {
        return DefaultSequence.of("x", Options.numbered(variant));
    }

    private static String spin(Path folder, int variant) {
        try {
            Spin spin = Spin.of(Promela.of(sequence(variant), Optional.empty()), folder);
            return String.format(
                    Locale.ROOT,
                    "%.2f s, %d states, %s",
                    spin.took_s(),
                    spin.states(),
                    spin.whole() ? "no error" : "NOT WHOLE OR AN ERROR");
        } catch (IOException | InterruptedException e) {
            return "failed: " + e.getMessage();
        }
    }

    /** States, and whether all properties hold, from a Java of its own. */
    private static String alone(int variant) throws IOException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        ProofRace.class.getName(),
                        "one",
                        Integer.toString(variant))
                .redirectErrorStream(true)
                .start();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).trim();
    }
}
