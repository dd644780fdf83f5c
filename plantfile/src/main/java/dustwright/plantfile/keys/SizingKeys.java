package dustwright.plantfile.keys;

import static dustwright.plantfile.keys.Amounts.*;

import dustwright.engine.finding.Place;
import dustwright.plantfile.keys.Shape.Keys;
import dustwright.plantfile.keys.Shape.ListOf;
import dustwright.plantfile.keys.Shape.Named;
import dustwright.plantfile.keys.Shape.Target;
import java.util.List;

/** The keys of what is open to choice. */
final class SizingKeys {
    private SizingKeys() {}

    private static final Group TUBES = new Group(
            "a choice of tubes",
            Place.Kind.RUN,
            List.of(
                    Key.required("runs", new ListOf(new Shape.Id(Target.RUN), 1), "Runs that get the same size."),
                    Key.required(
                            "of",
                            new Named("tube", TUBE_COST),
                            "Sizes to choose from, by the id of the tube, with the price of a length laid.")),
            List.of());

    private static final Group HOSES = new Group(
            "a choice of hoses",
            Place.Kind.INLET,
            List.of(
                    Key.required("inlets", new ListOf(new Shape.Id(Target.INLET), 1), "Inlets that get the same hose."),
                    Key.required(
                            "of",
                            new Named("hose", PIECE_COST),
                            "Hoses to choose from, by their id, with the price of one.")),
            List.of());

    private static final Group CLOTH = new Group(
            "a cloth area to choose",
            Place.Kind.FILTER,
            List.of(
                    Key.required("area", Amounts.CLOTH, "Area of all elements."),
                    Key.required("price", INVESTMENT, "Price of the filter with this area.")),
            List.of());

    static final Group SIZING = new Group(
            "what is open to choice",
            Place.Kind.PLANT,
            List.of(
                    Key.optional(
                            "tubes",
                            new Named("group of runs", new Keys(TUBES)),
                            "Sizes of tubing. What `tube` of a run says is the present size."),
                    Key.optional("hoses", new Named("group of inlets", new Keys(HOSES)), "Hoses."),
                    Key.optional(
                            "producers",
                            new Named("station", new Named("producer", INVESTMENT)),
                            "One of the producers described at a station, by its id, with its price fitted. The others are not bought; let them stand by."),
                    Key.optional(
                            "cloth",
                            new Named("station", new Named("cloth area", new Keys(CLOTH))),
                            "The cloth area of a station's filter.")),
            List.of());
}
