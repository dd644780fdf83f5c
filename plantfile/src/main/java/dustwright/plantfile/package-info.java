/** Module plantfile. */
@org.jspecify.annotations.NullMarked
package dustwright.plantfile;
