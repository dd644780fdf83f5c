package dustwright.engine.network;

import dustwright.engine.quantity.MassFlow;

/** Air admitted by a far-end bleed valve at a point. */
public record BleedResult(String id, String point, boolean open, MassFlow flow) {}
