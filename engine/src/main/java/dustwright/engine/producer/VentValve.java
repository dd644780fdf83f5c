package dustwright.engine.producer;

import dustwright.engine.air.Air;
import dustwright.engine.quantity.Area;
import dustwright.engine.tubing.Nozzle;

/**
 * Vent valve on the producer's suction: open, it lets in air as an isentropic nozzle and the pull in the tubing is gone
 * but for a trickle.
 *
 * @param dischargeCoefficient of the opening [-]
 */
public record VentValve(Area area, double dischargeCoefficient) {
    /** Air it admits when open [kg/s] (equation TUB-21). */
    public double massFlow_kgPerS(double suction_Pa, Air air) {
        return Nozzle.massFlow_kgPerS(
                area.squareMetres() * dischargeCoefficient, air.ambient().pascals(), suction_Pa, air.rt());
    }
}
