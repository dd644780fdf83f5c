package dustwright.engine.network;

/**
 * What a producer does at one place of its station's curve, every figure the worse the greater.
 *
 * @param power_W at the shaft [W]
 * @param torque_Nm at the shaft [N·m]
 * @param rise_K of the air's temperature [K]
 * @param aboveFirstPoint least difference its curve was measured at, over the difference over the machine [-]; 0 where that is not asked
 * @param belowLastPoint difference over the machine, over the greatest its curve was measured at [-]; 0 where that is not asked
 */
public record Working(double power_W, double torque_Nm, double rise_K, double aboveFirstPoint, double belowLastPoint) {}
