package dustwright.plantfile.keys;

import static dustwright.plantfile.keys.Amounts.*;

import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.producer.StatedLoss;
import dustwright.plantfile.keys.Group.Choice;
import dustwright.plantfile.keys.Shape.Keys;
import java.util.List;
import java.util.stream.Stream;

/** The keys of a station: receiver, filter, valves and producers. */
final class StationKeys {
    private static final Source PRACTICE = Source.commonPractice();

    private StationKeys() {}

    private static final Group RELIEF = new Group(
            "a relief valve",
            Place.Kind.RELIEF_VALVE,
            List.of(
                    Key.required("set", VACUUM, "Vacuum at which it begins to open."),
                    Key.required("full", VACUUM, "Vacuum at which it passes its rated flow."),
                    Key.required("rated", FREE_AIR, "Free air it admits at `full`."),
                    Key.otherwise(
                            "stated for",
                            new Shape.Word(Stream.of(StatedLoss.State.values())
                                    .map(StatedLoss.State::words)
                                    .toList()),
                            StatedLoss.State.STANDARD.words(),
                            Source.ownReading(
                                    "makers rate on 101 325 Pa, 20 °C, dry; the same opening admits less where the air is thinner"),
                            "Air for which `rated` holds: 101 325 Pa, 20 °C, dry, or the site's own at its barometer.")),
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

    static final Group STATION = new Group(
            "a station",
            Place.Kind.STATION,
            List.of(
                    Key.optional("at", new Shape.Coordinates(), "Place of the receiver's inlet."),
                    Key.optional(
                            "receiver",
                            new Keys(ReceiverKeys.RECEIVER),
                            "The vessel that separates, filters and holds."),
                    Key.required("filter", new Keys(ReceiverKeys.FILTER), "Filter elements of the receiver."),
                    Key.optional(
                            "safety filter", new Keys(ReceiverKeys.SAFETY_FILTER), "Filter ahead of the producer."),
                    Key.optional("relief valve", new Keys(RELIEF), "Vacuum relief valve at the producers' inlet."),
                    Key.optional("vent valve", new Keys(VENT), "Valve that stops the pull in the tubing."),
                    Key.optional("rotary valve", new Keys(ReceiverKeys.ROTARY_VALVE), "Rotor that discharges dust."),
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
