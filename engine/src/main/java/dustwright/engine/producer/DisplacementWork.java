package dustwright.engine.producer;

import dustwright.engine.air.Air;
import dustwright.engine.quantity.Range;

/**
 * Work of displacement machines by the way they compress, to judge a lobe pump's figures. A lobe pump carries pockets without reducing
 * them: the indicator diagram is a rectangle, and its air gets hotter than the isentropic law says.
 */
public final class DisplacementWork {
    private static final double EXPONENT = (Air.GAMMA - 1) / Air.GAMMA;

    private static final Range VOLUME = new Range("work of a displacement machine", "V", "m³", 1e-9, 100);
    private static final Range PRESSURE = new Range("work of a displacement machine", "p_1", "Pa absolute", 1000, 1e6);
    private static final Range RATIO = new Range("work of a displacement machine", "p_2/p_1", "-", 1, 10);
    private static final Range EFFICIENCY = new Range("the rise in a lobe pump", "η_v", "-", 0.05, 1);
    private static final Range TEMPERATURE = new Range("compression of air", "T_1", "K", 200, 500);

    private DisplacementWork() {}

    /**
     * Work a lobe machine does on one volume of inlet air [J] (equation PRD-15).
     *
     * <pre>
     * W = V (p_2 − p_1)
     * </pre>
     *
     * @param volume_m3 V displaced [m³]
     * @param inlet_Pa p_1, absolute [Pa]
     * @param ratio p_2/p_1 [-], 1 to 10
     * @source Eastop and McConkey, Applied Thermodynamics for Engineering Technologists, positive displacement machines; from memory
     * @example lobe_J(0.03, 101300, 1.5) = 1519.5
     */
    public static double lobe_J(double volume_m3, double inlet_Pa, double ratio) {
        return VOLUME.check(volume_m3) * PRESSURE.check(inlet_Pa) * (RATIO.check(ratio) - 1);
    }

    /**
     * Reversible adiabatic work on one volume of inlet air [J] (equation PRD-16), the least there is without cooling.
     *
     * <pre>
     * W = γ/(γ−1) p_1 V [ (p_2/p_1)^((γ−1)/γ) − 1 ]
     * </pre>
     *
     * @param volume_m3 V [m³]
     * @param inlet_Pa p_1, absolute [Pa]
     * @param ratio p_2/p_1 [-], 1 to 10
     * @source any thermodynamics text; γ = 1.4
     * @example adiabatic_J(0.06, 100000, 1.45) = 2352
     */
    public static double adiabatic_J(double volume_m3, double inlet_Pa, double ratio) {
        return VOLUME.check(volume_m3)
                * PRESSURE.check(inlet_Pa)
                / EXPONENT
                * (Math.pow(RATIO.check(ratio), EXPONENT) - 1);
    }

    /**
     * Work of a machine that compresses inside to a pressure between and by backflow from there, such as a vane machine [J] (equation
     * PRD-17).
     *
     * <pre>
     * W = adiabatic to p_i + (p_2 − p_i) V_i,     V_i = V (p_1/p_i)^(1/γ)
     * </pre>
     *
     * @param volume_m3 V at the inlet [m³]
     * @param inlet_Pa p_1, absolute [Pa]
     * @param insideRatio p_i/p_1 [-], 1 up to the whole ratio
     * @param ratio p_2/p_1 [-], 1 to 10
     * @source Eastop and McConkey, as PRD-15; printed answer 1.35 kJ, from memory
     * @example partlyInside_J(0.03, 101300, 1.25, 1.5) = 1348.0
     */
    public static double partlyInside_J(double volume_m3, double inlet_Pa, double insideRatio, double ratio) {
        double inside =
                new Range("work of a displacement machine", "p_i/p_1", "-", 1, RATIO.check(ratio)).check(insideRatio);
        double volumeInside_m3 = volume_m3 * Math.pow(inside, -1 / Air.GAMMA);
        return adiabatic_J(volume_m3, inlet_Pa, inside) + inlet_Pa * (ratio - inside) * volumeInside_m3;
    }

    /**
     * Temperature after reversible adiabatic compression [K] (equation PRD-18): too low for a lobe machine.
     *
     * <pre>
     * T_2 = T_1 (p_2/p_1)^((γ−1)/γ)
     * </pre>
     *
     * @param inlet_K T_1 [K]
     * @param ratio p_2/p_1 [-], 1 to 10
     * @source any thermodynamics text; γ = 1.4
     * @example isentropic_K(293.15, 1.6696) = 339.39
     */
    public static double isentropic_K(double inlet_K, double ratio) {
        return TEMPERATURE.check(inlet_K) * Math.pow(RATIO.check(ratio), EXPONENT);
    }

    /**
     * Temperature rise of the air in a lobe machine from its volumetric efficiency [K] (equation PRD-19): the energy balance in the form
     * a fitter can check with a thermometer.
     *
     * <pre>
     * ΔT = T_1 (γ−1)/γ (p_2/p_1 − 1)/η_v
     * </pre>
     *
     * @param inlet_K T_1 [K]
     * @param ratio p_2/p_1 [-], 1 to 10
     * @param volumetricEfficiency η_v, inlet flow over displaced flow [-]
     * @source first law; a public question tells 220 °F seen where the isentropic law would give much less
     * @example lobeRise_K(293.15, 1.6696, 0.738589) = 75.93
     */
    public static double lobeRise_K(double inlet_K, double ratio, double volumetricEfficiency) {
        return TEMPERATURE.check(inlet_K)
                * EXPONENT
                * (RATIO.check(ratio) - 1)
                / EFFICIENCY.check(volumetricEfficiency);
    }
}
