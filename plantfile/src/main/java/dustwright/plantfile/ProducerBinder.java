package dustwright.plantfile;

import dustwright.engine.electrical.Motor;
import dustwright.engine.producer.Belt;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.Model;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.ElectricCurrent;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.TemperatureRise;
import dustwright.engine.quantity.Volume;
import dustwright.plantfile.keys.PlantKeys;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Makes vacuum producers: of a plant, and of a catalogue to choose from. */
final class ProducerBinder {
    private ProducerBinder() {}

    /** A producer of a plant. That its figures come from a catalogue is put on record. */
    static VacuumProducer producer(Section p) {
        p.find("model", Model.class)
                .ifPresent(model -> p.taken()
                        .record(
                                p.group(),
                                p.id(),
                                "figures of model " + model.name()
                                        + (model.replaced().isEmpty()
                                                ? ""
                                                : ", but for " + String.join(", ", model.replaced())),
                                model.source()));
        return bound(p, p.get("standby", Boolean.class));
    }

    /** A producer of a catalogue, at the speed the catalogue states. */
    static VacuumProducer item(Section p) {
        return bound(p, false);
    }

    private static VacuumProducer bound(Section p, boolean standby) {
        boolean lobe = p.get("kind", String.class).equals("lobe");
        Machine machine = lobe ? lobePump(p) : curveMachine(p);
        Optional<Belt> belt = p.section("belt").map(ProducerBinder::belt);
        RotationalSpeed speed = belt.map(Belt::machineSpeed).orElseGet(() -> speed(p));
        List<?> range = p.items("speed range");
        boolean ranged = range.size() == 2;
        if (!ranged) {
            p.derive("speed range", "no wider than its one speed");
        }
        RotationalSpeed least = ranged ? (RotationalSpeed) range.get(0) : speed;
        RotationalSpeed greatest = ranged ? (RotationalSpeed) range.get(1) : speed;
        Drive drive = p.find("hold", PressureDifference.class)
                .<Drive>map(hold -> new Drive.Holding(least, greatest, hold))
                .orElseGet(() -> new Drive.Fixed(speed));
        return new VacuumProducer(
                p.id(),
                machine,
                drive,
                motor(p),
                p.get("deepest vacuum", PressureDifference.class),
                p.get("greatest rise", TemperatureRise.class),
                least,
                greatest,
                p.section("silencer").map(StationBinder::statedLoss),
                standby,
                p.find("model", Model.class),
                belt,
                p.find("seal water", Temperature.class));
    }

    private static RotationalSpeed speed(Section p) {
        if (p.has("hold")) {
            return (RotationalSpeed) p.items("speed range").get(1);
        }
        return p.find("speed", RotationalSpeed.class).orElseGet(() -> {
            RotationalSpeed rated = p.get("rated speed", RotationalSpeed.class);
            p.derive("speed", "that of its curve");
            return rated;
        });
    }

    private static Belt belt(Section belt) {
        return new Belt(
                belt.get("motor speed", RotationalSpeed.class),
                belt.get("motor sheave", Length.class),
                belt.get("machine sheave", Length.class),
                belt.number("slip"));
    }

    private static Motor motor(Section p) {
        return new Motor(
                p.get("motor", Power.class),
                p.number("service factor"),
                p.find("poles", Integer.class),
                p.find("start", String.class).map(ProducerBinder::starting),
                p.find("nameplate current", ElectricCurrent.class),
                p.find("motor efficiency", Ratio.class).map(Ratio::value),
                p.find("power factor", Ratio.class).map(Ratio::value));
    }

    private static Motor.Starting starting(String words) {
        return Arrays.stream(Motor.Starting.values())
                .filter(starting -> starting.words().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private static Machine lobePump(Section p) {
        return new Machine.LobePump(
                p.get("displacement", Volume.class),
                p.get("slip at 1 psi", RotationalSpeed.class),
                p.number("mechanical efficiency"),
                p.get("idle loss", Power.class));
    }

    private static Machine curveMachine(Section p) {
        String kind = p.get("kind", String.class);
        boolean dynamic = p.find("dynamic", Boolean.class).orElseGet(() -> {
            boolean byKind = PlantKeys.isDynamic(kind);
            p.derive("dynamic", byKind ? "yes" : "no");
            return byKind;
        });
        return new Machine.CurveMachine(
                kind,
                p.get("rated speed", RotationalSpeed.class),
                p.get("rated density", Density.class),
                dynamic,
                p.sections("curve").stream().map(ProducerBinder::curvePoint).toList());
    }

    private static Machine.CurvePoint curvePoint(Section point) {
        return new Machine.CurvePoint(
                point.get("flow", ActualVolumeFlow.class),
                point.get("vacuum", PressureDifference.class),
                point.get("power", Power.class));
    }
}
