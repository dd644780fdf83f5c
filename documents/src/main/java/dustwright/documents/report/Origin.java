package dustwright.documents.report;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What a paper was made from, printed on it.
 *
 * @param plantFile name of the plant file
 * @param mark a few signs that change with the file's content, and those of other files it was made from; empty where there is none
 * @param program name and version of the program
 */
public record Origin(String plantFile, String mark, String program) {
    private static final int MARK_bytes = 4;

    /** The same of a paper that another file went into too. */
    public Origin with(String file, byte[] content) {
        return new Origin(plantFile, mark + ", " + file + " " + mark(content), program);
    }

    /** First signs of the SHA-256 of a file: two papers of one content carry the same mark. */
    public static String mark(byte[] file) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(file);
            return HexFormat.of().formatHex(digest, 0, MARK_bytes);
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
