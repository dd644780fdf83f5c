package dustwright.engine.receiver;

import dustwright.engine.quantity.Range;
import java.util.function.ToDoubleFunction;

/**
 * How well a powder flows, by three simple measures and the words of USP &lt;1174&gt;. The limits between classes are printed as whole
 * numbers; a value between two of them is counted to the worse class.
 */
public enum PowderFlow {
    EXCELLENT("excellent", 30, 1.11, 10),
    GOOD("good", 35, 1.18, 15),
    FAIR("fair (aid not needed)", 40, 1.25, 20),
    PASSABLE("passable (may hang up)", 45, 1.34, 25),
    POOR("poor (must agitate or vibrate)", 55, 1.45, 31),
    VERY_POOR("very poor", 65, 1.59, 37),
    VERY_VERY_POOR("very, very poor", 90, 10, 100);

    /** Settled over loose bulk density that no powder passes: a slip of the decimal point does; our reading, no source [-]. */
    public static final double GREATEST_HAUSNER = 10;

    private static final Range DENSITY = new Range("powder flow", "ρ", "kg/m³", 1, 20_000);
    private static final Range ANGLE = new Range("the angle of repose", "φ", "rad", Math.toRadians(15), Math.PI / 2);

    private final String words;
    private final double greatestAngle_deg;
    private final double greatestHausner;
    private final double greatestCarr_percent;

    PowderFlow(String words, double greatestAngle_deg, double greatestHausner, double greatestCarr_percent) {
        this.words = words;
        this.greatestAngle_deg = greatestAngle_deg;
        this.greatestHausner = greatestHausner;
        this.greatestCarr_percent = greatestCarr_percent;
    }

    /** The class in the words of USP. */
    public String words() {
        return words;
    }

    /**
     * Hausner ratio [-] (equation RCV-15): how much the powder settles.
     *
     * <pre>
     * H = ρ_tapped / ρ_loose
     * </pre>
     *
     * @param loose_kgPerM3 ρ_loose [kg/m³]
     * @param tapped_kgPerM3 ρ_tapped [kg/m³], not below the loose one
     * @source USP &lt;1174&gt;
     * @example hausner(500, 650) = 1.3
     */
    public static double hausner(double loose_kgPerM3, double tapped_kgPerM3) {
        double ratio = DENSITY.check(tapped_kgPerM3) / DENSITY.check(loose_kgPerM3);
        return new Range("the Hausner ratio", "ρ_tapped/ρ_loose", "-", 1, GREATEST_HAUSNER).check(ratio);
    }

    /**
     * Carr's compressibility index [-] (equation RCV-16), 0 to 1.
     *
     * <pre>
     * C = 1 − ρ_loose / ρ_tapped
     * </pre>
     *
     * @param loose_kgPerM3 ρ_loose [kg/m³]
     * @param tapped_kgPerM3 ρ_tapped [kg/m³], not below the loose one
     * @source USP &lt;1174&gt;
     * @example carr(500, 650) = 0.230769
     */
    public static double carr(double loose_kgPerM3, double tapped_kgPerM3) {
        return 1 - 1 / hausner(loose_kgPerM3, tapped_kgPerM3);
    }

    /** Class by angle of repose, 15° to 90°. */
    public static PowderFlow ofRepose(double angle_rad) {
        double degrees = Math.toDegrees(ANGLE.check(angle_rad));
        return first(degrees, flow -> flow.greatestAngle_deg);
    }

    /** Class by Hausner ratio, 1 to 10. */
    public static PowderFlow ofHausner(double hausner) {
        return first(
                new Range("the Hausner ratio", "H", "-", 1, GREATEST_HAUSNER).check(hausner),
                flow -> flow.greatestHausner);
    }

    /** Class by Carr's index, 0 to 1. */
    public static PowderFlow ofCarr(double carr) {
        return first(new Range("Carr's index", "C", "-", 0, 1).check(carr) * 100, flow -> flow.greatestCarr_percent);
    }

    /** Whether it needs no aid to leave a hopper: passable or better. */
    public boolean flowsByItself() {
        return compareTo(PASSABLE) <= 0;
    }

    private static PowderFlow first(double value, ToDoubleFunction<PowderFlow> limit) {
        for (PowderFlow flow : values()) {
            if (value <= limit.applyAsDouble(flow) + 1e-9) {
                return flow;
            }
        }
        return VERY_VERY_POOR;
    }
}
