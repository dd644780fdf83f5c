package dustwright.engine.discharge;

import dustwright.engine.quantity.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * When dust is picked up in a week, and at what rate. Weeks repeat.
 *
 * @param stretches in order, none overlapping the next, within {@link #WEEK_s}
 */
public record WorkWeek(List<Stretch> stretches) {
    /** A week [s]. */
    public static final double WEEK_s = 7 * 24 * 3600.0;

    private static final double DAY_s = 24 * 3600.0;
    private static final Range FEED = new Range("a week of cleaning", "ṁ", "kg/s", 0, 1e3);
    private static final Range GOAL = new Range("a week of cleaning", "m", "kg", 0, 1e6);
    private static final Range TIME = new Range("a week of cleaning", "t", "s", 0, WEEK_s);

    public WorkWeek {
        stretches = List.copyOf(stretches);
        double end_s = 0;
        for (Stretch stretch : stretches) {
            if (stretch.from_s() < end_s) {
                throw new IllegalArgumentException("stretches of cleaning overlap or are out of order");
            }
            end_s = stretch.to_s();
        }
    }

    /**
     * Users vacuum without a break, to the end or until a stated mass is picked up.
     *
     * @param from_s from the start of the week [s]
     * @param to_s end [s]
     * @param feed_kgPerS dust that all of them pick up together [kg/s]
     * @param goal_kg mass after which they stop [kg]; absent where they go on to the end
     */
    public record Stretch(double from_s, double to_s, double feed_kgPerS, OptionalDouble goal_kg) {
        /** Users vacuum to the end. */
        public Stretch(double from_s, double to_s, double feed_kgPerS) {
            this(from_s, to_s, feed_kgPerS, OptionalDouble.empty());
        }

        public Stretch {
            TIME.check(from_s);
            TIME.check(to_s);
            FEED.check(feed_kgPerS);
            goal_kg.ifPresent(GOAL::check);
            if (!(to_s > from_s)) {
                throw new IllegalArgumentException("a stretch of cleaning ends after it begins");
            }
        }

        double length_s() {
            return to_s - from_s;
        }

        /** Dust there is to pick up [kg]. */
        double asked_kg() {
            return goal_kg.orElse(length_s() * feed_kgPerS);
        }
    }

    /**
     * Shifts one after another from midnight, the same every working day, each with its cleaning at its end.
     *
     * @param days working days from the first of the week, 1 to 7
     * @param shifts a day, together not longer than it
     * @param shift_s length of a shift [s]
     * @param cleaning_s cleaning at the end of each shift [s], not above the shift
     * @param feed_kgPerS dust picked up meanwhile [kg/s]
     */
    public static WorkWeek ofShifts(int days, int shifts, double shift_s, double cleaning_s, double feed_kgPerS) {
        new Range("a shift", "cleaning", "s", 0, shift_s).check(cleaning_s);
        List<Stretch> stretches = new ArrayList<>();
        if (cleaning_s > 0) {
            ends_s(days, shifts, shift_s)
                    .forEach(end_s -> stretches.add(new Stretch(end_s - cleaning_s, end_s, feed_kgPerS)));
        }
        return new WorkWeek(stretches);
    }

    /**
     * Shifts one after another from midnight, the same every working day. Each is cleaned from its start until a stated mass is picked
     * up, at most to its end: who has to wait cleans longer, and picks up no less.
     *
     * @param days working days from the first of the week, 1 to 7
     * @param shifts a day, together not longer than it
     * @param shift_s length of a shift [s]
     * @param perShift_kg dust to pick up in each shift [kg]
     * @param feed_kgPerS dust picked up meanwhile [kg/s]
     */
    public static WorkWeek ofPickUps(int days, int shifts, double shift_s, double perShift_kg, double feed_kgPerS) {
        return new WorkWeek(ends_s(days, shifts, shift_s).stream()
                .map(end_s -> new Stretch(end_s - shift_s, end_s, feed_kgPerS, OptionalDouble.of(perShift_kg)))
                .toList());
    }

    /** Ends of the shifts of a week [s]. */
    private static List<Double> ends_s(int days, int shifts, double shift_s) {
        new Range("a working week", "days", "-", 1, 7).check(days);
        new Range("a working day", "shifts · length", "s", 0, DAY_s).check(shifts * shift_s);
        List<Double> ends_s = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            for (int shift = 1; shift <= shifts; shift++) {
                ends_s.add(day * DAY_s + shift * shift_s);
            }
        }
        return ends_s;
    }

    /** Time in which users may vacuum in a week [s]. */
    public double cleaning_s() {
        return stretches.stream().mapToDouble(Stretch::length_s).sum();
    }

    /** Dust there is to pick up in a week [kg] (equation DIS-1). */
    public double asked_kg() {
        return stretches.stream().mapToDouble(Stretch::asked_kg).sum();
    }
}
