/** Numbers with units, sentences and well-formed markup: how a figure becomes ink. */
@org.jspecify.annotations.NullMarked
package dustwright.documents.writing;
