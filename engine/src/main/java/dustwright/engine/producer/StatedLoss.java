package dustwright.engine.producer;

import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;

/**
 * A part whose loss is stated at one flow: a safety filter, a silencer. The loss grows with the square of the flow and falls with
 * density: stated at the site's ambient density (equation VLV-2).
 *
 * <pre>
 * in the suction line:      P1 − P2 = 2 p_a · loss · (w/w_at)²         (P = p²)
 * discharging to ambient:   Δp      = loss · (w/w_at)²
 * </pre>
 */
public record StatedLoss(PressureDifference loss, FreeAirFlow at) {
    public StatedLoss {
        if (!(at.cubicMetresPerSecond() > 0)) {
            throw new IllegalArgumentException("a loss is stated at a flow above zero");
        }
    }

    /** Loss at ambient density over the square of the mass flow [Pa s²/kg²]. */
    public double perSquareFlow() {
        double at_kgPerS = at.cubicMetresPerSecond() * FreeAirFlow.REFERENCE_DENSITY_kgPerM3;
        return loss.pascals() / (at_kgPerS * at_kgPerS);
    }

    /** Drop of pressure squared over the square of the mass flow in the suction line [Pa² s²/kg²]. */
    public double squaredPressurePerSquareFlow(double ambient_Pa) {
        return 2 * ambient_Pa * perSquareFlow();
    }
}
