package dustwright.studio;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Copies of the examples to work on. */
final class Plants {
    private static final Path EXAMPLES = Path.of("..", "examples");

    private Plants() {}

    static Path copy(String example, Path folder) throws IOException {
        Path copy = folder.resolve("plant.yaml");
        Files.copy(EXAMPLES.resolve(example).resolve("plant.yaml"), copy);
        return copy;
    }
}
