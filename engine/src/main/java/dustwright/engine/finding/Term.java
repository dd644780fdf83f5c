package dustwright.engine.finding;

import dustwright.engine.quantity.Quantity;

/** One symbol of a formula with the value put in. */
public record Term(String symbol, String meaning, Quantity value) {}
