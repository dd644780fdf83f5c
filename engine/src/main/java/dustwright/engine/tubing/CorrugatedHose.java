package dustwright.engine.tubing;

/**
 * Friction of a hose with full-depth annular corrugations (equation TUB-22): every corrugation is a sudden expansion that loses
 * alone, so f does not depend on the Reynolds number. An upper estimate for spirals and worn hose.
 *
 * <pre>
 * f = (D/S) · [1 − (D/(D + 0.438 S))²]²
 * </pre>
 *
 * @source Hawthorne, Product Engineering, 10 June 1963, 98-100, as quoted in secondary texts
 */
public final class CorrugatedHose {
    private CorrugatedHose() {}

    /** Darcy factor [-] of a bore and a pitch of corrugation [m]. */
    public static double hawthorne(double bore_m, double pitch_m) {
        double narrow = bore_m / (bore_m + 0.438 * pitch_m);
        double expansion = 1 - narrow * narrow;
        return bore_m / pitch_m * expansion * expansion;
    }
}
