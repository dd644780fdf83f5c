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
     * The bound at one point.
     *
     * @param flow Q at the machine's inlet
     * @param vacuum Δp; 0 W from a full vacuum on
     */
    public static Power of(ActualVolumeFlow flow, PressureDifference vacuum) {
        double outlet_Pa = StandardAtmosphere.SEA_LEVEL_Pa;
        double inlet_Pa = outlet_Pa - vacuum.pascals();
        return new Power(inlet_Pa > 0 ? inlet_Pa * flow.cubicMetresPerSecond() * Math.log(outlet_Pa / inlet_Pa) : 0);
    }
}
