/** Dust in moving air: what it needs to be carried. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.conveying;
