package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the written pages say of the sources is true: links lead somewhere, words of the glossary exist. */
class DocsTest {
    private static final Path ROOT = Path.of("..");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#\\s]+)(?:#[^)]*)?\\)");
    private static final Pattern CLASS = Pattern.compile("`([A-Z][A-Za-z]+)`");
    private static final Pattern DECLARED = Pattern.compile("\\b(?:class|record|interface|enum) ([A-Z][A-Za-z]+)");

    @Test
    void links_in_the_pages_lead_to_files() throws IOException {
        List<String> broken = new ArrayList<>();
        for (Path page : pages()) {
            Matcher link = LINK.matcher(Files.readString(page));
            while (link.find()) {
                String target = link.group(1);
                if (!target.contains("://") && !Files.exists(page.resolveSibling(target))) {
                    broken.add(ROOT.relativize(page) + " -> " + target);
                }
            }
        }
        assertThat(broken).isEmpty();
    }

    @Test
    void classes_named_in_the_glossary_and_the_recipes_exist() throws IOException {
        Set<String> declared = declared();
        List<Path> pages = new ArrayList<>(under(ROOT.resolve("docs/recipes"), ".md"));
        pages.add(ROOT.resolve("docs/glossary.md"));
        for (Path page : pages) {
            Set<String> named = new TreeSet<>();
            Matcher name = CLASS.matcher(Files.readString(page));
            while (name.find()) {
                if (!name.group(1).equals(name.group(1).toUpperCase(Locale.ROOT))) {
                    named.add(name.group(1));
                }
            }
            assertThat(declared).as(page.toString()).containsAll(named);
        }
    }

    private static List<Path> pages() throws IOException {
        List<Path> pages = new ArrayList<>(under(ROOT.resolve("docs"), ".md"));
        pages.addAll(under(ROOT.resolve("examples"), ".md"));
        try (Stream<Path> top = Files.list(ROOT)) {
            top.filter(p -> p.toString().endsWith(".md")).sorted().forEach(pages::add);
        }
        return pages;
    }

    private static Set<String> declared() throws IOException {
        Set<String> declared = new TreeSet<>();
        for (String module : List.of("engine", "plantfile", "documents", "cli", "bench")) {
            for (Path source : under(ROOT.resolve(module).resolve("src"), ".java")) {
                Matcher name = DECLARED.matcher(Files.readString(source));
                while (name.find()) {
                    declared.add(name.group(1));
                }
            }
        }
        return declared;
    }

    private static List<Path> under(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(f -> f.toString().endsWith(ending)).sorted().toList();
        }
    }
}
