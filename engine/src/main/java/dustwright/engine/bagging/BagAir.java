package dustwright.engine.bagging;

import dustwright.engine.quantity.Range;
import dustwright.engine.quantity.Units;

/**
 * Air in and out of a bag: pushed out by dust, drawn out by a rotary valve under vacuum, blown in before filling, and held at the seal
 * of its neck. The bag may see both pressure and suction, so both directions of the vent sock are checked.
 */
public final class BagAir {
    /** Usual pressure of an inflated neck seal: about 4 psi; common practice, no source [Pa gauge]. */
    public static final double USUAL_SEAL_Pa = 4 * Units.PSI_Pa;

    /** Pressure below which a neck seal hardly holds: half the usual 4 psi; our choice, no source [Pa gauge]. */
    public static final double LEAST_SEAL_Pa = USUAL_SEAL_Pa / 2;

    /** Pressure a neck seal never sees: 9 psi; common practice, no source [Pa gauge]. */
    public static final double GREATEST_SEAL_Pa = 9 * Units.PSI_Pa;

    /** Usual velocity through a passive vent sock, least: 2 ft/min; common practice, no source [m/s]. */
    public static final double USUAL_SOCK_LEAST_mPerS = 2 * Units.FOOT_PER_MINUTE_mPerS;

    /** Usual velocity through a passive vent sock, greatest: 4 ft/min; common practice, no source [m/s]. */
    public static final double USUAL_SOCK_GREATEST_mPerS = 4 * Units.FOOT_PER_MINUTE_mPerS;

    private static final Range DUST = new Range("displaced air", "ṁ", "kg/s", 0, 1e3);
    private static final Range DENSITY = new Range("displaced air", "ρ_B", "kg/m³", 5, 20_000);
    private static final Range SWEPT = new Range("air drawn by the valve", "V_rev", "m³", 1e-6, 5);
    private static final Range SPEED = new Range("air drawn by the valve", "n", "1/s", 0, 4);
    private static final Range FLOW = new Range("air of a bag", "Q", "m³/s", 0, 100);
    private static final Range VOLUME = new Range("a bag", "V", "m³", 1e-3, 50);

    private static final double GRAVITY_mPerS2 = 9.80665;

    private BagAir() {}

    /**
     * Air pushed out of a container by the dust that falls in [m³/s] (equation BAG-12): the upper bound, without a valve above.
     *
     * <pre>
     * Q = ṁ / ρ_B
     * </pre>
     *
     * @param dust_kgPerS ṁ [kg/s]
     * @param bulkDensity_kgPerM3 ρ_B, loose [kg/m³]
     * @source volume balance
     * @example displaced_m3PerS(0.833333, 500) = 0.00166667
     */
    public static double displaced_m3PerS(double dust_kgPerS, double bulkDensity_kgPerM3) {
        return DUST.check(dust_kgPerS) / DENSITY.check(bulkDensity_kgPerM3);
    }

    /**
     * Air drawn out of the container by returning pockets while vacuum is on [m³/s] (equation BAG-13).
     *
     * <pre>
     * Q = V_rev n
     * </pre>
     *
     * @param swept_m3 V_rev of the valve [m³]
     * @param speed_perS n [1/s]
     * @source each returning pocket leaves full of bag air
     * @example drawnByPockets_m3PerS(0.0113, 0.333333) = 0.00376667
     */
    public static double drawnByPockets_m3PerS(double swept_m3, double speed_perS) {
        return SWEPT.check(swept_m3) * SPEED.check(speed_perS);
    }

    /**
     * Net air through the vent sock, outward positive [m³/s] (equation BAG-14). Below zero the bag is under suction, the liner may be
     * drawn into the spout and the sock passes air inward.
     *
     * <pre>
     * Q_sock = Q_displaced − Q_pockets − Q_clearance
     * </pre>
     *
     * @param displaced_m3PerS BAG-12 [m³/s]
     * @param drawnByPockets_m3PerS BAG-13; zero without vacuum above [m³/s]
     * @param drawnByClearance_m3PerS leak up through the valve's clearances, at ambient density [m³/s]
     * @source volume balance of the bag
     * @example throughSock_m3PerS(0.00166667, 0.00376667, 0.0177) = -0.0198
     */
    public static double throughSock_m3PerS(
            double displaced_m3PerS, double drawnByPockets_m3PerS, double drawnByClearance_m3PerS) {
        return FLOW.check(displaced_m3PerS) - FLOW.check(drawnByPockets_m3PerS) - FLOW.check(drawnByClearance_m3PerS);
    }

    /**
     * Area of a passive vent sock [m²] (equation BAG-15), by the larger flow of both directions.
     *
     * <pre>
     * A = Q / v
     * </pre>
     *
     * @param flow_m3PerS Q, either direction, without sign [m³/s]
     * @param velocity_mPerS v through the cloth [m/s]; 2 to 4 ft/min is usual (common practice, no source)
     * @source definition
     * @example sockArea_m2(0.00943895, 0.01524) = 0.619354
     */
    public static double sockArea_m2(double flow_m3PerS, double velocity_mPerS) {
        return FLOW.check(flow_m3PerS) / new Range("a vent sock", "v", "m/s", 0.001, 0.1).check(velocity_mPerS);
    }

    /**
     * Time to inflate a bag or liner before filling [s] (equation BAG-16). A few inH2O suffice, so its volume at ambient pressure is what
     * must be blown in; a few bag volumes a minute are usual (common practice, no source).
     *
     * <pre>
     * t = V / Q
     * </pre>
     *
     * @param volume_m3 V of the bag [m³]
     * @param fan_m3PerS Q of the fan or air supply at ambient pressure [m³/s], above 0
     * @source volume balance
     * @example inflation_s(1, 0.05) = 20
     */
    public static double inflation_s(double volume_m3, double fan_m3PerS) {
        return VOLUME.check(volume_m3) / new Range("bag inflation", "Q", "m³/s", 1e-5, 100).check(fan_m3PerS);
    }

    /** Whether a neck seal's pressure keeps to the practice of never above 9 psi [Pa gauge]. */
    public static boolean sealWithinPractice(double seal_Pa) {
        return new Range("a neck seal", "p", "Pa gauge", 0, 1e6).check(seal_Pa) <= GREATEST_SEAL_Pa;
    }

    /**
     * Least pressure at which air lifts the cloth of an empty bag [Pa] (equation BAG-22): folds and a liner take more.
     *
     * <pre>
     * p = m g / A
     * </pre>
     *
     * @param empty_kg m of the empty bag with its liner [kg]
     * @param section_m2 A = W D of the bag [m²]
     * @source balance of forces; our reading as a lower bound
     * @example liftingPressure_Pa(3, 0.81) = 36.3209
     */
    public static double liftingPressure_Pa(double empty_kg, double section_m2) {
        return new Range("the lifting of a bag", "m", "kg", 0, 100).check(empty_kg)
                * GRAVITY_mPerS2
                / new Range("the lifting of a bag", "A", "m²", 0.001, 25).check(section_m2);
    }
}
