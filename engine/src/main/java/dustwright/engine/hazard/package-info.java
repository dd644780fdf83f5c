/** Combustible dust: what is known of it, what follows from it, and explosion vents by two published methods. Screening, never a verdict. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.hazard;
