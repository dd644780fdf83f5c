package dustwright.engine.interlock;

import dustwright.engine.interlock.Sequence.Button;
import dustwright.engine.interlock.Sequence.Input;
import dustwright.engine.interlock.Sequence.Output;
import dustwright.engine.interlock.Sequence.Timer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Contacts, buttons, outputs and times of a default sequence. */
final class DefaultDevices extends Fitted {
    DefaultDevices(Options options) {
        super(options);
    }

    List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        inputs.add(input("estop_ok", "HS-100", "emergency stop chain", "closed", "pressed"));
        inputs.add(input("fire_ok", "YS-100", "fire or explosion detector", "quiet", "signals"));
        if (has.isolation()) {
            inputs.add(input("isolation_ready", "ZSO-100", "explosion isolation valve", "ready", "not ready"));
        }
        if (turner.isPresent()) {
            inputs.add(
                    gates()
                            ? input("motion", "YS-110", "dump gate cycle switch", "cycles", "stands")
                            : input("motion", "SSL-110", "rotor shaft motion switch", "turns", "stands"));
            inputs.add(input("valve_drive_ok", "ISH-110", turner() + " overload", "healthy", "tripped"));
            inputs.add(input("guard_shut", "ZSC-110", turner() + " guard", "shut", "open"));
        }
        for (int p = 0; p < pumps.size(); p++) {
            String number = pumps.size() == 1 ? "" : "_" + (p + 1);
            String which = pumps.size() == 1 ? "producer" : "producer " + (p + 1);
            int loop = 120 + 10 * p;
            inputs.add(input("overload_ok" + number, "ISH-" + loop, which + " motor overload", "healthy", "tripped"));
            inputs.add(
                    input("winding_cool" + number, "TSH-" + (loop + 1), which + " motor winding", "cool", "too hot"));
            inputs.add(input(
                    "discharge_cool" + number,
                    "TSH-" + (loop + 2),
                    which + " discharge air",
                    "below limit",
                    "at limit"));
            if (has.drive()) {
                inputs.add(input("drive_ok" + number, "YS-" + (loop + 3), which + " drive", "healthy", "fault"));
                inputs.add(
                        input("at_speed" + number, "SSH-" + (loop + 3), which + " drive", "at speed", "below speed"));
            }
        }
        inputs.add(slow(
                "after_filter_ok",
                "PDSH-105",
                "safety filter drop",
                below(SetPoint.SAFETY_FILTER_HIGH),
                "high",
                "after_filter"));
        inputs.add(input("vent_open_limit", "ZSO-106", "vent valve limit", "open", "not open"));
        inputs.add(input("no_vacuum", "PSL-106", "vacuum switch, low", "no vacuum", "vacuum"));
        inputs.add(input("suction", "PSH-106", "vacuum switch, high", "vacuum", "no vacuum"));
        if (has.shutOff()) {
            inputs.add(input("suction_open", "ZSO-104", "suction valve limit", "open", "not open"));
        }
        inputs.add(input("container_free", "LSH-111", container + " level probe", "free", "covered"));
        inputs.add(input("container_in_place", "ZSC-111", container + " in place and bonded", "in place", "missing"));
        if (turner.isPresent()) {
            inputs.add(input("receiver_free", "LSH-101", "receiver level probe", "free", "covered"));
        }
        inputs.add(input("discharge_warm_ok", "TSH-125", "discharge air", "15 K (27 °F) below limit", "warm"));
        inputs.add(
                slow("filter_ok", "PDSH-102", "filter drop", below(SetPoint.FILTER_HIGH), "too high", "filter_high"));
        inputs.add(
                slow("relief_ok", "PSH-108", "vacuum", "below relief + 1 inHg (3.4 kPa)", "too deep", "vacuum_deep"));
        inputs.add(slow("air_enough", "PSL-109", "compressed air", "above 3.4 bar (49 psi)", "too low", "air_low"));
        inputs.add(slow("air_good", "PSL-107", "compressed air", "above 4.1 bar (59 psi)", "low", "air_low"));
        inputs.add(slow(
                "filter_clean", "PDSH-101", "filter drop", below(SetPoint.CLEANING_DUE), "cleaning due", "filter_due"));
        inputs.add(
                input("filter_there", "PDSL-101", "filter drop", "above " + SetPoint.FILTER_TORN.words(), "very low"));
        if (has.idle()) {
            inputs.add(input("inlet_used", "ZS-150", "inlet valve switches", "an inlet is open", "all inlets shut"));
        }
        return inputs;
    }

    private static String below(SetPoint point) {
        return "below " + point.words();
    }

    private static Input input(String name, String tag, String words, String good, String bad) {
        return new Input(name, tag, words, good, bad, Optional.empty());
    }

    private static Input slow(String name, String tag, String words, String good, String bad, String timer) {
        return new Input(name, tag, words, good, bad, Optional.of(timer));
    }

    List<Button> buttons() {
        List<Button> buttons = new ArrayList<>(List.of(
                new Button("stop", "HS-201", "STOP", true),
                new Button("reset", "HS-202", "RESET", false),
                new Button("container_change", "HS-203", big(container) + " CHANGE", false),
                new Button("container_placed", "HS-204", big(container) + " IN PLACE", false)));
        if (has.manualCleaning()) {
            buttons.add(new Button("clean", "HS-206", "CLEAN FILTER", false));
        }
        buttons.add(new Button("start", "HS-205", "START", false));
        return buttons;
    }

    List<Output> outputs() {
        List<Output> outputs = new ArrayList<>();
        Expr noPumpLeft = has.twoProducers() ? Expr.of("not pump_1 and not pump_2") : Expr.Constant.NO;
        for (String pump : pumps) {
            String which = pump.equals("pump") ? "producer motor" : "producer " + pump.substring(5) + " motor";
            outputs.add(new Output(
                    pump,
                    "XY-" + (pump.endsWith("2") ? 130 : 120),
                    which,
                    "runs",
                    "off",
                    "off",
                    turner.isPresent() ? Expr.of("trip_pump_limit or (in_tripped and press_stop)") : Expr.Constant.NO,
                    List.of()));
        }
        if (has.twoProducers()) {
            for (String pump : pumps) {
                outputs.add(new Output(
                        "line_" + pump.substring(5),
                        "XV-" + (pump.endsWith("2") ? 131 : 121),
                        "line valve of producer " + pump.substring(5),
                        "open",
                        "shut",
                        "shut",
                        Expr.name(pump).not(),
                        List.of()));
            }
        }
        outputs.add(new Output("vent_shut", "XV-106", "vent valve", "shut", "open", "open", noPumpLeft, List.of()));
        if (has.shutOff()) {
            outputs.add(new Output(
                    "suction_shut",
                    "XV-104",
                    "suction valve",
                    "shut",
                    "open",
                    "open",
                    Expr.of("not vent_proved or suction_wanted"),
                    List.of("vent_shut")));
        }
        if (has.purge()) {
            outputs.add(new Output(
                    "bleed_open",
                    "XV-140",
                    "far-end bleed valve",
                    "open",
                    "shut",
                    "shut",
                    Expr.of("not vent_shut"),
                    List.of()));
        }
        if (turner.isPresent()) {
            outputs.add(new Output(
                    "valve",
                    "XY-110",
                    turner() + " motor",
                    "turns",
                    "off",
                    "off",
                    Expr.of("trip_run_on_out or (in_tripped and press_stop)"),
                    List.of()));
        } else {
            outputs.add(new Output(
                    "lid_free",
                    "XV-112",
                    "lid clamp of the " + container,
                    "may be opened",
                    "locked",
                    "locked",
                    Expr.of("not vent_proved or not rested"),
                    List.of("vent_shut")));
        }
        outputs.add(new Output(
                "pulses",
                "XY-101",
                "filter pulses",
                "pulse",
                "no",
                "no",
                has.shutOff() ? noPumpLeft.or(Expr.of("not suction_shut")) : noPumpLeft,
                List.of("vent_shut")));
        if (has.drive()) {
            outputs.add(new Output(
                    "speed_up",
                    "XY-123",
                    "speed above minimum",
                    "as set",
                    "minimum",
                    "minimum",
                    Expr.Constant.NO,
                    List.of()));
        }
        outputs.add(new Output(
                "horn", "XY-200", "start warning horn", "sounds", "quiet", "quiet", Expr.Constant.NO, List.of()));
        return outputs;
    }

    List<Timer> timers() {
        List<Timer> timers = new ArrayList<>(List.of(
                new Timer("horn", 3, 2, 10, "start warning before anything turns"),
                new Timer(
                        "run_up",
                        8,
                        3,
                        30,
                        has.drive() ? "time for the drive to reach speed" : "producer run-up, unloaded"),
                new Timer("vent_proof", 3, 1, 10, "vent valve to be proved open, or shut"),
                new Timer("container_on", 3, 1, 5, container + " probe covered"),
                new Timer("settle", 3, 1, 10, "air at rest before pulses"),
                new Timer("rounds", 30, 10, 90, "pulse rounds"),
                new Timer("dust_fall", 5, 3, 15, "dust to fall after pulses"),
                new Timer("hold_limit", 600, 180, 900, "producer unloaded in a hold"),
                new Timer("rest", 30, 10, 120, "producer standing before its next start"),
                new Timer("hour", 3600, 3600, 3600, "window in which starts are counted"),
                new Timer("no_suction", 10, 5, 30, "no vacuum though vacuuming"),
                new Timer("after_filter", 5, 1, 15, "safety filter drop high"),
                new Timer("filter_high", 5, 1, 15, "filter drop too high"),
                new Timer("filter_due", 5, 1, 15, "filter drop asks for cleaning"),
                new Timer("filter_torn", 5, 1, 60, "filter drop very low"),
                new Timer(
                        "cloth_back", 60, 30, 300, "vacuuming at a low filter drop until the cloth is taken as clean"),
                new Timer("vacuum_deep", 5, 1, 15, "vacuum beyond the relief valve"),
                new Timer("air_low", 5, 1, 15, "compressed air low")));
        if (turner.isPresent()) {
            timers.addAll(turning());
        }
        if (has.shutOff()) {
            timers.add(new Timer("suction_proof", 3, 1, 10, "suction valve to be proved open, or shut"));
        }
        if (has.purge()) {
            timers.add(new Timer("purge", 45, 30, 120, "air through the far-end bleed after STOP"));
        }
        if (has.idle()) {
            timers.add(new Timer("idle_after", 720, 300, 1800, "all inlets shut until the vent opens"));
            timers.add(new Timer("idle_limit", 300, 60, 900, "idle until the producer stops"));
        }
        if (!has.manualCleaning()) {
            timers.add(new Timer("interval", 1500, 600, 3600, "vacuuming between two cleanings"));
        }
        if (has.twoProducers()) {
            timers.add(new Timer("stagger", 5, 5, 30, "between the starts of two producers"));
        }
        return timers;
    }

    private List<Timer> turning() {
        return List.of(
                new Timer("proving", gates() ? 15 : 5, 3, 30, "time for the " + turner() + " to be seen turning"),
                gates()
                        ? new Timer("no_motion", 20, 4, 30, "gates not cycled while driven; about 2.5 cycles")
                        : new Timer("no_motion", 8, 4, 30, "rotor standing while driven; about 2.5 turns"),
                new Timer("undriven", 3, 1, 10, turner() + " turning while not driven"),
                new Timer("receiver_on", gates() ? 1 : 3, 1, 5, "receiver probe covered"),
                new Timer("receiver_off", 15, 5, 60, "receiver probe clear again"),
                new Timer("blocked", 150, 60, 300, "receiver high while the " + turner() + " turns"),
                new Timer("returns_window", 600, 300, 1200, "window in which own returns are counted"),
                new Timer("rotor_limit", 120, 30, 300, "producer unloaded after a fault of the " + turner()),
                new Timer("run_on", 100, 60, 300, turner() + " emptying after a stop"),
                new Timer("trip_run_on", 300, 60, 600, turner() + " emptying after a trip"));
    }
}
