/** The report, as a page for a browser and as PDF. */
@org.jspecify.annotations.NullMarked
package dustwright.documents.report;
