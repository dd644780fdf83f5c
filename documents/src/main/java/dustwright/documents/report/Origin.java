package dustwright.documents.report;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What a paper was made from, printed on it.
 *
 * @param plantFile name of the plant file
 * @param mark a few signs that change with the file's content; empty where there is none
 * @param program name and version of the program
 */
public record Origin(String plantFile, String mark, String program) {
    private static final int MARK_bytes = 4;

    /** First signs of the SHA-256 of a plant file: two papers of one content carry the same mark. */
    public static String mark(byte[] plantFile) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(plantFile);
            return HexFormat.of().formatHex(digest, 0, MARK_bytes);
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
