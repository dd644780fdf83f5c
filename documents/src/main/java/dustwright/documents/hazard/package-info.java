/** The hazard papers: what is collected and what follows, the hazard study, the earthing test list. */
@org.jspecify.annotations.NullMarked
package dustwright.documents.hazard;
