package dustwright.engine.plant;

import dustwright.engine.finding.Place;

/** A figure somebody set against the usual one, with the reason. */
public record ReasonedOverride(Place place, String what, String reason, String by) {}
