package dustwright.engine.hazard;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Range;

/**
 * Vent area by EN 14491:2006, the same form as VDI 3673-1:2002 (equation HAZ-1). Starts at atmospheric pressure; vents without inertia.
 *
 * <pre>
 * A = B (1 + C log10(L/D)),  B = [3.264e-5 pmax Kst pred^−0.569 + 0.27 (pstat − 0.1) pred^−0.5] V^0.753
 * C = −4.305 log10(pred) + 0.758 below 1.5 bar, 0 from there on
 * </pre>
 *
 * Pressures in bar over the barometer, Kst in bar m/s, V in m³. The constants were read in public listings that name the standard and were
 * not yet compared with the standard's own text.
 *
 * @source EN 14491:2006, constants by public listings
 */
public final class VentEn14491 {
    private static final String EQUATION = "EN 14491";
    /** Where it comes from, and what has not been done yet. */
    public static final Source SOURCE = new Source(
            "EN 14491:2006 = VDI 3673-1:2002 by public listings; constants not yet compared with the standard's own text",
            dustwright.engine.finding.Confidence.PUBLISHED);

    private static final double LEAST_OPENING_bar = 0.1;
    private static final double STRONG_DUST_barMPerS = 300;
    private static final double MOST_REDUCED_bar = 2;
    private static final double NO_SLENDERNESS_FROM_bar = 1.5;
    private static final Range VOLUME = new Range(EQUATION, "V", "m³", 0.1, 10_000);
    private static final Range KST = new Range(EQUATION, "Kst", "bar m/s", 10, 800);
    private static final Range GREATEST = new Range(EQUATION + ", Kst to 300 bar m/s", "Pmax", "bar", 5, 10);
    private static final Range GREATEST_STRONG = new Range(EQUATION + ", Kst above 300 bar m/s", "Pmax", "bar", 5, 12);
    private static final Range OPENS = new Range(EQUATION, "Pstat", "bar", 0, 1);
    private static final Range REDUCED = new Range(EQUATION, "Pred", "bar", 0.1, MOST_REDUCED_bar);
    private static final Range SLENDERNESS = new Range(EQUATION, "L/D", "-", 1, 20);

    private VentEn14491() {}

    /**
     * Vent area [m²].
     *
     * @throws dustwright.engine.quantity.OutOfRangeException outside the equation's range
     * @example area_m2(4.5, 200e5, 9e5, 0.1e5, 0.4e5, 1) = 0.30713
     */
    public static double area_m2(
            double volume_m3,
            double kst_PaMPerS,
            double greatest_Pa,
            double opens_Pa,
            double reduced_Pa,
            double slenderness) {
        return area_m2(new Explosion(volume_m3, kst_PaMPerS, greatest_Pa, opens_Pa, reduced_Pa, slenderness));
    }

    /**
     * Vent area [m²].
     *
     * @throws dustwright.engine.quantity.OutOfRangeException outside the equation's range
     */
    public static double area_m2(Explosion e) {
        check(e);
        double red = e.reduced_bar();
        double opens = Math.max(LEAST_OPENING_bar, e.opens_bar());
        double base = 3.264e-5 * e.greatest_bar() * e.kst_barMPerS() * Math.pow(red, -0.569)
                + 0.27 * (opens - LEAST_OPENING_bar) * Math.pow(red, -0.5);
        return base * Math.pow(e.volume_m3(), 0.753) * slendernessFactor(e.reduced_Pa(), e.slenderness());
    }

    /**
     * What a slender vessel asks over a compact one [-], 1 + C log10(L/D).
     *
     * @example slendernessFactor(0.4e5, 4) = 2.48777
     */
    public static double slendernessFactor(double reduced_Pa, double slenderness) {
        double red = reduced_Pa / Explosion.BAR_Pa;
        double c = red < NO_SLENDERNESS_FROM_bar ? -4.305 * Math.log10(red) + 0.758 : 0;
        return 1 + c * Math.log10(slenderness);
    }

    private static void check(Explosion e) {
        VOLUME.check(e.volume_m3());
        KST.check(e.kst_barMPerS());
        (e.kst_barMPerS() <= STRONG_DUST_barMPerS ? GREATEST : GREATEST_STRONG).check(e.greatest_bar());
        OPENS.check(e.opens_bar());
        REDUCED.check(e.reduced_bar());
        SLENDERNESS.check(e.slenderness());
        Vents.checkReducedAboveOpening(EQUATION, e, LEAST_OPENING_bar, MOST_REDUCED_bar);
    }
}
