/** Discharge rate and air leaking back. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.rotaryvalve;
