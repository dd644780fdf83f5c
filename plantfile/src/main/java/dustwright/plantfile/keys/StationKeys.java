package dustwright.plantfile.keys;

import static dustwright.plantfile.keys.Amounts.*;

import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.plantfile.keys.Group.Choice;
import dustwright.plantfile.keys.Shape.Keys;
import dustwright.plantfile.keys.Shape.Word;
import java.util.List;

/** The keys of a station: receiver, filter, valves and producers. */
final class StationKeys {
    private static final Source PRACTICE = Source.commonPractice();

    private StationKeys() {}

    private static final Group RECEIVER = new Group(
            "a receiver",
            Place.Kind.RECEIVER,
            List.of(
                    Key.optional("diameter", VESSEL, "Diameter of the shell."),
                    Key.optional(
                            "free area",
                            CLOTH,
                            "Cross-section left between the filter elements, for the can velocity.")),
            List.of());

    private static final Group PRESSURE_DROP = new Group(
            "a filter's pressure drop",
            Place.Kind.FILTER,
            List.of(
                    Key.required("at", ACTUAL_FLOW, "Actual flow at which the pressure drops hold."),
                    Key.required("clean", LOSS_PRESSURE, "Pressure drop of the new filter."),
                    Key.required("normal", LOSS_PRESSURE, "Pressure drop in ordinary service."),
                    Key.required("dirty", LOSS_PRESSURE, "Pressure drop at which it is serviced.")),
            List.of());

    private static final Group RESISTANCE = new Group(
            "a filter's resistance",
            Place.Kind.FILTER,
            List.of(
                    Key.required("clean", FILTER_RESISTANCE, "Resistance of the new filter."),
                    Key.required("normal", FILTER_RESISTANCE, "Resistance in ordinary service."),
                    Key.required("dirty", FILTER_RESISTANCE, "Resistance at which it is serviced.")),
            List.of());

    private static final Group FILTER = new Group(
            "a filter",
            Place.Kind.FILTER,
            List.of(
                    Key.required("cloth", CLOTH, "Area of cloth."),
                    Key.optional("pressure drop", new Keys(PRESSURE_DROP), "Pressure drops at one actual flow."),
                    Key.optional(
                            "resistance", new Keys(RESISTANCE), "Pressure drop over filtration velocity, instead.")),
            List.of(Choice.one(List.of(List.of("pressure drop"), List.of("resistance")))));

    private static final List<Key> STATED_LOSS = List.of(
            Key.required("loss", LOSS_PRESSURE, "Pressure drop at the stated flow, at the site's ambient density."),
            Key.required("at", FREE_AIR, "Free air at which the loss holds."));

    private static final Group SAFETY_FILTER =
            new Group("a safety filter", Place.Kind.SAFETY_FILTER, STATED_LOSS, List.of());
    private static final Group SILENCER = new Group("a silencer", Place.Kind.SILENCER, STATED_LOSS, List.of());

    private static final Group RELIEF = new Group(
            "a relief valve",
            Place.Kind.RELIEF_VALVE,
            List.of(
                    Key.required("set", VACUUM, "Vacuum at which it begins to open."),
                    Key.required("full", VACUUM, "Vacuum at which it passes its rated flow."),
                    Key.required("rated", FREE_AIR, "Free air it admits at `full`.")),
            List.of());

    private static final Group VENT = new Group(
            "a vent valve",
            Place.Kind.VENT_VALVE,
            List.of(
                    Key.optional("diameter", SMALL_DIAMETER, "Diameter of its opening."),
                    Key.optional("area", OPENING, "Area of its opening, instead of a diameter."),
                    Key.otherwise(
                            "discharge coefficient",
                            COEFFICIENT,
                            "0.6",
                            PRACTICE,
                            "Discharge coefficient of the opening.")),
            List.of(Choice.one(List.of(List.of("diameter"), List.of("area")))));

    private static final Group ROTARY_VALVE = new Group(
            "a rotary valve",
            Place.Kind.ROTARY_VALVE,
            List.of(
                    Key.required("swept", POCKETS, "Volume of all pockets per turn."),
                    Key.required("speed", SLOW_ROTATION, "Speed of the rotor."),
                    Key.otherwise("fill", SHARE, "30 %", PRACTICE, "Share of the pockets filled with dust."),
                    Key.required("clearance", OPENING, "Leaking gap area."),
                    Key.otherwise(
                            "discharge coefficient",
                            COEFFICIENT,
                            "0.6",
                            PRACTICE,
                            "Discharge coefficient of the gaps.")),
            List.of());

    private static final Group CONTAINER = new Group(
            "a container",
            Place.Kind.CONTAINER,
            List.of(
                    Key.required("kind", new Word(List.of("bulk bag", "drum")), "What the dust falls into."),
                    Key.required("volume", CONTAINER_VOLUME, "Volume up to the level probe."),
                    Key.optional("safe working load", CONTAINER_MASS, "Greatest mass.")),
            List.of());

    private static final List<Key> DRIVE_AND_LIMITS = List.of(
            Key.optional("hold", VACUUM, "Vacuum a drive holds at the producer by its speed, instead of one speed."),
            Key.derived(
                    "speed range",
                    new Shape.Parts(List.of(ROTATION, ROTATION)),
                    "the one stated speed",
                    Source.ownReading("a producer without a stated range keeps its speed"),
                    "[least, greatest] speed; required with `hold`."),
            Key.required("motor", MOTOR, "Nameplate power of the motor."),
            Key.required("deepest vacuum", VACUUM, "Stated limit of vacuum at its inlet."),
            Key.required("greatest rise", RISE, "Stated limit of the air's temperature rise."),
            Key.optional("silencer", new Keys(SILENCER), "Loss on its discharge."),
            Key.otherwise(
                    "standby",
                    new Shape.YesNo(),
                    "no",
                    Source.ownReading("runs unless it says standby"),
                    "`yes` when it stands by."));

    private static final Group LOBE = new Group(
            "a lobe pump",
            Place.Kind.PRODUCER,
            join(
                    List.of(
                            Key.required("kind", new Word(List.of("lobe")), "Lobe-type positive displacement pump."),
                            Key.required("displacement", DISPLACEMENT, "Volume displaced per turn."),
                            Key.otherwise(
                                    "slip at 1 psi",
                                    SLIP,
                                    "130 rpm",
                                    Source.fromMemory(
                                            "lobe pumps range from 60 to 300 rpm; a catalogue states it per machine"),
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
                            Key.optional("speed", ROTATION, "Speed by belt or direct drive.")),
                    DRIVE_AND_LIMITS),
            List.of(Choice.one(List.of(List.of("speed"), List.of("hold")))));

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
    static final List<String> DISPLACING = List.of("claw", "liquid ring", "rotary vane", "screw");

    private static final Group CURVE = new Group(
            "a vacuum producer known by its curve",
            Place.Kind.PRODUCER,
            join(
                    List.of(
                            Key.required(
                                    "kind", new Word(join(DYNAMIC, DISPLACING)), "The trade's word for the machine."),
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
                                    "Density at the machine's inlet at which the curve was taken."),
                            Key.derived(
                                    "speed",
                                    ROTATION,
                                    "the rated speed",
                                    Source.ownReading(
                                            "a machine without a stated speed runs at the speed of its curve"),
                                    "Speed by belt or direct drive.")),
                    DRIVE_AND_LIMITS),
            List.of(Choice.atMostOne(List.of(List.of("speed"), List.of("hold")))));

    static final Group STATION = new Group(
            "a station",
            Place.Kind.STATION,
            List.of(
                    Key.optional("at", new Shape.Coordinates(), "Place of the receiver's inlet."),
                    Key.optional("receiver", new Keys(RECEIVER), "The vessel that separates, filters and holds."),
                    Key.required("filter", new Keys(FILTER), "Filter elements of the receiver."),
                    Key.optional("safety filter", new Keys(SAFETY_FILTER), "Filter ahead of the producer."),
                    Key.optional("relief valve", new Keys(RELIEF), "Vacuum relief valve at the producers' inlet."),
                    Key.optional("vent valve", new Keys(VENT), "Valve that stops the pull in the tubing."),
                    Key.optional("rotary valve", new Keys(ROTARY_VALVE), "Rotor that discharges dust."),
                    Key.optional("container", new Keys(CONTAINER), "Bulk bag or drum."),
                    Key.required(
                            "producers",
                            new Shape.Named("producer", new Shape.Kinds(List.of(LOBE, CURVE))),
                            "Vacuum producers in parallel, each behind a check valve.")),
            List.of());

    private static <T> List<T> join(List<T> first, List<T> second) {
        List<T> both = new java.util.ArrayList<>(first);
        both.addAll(second);
        return both;
    }
}
