package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A second opinion: SPIN searches the same assignments, written out as Promela, and comes to the same number of states and the same verdict.
 * What SPIN prints is read as its manual says: "errors: 0" alone is no proof, "max search depth too small" makes it none.
 */
class SpinTest {
    private static final Pattern STATES = Pattern.compile("(\\d+) states, stored");
    private static final Pattern SECONDS = Pattern.compile("elapsed time ([0-9.]+)");

    /** One of each kind in every run; the largest, which take SPIN minutes each, when asked for. */
    static IntStream variants() {
        IntStream each = IntStream.of(0, 128, 190, 384);
        return Boolean.getBoolean("dustwright.spin.all")
                ? IntStream.concat(each, IntStream.of(14, 31, 32, 64, 192, 639, 766))
                : each;
    }

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    @ParameterizedTest
    @MethodSource("variants")
    void spin_finds_as_many_states_and_no_error(int variant) throws Exception {
        Sequence sequence = DefaultSequence.of("x", Options.numbered(variant));
        long begun = System.nanoTime();
        Proof ours = Proof.of(sequence, Proof.Adversary.PLAIN);
        double ours_s = (System.nanoTime() - begun) / 1e9;
        String said = spin(Promela.of(sequence, Optional.empty()));

        assertThat(said)
                .contains("errors: 0")
                .doesNotContain("max search depth too small")
                .doesNotContain("assertion violated");
        assertThat(states(said)).isEqualTo(ours.states());
        Matcher seconds = SECONDS.matcher(said);
        System.out.printf(
                "variant %d: %d states; ours %.1f s, SPIN %s s%n",
                variant, ours.states(), ours_s, seconds.find() ? seconds.group(1) : "0");
    }

    @Test
    void spin_finds_the_same_property_broken_in_a_mutant() throws Exception {
        Sequence whole = DefaultSequence.of("x", Options.USUAL);
        Sequence mutant = Mutants.withCauses(
                whole,
                whole.causes().stream().filter(c -> !c.name().equals("blocked")).toList());

        assertThat(Proof.of(mutant, Proof.Adversary.PLAIN).broken()).contains("pump-side");
        assertThat(spin(Promela.of(mutant, Optional.empty()))).contains("assertion violated");
    }

    private static int states(String said) {
        Matcher states = STATES.matcher(said);
        assertThat(states.find()).isTrue();
        return Integer.parseInt(states.group(1));
    }

    private String spin(String promela) throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/spin")), "SPIN is not installed");
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/gcc")), "gcc is not installed");
        Files.writeString(folder.resolve("model.pml"), promela);
        run("spin", "-a", "model.pml");
        run("gcc", "-O2", "-DSAFETY", "-DNOREDUCE", "-DMEMLIM=3000", "-o", "pan", "pan.c");
        return run(folder.resolve("pan").toString(), "-m4000000", "-n");
    }

    private String run(String... command) throws IOException, InterruptedException {
        Path said = folder.resolve("said.txt");
        Process process = new ProcessBuilder(List.of(command))
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor(10, TimeUnit.MINUTES)).isTrue();
        String text = Files.readString(said, StandardCharsets.UTF_8);
        assertThat(process.exitValue()).as(text).isZero();
        return text;
    }
}
