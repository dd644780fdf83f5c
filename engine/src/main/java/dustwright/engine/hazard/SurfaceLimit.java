package dustwright.engine.hazard;

import dustwright.engine.finding.Source;

/** Greatest temperature of surfaces that dust touches. Two thirds are of degrees Celsius, as the rules mean it. */
public final class SurfaceLimit {
    /** Rule of the international text. */
    public static final Source IEC = Source.fromMemory("IEC 60079-14, 5.6.3");
    /** Rule of the National Electrical Code. */
    public static final Source NEC = Source.published("NEC 500.8(D)(2), text of 2008");

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double LAYER_MARGIN_K = 75;
    private static final double ORGANIC_K = ZERO_CELSIUS_K + 165;

    private SurfaceLimit() {}

    /**
     * Two thirds of the cloud's ignition temperature in °C (equation HAZ-11).
     *
     * @example byCloud_K(753.15) = 593.15
     */
    public static double byCloud_K(double cloud_K) {
        return ZERO_CELSIUS_K + 2.0 / 3 * (cloud_K - ZERO_CELSIUS_K);
    }

    /**
     * Ignition temperature of a 5 mm layer less 75 K (equation HAZ-12).
     *
     * @example byLayer_K(633.15) = 558.15
     */
    public static double byLayer_K(double layer_K) {
        return layer_K - LAYER_MARGIN_K;
    }

    /**
     * Organic dust that may dry out or char: the lower of its ignition temperature and 165 °C (equation HAZ-13).
     *
     * @example organic_K(493.15) = 438.15
     */
    public static double organic_K(double ignition_K) {
        return Math.min(ignition_K, ORGANIC_K);
    }
}
