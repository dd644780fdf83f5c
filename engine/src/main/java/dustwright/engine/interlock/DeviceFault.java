package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One device that breaks at any time and stays broken.
 *
 * @param id stable name
 * @param words in words
 * @param target name in the plant that behaves otherwise from then on
 * @param is how, with {@code as_it_should} for the healthy behaviour and {@code broken} from the moment it breaks
 * @param test how such a fault is found before it matters
 */
public record DeviceFault(String id, String words, String target, String is, String test) {
    private static final String STUCK_ON = "as_it_should or broken";
    private static final String STUCK_OFF = "as_it_should and not broken";
    private static final String LINE_OPEN = "not seen: look at it while its producer stands and the other pulls";

    private static final String OWN_WIRING =
            "not seen: its own wiring must still take the power away, the program neither shows nor keeps it; bring it about monthly";

    /** What moves, the contacts that prove it and buttons; contacts that trip, hold or warn are made of the sequence. */
    private static final List<DeviceFault> MOVING = List.of(
            new DeviceFault(
                    "vent-sticks-shut",
                    "vent valve, once shut, stays shut",
                    "t_vent_open",
                    "not vent_shut and (t_vent_open or not broken)",
                    "seen by the vent proof"),
            new DeviceFault(
                    "vent-sticks-open",
                    "vent valve stays open",
                    "t_vent_open",
                    "not vent_shut or (t_vent_open and broken)",
                    "seen as no vacuum"),
            new DeviceFault(
                    "valve-contactor-welded",
                    "rotary valve contactor, once on, stays on",
                    "t_rotor",
                    "as_it_should or (t_rotor and broken and not t_jam)",
                    "seen as motion while not driven; then the isolator"),
            new DeviceFault(
                    "valve-does-not-start",
                    "rotary valve motor does not turn",
                    "t_rotor",
                    STUCK_OFF,
                    "seen by the motion switch"),
            new DeviceFault(
                    "pump-contactor-welded",
                    "producer contactor, once on, stays on",
                    "t_pump_turning",
                    "as_it_should or (t_pump_turning and broken)",
                    "motor current while off is not watched: add it, or look"),
            new DeviceFault(
                    "pump-does-not-start", "producer does not start", "t_pump_turning", STUCK_OFF, "seen as no vacuum"),
            new DeviceFault(
                    "container-probe-reads-free",
                    "container probe reads free",
                    "container_free",
                    STUCK_ON,
                    "not seen: simulate the probe monthly, or weigh the container"),
            new DeviceFault(
                    "container-probe-reads-covered",
                    "container probe reads covered (broken wire)",
                    "container_free",
                    STUCK_OFF,
                    "seen as a container that is not full"),
            new DeviceFault(
                    "receiver-probe-reads-free",
                    "receiver probe reads free",
                    "receiver_free",
                    STUCK_ON,
                    "not seen: simulate the probe monthly"),
            new DeviceFault(
                    "receiver-probe-reads-covered",
                    "receiver probe reads covered (broken wire)",
                    "receiver_free",
                    STUCK_OFF,
                    "seen as RECEIVER BLOCKED without reason"),
            new DeviceFault(
                    "motion-reads-turning",
                    "motion switch reads turning",
                    "motion",
                    STUCK_ON,
                    "seen as motion while not driven, as soon as the valve stops"),
            new DeviceFault(
                    "motion-reads-standing",
                    "motion switch reads standing (broken wire)",
                    "motion",
                    STUCK_OFF,
                    "seen as rotary valve not turning"),
            new DeviceFault(
                    "vent-limit-reads-open",
                    "vent limit switch reads open",
                    "vent_open_limit",
                    STUCK_ON,
                    "seen as a vent that does not shut"),
            new DeviceFault(
                    "vent-limit-reads-not-open",
                    "vent limit switch reads not open (broken wire)",
                    "vent_open_limit",
                    STUCK_OFF,
                    "seen by the vent proof; no start"),
            new DeviceFault(
                    "low-switch-reads-no-vacuum",
                    "low vacuum switch reads no vacuum",
                    "no_vacuum",
                    STUCK_ON,
                    "not seen: compare with the gauge monthly"),
            new DeviceFault(
                    "low-switch-reads-vacuum",
                    "low vacuum switch reads vacuum (broken wire)",
                    "no_vacuum",
                    STUCK_OFF,
                    "seen by the vent proof; no start"),
            new DeviceFault(
                    "suction-switch-reads-vacuum",
                    "high vacuum switch reads vacuum",
                    "suction",
                    STUCK_ON,
                    "seen by the lamp VACUUMING while standing"),
            new DeviceFault(
                    "suction-switch-reads-none",
                    "high vacuum switch reads no vacuum (broken wire)",
                    "suction",
                    STUCK_OFF,
                    "seen as no vacuum"),
            new DeviceFault(
                    "suction-valve-sticks-shut",
                    "suction valve, once shut, stays shut",
                    "t_suction_open",
                    "not suction_shut and (t_suction_open or not broken)",
                    "seen by the suction proof"),
            new DeviceFault(
                    "suction-valve-sticks-open",
                    "suction valve stays open",
                    "t_suction_open",
                    "not suction_shut or (t_suction_open and broken)",
                    "seen as a suction valve that does not shut"),
            new DeviceFault(
                    "suction-limit-reads-open",
                    "suction valve limit switch reads open",
                    "suction_open",
                    STUCK_ON,
                    "seen as a suction valve that does not shut"),
            new DeviceFault(
                    "suction-limit-reads-not-open",
                    "suction valve limit switch reads not open (broken wire)",
                    "suction_open",
                    STUCK_OFF,
                    "seen by the suction proof; no start"),
            line(
                    "1",
                    "stays-shut",
                    "stays shut",
                    STUCK_OFF,
                    "not seen while the other producer pulls; alone as no vacuum"),
            line(
                    "2",
                    "stays-shut",
                    "stays shut",
                    STUCK_OFF,
                    "not seen while the other producer pulls; alone as no vacuum"),
            line("1", "stays-open", "once open, stays open", "as_it_should or (t_line_1 and broken)", LINE_OPEN),
            line("2", "stays-open", "once open, stays open", "as_it_should or (t_line_2 and broken)", LINE_OPEN),
            new DeviceFault(
                    "pulse-valve-stays-open",
                    "pulse valve, once open, stays open",
                    "t_pulses",
                    "as_it_should or (t_pulses and broken)",
                    "heard; seen as low air where the supply cannot keep up"),
            new DeviceFault(
                    "bleed-stays-open",
                    "far-end bleed, once open, stays open",
                    "t_bleed_open",
                    "as_it_should or (t_bleed_open and broken)",
                    "not seen: heard at the far end, weak suction there"),
            new DeviceFault(
                    "lid-stays-free",
                    "lid clamp, once free, stays free",
                    "t_lid_free",
                    "as_it_should or (t_lid_free and broken)",
                    "not seen: try monthly whether the lid is held while the producer runs"),
            new DeviceFault(
                    "container-switch-reads-in-place",
                    "container switch reads in place",
                    "container_in_place",
                    STUCK_ON,
                    "not seen: lift the container monthly and look for the hold"),
            new DeviceFault(
                    "start-stuck", "START stays pressed", "start", STUCK_ON, "dead button: seen by the next operator"),
            new DeviceFault(
                    "reset-stuck", "RESET stays pressed", "reset", STUCK_ON, "dead button: seen at the next fault"),
            new DeviceFault(
                    "stop-stuck",
                    "STOP reads pressed (broken wire)",
                    "stop",
                    STUCK_ON,
                    "seen as STOP; no other button does anything until it is mended"),
            new DeviceFault(
                    "stop-dead",
                    "STOP does nothing",
                    "press_stop",
                    STUCK_OFF,
                    "seen at the next STOP; the emergency stop remains"));

    private static DeviceFault line(String number, String id, String words, String is, String test) {
        return new DeviceFault(
                "line-valve-" + number + "-" + id, "line valve " + number + " " + words, "t_line_" + number, is, test);
    }

    /** All single faults that are looked at in this sequence: those of devices it has, and each of its free contacts reading good or bad for ever. */
    public static List<DeviceFault> of(Sequence sequence) {
        Set<String> there = World.of(sequence, Optional.empty()).named();
        List<DeviceFault> faults = new ArrayList<>(MOVING.stream()
                .filter(f -> there.contains(f.target()) || there.contains("press_" + f.target()))
                .toList());
        MOVING.stream()
                .filter(f -> Witnesses.first(f.target()).isPresent())
                .forEach(f -> Witnesses.alike(sequence, f.target()).stream()
                        .filter(i -> !i.name().equals(f.target()))
                        .map(i -> new DeviceFault(
                                f.id() + i.name().substring(f.target().length()).replace('_', '-'),
                                f.words() + ", " + i.tag(),
                                i.name(),
                                f.is(),
                                f.test()))
                        .forEach(faults::add));
        sequence.inputs().stream()
                .filter(i -> Witnesses.first(i.name()).isEmpty())
                .forEach(i -> {
                    faults.add(new DeviceFault(
                            id(i) + "-reads-good",
                            i.words() + " " + i.tag() + " reads " + i.good(),
                            i.name(),
                            STUCK_ON,
                            HardWired.is(i.name()) ? OWN_WIRING : "not seen: bring it about, or simulate it, monthly"));
                    faults.add(new DeviceFault(
                            id(i) + "-reads-bad",
                            i.words() + " " + i.tag() + " reads " + i.bad() + " (broken wire)",
                            i.name(),
                            STUCK_OFF,
                            seen(sequence, i)));
                });
        return List.copyOf(faults);
    }

    /** Messages that come of a contact that is bad, itself or by way of rules. */
    private static String seen(Sequence sequence, Sequence.Input contact) {
        String messages = sequence.causes().stream()
                .filter(c -> sequence.broughtAboutBy(c).contains(contact))
                .map(Sequence.Cause::message)
                .collect(Collectors.joining("; "));
        return messages.isEmpty() ? "no message tells" : "seen as this without a reason: " + messages;
    }

    private static String id(Sequence.Input input) {
        return input.name().replace('_', '-');
    }
}
