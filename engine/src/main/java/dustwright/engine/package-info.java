/** Plant and states in, all results and findings out: start reading at {@link dustwright.engine.Study}. */
@org.jspecify.annotations.NullMarked
package dustwright.engine;
