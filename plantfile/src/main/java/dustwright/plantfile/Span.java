package dustwright.plantfile;

/**
 * Where something stands in the text of a plant file.
 *
 * @param line first line is 1
 * @param column first column is 1
 * @param start offset of the first character, in characters of the text
 * @param end offset behind the last character
 */
public record Span(int line, int column, int start, int end) {}
