package dustwright.engine.interlock;

import dustwright.engine.finding.Confidence;
import dustwright.engine.finding.Source;
import dustwright.engine.quantity.PressureDifference;
import java.util.Locale;

/** Pressure drops over filters at which contacts of a default sequence change over: common practice, no source. */
public enum SetPoint {
    /** Safety filter high. */
    SAFETY_FILTER_HIGH("PDSH-105", 3),
    /** The filter is due for cleaning. */
    CLEANING_DUE("PDSH-101", 6),
    /** Vacuuming is held. */
    FILTER_HIGH("PDSH-102", 10),
    /** Below it the cloth is taken as torn. */
    FILTER_TORN("PDSL-101", 0.5);

    private final String tag;
    private final double inches;

    SetPoint(String tag, double inches) {
        this.tag = tag;
        this.inches = inches;
    }

    /** Tag of the contact. */
    public String tag() {
        return tag;
    }

    /** Pressure drop at which it changes over. */
    public PressureDifference drop() {
        return PressureDifference.ofInchesOfWater(inches);
    }

    /** In both systems of units, as a sequence serves plants of both: "10 inH2O (2.49 kPa)". */
    String words() {
        return (inches == Math.rint(inches) ? String.valueOf((int) inches) : String.valueOf(inches))
                + String.format(Locale.ROOT, " inH2O (%.2f kPa)", drop().pascals() / 1000);
    }

    /** Where it comes from. */
    public Source source() {
        return new Source(
                "set point of " + tag + " in the default sequence; common practice, no source",
                Confidence.COMMON_PRACTICE);
    }
}
