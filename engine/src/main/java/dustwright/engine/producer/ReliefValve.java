package dustwright.engine.producer;

import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;

/**
 * Vacuum relief valve at the producer's inlet: opens at its set vacuum, passes its rated flow at set + accumulation. Its
 * air does not pass the tubing: it protects the pump and does nothing for velocity.
 *
 * <pre>
 * v ≤ set              w = 0
 * v ≤ set + acc        w = w_rated (v − set) / acc
 * above                w = w_rated √( v / (set + acc) )             (equation VLV-1)
 * </pre>
 *
 * @param set vacuum at which it opens
 * @param accumulation further vacuum from the first opening to rated flow
 * @param rated air it admits at set + accumulation
 * @source common practice; a maker states set, full and rated flow. The straight line between them is our reading
 */
public record ReliefValve(PressureDifference set, PressureDifference accumulation, FreeAirFlow rated) {
    public ReliefValve {
        if (!(accumulation.pascals() > 0)) {
            throw new IllegalArgumentException(
                    "a relief valve needs more vacuum for its rated flow than for its first opening");
        }
    }

    /** Air it admits [kg/s] at a vacuum at its place [Pa]. */
    public double massFlow_kgPerS(double vacuum_Pa) {
        double above_Pa = vacuum_Pa - set.pascals();
        if (above_Pa <= 0) {
            return 0;
        }
        double rated_kgPerS = rated.cubicMetresPerSecond() * FreeAirFlow.REFERENCE_DENSITY_kgPerM3;
        double opening_Pa = accumulation.pascals();
        return above_Pa <= opening_Pa
                ? rated_kgPerS * above_Pa / opening_Pa
                : rated_kgPerS * Math.sqrt(vacuum_Pa / (set.pascals() + opening_Pa));
    }
}
