package dustwright.engine.air;

import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Range;
import dustwright.engine.quantity.Temperature;

/**
 * The air of a site from what a customer knows: altitude or barometer, temperature, relative humidity. Ideal mixture of dry air
 * and water vapour (equation AIR-7); water is not followed through the plant, so its share stays that of the site.
 */
public final class MoistAir {
    /** R of dry air [J/(kg K)]: ISO 2533:1975. */
    public static final double DRY_GAS_CONSTANT_JPerKgK = 287.05287;

    /** R of water vapour [J/(kg K)]: molar gas constant 8314.462618 J/(kmol K) over 18.01528 kg/kmol. */
    public static final double VAPOUR_GAS_CONSTANT_JPerKgK = 8314.462618 / 18.01528;

    private static final Range TEMPERATURE = new Range("the moist air of a site", "T", "K", 223.15, 343.15);
    private static final Range HUMIDITY = new Range("the moist air of a site", "RH", "-", 0, 1);
    private static final Range BAROMETER = new Range("the moist air of a site", "p", "Pa", 40_000, 120_000);

    private MoistAir() {}

    /** Air at an altitude, barometer by the standard atmosphere. */
    public static Air atAltitude(Length altitude, Temperature temperature, double relativeHumidity) {
        return atBarometer(StandardAtmosphere.pressure(altitude), temperature, relativeHumidity);
    }

    /**
     * Air at a barometer reading.
     *
     * @param barometer pressure at the site, not reduced to sea level; 40 to 120 kPa
     * @param temperature −50 to 70 °C
     * @param relativeHumidity 0 to 1, not percent [-]
     */
    public static Air atBarometer(AbsolutePressure barometer, Temperature temperature, double relativeHumidity) {
        double pressure_Pa = BAROMETER.check(barometer.pascals());
        double temperature_K = TEMPERATURE.check(temperature.kelvin());
        double vapour_Pa = vapourPressure_Pa(temperature_K, relativeHumidity);
        return new Air(
                barometer,
                temperature,
                gasConstant_JPerKgK(pressure_Pa, vapour_Pa),
                AirViscosity.sutherland_PaS(temperature_K));
    }

    /** Partial pressure of water [Pa]: {@code e = RH · p_sat(T)}, RH from 0 to 1. */
    public static double vapourPressure_Pa(double temperature_K, double relativeHumidity) {
        return HUMIDITY.check(relativeHumidity) * SaturationPressure.of_Pa(temperature_K);
    }

    /**
     * Gas constant of the mixture [J/(kg K)], so that ρ = p / (R T) (equation AIR-7).
     *
     * <pre>
     * R = p / ( (p − e)/R_dry + e/R_vapour )
     * </pre>
     *
     * @source ideal gas mixture; density within 0.06 % of the CIPM-2007 equation from 15 to 27 °C
     */
    public static double gasConstant_JPerKgK(double pressure_Pa, double vapour_Pa) {
        checkVapour(pressure_Pa, vapour_Pa);
        return pressure_Pa
                / ((pressure_Pa - vapour_Pa) / DRY_GAS_CONSTANT_JPerKgK + vapour_Pa / VAPOUR_GAS_CONSTANT_JPerKgK);
    }

    /** Water over dry air by mass [kg/kg]: {@code (R_dry/R_vapour) · e / (p − e)}. */
    public static double humidityRatio(double pressure_Pa, double vapour_Pa) {
        checkVapour(pressure_Pa, vapour_Pa);
        return DRY_GAS_CONSTANT_JPerKgK / VAPOUR_GAS_CONSTANT_JPerKgK * vapour_Pa / (pressure_Pa - vapour_Pa);
    }

    private static void checkVapour(double pressure_Pa, double vapour_Pa) {
        if (!(vapour_Pa >= 0 && vapour_Pa < pressure_Pa)) {
            throw new IllegalArgumentException(
                    "vapour pressure " + vapour_Pa + " Pa is not between 0 and the pressure " + pressure_Pa + " Pa");
        }
    }
}
