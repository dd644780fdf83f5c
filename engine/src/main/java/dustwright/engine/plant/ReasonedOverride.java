package dustwright.engine.plant;

import dustwright.engine.finding.Place;

/** A figure somebody set against the usual one, with the reason. */
public record ReasonedOverride(Place place, String what, String reason, String by) {
    private static final String WHO_ASKED = "who asked";

    /** Something that was asked with one answer, whatever the plant file says. */
    static ReasonedOverride asked(Place place, String what) {
        return new ReasonedOverride(place, what, "asked with this answer, whatever the plant file says", WHO_ASKED);
    }

    /** Whether it was asked with one answer and stands in no plant file. */
    public boolean asked() {
        return by.equals(WHO_ASKED);
    }
}
