package dustwright.engine.interlock;

import dustwright.engine.interlock.Sequence.Rule;
import java.util.ArrayList;
import java.util.List;

/** Signals with a memory or a time of a default sequence. */
final class DefaultRules extends Fitted {
    DefaultRules(Options options) {
        super(options);
    }

    List<Rule> rules() {
        List<Rule> rules = new ArrayList<>();
        if (has.twoProducers()) {
            for (int p = 1; p <= 2; p++) {
                rules.add(latch(
                        "pump_lost_" + p,
                        pumpBad("_" + p),
                        "press_reset and (in_standing or in_tripped)",
                        true,
                        false,
                        "producer " + p + " is out"));
            }
        }
        if (turner.isPresent()) {
            rules.addAll(turning());
        }
        rules.add(is(
                "vent_proved",
                "vent_open_limit and no_vacuum",
                "the vent is proved open by limit switch and vacuum switch"));
        rules.add(after(
                "vent_not_proved",
                "pump and not vent_shut and not vent_proved",
                "vent_proof",
                "the vent was told to open and is not proved open"));
        rules.add(after("container_full", "not container_free", "container_on", "the " + container + " is full"));
        rules.add(latch(
                "container_high",
                "container_full",
                "press_container_placed and container_lock and container_free",
                true,
                false,
                "the " + container + " is held as full"));
        rules.add(latch(
                "container_hold",
                "container_full or not container_in_place or press_container_change",
                "press_container_placed and container_lock and container_free",
                true,
                false,
                "the " + container + " is held"));
        rules.add(latch(
                "container_lock",
                "press_container_change",
                "press_container_placed and container_free and container_in_place",
                true,
                false,
                "the " + container + " is being changed"));
        rules.add(is(
                "container_off",
                "container_hold and not container_high and not container_lock",
                "the " + container + " is held as off"));
        if (turner.isPresent()) {
            rules.addAll(receiver());
        }
        rules.add(is(
                "soft_hold",
                "not discharge_warm_ok or not filter_ok or not relief_ok",
                "heat, filter drop or vacuum is waited for"));
        rules.addAll(heldUntilStart());
        rules.add(is("pump_started", "pump and rested", "the producer is starting"));
        rules.add(after("rested", "not pump", "rest", "the producer has rested"));
        rules.add(after("hour_over", "starts_some", "hour", "the hour of counted starts is over"));
        rules.add(latch("starts_some", "pump_started", "hour_over", false, false, "starts are being counted"));
        rules.add(new Rule.Times(
                "starts_used", Expr.of("pump_started"), 5, Expr.of("hour_over"), "the starts of the hour are used up"));
        if (turner.isPresent()) {
            rules.add(waits());
        }
        if (has.shutOff()) {
            rules.addAll(shutOff());
        }
        rules.add(latch(
                "stopping",
                "press_stop and (in_settling or in_pulsing or in_dust_fall"
                        + (has.manualCleaning() && !has.purge() ? ")" : " or in_vacuuming)"),
                "in_standing or in_run_on or in_tripped or in_holding",
                false,
                false,
                "a stop is under way"));
        rules.add(after(
                "unloaded_out",
                "pump and (in_holding or in_warning" + (turner.isPresent() ? " or in_valve_proving)" : ")"),
                "hold_limit",
                "the producer has run unloaded too long"));
        if (turner.isPresent()) {
            rules.add(after(
                    "trip_pump_limit",
                    "pump and in_tripped",
                    "rotor_limit",
                    "the producer has run unloaded too long after a trip"));
            rules.add(after(
                    "trip_run_on_out",
                    "in_tripped",
                    "trip_run_on",
                    "the " + turner() + (gates() ? " have" : " has") + " emptied long enough after a trip"));
        }
        rules.add(after(
                "no_suction",
                "in_vacuuming and not suction",
                "no_suction",
                "the vacuum is missing though users clean"));
        rules.add(after(
                "filter_thin",
                "vent_shut and not filter_there",
                "filter_torn",
                "the filter drop stays very low though users vacuum"));
        rules.add(after(
                "vent_not_shut",
                "vent_shut and vent_open_limit",
                "vent_proof",
                "the vent is still open though told to shut"));
        if (has.idle()) {
            rules.add(after(
                    "nobody_there", "in_vacuuming and not inlet_used", "idle_after", "all inlets are shut for long"));
        }
        if (has.manualCleaning()) {
            rules.add(is("cleaning_due", "not filter_clean", "the filter is due for cleaning"));
        } else {
            rules.addAll(cleaningByItself());
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
                    "a drive has not reached its speed in time"));
        }
        return rules;
    }

    /**
     * Filter drop and vacuum vanish with the load: what was too high is remembered until START, or until the cloth was cleaned. Heat stays by itself.
     */
    private static List<Rule> heldUntilStart() {
        return List.of(
                latch(
                        "deep_held",
                        "not relief_ok and not (in_run_on or in_standing or in_tripped)",
                        "in_warning or in_run_on or in_standing or in_tripped",
                        false,
                        false,
                        "the vacuum was too deep; since then START was not pressed, the producer not stopped and nothing tripped"),
                after("pulsed", "in_pulsing", "rounds", "the filters were pulsed to the last round"),
                is(
                        "filter_again",
                        "not filter_ok and not filter_uncleaned and not in_tripped",
                        "the filter drop has become too high"),
                latch(
                        "filter_uncleaned",
                        "not filter_ok and not in_tripped",
                        "pulsed or in_tripped",
                        false,
                        false,
                        "the filter drop was too high; since then the filters were not cleaned and nothing tripped"),
                after(
                        "cloth_back",
                        "in_vacuuming and filter_clean",
                        "cloth_back",
                        "the cloth has come back: users vacuum at a low filter drop"),
                new Rule.Times(
                        "cloth_lost",
                        Expr.of("filter_again"),
                        3,
                        Expr.of("cloth_back"),
                        "the filter drop was too high again and again though the filters were cleaned"));
    }

    /** By time and by filter drop; a cloth that cleaning does not help is cleaned by time alone. */
    private static List<Rule> cleaningByItself() {
        return List.of(
                after("interval_out", "in_vacuuming", "interval", "the time between two cleanings is over"),
                is(
                        "drop_cleaning",
                        "in_vacuuming and not filter_clean and air_good",
                        "the filter drop has asked for a cleaning"),
                new Rule.Times(
                        "cleaned_in_vain",
                        Expr.of("drop_cleaning"),
                        3,
                        Expr.of("cloth_back"),
                        "the filters were cleaned again and again and do not come clean"),
                is(
                        "cleaning_due",
                        "interval_out or (not filter_clean and not cleaned_in_vain)",
                        "the filter is due for cleaning"));
    }

    /** The valve between receiver and producer is asked to open before vacuum comes back, and must say that it is. */
    private List<Rule> shutOff() {
        List<String> wanted = new ArrayList<>(List.of("fallen"));
        turner.ifPresent(t -> wanted.add("(in_holding and not waits and receiver_clear)"));
        if (has.idle()) {
            wanted.add("(in_idle and inlet_used)");
        }
        return List.of(
                after(
                        "suction_not_open",
                        "not suction_shut and not suction_open",
                        "suction_proof",
                        "the suction valve is not proved open in time"),
                after(
                        "suction_not_shut",
                        "suction_shut and suction_open",
                        "suction_proof",
                        "the suction valve is still open though told to shut"),
                after("fallen", "in_dust_fall", "dust_fall", "the dust has fallen"),
                is(
                        "suction_wanted",
                        String.join(" or ", wanted),
                        "the suction valve is wanted open, since vacuum is to come back"));
    }

    /** Without a receiver probe every hold waits. */
    private static Rule waits() {
        return latch(
                "waits",
                "(container_hold or soft_hold or (filter_uncleaned and in_holding)) and not (in_standing or in_run_on or in_tripped)",
                "in_standing or in_warning or in_run_on or in_tripped",
                false,
                false,
                "START is waited for");
    }

    /** The driven thing under the receiver turns when driven and stands when not. */
    private List<Rule> turning() {
        return List.of(
                after("motion_lost", "valve and not motion", "no_motion", "the driven rotor has stood too long"),
                after(
                        "motion_not_proved",
                        "in_valve_proving and not motion",
                        "proving",
                        "the rotor was not seen turning in time"),
                after(
                        "turns_undriven",
                        "motion and not valve",
                        "undriven",
                        "the rotor is turning though nothing drives it"));
    }

    /** Receiver high, its blocked time and its own returns. */
    private List<Rule> receiver() {
        List<Rule> rules = new ArrayList<>();
        rules.add(after("receiver_covered", "not receiver_free", "receiver_on", "the receiver probe is covered"));
        rules.add(after("receiver_clear", "receiver_free", "receiver_off", "the receiver probe is clear"));
        rules.add(latch("receiver_high", "receiver_covered", "receiver_clear", false, true, "the receiver is high"));
        rules.add(new Rule.InAll(
                "blocked_long",
                Expr.of("receiver_high and valve"),
                "blocked",
                Expr.of("not receiver_high or in_standing or in_tripped"),
                "the receiver is still high though the " + turner() + (gates() ? " have" : " has")
                        + " turned for long"));
        rules.add(is("own_return", "in_vacuuming and held_just_now", "vacuuming has come back by itself"));
        rules.add(is("held_just_now", "in_holding", "a hold was on one scan ago"));
        rules.add(after("returns_over", "returns_some", "returns_window", "the window of own returns is over"));
        rules.add(latch("returns_some", "own_return", "returns_over", false, false, "own returns are being counted"));
        rules.add(new Rule.Times(
                "returns_used",
                Expr.of("own_return"),
                3,
                Expr.of("returns_over"),
                "the own returns of the window are used up"));
        return rules;
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
}
