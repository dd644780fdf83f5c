package dustwright.engine.network;

import java.util.function.DoubleUnaryOperator;

/**
 * A friction law read from a table instead of solved (equation NET-11): the kernel asks for it once per leg and step.
 *
 * <p>The variable is {@code x = Re/2000}: below 1 the flow is laminar and f = 64/Re; above, every octave is cut into
 * {@value #PIECES} equal pieces, each a cubic through four values of the law. The ends of the blended range, Re 2000 and 4000, fall on
 * ends of pieces, so that its kinks cost nothing. Which piece it is stands in the exponent and first bits of the number: no logarithm,
 * no search. Relative error against the law: below 1e-12.
 */
public final class FrictionTable {
    /** Reynolds number at x = 1. */
    static final double REYNOLDS_UNIT = 2000;

    private static final int PIECE_BITS = 7;
    private static final int PIECES = 1 << PIECE_BITS;
    private static final int OCTAVES = 14;
    /** End of the table, Re 33 million: sonic air at 20 °C in a bore of 1.4 m. */
    static final double END = 1 << OCTAVES;

    private static final int SHIFT = 52 - PIECE_BITS;
    private static final int FIRST = (int) (Double.doubleToRawLongBits(1) >>> SHIFT);
    private static final long PIECE_START = -1L << SHIFT;

    private final DoubleUnaryOperator law;
    private final double[] cubic = new double[4 * PIECES * OCTAVES];

    /**
     * @param law Darcy factor of a Reynolds number, laminar up to 2000
     */
    FrictionTable(DoubleUnaryOperator law) {
        this.law = law;
        for (int piece = 0; piece < PIECES * OCTAVES; piece++) {
            double start = Double.longBitsToDouble((long) (FIRST + piece) << SHIFT);
            double third = (Double.longBitsToDouble((long) (FIRST + piece + 1) << SHIFT) - start) / 3;
            double f0 = law(start);
            double d1 = law(start + third) - f0;
            double d2 = law(start + 2 * third) - f0;
            double d3 = law(start + 3 * third) - f0;
            // Newton's form in s = (x − start)/third, then powers of s
            cubic[4 * piece] = f0;
            cubic[4 * piece + 1] = (3 * d1 - 1.5 * d2 + d3 / 3) / third;
            cubic[4 * piece + 2] = (-2.5 * d1 + 2 * d2 - 0.5 * d3) / (third * third);
            cubic[4 * piece + 3] = (0.5 * d1 - 0.5 * d2 + d3 / 6) / (third * third * third);
        }
    }

    private double law(double x) {
        return law.applyAsDouble(REYNOLDS_UNIT * x);
    }

    /** Where a cubic stands for {@code x = Re/2000}; for x from 1 up to {@link #END}. */
    static int piece(double x) {
        return 4 * ((int) (Double.doubleToRawLongBits(x) >>> SHIFT) - FIRST);
    }

    /** How far into its piece x lies. */
    static double into(double x) {
        return x - Double.longBitsToDouble(Double.doubleToRawLongBits(x) & PIECE_START);
    }

    /** Darcy factor within a piece. */
    double at(int piece, double into) {
        return cubic[piece] + into * (cubic[piece + 1] + into * (cubic[piece + 2] + into * cubic[piece + 3]));
    }

    /** Slope df/dx within a piece. */
    double slope(int piece, double into) {
        return cubic[piece + 1] + into * (2 * cubic[piece + 2] + 3 * into * cubic[piece + 3]);
    }
}
