package dustwright.engine.quantity;

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

    /** Returns the value, or refuses it; a value that is no number is outside every range. */
    public double check(double value) {
        double slackBelow = ROUNDING * Math.abs(least);
        double slackAbove = ROUNDING * Math.abs(most);
        if (!(value >= least - slackBelow && value <= most + slackAbove)) {
            throw new OutOfRangeException(this, value);
        }
        return value;
    }
}
