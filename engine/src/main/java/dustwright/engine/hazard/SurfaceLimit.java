package dustwright.engine.hazard;

import dustwright.engine.finding.Source;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Greatest temperature of surfaces that dust touches. Two thirds are of degrees Celsius, as the rules mean it. */
public final class SurfaceLimit {
    /** Rule of the international text. */
    public static final Source IEC = Source.fromMemory("IEC 60079-14, 5.6.3");
    /** Rule of the National Electrical Code. */
    public static final Source NEC = Source.published("NEC 500.8(D)(2), text of 2008");

    /** Rule of a model fire code. */
    public static final Source FIRE_CODE =
            Source.published("US model fire code, hot surfaces of dust plants, by a state's reprint");

    /** Where the codes come from. */
    public static final Source CODES_SOURCE =
            Source.fromMemory("NEC Table 500.8(C); T3B and T3C read in a reprint, the others from memory");

    private static final List<Map.Entry<String, Integer>> CODES = List.of(
            Map.entry("T1", 450),
            Map.entry("T2", 300),
            Map.entry("T2A", 280),
            Map.entry("T2B", 260),
            Map.entry("T2C", 230),
            Map.entry("T2D", 215),
            Map.entry("T3", 200),
            Map.entry("T3A", 180),
            Map.entry("T3B", 165),
            Map.entry("T3C", 160),
            Map.entry("T4", 135),
            Map.entry("T4A", 120),
            Map.entry("T5", 100),
            Map.entry("T6", 85));

    private static final double FIRE_CODE_SHARE = 0.8;
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

    /**
     * 80 % of the lower ignition temperature in °C (equation HAZ-23).
     *
     * @example fireCode_K(633.15) = 561.15
     */
    public static double fireCode_K(double ignition_K) {
        return ZERO_CELSIUS_K + FIRE_CODE_SHARE * (ignition_K - ZERO_CELSIUS_K);
    }

    /** Temperature code of the National Electrical Code whose hottest surface is at or below a limit [K]; empty below them all. */
    public static Optional<String> temperatureCode(double limit_K) {
        for (Map.Entry<String, Integer> code : CODES) {
            if (ZERO_CELSIUS_K + code.getValue() <= limit_K) {
                return Optional.of(code.getKey());
            }
        }
        return Optional.empty();
    }
}
