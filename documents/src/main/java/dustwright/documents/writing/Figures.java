package dustwright.documents.writing;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/** Bare numbers in ink: rounding, thousands apart from four figures on, a true minus. No unit is chosen here. */
public final class Figures {
    private static final String THIN_SPACE = "\u202F";
    private static final int GROUP = 3;
    private static final double OWN_ROUNDING = 1e-9;

    private Figures() {}

    /** A number with fixed decimals, for people. */
    public static String fixed(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        String text = rounded.abs().toPlainString();
        return (rounded.signum() < 0 ? "−" : "") + grouped(text);
    }

    /** The same rounded up, never down; what is off by a rounding of the computer's own counts as even. */
    public static String up(double value, int decimals) {
        BigDecimal even = BigDecimal.valueOf(value - OWN_ROUNDING * Math.abs(value));
        return fixed(even.setScale(decimals, RoundingMode.CEILING).doubleValue(), decimals);
    }

    /** A number with so many significant figures; very large and very small ones as a power of ten. */
    public static String significant(double value, int figures) {
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(figures, RoundingMode.HALF_UP));
        int exponent = rounded.precision() - rounded.scale() - 1;
        if (exponent < -4 || exponent > 7) {
            BigDecimal mantissa = rounded.movePointLeft(exponent).stripTrailingZeros();
            return sign(mantissa.toPlainString()) + "·10" + raised(exponent);
        }
        String text = rounded.scale() > 0
                ? rounded.toPlainString()
                : rounded.setScale(0).toPlainString();
        return (value < 0 ? "−" : "") + grouped(text.replace("-", ""));
    }

    /** A count of things. */
    public static String count(long number) {
        return grouped(Long.toString(number));
    }

    /** A whole number beyond those. */
    public static String count(BigInteger number) {
        return grouped(number.toString());
    }

    private static String sign(String text) {
        return text.replace('-', '−');
    }

    private static String grouped(String digits) {
        int point = digits.indexOf('.');
        int whole = point < 0 ? digits.length() : point;
        StringBuilder out = new StringBuilder(digits);
        for (int at = whole - GROUP; at > 0; at -= GROUP) {
            out.insert(at, THIN_SPACE);
        }
        return out.toString();
    }

    private static String raised(int exponent) {
        StringBuilder out = new StringBuilder();
        for (char digit : Integer.toString(exponent).toCharArray()) {
            out.append(digit == '-' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(digit - '0'));
        }
        return out.toString();
    }
}
