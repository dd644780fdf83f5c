package dustwright.engine.finding;

/**
 * Something the plant file did not say and the engine had to take, or a reading it made: listed in every report.
 *
 * @param place what it is about
 * @param what the value or reading in words with its unit, for example {@code "tool K 6"}
 * @param basis why this value
 */
public record Assumption(Place place, String what, Source basis) {}
