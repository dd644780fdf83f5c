package dustwright.engine.interlock;

import dustwright.engine.interlock.Property.Kind;
import java.util.List;
import java.util.Set;

/**
 * What is demanded of every sequence, and the observers that judge it. Observers look at the plant, the outputs and the buttons, never at the
 * rules and latches they judge; where they must know that a time is out, they listen to the same clock ({@code out_...}) and decide
 * themselves whether it should have been running.
 */
final class Obligations {
    private Obligations() {}

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
            "o_container_lock",
            "o_container_wait");

    /** Observers in their order; those of latches that survive a loss of power survive it too, the others are forgotten. */
    static final List<Observer> OBSERVERS = List.of(
            // causes that stop, as they truly are
            new Observer("o_container_long", "t_container_covered and (o_container_long or out_container_full)"),
            new Observer("o_receiver_long", "t_receiver_covered and (o_receiver_long or out_receiver_covered)"),
            new Observer("o_receiver_clear", "not t_receiver_covered and (o_receiver_clear or out_receiver_clear)"),
            new Observer("o_high", "o_receiver_long or (o_high and not o_receiver_clear)", true),
            new Observer("o_soft", "not discharge_warm_ok or not filter_ok or not relief_ok"),
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
                    "was_pump and not was_vent_shut and not (t_vent_open and not t_vacuum) and (o_vent_stuck or out_vent_not_proved)"),
            new Observer(
                    "o_blocked",
                    "o_high and not was_in_standing and not was_in_tripped and (o_blocked or (was_valve and out_blocked_long))"),
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
                    "o_vent_stuck or o_blocked or o_slow or o_slow_two or (o_lost_1 and o_lost_2) or (o_high and out_returns_used) or not overload_ok or not winding_cool or not"
                            + " discharge_cool or not drive_ok or not after_filter_ok or (o_pump and not press_reset)"),
            new Observer("o_trip", "o_stop_all or o_rotor or o_pump"),
            // the container: held until changed and confirmed, then until START
            new Observer(
                    "o_container_hold",
                    "o_container_long or not t_container_there or press_container_change or (o_container_hold and not"
                            + " (press_container_placed and o_container_lock and not t_container_covered))"),
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
            new Observer("o_horn", "(was_horn and out_time_in_warning) or (o_horn and was_valve)"),
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
                    "(o_waiting or o_container_hold or o_soft) and not in_standing and not in_warning and not in_run_on and not in_tripped"),
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
            new Observer("o_no_suction", "was_in_vacuuming and not t_vacuum and (o_no_suction or out_no_suction)"),
            new Observer("o_not_shut", "was_vent_shut and t_vent_open and (o_not_shut or out_vent_not_shut)"),
            new Observer("o_settled", "was_in_settling and (o_settled or out_time_in_settling)"),
            new Observer("o_ran_on", "was_in_run_on and (o_ran_on or out_time_in_run_on)"),
            new Observer("o_trip_ran_on", "was_in_tripped and (o_trip_ran_on or out_trip_run_on_out)"),
            new Observer("o_interval", "was_in_vacuuming and (o_interval or out_interval_out)"));

    /** All properties; those that speak of devices a sequence does not have do not apply to it. */
    static final List<Property> ALL = List.of(
            stops(
                    "stop-all",
                    "Emergency stop, fire signal, isolation valve not ready or power returned: everything off in the scan that"
                            + " reads it and until RESET without the cause",
                    "o_stop_all -> not pump and not valve and not vent_shut and not pulses"),
            stops(
                    "rotor-fault",
                    "Rotor standing while driven, rotor turning undriven, valve drive or guard: vent open, valve and pulses off until"
                            + " RESET",
                    "o_rotor -> not valve and not vent_shut and not pulses"),
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
                    "o_container_long -> not valve"),
            stops(
                    "container-missing",
                    "Container missing: vent open, valve off, in that scan",
                    "not t_container_there -> not vent_shut and not valve"),
            stops(
                    "container-held",
                    "A full, missing or handled container: no vacuum, no valve, no pulses until it is changed and confirmed",
                    "o_container_hold -> not vent_shut and not valve and not pulses"),
            stops(
                    "container-start",
                    "After the change nothing is fed to the new container until START",
                    "o_container_wait -> not vent_shut and not valve"),
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
            stops("stop-button", "STOP opens the vent in that scan", "press_stop -> not vent_shut"),
            stops(
                    "vacuum-gone",
                    "One vent travel after the vent was told to open there is no vacuum",
                    "told_open -> not t_vacuum"),
            stops(
                    "standing-off",
                    "Standing means all off",
                    "in_standing -> not pump and not valve and not vent_shut and not pulses"),
            stops(
                    "blocked-pump",
                    "Receiver high while the valve turned for the blocked time: producer off until RESET",
                    "o_blocked -> not pump"),
            stops(
                            "line-shut",
                            "A standing producer is never open to the line",
                            "(line_1 -> pump_1) and (line_2 -> pump_2)")
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
                            "The vent shuts only when the drive is at speed, after a start",
                            "in_vacuuming and was_in_run_up -> at_speed")
                    .needing("at_speed"),
            stops(
                            "at-speed-two",
                            "The vent shuts only when every drive that runs is at speed, after a start",
                            "in_vacuuming and was_in_run_up_2 -> (at_speed_1 or o_lost_1) and (at_speed_2 or o_lost_2)")
                    .needing("at_speed_1"),
            stops("speed-held", "With the vent open the drive goes to minimum speed", "speed_up -> vent_shut")
                    .needing("speed_up"),
            surprise(
                    "vacuum-session",
                    "Vacuum only after START, and not after a STOP, trip or rest since",
                    "vent_shut -> o_session"),
            surprise("pump-session", "The producer starts only after START", "pump and not was_pump -> o_session"),
            surprise("pump-horn", "No producer starts without the horn first", "pump and not was_pump -> o_horn"),
            surprise(
                    "valve-session",
                    "The rotary valve starts only after START and the horn",
                    "valve and not was_valve -> o_session and o_horn"),
            surprise(
                    "confirm-only",
                    "RESET, container buttons and STOP start nothing",
                    "(press_reset or press_container_change or press_container_placed or press_stop) and ((pump and not was_pump) or (valve and not"
                            + " was_valve) or (vent_shut and not was_vent_shut)) -> was_session"),
            surprise(
                    "start-accepted",
                    "START begins a start only when nothing stands against it",
                    "was_in_standing and in_warning -> press_start and not o_container_hold and not o_soft and air_enough and t_vent_open and o_rested and"
                            + " not out_starts_used and not o_trip"),
            surprise(
                    "start-vented",
                    "START begins a start only when there is no vacuum left",
                    "was_in_standing and in_warning -> not t_vacuum"),
            surprise(
                    "resume-accepted",
                    "A hold for container, heat, filter or relief ends only by START when its cause is gone",
                    "was_in_holding and in_warning -> press_start and not o_container_hold and not o_soft and was_waiting"),
            surprise(
                    "no-own-restart",
                    "Vacuum returns by itself only from a hold for receiver high alone",
                    "was_in_holding and in_vacuuming -> not was_waiting and not o_container_hold and not o_soft"),
            surprise(
                    "return-clear",
                    "An own return only after the receiver probe was clear for its whole time",
                    "was_in_holding and in_vacuuming -> o_receiver_clear"),
            surprise(
                    "returns-counted",
                    "No more own returns than the window allows",
                    "out_returns_used and o_high -> not pump"),
            surprise(
                            "cleaning-asked",
                            "Manual cleaning: pulses only after CLEAN was pressed since START",
                            "pulses -> was_asked_cleaning")
                    .needing("press_clean"),
            service(
                    "valve-keeps-turning",
                    "Receiver high: the turning valve keeps turning, unless faulted or the container stops it",
                    "o_high and was_valve and not o_trip and not o_container_hold and not in_standing -> valve"),
            service(
                    "comes-back",
                    "Receiver clear again for its time: vacuum comes back by itself in that scan",
                    "not (o_own and o_receiver_clear and t_rotor)"),
            service("no-false-trip", "Nothing trips without a cause", "trip -> o_trip"),
            service(
                    "no-idle-stop",
                    "Vacuum is never taken away without a cause the lamps name",
                    "was_vent_shut and not vent_shut and not dip_now -> o_container_hold or o_high or o_soft or press_stop or not air_enough or o_trip or in_settling"),
            service(
                            "cleaning-reason",
                            "Automatic cleaning begins only when its time or the filter drop asks for it, or as the closing clean",
                            "was_in_vacuuming and in_settling and not press_clean -> press_stop or out_interval_out or o_interval or not filter_clean")
                    .without("press_clean"),
            service(
                    "start-works",
                    "START at rest with nothing against it begins the warning",
                    "was_in_standing and press_start and not o_container_hold and not o_soft and air_enough and t_vent_open and not t_vacuum and o_rested and not"
                            + " out_starts_used and not o_trip -> in_warning"),
            service(
                    "run-on-empties",
                    "After a stop the rotary valve runs on until its time is out, unless the container or a fault stops it",
                    "was_in_run_on and was_valve and not valve and not o_container_hold and not o_trip -> o_ran_on"),
            service(
                    "trip-run-on",
                    "After a producer trip the rotary valve runs on",
                    "was_valve and not valve and in_tripped and not o_stop_all and not o_rotor and"
                            + " not o_container_hold -> o_trip_ran_on"),
            service(
                            "closing-clean",
                            "STOP while vacuuming cleans the filters before the producer stops, if air is good and nothing is held",
                            "was_in_vacuuming and press_stop and air_good and air_enough and not o_trip and not o_container_hold and not o_soft and not o_high -> in_settling")
                    .without("press_clean"),
            service(
                            "one-goes-on",
                            "One producer lost: the other goes on",
                            "was_in_vacuuming and not o_trip and not o_container_hold and not o_soft and not o_high and not"
                                    + " press_stop and air_enough and not (o_lost_1 and o_lost_2) -> pump_1 or pump_2")
                    .needing("line_1"),
            stops(
                    "vent-proved",
                    "The vent shuts, and pulses come, only when limit switch and vacuum switch both say open",
                    "((vent_shut and not was_vent_shut) or (pulses and not was_pulses)) -> vent_open_limit and no_vacuum"),
            stops(
                            "run-up-time",
                            "After a start the vent shuts only when the run-up time is out",
                            "in_vacuuming -> (not was_in_run_up or o_ran_up) and (not was_in_run_up_2 or o_ran_up_2)")
                    .without("speed_up"),
            stops(
                    "clean-on-good-air",
                    "No cleaning is begun on low air",
                    "was_in_vacuuming and in_settling -> air_good"),
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
            service(
                    "fall-time",
                    "Before a stop the dust has its time to fall",
                    "was_in_dust_fall and in_run_on and air_enough and not o_container_hold and not o_soft -> o_fell"),
            service(
                    "hold-keeps-pump",
                    "A hold while a resume warns or waits keeps the producer unloaded",
                    "(was_in_warning or was_in_valve_proving) and was_pump and (o_container_hold or o_soft) and not press_stop and air_enough and not"
                            + " o_trip and not o_unloaded -> in_holding"),
            service(
                    "hold-in-cleaning",
                    "A hold during cleaning that is no stop keeps the producer unloaded",
                    "(was_in_settling or was_in_pulsing or was_in_dust_fall) and not o_stop_now and (o_container_hold or o_soft) and air_enough and not"
                            + " o_trip -> in_holding"),
            service(
                    "cleaning-returns",
                    "After cleaning that is no stop, vacuum comes back",
                    "was_in_dust_fall and o_fell and not o_stop_now and not o_container_hold and not o_soft and not o_high and air_enough and not o_trip and"
                            + " t_rotor and not t_receiver_covered and t_vent_open and not t_vacuum -> in_vacuuming"),
            service(
                    "run-on-clear",
                    "Run-on ends only when the receiver is clear or the valve stands",
                    "was_in_run_on and in_standing -> not o_high or not" + " was_valve"),
            honest(
                            "message-container",
                            "The container's message stands while it is held",
                            "container <-> o_container_hold")
                    .needing("container"),
            honest("message-receiver", "RECEIVER HIGH stands while it is high", "receiver <-> o_high")
                    .needing("receiver"),
            honest("message-wait", "WAIT stands while heat, filter or relief holds", "soft <-> o_soft")
                    .needing("soft"),
            honest(
                            "message-air",
                            "Messages of low and too low air stand while it is so",
                            "(air_warning <-> not air_good) and (air_stop <-> not" + " air_enough)")
                    .needing("air_warning"),
            honest(
                            "message-weak",
                            "NO VACUUM stands when there is none for its time, or the vent does not shut",
                            "weak <-> o_no_suction or o_not_shut")
                    .needing("weak"),
            honest(
                            "message-filter",
                            "Messages of the filter drop stand while it is so",
                            "(filter_torn <-> was_vent_shut and not filter_there) and (filter_due <-> not filter_clean)")
                    .needing("filter_torn"),
            honest("message-starts", "STARTS USED UP stands while it is so", "starts <-> out_starts_used")
                    .needing("starts"),
            honest(
                    "lamp-starting",
                    "STARTING is lit from the warning to the end of the run-up",
                    "lamp_starting <-> in_warning or in_valve_proving or in_run_up or in_run_up_2"),
            honest(
                    "lamp-stopping",
                    "STOPPING is lit in a closing clean and in run-on",
                    "in_run_on or o_stopping -> lamp_stopping"),
            service(
                    "closing-goes-on",
                    "A closing clean goes on to its end unless something stops it",
                    "(was_in_settling or was_in_pulsing) and not o_container_hold and not o_soft and air_enough and not o_trip -> not in_run_on"),
            honest("lamp-vacuuming", "VACUUMING is lit just when there is vacuum", "lamp_vacuuming <-> t_vacuum"),
            honest("lamp-valve", "ROTARY VALVE RUNNING is lit just when the rotor turns", "lamp_valve <-> t_rotor"),
            honest(
                    "lamp-container",
                    "CONTAINER HIGH LEVEL is lit while the container is full, missing or being changed, and only then",
                    "lamp_container_high <-> o_container_hold"),
            honest(
                    "lamp-receiver",
                    "RECEIVER HIGH LEVEL is lit from covered to clear",
                    "(o_receiver_long -> lamp_receiver_high) and (lamp_receiver_high -> not" + " o_receiver_clear)"),
            honest("lamp-fault", "FAULT is lit for every trip", "o_trip -> lamp_fault"),
            honest(
                    "fault-rests",
                    "In a trip there is no suction and the step is TRIPPED",
                    "o_trip -> in_tripped and not vent_shut"),
            honest(
                    "lamp-cleaning",
                    "FILTER CLEANING is lit only unloaded",
                    "lamp_cleaning -> (pump or was_pump) and not vent_shut"),
            honest(
                    "lamp-wait",
                    "WAIT is lit while cooling, filter, relief or air is waited for",
                    "o_soft or not air_enough -> lamp_wait"),
            honest(
                    "lamp-press-start",
                    "PRESS START is lit while a hold needs START and START would be accepted",
                    "in_holding and o_waiting and not o_container_hold and not o_soft -> lamp_press_start"),
            honest(
                    "some-lamp-says-why",
                    "Producer on without suction: some lamp says why",
                    "pump and not vent_shut -> lamp_container_high or lamp_receiver_high or lamp_fault or lamp_cleaning or lamp_wait or lamp_press_start or"
                            + " lamp_starting or lamp_stopping or in_holding"),
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
                    "was_in_run_up and out_time_in_run_up and t_vent_open and not t_vacuum and t_rotor and not t_receiver_covered -> not in_run_up"),
            ends(
                            "interval-ends",
                            "The cleaning interval ends vacuuming",
                            "was_in_vacuuming and out_interval_out and air_good -> not in_vacuuming")
                    .without("press_clean"),
            ends(
                            "filter-drop-cleans",
                            "The filter drop asks for cleaning: vacuuming pauses",
                            "was_in_vacuuming and not filter_clean and air_good -> not in_vacuuming")
                    .without("press_clean"),
            ends(
                            "clean-button",
                            "CLEAN begins cleaning",
                            "was_in_vacuuming and press_clean and air_good -> not in_vacuuming")
                    .needing("press_clean"),
            ends(
                    "settling-ends",
                    "Settling ends with its time and the vent proved",
                    "was_in_settling and out_time_in_settling and t_vent_open and not t_vacuum -> not in_settling"),
            ends(
                    "pulsing-ends",
                    "Pulsing ends with its rounds",
                    "was_in_pulsing and out_time_in_pulsing -> not in_pulsing"),
            ends(
                    "dust-fall-ends",
                    "Dust fall ends with its time when rotor and probe are right",
                    "was_in_dust_fall and out_time_in_dust_fall and t_rotor and not t_receiver_covered and t_vent_open and not t_vacuum -> not in_dust_fall"),
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
                    "was_in_tripped and not o_trip -> in_standing"));

    private static Property stops(String id, String words, String logic) {
        return new Property(id, Kind.STOPS, words, logic, "", "");
    }

    private static Property surprise(String id, String words, String logic) {
        return new Property(id, Kind.SURPRISE, words, logic, "", "");
    }

    private static Property service(String id, String words, String logic) {
        return new Property(id, Kind.SERVICE, words, logic, "", "");
    }

    private static Property honest(String id, String words, String logic) {
        return new Property(id, Kind.HONEST, words, logic, "", "");
    }

    private static Property ends(String id, String words, String logic) {
        return new Property(id, Kind.ENDS, words, logic, "", "");
    }
}
