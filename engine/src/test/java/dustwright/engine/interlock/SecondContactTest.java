package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A second contact of what trips bears the name of the first with a number, and is judged as the first is. */
class SecondContactTest {
    private static final Sequence WHOLE = DefaultSequence.of("two chains", Options.USUAL);

    @ParameterizedTest
    @CsvSource({"estop_ok, estop", "guard_shut, guard", "overload_ok, overload"})
    void each_of_two_contacts_is_asked_of_what_asks_for_the_first(String first, String cause) {
        Sequence both = with(first, cause, "not " + first + " or not " + first + "_2");
        Proof proof = Proof.of(both, Proof.Adversary.PLAIN);
        assertThat(proof.verdicts())
                .allSatisfy(v -> assertThat(v.holds()).as(v.property().id()).isTrue());
        assertThat(proof.unjudged()).doesNotContain(first + "_2");
    }

    @Test
    void a_second_limit_of_the_vent_is_read_beside_the_first() {
        Sequence one = with("vent_open_limit", "none", "");
        List<Sequence.Rule> rules = WHOLE.rules().stream()
                .map(r -> r instanceof Sequence.Rule.Is is && is.name().equals("vent_proved")
                        ? new Sequence.Rule.Is(is.name(), is.when().and(Expr.name("vent_open_limit_2")), is.words())
                        : r)
                .toList();
        Sequence both = new Sequence(
                one.title(),
                one.options(),
                one.scan_s(),
                one.inputs(),
                one.buttons(),
                one.outputs(),
                one.timers(),
                rules,
                one.causes(),
                one.steps(),
                one.lamps());
        assertThat(Proof.of(both, Proof.Adversary.PLAIN).verdicts())
                .allSatisfy(v -> assertThat(v.holds()).as(v.property().id()).isTrue());
    }

    @Test
    void a_second_contact_that_stops_nothing_is_caught() {
        Proof proof = Proof.of(with("estop_ok", "estop", "not estop_ok"), Proof.Adversary.PLAIN);
        assertThat(proof.verdicts()).anySatisfy(v -> assertThat(v.holds()).isFalse());
    }

    /** What stops a person's hand must not wait: a second contact is held to the range of the first. */
    @ParameterizedTest
    @CsvSource({"estop_ok, estop", "guard_shut, guard"})
    void a_second_contact_that_waits_is_outside_what_is_usual(String first, String cause) {
        Sequence both = with(first, cause, "not " + first + " or not " + first + "_2");
        List<Sequence.Timer> timers = new ArrayList<>(both.timers());
        timers.add(new Sequence.Timer("hour", 3600, 0, 7200, "far too long"));
        List<Sequence.Input> inputs = both.inputs().stream()
                .map(i -> i.name().equals(first + "_2")
                        ? new Sequence.Input(i.name(), i.tag(), i.words(), i.good(), i.bad(), Optional.of("hour"))
                        : i)
                .toList();
        Sequence late = changed(inputs, timers, both.outputs(), both.causes(), both.lamps());
        assertThat(Times.judged(both))
                .allSatisfy(j -> assertThat(j.holds()).as(j.words()).isTrue());
        assertThat(Times.judged(late))
                .filteredOn(j -> !j.holds())
                .singleElement()
                .satisfies(j -> assertThat(j.words()).startsWith("contact " + first + "_2: 3600"));
    }

    /** IEC 60204-1, 9.2: an emergency stop takes the power away by its wiring, of outputs and contacts that were added too. */
    @Test
    void second_contacts_and_added_outputs_are_wired_as_the_first_are() {
        Sequence both = with("estop_ok", "estop", "not estop_ok or not estop_ok_2");
        Sequence.Output fan = new Sequence.Output(
                "fan", "XY-130", "inflation fan", "runs", "off", "off", Expr.Constant.NO, List.of());
        List<Sequence.Output> outputs = new ArrayList<>(both.outputs());
        outputs.add(fan);
        List<Sequence.Cause> causes = both.causes().stream()
                .map(c -> c.name().equals("estop") ? demanding(c, "fan", "off") : c)
                .toList();
        Sequence whole = changed(both.inputs(), both.timers(), outputs, causes, both.lamps());
        for (String contact : List.of("estop_ok", "estop_ok_2")) {
            assertThat(whole.outputs())
                    .filteredOn(o -> HardWired.cuts(whole, contact, o))
                    .extracting(Sequence.Output::name)
                    .contains("pump", "valve", "vent_shut", "pulses", "fan");
        }
        assertThat(HardWired.cuts(whole, "fire_ok", fan)).isFalse();
        assertThat(HardWired.cuts(whole, "container_free", fan)).isFalse();
    }

    private static Sequence.Cause demanding(Sequence.Cause cause, String output, String word) {
        Map<String, String> demands = new LinkedHashMap<>(cause.demands());
        demands.put(output, word);
        return new Sequence.Cause(
                cause.name(),
                cause.when(),
                demands,
                cause.latched(),
                cause.priority(),
                cause.message(),
                cause.consequence(),
                cause.response());
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
        Proof proof = Proof.of(
                changed(WHOLE.inputs(), WHOLE.timers(), WHOLE.outputs(), WHOLE.causes(), lamps), Proof.Adversary.PLAIN);
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
        return changed(inputs, WHOLE.timers(), WHOLE.outputs(), causes, WHOLE.lamps());
    }

    private static Sequence changed(
            List<Sequence.Input> inputs,
            List<Sequence.Timer> timers,
            List<Sequence.Output> outputs,
            List<Sequence.Cause> causes,
            List<Sequence.Lamp> lamps) {
        return new Sequence(
                WHOLE.title(),
                WHOLE.options(),
                WHOLE.scan_s(),
                inputs,
                WHOLE.buttons(),
                outputs,
                timers,
                WHOLE.rules(),
                causes,
                WHOLE.steps(),
                lamps);
    }
}
