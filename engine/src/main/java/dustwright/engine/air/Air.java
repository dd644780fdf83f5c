package dustwright.engine.air;

import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Temperature;

/**
 * The air of a site: what the whole network breathes. Isothermal at {@link #temperature()} up to the vacuum producer.
 *
 * @param ambient the site's barometric pressure
 * @param temperature site temperature
 * @param gasConstant_JPerKgK R of the moist air [J/(kg K)]
 * @param viscosity_PaS dynamic viscosity [Pa s]
 */
public record Air(AbsolutePressure ambient, Temperature temperature, double gasConstant_JPerKgK, double viscosity_PaS) {
    /** Ratio of specific heats taken for air [-]. */
    public static final double GAMMA = 1.4;

    /** R T [J/kg]. */
    public double rt() {
        return gasConstant_JPerKgK * temperature.kelvin();
    }

    /** Density at an absolute pressure [kg/m³]. */
    public double density_kgPerM3(double pressure_Pa) {
        return pressure_Pa / rt();
    }
}
