package dustwright.engine.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.finding.Confidence;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ReferenceTableTest {
    private static final List<String> HEADER = List.of(
            "# quantity : loss [-]", "# source : A book", "# confidence : from memory", "# validity : everywhere");

    private static String table(List<String> header, String... data) {
        return String.join("\n", header) + "\n" + String.join("\n", data) + "\n";
    }

    @Test
    void a_table_tells_what_it_is_and_how_far_to_trust_it() {
        ReferenceTable table = ReferenceTable.parse("demo.csv", table(HEADER, "name;k", "bend;0.3", "ribbed;"));
        assertThat(table.quantity()).isEqualTo("loss [-]");
        assertThat(table.validity()).isEqualTo("everywhere");
        assertThat(table.source().text()).isEqualTo("A book");
        assertThat(table.source().confidence()).isEqualTo(Confidence.FROM_MEMORY);
        assertThat(table.row("name", "bend").number("k")).isEqualTo(0.3);
        assertThat(table.row("name", "ribbed").find("k")).isEmpty();
    }

    @Test
    void a_table_that_does_not_say_where_it_comes_from_is_refused() {
        for (String line : HEADER) {
            List<String> without =
                    HEADER.stream().filter(each -> !each.equals(line)).toList();
            String key = line.substring(2, line.indexOf(' ', 2));
            assertThatThrownBy(() -> ReferenceTable.parse("demo.csv", table(without, "name;k", "bend;0.3")))
                    .hasMessage("table demo.csv does not state its " + key);
        }
    }

    @Test
    void an_unknown_confidence_a_ragged_row_and_an_empty_table_are_refused() {
        List<String> vague = List.of(HEADER.get(0), HEADER.get(1), "# confidence : sure", HEADER.get(3));
        assertThatThrownBy(() -> ReferenceTable.parse("demo.csv", table(vague, "name;k", "bend;0.3")))
                .hasMessageContaining("confidence 'sure'");
        assertThatThrownBy(() -> ReferenceTable.parse("demo.csv", table(HEADER, "name;k", "bend;0.3;1")))
                .hasMessageContaining("3 fields instead of 2");
        assertThatThrownBy(() -> ReferenceTable.parse("demo.csv", table(HEADER, "name;k")))
                .hasMessageContaining("no rows");
    }

    @Test
    void what_a_table_does_not_hold_is_refused_with_what_it_holds() {
        ReferenceTable table = ReferenceTable.parse("demo.csv", table(HEADER, "name;k", "bend;0.3", "wye;0.5"));
        assertThatThrownBy(() -> table.row("name", "tee"))
                .hasMessage("demo.csv has no name 'tee'; it holds: bend, wye");
        assertThatThrownBy(() -> table.row("k", 0.4)).hasMessage("demo.csv has no k 0.4; it holds: 0.3, 0.5");
        assertThatThrownBy(() -> table.row("size", "tee")).hasMessageContaining("no column size");
        assertThatThrownBy(() -> ReferenceTable.bundled("nothing.csv")).hasMessageContaining("nothing.csv");
    }

    @Test
    void every_bundled_table_states_its_origin() throws IOException {
        Path root = Path.of("src/main/resources/reference");
        List<String> names;
        try (Stream<Path> files = Files.walk(root)) {
            names = files.filter(Files::isRegularFile)
                    .map(file -> root.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
        assertThat(names).hasSizeGreaterThan(15);
        for (String name : names) {
            assertThat(ReferenceTable.bundled(name).rows()).as(name).isNotEmpty();
        }
    }
}
