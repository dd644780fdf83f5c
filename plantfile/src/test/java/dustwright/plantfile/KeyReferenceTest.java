package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.plantfile.keys.CatalogueKeys;
import dustwright.plantfile.keys.SequenceKeys;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The key reference says what the reader does: its tables are made from the declared keys and its examples are the files of these tests.
 * After a change of keys, {@code -Ddustwright.update=true} writes the page anew.
 */
class KeyReferenceTest {
    private static final Path PAGE = Path.of("..", "docs", "plant-file.md");

    @Test
    void the_page_shows_the_declared_keys_and_examples_that_are_read() throws IOException {
        String page = Files.readString(PAGE);
        String expected = part(page, "keys", KeyReference.markdown());
        for (String example : new String[] {"two-inlets.yaml", "measured-loop.yaml"}) {
            expected = part(expected, example, "```yaml\n" + PlantReaderTest.resource(example) + "```\n");
        }
        if (Boolean.getBoolean("dustwright.update")) {
            Files.writeString(PAGE, expected);
        }
        assertThat(Files.readString(PAGE)).isEqualTo(expected);
    }

    @Test
    void the_page_of_the_catalogue_shows_its_declared_keys() throws IOException {
        Path page = PAGE.resolveSibling("catalogue.md");
        String expected = part(Files.readString(page), "keys", KeyReference.markdown(CatalogueKeys.TOP));
        if (Boolean.getBoolean("dustwright.update")) {
            Files.writeString(page, expected);
        }
        assertThat(Files.readString(page)).isEqualTo(expected);
    }

    @Test
    void the_page_of_sequence_files_shows_their_declared_keys() throws IOException {
        Path page = PAGE.resolveSibling("sequence-file.md");
        String expected = part(Files.readString(page), "keys", KeyReference.markdown(SequenceKeys.TOP));
        if (Boolean.getBoolean("dustwright.update")) {
            Files.writeString(page, expected);
        }
        assertThat(Files.readString(page)).isEqualTo(expected);
    }

    @Test
    void the_page_of_published_dusts_shows_the_library() throws IOException {
        Path page = PAGE.resolveSibling("published-dusts.md");
        String expected = part(Files.readString(page), "tables", PublishedDustPage.markdown());
        if (Boolean.getBoolean("dustwright.update")) {
            Files.writeString(page, expected);
        }
        assertThat(Files.readString(page)).isEqualTo(expected);
    }

    private static String part(String page, String name, String content) {
        String begin = "<!-- begin " + name + " -->\n";
        String end = "<!-- end " + name + " -->\n";
        assertThat(page).contains(begin).contains(end);
        return page.substring(0, page.indexOf(begin) + begin.length()) + "\n" + content + "\n"
                + page.substring(page.indexOf(end));
    }
}
