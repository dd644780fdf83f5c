package dustwright.engine.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/** A value outside the range for which a formula was published. Names symbol, value, unit and both limits. */
public final class OutOfRangeException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private static final int SHOWN_FIGURES = 6;

    private final String symbol;
    private final double value;

    OutOfRangeException(Range range, double value) {
        super(words(range, value));
        this.symbol = range.symbol();
        this.value = value;
    }

    static String words(Range range, double value) {
        return range.symbol() + " = " + plain(value) + unit(range) + " is outside the range of " + range.of() + ": "
                + plain(range.least()) + " to " + plain(range.most()) + unit(range);
    }

    private static String unit(Range range) {
        return range.unit().equals("-") ? "" : " " + range.unit();
    }

    /** Six figures say where a value lies. */
    private static String plain(double value) {
        if (value == 0 || !(Math.abs(value) <= Double.MAX_VALUE)) {
            return value == 0 ? "0" : Double.toString(value);
        }
        BigDecimal rounded =
                BigDecimal.valueOf(value).round(new MathContext(SHOWN_FIGURES)).stripTrailingZeros();
        return Math.abs(rounded.precision() - rounded.scale()) > 2 * SHOWN_FIGURES
                ? rounded.toString()
                : rounded.toPlainString();
    }

    public String symbol() {
        return symbol;
    }

    public double value() {
        return value;
    }
}
