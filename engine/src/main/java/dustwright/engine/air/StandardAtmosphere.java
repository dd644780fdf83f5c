package dustwright.engine.air;

import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Range;

/**
 * Barometric pressure from altitude where the site states no barometer reading (equation AIR-4).
 *
 * <pre>
 * H = r Z / (r + Z)          T = T0 − β H          p = p0 (T / T0)^(g0 / (R β))
 * </pre>
 *
 * @source ISO 2533:1975, Standard atmosphere, layer −2 to 11 km of geopotential altitude
 */
public final class StandardAtmosphere {
    /** Pressure at sea level [Pa]. */
    public static final double SEA_LEVEL_Pa = 101_325;

    private static final double EARTH_RADIUS_m = 6_356_766;
    private static final double SEA_LEVEL_K = 288.15;
    private static final double LAPSE_KPerM = 0.0065;
    private static final double GRAVITY_mPerS2 = 9.80665;
    private static final double EXPONENT = GRAVITY_mPerS2 / (MoistAir.DRY_GAS_CONSTANT_JPerKgK * LAPSE_KPerM);
    private static final Range ALTITUDE = new Range("the ISO 2533 atmosphere", "Z", "m", -2000, 11_000);

    private StandardAtmosphere() {}

    /** Barometric pressure at a geometric altitude above sea level, −2000 to 11 000 m. */
    public static AbsolutePressure pressure(Length altitude) {
        return new AbsolutePressure(pressure_Pa(altitude.metres()));
    }

    /** Barometric pressure [Pa] at a geometric altitude Z [m], −2000 to 11 000 m. */
    public static double pressure_Pa(double altitude_m) {
        return SEA_LEVEL_Pa * Math.pow(temperature_K(altitude_m) / SEA_LEVEL_K, EXPONENT);
    }

    /** Temperature of the standard atmosphere [K] at a geometric altitude Z [m]; not the temperature of a plant room. */
    public static double temperature_K(double altitude_m) {
        return SEA_LEVEL_K - LAPSE_KPerM * geopotential_m(altitude_m);
    }

    /** Geopotential altitude H [m] of a geometric altitude Z [m]. */
    public static double geopotential_m(double altitude_m) {
        ALTITUDE.check(altitude_m);
        return EARTH_RADIUS_m * altitude_m / (EARTH_RADIUS_m + altitude_m);
    }

    /** Geometric altitude [m] at which the standard atmosphere has a pressure [Pa]: {@link #pressure_Pa} turned round. */
    public static double altitude_m(double pressure_Pa) {
        double geopotential_m = SEA_LEVEL_K * (1 - Math.pow(pressure_Pa / SEA_LEVEL_Pa, 1 / EXPONENT)) / LAPSE_KPerM;
        return EARTH_RADIUS_m * geopotential_m / (EARTH_RADIUS_m - geopotential_m);
    }
}
