/** Module bench. */
@org.jspecify.annotations.NullMarked
package dustwright.bench;
