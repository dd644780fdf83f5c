package dustwright.engine.producer;

import dustwright.engine.quantity.Area;

/**
 * Vent valve on the producer's suction: open, it lets in air as an isentropic nozzle and the pull in the tubing is gone.
 *
 * @param dischargeCoefficient of the opening [-]
 */
public record VentValve(Area area, double dischargeCoefficient) {}
