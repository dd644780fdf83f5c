/** Vacuum producers, drives, relief and vent valve, silencer, safety filter. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.producer;
