package dustwright.engine.producer;

import dustwright.engine.air.StandardAtmosphere;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;

/**
 * The shaft power below which no machine brings air from a vacuum back to the atmosphere (equation PRD-29): slow compression, cooled all
 * the way. Real ones take more; a lobe pump at least {@code Q Δp}.
 *
 * <pre>
 * P_least = p_1 Q ln(p_0 / p_1),   p_1 = p_0 − Δp,   p_0 = 101 325 Pa
 * </pre>
 *
 * @source isothermal work of an ideal gas, any text on thermodynamics
 */
public final class LeastPower {
    private LeastPower() {}

    /**
     * The bound in a state [W] (equation PRD-33): {@code p_in Q ln((p_in + Δp)/p_in)}, Δp from inlet to outlet.
     *
     * @param inlet_Pa p_in, absolute [Pa], above 0
     * @param flow_m3PerS Q at the inlet [m³/s]
     * @param difference_Pa Δp over the machine, silencer included [Pa], above −p_in
     * @source isothermal work of an ideal gas, any text on thermodynamics
     * @example of_W(80000, 0.1, 20000) = 1785.148
     */
    public static double of_W(double inlet_Pa, double flow_m3PerS, double difference_Pa) {
        return inlet_Pa * flow_m3PerS * Math.log1p(difference_Pa / inlet_Pa);
    }

    /**
     * The bound at one point of a curve.
     *
     * @param flow Q at the machine's inlet
     * @param vacuum Δp; 0 W from a full vacuum on
     */
    public static Power of(ActualVolumeFlow flow, PressureDifference vacuum) {
        double outlet_Pa = StandardAtmosphere.SEA_LEVEL_Pa;
        double inlet_Pa = outlet_Pa - vacuum.pascals();
        return new Power(inlet_Pa > 0 ? of_W(inlet_Pa, flow.cubicMetresPerSecond(), vacuum.pascals()) : 0);
    }
}
