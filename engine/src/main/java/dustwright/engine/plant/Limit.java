package dustwright.engine.plant;

import dustwright.engine.finding.Source;

/** A limit with where it comes from. */
public record Limit<T>(T value, Source source) {}
