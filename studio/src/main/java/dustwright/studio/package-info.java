/** The working place in the browser: one plant, drawn and answered live, edited, kept step by step. */
@org.jspecify.annotations.NullMarked
package dustwright.studio;
