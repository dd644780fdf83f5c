package dustwright.engine.audit;

import dustwright.engine.finding.Place;
import dustwright.engine.quantity.Quantity;

/**
 * A balance or law that a result does not meet.
 *
 * @param where the part of the plant
 * @param what what was checked, in words
 * @param off by how much it is missed: a mass flow for a balance, a ratio for a law
 * @param allowed the most that rounding may explain
 */
public record Discrepancy(Place where, String what, Quantity off, Quantity allowed) {}
