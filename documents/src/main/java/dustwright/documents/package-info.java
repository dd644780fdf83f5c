/** Module documents. */
@org.jspecify.annotations.NullMarked
package dustwright.documents;
