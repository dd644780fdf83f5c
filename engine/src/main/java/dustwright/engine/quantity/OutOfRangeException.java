package dustwright.engine.quantity;

/** A value outside the range for which a formula was published. Names symbol, value, unit and both limits. */
public final class OutOfRangeException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String symbol;
    private final double value;

    OutOfRangeException(Range range, double value) {
        super(range.symbol() + " = " + value + unit(range) + " is outside the range of " + range.of() + ": "
                + range.least() + " to " + range.most() + unit(range));
        this.symbol = range.symbol();
        this.value = value;
    }

    private static String unit(Range range) {
        return range.unit().equals("-") ? "" : " " + range.unit();
    }

    public String symbol() {
        return symbol;
    }

    public double value() {
        return value;
    }
}
