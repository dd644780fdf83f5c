package dustwright.engine.rehearsal;

import dustwright.engine.interlock.Controller;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.rehearsal.Played.Who;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A sequence and the station it controls, side by side. The controller reads and writes at whole scans, as it does with real times; between two scans the station
 * runs from event to event. Scans in which nothing can change are left out, which changes nothing but the time it takes. It can be played at once, or gone
 * through step by step while somebody presses buttons and breaks things:
 *
 * <pre>{@code
 * Rehearsal rehearsal = new Rehearsal(sequence, model, script);
 * rehearsal.runTo(rehearsal.now_ms() + 100);
 * rehearsal.press("start");
 * rehearsal.breaks(PlantFault.HOPPER_BRIDGED);
 * rehearsal.view();
 * }</pre>
 */
public final class Rehearsal {
    /** Buttons are held for half a second. */
    private static final long HELD_ms = 500;

    /** Longer than any rest or clear time may be set. */
    private static final long READIED_ms = 150_000;

    private final Sequence sequence;
    private final StationModel model;
    private final Script script;
    private final Controller controller;
    private final StationPhysics plant;
    private final Contacts contacts;
    private final Recorder recorder;
    private final Optional<People> people;
    private final Optional<Trainee> trainee;
    private final Map<String, Long> held = new LinkedHashMap<>();
    private final Set<String> seen = new LinkedHashSet<>();
    private final long scan_ms;
    private final double begun_kg;
    private final boolean everyScan;
    private int nextAct;
    private boolean work;
    private long now_ms;
    private long scanned_ms;
    private long nextScan_ms;
    private long scans;

    /** A rehearsal before its first scan. */
    public Rehearsal(Sequence sequence, StationModel model, Script script) {
        this(sequence, model, script, Optional.empty(), false);
    }

    /** A drill that somebody goes through by hand, with marks. */
    public static Rehearsal training(Sequence sequence, StationModel model, Script drill) {
        return new Rehearsal(
                sequence,
                model,
                Trainee.script(drill),
                Optional.of(new Trainee(sequence, drill, model.line().change_s())),
                false);
    }

    /** The same with no scan left out: slower, and to the same end. */
    Rehearsal(Sequence sequence, StationModel model, Script script, boolean everyScan) {
        this(sequence, model, script, Optional.empty(), everyScan);
    }

    private Rehearsal(
            Sequence sequence, StationModel model, Script script, Optional<Trainee> trainee, boolean everyScan) {
        this.trainee = trainee;
        this.sequence = sequence;
        this.model = model;
        this.script = script;
        this.everyScan = everyScan;
        controller = new Controller(sequence);
        plant = new StationPhysics(model);
        contacts = new Contacts(sequence);
        recorder = new Recorder(sequence, script, controller);
        people = script.people().map(a -> new People(a, sequence, model.line().change_s(), script.seed()));
        scan_ms = Math.max(1, Math.round(1000 * sequence.scan_s()));
        nextScan_ms = scan_ms;
        fillBeforehand();
        begun_kg = plant.held_kg();
        readied();
        recorder.amounts(0, plant);
        recorder.scanned(0);
    }

    /** A rehearsal begins with the station at rest and every trip reset, as it stands in the morning. */
    private void readied() {
        contacts.read(plant, controller);
        for (long before_ms = 0; before_ms < READIED_ms; before_ms += scan_ms) {
            boolean press = before_ms >= READIED_ms - 2 * scan_ms && before_ms < READIED_ms - scan_ms;
            controller.press("reset", press);
            controller.scan(scan_ms);
        }
    }

    private void fillBeforehand() {
        plant.feedShare = script.feed();
        double feed = script.feed() * model.feed_kgPerS();
        double out = model.line().valve_kgPerS().isPresent()
                ? Math.min(feed, model.line().valve_kgPerS().getAsDouble())
                : feed;
        script.containerLeft_s().ifPresent(t -> plant.container_kg = Math.max(0, plant.full_kg() - out * t));
        script.receiverLeft_s().ifPresent(t -> plant.receiver_kg = Math.max(0, plant.high_kg() - feed * t));
    }

    /** Plays the whole script. */
    public static Played play(Sequence sequence, StationModel model, Script script) {
        Rehearsal rehearsal = new Rehearsal(sequence, model, script);
        rehearsal.runTo(Math.round(1000 * script.lasts_s()));
        return rehearsal.played();
    }

    /** Time since the beginning [ms]. */
    public long now_ms() {
        return now_ms;
    }

    /** Goes on to a time [ms]; one that is past changes nothing. */
    public void runTo(long to_ms) {
        while (now_ms < to_ms) {
            long next_ms = Math.min(to_ms, Math.min(nextScan_ms, nextEvent_ms()));
            plant.goOn(next_ms);
            now_ms = next_ms;
            recorder.amounts(now_ms, plant);
            acts();
            if (now_ms % scan_ms == 0) {
                scan();
            } else {
                // something happened that the controller may read: it does so in its next scan
                nextScan_ms = Math.min(nextScan_ms, after(now_ms));
            }
        }
    }

    private long nextEvent_ms() {
        long next = Math.min(plant.next_ms(), people.map(People::next_ms).orElse(Long.MAX_VALUE));
        if (nextAct < script.acts().size()) {
            next = Math.min(next, at_ms(script.acts().get(nextAct)));
        }
        for (long until : held.values()) {
            next = Math.min(next, until);
        }
        return Math.max(next, now_ms + 1);
    }

    private static long at_ms(Script.Act act) {
        return Math.round(1000 * act.at_s());
    }

    /** The first scan that is later. */
    private long after(long time_ms) {
        return (time_ms / scan_ms + 1) * scan_ms;
    }

    private void acts() {
        held.entrySet().removeIf(h -> {
            boolean over = h.getValue() <= now_ms;
            if (over) {
                controller.press(h.getKey(), false);
            }
            return over;
        });
        while (nextAct < script.acts().size() && at_ms(script.acts().get(nextAct)) <= now_ms) {
            act(script.acts().get(nextAct++));
        }
        people.flatMap(p -> p.due(now_ms)).ifPresent(i -> {
            recorder.happened(now_ms, Who.PEOPLE, i.words);
            if (i == People.Intention.PLACED) {
                plant.newContainer();
                recorder.amounts(now_ms, plant);
            }
            if (i.button.isEmpty()) {
                soon();
            } else {
                hold(i.button);
            }
        });
    }

    private void act(Script.Act act) {
        if (act instanceof Script.Act.Press press) {
            press(press.button());
        } else if (act instanceof Script.Act.Breaks breaks) {
            breaks(breaks.fault());
        } else if (act instanceof Script.Act.Mended mended) {
            mended(mended.fault());
        } else if (act instanceof Script.Act.Users users) {
            users(users.work());
        }
    }

    // ---- by hand

    /** Presses a button for half a second. */
    public void press(String button) {
        String words = sequence.buttons().stream()
                .filter(b -> b.name().equals(button))
                .map(Sequence.Button::words)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the sequence has no button \"" + button + "\""));
        recorder.happened(now_ms, Who.PEOPLE, words + " is pressed");
        trainee.ifPresent(t -> t.pressed(button, inside(), now_ms));
        if (button.equals("container_placed")) {
            plant.newContainer();
            recorder.amounts(now_ms, plant);
        }
        hold(button);
    }

    private void hold(String button) {
        controller.press(button, true);
        held.put(button, now_ms + HELD_ms);
        soon();
    }

    /** Something goes wrong. */
    public void breaks(PlantFault fault) {
        recorder.happened(now_ms, Who.PLANT, fault.words());
        trainee.ifPresent(t -> t.breaks(fault));
        plant.breaks(fault);
        if (fault == PlantFault.POWER_LOST) {
            recorder.dark(now_ms);
            controller.powerLost();
            command();
        }
        soon();
    }

    /** It is mended. */
    public void mended(PlantFault fault) {
        recorder.happened(now_ms, Who.PEOPLE, "mended: " + fault.id());
        trainee.ifPresent(t -> t.mended(fault));
        plant.mended(fault);
        soon();
    }

    /** Users begin or end to vacuum, as far as there is suction. */
    public void users(boolean begin) {
        recorder.happened(now_ms, Who.PEOPLE, begin ? "users take up their hoses" : "users hang up their hoses");
        work = begin;
        plant.users = begin;
        soon();
    }

    private void soon() {
        nextScan_ms = Math.min(nextScan_ms, after(now_ms));
    }

    // ---- scans

    private void scan() {
        if (!plant.faults.contains(PlantFault.POWER_LOST)) {
            contacts.read(plant, controller);
            controller.scan(now_ms - scanned_ms);
            scans++;
            command();
            if (controller.changed()) {
                recorder.scanned(now_ms);
            }
            people.ifPresent(p -> p.look(controller, work, inside(), stands(), now_ms));
            trainee.ifPresent(t -> t.look(controller, work, inside(), now_ms));
        }
        scanned_ms = now_ms;
        contacts.moments(plant).forEach((words, is) -> {
            if (is && seen.add(words)) {
                recorder.happened(now_ms, Who.PLANT, words);
            } else if (!is) {
                seen.remove(words);
            }
        });
        recorder.amounts(now_ms, plant);
        long quiet = everyScan ? 0 : controller.quiet_ms();
        nextScan_ms = quiet > Long.MAX_VALUE / 2
                ? Long.MAX_VALUE
                : now_ms + Math.max(1, (quiet + scan_ms - 1) / scan_ms) * scan_ms;
    }

    private boolean inside() {
        return plant.faults.stream().anyMatch(PlantFault::isMendedByHand);
    }

    private boolean stands() {
        return plant.faults.stream().anyMatch(PlantFault::standsUntilMended);
    }

    /** What the outputs drive. */
    private void command() {
        boolean air = plant.airHoldsVent();
        plant.vent.command(on("vent_shut") && air, now_ms);
        plant.rotor.command(on("valve"), now_ms);
        List<String> pumps = model.producers() == 1 ? List.of("pump") : List.of("pump_1", "pump_2");
        for (int p = 0; p < pumps.size(); p++) {
            plant.pumps.get(p).command(on(pumps.get(p)), now_ms);
        }
        plant.pulses(on("pulses"));
    }

    private boolean on(String output) {
        return contacts.has(output) && controller.is(output);
    }

    // ---- what is seen

    /**
     * What a person sees at a moment.
     *
     * @param outputs by name
     * @param lamps lit ones
     * @param messages the highest first
     * @param receiver dust up to the level probe [-]
     * @param container dust up to full [-]
     */
    public record View(
            long at_ms,
            String step,
            Map<String, Boolean> outputs,
            List<Sequence.Lamp> lamps,
            List<Sequence.Cause> messages,
            double receiver,
            double container,
            Operating operating) {}

    /** What is seen now. */
    public View view() {
        return new View(
                now_ms,
                controller.step(),
                controller.outputs(),
                sequence.lamps().stream().filter(l -> controller.is(l.name())).toList(),
                controller.causes(),
                plant.high_kg() > 0 ? plant.receiver_kg / plant.high_kg() : 0,
                plant.container_kg / plant.full_kg(),
                plant.operating());
    }

    /** What is broken now. */
    public List<PlantFault> broken() {
        return List.copyOf(plant.faults);
    }

    /** Whether users want to vacuum. */
    public boolean usersWork() {
        return work;
    }

    /** Marks of a training so far; none where nobody is trained. */
    public List<Trainee.Mark> marks() {
        return trainee.map(t -> t.marks(recorder.verdicts(), now_ms)).orElse(List.of());
    }

    /** What happened so far, from a number on. */
    public List<Played.Moment> momentsFrom(int first) {
        List<Played.Moment> all = recorder.moments();
        return List.copyOf(all.subList(Math.min(Math.max(first, 0), all.size()), all.size()));
    }

    /** Goes on until something happens that is told, or to a time [ms]. */
    public void runToNext(long to_ms) {
        int before = recorder.moments().size();
        while (now_ms < to_ms && recorder.moments().size() == before) {
            runTo(Math.min(to_ms, Math.min(nextScan_ms, nextEvent_ms())));
        }
    }

    /** Causes that hold an output off now. */
    public List<Sequence.Cause> why(String output) {
        return controller.why(output);
    }

    /** All that happened so far. */
    public Played played() {
        return new Played(
                script,
                model.station(),
                sequence.title(),
                script.seed(),
                new ArrayList<>(recorder.moments()),
                recorder.traces(plant),
                recorder.lanes(now_ms),
                recorder.verdicts(),
                begun_kg,
                plant.collected_kg,
                plant.removed_kg,
                plant.spilt_kg,
                plant.held_kg() - begun_kg,
                scans,
                model.assumptions());
    }
}
