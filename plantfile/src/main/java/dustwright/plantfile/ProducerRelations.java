package dustwright.plantfile;

import dustwright.engine.electrical.Motor;
import dustwright.engine.electrical.MotorSpeed;
import dustwright.engine.producer.LeastPower;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.SupplyFrequency;
import dustwright.engine.quantity.Units;
import dustwright.plantfile.keys.PlantKeys;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What the values of a vacuum producer must fulfil together, in a plant file and in a catalogue alike. */
final class ProducerRelations {
    /** Speed over that of the curve beyond which a slip is meant: drives hardly pass 1.2; common practice, no source. */
    private static final double MOST_CARRIED = 4;

    private final SourceMap lines;
    private final Faults faults;

    ProducerRelations(SourceMap lines, Faults faults) {
        this.lines = lines;
        this.faults = faults;
    }

    /**
     * A producer of a plant.
     *
     * @param supplied whether the plant states its electrical supply
     */
    void check(Section producer, boolean supplied) {
        check(producer);
        boolean turns = producer.has("speed") || producer.has("hold") || producer.has("rated speed");
        boolean motorSpeed = producer.has("motor speed") || (producer.has("poles") && supplied);
        for (String coupling : List.of("belt", "coupled")) {
            if (producer.has(coupling) && !turns && !motorSpeed) {
                fault(
                        producer,
                        coupling,
                        "the motor's speed is not known, so neither is that of the producer",
                        "\"motor speed\" of its nameplate, or \"poles\" and the plant's \"supply\"");
            }
        }
    }

    /** A producer of a plant or of a catalogue. */
    void check(Section producer) {
        motor(producer);
        producer.find("poles", Integer.class)
                .filter(poles -> poles % 2 != 0)
                .ifPresent(poles -> fault(
                        producer, "poles", "a motor of " + poles + " poles: poles come in pairs", "2, 4, 6 or 8"));
        if (producer.has("seal water")
                && producer.find("kind", String.class)
                        .filter("liquid ring"::equals)
                        .isEmpty()) {
            fault(producer, "seal water", "seal water on a machine that has none", "\"kind: liquid ring\"");
        }
        if (producer.has("hold")
                && producer.find("start", String.class)
                        .filter(start -> !start.equals(Motor.Starting.DRIVE.words()))
                        .isPresent()) {
            fault(
                    producer,
                    "start",
                    "another start than by the drive that holds the vacuum",
                    "\"start: drive\", or none");
        }
        if (producer.has("curve taken") && !dynamic(producer)) {
            fault(
                    producer,
                    "curve taken",
                    "\"curve taken\" of a machine that is not dynamic: its curve means the same either way",
                    "a dynamic machine, by its \"kind\" or by \"dynamic: yes\"");
        }
        List<Section> curve = producer.sections("curve");
        for (int i = 0; i < curve.size(); i++) {
            power(producer, curve.get(i), i);
        }
        for (int i = 1; i < curve.size(); i++) {
            falls(producer, curve.get(i), curve.get(i - 1), i);
        }
        carried(producer);
        List<?> range = producer.items("speed range");
        if (range.size() == 2) {
            double least = ((RotationalSpeed) range.get(0)).si();
            double greatest = ((RotationalSpeed) range.get(1)).si();
            if (!(least <= greatest)) {
                fault(producer, "speed range", "a range whose least is above its greatest", "[least, greatest]");
            }
            producer.find("speed", RotationalSpeed.class)
                    .filter(s -> s.si() < least || s.si() > greatest)
                    .ifPresent(s -> fault(
                            producer,
                            "speed",
                            "the speed lies outside its own range",
                            "a speed within \"speed range\""));
        } else if (producer.has("hold") && !producer.has("speed range")) {
            fault(
                    producer,
                    "hold",
                    "a drive that holds a vacuum without its range of speed",
                    "\"speed range: [700 rpm, 2200 rpm]\"");
        }
    }

    /** A curve is carried to other speeds by the affinity laws, flow with the speed and power with its cube, which nobody trusts so far. */
    private void carried(Section producer) {
        Stream<RotationalSpeed> range = producer.items("speed range").stream().map(RotationalSpeed.class::cast);
        Stream<RotationalSpeed> stated = producer.find("speed", RotationalSpeed.class).stream();
        double hertz = producer.find("motor hertz", SupplyFrequency.class)
                .map(SupplyFrequency::hertz)
                .orElse(60.0);
        Stream<RotationalSpeed> turned = producer
                .find("motor speed", RotationalSpeed.class)
                .or(() -> producer.find("poles", Integer.class)
                        .filter(poles -> poles % 2 == 0)
                        .map(poles -> new RotationalSpeed(MotorSpeed.synchronous_perS(hertz, poles))))
                .flatMap(motor -> turnedBy(producer, motor))
                .stream();
        double fastest_perS = Stream.of(range, stated, turned)
                .flatMap(speeds -> speeds)
                .mapToDouble(RotationalSpeed::revolutionsPerSecond)
                .max()
                .orElse(0);
        producer.find("rated speed", RotationalSpeed.class)
                .filter(rated -> fastest_perS > MOST_CARRIED * rated.revolutionsPerSecond())
                .ifPresent(rated -> fault(
                        producer,
                        "rated speed",
                        "a curve carried to more than four times its speed",
                        "the speed at which the curve was taken, at least a quarter of that at which it turns"));
    }

    /** How fast its motor turns it, where it is coupled to it or on its belt, whose slip is left out. */
    private static Optional<RotationalSpeed> turnedBy(Section producer, RotationalSpeed motor) {
        Optional<Length> wheel = producer.section("belt").flatMap(b -> b.find("motor sheave", Length.class));
        Optional<Length> driven = producer.section("belt").flatMap(b -> b.find("machine sheave", Length.class));
        if (wheel.isPresent() && driven.isPresent()) {
            return Optional.of(new RotationalSpeed(motor.revolutionsPerSecond()
                    * wheel.get().metres()
                    / driven.get().metres()));
        }
        return producer.has("coupled") ? Optional.of(motor) : Optional.empty();
    }

    /** As stated, or by its kind; one whose kind is not known here counts as dynamic, for that is told already. */
    private static boolean dynamic(Section producer) {
        return producer.find("dynamic", Boolean.class)
                .or(() -> producer.find("kind", String.class).map(PlantKeys::isDynamic))
                .orElse(true);
    }

    /** No machine moves air on less than the work of slow, cooled compression to the atmosphere (equation PRD-29). */
    private void power(Section producer, Section point, int index) {
        Optional<Power> shaft = point.find("power", Power.class);
        Optional<ActualVolumeFlow> flow = point.find("flow", ActualVolumeFlow.class);
        Optional<PressureDifference> vacuum = point.find("vacuum", PressureDifference.class);
        if (shaft.isEmpty() || flow.isEmpty() || vacuum.isEmpty()) {
            return;
        }
        double least_W = LeastPower.of(flow.get(), vacuum.get()).watts();
        if (shaft.get().watts() < least_W) {
            fault(
                    producer,
                    "curve[" + index + "]",
                    String.format(
                            Locale.ROOT,
                            "less shaft power than the air of this point takes: %.2f kW (%.2f hp) at least",
                            least_W / 1000,
                            least_W / Units.HORSEPOWER_W),
                    "\"power\" at the shaft, of this flow and vacuum, from the maker's curve");
        }
    }

    private void falls(Section producer, Section point, Section before, int index) {
        Optional<Quantity> flow = point.find("flow", Quantity.class);
        Optional<Quantity> flowBefore = before.find("flow", Quantity.class);
        Optional<Quantity> vacuum = point.find("vacuum", Quantity.class);
        Optional<Quantity> vacuumBefore = before.find("vacuum", Quantity.class);
        boolean flowFalls = flow.isEmpty()
                || flowBefore.isEmpty()
                || flow.get().si() < flowBefore.get().si();
        boolean vacuumRises = vacuum.isEmpty()
                || vacuumBefore.isEmpty()
                || vacuum.get().si() > vacuumBefore.get().si();
        if (!flowFalls || !vacuumRises) {
            fault(
                    producer,
                    "curve[" + index + "]",
                    "the curve turns back here",
                    "points in order: flow falling, vacuum rising");
        }
    }

    /** A motor must at least turn the machine over. */
    private void motor(Section producer) {
        Optional<Power> motor = producer.find("motor", Power.class);
        Optional<Power> idle = producer.find("idle loss", Power.class);
        if (motor.isPresent()
                && idle.isPresent()
                && !(motor.get().watts() > idle.get().watts())) {
            fault(producer, "motor", "a motor smaller than the idle loss", "a motor above \"idle loss\"");
        }
        OptionalDouble least_W = producer.sections("curve").stream()
                .flatMap(point -> point.find("power", Power.class).stream())
                .mapToDouble(Power::watts)
                .min();
        if (motor.isPresent() && least_W.isPresent() && !(motor.get().watts() > least_W.getAsDouble())) {
            fault(
                    producer,
                    "motor",
                    "a motor smaller than the least power of the curve, which is its idle loss",
                    "a motor that carries at least one point of \"curve\"");
        }
    }

    private void fault(Section section, String key, String message, String expected) {
        String path = Names.path(section.path(), key);
        faults.add(lines.value(path).orElse(section.span()), path, message, expected);
    }
}
