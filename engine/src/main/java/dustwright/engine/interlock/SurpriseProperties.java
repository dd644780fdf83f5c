package dustwright.engine.interlock;

import java.util.List;

/** Nothing moves unasked. */
final class SurpriseProperties {
    private SurpriseProperties() {}

    static final List<Property> ALL = List.of(
            surprise(
                    "vacuum-session",
                    "Vacuum only after START, and not after a STOP, trip or rest since",
                    "vent_shut -> o_session or o_purging"),
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
                            + " not out_starts_used and not o_trip and not (o_blind and not air_good) and o_permitted"),
            surprise(
                    "start-vented",
                    "START begins a start only when there is no vacuum left",
                    "was_in_standing and in_warning -> not t_vacuum"),
            surprise(
                    "resume-accepted",
                    "A hold for container, heat, filter or relief ends only by START when its cause is gone",
                    "was_in_holding and in_warning -> press_start and not o_container_hold and not o_soft and (was_waiting or o_blind) and not (o_blind and not air_good) and o_permitted_resume"),
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
                            "count-of-returns",
                            "An own return is counted just when vacuum has come back from a hold",
                            "event_returns_used <-> o_returned")
                    .needing("returns_used"),
            surprise(
                            "count-of-starts",
                            "A start is counted just when a rested producer has started",
                            "event_starts_used <-> o_started")
                    .needing("starts_used"),
            surprise(
                            "cleaning-asked",
                            "Manual cleaning: pulses only after CLEAN was pressed since START, or after the filter drop was too high",
                            "pulses and not was_pulses -> was_asked_cleaning or o_blind")
                    .needing("press_clean"),
            surprise(
                            "idle-asked",
                            "Vacuum comes back from idle only when an inlet is open",
                            "was_in_idle and in_vacuuming -> inlet_used")
                    .needing("in_idle"));

    private static Property surprise(String id, String words, String logic) {
        return new Property(id, Property.Kind.SURPRISE, words, logic, "", "");
    }
}
