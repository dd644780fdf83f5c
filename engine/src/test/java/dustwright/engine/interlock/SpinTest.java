package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A second opinion: SPIN searches the same assignments, written out as Promela, and comes to the same number of states and the same verdict. */
class SpinTest {
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
        Spin spin = spin(Promela.of(sequence, Optional.empty()));

        assertThat(spin.whole()).as(spin.text()).isTrue();
        assertThat(spin.states()).isEqualTo(ours.states());
        System.out.printf(
                "variant %d: %d states; ours %.1f s, SPIN %.2f s%n", variant, ours.states(), ours_s, spin.took_s());
    }

    @Test
    void spin_finds_the_same_property_broken_in_a_mutant() throws Exception {
        Sequence whole = DefaultSequence.of("x", Options.USUAL);
        Sequence mutant = Mutants.withCauses(
                whole,
                whole.causes().stream().filter(c -> !c.name().equals("blocked")).toList());

        assertThat(Proof.of(mutant, Proof.Adversary.PLAIN).broken()).contains("pump-side");
        assertThat(spin(Promela.of(mutant, Optional.empty())).text()).contains("assertion violated");
    }

    private Spin spin(String promela) throws IOException, InterruptedException {
        assumeTrue(Spin.isThere(), "SPIN or gcc is not installed");
        return Spin.of(promela, folder);
    }
}
