package dustwright.engine.hazard;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Units;

/** Small laws of dust clouds, layers and charge. */
public final class CloudLaws {
    /** Depth of a layer that makes a room a dust hazard area. */
    public static final Source LAYER = Source.fromMemory("NFPA 654 (2013, 2017), 6.1");

    /** Depth that the American rule for grain handling acts on, 1/8 in [m]. */
    public static final double GRAIN_LAYER_m = 0.003175;
    /** Where it comes from. */
    public static final Source GRAIN = Source.fromMemory("29 CFR 1910.272(j)(2)(ii), priority housekeeping areas");
    /** Share of the least explosible concentration that a stream without a monitor is kept below [-]. */
    public static final double DESIGN_SHARE = 0.25;
    /** Where it comes from. */
    public static final Source DILUTION =
            Source.fromMemory("NFPA 69, concentration reduction: 25 % of MEC without a monitor");

    private CloudLaws() {}

    /**
     * Explosion constant of a test [Pa m/s] (equation HAZ-14), Kst = (dp/dt) V^(1/3).
     *
     * @example kst_PaMPerS(500e5, 0.02) = 13572088
     */
    public static double kst_PaMPerS(double rise_PaPerS, double volume_m3) {
        return rise_PaPerS * Math.cbrt(volume_m3);
    }

    /**
     * Rate of pressure rise in a vessel [Pa/s] (equation HAZ-14).
     *
     * @example rise_PaPerS(150e5, 8) = 7500000
     */
    public static double rise_PaPerS(double kst_PaMPerS, double volume_m3) {
        return kst_PaMPerS / Math.cbrt(volume_m3);
    }

    /**
     * Depth of settled dust that counts as a hazard [m] (equation HAZ-15), 1/32 in at 75 lb/ft³, more for lighter dust.
     *
     * @example layerDepth_m(1201.385) = 0.00079375
     */
    public static double layerDepth_m(double bulk_kgPerM3) {
        return Units.INCH_m / 32 * 75 * Units.POUND_PER_CUBIC_FOOT_kgPerM3 / bulk_kgPerM3;
    }

    /**
     * Energy stored in a charged object [J] (equation HAZ-16), C U²/2.
     *
     * @example spark_J(100e-12, 10e3) = 0.005
     */
    public static double spark_J(double capacitance_F, double voltage_V) {
        return capacitance_F * voltage_V * voltage_V / 2;
    }

    /**
     * Time in which a bonded object loses its charge to 1/e [s] (equation HAZ-17), R C.
     *
     * @example relaxation_s(1e6, 100e-12) = 0.0001
     */
    public static double relaxation_s(double resistance_ohm, double capacitance_F) {
        return resistance_ohm * capacitance_F;
    }

    /**
     * Dust in the air that carries it [kg/m³] (equation HAZ-18).
     *
     * @example concentration_kgPerM3(200, 500) = 0.4
     */
    public static double concentration_kgPerM3(double dust_kgPerS, double air_m3PerS) {
        return dust_kgPerS / air_m3PerS;
    }

    /**
     * Air that keeps a stream of dust below a share of its least explosible concentration [m³/s] (equation HAZ-18).
     *
     * @example leastAir_m3PerS(2, 0.06, 0.25) = 133.333
     */
    public static double leastAir_m3PerS(double dust_kgPerS, double explosible_kgPerM3, double share) {
        return dust_kgPerS / (share * explosible_kgPerM3);
    }
}
