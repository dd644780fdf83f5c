package dustwright.engine.quantity;

import java.util.Optional;

/**
 * The range in which a formula holds, both ends included.
 *
 * @param of what the range belongs to, for example "Haaland's formula"
 * @param symbol of the quantity in that formula
 * @param unit SI unit of the limits, "-" for a pure number
 */
public record Range(String of, String symbol, String unit, double least, double most) {
    public Range {
        if (!(least <= most)) {
            throw new IllegalArgumentException("range of " + symbol + " is empty: " + least + " to " + most);
        }
    }

    /** A limit reached by a quotient or by degrees turned into radians may miss it by the last digits. */
    private static final double ROUNDING = 1e-12;

    /** A value outside a range; its words are made only where somebody reads them. */
    public record Miss(Range range, double value) {
        /** What an {@link OutOfRangeException} says. */
        public String words() {
            return OutOfRangeException.words(range, value);
        }
    }

    /** Returns the value, or refuses it; a value that is no number is outside every range. */
    public double check(double value) {
        if (!holds(value)) {
            throw new OutOfRangeException(this, value);
        }
        return value;
    }

    /** Where a value lies outside; empty where it does not. */
    public Optional<Miss> miss(double value) {
        return holds(value) ? Optional.empty() : Optional.of(new Miss(this, value));
    }

    private boolean holds(double value) {
        double slackBelow = ROUNDING * Math.abs(least);
        double slackAbove = ROUNDING * Math.abs(most);
        return value >= least - slackBelow && value <= most + slackAbove;
    }
}
