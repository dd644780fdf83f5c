package dustwright.engine.interlock;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * SPIN as another program that searches the same assignments. What it prints is read as its manual says: "errors: 0" alone is no proof, "max
 * search depth too small" makes it none.
 *
 * @param whole whether every state was visited and no property was broken
 * @param states that it stored
 * @param took_s time of the search alone, without making its program
 * @param text all that it printed
 */
public record Spin(boolean whole, int states, double took_s, String text) {
    private static final Pattern STATES = Pattern.compile("(\\d+) states, stored");
    private static final Pattern SECONDS = Pattern.compile("elapsed time ([0-9.]+)");
    private static final int LONGEST_min = 20;

    /** Whether it can be asked on this machine. */
    public static boolean isThere() {
        return Files.isExecutable(Path.of("/usr/bin/spin")) && Files.isExecutable(Path.of("/usr/bin/gcc"));
    }

    /** Lets it search a model, in a folder of its own. */
    public static Spin of(String promela, Path folder) throws IOException, InterruptedException {
        Files.writeString(folder.resolve("model.pml"), promela);
        run(folder, "spin", "-a", "model.pml");
        run(folder, "gcc", "-O2", "-DSAFETY", "-DNOREDUCE", "-DMEMLIM=3000", "-o", "pan", "pan.c");
        String said = run(folder, folder.resolve("pan").toString(), "-m4000000", "-n");
        return new Spin(
                said.contains("errors: 0")
                        && !said.contains("max search depth too small")
                        && !said.contains("assertion violated"),
                Integer.parseInt(found(STATES, said)),
                Double.parseDouble(found(SECONDS, said)),
                said);
    }

    private static String found(Pattern pattern, String said) {
        Matcher matcher = pattern.matcher(said);
        return matcher.find() ? matcher.group(1) : "0";
    }

    private static String run(Path folder, String... command) throws IOException, InterruptedException {
        Path said = folder.resolve("said.txt");
        Process process = new ProcessBuilder(List.of(command))
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        if (!process.waitFor(LONGEST_min, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new IOException(command[0] + " took longer than " + LONGEST_min + " min");
        }
        String text = Files.readString(said, StandardCharsets.UTF_8);
        if (process.exitValue() != 0) {
            throw new IOException(text);
        }
        return text;
    }
}
