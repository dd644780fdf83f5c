package dustwright.engine.rotaryvalve;

import dustwright.engine.air.Air;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Volume;
import dustwright.engine.tubing.Nozzle;

/**
 * The rotor that discharges dust and keeps the vacuum.
 *
 * @param swept volume of all pockets per turn
 * @param fill share of the pockets filled with dust [-]
 * @param clearance leaking gap area, an isentropic nozzle that can choke
 * @param dischargeCoefficient of the gaps [-]
 */
public record RotaryValve(
        Volume swept, RotationalSpeed speed, double fill, Area clearance, double dischargeCoefficient) {
    /** Air through the clearances [kg/s] into a receiver at a pressure: a nozzle that can choke (equations RV-1, TUB-21). */
    public double clearanceAir_kgPerS(double receiver_Pa, Air air) {
        return Nozzle.massFlow_kgPerS(
                clearance.squareMetres() * dischargeCoefficient, air.ambient().pascals(), receiver_Pa, air.rt());
    }

    /**
     * Air that returning pockets bring [kg/s]: their volume of ambient air less what dust fills (equation RV-2).
     *
     * <pre>
     * w = V n (1 − fill) ρ_ambient
     * </pre>
     *
     * @source Mills, Pneumatic Conveying Design Guide; Marcus et al., Pneumatic Conveying of Solids (principle)
     */
    public double pocketAir_kgPerS(Air air) {
        double swept_m3PerS = swept.cubicMetres() * speed.revolutionsPerSecond();
        return swept_m3PerS * (1 - fill) * air.density_kgPerM3(air.ambient().pascals());
    }
}
