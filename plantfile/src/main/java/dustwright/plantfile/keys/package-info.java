/** The keys of a plant file, declared once: reader, JSON Schema and the key reference are made from this declaration. */
@org.jspecify.annotations.NullMarked
package dustwright.plantfile.keys;
