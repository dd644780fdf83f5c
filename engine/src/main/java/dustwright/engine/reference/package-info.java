/** Published tables bundled with the program; the only engine package that reads anything. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.reference;
