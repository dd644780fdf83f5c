package dustwright.engine.interlock;

import dustwright.engine.interlock.Sequence.Cause;
import dustwright.engine.interlock.Sequence.Priority;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What demands something of the outputs, and what the operator is told, in a default sequence. */
final class DefaultCauses extends Fitted {
    DefaultCauses(Options options) {
        super(options);
    }

    private Map<String, String> demands(String pump, String vent, String valve, String pulses) {
        Map<String, String> demands = new LinkedHashMap<>();
        pumps.forEach(p -> demands.put(p, pump));
        demands.put("vent_shut", vent);
        turner.ifPresent(t -> demands.put("valve", valve));
        demands.put("pulses", pulses);
        if (has.drive()) {
            demands.put("speed_up", "minimum");
        }
        return demands;
    }

    List<Cause> causes() {
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
        if (turner.isPresent()) {
            causes.addAll(turning(rotor));
        }
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
                        "tell the users; find overload, heat or drive fault; STOP, and RESET at rest"));
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
            causes.addAll(oneProducer(producer));
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
                "cloth_caked",
                Expr.of("filter_uncleaned and cloth_lost"),
                producer,
                true,
                Priority.MEDIUM,
                "FILTER CLOTH CAKED",
                "no vacuuming: cleaning does not help any more",
                "look at pulse valves, compressed air, moisture; put in clean elements; RESET, START"));
        if (has.shutOff()) {
            causes.add(new Cause(
                    "suction_stuck",
                    Expr.of("suction_not_open or (vent_shut and not suction_open)"),
                    producer,
                    true,
                    Priority.HIGH,
                    "SUCTION VALVE NOT OPEN",
                    "the producer would pull at a shut line",
                    "look at air supply, solenoid, valve, limit switch; RESET, START"));
        }
        if (turner.isPresent()) {
            causes.addAll(blocked(producer));
        }
        causes.addAll(container(turner.isPresent() ? rotor : demands("off", "open", "off", "no")));
        if (turner.isPresent()) {
            causes.add(receiver());
        }
        causes.addAll(waits(demands("limit", "open", "turns", "no")));
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
                Expr.of("no_suction"),
                Map.of(),
                false,
                Priority.LOW,
                "NO VACUUM",
                "nobody can clean",
                "look for an open cap, a slack belt, a vent that does not shut"));
        causes.add(new Cause(
                "vent_leaks",
                Expr.of("vent_not_shut"),
                Map.of(),
                false,
                Priority.LOW,
                "VENT VALVE DOES NOT SHUT",
                "nobody can clean",
                "look at air supply, solenoid, valve, limit switch"));
        if (has.shutOff()) {
            causes.add(new Cause(
                    "suction_leaks",
                    Expr.of("suction_not_shut"),
                    Map.of(),
                    false,
                    Priority.LOW,
                    "SUCTION VALVE DOES NOT SHUT",
                    "filters are not cleaned in still air",
                    "look at the valve and its limit switch"));
        }
        causes.add(new Cause(
                "filter_torn",
                Expr.of("filter_thin"),
                Map.of(),
                false,
                Priority.MEDIUM,
                "FILTER DROP VERY LOW",
                "dust may pass a torn element",
                "look at the filter and at its pressure lines"));
        if (!has.manualCleaning()) {
            causes.add(new Cause(
                    "cloth_weak",
                    Expr.of("cleaned_in_vain"),
                    Map.of(),
                    false,
                    Priority.LOW,
                    "FILTER DOES NOT COME CLEAN",
                    "suction stays weak; it is cleaned by time alone",
                    "look at pulse valves, compressed air, moisture; plan new elements"));
        }
        causes.add(new Cause(
                "filter_due",
                Expr.of("not filter_clean"),
                Map.of(),
                false,
                has.manualCleaning() ? Priority.LOW : Priority.STATUS,
                has.manualCleaning() ? "FILTER: PRESS CLEAN" : "FILTER CLEANING DUE",
                "suction falls",
                has.manualCleaning() ? "press CLEAN when users can pause" : "nothing to do: the filter cleans itself"));
        causes.add(new Cause(
                "vent_unproved",
                Expr.of("in_standing and not vent_proved"),
                Map.of(),
                false,
                Priority.LOW,
                "VENT NOT PROVED OPEN: NO START",
                "START is refused",
                "look at vent valve, its limit switch and the vacuum switch"));
        causes.add(new Cause(
                "resting",
                Expr.of("in_standing and not rested"),
                Map.of(),
                false,
                Priority.STATUS,
                "PRODUCER RESTS: NO START YET",
                "START is refused",
                "wait"));
        causes.add(new Cause(
                "starts",
                Expr.of("starts_used"),
                Map.of(),
                false,
                Priority.STATUS,
                "STARTS PER HOUR USED UP",
                "a hot motor",
                "wait"));
        causes.add(new Cause(
                "stop_held",
                Expr.of("down_stop and (in_standing or in_run_on or in_tripped)"),
                Map.of(),
                false,
                Priority.STATUS,
                "STOP IS DOWN: NO OTHER BUTTON ACTS",
                "START, RESET and the " + container + "'s buttons are refused",
                "let STOP go; where nobody presses it, look for a jammed button or a broken wire"));
        return causes;
    }

    /** Full, off or being changed: each says so itself, all of them hold. */
    private List<Cause> container(Map<String, String> demands) {
        return List.of(
                new Cause(
                        "container",
                        Expr.of("container_high"),
                        demands,
                        false,
                        Priority.MEDIUM,
                        big(container) + " HIGH LEVEL: CHANGE " + big(container),
                        "no vacuuming; an overfilled " + container + " spills",
                        "CHANGE, put an empty " + container + ", IN PLACE, START"),
                new Cause(
                        "container_missing",
                        Expr.of("not container_in_place"),
                        demands,
                        false,
                        Priority.MEDIUM,
                        big(container) + " NOT IN PLACE OR NOT BONDED",
                        "dust falls on the floor",
                        "look at cuff, clamp and bonding; CHANGE, IN PLACE, START"),
                new Cause(
                        "container_unconfirmed",
                        Expr.of("container_off and container_in_place"),
                        demands,
                        false,
                        Priority.MEDIUM,
                        big(container) + " WAS OFF: CONFIRM IT",
                        "no vacuuming",
                        "see that the " + container + " hangs right, is bonded and has room; CHANGE, IN PLACE, START"),
                new Cause(
                        "container_changing",
                        Expr.of("container_lock"),
                        demands,
                        false,
                        Priority.STATUS,
                        big(container) + " IS BEING CHANGED",
                        "no vacuuming",
                        "IN PLACE when an empty " + container + " hangs, is bonded and free"));
    }

    /** What unloads the producer until it is gone and START is pressed. */
    private static List<Cause> waits(Map<String, String> demands) {
        Map<String, String> mayPulse = new LinkedHashMap<>(demands);
        mayPulse.remove("pulses");
        return List.of(
                new Cause(
                        "cooling",
                        Expr.of("not discharge_warm_ok"),
                        demands,
                        false,
                        Priority.MEDIUM,
                        "WAIT: DISCHARGE AIR WARM, COOLING",
                        "a trip if it goes on",
                        "look for a blocked line, a closed cooling opening, a slack belt; START when it is cool"),
                new Cause(
                        "filter_blind",
                        Expr.of("filter_uncleaned or not filter_ok"),
                        mayPulse,
                        false,
                        Priority.MEDIUM,
                        "WAIT: FILTER DROP TOO HIGH",
                        "elements burst",
                        "START: the filters are cleaned off load first; compressed air must be good"),
                new Cause(
                        "too_deep",
                        Expr.of("deep_held or not relief_ok"),
                        demands,
                        false,
                        Priority.MEDIUM,
                        "WAIT: VACUUM TOO DEEP",
                        "the producer overheats, the receiver may fold in",
                        "open an inlet; look at the relief valve; START"));
    }

    private List<Cause> oneProducer(Map<String, String> demands) {
        List<Cause> causes = new ArrayList<>(List.of(
                out("overload", "not overload_ok", demands, "MOTOR OVERLOAD", "look at amperes, vacuum and belt"),
                out("winding", "not winding_cool", demands, "MOTOR TOO HOT", "let it cool; look at fan and starts"),
                out(
                        "discharge",
                        "not discharge_cool",
                        demands,
                        "DISCHARGE AIR TOO HOT",
                        "let it cool; look for a blocked line")));
        if (has.drive()) {
            causes.add(out("drive_fault", "not drive_ok", demands, "DRIVE FAULT", "read the drive's own message"));
        }
        return causes;
    }

    private static Cause out(String name, String when, Map<String, String> demands, String what, String look) {
        return new Cause(
                name,
                Expr.of(when),
                demands,
                true,
                Priority.MEDIUM,
                "PRODUCER: " + what,
                "a burned motor or a seized rotor",
                look + "; RESET, START");
    }

    private List<Cause> turning(Map<String, String> rotor) {
        List<Cause> causes = new ArrayList<>();
        causes.add(new Cause(
                "rotor_stands",
                Expr.of("motion_lost or motion_not_proved"),
                rotor,
                true,
                Priority.MEDIUM,
                big(turner()) + " NOT TURNING",
                "the receiver fills up to the filters",
                "lock out, look for a jam, a broken chain or coupling, the motion switch; RESET, START"));
        causes.add(new Cause(
                "rotor_drive",
                Expr.of("not valve_drive_ok"),
                rotor,
                true,
                Priority.MEDIUM,
                big(turner()) + " MOTOR OVERLOAD",
                "the receiver fills up to the filters",
                "lock out, look for a jam or a tight bearing; RESET, START"));
        causes.add(new Cause(
                "guard",
                Expr.of("not guard_shut"),
                rotor,
                true,
                Priority.HIGH,
                big(turner()) + " GUARD OPEN",
                "fingers; the receiver fills up to the filters",
                "shut the guard with nobody in it; RESET, START"));
        causes.add(new Cause(
                "rotor_undriven",
                Expr.of("turns_undriven"),
                rotor,
                true,
                Priority.HIGH,
                big(turner()) + (gates() ? " DO NOT STOP" : " DOES NOT STOP") + ": USE THE ISOLATOR",
                "fingers; a full " + container + " overfills",
                "open the isolator, look for a welded contactor; RESET, START"));
        return causes;
    }

    private static List<Cause> blocked(Map<String, String> producer) {
        List<Cause> causes = new ArrayList<>();
        causes.add(
                new Cause(
                        "blocked",
                        Expr.of("blocked_long"),
                        producer,
                        true,
                        Priority.HIGH,
                        "RECEIVER BLOCKED",
                        "dust reaches the filters",
                        "look whether the probe is caked, then for a plugged valve, bridged material or a failed valve drive; RESET, START"));
        causes.add(
                new Cause(
                        "high_too_often",
                        Expr.of("receiver_high and returns_used"),
                        producer,
                        true,
                        Priority.MEDIUM,
                        "RECEIVER HIGH TOO OFTEN",
                        "dust arrives faster than it is discharged, or sticks",
                        "look whether the probe is caked, then for a plugged valve, bridged material or a failed valve drive; RESET, START"));
        return causes;
    }

    private Cause receiver() {
        return new Cause(
                "receiver",
                Expr.of("receiver_high"),
                demands("limit", "open", "turns", "no"),
                false,
                Priority.LOW,
                "RECEIVER HIGH LEVEL",
                "vacuuming pauses",
                "wait while the valve turns: it returns by itself when the receiver is emptied;"
                        + " where the valve stands, do first what the other message says");
    }
}
