package dustwright.plantfile;

import dustwright.engine.electrical.Motor;
import dustwright.engine.electrical.MotorSpeed;
import dustwright.engine.electrical.Supply;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.producer.Coupling;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.Machine.CurveMachine.Taken;
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
import dustwright.engine.quantity.SoundPressureLevel;
import dustwright.engine.quantity.SupplyFrequency;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.TemperatureRise;
import dustwright.engine.quantity.Volume;
import dustwright.plantfile.keys.PlantKeys;
import java.util.List;
import java.util.Optional;

/** Makes vacuum producers: of a plant, and of a catalogue to choose from. */
final class ProducerBinder {
    private static final Source SEA_LEVEL = Source.ownReading(
            "makers state it at sea level; it is carried to the site's barometer at the"
                    + " same pressure ratio. If it holds for this site already, enter it times 101 325 Pa over the site's barometer");

    private ProducerBinder() {}

    /** A producer of a plant. That its figures come from a catalogue is put on record. */
    static VacuumProducer producer(Section p, Optional<Supply> supply) {
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
        if (p.find("model", Model.class)
                .filter(model -> model.gives("deepest vacuum"))
                .isEmpty()) {
            p.taken()
                    .record(
                            new Place(Place.Kind.PRODUCER, p.id()),
                            "deepest vacuum as stated at a barometer of 101 325 Pa",
                            SEA_LEVEL);
        }
        return bound(p, p.get("standby", Boolean.class), supply);
    }

    /** A producer of a catalogue, at the speed the catalogue states. */
    static VacuumProducer item(Section p) {
        return bound(p, false, Optional.empty());
    }

    private static VacuumProducer bound(Section p, boolean standby, Optional<Supply> supply) {
        boolean lobe = p.get("kind", String.class).equals("lobe");
        Machine machine = lobe ? lobePump(p) : curveMachine(p);
        Motor motor = motor(p, supply);
        Optional<Coupling> coupling = coupling(p);
        RotationalSpeed speed = speed(p, coupling, motor.speedOn(supply));
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
                motor,
                p.get("deepest vacuum", PressureDifference.class),
                p.get("greatest rise", TemperatureRise.class),
                least,
                greatest,
                p.section("silencer").map(StationBinder::statedLoss),
                standby,
                p.find("model", Model.class),
                coupling,
                p.find("seal water", Temperature.class),
                new VacuumProducer.Sound(
                        p.find("casing sound", SoundPressureLevel.class),
                        p.find("discharge sound", SoundPressureLevel.class)));
    }

    /** As stated; else by belt or coupling, but a machine keeps the speed at which its catalogue couples it; else that of the curve. */
    private static RotationalSpeed speed(Section p, Optional<Coupling> coupling, Optional<RotationalSpeed> motorSpeed) {
        if (p.has("hold")) {
            return (RotationalSpeed) p.items("speed range").get(1);
        }
        boolean own = p.has("belt")
                || p.find("model", Model.class)
                        .filter(model -> model.gives("coupled"))
                        .isEmpty();
        Optional<RotationalSpeed> coupled = coupling.filter(c -> own).flatMap(c -> motorSpeed.map(c::machineSpeed));
        return p.find("speed", RotationalSpeed.class).or(() -> coupled).orElseGet(() -> {
            RotationalSpeed rated = p.get("rated speed", RotationalSpeed.class);
            p.derive("speed", "that of its curve");
            return rated;
        });
    }

    private static Optional<Coupling> coupling(Section p) {
        return p.section("belt")
                .<Coupling>map(belt -> new Coupling.Belt(
                        belt.get("motor sheave", Length.class),
                        belt.get("machine sheave", Length.class),
                        belt.get("slip", Ratio.class)))
                .or(() -> p.find("coupled", String.class).map(direct -> new Coupling.Direct()));
    }

    /** What its speed on the supply rests on is put on record where there is a supply. */
    private static Motor motor(Section p, Optional<Supply> supply) {
        Optional<RotationalSpeed> plate = p.find("motor speed", RotationalSpeed.class);
        boolean byPoles = plate.isEmpty() && p.has("poles") && supply.isPresent();
        if (plate.isPresent() && supply.isPresent() && !p.has("motor hertz")) {
            p.derive("motor hertz", "that of the supply");
        }
        return new Motor(
                p.get("motor", Power.class),
                p.number("service factor"),
                p.find("poles", Integer.class),
                p.find("start", String.class).map(ProducerBinder::starting),
                p.find("nameplate current", ElectricCurrent.class),
                p.find("motor efficiency", Ratio.class).map(Ratio::value),
                p.find("power factor", Ratio.class).map(Ratio::value),
                plate.map(speed -> new Motor.NameplateSpeed(speed, p.find("motor hertz", SupplyFrequency.class))),
                byPoles
                        ? p.number("motor slip")
                        : p.find("motor slip", Ratio.class).map(Ratio::value).orElse(MotorSpeed.USUAL_SLIP),
                p.find("drive input current", ElectricCurrent.class),
                p.find("motor at site", Power.class));
    }

    private static Motor.Starting starting(String words) {
        return Worded.of(Motor.Starting.values(), Motor.Starting::words, words);
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
        Taken taken = p.find("curve taken", String.class)
                .map(words -> Worded.of(Taken.values(), Taken::words, words))
                .orElse(Taken.NOT_STATED);
        boolean underVacuum = dynamic && taken == Taken.UNDER_ITS_VACUUM;
        if (underVacuum) {
            p.taken()
                    .record(
                            p.group(),
                            p.id(),
                            "its curve, taken under its own vacuum, is brought to one density at the inlet: vacuum and power of each point over"
                                    + " 1 − v/101 325 Pa (PRD-37)",
                            Source.published("affinity of a dynamic machine"));
        }
        return new Machine.CurveMachine(
                kind,
                p.get("rated speed", RotationalSpeed.class),
                p.get("rated density", Density.class),
                dynamic,
                taken,
                p.sections("curve").stream()
                        .map(ProducerBinder::curvePoint)
                        .map(point -> underVacuum ? point.atRatedDensity() : point)
                        .toList());
    }

    private static Machine.CurvePoint curvePoint(Section point) {
        return new Machine.CurvePoint(
                point.get("flow", ActualVolumeFlow.class),
                point.get("vacuum", PressureDifference.class),
                point.get("power", Power.class));
    }
}
