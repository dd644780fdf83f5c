/**
 * Proof over every set of open inlets: which set is worst for which requirement, and whether all of them hold.
 *
 * <p>{@link dustwright.engine.coverage.Coverage} is the class to read first; the ordering arguments stand in
 * docs/decisions/0060-coverage-by-envelopes.md, the equations on docs/equations/coverage.md.
 */
@org.jspecify.annotations.NullMarked
package dustwright.engine.coverage;
