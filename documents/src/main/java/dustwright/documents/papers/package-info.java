/** What leaves the house: each package of papers as a list of files, the same for the command line and the studio. */
@org.jspecify.annotations.NullMarked
package dustwright.documents.papers;
