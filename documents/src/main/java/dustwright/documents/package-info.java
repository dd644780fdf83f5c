/**
 * What leaves the house: drawings, reports, answers for terminals and for programs. It formats a {@link dustwright.engine.Study} and
 * computes nothing: every figure printed is a component of a result record.
 */
@org.jspecify.annotations.NullMarked
package dustwright.documents;
