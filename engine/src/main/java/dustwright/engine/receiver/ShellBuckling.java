package dustwright.engine.receiver;

import dustwright.engine.quantity.Range;

/**
 * Pressure difference at which a round thin shell under vacuum buckles elastically. A screening: dents, welds, openings and roundness
 * decide a real vessel, and its design code (ASME VIII-1, EN 13445-3) replaces these formulas. No shell is approved here.
 */
public final class ShellBuckling {
    /** Margin between collapse and allowed vacuum that is built into the charts of ASME VIII-1; from memory [-]. */
    public static final double USUAL_FACTOR = 3;

    private static final Range MODULUS = new Range("shell buckling", "E", "Pa", 1e9, 3e11);
    private static final Range POISSON = new Range("shell buckling", "ν", "-", 0, 0.49);
    private static final Range LENGTH = new Range("shell buckling", "L", "m", 1e-3, 100);
    private static final Range THIN = new Range("thin-shell buckling", "t/D", "-", 1e-4, 0.05);
    private static final Range YIELD = new Range("yielding of a thin shell", "σ_y", "Pa", 1e6, 2e9);
    private static final Range FACTOR = new Range("the allowed vacuum", "factor", "-", 1, 20);

    private ShellBuckling() {}

    /** Which law speaks for a shell. */
    public enum Law {
        LONG_TUBE,
        WINDENBERG_TRILLING
    }

    /** Collapse pressure of a shell and the law it comes from. */
    public record Collapse(double pressure_Pa, Law law) {}

    /**
     * Collapse pressure of a very long tube [Pa] (equation RCV-10). The thickness over the <em>diameter</em> takes a factor 2 in front,
     * over the radius 1/4.
     *
     * <pre>
     * p = 2 E/(1 − ν²) (t/D)³ = E/(4 (1 − ν²)) (t/R)³
     * </pre>
     *
     * @param modulus_Pa E [Pa]; structural steel 200 GPa
     * @param poisson ν [-]; steel 0.3
     * @param diameter_m D [m]
     * @param thickness_m t [m]; t/D up to 0.05
     * @source Roark, Formulas for Stress and Strain, Table 35 case 19a
     * @example longTube_Pa(200e9, 0.3, 1, 0.01) = 439560
     */
    public static double longTube_Pa(double modulus_Pa, double poisson, double diameter_m, double thickness_m) {
        double thin = THIN.check(thickness_m / LENGTH.check(diameter_m));
        double nu = POISSON.check(poisson);
        return 2 * MODULUS.check(modulus_Pa) / (1 - nu * nu) * thin * thin * thin;
    }

    /**
     * Collapse pressure of a shell between two stiff ends or rings [Pa] (equation RCV-11).
     *
     * <pre>
     * p = 2.42 E (t/D)^2.5 / [ (1 − ν²)^0.75 (L/D − 0.45 √(t/D)) ]        for longer shells see RCV-13
     * </pre>
     *
     * @param modulus_Pa E [Pa]
     * @param poisson ν [-]
     * @param diameter_m D [m]
     * @param thickness_m t [m]; t/D up to 0.05
     * @param length_m L between stiff ends or rings [m]
     * @source Windenberg and Trilling, Trans. ASME 56, 1934; from memory; within 8 % of Roark's case 19b on a usual receiver
     * @example windenbergTrilling_Pa(200e9, 0.3, 1.2, 0.003, 1.8) = 109872
     */
    public static double windenbergTrilling_Pa(
            double modulus_Pa, double poisson, double diameter_m, double thickness_m, double length_m) {
        double thin = THIN.check(thickness_m / LENGTH.check(diameter_m));
        double nu = POISSON.check(poisson);
        double slender = new Range("Windenberg and Trilling's law", "L/D", "-", 2 * 0.45 * Math.sqrt(thin), 1e3)
                .check(LENGTH.check(length_m) / diameter_m);
        return 2.42
                * MODULUS.check(modulus_Pa)
                * Math.pow(thin, 2.5)
                / (Math.pow(1 - nu * nu, 0.75) * (slender - 0.45 * Math.sqrt(thin)));
    }

    /**
     * Collapse pressure of a short tube with ends held round [Pa] (equation RCV-12), a second opinion on RCV-11.
     *
     * <pre>
     * p = 0.807 E t²/(L R) [ (1/(1 − ν²))³ t²/R² ]^(1/4)
     * </pre>
     *
     * @param modulus_Pa E [Pa]
     * @param poisson ν [-]
     * @param diameter_m D = 2 R [m]
     * @param thickness_m t [m]; t/D up to 0.05
     * @param length_m L [m]
     * @source Roark, Table 35 case 19b; from memory
     * @example roarkShort_Pa(200e9, 0.3, 1.2, 0.003, 1.8) = 102077
     */
    public static double roarkShort_Pa(
            double modulus_Pa, double poisson, double diameter_m, double thickness_m, double length_m) {
        THIN.check(thickness_m / LENGTH.check(diameter_m));
        double nu = POISSON.check(poisson);
        double radius_m = diameter_m / 2;
        double thin = thickness_m / radius_m;
        return 0.807
                * MODULUS.check(modulus_Pa)
                * thickness_m
                * thickness_m
                / (LENGTH.check(length_m) * radius_m)
                * Math.pow(Math.pow(1 / (1 - nu * nu), 3) * thin * thin, 0.25);
    }

    /**
     * Collapse pressure by the law that fits the length (equation RCV-13): the stiffened shell up to the length at which both laws
     * agree, the very long tube beyond it.
     *
     * <pre>
     * p = max(RCV-10, RCV-11)
     * </pre>
     *
     * @param modulus_Pa E [Pa]
     * @param poisson ν [-]
     * @param diameter_m D [m]
     * @param thickness_m t [m]
     * @param length_m L between stiff ends or rings [m]
     * @source RCV-10 and RCV-11: the greater of both, as a tube cannot be weaker than a very long one
     * @example collapse(200e9, 0.3, 1.2, 0.003, 1.8).pressure_Pa() = 109872
     */
    public static Collapse collapse(
            double modulus_Pa, double poisson, double diameter_m, double thickness_m, double length_m) {
        double longTube_Pa = longTube_Pa(modulus_Pa, poisson, diameter_m, thickness_m);
        double stiffened_Pa = windenbergTrilling_Pa(modulus_Pa, poisson, diameter_m, thickness_m, length_m);
        return longTube_Pa >= stiffened_Pa
                ? new Collapse(longTube_Pa, Law.LONG_TUBE)
                : new Collapse(stiffened_Pa, Law.WINDENBERG_TRILLING);
    }

    /**
     * Pressure at which the wall of a thin round shell yields all around [Pa] (equation RCV-24). A short shell fails so before it
     * buckles, and the laws of buckling say nothing above this pressure.
     *
     * <pre>
     * p_y = 2 σ_y t/D
     * </pre>
     *
     * @param yield_Pa σ_y of the material [Pa]
     * @param diameter_m D [m]
     * @param thickness_m t [m]; t/D up to 0.05
     * @source equilibrium of half a ring; Windenberg and Trilling, Trans. ASME 56, 1934: short vessels fail by yielding, long ones by
     *     instability
     * @example yielding_Pa(235e6, 0.9, 0.003) = 1566667
     */
    public static double yielding_Pa(double yield_Pa, double diameter_m, double thickness_m) {
        return 2 * YIELD.check(yield_Pa) * THIN.check(thickness_m / LENGTH.check(diameter_m));
    }

    /**
     * Vacuum a shell may see by this screening [Pa] (equation RCV-14).
     *
     * <pre>
     * vacuum = p / factor
     * </pre>
     *
     * @param collapse_Pa p [Pa]
     * @param factor [-], 3 is usual
     * @source definition; the factor is the margin of ASME VIII-1 charts, from memory
     * @example allowedVacuum_Pa(109872, 3) = 36624
     */
    public static double allowedVacuum_Pa(double collapse_Pa, double factor) {
        return new Range("the allowed vacuum", "p", "Pa", 0, 1e12).check(collapse_Pa) / FACTOR.check(factor);
    }
}
