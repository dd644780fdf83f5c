package dustwright.engine.interlock;

import java.util.List;

/** Nothing waits for ever. */
final class EndingProperties {
    private EndingProperties() {}

    static final List<Property> ALL = List.of(
            ends(
                    "unloaded-ends",
                    "The unloaded limit also ends a resume that warns or waits",
                    "(was_in_warning or was_in_valve_proving) and was_pump and out_unloaded_out -> in_run_on or in_tripped"),
            ends(
                    "stop-over-hold",
                    "A stop under way goes to run-on when a hold comes, never into the hold",
                    "(o_stop_now or (was_in_vacuuming and press_stop)) and (o_container_hold or o_soft or (was_in_vacuuming and (o_high or not air_good)))"
                            + " -> in_run_on or in_tripped or (was_in_vacuuming and clean_fitted)"),
            ends(
                    "stop-after-fall",
                    "A stop under way ends in run-on when the dust has fallen",
                    "o_stop_now and was_in_dust_fall and out_time_in_dust_fall ->" + " in_run_on or in_tripped"),
            ends(
                    "warning-ends",
                    "The warning ends with its time",
                    "was_in_warning and out_time_in_warning -> not in_warning"),
            ends(
                    "proving-goes-on",
                    "Rotor proved and receiver clear: the start goes on",
                    "was_in_valve_proving and in_valve_proving -> not t_rotor or o_high or t_receiver_covered"),
            ends(
                    "proving-ends",
                    "Rotor not proved in its time: a trip",
                    "was_in_valve_proving and not t_rotor and out_motion_not_proved -> in_tripped"),
            ends(
                    "proving-empties",
                    "While a start waits for the receiver the valve turns, so that the blocked time runs",
                    "was_in_valve_proving and in_valve_proving -> valve"),
            ends(
                    "run-up-ends",
                    "The run-up ends with its time when vent, rotor and probe are right",
                    "was_in_run_up and out_time_in_run_up and vent_open_limit and no_vacuum and suction_open and t_rotor and not t_receiver_covered -> not in_run_up"),
            ends(
                            "interval-ends",
                            "The cleaning interval ends vacuuming",
                            "was_in_vacuuming and out_interval_out and air_good -> not in_vacuuming")
                    .without("press_clean"),
            ends(
                            "filter-drop-cleans",
                            "The filter drop asks for cleaning: vacuuming pauses",
                            "was_in_vacuuming and not filter_clean and air_good and not out_cleaned_in_vain -> not in_vacuuming")
                    .without("press_clean"),
            ends(
                            "clean-button",
                            "CLEAN begins cleaning",
                            "was_in_vacuuming and press_clean and air_good -> not in_vacuuming")
                    .needing("press_clean"),
            ends(
                    "settling-ends",
                    "Settling ends with its time and the vent proved",
                    "was_in_settling and out_time_in_settling and vent_open_limit and no_vacuum -> not in_settling"),
            ends("pulsing-ends", "Pulsing ends with its rounds", "was_in_pulsing and out_pulsed -> not in_pulsing"),
            ends(
                    "dust-fall-ends",
                    "Dust fall ends with its time when rotor and probe are right",
                    "was_in_dust_fall and out_time_in_dust_fall and t_rotor and not t_receiver_covered and vent_open_limit and no_vacuum and suction_open -> not in_dust_fall"),
            ends(
                    "stopping-ends",
                    "A closing clean ends in run-on",
                    "was_in_dust_fall and out_time_in_dust_fall and o_stopping -> not in_vacuuming and not in_holding"),
            ends(
                    "hold-ends",
                    "No hold lasts longer than the unloaded limit",
                    "was_in_holding and out_unloaded_out -> not in_holding"),
            ends(
                    "hold-counts",
                    "While a hold lasts the producer runs, so that the unloaded limit counts",
                    "was_in_holding and in_holding -> was_pump"),
            ends(
                    "run-on-ends",
                    "Run-on ends with its time when the receiver is clear or the valve stands",
                    "was_in_run_on and out_time_in_run_on and (not o_high or not was_valve) -> not in_run_on"),
            ends(
                    "stop-rests",
                    "STOP at run-up, in a hold or while starting goes to rest",
                    "press_stop and (was_in_warning or was_in_valve_proving or was_in_run_up or was_in_holding) -> in_run_on or in_tripped"),
            ends(
                    "trip-rests",
                    "RESET without a cause: from a trip to standing",
                    "was_in_tripped and not o_trip -> in_standing"),
            ends(
                            "purge-ends",
                            "The purge ends with its time, and with a second STOP",
                            "was_in_purging and (out_time_in_purging or press_stop) -> not in_purging")
                    .needing("in_purging"),
            ends(
                            "trip-run-on-ends",
                            "After a trip the rotary valve stands when its run-on is out",
                            "was_in_tripped and out_trip_run_on_out -> valve_off")
                    .needing("valve"),
            ends("idle-ends", "Idle ends with its time", "was_in_idle and out_time_in_idle -> not in_idle")
                    .needing("in_idle"));

    private static Property ends(String id, String words, String logic) {
        return new Property(id, Property.Kind.ENDS, words, logic, "", "");
    }
}
