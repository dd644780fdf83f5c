package dustwright.engine.receiver;

import dustwright.engine.quantity.Range;

/** What the receiver holds between its discharge and the high-level probe, and how long that lasts when discharge stops. */
public final class HoldUp {
    private static final Range DIAMETER = new Range("the working volume", "d", "m", 0, 20);
    private static final Range HEIGHT = new Range("the working volume", "h", "m", 0, 30);
    private static final Range VOLUME = new Range("the time to high level", "V", "m³", 0, 1e4);
    private static final Range DENSITY = new Range("the time to high level", "ρ_B", "kg/m³", 5, 12_000);
    private static final Range FEED = new Range("the time to high level", "ṁ", "kg/s", 1e-9, 1e4);

    private HoldUp() {}

    /**
     * Working volume: a truncated cone with a piece of cylinder on it, up to the probe [m³] (equation RCV-8).
     *
     * <pre>
     * V = π h (D² + D d + d²)/12 + π D² h_c/4
     * </pre>
     *
     * @param top_m D, shell diameter and top of the cone [m]
     * @param outlet_m d, bottom of the cone [m]
     * @param coneHeight_m h of the cone [m]
     * @param cylinderHeight_m h_c, from the cone's top up to the probe [m]
     * @source geometry
     * @example workingVolume_m3(1.2, 0.25, 0.9, 0.8) = 1.32948
     */
    public static double workingVolume_m3(double top_m, double outlet_m, double coneHeight_m, double cylinderHeight_m) {
        double top = DIAMETER.check(top_m);
        double outlet = DIAMETER.check(outlet_m);
        double cone_m3 = Math.PI * HEIGHT.check(coneHeight_m) * (top * top + top * outlet + outlet * outlet) / 12;
        return cone_m3 + Math.PI * top * top / 4 * HEIGHT.check(cylinderHeight_m);
    }

    /**
     * Time until dust reaches the probe if discharge stops [s] (equation RCV-9).
     *
     * <pre>
     * t = V ρ_B / ṁ
     * </pre>
     *
     * @param volume_m3 V still free [m³]
     * @param bulkDensity_kgPerM3 ρ_B, loose [kg/m³]
     * @param dust_kgPerS ṁ collected [kg/s], above 0
     * @source mass balance
     * @example timeToHighLevel_s(1.32948, 500, 0.083333) = 7977
     */
    public static double timeToHighLevel_s(double volume_m3, double bulkDensity_kgPerM3, double dust_kgPerS) {
        return VOLUME.check(volume_m3) * DENSITY.check(bulkDensity_kgPerM3) / FEED.check(dust_kgPerS);
    }
}
