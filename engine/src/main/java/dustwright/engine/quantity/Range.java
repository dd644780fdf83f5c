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

    /** Returns the value, or refuses it; a value that is no number is outside every range. */
    public double check(double value) {
        if (!(value >= least && value <= most)) {
            throw new OutOfRangeException(this, value);
        }
        return value;
    }
}
