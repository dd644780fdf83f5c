package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.plant.Plant;
import dustwright.engine.sheet.Sheet;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Words of the trade are explained with their source, and no heading of a finding or a sheet is without one that is. */
class TermsTest {
    private final List<JsonNode> terms = new ArrayList<>();
    private final Set<String> words = new TreeSet<>();

    TermsTest() throws IOException {
        try (InputStream in = Studio.class.getResourceAsStream("terms.json")) {
            new ObjectMapper().readTree(in).forEach(terms::add);
        }
        for (JsonNode term : terms) {
            words.add(term.path("term").asText().toLowerCase(Locale.ROOT));
            term.path("also").forEach(also -> words.add(also.asText().toLowerCase(Locale.ROOT)));
        }
    }

    private boolean explained(String heading) {
        String any = words.stream().map(Pattern::quote).collect(Collectors.joining("|"));
        return Pattern.compile("(?<![\\p{L}\\p{N}-])(?:" + any + ")(?![\\p{L}\\p{N}-])")
                .matcher(heading.toLowerCase(Locale.ROOT))
                .find();
    }

    @Test
    void each_term_has_its_meaning_in_sentences_and_its_source() {
        assertThat(terms).hasSizeGreaterThanOrEqualTo(50);
        for (JsonNode term : terms) {
            String name = term.path("term").asText();
            assertThat(term.path("means").asText()).as(name).endsWith(".").hasSizeGreaterThan(20);
            assertThat(term.path("source").asText()).as(name).isNotBlank();
            assertThat(term.path("means").asText().toLowerCase(Locale.ROOT))
                    .as(name)
                    .doesNotContain("safe");
        }
    }

    @Test
    void no_word_stands_for_two_terms() {
        int all = terms.stream().mapToInt(t -> 1 + t.path("also").size()).sum();
        assertThat(words).hasSize(all);
    }

    @Test
    void every_kind_of_finding_has_a_word_in_its_heading_that_is_explained() {
        assertThat(Stream.of(FindingCode.values()).map(FindingCode::title).filter(title -> !explained(title)))
                .isEmpty();
    }

    @Test
    void every_sheet_of_the_examples_has_a_word_in_its_heading_that_is_explained() throws IOException {
        Set<String> titles = new TreeSet<>();
        try (Stream<Path> examples = Files.list(Path.of("..", "examples"))) {
            for (Path example : examples.sorted().toList()) {
                Path file = example.resolve("plant.yaml");
                if (Files.exists(file) && PlantReader.read(file) instanceof Reading.Read read) {
                    Plant plant = read.plant();
                    Study.of(plant, States.usual(plant).subList(0, 1)).withSheets().sheets().stream()
                            .map(Sheet::title)
                            .forEach(titles::add);
                }
            }
        }
        assertThat(titles).hasSizeGreaterThan(12).allMatch(this::explained);
    }
}
