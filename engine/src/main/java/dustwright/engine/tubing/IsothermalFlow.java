package dustwright.engine.tubing;

import dustwright.engine.air.Air;
import dustwright.engine.quantity.Range;

/**
 * Compressible flow through a leg of one bore at one temperature, with a stated resistance {@code N = f L/D + ΣK} (equation
 * TUB-5). Pressures are static and absolute.
 *
 * <pre>
 * p1² − p2² = G² R T · ( f L/D + ΣK + 2 ln(p1/p2) ),   G = w/A
 * </pre>
 *
 * The logarithm is the air's own acceleration. The flow is greatest where the outlet reaches Mach 1/√γ (equation TUB-7); a deeper
 * vacuum behind it changes nothing, while the formula would falsely give less.
 *
 * @source Crane TP-410; Rennels and Hudson, Pipe Flow, 2012; derivation from dp (1 − G² R T/p²) = −f G² R T dx/(2 D p)
 */
public final class IsothermalFlow {
    private static final double ROOT_TOLERANCE = 1e-14;
    /** The choked flow itself is passed, whatever its last digits. */
    private static final double CHOKE_ROUNDING = 1e-12;

    private static final int STEP_LIMIT = 60;
    private static final Range RESISTANCE = new Range("isothermal flow", "f L/D + ΣK", "-", Double.MIN_NORMAL, 1e12);

    private IsothermalFlow() {}

    /**
     * Mass flow [kg/s] from p1 to p2 ≤ p1, choking included (equations TUB-5, TUB-7).
     *
     * @param resistance f L/D + ΣK [-], above 0
     * @param rt_JPerKg R T of the air [J/kg]
     */
    public static double massFlow_kgPerS(
            double p1_Pa, double p2_Pa, double resistance, double area_m2, double rt_JPerKg) {
        if (!(p2_Pa >= 0 && p2_Pa <= p1_Pa)) {
            throw new IllegalArgumentException(
                    "outlet " + p2_Pa + " Pa is not between 0 and the inlet " + p1_Pa + " Pa");
        }
        double outlet_Pa = Math.max(p2_Pa, chokePressure_Pa(p1_Pa, resistance));
        double drop = (p1_Pa - outlet_Pa) * (p1_Pa + outlet_Pa);
        double logarithm = 2 * Math.log(p1_Pa / outlet_Pa);
        return area_m2 * Math.sqrt(drop / (rt_JPerKg * (resistance + logarithm)));
    }

    /**
     * Outlet pressure [Pa] at which a leg chokes (equation TUB-7): {@code y − 1 − ln y = N} with {@code y = (p1/p2)²}.
     *
     * @param resistance f L/D + ΣK [-], above 0
     */
    public static double chokePressure_Pa(double p1_Pa, double resistance) {
        RESISTANCE.check(resistance);
        // in z = y − 1; the start √(2N) + N lies above the root, from where Newton falls onto it without turning back
        double z = Math.sqrt(2 * resistance) + resistance;
        for (int n = 0; n < STEP_LIMIT; n++) {
            double step = (z - Math.log1p(z) - resistance) * (1 + z) / z;
            z -= step;
            if (Math.abs(step) <= ROOT_TOLERANCE * z) {
                break;
            }
        }
        return p1_Pa / Math.sqrt(1 + z);
    }

    /** Greatest mass flow [kg/s] a leg passes from p1, whatever the vacuum behind it (equation TUB-7). */
    public static double chokedFlow_kgPerS(double p1_Pa, double resistance, double area_m2, double rt_JPerKg) {
        return area_m2 * chokePressure_Pa(p1_Pa, resistance) / Math.sqrt(rt_JPerKg);
    }

    /**
     * Outlet pressure [Pa] of a flow (equation TUB-8): the upper, subsonic of the two roots of TUB-5.
     *
     * @param massFlow_kgPerS from 0 to the choked flow
     * @param resistance f L/D + ΣK [-], above 0
     * @throws IllegalArgumentException when the leg cannot pass the flow
     */
    public static double outletPressure_Pa(
            double p1_Pa, double massFlow_kgPerS, double resistance, double area_m2, double rt_JPerKg) {
        RESISTANCE.check(resistance);
        double flux = massFlow_kgPerS / area_m2;
        double kinetic = flux * flux * rt_JPerKg / (p1_Pa * p1_Pa);
        // x = (p2/p1)²: F(x) = 1 − x − kinetic (N − ln x); concave, greatest at x = kinetic, which is the choke
        if (!(1 - kinetic - kinetic * (resistance - Math.log(kinetic)) >= -CHOKE_ROUNDING || kinetic == 0)) {
            throw new IllegalArgumentException("the leg cannot pass " + massFlow_kgPerS + " kg/s from " + p1_Pa
                    + " Pa: it chokes at " + chokedFlow_kgPerS(p1_Pa, resistance, area_m2, rt_JPerKg) + " kg/s");
        }
        double x = 1;
        for (int n = 0; n < STEP_LIMIT; n++) {
            double excess = 1 - x - kinetic * (resistance - Math.log(x));
            double next = x + excess / (1 - kinetic / x);
            if (!(next < x)) {
                break;
            }
            x = Math.max(next, kinetic);
        }
        return p1_Pa * Math.sqrt(x);
    }

    /**
     * Static pressure [Pa] just inside the mouth of a tube that draws from still air (equation TUB-9): the air gains one velocity
     * head of its own besides the loss K. The upper root of
     *
     * <pre>
     * p0 − p = (1 + K) G² R T / (2 p)
     * </pre>
     *
     * @param k loss of the entry on the tube's velocity, without the head gained [-]
     * @throws IllegalArgumentException when the mouth cannot pass the flow
     */
    public static double entryPressure_Pa(
            double still_Pa, double massFlow_kgPerS, double k, double area_m2, double rt_JPerKg) {
        double flux = massFlow_kgPerS / area_m2;
        double underRoot = still_Pa * still_Pa - 2 * (1 + k) * flux * flux * rt_JPerKg;
        if (!(underRoot >= 0)) {
            throw new IllegalArgumentException(
                    "the mouth cannot pass " + massFlow_kgPerS + " kg/s from " + still_Pa + " Pa");
        }
        return (still_Pa + Math.sqrt(underRoot)) / 2;
    }

    /** Mach number [-] of air of a mass flux [kg/(s m²)] at a static pressure. */
    public static double mach(double massFlux_kgPerSM2, double pressure_Pa, double rt_JPerKg) {
        return massFlux_kgPerSM2 * Math.sqrt(rt_JPerKg / Air.GAMMA) / pressure_Pa;
    }
}
