package dustwright.engine.network;

import dustwright.engine.quantity.MassFlow;

/** Air admitted by a far-end bleed valve. */
public record BleedResult(String id, boolean open, MassFlow flow) {}
