package dustwright.engine.interlock;

import dustwright.engine.interlock.Sequence.Lamp;
import java.util.ArrayList;
import java.util.List;

/** Lamps of a default sequence. */
final class DefaultLamps extends Fitted {
    DefaultLamps(Options options) {
        super(options);
    }

    List<Lamp> lamps() {
        List<Lamp> lamps = new ArrayList<>();
        if (has.twoProducers()) {
            lamps.add(lamp("pump", "YL-120", "white", false, "A PRODUCER RUNS", "pump_1 or pump_2"));
        }
        String container = big(this.container);
        lamps.add(lamp("lamp_vacuuming", "YL-106", "green", false, "VACUUMING", "suction"));
        turner.ifPresent(t -> lamps.add(lamp("lamp_valve", "YL-110", "green", false, big(t) + " RUNNING", "motion")));
        lamps.add(lamp("lamp_container_high", "YL-111", "blue", true, container + " HIGH LEVEL", "container_high"));
        lamps.add(lamp(
                "lamp_container_off", "YL-112", "blue", true, container + " OFF OR NOT CONFIRMED", "container_off"));
        lamps.add(lamp(
                "lamp_container_changing", "YL-113", "blue", false, container + " BEING CHANGED", "container_lock"));
        if (turner.isPresent()) {
            lamps.add(lamp(
                    "lamp_receiver_high",
                    "YL-101",
                    "yellow",
                    false,
                    "RECEIVER HIGH LEVEL",
                    "receiver_high or (in_holding and not waits and not receiver_clear)"));
        }
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
        lamps.add(lamp("lamp_cooling", "YL-125", "yellow", false, "WAIT: COOLING", "not discharge_warm_ok"));
        lamps.add(lamp("lamp_filter", "YL-103", "yellow", false, "WAIT: FILTER DROP TOO HIGH", "filter_blind"));
        lamps.add(lamp("lamp_relief", "YL-108", "yellow", false, "WAIT: VACUUM TOO DEEP", "too_deep"));
        lamps.add(lamp("lamp_air", "YL-109", "yellow", false, "WAIT: AIR TOO LOW", "not air_enough"));
        lamps.add(lamp(
                "lamp_press_start",
                "YL-205",
                "white",
                true,
                "PRESS START",
                turner.isPresent()
                        ? "in_holding and waits and not container_hold and not soft_hold and not (filter_uncleaned and not air_good)"
                        : "in_holding and not soft_hold and not (filter_uncleaned and not air_good)"));
        lamps.add(lamp(
                "lamp_starting",
                "YL-202",
                "white",
                false,
                "STARTING",
                "in_warning" + (turner.isPresent() ? " or in_valve_proving" : "") + " or in_run_up"
                        + (has.twoProducers() ? " or in_run_up_2" : "")));
        lamps.add(lamp("lamp_stopping", "YL-203", "white", false, "STOPPING", "stopping or in_run_on"));
        if (has.idle()) {
            lamps.add(lamp("lamp_idle", "YL-204", "white", false, "IDLE: OPEN AN INLET", "in_idle"));
        }
        return lamps;
    }

    private static Lamp lamp(String name, String tag, String colour, boolean flashes, String words, String when) {
        return new Lamp(name, tag, colour, flashes, words, Expr.of(when));
    }
}
