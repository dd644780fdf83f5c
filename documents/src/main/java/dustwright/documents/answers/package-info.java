/** The answers of the commands, as text for a terminal and as JSON for a program. */
@org.jspecify.annotations.NullMarked
package dustwright.documents.answers;
