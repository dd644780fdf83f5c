package dustwright.engine.interlock;

import java.util.List;

/** What must stop, and what must be so before something starts. */
final class StoppingProperties {
    private StoppingProperties() {}

    static final List<Property> ALL = List.of(
            stops(
                    "stop-all",
                    "Emergency stop, fire signal, isolation valve not ready or power returned: everything off in the scan that"
                            + " reads it and until RESET without the cause",
                    "o_stop_all -> not pump and valve_off and not vent_shut and not pulses"),
            stops(
                    "rotor-fault",
                    "Rotor standing while driven, rotor turning undriven, valve drive or guard: vent open, valve and pulses off until"
                            + " RESET",
                    "o_rotor -> valve_off and not vent_shut and not pulses"),
            stops(
                    "rotor-fault-ends",
                    "After a rotor fault the producer runs unloaded no longer than its limit",
                    "was_in_tripped and out_trip_pump_limit -> not pump"),
            stops(
                    "pump-side",
                    "Producer fault, dust behind the filter, stuck vent, blocked receiver: producer off and vent open until RESET",
                    "o_pump -> not pump and not vent_shut and not pulses"),
            stops(
                    "container-high-vent",
                    "Container probe covered for its time: vent open in that scan",
                    "o_container_long -> not vent_shut"),
            stops(
                    "container-high-valve",
                    "Container probe covered for its time: rotary valve off in that scan",
                    "o_container_long -> valve_off"),
            stops(
                    "container-missing",
                    "Container missing: vent open, valve off, in that scan",
                    "not t_container_there -> not vent_shut and valve_off"),
            stops(
                    "container-held",
                    "A full, missing or handled container: no vacuum, no valve, no pulses until it is changed and confirmed",
                    "o_container_hold -> not vent_shut and valve_off and not pulses"),
            stops(
                    "container-start",
                    "After the change nothing is fed to the new container until START",
                    "o_container_wait -> not vent_shut and valve_off"),
            stops(
                    "receiver-high-vent",
                    "Receiver probe covered for its time: vent open in that scan",
                    "o_receiver_long -> not vent_shut"),
            stops(
                    "vent-shuts-on",
                    "The vent shuts only with producer and valve on, the rotor turning and the receiver probe clear",
                    "vent_shut and not was_vent_shut -> was_pump and was_valve and t_rotor and not t_receiver_covered"),
            stops("suction-needs", "Never suction without producer and rotary valve", "vent_shut -> pump and valve"),
            stops(
                    "unloaded-start",
                    "The producer starts only onto an open vent",
                    "pump and not was_pump -> not vent_shut and t_vent_open and not was_vent_shut"),
            stops("rested-start", "The producer starts only after its rest", "pump and not was_pump -> o_rested")
                    .without("line_1"),
            stops(
                    "empty-start",
                    "The producer starts only after the rotor was seen turning and the receiver was seen clear",
                    "pump and not was_pump -> t_rotor and was_valve and not o_high and not t_receiver_covered"),
            stops(
                    "off-load-cleaning",
                    "Filters are pulsed only with the vent truly open and no vacuum",
                    "pulses -> t_vent_open and not t_vacuum and not vent_shut"),
            stops(
                    "pulses-need",
                    "Pulses only with the valve on, good air, receiver clear, container free, no trip",
                    "pulses -> valve and pump and air_good and not o_receiver_long and not o_container_hold and not o_trip and not o_soft"),
            stops(
                    "still-air",
                    "Pulses begin only when the settling time is out",
                    "pulses -> was_pulses or (o_settled)"),
            stops(
                    "low-air",
                    "Air too low: vent open and producer off in that scan",
                    "not air_enough -> not vent_shut and not pump"),
            stops(
                    "soft",
                    "Too warm, filter drop too high or vacuum too deep: vent open in that scan",
                    "o_soft -> not vent_shut and not pulses"),
            stops(
                    "stop-in-trip",
                    "STOP in a trip stops what still runs",
                    "press_stop and in_tripped -> not pump and valve_off"),
            stops("stop-button", "STOP opens the vent in that scan", "press_stop -> not vent_shut")
                    .without("in_purging"),
            stops(
                            "stop-twice",
                            "STOP while vacuuming begins a purge; STOP in any other step, the purge too, opens the vent in that scan",
                            "press_stop and not was_in_vacuuming -> not vent_shut")
                    .needing("in_purging"),
            stops(
                            "bleed-shut",
                            "The far-end bleed is open only in a purge that STOP asked for, with the vent shut",
                            "bleed_open -> o_purging and vent_shut")
                    .needing("bleed_open"),
            stops(
                            "purge-held",
                            "A full container, a high receiver, heat, filter or relief end a purge in that scan",
                            "was_in_purging and (o_container_hold or o_high or o_soft) -> not vent_shut and not in_purging and not in_settling")
                    .needing("in_purging"),
            stops(
                            "never-dead-headed",
                            "A turning producer always has an open way: the vent or the suction valve",
                            "t_pump_turning and not t_vent_open -> t_suction_open")
                    .needing("suction_shut"),
            stops(
                            "suction-order",
                            "The vent shuts only when the suction valve is proved open",
                            "vent_shut and not was_vent_shut -> suction_open and t_suction_open and not suction_shut")
                    .needing("suction_shut"),
            stops(
                            "suction-shuts-on",
                            "The suction valve shuts only when the vent is proved open",
                            "suction_shut and not was_suction_shut -> t_vent_open and not t_vacuum and vent_open_limit and no_vacuum")
                    .needing("suction_shut"),
            stops(
                            "suction-lost",
                            "The suction valve is no more proved open under vacuum: vent open in that scan",
                            "was_vent_shut and not suction_open -> not vent_shut")
                    .needing("suction_shut"),
            stops(
                            "still-receiver",
                            "Filters are pulsed only with the suction valve driven shut",
                            "pulses -> suction_shut")
                    .needing("suction_shut"),
            stops(
                    "vacuum-gone",
                    "One vent travel after the vent was told to open there is no vacuum",
                    "told_open -> not t_vacuum"),
            stops(
                            "rotor-stands",
                            "Valve off, and nothing else turns the rotor: it stands",
                            "not told_valve and not t_spins -> not t_rotor")
                    .needing("valve"),
            stops("pulses-end", "No pulse valve blows that is not driven", "t_pulses -> told_pulses")
                    .needing("t_pulses"),
            stops("bleed-follows", "The far-end bleed is shut when it is not driven", "t_bleed_open -> told_bleed_open")
                    .needing("bleed_open"),
            stops(
                            "lid-follows",
                            "The lid of a drum under vacuum is held when it is not set free",
                            "t_lid_free -> told_lid_free")
                    .needing("lid_free"),
            stops(
                    "producer-stands",
                    "Producer off and coasted: it stands, and there is no vacuum",
                    "coasted and not told_pump -> not t_pump_turning and not t_vacuum"),
            stops(
                    "standing-off",
                    "Standing means all off",
                    "in_standing -> not pump and valve_off and not vent_shut and not pulses"),
            stops(
                    "blocked-pump",
                    "Receiver high while the valve turned for the blocked time: producer off until RESET",
                    "o_blocked -> not pump"),
            stops(
                            "blocked-kept",
                            "While the receiver stays high, the time the valve has turned is not forgotten, also while the valve stands",
                            "o_turned -> begun_blocked_long")
                    .needing("t_receiver_covered"),
            stops(
                            "line-shut",
                            "A standing producer is never open to the line",
                            "(line_1 -> pump_1) and (line_2 -> pump_2)")
                    .needing("line_1"),
            stops(
                            "line-open",
                            "A running producer is open to the line, on which the vent stands: it is never dead-headed by its own line valve",
                            "(pump_1 -> line_1) and (pump_2 -> line_2)")
                    .needing("line_1"),
            stops(
                            "line-follows",
                            "One travel after a line valve was told to open or shut it is open or shut",
                            "(told_line_1 <-> t_line_1) and (told_line_2 <-> t_line_2)")
                    .needing("line_1"),
            stops(
                            "producer-lost",
                            "A lost producer is off until RESET",
                            "(o_lost_1 -> not pump_1) and (o_lost_2 -> not pump_2)")
                    .needing("line_1"),
            stops(
                            "staggered",
                            "Two producers never start in one scan, the second only after the stagger time",
                            "(pump_2 and not was_pump_2 -> was_in_run_up_2 or (was_in_run_up and o_ran_up)) and not (pump_1 and not was_pump_1 and pump_2 and not was_pump_2)")
                    .needing("line_1"),
            stops(
                            "at-speed",
                            "The vent shuts, or the cleaning begins, only when the drive is at speed, after a start",
                            "(in_vacuuming or in_settling) and was_in_run_up -> at_speed")
                    .needing("at_speed"),
            stops(
                            "at-speed-two",
                            "The vent shuts, or the cleaning begins, only when every drive that runs is at speed, after a start",
                            "(in_vacuuming or in_settling) and was_in_run_up_2 -> (at_speed_1 or o_lost_1) and (at_speed_2 or o_lost_2)")
                    .needing("at_speed_1"),
            stops("speed-held", "With the vent open the drive goes to minimum speed", "speed_up -> vent_shut")
                    .needing("speed_up"),
            stops(
                    "vent-proved",
                    "The vent shuts, and pulses come, only when limit switch and vacuum switch both say open",
                    "((vent_shut and not was_vent_shut) or (pulses and not was_pulses)) -> vent_open_limit and no_vacuum"),
            stops(
                            "run-up-time",
                            "After a start the vent shuts, or the cleaning begins, only when the run-up time is out",
                            "in_vacuuming or in_settling -> (not was_in_run_up or o_ran_up) and (not was_in_run_up_2 or o_ran_up_2)")
                    .without("speed_up"),
            stops(
                    "clean-on-good-air",
                    "No cleaning is begun on low air",
                    "(was_in_vacuuming or was_in_purging or was_in_run_up or was_in_run_up_2) and in_settling -> air_good"),
            stops(
                            "container-stops-pump",
                            "Drum under vacuum full, missing or handled: producer off in that scan",
                            "o_container_hold -> not pump")
                    .without("valve"),
            stops(
                            "lid-locked",
                            "The lid of a drum under vacuum may be opened only with the producer at rest for its time, the vent truly open and no vacuum",
                            "lid_free -> not pump and t_vent_open and not t_vacuum and o_rested")
                    .needing("lid_free"));

    private static Property stops(String id, String words, String logic) {
        return new Property(id, Property.Kind.STOPS, words, logic, "", "");
    }
}
