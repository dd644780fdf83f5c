package dustwright.documents.drawing;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Side;
import java.util.List;

/**
 * Class of a margin by its distance to the nearest limit. Worse is heavier and more broken, so that the class can be read in grey and on
 * a bad copy. Intervals hold their lower end; the class is taken from the unrounded number.
 */
public enum MarginClass {
    FAR("#6B1006", 6, List.of(4.0, 2.2), "far short", "below −25 %"),
    SHORT("#B32E05", 5, List.of(10.0, 3.0), "short", "−25 to 0 %"),
    THIN("#B88000", 4.2, List.of(24.0, 2.5), "thin", "0 to +10 %"),
    FAIR("#0E6788", 3.2, List.of(), "fair", "+10 to +25 %"),
    AMPLE("#738E9C", 2.2, List.of(), "ample", "+25 % and above"),
    /** No dust passes here in this set, at most the leak of closed inlets. */
    NO_AIR("#53615D", 1.2, List.of(1.5, 3.0), "no dust", "none carried in this set"),
    /** Air passes, and no limit is asked for it. */
    NOT_ASKED("#53615D", 1.2, List.of(), "not asked", "no limit asked"),
    UNKNOWN("#53615D", 3, List.of(1.0, 5.0), "not known", "not solved");

    private static final double FAR_BELOW = -0.25;
    private static final double THIN_BELOW = 0.10;
    private static final double FAIR_BELOW = 0.25;

    private final String colour;
    private final double weight;
    private final List<Double> dash;
    private final String word;
    private final String range;

    MarginClass(String colour, double weight, List<Double> dash, String word, String range) {
        this.colour = colour;
        this.weight = weight;
        this.dash = dash;
        this.word = word;
        this.range = range;
    }

    /** The class of a margin [-]. */
    public static MarginClass of(double margin) {
        if (margin < FAR_BELOW) {
            return FAR;
        }
        if (margin < 0) {
            return SHORT;
        }
        if (margin < THIN_BELOW) {
            return THIN;
        }
        return margin < FAIR_BELOW ? FAIR : AMPLE;
    }

    /** Class of a finding, which may not be known. */
    public static MarginClass of(Finding finding) {
        if (finding.nothingByDesign()) {
            return AMPLE;
        }
        return finding.decided() ? of(finding.margin()) : UNKNOWN;
    }

    /** A sign that tells class, and below or above the limit, without colour. */
    public String glyph(Side side) {
        return switch (this) {
            case FAR -> side == Side.AT_LEAST ? "▼▼" : "▲▲";
            case SHORT -> side == Side.AT_LEAST ? "▼" : "▲";
            case THIN -> "⬙";
            case FAIR -> "◇";
            case AMPLE -> "○";
            case NO_AIR, NOT_ASKED -> "·";
            case UNKNOWN -> "?";
        };
    }

    public String colour() {
        return colour;
    }

    /** Line weight in drawing units of a quarter millimetre. */
    public double weight() {
        return weight;
    }

    /** Lengths of dash and gap in drawing units; empty for a solid line. */
    public List<Double> dash() {
        return dash;
    }

    public String word() {
        return word;
    }

    /** The interval in words, for a legend. */
    public String range() {
        return range;
    }

    /** Line of tubing in this class. */
    public Line line() {
        return new Line(colour, weight, dash);
    }
}
