/** How the engine speaks to people: requirement, place, value, limit, margin, state, and the derivation down to a published source. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.finding;
