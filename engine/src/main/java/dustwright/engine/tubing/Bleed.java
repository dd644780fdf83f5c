package dustwright.engine.tubing;

import dustwright.engine.quantity.Area;

/**
 * A far-end bleed valve: an opening at a header's end that lets in air to keep velocity.
 *
 * @param point id of the point it sits at
 * @param dischargeCoefficient of the opening, an isentropic nozzle [-]
 * @param open whether it stands open in ordinary service
 */
public record Bleed(String id, String point, Area area, double dischargeCoefficient, boolean open) {}
