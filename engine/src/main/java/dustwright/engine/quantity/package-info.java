/** Physical quantities as types, in SI, and the units people use. Absolute pressure and vacuum, free air and actual flow do not mix. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.quantity;
