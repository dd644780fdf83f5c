package dustwright.engine.hazard;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.ClothLoad;
import dustwright.engine.quantity.Range;
import java.util.OptionalDouble;

/**
 * Vent area by the dust chapter of NFPA 68, 2007 and later (equation HAZ-2), and its corrections.
 *
 * <pre>
 * Av0 = 1e-4 (1 + 1.54 Pstat^(4/3)) Kst V^(3/4) √(Pmax/Pred − 1)
 * Av1 = Av0 [1 + 0.6 (L/D − 2)^0.75 exp(−0.95 Pred²)] above L/D 2
 * </pre>
 *
 * Pressures in bar over the barometer, Kst in bar m/s, V in m³. Structure by public listings; the power 4/3 and the corrections for
 * turbulence, inertia, part of the volume and duct are from memory. Not yet compared with the standard's own text.
 *
 * @source NFPA 68, dust chapter, by public listings and from memory
 */
public final class VentNfpa68 {
    private static final String EQUATION = "NFPA 68";
    /** Where it comes from, and what has not been done yet. */
    public static final Source SOURCE = Source.fromMemory(
            "NFPA 68, dust chapter, 2007 and later; structure by public listings, power 4/3 from memory, not yet compared with the"
                    + " standard's own text");

    /** Usual loss coefficient of a vent without a duct, K0 [-]. */
    public static final double NO_DUCT_K = 1.5;

    private static final double COMPACT = 2;
    private static final double QUIET_mPerS = 20;
    private static final double LEAST_KST_OF_INERTIA_barMPerS = 75;
    private static final double MOST_PANEL_kgPerM2 = 40;
    /** Own choice: nothing is at hand that uses the term for a heavier one. */
    private static final double MOST_INERT_PANEL_kgPerM2 = 50;

    private static final int BISECTIONS = 200;
    private static final Range VOLUME = new Range(EQUATION, "V", "m³", 0.1, 10_000);
    private static final Range KST = new Range(EQUATION, "Kst", "bar m/s", 10, 800);
    private static final Range GREATEST = new Range(EQUATION, "Pmax", "bar", 5, 12);
    private static final Range OPENS = new Range(EQUATION, "Pstat", "bar", 0, 0.75);
    private static final Range SLENDERNESS = new Range(EQUATION, "L/D", "-", 1, 6);
    private static final Range PANEL =
            new Range(EQUATION + "'s inertia term, by own choice", "M", "kg/m²", 0, MOST_INERT_PANEL_kgPerM2);
    private static final Range VELOCITY = new Range(EQUATION + "'s turbulence term", "v", "m/s", 0, 56);

    private VentNfpa68() {}

    /**
     * Vent area without corrections for turbulence, panel mass, part of the volume or duct [m²].
     *
     * @throws dustwright.engine.quantity.OutOfRangeException outside the equation's range
     * @example area_m2(4.5, 200e5, 9e5, 0.1e5, 0.4e5, 1) = 0.30700
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
     * Vent area without corrections for turbulence, panel mass, part of the volume or duct [m²].
     *
     * @throws dustwright.engine.quantity.OutOfRangeException outside the equation's range
     */
    public static double area_m2(Explosion e) {
        VOLUME.check(e.volume_m3());
        KST.check(e.kst_barMPerS());
        GREATEST.check(e.greatest_bar());
        OPENS.check(e.opens_bar());
        SLENDERNESS.check(e.slenderness());
        double belowGreatest_bar = Math.nextDown(e.greatest_bar() * (1 - 1e-9));
        Vents.checkReducedAboveOpening(EQUATION, e, 0, belowGreatest_bar);
        return 1e-4
                * opening(e)
                * e.kst_barMPerS()
                * Math.pow(e.volume_m3(), 0.75)
                * Math.sqrt(e.greatest_bar() / e.reduced_bar() - 1)
                * slendernessFactor(e.reduced_Pa(), e.slenderness());
    }

    private static double opening(Explosion e) {
        return 1 + 1.54 * Math.pow(e.opens_bar(), 4.0 / 3);
    }

    /**
     * What a slender vessel asks over a compact one [-].
     *
     * @example slendernessFactor(0.3e5, 3) = 1.55083
     */
    public static double slendernessFactor(double reduced_Pa, double slenderness) {
        SLENDERNESS.check(slenderness);
        double red = reduced_Pa / Explosion.BAR_Pa;
        return slenderness <= COMPACT
                ? 1
                : 1 + 0.6 * Math.pow(slenderness - COMPACT, 0.75) * Math.exp(-0.95 * red * red);
    }

    /**
     * What air that moves along or around the vessel asks over still air [-] (equation HAZ-7): 1 to 20 m/s.
     *
     * @param velocity_mPerS greater of the axial and the tangential velocity [m/s]
     * @example turbulenceFactor(25) = 1.09722
     */
    public static double turbulenceFactor(double velocity_mPerS) {
        return 1 + 0.7 * Math.max(0, VELOCITY.check(velocity_mPerS) - QUIET_mPerS) / 36;
    }

    /**
     * Panel mass from which its inertia counts [kg/m²] (equation HAZ-8), at most 40 kg/m².
     *
     * @example heaviestFreePanel_kgPerM2(0.3e5, 1, 10, 200e5) = 8.918
     */
    public static double heaviestFreePanel_kgPerM2(double reduced_Pa, int vents, double volume_m3, double kst_PaMPerS) {
        double red = reduced_Pa / Explosion.BAR_Pa;
        double kst = kst_PaMPerS / Explosion.BAR_Pa;
        double mass = Math.pow(6.67 * Math.pow(red, 0.2) * Math.pow(vents, 0.3) * volume_m3 / Math.sqrt(kst), 1.67);
        return Math.min(MOST_PANEL_kgPerM2, mass);
    }

    /** A panel whose mass the term for its inertia is for. */
    public static void checkPanel(ClothLoad panel) {
        PANEL.check(panel.kgPerSquareMetre());
    }

    /**
     * What a heavy panel asks over a light one [-] (equation HAZ-8): 1 up to the panel mass that is free. Nothing for a panel above 50 kg/m²,
     * an own choice: nothing is at hand that uses the term for a heavier one.
     *
     * @param hinge 1 for panels that move off, 1.1 for hinged ones [-]
     */
    public static double inertiaFactor(
            double panel_kgPerM2, double kst_PaMPerS, int vents, double volume_m3, double reduced_Pa, double hinge) {
        PANEL.check(panel_kgPerM2);
        if (panel_kgPerM2 <= heaviestFreePanel_kgPerM2(reduced_Pa, vents, volume_m3, kst_PaMPerS)) {
            return 1;
        }
        double red = reduced_Pa / Explosion.BAR_Pa;
        double kst = Math.max(LEAST_KST_OF_INERTIA_barMPerS, kst_PaMPerS / Explosion.BAR_Pa);
        double term = 0.0075
                * Math.pow(panel_kgPerM2, 0.6)
                * Math.sqrt(kst)
                / (Math.pow(vents, 0.3) * volume_m3 * Math.pow(red, 0.2));
        return hinge * (1 + term);
    }

    /**
     * What a cloud that fills part of the volume asks over one that fills it [-] (equation HAZ-9): 0 where it can not reach Pred.
     *
     * @param share of the volume that holds dust enough [-]
     * @example partialVolumeFactor(0.5, 0.45e5, 9e5) = 0.867137
     */
    public static double partialVolumeFactor(double share, double reduced_Pa, double greatest_Pa) {
        double ratio = reduced_Pa / greatest_Pa;
        return share <= ratio ? 0 : Math.sqrt((share - ratio) / (1 - ratio)) / Math.cbrt(share);
    }

    /**
     * Vent area with a duct behind it [m²] (equation HAZ-10). The area stands on both sides, to the power 1.2 on the right: there may be
     * two answers, of which the smaller is meant, or none.
     *
     * <pre>
     * Avf = Av (1 + 1.18 E1^0.8 E2^0.4) √(K/1.5),  E1 = Avf L/V,  E2 = 1e4 Avf / [(1 + 1.54 Pstat^(4/3)) Kst V^(3/4)]
     * </pre>
     *
     * @param area_m2 without a duct
     * @param lossK loss coefficient of duct and vent [-]
     * @return empty where no area is enough: a shorter duct or another method is needed
     */
    public static OptionalDouble withDuct_m2(Explosion e, double area_m2, double duct_m, double lossK) {
        double scale = area_m2 * Math.sqrt(lossK / NO_DUCT_K);
        double perArea = 1.18
                * Math.pow(duct_m / e.volume_m3(), 0.8)
                * Math.pow(1e4 / (opening(e) * e.kst_barMPerS() * Math.pow(e.volume_m3(), 0.75)), 0.4);
        if (perArea == 0 || scale == 0) {
            return OptionalDouble.of(scale);
        }
        // g(A) = A − scale (1 + perArea A^1.2) rises to one crest: there it must be above zero
        double crest = Math.pow(1 / (1.2 * scale * perArea), 5);
        if (!(excess(crest, scale, perArea) >= 0)) {
            return OptionalDouble.empty();
        }
        double low = 0;
        double high = crest;
        for (int n = 0; n < BISECTIONS; n++) {
            double middle = (low + high) / 2;
            if (excess(middle, scale, perArea) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of(high);
    }

    private static double excess(double area, double scale, double perArea) {
        return area - scale * (1 + perArea * Math.pow(area, 1.2));
    }
}
