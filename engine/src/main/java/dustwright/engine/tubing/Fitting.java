package dustwright.engine.tubing;

import dustwright.engine.finding.Source;

/** Fittings of one kind on a run: loss coefficient K on the run's own velocity [-], each counted once. */
public record Fitting(String name, double k, int count, Source source) {}
