package dustwright.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** An equation named in the code, in a derivation or in Javadoc, has its line on an equation page. */
class EquationPagesTest {
    private static final Pattern ID =
            Pattern.compile("\\b(?:NET|AIR|TUB|PRD|VLV|FLT|RV|RCV|CON|RTV|BAG|DIS|ELE|CST|COV|SIZ|HAZ)-[0-9]+\\b");
    private static final Pattern LINE = Pattern.compile("^\\| (" + ID.pattern() + ") \\|", Pattern.MULTILINE);

    @Test
    void every_equation_named_in_the_code_is_on_a_page() throws IOException {
        Set<String> onPages = ids(LINE, Path.of("../docs/equations"), ".md");
        assertThat(onPages).isNotEmpty();
        assertThat(onPages).containsAll(ids(ID, Path.of("src/main/java"), ".java"));
    }

    @Test
    void every_page_has_the_five_parts_in_their_order() throws IOException {
        try (Stream<Path> pages = Files.list(Path.of("../docs/equations"))) {
            for (Path page : pages.filter(each -> each.toString().endsWith(".md"))
                    .sorted()
                    .toList()) {
                assertThat(Files.readString(page))
                        .as(page.getFileName().toString())
                        .containsSubsequence(
                                "## Restriction", "## Geometry", "## Formula", "## Verification", "## Sources");
            }
        }
    }

    private static Set<String> ids(Pattern pattern, Path under, String ending) throws IOException {
        Set<String> found = new TreeSet<>();
        try (Stream<Path> files = Files.walk(under)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(ending)).toList()) {
                Matcher matcher = pattern.matcher(Files.readString(file));
                while (matcher.find()) {
                    found.add(matcher.groupCount() > 0 ? matcher.group(1) : matcher.group());
                }
            }
        }
        return found;
    }
}
