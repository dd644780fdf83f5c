package dustwright.engine.interlock;

import dustwright.engine.interlock.Sequence.Button;
import dustwright.engine.interlock.Sequence.Cause;
import dustwright.engine.interlock.Sequence.Exit;
import dustwright.engine.interlock.Sequence.Input;
import dustwright.engine.interlock.Sequence.Lamp;
import dustwright.engine.interlock.Sequence.Output;
import dustwright.engine.interlock.Sequence.Priority;
import dustwright.engine.interlock.Sequence.Rule;
import dustwright.engine.interlock.Sequence.Step;
import dustwright.engine.interlock.Sequence.Timer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The sequence a plant gets to begin with: what the trade expects of such a system. All of it, times included, is common practice without a
 * published source, and meant to be edited.
 */
public final class DefaultSequence {
    private final Options has;
    private final String container;
    private final List<String> pumps;

    private DefaultSequence(Options options) {
        has = options;
        container = options.container();
        pumps = options.twoProducers() ? List.of("pump_1", "pump_2") : List.of("pump");
    }

    /** The sequence for a plant. */
    public static Sequence of(String title, Options options) {
        DefaultSequence make = new DefaultSequence(options);
        return new Sequence(
                title,
                options.words(),
                0.1,
                make.inputs(),
                make.buttons(),
                make.outputs(),
                make.timers(),
                make.rules(),
                make.causes(),
                make.steps(),
                make.lamps());
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        inputs.add(input("estop_ok", "HS-100", "emergency stop chain", "closed", "pressed"));
        inputs.add(input("fire_ok", "YS-100", "fire or explosion detector", "quiet", "signals"));
        if (has.isolation()) {
            inputs.add(input("isolation_ready", "ZSO-100", "explosion isolation valve", "ready", "not ready"));
        }
        inputs.add(input("motion", "SSL-110", "rotor shaft motion switch", "turns", "stands"));
        inputs.add(input("valve_drive_ok", "ISH-110", "rotary valve overload", "healthy", "tripped"));
        inputs.add(input("guard_shut", "ZSC-110", "rotary valve guard", "shut", "open"));
        for (int p = 0; p < pumps.size(); p++) {
            String number = pumps.size() == 1 ? "" : "_" + (p + 1);
            String which = pumps.size() == 1 ? "producer" : "producer " + (p + 1);
            int loop = 120 + 10 * p;
            inputs.add(input("overload_ok" + number, "ISH-" + loop, which + " motor overload", "healthy", "tripped"));
            inputs.add(
                    input("winding_cool" + number, "TSH-" + (loop + 1), which + " motor winding", "cool", "too hot"));
            inputs.add(input(
                    "discharge_cool" + number,
                    "TSH-" + (loop + 2),
                    which + " discharge air",
                    "below limit",
                    "at limit"));
            if (has.drive()) {
                inputs.add(input("drive_ok" + number, "YS-" + (loop + 3), which + " drive", "healthy", "fault"));
                inputs.add(
                        input("at_speed" + number, "SSH-" + (loop + 3), which + " drive", "at speed", "below speed"));
            }
        }
        inputs.add(slow("after_filter_ok", "PDSH-105", "safety filter drop", "below 3 inWC", "high", "after_filter"));
        inputs.add(input("vent_open_limit", "ZSO-106", "vent valve limit", "open", "not open"));
        inputs.add(input("no_vacuum", "PSL-106", "vacuum switch, low", "no vacuum", "vacuum"));
        inputs.add(input("suction", "PSH-106", "vacuum switch, high", "vacuum", "no vacuum"));
        inputs.add(input("container_free", "LSH-111", container + " level probe", "free", "covered"));
        inputs.add(input("container_in_place", "ZSC-111", container + " in place and bonded", "in place", "missing"));
        inputs.add(input("receiver_free", "LSH-101", "receiver level probe", "free", "covered"));
        inputs.add(input("discharge_warm_ok", "TSH-125", "discharge air", "15 K below limit", "warm"));
        inputs.add(slow("filter_ok", "PDSH-102", "filter drop", "below 10 inWC", "too high", "filter_high"));
        inputs.add(slow("relief_ok", "PSH-108", "vacuum", "below relief + 1 inHg", "too deep", "vacuum_deep"));
        inputs.add(slow("air_enough", "PSL-109", "compressed air", "above 3.4 bar", "too low", "air_low"));
        inputs.add(slow("air_good", "PSL-107", "compressed air", "above 4.1 bar", "low", "air_low"));
        inputs.add(slow("filter_clean", "PDSH-101", "filter drop", "below 6 inWC", "cleaning due", "filter_due"));
        inputs.add(slow("filter_there", "PDSL-101", "filter drop", "above 0.5 inWC", "very low", "filter_torn"));
        return inputs;
    }

    private static Input input(String name, String tag, String words, String good, String bad) {
        return new Input(name, tag, words, good, bad, Optional.empty());
    }

    private static Input slow(String name, String tag, String words, String good, String bad, String timer) {
        return new Input(name, tag, words, good, bad, Optional.of(timer));
    }

    private List<Button> buttons() {
        List<Button> buttons = new ArrayList<>(List.of(
                new Button("stop", "HS-201", "STOP", true),
                new Button("reset", "HS-202", "RESET", false),
                new Button(
                        "container_change", "HS-203", container.toUpperCase(java.util.Locale.ROOT) + " CHANGE", false),
                new Button(
                        "container_placed",
                        "HS-204",
                        container.toUpperCase(java.util.Locale.ROOT) + " IN PLACE",
                        false)));
        if (has.manualCleaning()) {
            buttons.add(new Button("clean", "HS-206", "CLEAN FILTER", false));
        }
        buttons.add(new Button("start", "HS-205", "START", false));
        return buttons;
    }

    private List<Output> outputs() {
        List<Output> outputs = new ArrayList<>();
        Expr noPumpLeft = has.twoProducers() ? Expr.of("not pump_1 and not pump_2") : Expr.Constant.NO;
        for (String pump : pumps) {
            String which = pump.equals("pump") ? "producer motor" : "producer " + pump.substring(5) + " motor";
            outputs.add(new Output(
                    pump,
                    "XY-" + (pump.endsWith("2") ? 130 : 120),
                    which,
                    "runs",
                    "off",
                    "off",
                    Expr.name("trip_pump_limit"),
                    List.of()));
        }
        if (has.twoProducers()) {
            for (String pump : pumps) {
                outputs.add(new Output(
                        "line_" + pump.substring(5),
                        "XV-" + (pump.endsWith("2") ? 131 : 121),
                        "line valve of producer " + pump.substring(5),
                        "open",
                        "shut",
                        "shut",
                        Expr.name(pump).not(),
                        List.of()));
            }
        }
        outputs.add(new Output("vent_shut", "XV-106", "vent valve", "shut", "open", "open", noPumpLeft, List.of()));
        outputs.add(new Output(
                "valve",
                "XY-110",
                "rotary valve motor",
                "turns",
                "off",
                "off",
                Expr.name("trip_run_on_out"),
                List.of()));
        outputs.add(
                new Output("pulses", "XY-101", "filter pulses", "pulse", "no", "no", noPumpLeft, List.of("vent_shut")));
        if (has.drive()) {
            outputs.add(new Output(
                    "speed_up",
                    "XY-123",
                    "speed above minimum",
                    "as set",
                    "minimum",
                    "minimum",
                    Expr.Constant.NO,
                    List.of()));
        }
        outputs.add(new Output(
                "horn", "XY-200", "start warning horn", "sounds", "quiet", "quiet", Expr.Constant.NO, List.of()));
        return outputs;
    }

    private List<Timer> timers() {
        List<Timer> timers = new ArrayList<>(List.of(
                new Timer("horn", 3, 2, 10, "start warning before anything turns"),
                new Timer("proving", 5, 3, 15, "time for the rotor to be seen turning"),
                new Timer(
                        "run_up",
                        8,
                        3,
                        30,
                        has.drive() ? "time for the drive to reach speed" : "producer run-up, unloaded"),
                new Timer("no_motion", 8, 4, 20, "rotor standing while driven; about 2.5 turns"),
                new Timer("undriven", 3, 1, 10, "rotor turning while not driven"),
                new Timer("vent_proof", 3, 1, 10, "vent valve to be proved open, or shut"),
                new Timer("container_on", 3, 1, 5, container + " probe covered"),
                new Timer("receiver_on", 3, 1, 5, "receiver probe covered"),
                new Timer("receiver_off", 15, 5, 60, "receiver probe clear again"),
                new Timer("blocked", 150, 60, 300, "receiver high while the valve turns"),
                new Timer("returns_window", 600, 300, 1200, "window in which own returns are counted"),
                new Timer("settle", 3, 1, 10, "air at rest before pulses"),
                new Timer("rounds", 30, 10, 90, "pulse rounds"),
                new Timer("dust_fall", 5, 3, 15, "dust to fall after pulses"),
                new Timer("hold_limit", 600, 180, 900, "producer unloaded in a hold"),
                new Timer("rotor_limit", 120, 30, 300, "producer unloaded after a rotor fault"),
                new Timer("run_on", 100, 60, 300, "rotary valve emptying after a stop"),
                new Timer("trip_run_on", 300, 60, 600, "rotary valve emptying after a trip"),
                new Timer("rest", 30, 10, 120, "producer standing before its next start"),
                new Timer("hour", 3600, 3600, 3600, "window in which starts are counted"),
                new Timer("no_suction", 10, 5, 30, "no vacuum though vacuuming"),
                new Timer("after_filter", 5, 1, 15, "safety filter drop high"),
                new Timer("filter_high", 5, 1, 15, "filter drop too high"),
                new Timer("filter_due", 5, 1, 15, "filter drop asks for cleaning"),
                new Timer("filter_torn", 5, 1, 60, "filter drop very low"),
                new Timer("vacuum_deep", 5, 1, 15, "vacuum beyond the relief valve"),
                new Timer("air_low", 5, 1, 15, "compressed air low")));
        if (!has.manualCleaning()) {
            timers.add(new Timer("interval", 1500, 600, 3600, "vacuuming between two cleanings"));
        }
        if (has.twoProducers()) {
            timers.add(new Timer("stagger", 5, 5, 30, "between the starts of two producers"));
        }
        return timers;
    }

    private List<Rule> rules() {
        List<Rule> rules = new ArrayList<>();
        if (has.twoProducers()) {
            for (int p = 1; p <= 2; p++) {
                rules.add(latch(
                        "pump_lost_" + p,
                        pumpBad("_" + p),
                        "press_reset and (in_standing or in_tripped)",
                        true,
                        false,
                        "producer " + p + " is out until RESET"));
            }
        }
        rules.add(after("motion_lost", "valve and not motion", "no_motion", "the driven rotor stands"));
        rules.add(after(
                "motion_not_proved",
                "in_valve_proving and not motion",
                "proving",
                "the rotor was not seen turning in time"));
        rules.add(
                after("turns_undriven", "motion and not valve", "undriven", "the rotor turns though it is not driven"));
        rules.add(is("vent_proved", "vent_open_limit and no_vacuum", "two witnesses: limit switch and vacuum switch"));
        rules.add(after(
                "vent_not_proved",
                "pump and not vent_shut and not vent_proved",
                "vent_proof",
                "the vent does not open"));
        rules.add(after("container_full", "not container_free", "container_on", "the " + container + " is full"));
        rules.add(latch(
                "container_hold",
                "container_full or not container_in_place or press_container_change",
                "press_container_placed and container_lock and container_free",
                true,
                false,
                "no dust into this " + container + " until it is changed and confirmed"));
        rules.add(latch(
                "container_lock",
                "press_container_change",
                "press_container_placed and container_free and container_in_place",
                true,
                false,
                "the " + container + " is being changed"));
        rules.add(after("receiver_covered", "not receiver_free", "receiver_on", "the receiver probe is covered"));
        rules.add(after("receiver_clear", "receiver_free", "receiver_off", "the receiver probe is clear"));
        rules.add(latch(
                "receiver_high",
                "receiver_covered",
                "receiver_clear",
                false,
                true,
                "high until proved clear, also after power returned"));
        rules.add(new Rule.InAll(
                "blocked_long",
                Expr.of("receiver_high and valve"),
                "blocked",
                Expr.of("not receiver_high or in_standing or in_tripped"),
                "the valve turned so long and the probe is still covered; stands still while the valve stands"));
        rules.add(is("own_return", "in_vacuuming and was_holding", "vacuuming came back by itself"));
        rules.add(is("was_holding", "in_holding", "one scan ago"));
        rules.add(after("returns_over", "returns_some", "returns_window", "the window of own returns is over"));
        rules.add(latch("returns_some", "own_return", "returns_over", false, false, "own returns are being counted"));
        rules.add(new Rule.Times(
                "returns_used",
                Expr.of("own_return"),
                3,
                Expr.of("returns_over"),
                "as many own returns as one window allows"));
        rules.add(is(
                "soft_hold",
                "not discharge_warm_ok or not filter_ok or not relief_ok",
                "vacuuming waits for cooling, filter or relief"));
        rules.add(is("pump_started", "pump and rested", "the producer was started"));
        rules.add(after("rested", "not pump", "rest", "the producer has stood long enough"));
        rules.add(after("hour_over", "starts_some", "hour", "the hour of counted starts is over"));
        rules.add(latch("starts_some", "pump_started", "hour_over", false, false, "starts are being counted"));
        rules.add(new Rule.Times(
                "starts_used", Expr.of("pump_started"), 5, Expr.of("hour_over"), "as many starts as one hour allows"));
        rules.add(latch(
                "waits",
                "(container_hold or soft_hold) and not (in_standing or in_run_on or in_tripped)",
                "in_standing or in_warning or in_run_on or in_tripped",
                false,
                false,
                "a hold that needs START"));
        rules.add(latch(
                "stopping",
                "press_stop and (in_settling or in_pulsing or in_dust_fall"
                        + (has.manualCleaning() ? ")" : " or in_vacuuming)"),
                "in_standing or in_run_on or in_tripped or in_holding",
                false,
                false,
                "cleaning ends in a stop"));
        rules.add(after(
                "unloaded_out",
                "pump and (in_holding or in_warning or in_valve_proving)",
                "hold_limit",
                "unloaded too long"));
        rules.add(after("trip_pump_limit", "pump and in_tripped", "rotor_limit", "unloaded too long after a trip"));
        rules.add(after("trip_run_on_out", "in_tripped", "trip_run_on", "emptied long enough after a trip"));
        rules.add(after("no_suction", "in_vacuuming and not suction", "no_suction", "no vacuum though vacuuming"));
        rules.add(after("vent_not_shut", "vent_shut and vent_open_limit", "vent_proof", "the vent does not shut"));
        if (has.manualCleaning()) {
            rules.add(is("cleaning_due", "not filter_clean", "the filter asks for cleaning"));
        } else {
            rules.add(after("interval_out", "in_vacuuming", "interval", "time for the automatic cleaning"));
            rules.add(is("cleaning_due", "interval_out or not filter_clean", "the filter asks for cleaning"));
        }
        if (has.drive()) {
            rules.add(is(
                    "at_speed_now",
                    has.twoProducers() ? "(at_speed_1 or pump_lost_1) and (at_speed_2 or pump_lost_2)" : "at_speed",
                    "every drive that runs is at speed"));
            rules.add(after(
                    "drive_slow",
                    (has.twoProducers() ? "in_run_up_2" : "in_run_up") + " and not at_speed_now",
                    "run_up",
                    "a drive did not reach its speed"));
        }
        return rules;
    }

    private String pumpBad(String number) {
        return Stream.of("overload_ok", "winding_cool", "discharge_cool", has.drive() ? "drive_ok" : "")
                .filter(n -> !n.isEmpty())
                .map(n -> "not " + n + number)
                .reduce((a, b) -> a + " or " + b)
                .orElseThrow();
    }

    private static Rule is(String name, String when, String words) {
        return new Rule.Is(name, Expr.of(when), words);
    }

    private static Rule after(String name, String when, String timer, String words) {
        return new Rule.After(name, Expr.of(when), timer, words);
    }

    private static Rule latch(String name, String set, String reset, boolean kept, boolean startsOn, String words) {
        return new Rule.Latch(name, Expr.of(set), Expr.of(reset), kept, startsOn, words);
    }

    private Map<String, String> demands(String pump, String vent, String valve, String pulses) {
        Map<String, String> demands = new LinkedHashMap<>();
        pumps.forEach(p -> demands.put(p, pump));
        demands.put("vent_shut", vent);
        demands.put("valve", valve);
        demands.put("pulses", pulses);
        if (has.drive()) {
            demands.put("speed_up", "minimum");
        }
        return demands;
    }

    private List<Cause> causes() {
        Map<String, String> everything = demands("off", "open", "off", "no");
        Map<String, String> rotor = demands("limit", "open", "off", "no");
        Map<String, String> producer = demands("off", "open", "run-on", "no");
        List<Cause> causes = new ArrayList<>();
        causes.add(new Cause(
                "estop",
                Expr.of("not estop_ok"),
                everything,
                true,
                Priority.HIGH,
                "EMERGENCY STOP",
                "everything stands",
                "make the place clear, release the button, RESET, START"));
        causes.add(new Cause(
                "fire",
                Expr.of("not fire_ok"),
                everything,
                true,
                Priority.HIGH,
                "FIRE OR EXPLOSION SIGNAL",
                "flame may travel through tubing and valve",
                "follow the site's fire plan; inspect; RESET, START"));
        if (has.isolation()) {
            causes.add(new Cause(
                    "isolation",
                    Expr.of("not isolation_ready"),
                    everything,
                    true,
                    Priority.HIGH,
                    "ISOLATION VALVE NOT READY",
                    "an explosion could travel through the line",
                    "inspect and re-arm the valve; RESET, START"));
        }
        causes.add(new Cause(
                "power",
                Expr.of("first_scan"),
                everything,
                true,
                Priority.LOW,
                "POWER WAS LOST",
                "everything stands",
                "see that nobody works on the machines; RESET, START"));
        causes.add(new Cause(
                "rotor_stands",
                Expr.of("motion_lost or motion_not_proved"),
                rotor,
                true,
                Priority.MEDIUM,
                "ROTARY VALVE NOT TURNING",
                "the receiver fills up to the filters",
                "lock out, look for a jam, a broken chain or coupling, the motion switch; RESET, START"));
        causes.add(new Cause(
                "rotor_drive",
                Expr.of("not valve_drive_ok or not guard_shut"),
                rotor,
                true,
                Priority.MEDIUM,
                "ROTARY VALVE DRIVE OR GUARD",
                "the receiver fills up to the filters",
                "lock out, look at drive and guard; RESET, START"));
        causes.add(new Cause(
                "rotor_undriven",
                Expr.of("turns_undriven"),
                rotor,
                true,
                Priority.HIGH,
                "ROTARY VALVE DOES NOT STOP: USE THE ISOLATOR",
                "fingers; a full " + container + " overfills",
                "open the isolator, look for a welded contactor; RESET, START"));
        if (has.twoProducers()) {
            for (int p = 1; p <= 2; p++) {
                Map<String, String> one = new LinkedHashMap<>();
                one.put("pump_" + p, "off");
                one.put("line_" + p, "shut");
                causes.add(new Cause(
                        "producer_" + p + "_out",
                        Expr.of("pump_lost_" + p),
                        one,
                        false,
                        Priority.MEDIUM,
                        "PRODUCER " + p + " OUT: USERS HALVED",
                        "half the users at once",
                        "tell the users; find overload, heat or drive fault; RESET"));
            }
            causes.add(new Cause(
                    "producers",
                    Expr.of("pump_lost_1 and pump_lost_2"),
                    producer,
                    true,
                    Priority.MEDIUM,
                    "BOTH PRODUCERS OUT",
                    "no vacuuming",
                    "find overload, heat or drive fault; RESET, START"));
        } else {
            causes.add(new Cause(
                    "producer",
                    Expr.of(pumpBad("")),
                    producer,
                    true,
                    Priority.MEDIUM,
                    "PRODUCER: OVERLOAD, TOO HOT OR DRIVE FAULT",
                    "a burned motor or a seized rotor",
                    "find the cause, let it cool; RESET, START"));
        }
        if (has.drive()) {
            causes.add(new Cause(
                    "drive",
                    Expr.of("drive_slow"),
                    producer,
                    true,
                    Priority.MEDIUM,
                    "DRIVE DOES NOT REACH SPEED",
                    "no vacuuming",
                    "look at drive, belt and set speed; RESET, START"));
        }
        causes.add(new Cause(
                "dust_behind_filter",
                Expr.of("not after_filter_ok"),
                producer,
                true,
                Priority.HIGH,
                "DUST BEHIND THE FILTER",
                "dust ruins the producer and goes outdoors",
                "look for a torn or loose filter element; RESET after inspection, START"));
        causes.add(new Cause(
                "vent_stuck",
                Expr.of("vent_not_proved"),
                producer,
                true,
                Priority.HIGH,
                "VENT VALVE DOES NOT OPEN",
                "holds cannot stop the suction",
                "look at air supply, solenoid, valve, limit switch; RESET, START"));
        causes.add(new Cause(
                "blocked",
                Expr.of("blocked_long"),
                producer,
                true,
                Priority.HIGH,
                "RECEIVER BLOCKED",
                "dust reaches the filters",
                "look for a plugged valve, bridged material or a failed valve drive; RESET, START"));
        causes.add(new Cause(
                "high_too_often",
                Expr.of("receiver_high and returns_used"),
                producer,
                true,
                Priority.MEDIUM,
                "RECEIVER HIGH TOO OFTEN",
                "dust arrives faster than the valve empties, or sticks",
                "look for a plugged valve, bridged material or a failed valve drive; RESET, START"));
        causes.add(new Cause(
                "container",
                Expr.of("container_hold"),
                rotor,
                false,
                Priority.MEDIUM,
                container.toUpperCase(java.util.Locale.ROOT) + " HIGH LEVEL: CHANGE "
                        + container.toUpperCase(java.util.Locale.ROOT),
                "no vacuuming; an overfilled " + container + " spills",
                "CHANGE, put an empty " + container + ", IN PLACE, START"));
        causes.add(new Cause(
                "receiver",
                Expr.of("receiver_high"),
                demands("limit", "open", "turns", "no"),
                false,
                Priority.LOW,
                "RECEIVER HIGH LEVEL",
                "vacuuming pauses",
                "wait: it returns by itself when the valve has emptied the receiver"));
        causes.add(new Cause(
                "soft",
                Expr.of("soft_hold"),
                demands("limit", "open", "turns", "no"),
                false,
                Priority.MEDIUM,
                "WAIT: COOLING, FILTER OR RELIEF",
                "a trip if it goes on",
                "find why; START when the cause is gone"));
        causes.add(new Cause(
                "air_stop",
                Expr.of("not air_enough"),
                producer,
                false,
                Priority.MEDIUM,
                "COMPRESSED AIR TOO LOW",
                "the vent cannot be held",
                "restore the air; START"));
        causes.add(new Cause(
                "air_warning",
                Expr.of("not air_good"),
                Map.of("pulses", "no"),
                false,
                Priority.LOW,
                "COMPRESSED AIR LOW: NO FILTER CLEANING",
                "filters blind",
                "restore the air"));
        causes.add(new Cause(
                "weak",
                Expr.of("no_suction or vent_not_shut"),
                Map.of(),
                false,
                Priority.LOW,
                "NO VACUUM",
                "nobody can clean",
                "look for an open cap, a vent that does not shut, a slack belt"));
        causes.add(new Cause(
                "filter_torn",
                Expr.of("vent_shut and not filter_there"),
                Map.of(),
                false,
                Priority.MEDIUM,
                "FILTER DROP VERY LOW",
                "dust may pass a torn element",
                "look at the filter and at its pressure lines"));
        causes.add(new Cause(
                "filter_due",
                Expr.of("not filter_clean"),
                Map.of(),
                false,
                has.manualCleaning() ? Priority.LOW : Priority.STATUS,
                has.manualCleaning() ? "FILTER: PRESS CLEAN" : "FILTER CLEANING DUE",
                "suction falls",
                has.manualCleaning() ? "press CLEAN when users can pause" : "none: it cleans itself"));
        causes.add(new Cause(
                "starts",
                Expr.of("starts_used"),
                Map.of(),
                false,
                Priority.STATUS,
                "STARTS PER HOUR USED UP",
                "a hot motor",
                "wait"));
        return causes;
    }

    private List<Step> steps() {
        String hold = "container_hold or soft_hold";
        String breakOff = "press_stop or not air_enough or unloaded_out or ((" + hold + ") and not pump)";
        List<String> keepRunning = join(pumps, List.of("valve"));
        List<String> turning = List.of("valve");
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(
                "standing",
                "all off, vent open",
                List.of(),
                List.of(),
                Optional.empty(),
                exits(
                        "tripped",
                        "trip",
                        "warning",
                        "press_start and not container_hold and not soft_hold and air_enough and vent_proved and rested"
                                + " and not starts_used")));
        steps.add(new Step(
                "warning",
                "horn before anything turns",
                List.of("horn"),
                keepRunning,
                Optional.of("horn"),
                exits("tripped", "trip", "run_on", breakOff, "holding", hold, "valve_proving", "time_out")));
        steps.add(new Step(
                "valve_proving",
                "the rotary valve turns and empties the receiver",
                List.of("valve"),
                pumps,
                Optional.empty(),
                exits(
                        "tripped",
                        "trip",
                        "run_on",
                        breakOff,
                        "holding",
                        hold,
                        "run_up",
                        "motion and not receiver_high and receiver_free")));
        String ready = "vent_proved and motion and receiver_free";
        String holdOrHigh = hold + " or receiver_high";
        String stopNow = "press_stop or not air_enough";
        String noAir = "not air_enough" + (has.twoProducers() ? " or not pump" : "");
        String stopOrNoPump = stopNow + " or ((" + holdOrHigh + ") and not pump)";
        if (has.twoProducers()) {
            steps.add(new Step(
                    "run_up",
                    "the first producer starts unloaded",
                    List.of("pump_1", "valve"),
                    List.of("pump_2"),
                    Optional.of("stagger"),
                    exits(
                            "tripped",
                            "trip",
                            "run_on",
                            stopNow + " or " + holdOrHigh,
                            "run_up_2",
                            "time_out and " + ready)));
            steps.add(new Step(
                    "run_up_2",
                    "the second producer starts unloaded",
                    List.of("pump_2", "valve"),
                    List.of("pump_1"),
                    runUpTime(),
                    exits(
                            "tripped",
                            "trip",
                            "run_on",
                            stopOrNoPump,
                            "holding",
                            holdOrHigh,
                            "vacuuming",
                            runUpDone() + " and " + ready)));
        } else {
            steps.add(new Step(
                    "run_up",
                    "the producer starts unloaded",
                    keepRunning,
                    List.of(),
                    runUpTime(),
                    exits(
                            "tripped",
                            "trip",
                            "run_on",
                            stopNow,
                            "holding",
                            holdOrHigh,
                            "vacuuming",
                            runUpDone() + " and " + ready)));
        }
        List<String> vacuuming = new ArrayList<>(turning);
        if (has.twoProducers()) {
            vacuuming.addAll(List.of("line_1", "line_2"));
        }
        vacuuming.add("vent_shut");
        if (has.drive()) {
            vacuuming.add("speed_up");
        }
        steps.add(new Step(
                "vacuuming",
                "vent shut: users can clean",
                vacuuming,
                pumps,
                Optional.empty(),
                has.manualCleaning()
                        ? exits(
                                "tripped",
                                "trip",
                                "run_on",
                                "press_stop or " + noAir,
                                "holding",
                                holdOrHigh,
                                "settling",
                                "press_clean and air_good")
                        : exits(
                                "tripped",
                                "trip",
                                "run_on",
                                noAir + " or (press_stop and (" + holdOrHigh + " or not air_good))",
                                "holding",
                                holdOrHigh,
                                "settling",
                                "press_stop or (cleaning_due and air_good)")));
        String cleaningStop = noAir + " or (stopping and (" + hold + "))";
        steps.add(new Step(
                "settling",
                "vent open, air comes to rest",
                turning,
                pumps,
                Optional.of("settle"),
                exits(
                        "tripped",
                        "trip",
                        "run_on",
                        cleaningStop,
                        "holding",
                        hold,
                        "dust_fall",
                        "receiver_high or not air_good",
                        "pulsing",
                        "time_out and vent_proved")));
        steps.add(new Step(
                "pulsing",
                "filters are pulsed off load",
                join(turning, List.of("pulses")),
                pumps,
                Optional.of("rounds"),
                exits(
                        "tripped",
                        "trip",
                        "run_on",
                        cleaningStop,
                        "holding",
                        hold,
                        "dust_fall",
                        "receiver_high or not air_good or time_out")));
        steps.add(new Step(
                "dust_fall",
                "dust falls to the valve",
                turning,
                pumps,
                Optional.of("dust_fall"),
                exits(
                        "tripped", "trip",
                        "run_on", noAir + " or (stopping and (" + hold + " or time_out))",
                        "holding", hold + " or (time_out and receiver_high)",
                        "vacuuming", "time_out and " + ready)));
        steps.add(new Step(
                "holding",
                "vent open, producer unloaded",
                List.of(),
                keepRunning,
                Optional.empty(),
                exits(
                        "tripped", "trip",
                        "run_on", "press_stop or unloaded_out or " + noAir,
                        "warning", "waits and press_start and not container_hold and not soft_hold",
                        "vacuuming", "not waits and receiver_clear and motion and vent_proved")));
        steps.add(new Step(
                "run_on",
                "producer off, the valve empties the receiver",
                List.of(),
                List.of("valve"),
                Optional.of("run_on"),
                exits("tripped", "trip", "standing", "time_out and (not receiver_high or not valve)")));
        steps.add(new Step(
                "tripped",
                "a fault, until RESET",
                List.of(),
                keepRunning,
                Optional.empty(),
                exits("standing", "not trip")));
        return steps;
    }

    private Optional<String> runUpTime() {
        return has.drive() ? Optional.empty() : Optional.of("run_up");
    }

    private String runUpDone() {
        return has.drive() ? "at_speed_now" : "time_out";
    }

    private static List<Exit> exits(String... toWhen) {
        List<Exit> exits = new ArrayList<>();
        for (int i = 0; i < toWhen.length; i += 2) {
            exits.add(new Exit(toWhen[i], Expr.of(toWhen[i + 1])));
        }
        return exits;
    }

    private static List<String> join(List<String> first, List<String> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }

    private List<Lamp> lamps() {
        List<Lamp> lamps = new ArrayList<>();
        if (has.twoProducers()) {
            lamps.add(lamp("pump", "YL-120", "white", false, "A PRODUCER RUNS", "pump_1 or pump_2"));
        }
        String big = container.toUpperCase(java.util.Locale.ROOT);
        lamps.add(lamp("lamp_vacuuming", "YL-106", "green", false, "VACUUMING", "suction"));
        lamps.add(lamp("lamp_valve", "YL-110", "green", false, "ROTARY VALVE RUNNING", "motion"));
        lamps.add(lamp("lamp_container_high", "YL-111", "blue", true, big + " HIGH LEVEL", "container_hold"));
        lamps.add(lamp(
                "lamp_receiver_high",
                "YL-101",
                "yellow",
                false,
                "RECEIVER HIGH LEVEL",
                "receiver_high or (in_holding and not waits and not receiver_clear)"));
        lamps.add(lamp(
                "lamp_fault",
                "YL-200",
                "red",
                false,
                "FAULT",
                has.twoProducers() ? "trip or pump_lost_1 or pump_lost_2" : "trip"));
        lamps.add(lamp(
                "lamp_cleaning",
                "YL-102",
                "white",
                false,
                "FILTER CLEANING",
                "in_settling or in_pulsing or in_dust_fall"));
        lamps.add(lamp("lamp_wait", "YL-201", "yellow", false, "WAIT", "soft_hold or not air_enough"));
        lamps.add(lamp(
                "lamp_press_start",
                "YL-205",
                "white",
                true,
                "PRESS START",
                "in_holding and waits and not container_hold and not soft_hold"));
        lamps.add(lamp(
                "lamp_starting",
                "YL-202",
                "white",
                false,
                "STARTING",
                "in_warning or in_valve_proving or in_run_up" + (has.twoProducers() ? " or in_run_up_2" : "")));
        lamps.add(lamp("lamp_stopping", "YL-203", "white", false, "STOPPING", "stopping or in_run_on"));
        return lamps;
    }

    private static Lamp lamp(String name, String tag, String colour, boolean flashes, String words, String when) {
        return new Lamp(name, tag, colour, flashes, words, Expr.of(when));
    }
}
