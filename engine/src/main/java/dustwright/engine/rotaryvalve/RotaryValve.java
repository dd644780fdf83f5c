package dustwright.engine.rotaryvalve;

import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Volume;

/**
 * The rotor that discharges dust and keeps the vacuum.
 *
 * @param swept volume of all pockets per turn
 * @param fill share of the pockets filled with dust [-]
 * @param clearance leaking gap area, an isentropic nozzle that can choke
 * @param dischargeCoefficient of the gaps [-]
 */
public record RotaryValve(
        Volume swept, RotationalSpeed speed, double fill, Area clearance, double dischargeCoefficient) {}
