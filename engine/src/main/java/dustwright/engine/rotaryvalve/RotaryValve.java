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
 * @param fill share of the pockets that dust fills when the hopper above is full: what the valve can discharge goes by it [-]
 * @param clearance leaking gap area, an isentropic nozzle that can choke
 * @param dischargeCoefficient of the gaps [-]
 * @param build how it is made
 */
public record RotaryValve(
        Volume swept,
        RotationalSpeed speed,
        double fill,
        Area clearance,
        double dischargeCoefficient,
        ValveBuild build) {

    /** False where the tips run so fast that nobody knows how far the pockets still fill, whatever is stated. */
    public boolean fillKnown() {
        return build.rotor()
                .map(rotor -> ValveCapacity.tipSpeed_mPerS(rotor.metres(), speed.revolutionsPerSecond()))
                .filter(tip_mPerS -> tip_mPerS > ValveCapacity.GREATEST_TIP_mPerS)
                .isEmpty();
    }

    /** A valve of whose making nothing is known. */
    public RotaryValve(Volume swept, RotationalSpeed speed, double fill, Area clearance, double dischargeCoefficient) {
        this(swept, speed, fill, clearance, dischargeCoefficient, ValveBuild.UNKNOWN);
    }

    /** Air through the clearances [kg/s] into a receiver at a pressure: a nozzle that can choke (equations RV-1, TUB-21). */
    public double clearanceAir_kgPerS(double receiver_Pa, Air air) {
        return Nozzle.massFlow_kgPerS(
                clearance.squareMetres() * dischargeCoefficient, air.ambient().pascals(), receiver_Pa, air.rt());
    }

    /**
     * Air that returning pockets bring [kg/s]: each has dropped its dust and comes back full of air from below, however full it went
     * down (equation RV-2).
     *
     * <pre>
     * w = V n ρ_ambient
     * </pre>
     *
     * @source Mills, Pneumatic Conveying Design Guide: returning pocket leakage; what the filled pockets take down again is left out,
     *     so the leak is an upper estimate
     */
    public double pocketAir_kgPerS(Air air) {
        return ValveLeakage.pockets_kgPerS(
                swept.cubicMetres(),
                speed.revolutionsPerSecond(),
                air.density_kgPerM3(air.ambient().pascals()));
    }
}
