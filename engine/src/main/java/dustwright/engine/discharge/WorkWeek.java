package dustwright.engine.discharge;

import dustwright.engine.quantity.Range;
import java.util.ArrayList;
import java.util.List;

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
     * Users vacuum without a break.
     *
     * @param from_s from the start of the week [s]
     * @param to_s end [s]
     * @param feed_kgPerS dust that all of them pick up together [kg/s]
     */
    public record Stretch(double from_s, double to_s, double feed_kgPerS) {
        public Stretch {
            TIME.check(from_s);
            TIME.check(to_s);
            FEED.check(feed_kgPerS);
            if (!(to_s > from_s)) {
                throw new IllegalArgumentException("a stretch of cleaning ends after it begins");
            }
        }

        double length_s() {
            return to_s - from_s;
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
        new Range("a working week", "days", "-", 1, 7).check(days);
        new Range("a working day", "shifts · length", "s", 0, DAY_s).check(shifts * shift_s);
        new Range("a shift", "cleaning", "s", 0, shift_s).check(cleaning_s);
        List<Stretch> stretches = new ArrayList<>();
        for (int day = 0; day < days && cleaning_s > 0; day++) {
            for (int shift = 1; shift <= shifts; shift++) {
                double end_s = day * DAY_s + shift * shift_s;
                stretches.add(new Stretch(end_s - cleaning_s, end_s, feed_kgPerS));
            }
        }
        return new WorkWeek(stretches);
    }

    /** Cleaning in a week [s]. */
    public double cleaning_s() {
        return stretches.stream().mapToDouble(Stretch::length_s).sum();
    }

    /** Dust picked up in a week when nobody has to wait [kg] (equation DIS-1). */
    public double asked_kg() {
        return stretches.stream()
                .mapToDouble(s -> s.length_s() * s.feed_kgPerS())
                .sum();
    }
}
