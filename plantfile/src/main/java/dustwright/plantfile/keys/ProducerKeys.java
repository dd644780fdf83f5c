package dustwright.plantfile.keys;

import static dustwright.plantfile.keys.Amounts.*;

import dustwright.engine.electrical.Motor;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.producer.Machine.CurveMachine.Taken;
import dustwright.engine.producer.StatedLoss;
import dustwright.plantfile.keys.Group.Choice;
import dustwright.plantfile.keys.Shape.Keys;
import dustwright.plantfile.keys.Shape.Word;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The keys of a vacuum producer: in a plant file by all its figures or by the model of a catalogue, and in the catalogue itself. */
final class ProducerKeys {
    private static final Source PRACTICE = Source.commonPractice();

    private ProducerKeys() {}

    /** A loss stated at one flow: of a safety filter, of a silencer. */
    static final List<Key> STATED_LOSS = List.of(
            Key.required("loss", LOSS_PRESSURE, "Pressure drop at the stated flow, in the air it is stated for."),
            Key.required("at", FREE_AIR, "Free air at which the loss holds."),
            Key.otherwise(
                    "stated for",
                    new Word(Stream.of(StatedLoss.State.values())
                            .map(StatedLoss.State::words)
                            .toList()),
                    StatedLoss.State.STANDARD.words(),
                    Source.ownReading(
                            "makers rate on 101 325 Pa, 20 °C, dry; thinner air loses more at the same mass flow"),
                    "Air for which loss and flow hold: 101 325 Pa, 20 °C, dry, or the site's own at its barometer."));

    private static final Group SILENCER = new Group("a silencer", Place.Kind.SILENCER, STATED_LOSS, List.of());

    private static final Group BELT = new Group(
            "a belt",
            Place.Kind.PRODUCER,
            List.of(
                    Key.required("motor sheave", SHEAVE, "Pitch diameter of the sheave on the motor."),
                    Key.required("machine sheave", SHEAVE, "Pitch diameter of the sheave on the producer."),
                    Key.otherwise("slip", BELT_SLIP, "1 %", PRACTICE, "Slip of the belt.")),
            List.of());

    private static final List<Key> MOTOR_DATA = List.of(
            Key.required("motor", MOTOR, "Nameplate power of the motor."),
            Key.otherwise(
                    "service factor",
                    SERVICE_FACTOR,
                    "1",
                    Source.ownReading("none stated, so the nameplate is the limit of the motor's load"),
                    "Service factor on the nameplate: a reserve, lost on a drive, above 1000 m and above 40 °C."),
            Key.optional(
                    "motor at site",
                    MOTOR,
                    "Power the motor gives at this site's ambient and altitude, by its maker; asked for above 40 °C or 1000 m, there 1 K"
                            + " less for each 100 m."),
            Key.optional("poles", new Shape.Whole(2, 8), "Poles of the motor: 2, 4, 6 or 8."),
            Key.optional("motor speed", MOTOR_TURNS, "Speed of the motor at full load, from its nameplate."),
            Key.derived(
                    "motor hertz",
                    HERTZ,
                    "that of the supply",
                    Source.ownReading("a nameplate speed without its frequency is taken at that of the supply"),
                    "Frequency at which that speed holds; on another supply the speed follows the frequency."),
            Key.otherwise(
                    "motor slip",
                    MOTOR_SLIP,
                    "2 %",
                    PRACTICE,
                    "Slip of the motor at full load, where its nameplate speed is not stated: 1 to 3 % from 3 to 100 hp."),
            Key.optional(
                    "coupled",
                    new Word(List.of("direct")),
                    "`direct`: the producer turns as its motor does, on one shaft or by a coupling."),
            Key.optional("nameplate current", CURRENT, "Rated current at the supply's voltage: sizes the overload."),
            Key.optional(
                    "drive input current",
                    CURRENT,
                    "Rated input current of its drive, from the drive's maker: sizes its branch."),
            Key.optional("motor efficiency", EFFICIENCY, "Efficiency at rated load."),
            Key.optional("power factor", POWER_FACTOR, "Power factor at rated load."));

    private static final List<Key> LIMITS = List.of(
            Key.required(
                    "deepest vacuum",
                    VACUUM,
                    "Stated limit of vacuum at its inlet, at a barometer of 101 325 Pa, as makers state it; at another it is carried over"
                            + " at the same pressure ratio."),
            Key.required("greatest rise", RISE, "Stated limit of the air's temperature rise."),
            Key.optional("silencer", new Keys(SILENCER), "Loss on its discharge."),
            Key.optional("casing sound", SOUND_LEVEL, "Its casing and drive at 1 m, without a hood."),
            Key.optional("discharge sound", SOUND_LEVEL, "Its open discharge at 1 m, without a silencer."));

    private static final Key SPEED_RANGE = Key.derived(
            "speed range",
            new Shape.Parts(List.of(ROTATION, ROTATION)),
            "the one stated speed",
            Source.ownReading("a producer without a stated range keeps its speed"),
            "[least, greatest] speed; required with `hold`.");

    private static final List<Key> IN_THE_PLANT = List.of(
            Key.optional("hold", VACUUM, "Vacuum a drive holds at the producer by its speed, instead of one speed."),
            Key.optional(
                    "belt",
                    new Keys(BELT),
                    "Belt between motor and producer; it gives the speed where none is stated."),
            Key.optional(
                    "start",
                    new Word(Arrays.stream(Motor.Starting.values())
                            .map(Motor.Starting::words)
                            .toList()),
                    "How its motor is started."),
            Key.otherwise(
                    "standby",
                    new Shape.YesNo(),
                    "no",
                    Source.ownReading("runs unless it says standby"),
                    "`yes` when it stands by."));

    private static final List<Key> LOBE_MACHINE = List.of(
            Key.required("kind", new Word(List.of("lobe")), "Lobe-type positive displacement pump."),
            Key.required("displacement", DISPLACEMENT, "Volume displaced per turn."),
            Key.otherwise(
                    "slip at 1 psi",
                    SLIP,
                    "130 rpm",
                    Source.fromMemory("lobe pumps range from 60 to 300 rpm; a catalogue states it per machine"),
                    "Slip speed at 1 psi on air of 1.2041 kg/m³: the strongest figure of all."),
            Key.otherwise(
                    "mechanical efficiency",
                    EFFICIENCY,
                    "0.9",
                    PRACTICE,
                    "Air power over shaft power without idle loss."),
            Key.otherwise(
                    "idle loss",
                    IDLE,
                    "0 W",
                    Source.ownReading("none stated, so none is added to the shaft power"),
                    "Shaft power at no pressure difference."),
            Key.optional(
                    "speed",
                    ROTATION,
                    "Speed it turns at; beside `belt` or `coupled` it is compared with what they give."));

    private static final Group CURVE_POINT = new Group(
            "a point of a producer's curve",
            Place.Kind.PRODUCER,
            List.of(
                    Key.required("flow", CURVE_FLOW, "Actual volume flow at the machine's inlet."),
                    Key.required("vacuum", CURVE_VACUUM, "Vacuum it makes."),
                    Key.required("power", IDLE, "Shaft power.")),
            List.of());

    /** Words for machines known by a curve whose vacuum follows speed² and inlet density. */
    static final List<String> DYNAMIC = List.of("side channel", "multistage centrifugal");

    /** Words for machines known by a curve whose flow follows speed. */
    private static final List<String> DISPLACING = List.of("claw", "liquid ring", "rotary vane", "screw");

    private static final List<Key> CURVE_MACHINE = List.of(
            Key.required("kind", new Word(joined(Stream.of(DYNAMIC, DISPLACING))), "The trade's word for the machine."),
            Key.required(
                    "curve",
                    new Shape.ListOf(new Keys(CURVE_POINT), 2),
                    "Measured points: flow falling, vacuum rising."),
            Key.derived(
                    "dynamic",
                    new Shape.YesNo(),
                    "`yes` for " + String.join(" and ", DYNAMIC) + ", else `no`",
                    Source.ownReading("by the kind of machine"),
                    "`yes`: vacuum follows speed² and inlet density; `no`: flow follows speed."),
            Key.required("rated speed", ROTATION, "Speed of the curve."),
            Key.otherwise(
                    "rated density",
                    AIR_DENSITY,
                    "1.2 kg/m3",
                    PRACTICE,
                    "Density at the machine's inlet at which the curve was taken; where it was taken under its own vacuum, that with the inlet"
                            + " open."),
            Key.optional(
                    "curve taken",
                    new Word(List.of(Taken.AT_RATED_DENSITY.words(), Taken.UNDER_ITS_VACUUM.words())),
                    "How a dynamic machine's curve was taken: every point at `rated density`, or `under its own vacuum` with 101 325 Pa behind"
                            + " it, as curves over inlet vacuum mostly are. Without it nothing is said to hold."),
            Key.optional("seal water", SEAL_WATER, "Temperature of a liquid-ring pump's seal water, at its hottest."),
            Key.derived(
                    "speed",
                    ROTATION,
                    "the rated speed",
                    Source.ownReading("a machine without a stated speed runs at the speed of its curve"),
                    "Speed it turns at; beside `belt` or `coupled` it is compared with what they give."));

    private static final List<Choice> SPEED_AND_COUPLING = List.of(
            Choice.atMostOne(List.of(List.of("speed"), List.of("hold"))),
            Choice.atMostOne(List.of(List.of("belt"), List.of("coupled"))));

    private static final List<Choice> TURNED =
            List.of(Choice.atLeastOne(List.of(List.of("speed"), List.of("hold"), List.of("belt"), List.of("coupled"))));

    /** A belt or coupling that the plant file states goes before the speed of a model. */
    private static final List<Choice> BEFORE_THE_MODEL = List.of(
            Choice.any(List.of(List.of("belt"), List.of("speed"))),
            Choice.any(List.of(List.of("coupled"), List.of("speed"))));

    private static final Group LOBE = new Group(
            "a lobe pump",
            Place.Kind.PRODUCER,
            joined(Stream.of(LOBE_MACHINE, List.of(SPEED_RANGE), MOTOR_DATA, LIMITS, IN_THE_PLANT)),
            joined(Stream.of(SPEED_AND_COUPLING, TURNED)));

    private static final Group CURVE = new Group(
            "a vacuum producer known by its curve",
            Place.Kind.PRODUCER,
            joined(Stream.of(CURVE_MACHINE, List.of(SPEED_RANGE), MOTOR_DATA, LIMITS, IN_THE_PLANT)),
            SPEED_AND_COUPLING);

    /** A producer of a plant: described by its figures, or named by its model with what differs from the catalogue. */
    static final Shape.Kinds PRODUCER =
            new Shape.Kinds(List.of(LOBE, CURVE), List.of(byModel(LOBE, "a lobe pump"), byModel(CURVE, "a machine")));

    /** A producer of a catalogue: every figure that a plant could leave to a default is stated. */
    static final Shape.Kinds CATALOGUE_PRODUCER = new Shape.Kinds(List.of(
            inCatalogue("a lobe pump of the catalogue", LOBE_MACHINE, Set.of()),
            inCatalogue(
                    "a machine of the catalogue",
                    CURVE_MACHINE,
                    Set.of("dynamic", "curve taken", "seal water", "speed"))));

    private static Group byModel(Group group, String words) {
        List<Key> keys = new ArrayList<>();
        keys.add(Key.required("model", new Shape.Text(40), "Model of the catalogue its figures come from."));
        group.keys().forEach(key -> keys.add(relaxed(key)));
        return new Group(
                words + " by its model", group.place(), keys, joined(Stream.of(SPEED_AND_COUPLING, BEFORE_THE_MODEL)));
    }

    private static Key relaxed(Key key) {
        return key.need() instanceof Need.Required ? Key.optional(key.name(), key.shape(), key.help()) : key;
    }

    private static Group inCatalogue(String words, List<Key> machine, Set<String> free) {
        List<Key> keys = new ArrayList<>();
        machine.forEach(key -> keys.add(free.contains(key.name()) ? key : required(key)));
        keys.add(required(SPEED_RANGE));
        keys.addAll(MOTOR_DATA);
        keys.addAll(LIMITS);
        keys.add(Key.optional("note", NOTE, "What a reader of the catalogue should know of it."));
        return new Group(words, Place.Kind.PRODUCER, keys, List.of());
    }

    private static Key required(Key key) {
        return Key.required(key.name(), key.shape(), key.help());
    }

    private static <T> List<T> joined(Stream<List<T>> lists) {
        return lists.flatMap(List::stream).toList();
    }
}
