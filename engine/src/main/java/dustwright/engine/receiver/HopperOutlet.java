package dustwright.engine.receiver;

import dustwright.engine.quantity.Range;

/**
 * Whether dust leaves the hopper: the outlet against arching, and the rate of coarse solids through it. Fine powders flow slower by
 * orders of magnitude because of air drawn in, and slower still under vacuum: the rotary valve, not the cone, should set the rate.
 */
public final class HopperOutlet {
    private static final Range ANGLE = new Range("Jenike's outlet", "θ from vertical", "rad", 0, Math.toRadians(60));
    private static final Range STEEP =
            new Range("Johanson's law", "θ from vertical", "rad", Math.toRadians(1), Math.toRadians(60));
    private static final Range STRENGTH = new Range("Jenike's outlet", "σ_crit", "Pa", 0, 1e6);
    private static final Range DENSITY = new Range("a hopper outlet", "ρ_B", "kg/m³", 5, 12_000);
    private static final Range GRAVITY = new Range("a hopper outlet", "g", "m/s²", 9.7, 9.9);
    private static final Range FLOW_FACTOR = new Range("the critical strength", "ff", "-", 1, 10);
    private static final Range EXPONENT = new Range("the critical strength", "n", "-", 0, 0.99);
    private static final Range LENGTH = new Range("a hopper outlet", "B, D, d", "m", 1e-6, 10);
    private static final Range BEVERLOO_C = new Range("Beverloo's law", "C", "-", 0.5, 0.7);
    private static final Range BEVERLOO_K = new Range("Beverloo's law", "k", "-", 1, 3);

    private HopperOutlet() {}

    /** Shape of a hopper. */
    public enum Shape {
        /** Cone with a round outlet. */
        CONE,
        /** Wedge with a slot at least three widths long. */
        SLOT
    }

    /**
     * Shape factor against arching [-] (equation RCV-3).
     *
     * <pre>
     * cone: H = 2 + θ/60          slot: H = 1 + θ/180          θ in degrees from the vertical
     * </pre>
     *
     * @param halfAngle_rad θ, hopper wall from the vertical [rad], 0 to 60°
     * @source Jenike, Bulletin 123, Utah Engineering Experiment Station, 1964
     * @example shapeFactor(CONE, 0.610865) = 2.58333
     */
    public static double shapeFactor(Shape shape, double halfAngle_rad) {
        double degrees = Math.toDegrees(ANGLE.check(halfAngle_rad));
        return switch (shape) {
            case CONE -> 2 + degrees / 60;
            case SLOT -> 1 + degrees / 180;
        };
    }

    /**
     * Least outlet, diameter of a cone or width of a slot, at which an arch breaks [m] (equation RCV-4).
     *
     * <pre>
     * B = H(θ) σ_crit / (ρ_B g)
     * </pre>
     *
     * @param halfAngle_rad θ from the vertical [rad], 0 to 60°
     * @param criticalStrength_Pa σ_crit [Pa], measured in a shear cell, see RCV-5
     * @param bulkDensity_kgPerM3 ρ_B [kg/m³]
     * @param gravity_mPerS2 g [m/s²]
     * @source Jenike, Bulletin 123, 1964; worked answers 0.299 m and 0.514 m in a public tutorial after Rhodes
     * @example archingOutlet_m(CONE, 0.610865, 2043, 1800, 9.81) = 0.29889
     */
    public static double archingOutlet_m(
            Shape shape,
            double halfAngle_rad,
            double criticalStrength_Pa,
            double bulkDensity_kgPerM3,
            double gravity_mPerS2) {
        return shapeFactor(shape, halfAngle_rad)
                * STRENGTH.check(criticalStrength_Pa)
                / (DENSITY.check(bulkDensity_kgPerM3) * GRAVITY.check(gravity_mPerS2));
    }

    /**
     * Strength at which powder in an arch just fails [Pa] (equation RCV-5): where its measured flow function crosses the hopper's line.
     *
     * <pre>
     * σ_y = k σ_c^n  (kPa)        σ_c = (ff k)^(1/(1−n))        σ_crit = σ_c / ff
     * </pre>
     *
     * @param coefficient k of the flow function in kPa [kPa^(1−n)]
     * @param exponent n [-], 0 to 0.99
     * @param flowFactor ff of the hopper [-], 1 to 10
     * @source Jenike, Bulletin 123, 1964; worked answer 2.043 kPa in a public tutorial after Rhodes
     * @example criticalStrength_Pa(1, 0.68, 1.4) = 2044.19
     */
    public static double criticalStrength_Pa(double coefficient, double exponent, double flowFactor) {
        double factor = FLOW_FACTOR.check(flowFactor);
        new Range("the critical strength", "k", "kPa^(1−n)", Double.MIN_NORMAL, 1e3).check(coefficient);
        double consolidation_kPa = Math.pow(factor * coefficient, 1 / (1 - EXPONENT.check(exponent)));
        return consolidation_kPa / factor * 1000;
    }

    /**
     * Rate of a coarse free-flowing solid through a round opening [kg/s] (equation RCV-6); zero where the opening is no wider than
     * {@code k d}.
     *
     * <pre>
     * ṁ = C ρ_B √g (D − k d)^2.5
     * </pre>
     *
     * @param c C [-], about 0.58
     * @param k [-], about 1.4, 1.5 for spheres
     * @param bulkDensity_kgPerM3 ρ_B [kg/m³]
     * @param opening_m D [m]
     * @param particle_m d [m]; the law holds from about 0.4 mm up
     * @param gravity_mPerS2 g [m/s²]
     * @source Beverloo, Leniger and van de Velde, Chem. Eng. Sci. 15, 1961; constants from memory
     * @example beverloo_kgPerS(0.58, 1.4, 800, 0.2, 0.003, 9.81) = 24.654
     */
    public static double beverloo_kgPerS(
            double c,
            double k,
            double bulkDensity_kgPerM3,
            double opening_m,
            double particle_m,
            double gravity_mPerS2) {
        double free_m = LENGTH.check(opening_m) - BEVERLOO_K.check(k) * LENGTH.check(particle_m);
        return BEVERLOO_C.check(c)
                * DENSITY.check(bulkDensity_kgPerM3)
                * Math.sqrt(GRAVITY.check(gravity_mPerS2))
                * Math.pow(Math.max(0, free_m), 2.5);
    }

    /**
     * Rate of a coarse solid from a steep hopper [kg/s] (equation RCV-7).
     *
     * <pre>
     * ṁ = ρ_B A √( B g / (2 (1 + m) tan θ) )      m = 1, A = π B²/4 for a cone;   m = 0, A = B × length for a slot
     * </pre>
     *
     * @param halfAngle_rad θ from the vertical [rad], 1° to 60°
     * @param outlet_m B, diameter or slot width [m]
     * @param slotLength_m length of the slot [m]; not used for a cone
     * @param bulkDensity_kgPerM3 ρ_B [kg/m³]
     * @param gravity_mPerS2 g [m/s²]
     * @source Johanson, Trans. AIME 232, 1965, 69-80; from memory
     * @example johanson_kgPerS(CONE, 0.349066, 0.3, 0.3, 800, 9.81) = 80.40
     */
    public static double johanson_kgPerS(
            Shape shape,
            double halfAngle_rad,
            double outlet_m,
            double slotLength_m,
            double bulkDensity_kgPerM3,
            double gravity_mPerS2) {
        double slope = Math.tan(STEEP.check(halfAngle_rad));
        double outlet = LENGTH.check(outlet_m);
        double m = shape == Shape.CONE ? 1 : 0;
        double area_m2 = shape == Shape.CONE ? Math.PI * outlet * outlet / 4 : outlet * LENGTH.check(slotLength_m);
        return DENSITY.check(bulkDensity_kgPerM3)
                * area_m2
                * Math.sqrt(outlet * GRAVITY.check(gravity_mPerS2) / (2 * (1 + m) * slope));
    }
}
