package dustwright.plantfile.keys;

import static dustwright.plantfile.keys.Amounts.*;

import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.plantfile.keys.Group.Choice;
import dustwright.plantfile.keys.Shape.Keys;
import dustwright.plantfile.keys.Shape.Target;
import java.util.List;

/** The keys of shifts, costs, compressed air and sound. */
final class OperationKeys {
    private static final Source PRACTICE = Source.commonPractice();

    private OperationKeys() {}

    private static final Group PICK_UP = new Group(
            "dust picked up in a shift",
            Place.Kind.USAGE,
            List.of(
                    Key.required("dust", new Shape.Id(Target.DUST), "Which dust."),
                    Key.required("per shift", PICKED_UP, "Mass picked up in each shift."),
                    Key.optional("zone", new Shape.Id(Target.ZONE), "Where; absent, at every inlet with this dust.")),
            List.of());

    static final Group SHIFTS = new Group(
            "shifts",
            Place.Kind.USAGE,
            List.of(
                    Key.required("per day", new Shape.Whole(1, 6), "Shifts a day."),
                    Key.required("days per week", new Shape.Whole(1, 7), "Working days a week."),
                    Key.otherwise("length", SHIFT, "8 h", PRACTICE, "Length of a shift."),
                    Key.otherwise(
                            "weeks per year",
                            new Shape.Whole(1, 52),
                            "52",
                            Source.ownReading("every week of a year of 52 weeks"),
                            "Working weeks a year."),
                    Key.optional(
                            "cleaning",
                            CLEANING,
                            "Time each user vacuums in each shift; all together, at its end, at the largest feed of a design set."),
                    Key.optional(
                            "picked up",
                            new Shape.ListOf(new Keys(PICK_UP), 1),
                            "Dust picked up in each shift, instead of a time: from its start until it is picked up, waiting included, at most to its end."),
                    Key.otherwise(
                            "producers run",
                            new Shape.Word(List.of("while cleaning", "through the shift")),
                            "while cleaning",
                            Source.ownReading("off while nobody vacuums"),
                            "When the producers run.")),
            List.of(Choice.one(List.of(List.of("cleaning"), List.of("picked up")))));

    static final Group COSTS = new Group(
            "the costs",
            Place.Kind.PLANT,
            List.of(
                    Key.optional("electricity", ELECTRICITY, "Price of electrical energy."),
                    Key.optional("compressed air", AIR_COST, "Price of compressed air, by free air."),
                    Key.optional(
                            "container",
                            PIECE_COST,
                            "Price of one bulk bag, or of emptying one drum where `drum` does not say that."),
                    Key.optional("drum", PIECE_COST, "Price of emptying one drum, where bags cost otherwise."),
                    Key.optional("filter set", PIECE_COST, "Price of one set of filter elements, fitted."),
                    Key.optional("filter years", new Shape.Whole(1, 30), "Years a set of filter elements lasts."),
                    Key.optional("labour", LABOUR, "Cost of an hour of work."),
                    Key.optional("upkeep", UPKEEP, "Other upkeep a year."),
                    Key.optional("investment", INVESTMENT, "First cost of the whole system."),
                    Key.optional(
                            "residual",
                            INVESTMENT,
                            "What the system is worth at the end of the comparison, at most `investment`."),
                    Key.optional("interest", INTEREST, "Discount rate a year."),
                    Key.otherwise(
                            "growth",
                            GROWTH,
                            "0 %",
                            Source.ownReading("energy at today's price, real rates"),
                            "Growth of energy prices a year; real where `interest` is real."),
                    Key.optional("years", new Shape.Whole(1, 50), "Years of the comparison."),
                    Key.optional(
                            "motor efficiency",
                            EFFICIENCY,
                            "Efficiency of the producers' motors, where their own entries do not say it."),
                    Key.otherwise(
                            "drive efficiency",
                            EFFICIENCY,
                            "0.95",
                            PRACTICE,
                            "Efficiency of belts and drive together; 1 where directly coupled without a drive.")),
            List.of());

    static final Group AIR = new Group(
            "a station's compressed air",
            Place.Kind.FILTER,
            List.of(
                    Key.optional("per pulse", PULSE, "Free air of one pulse, as the valve's maker states it."),
                    Key.optional("pulses", PULSES, "Pulses of all valves while vacuum is on.")),
            List.of(Choice.atMostOne(List.of(List.of("per pulse", "pulses")))));

    static final Group SOUND = new Group(
            "a station's sound",
            Place.Kind.STATION,
            List.of(
                    Key.optional(
                            "casing",
                            SOUND_LEVEL,
                            "One producer's casing and drive at 1 m, where the producer does not state it."),
                    Key.optional("hood", INSERTION_LOSS, "What a hood over it takes away."),
                    Key.optional(
                            "discharge",
                            SOUND_LEVEL,
                            "One producer's discharge at 1 m, without silencer, where the producer does not state it."),
                    Key.optional("silencer", INSERTION_LOSS, "What the silencer takes away from the discharge."),
                    Key.optional("operator at", DISTANCE, "Distance of the operator from the producers."),
                    Key.optional("background", SOUND_LEVEL, "Everything else, where the operator stands."),
                    Key.optional("time there", SHIFT, "Time the operator spends there in a shift."),
                    Key.optional("elsewhere", SOUND_LEVEL, "Level during the rest of the operator's shift.")),
            List.of());
}
