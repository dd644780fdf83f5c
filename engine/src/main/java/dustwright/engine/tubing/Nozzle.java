package dustwright.engine.tubing;

import dustwright.engine.air.Air;

/**
 * Air through a short opening (equation TUB-21): isentropic, times a discharge coefficient for the narrowest stream. Chokes when
 * the pressure ratio falls to 0.528282, and then no deeper vacuum brings more air.
 *
 * <pre>
 * w = Cd A p0 √( 2γ/((γ−1) R T0) · (r^(2/γ) − r^((γ+1)/γ)) ),   r = max(p/p0, r*),   r* = (2/(γ+1))^(γ/(γ−1))
 * </pre>
 *
 * @source derivation in any gas dynamics text; γ = 1.4
 */
public final class Nozzle {
    /** Pressure ratio at and below which the opening is choked [-]. */
    public static final double CRITICAL_RATIO = Math.pow(2 / (Air.GAMMA + 1), Air.GAMMA / (Air.GAMMA - 1));

    private static final double TWO_CP_OVER_R = 2 * Air.GAMMA / (Air.GAMMA - 1);

    private Nozzle() {}

    /**
     * Mass flow [kg/s] from still air at p0 into a space at p; negative when p lies above p0, so that it is odd about no flow.
     * Its slope is infinite at p = p0.
     *
     * @param effectiveArea_m2 area times discharge coefficient [m²]
     * @param upstream_Pa p0
     * @param downstream_Pa p
     * @param rt_JPerKg R T of the still air [J/kg]
     */
    public static double massFlow_kgPerS(
            double effectiveArea_m2, double upstream_Pa, double downstream_Pa, double rt_JPerKg) {
        return downstream_Pa <= upstream_Pa
                ? outward(effectiveArea_m2, upstream_Pa, downstream_Pa, rt_JPerKg)
                : -outward(effectiveArea_m2, downstream_Pa, upstream_Pa, rt_JPerKg);
    }

    /** Whether the opening is choked between these two pressures. */
    public static boolean choked(double upstream_Pa, double downstream_Pa) {
        return Math.min(upstream_Pa, downstream_Pa) <= CRITICAL_RATIO * Math.max(upstream_Pa, downstream_Pa);
    }

    /**
     * Growth of the flow from still air per further vacuum [kg/(s Pa)], the derivative of {@link #massFlow_kgPerS}; zero once choked.
     *
     * <pre>
     * dw/dv = w (−s')/(2 s p0),   s = r^(2/γ) − r^((γ+1)/γ),   s' = ds/dr
     * </pre>
     *
     * @param downstream_Pa p, below p0
     */
    public static double slope_kgPerSPa(
            double effectiveArea_m2, double upstream_Pa, double downstream_Pa, double rt_JPerKg) {
        if (choked(upstream_Pa, downstream_Pa)) {
            return 0;
        }
        double r = downstream_Pa / upstream_Pa;
        double a = 2 / Air.GAMMA;
        double b = (Air.GAMMA + 1) / Air.GAMMA;
        double shape = Math.pow(r, a) - Math.pow(r, b);
        double shapeSlope = a * Math.pow(r, a - 1) - b * Math.pow(r, b - 1);
        return outward(effectiveArea_m2, upstream_Pa, downstream_Pa, rt_JPerKg)
                * -shapeSlope
                / (2 * shape * upstream_Pa);
    }

    private static double outward(double effectiveArea_m2, double from_Pa, double to_Pa, double rt_JPerKg) {
        double r = Math.max(to_Pa / from_Pa, CRITICAL_RATIO);
        // r^(2/γ) − r^((γ+1)/γ) = r^(2/γ) · (1 − r^((γ−1)/γ)); the second factor by expm1 keeps its digits near r = 1
        double lnR = Math.log(r);
        double shape = Math.exp(2 / Air.GAMMA * lnR) * -Math.expm1((Air.GAMMA - 1) / Air.GAMMA * lnR);
        return effectiveArea_m2 * from_Pa * Math.sqrt(TWO_CP_OVER_R * shape / rt_JPerKg);
    }
}
