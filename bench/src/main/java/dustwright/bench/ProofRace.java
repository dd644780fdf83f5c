package dustwright.bench;

import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Promela;
import dustwright.engine.interlock.Proof;
import dustwright.engine.interlock.Sequence;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Proves default sequences, and lets SPIN search the same assignments: {@code ProofRace [VARIANT...]}. Ours first, one fresh Java per variant, wall
 * time from its start to its end; then SPIN, one variant after the other on one core, generating and compiling its program not counted.
 */
public final class ProofRace {
    private static final Pattern STATES = Pattern.compile("(\\d+) states, stored");
    private static final Pattern SECONDS = Pattern.compile("elapsed time ([0-9.]+)");
    /** Discharge by valve, gates, or not at all; of each the usual, every single option, and all together. */
    private static final int[] DEFAULTS = {
        0, 1, 2, 4, 8, 16, 32, 62, 63, 64, 126, 127, 128, 190, 192, 254, 255, 256, 318, 384, 447, 448, 510, 512, 574,
        576, 639, 640, 703, 704, 767
    };

    private ProofRace() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        if (args.length == 2 && args[0].equals("one")) {
            Proof proof = Proof.of(sequence(Integer.parseInt(args[1])), Proof.Adversary.PLAIN);
            System.out.printf("%d %b", proof.states(), proof.broken().isEmpty());
            return;
        }
        int[] variants = args.length == 0
                ? DEFAULTS
                : Arrays.stream(args).mapToInt(Integer::parseInt).toArray();
        String[] ours = new String[variants.length];
        double slowest_s = 0;
        for (int i = 0; i < variants.length; i++) {
            long begun = System.nanoTime();
            String said = run(
                    Path.of("."),
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-cp",
                    System.getProperty("java.class.path"),
                    ProofRace.class.getName(),
                    "one",
                    Integer.toString(variants[i]));
            double took_s = (System.nanoTime() - begun) / 1e9;
            slowest_s = Math.max(slowest_s, took_s);
            ours[i] = String.format(
                    Locale.ROOT,
                    "variant %d: states and all properties hold: %s, ours %.2f s",
                    variants[i],
                    said.trim(),
                    took_s);
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
            Files.writeString(folder.resolve("model.pml"), Promela.of(sequence(variant), Optional.empty()));
            run(folder, "spin", "-a", "model.pml");
            run(folder, "gcc", "-O2", "-DSAFETY", "-DNOREDUCE", "-DMEMLIM=3000", "-o", "pan", "pan.c");
            String said = run(folder, folder.resolve("pan").toString(), "-m4000000", "-n");
            return found(SECONDS, said) + " s, " + found(STATES, said) + " states, "
                    + (said.contains("errors: 0") && !said.contains("max search depth too small")
                            ? "no error"
                            : "NOT WHOLE OR AN ERROR");
        } catch (IOException | InterruptedException e) {
            return "failed: " + e.getMessage();
        }
    }

    private static String found(Pattern pattern, String said) {
        Matcher matcher = pattern.matcher(said);
        return matcher.find() ? matcher.group(1) : "0";
    }

    private static String run(Path folder, String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IOException(said);
        }
        return said;
    }
}
