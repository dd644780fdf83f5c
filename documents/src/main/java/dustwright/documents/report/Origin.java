package dustwright.documents.report;

/**
 * What a paper was made from, printed on it.
 *
 * @param plantFile name of the plant file
 * @param mark a few signs that change with the file's content; empty where there is none
 * @param program name and version of the program
 */
public record Origin(String plantFile, String mark, String program) {}
