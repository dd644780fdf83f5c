package dustwright.engine.network;

import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.PressureDifference;

/** Static pressure at a point, and how far it lies below the site barometer. */
public record NodeResult(String id, AbsolutePressure pressure, PressureDifference vacuum) {}
