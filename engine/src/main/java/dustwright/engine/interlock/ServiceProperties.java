package dustwright.engine.interlock;

import java.util.List;

/** Vacuum where it can be had. */
final class ServiceProperties {
    private ServiceProperties() {}

    static final List<Property> ALL = List.of(
            service(
                    "valve-keeps-turning",
                    "Receiver high: the turning valve keeps turning, unless faulted or the container stops it",
                    "o_high and was_valve and not o_trip and not o_container_hold and not in_standing -> valve"),
            service(
                    "comes-back",
                    "Receiver clear again for its time: vacuum comes back by itself in that scan",
                    "not (o_own and o_receiver_clear and t_rotor and vent_open_limit and no_vacuum and suction_open)"),
            service("no-false-trip", "Nothing trips without a cause", "trip -> o_trip"),
            service(
                    "no-idle-stop",
                    "Vacuum is never taken away without a cause the lamps name",
                    "was_vent_shut and not vent_shut and not dip_now -> o_container_hold or o_high or o_soft or press_stop or not air_enough or o_trip or in_settling or in_idle or was_in_purging"),
            service(
                            "cleaning-reason",
                            "Automatic cleaning begins only when its time or the filter drop asks for it, or as the closing clean; by its time alone once the filters were cleaned in vain",
                            "was_in_vacuuming and in_settling and not press_clean -> press_stop or out_interval_out or o_interval or (not filter_clean and not out_cleaned_in_vain)")
                    .without("press_clean"),
            service(
                    "blind-cleans",
                    "After the filter drop was too high a start cleans the filters off load before users vacuum, unless a trip or a loss of power came between",
                    "o_blind -> not in_vacuuming and not vent_shut"),
            service(
                    "start-cleans-ready",
                    "A start goes on to the cleaning only with the vent proved open, the rotor turning, the receiver probe clear and the suction valve open",
                    "(was_in_run_up or was_in_run_up_2) and in_settling -> o_blind and t_rotor and not t_receiver_covered and vent_open_limit and no_vacuum and suction_open"),
            service(
                            "count-of-blind",
                            "A filter drop that is too high is counted just when it comes anew",
                            "event_cloth_lost <-> o_again")
                    .needing("cloth_lost"),
            service(
                            "count-of-cleanings",
                            "A cleaning is counted just when the filter drop asks for it and air is good",
                            "event_cleaned_in_vain <-> was_in_vacuuming and not filter_clean and air_good")
                    .needing("cleaned_in_vain"),
            service(
                    "run-up-goes-on",
                    "A run-up ends in a hold only when something holds, or when the filters must be cleaned first and air is low",
                    "(was_in_run_up or was_in_run_up_2) and in_holding -> o_container_hold or o_soft or o_high or (o_blind and not air_good)"),
            service(
                    "start-works",
                    "START at rest with nothing against it, and with the sequence's own permissives, begins the warning",
                    "was_in_standing and press_start and not o_container_hold and not o_soft and air_enough and vent_open_limit and no_vacuum and o_rested and not"
                            + " out_starts_used and not o_trip and not (o_blind and not air_good) and o_permitted -> in_warning"),
            service(
                            "run-on-empties",
                            "After a stop the rotary valve runs on until its time is out, unless the container or a fault stops it",
                            "was_in_run_on and was_valve and valve_off and not o_container_hold and not o_trip -> o_ran_on")
                    .needing("valve"),
            service(
                            "trip-run-on",
                            "After a producer trip the rotary valve runs on, until STOP",
                            "was_valve and valve_off and in_tripped and not press_stop and not o_stop_all and not o_rotor and"
                                    + " not o_container_hold -> o_trip_ran_on")
                    .needing("valve"),
            service(
                            "closing-clean",
                            "STOP while vacuuming cleans the filters before the producer stops, if air is good and nothing is held",
                            "was_in_vacuuming and press_stop and air_good and air_enough and not o_trip and not o_container_hold and not o_soft and not o_high -> in_settling or in_purging")
                    .without("press_clean"),
            service(
                            "one-goes-on",
                            "One producer lost: the other goes on",
                            "was_in_vacuuming and not o_trip and not o_container_hold and not o_soft and not o_high and not"
                                    + " press_stop and air_enough and not (o_lost_1 and o_lost_2) -> pump_1 or pump_2")
                    .needing("line_1"),
            service(
                            "suction-opens",
                            "When vacuum is to come back the suction valve opens in that scan",
                            "(o_own and o_receiver_clear) or (was_in_dust_fall and in_dust_fall and out_fallen) or (was_in_idle and in_idle and inlet_used) -> not suction_shut")
                    .needing("suction_shut"),
            service(
                            "still-holds",
                            "In a hold and in idle the receiver stands still, but for the way back",
                            "(was_in_holding and in_holding and (was_waiting or not o_receiver_clear) or was_in_idle and in_idle and not inlet_used) and vent_open_limit and no_vacuum -> suction_shut")
                    .needing("suction_shut"),
            service(
                            "purge-works",
                            "STOP while vacuuming begins the purge, if air is good and nothing is held",
                            "was_in_vacuuming and press_stop and air_good and air_enough and not o_trip and not o_container_hold and not o_soft and not o_high"
                                    + " -> in_purging and bleed_open")
                    .needing("in_purging"),
            service(
                            "purge-cleans",
                            "After the purge the filters are cleaned before the producer stops",
                            "was_in_purging and (out_time_in_purging or press_stop) and air_good and air_enough and not o_trip and not o_container_hold and not o_soft"
                                    + " and not o_high -> in_settling")
                    .needing("in_purging")
                    .without("press_clean"),
            service(
                            "purge-goes-on",
                            "The purge has its time",
                            "was_in_purging and not out_time_in_purging and not o_trip and not o_container_hold and not o_soft and not o_high and air_enough and not"
                                    + " press_stop -> o_purged or in_purging")
                    .needing("in_purging"),
            service(
                    "fall-time",
                    "Before a stop or a hold the dust has its time to fall",
                    "was_in_dust_fall and (in_run_on or in_holding) and air_enough and not o_container_hold and not o_soft -> o_fell"),
            service(
                            "hold-keeps-pump",
                            "A hold while a resume warns or waits keeps the producer unloaded",
                            "(was_in_warning or was_in_valve_proving) and was_pump and (o_container_hold or o_soft) and not press_stop and air_enough and not"
                                    + " o_trip and not o_unloaded -> in_holding")
                    .needing("valve"),
            service(
                            "hold-in-cleaning",
                            "A hold during cleaning that is no stop keeps the producer unloaded",
                            "(was_in_settling or was_in_pulsing or was_in_dust_fall) and not o_stop_now and (o_container_hold or o_soft) and air_enough and not"
                                    + " o_trip -> in_holding")
                    .needing("valve"),
            service(
                    "cleaning-returns",
                    "After cleaning that is no stop, vacuum comes back",
                    "was_in_dust_fall and o_fell and not o_stop_now and not o_container_hold and not o_soft and not o_blind and not o_high and air_enough and not o_trip and"
                            + " t_rotor and not t_receiver_covered and vent_open_limit and no_vacuum and suction_open -> in_vacuuming"),
            service(
                    "run-on-clear",
                    "Run-on ends only when the receiver is clear or the valve stands",
                    "was_in_run_on and in_standing -> not o_high or not" + " was_valve"),
            service(
                    "closing-goes-on",
                    "A closing clean goes on to its end unless something stops it",
                    "(was_in_settling or was_in_pulsing) and not o_container_hold and not o_soft and air_enough and not o_trip -> not in_run_on"),
            service(
                            "idle-wakes",
                            "An inlet is opened in idle: vacuum comes back in that scan",
                            "was_in_idle and inlet_used and not out_time_in_idle and not o_trip and not o_container_hold and not o_soft and not o_high"
                                    + " and air_enough and not press_stop and vent_open_limit and no_vacuum and suction_open and t_rotor and not t_receiver_covered"
                                    + " -> in_vacuuming")
                    .needing("in_idle"),
            service(
                            "soft-keeps-pump",
                            "Drum under vacuum: heat, filter or relief keep the producer unloaded while a resume warns or filters are cleaned",
                            "((was_in_warning and was_pump and not o_unloaded) or ((was_in_settling or was_in_pulsing or was_in_dust_fall) and not"
                                    + " o_stop_now)) and o_soft and not press_stop and not o_container_hold and air_enough and not o_trip -> in_holding")
                    .without("valve"));

    private static Property service(String id, String words, String logic) {
        return new Property(id, Property.Kind.SERVICE, words, logic, "", "");
    }
}
