/** Bulk bag and drum. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.bagging;
