package dustwright.engine.interlock;

import java.util.List;
import java.util.Set;

/**
 * What judges a sequence. Observers look at the plant, the outputs and the buttons, never at the rules and latches they judge; where they must know that a time is
 * out, they listen to the same clock ({@code out_...}) and decide themselves whether it should have been running.
 */
final class Observers {
    private Observers() {}

    /** A line of an observer; left out when the sequence has no such device. */
    record Observer(String name, String is, boolean startsOn) {
        Observer(String name, String is) {
            this(name, is, false);
        }

        /** What a loss of power does not undo: the fault or the full container is still there. */
        boolean survivesPower() {
            return KEPT.contains(name);
        }
    }

    private static final Set<String> KEPT = Set.of(
            "o_stop_all",
            "o_rotor",
            "o_pump",
            "o_lost_1",
            "o_lost_2",
            "o_container_hold",
            "o_container_high",
            "o_container_lock",
            "o_container_wait");

    /** Observers in their order; those of latches that survive a loss of power survive it too, the others are forgotten. */
    static final List<Observer> ALL = List.of(
            // causes that stop, as they truly are
            new Observer("o_container_long", "t_container_covered and (o_container_long or out_container_full)"),
            new Observer("o_receiver_long", "t_receiver_covered and (o_receiver_long or out_receiver_covered)"),
            new Observer(
                    "o_receiver_clear",
                    "receiver_absent or (not t_receiver_covered and (o_receiver_clear or out_receiver_clear))"),
            new Observer("o_high", "o_receiver_long or (o_high and not o_receiver_clear)", true),
            new Observer("o_soft", "not discharge_warm_ok or not filter_ok or not relief_ok"),
            new Observer(
                    "o_deep",
                    "(not relief_ok or (o_deep and not was_in_warning)) and not (was_in_run_on or was_in_standing or was_in_tripped)"),
            // what is counted
            new Observer("o_again", "not filter_ok and not (o_blind and not dip_now) and not was_in_tripped"),
            new Observer("o_returned", "was_in_vacuuming and o_held_before"),
            new Observer("o_held_before", "was_in_holding"),
            new Observer("o_started", "was_pump and o_rested"),
            new Observer("o_pulsed", "was_in_pulsing and (o_pulsed or out_pulsed)"),
            new Observer("o_blind", "(not filter_ok or (o_blind and not o_pulsed)) and not was_in_tripped"),
            new Observer(
                    "o_stop_all",
                    "dip_now or not estop_ok or not fire_ok or not isolation_ready or (o_stop_all and not press_reset)"),
            new Observer("o_stands_long", "was_valve and not t_rotor and (o_stands_long or out_motion_lost)"),
            new Observer(
                    "o_not_proved", "was_in_valve_proving and not t_rotor and (o_not_proved or out_motion_not_proved)"),
            new Observer("o_undriven", "t_rotor and not was_valve and (o_undriven or out_turns_undriven)"),
            new Observer(
                    "o_rotor",
                    "o_stands_long or o_not_proved or o_undriven or not valve_drive_ok or not guard_shut or (o_rotor and not"
                            + " press_reset)"),
            new Observer(
                    "o_vent_stuck",
                    "was_pump and not was_vent_shut and not (vent_open_limit and no_vacuum) and (o_vent_stuck or out_vent_not_proved)"),
            new Observer(
                    "o_suction_stuck",
                    "not was_suction_shut and not suction_open and (o_suction_stuck or out_suction_not_open)"),
            new Observer(
                    "o_suction_leaks",
                    "was_suction_shut and suction_open and (o_suction_leaks or out_suction_not_shut)"),
            new Observer(
                    "o_blocked",
                    "o_high and not was_in_standing and not was_in_tripped and (o_blocked or (was_valve and out_blocked_long))"),
            new Observer(
                    "o_turned", "o_high and not was_in_standing and not was_in_tripped and (o_turned or was_valve)"),
            new Observer("o_slow", "was_in_run_up and not at_speed and (o_slow or out_drive_slow)"),
            new Observer(
                    "o_lost_1",
                    "not overload_ok_1 or not winding_cool_1 or not discharge_cool_1 or not drive_ok_1 or (o_lost_1 and not (press_reset and (was_in_standing or was_in_tripped)))"),
            new Observer(
                    "o_lost_2",
                    "not overload_ok_2 or not winding_cool_2 or not discharge_cool_2 or not drive_ok_2 or (o_lost_2 and not (press_reset and (was_in_standing or was_in_tripped)))"),
            new Observer(
                    "o_slow_two",
                    "was_in_run_up_2 and not ((at_speed_1 or o_lost_1) and (at_speed_2 or o_lost_2)) and (o_slow_two or out_drive_slow)"),
            new Observer(
                    "o_pump",
                    "o_vent_stuck or o_suction_stuck or (was_vent_shut and not suction_open) or o_blocked or o_slow or o_slow_two or (o_lost_1 and o_lost_2) or (o_blind and out_cloth_lost) or (o_high and out_returns_used) or not overload_ok or not winding_cool or not"
                            + " discharge_cool or not drive_ok or not after_filter_ok or (o_pump and not press_reset)"),
            new Observer("o_trip", "o_stop_all or o_rotor or o_pump"),
            // the container: held until changed and confirmed, then until START
            new Observer(
                    "o_container_hold",
                    "o_container_long or not t_container_there or press_container_change or (o_container_hold and not"
                            + " (press_container_placed and o_container_lock and not t_container_covered))"),
            new Observer(
                    "o_container_high",
                    "o_container_long or (o_container_high and not (press_container_placed and o_container_lock and not t_container_covered))"),
            new Observer(
                    "o_container_lock",
                    "press_container_change or (o_container_lock and not (press_container_placed and not t_container_covered and"
                            + " t_container_there))"),
            new Observer("o_container_wait", "o_container_hold or (o_container_wait and not press_start)"),
            new Observer("o_soft_wait", "o_soft or (o_soft_wait and not press_start)"),
            // what a person has asked for
            new Observer(
                    "o_session",
                    "(was_session or press_start) and not press_stop and not o_trip and not in_standing and not in_run_on and not"
                            + " in_tripped"),
            new Observer(
                    "o_purging",
                    "purge_fitted and was_vent_shut and not o_trip and ((press_stop and was_session) or (o_purging and not press_stop))"),
            new Observer("o_purged", "was_in_purging and (o_purged or out_time_in_purging)"),
            new Observer(
                    "o_horn",
                    "(was_horn and out_time_in_warning) or (o_horn and was_valve and not (valve_absent and (in_standing or in_run_on or in_tripped)))"),
            new Observer("o_rested", "not was_pump and (o_rested or out_rested)"),
            new Observer(
                    "o_own",
                    "(o_own or (was_vent_shut and o_high)) and o_session and not vent_shut and not o_container_hold and not o_soft"
                            + " and air_enough"),
            new Observer(
                    "o_asked_cleaning",
                    "(o_asked_cleaning or press_clean) and not in_standing and not in_warning and not in_run_on and not in_tripped"),
            new Observer(
                    "o_waiting",
                    "(o_waiting or o_container_hold or o_soft or (o_blind and was_in_holding)) and not in_standing and not in_warning and not in_run_on and not in_tripped"),
            new Observer(
                    "o_stopping",
                    "(o_stopping or (press_stop and (was_in_vacuuming or was_in_settling or was_in_pulsing or was_in_dust_fall))) and"
                            + " not in_standing and not in_run_on and not in_tripped and not in_holding"),
            new Observer(
                    "o_stop_now",
                    "(was_stopping or press_stop) and (was_in_settling or was_in_pulsing or was_in_dust_fall)"),
            new Observer(
                    "o_unloaded",
                    "was_pump and (was_in_holding or was_in_warning or was_in_valve_proving) and (o_unloaded or out_unloaded_out)"),
            new Observer("o_ran_up", "was_in_run_up and (o_ran_up or out_time_in_run_up)"),
            new Observer("o_ran_up_2", "was_in_run_up_2 and (o_ran_up_2 or out_time_in_run_up_2)"),
            new Observer("o_fell", "was_in_dust_fall and (o_fell or out_time_in_dust_fall)"),
            new Observer("o_no_suction", "was_in_vacuuming and not suction and (o_no_suction or out_no_suction)"),
            new Observer("o_not_shut", "was_vent_shut and vent_open_limit and (o_not_shut or out_vent_not_shut)"),
            new Observer("o_thin", "was_vent_shut and not filter_there and (o_thin or out_filter_thin)"),
            new Observer("o_settled", "was_in_settling and (o_settled or out_time_in_settling)"),
            new Observer("o_ran_on", "was_in_run_on and (o_ran_on or out_time_in_run_on)"),
            new Observer("o_trip_ran_on", "was_in_tripped and (o_trip_ran_on or out_trip_run_on_out)"),
            new Observer("o_interval", "was_in_vacuuming and (o_interval or out_interval_out)"));
}
