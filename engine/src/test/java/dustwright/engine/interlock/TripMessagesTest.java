package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Trips that stop the same are one to the search; that each is told as itself is judged beside it. */
class TripMessagesTest {
    private static final Sequence WHOLE = DefaultSequence.of("bag", Options.USUAL);

    @Test
    void every_default_variant_tells_each_trip_as_itself() {
        for (int variant = 0; variant < Options.COUNT; variant++) {
            assertThat(TripMessages.judged(DefaultSequence.of("x", Options.numbered(variant))))
                    .as("variant %d", variant)
                    .isEqualTo(Story.NONE);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "estop, fire",
        "guard, rotor_drive",
        "blocked, high_too_often",
        "vent_stuck, dust_behind_filter",
        "rotor_stands, rotor_undriven",
        "overload, winding"
    })
    void two_trips_that_are_told_crosswise_are_noticed(String one, String other) {
        Proof proof = Proof.of(swapped(one, other), Proof.Adversary.PLAIN);
        assertThat(proof.broken()).containsExactly("message-trips");
        assertThat(proof.holds()).isFalse();
    }

    private static Sequence swapped(String one, String other) {
        return Mutants.withCauses(
                WHOLE,
                WHOLE.causes().stream()
                        .map(c -> c.name().equals(one)
                                ? withWhen(c, cause(other).when())
                                : c.name().equals(other)
                                        ? withWhen(c, cause(one).when())
                                        : c)
                        .toList());
    }

    private static Sequence.Cause cause(String name) {
        return WHOLE.causes().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Sequence.Cause withWhen(Sequence.Cause cause, Expr when) {
        return new Sequence.Cause(
                cause.name(),
                when,
                cause.demands(),
                cause.latched(),
                cause.priority(),
                cause.message(),
                cause.consequence(),
                cause.response());
    }
}
