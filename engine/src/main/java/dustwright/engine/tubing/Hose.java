package dustwright.engine.tubing;

import dustwright.engine.quantity.Length;

/** A hose with the length it is used at. */
public record Hose(String id, Length bore, Length length, Wall wall) {}
