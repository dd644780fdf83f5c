/** The control sequence on paper and in files: what was proven, and what a panel builder and a programmer need. */
@org.jspecify.annotations.NullMarked
package dustwright.documents.control;
