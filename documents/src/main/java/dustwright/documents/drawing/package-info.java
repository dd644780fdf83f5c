/** One drawing of the plant and of its curves as shapes on a sheet, written as SVG. */
@org.jspecify.annotations.NullMarked
package dustwright.documents.drawing;
