package dustwright.engine.producer;

import dustwright.engine.air.Air;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.tubing.Nozzle;
import java.util.Optional;

/**
 * Vacuum relief valve at the producer's inlet: opens at its set vacuum, passes its rated flow at set + accumulation. Its
 * air does not pass the tubing: it protects the pump and does nothing for velocity.
 *
 * <pre>
 * v ≤ set              w = 0
 * v ≤ set + acc        w = w_rated (v − set) / acc
 * above                w = w_rated w_nozzle(v) / w_nozzle(set + acc)      (equation VLV-1; TUB-21, which chokes)
 * </pre>
 *
 * @param set vacuum at which it opens
 * @param accumulation further vacuum from the first opening to rated flow
 * @param rated air it admits at set + accumulation at the site
 * @param standard what its maker states for 101 325 Pa, 20 °C, dry; empty where stated for the site's own air
 * @source common practice; a maker states set, full and rated flow. The straight line between them is our reading
 */
public record ReliefValve(
        PressureDifference set, PressureDifference accumulation, FreeAirFlow rated, Optional<FreeAirFlow> standard) {
    private static final double STANDARD_Pa = 101_325;

    public ReliefValve {
        if (!(accumulation.pascals() > 0)) {
            throw new IllegalArgumentException(
                    "a relief valve needs more vacuum for its rated flow than for its first opening");
        }
    }

    /** One whose rated flow is stated for the site's own air. */
    public ReliefValve(PressureDifference set, PressureDifference accumulation, FreeAirFlow rated) {
        this(set, accumulation, rated, Optional.empty());
    }

    /** One whose maker states its rated flow on standard air: what it admits through the same opening at a site (equation VLV-3). */
    public static ReliefValve ofStandardAir(
            PressureDifference set, PressureDifference accumulation, FreeAirFlow standard, Air site) {
        double full_Pa = set.pascals() + accumulation.pascals();
        FreeAirFlow rated = new FreeAirFlow(standard.cubicMetresPerSecond() * ofStandard(full_Pa, site));
        return new ReliefValve(set, accumulation, rated, Optional.of(standard));
    }

    /**
     * Mass flow through one opening at a site over that on standard air, at the same vacuum [-] (equation VLV-3).
     *
     * <pre>
     * w/w_std = w_nozzle(p_a, p_a − v) / w_nozzle(101 325 Pa, 101 325 Pa − v)          by TUB-21, which may choke
     * </pre>
     *
     * @param vacuum_Pa v, less than the site's barometer [Pa]
     * @source isentropic nozzle, any gas dynamics text; the same opening at both places: our reading
     */
    public static double ofStandard(double vacuum_Pa, Air site) {
        double barometer_Pa = site.ambient().pascals();
        double here = Nozzle.massFlow_kgPerS(1, barometer_Pa, barometer_Pa - vacuum_Pa, site.rt());
        double there = Nozzle.massFlow_kgPerS(
                1, STANDARD_Pa, STANDARD_Pa - vacuum_Pa, STANDARD_Pa / FreeAirFlow.REFERENCE_DENSITY_kgPerM3);
        return here / there;
    }

    /**
     * Air it admits [kg/s] (equation VLV-1).
     *
     * @param vacuum_Pa at its place [Pa]
     * @param barometer_Pa where it breathes [Pa]
     */
    public double massFlow_kgPerS(double vacuum_Pa, double barometer_Pa) {
        double above_Pa = vacuum_Pa - set.pascals();
        if (above_Pa <= 0) {
            return 0;
        }
        double rated_kgPerS = rated.cubicMetresPerSecond() * FreeAirFlow.REFERENCE_DENSITY_kgPerM3;
        double opening_Pa = accumulation.pascals();
        return above_Pa <= opening_Pa
                ? rated_kgPerS * above_Pa / opening_Pa
                : rated_kgPerS * aboveFull(vacuum_Pa, set.pascals() + opening_Pa, barometer_Pa);
    }

    /**
     * Flow through the full opening at a vacuum, over that at its rated vacuum [-]: an isentropic nozzle, which passes no more once the
     * pressure behind it is 0.528282 of the barometer.
     *
     * @param vacuum_Pa at least the rated one [Pa]
     * @param full_Pa vacuum of the rated flow [Pa]
     */
    private static double aboveFull(double vacuum_Pa, double full_Pa, double barometer_Pa) {
        return Nozzle.massFlow_kgPerS(1, barometer_Pa, barometer_Pa - vacuum_Pa, 1)
                / Nozzle.massFlow_kgPerS(1, barometer_Pa, barometer_Pa - full_Pa, 1);
    }
}
