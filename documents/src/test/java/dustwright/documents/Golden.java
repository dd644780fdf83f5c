package dustwright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Our own past output, kept as text. {@code -Ddustwright.accept} writes it anew: a deliberate act whose diff is read before it is kept. */
final class Golden {
    private static final Path FOLDER = Path.of("src", "test", "resources", "snapshot");

    private Golden() {}

    static void check(String name, String text) {
        Path file = FOLDER.resolve(name);
        String lines = text.replace("><", ">\n<");
        try {
            if (System.getProperty("dustwright.accept") != null) {
                Files.createDirectories(FOLDER);
                Files.writeString(file, lines);
            }
            assertThat(lines).isEqualTo(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
