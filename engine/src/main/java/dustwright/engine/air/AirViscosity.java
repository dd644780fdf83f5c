package dustwright.engine.air;

import dustwright.engine.quantity.Range;

/** Dynamic viscosity of air. */
public final class AirViscosity {
    private static final Range TEMPERATURE = new Range("Sutherland's viscosity of air", "T", "K", 180, 600);

    private AirViscosity() {}

    /**
     * Dynamic viscosity of air [Pa s] at T [K], 180 to 600 K (equation AIR-8). Does not depend on pressure in this service, and
     * humidity is left out (below 1 % at site conditions).
     *
     * <pre>
     * μ = 1.458e-6 · T^1.5 / (T + 110.4)
     * </pre>
     *
     * @source US Standard Atmosphere 1976, equation 51; the limits of T are our own, far wider than the job needs
     * @example sutherland_PaS(288.15) = 1.7894e-5
     */
    public static double sutherland_PaS(double temperature_K) {
        double t = TEMPERATURE.check(temperature_K);
        return 1.458e-6 * t * Math.sqrt(t) / (t + 110.4);
    }
}
