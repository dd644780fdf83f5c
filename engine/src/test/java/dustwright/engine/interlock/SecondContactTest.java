package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A second contact of what trips bears the name of the first with a number, and is judged as the first is. */
class SecondContactTest {
    private static final Sequence WHOLE = DefaultSequence.of("two chains", Options.USUAL);

    @ParameterizedTest
    @CsvSource({"estop_ok, estop", "guard_shut, guard"})
    void each_of_two_contacts_is_asked_of_what_asks_for_the_first(String first, String cause) {
        Sequence both = with(first, cause, "not " + first + " or not " + first + "_2");
        Proof proof = Proof.of(both, Proof.Adversary.PLAIN);
        assertThat(proof.verdicts())
                .allSatisfy(v -> assertThat(v.holds()).as(v.property().id()).isTrue());
        assertThat(proof.unjudged()).doesNotContain(first + "_2");
    }

    @Test
    void a_second_contact_that_stops_nothing_is_caught() {
        Proof proof = Proof.of(with("estop_ok", "estop", "not estop_ok"), Proof.Adversary.PLAIN);
        assertThat(proof.verdicts()).anySatisfy(v -> assertThat(v.holds()).isFalse());
    }

    /** Latches of causes that demand the same are one for the search; a lamp that names one of them keeps it apart. */
    @Test
    void a_lamp_may_name_a_latched_cause() {
        List<Sequence.Lamp> lamps = WHOLE.lamps().stream()
                .map(l -> l.name().equals("lamp_fault")
                        ? new Sequence.Lamp(
                                l.name(), l.tag(), l.colour(), l.flashes(), l.words(), Expr.of("trip and not fire"))
                        : l)
                .toList();
        Proof proof = Proof.of(changed(WHOLE.inputs(), WHOLE.causes(), lamps), Proof.Adversary.PLAIN);
        assertThat(proof.verdicts()).anySatisfy(v -> assertThat(v.holds()).isFalse());
    }

    private static Sequence with(String first, String cause, String when) {
        List<Sequence.Input> inputs = new ArrayList<>(WHOLE.inputs());
        inputs.add(new Sequence.Input(first + "_2", "HS-900", "second contact", "closed", "open", Optional.empty()));
        List<Sequence.Cause> causes = WHOLE.causes().stream()
                .map(c -> c.name().equals(cause)
                        ? new Sequence.Cause(
                                c.name(),
                                Expr.of(when),
                                c.demands(),
                                c.latched(),
                                c.priority(),
                                c.message(),
                                c.consequence(),
                                c.response())
                        : c)
                .toList();
        return changed(inputs, causes, WHOLE.lamps());
    }

    private static Sequence changed(
            List<Sequence.Input> inputs, List<Sequence.Cause> causes, List<Sequence.Lamp> lamps) {
        return new Sequence(
                WHOLE.title(),
                WHOLE.options(),
                WHOLE.scan_s(),
                inputs,
                WHOLE.buttons(),
                WHOLE.outputs(),
                WHOLE.timers(),
                WHOLE.rules(),
                causes,
                WHOLE.steps(),
                lamps);
    }
}
