/** Compile and solve one state. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.network;
