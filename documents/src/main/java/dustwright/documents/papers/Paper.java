package dustwright.documents.papers;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;

/**
 * One file.
 *
 * @param name with the ending that says its format
 * @param what it is, for whoever chooses among them
 * @param content written when it is asked for
 */
public record Paper(String name, String what, Content content) {
    /** What fills the file; the stream is left open. */
    public interface Content {
        void to(OutputStream out) throws IOException;
    }

    /** A file of text. */
    public static Paper text(String name, String what, Supplier<String> text) {
        return new Paper(name, what, out -> out.write(text.get().getBytes(StandardCharsets.UTF_8)));
    }
}
