package dustwright.engine.interlock;

import java.util.List;

/** Lamps and messages show what is so. */
final class HonestProperties {
    private HonestProperties() {}

    static final List<Property> ALL = List.of(
            honest(
                    "message-container",
                    "The message of a full container stands until it is changed and confirmed",
                    "container <-> o_container_high"),
            honest(
                            "message-off",
                            "A missing container and one that was off and is not confirmed have their own messages",
                            "(container_missing <-> not container_in_place) and (container_unconfirmed <-> o_container_hold and not o_container_high and not o_container_lock and container_in_place)")
                    .needing("container_in_place"),
            honest(
                    "message-change",
                    "A container that is being changed has its own message",
                    "container_changing <-> o_container_lock"),
            honest("message-receiver", "RECEIVER HIGH stands while it is high", "receiver <-> o_high")
                    .needing("receiver_free"),
            honest(
                            "message-cooling",
                            "The message of warm discharge air stands while it is so",
                            "cooling <-> not discharge_warm_ok")
                    .needing("discharge_warm_ok"),
            honest(
                            "message-blind",
                            "The message of a filter drop that is too high stands until the filters were cleaned, a trip or a loss of power came",
                            "filter_blind <-> o_blind or not filter_ok")
                    .needing("filter_ok"),
            honest(
                            "message-deep",
                            "The message of a vacuum that is too deep stands until it is gone and START was accepted, the producer was stopped, something tripped or power was lost",
                            "too_deep <-> o_deep or not relief_ok")
                    .needing("relief_ok"),
            honest(
                            "message-air",
                            "Messages of low and too low air stand while it is so",
                            "(air_warning <-> not air_good) and (air_stop <-> not air_enough)")
                    .needing("air_good"),
            honest("message-weak", "NO VACUUM stands when there is none for its time", "weak <-> o_no_suction"),
            honest(
                    "message-vent",
                    "VENT DOES NOT SHUT stands while it is told to shut and is still seen open after its time",
                    "vent_leaks <-> o_not_shut"),
            honest(
                            "message-filter",
                            "Messages of the filter drop stand while it is so",
                            "(filter_torn <-> o_thin) and (filter_due <-> not filter_clean)")
                    .needing("filter_there"),
            honest(
                            "message-suction",
                            "SUCTION VALVE DOES NOT SHUT stands while it is told to shut and is not seen to",
                            "suction_leaks <-> o_suction_leaks")
                    .needing("suction_shut"),
            honest(
                    "message-refused",
                    "At rest a vent that is not proved open and a producer that still rests have their own messages",
                    "(vent_unproved <-> was_in_standing and not (vent_open_limit and no_vacuum)) and (resting <-> was_in_standing and not o_rested)"),
            honest(
                    "refusal-says-why",
                    "START that is refused at rest, or in a hold that waits for it: some message says why",
                    "press_start and not in_warning and (was_in_standing or (was_in_holding and in_holding and (was_waiting or valve_absent))) -> in_tripped or container or container_missing or container_unconfirmed or container_changing or cooling or filter_blind or too_deep or air_stop or starts or vent_unproved or resting or (was_in_standing and o_refused) or (was_in_holding and o_refused_resume)"),
            honest(
                            "message-stop",
                            "A STOP that is down, or its broken wire, holds back START, RESET and the container's buttons: at rest, in run-on and in a trip it has its own message",
                            "stop_held <-> down_stop and (was_in_standing or was_in_run_on or was_in_tripped)")
                    .needing("down_stop"),
            honest(
                            "message-cloth",
                            "FILTER DOES NOT COME CLEAN stands while the filters were cleaned in vain",
                            "cloth_weak <-> out_cleaned_in_vain")
                    .needing("cleaned_in_vain"),
            honest("message-starts", "STARTS USED UP stands while it is so", "starts <-> out_starts_used"),
            honest(
                    "lamp-starting",
                    "STARTING is lit from the warning to the end of the run-up",
                    "lamp_starting <-> in_warning or in_valve_proving or in_run_up or in_run_up_2"),
            honest(
                    "lamp-stopping",
                    "STOPPING is lit just in a closing clean, in a purge and in run-on",
                    "(in_run_on or o_stopping -> lamp_stopping) and (lamp_stopping -> in_run_on or o_stopping or was_stopping or (press_stop and (was_in_vacuuming or was_in_settling or was_in_pulsing or was_in_dust_fall)))"),
            honest(
                    "lamp-vacuuming",
                    "VACUUMING is lit just when the vacuum switch says so, and never without vacuum",
                    "(lamp_vacuuming <-> suction) and (lamp_vacuuming -> t_vacuum)"),
            honest("lamp-valve", "ROTARY VALVE RUNNING is lit just when the rotor turns", "lamp_valve <-> t_rotor")
                    .needing("t_rotor"),
            honest(
                    "lamp-container",
                    "CONTAINER HIGH LEVEL is lit from full until it is changed and confirmed, and only then",
                    "lamp_container_high <-> o_container_high"),
            honest(
                    "lamp-off",
                    "OFF OR NOT CONFIRMED is lit while the container is held, is not full and is not being changed, and only then",
                    "lamp_container_off <-> o_container_hold and not o_container_high and not o_container_lock"),
            honest(
                    "lamp-changing",
                    "BEING CHANGED is lit from CHANGE to IN PLACE, and only then",
                    "lamp_container_changing <-> o_container_lock"),
            honest(
                            "lamp-receiver",
                            "RECEIVER HIGH LEVEL is lit from covered to clear",
                            "(o_receiver_long -> lamp_receiver_high) and (lamp_receiver_high -> not"
                                    + " o_receiver_clear)")
                    .needing("receiver_free"),
            honest(
                    "lamp-fault",
                    "FAULT is lit for every trip and every lost producer, and only then",
                    "lamp_fault <-> o_trip or o_lost_1 or o_lost_2"),
            honest(
                    "fault-rests",
                    "In a trip there is no suction and the step is TRIPPED",
                    "o_trip -> in_tripped and not vent_shut"),
            honest(
                    "lamp-cleaning",
                    "FILTER CLEANING is lit just while filters are cleaned, unloaded",
                    "(lamp_cleaning <-> in_settling or in_pulsing or in_dust_fall) and (lamp_cleaning -> (pump or was_pump) and not vent_shut)"),
            honest(
                    "lamp-wait",
                    "Each of the WAIT lamps is lit just while its own cause is waited for: heat, filter drop, vacuum, air",
                    "(lamp_cooling <-> not discharge_warm_ok) and (lamp_filter <-> o_blind or not filter_ok) and (lamp_relief <-> o_deep or not relief_ok) and (lamp_air <-> not air_enough)"),
            honest(
                    "lamp-press-start",
                    "PRESS START is lit just while a hold needs START and START would be accepted",
                    "(in_holding and (valve_absent or o_waiting) and not o_container_hold and not o_soft and not (o_blind and not air_good) and o_permitted_resume) <-> lamp_press_start"),
            honest(
                    "some-lamp-says-why",
                    "Producer on without suction: some lamp says why, or it is the hold whose receiver is clear again and that waits only for the rotor, the vent or the suction valve to be proved, each with a trip of its own, or a permissive of the sequence's own holds START back",
                    "pump and not vent_shut -> lamp_container_high or lamp_container_off or lamp_container_changing or lamp_receiver_high or lamp_fault or lamp_cleaning or lamp_cooling or lamp_filter or lamp_relief or lamp_air or lamp_press_start or"
                            + " lamp_starting or lamp_stopping or lamp_idle or (in_holding and not o_permitted_resume) or (in_holding and o_receiver_clear and not o_waiting and not (t_rotor and vent_open_limit and no_vacuum and suction_open))"),
            honest("lamp-idle", "IDLE is lit just in idle", "lamp_idle <-> in_idle")
                    .needing("in_idle"));

    private static Property honest(String id, String words, String logic) {
        return new Property(id, Property.Kind.HONEST, words, logic, "", "");
    }
}
