package dustwright.plantfile.keys;

import static dustwright.plantfile.keys.Amounts.*;

import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.plantfile.keys.Group.Choice;
import dustwright.plantfile.keys.Shape.Keys;
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

    private static final Group SAFETY_FILTER =
            new Group("a safety filter", Place.Kind.SAFETY_FILTER, ProducerKeys.STATED_LOSS, List.of());

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
                    Key.optional(
                            "container",
                            new Shape.Kinds(List.of(ContainerKeys.BULK_BAG, ContainerKeys.DRUM)),
                            "Bulk bag or drum."),
                    Key.required(
                            "producers",
                            new Shape.Named("producer", ProducerKeys.PRODUCER),
                            "Vacuum producers in parallel, each behind a check valve.")),
            List.of());
}
