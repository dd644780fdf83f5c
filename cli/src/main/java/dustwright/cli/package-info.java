/** Module cli. */
@org.jspecify.annotations.NullMarked
package dustwright.cli;
