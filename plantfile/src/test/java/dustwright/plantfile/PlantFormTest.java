package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.quantity.Length;
import dustwright.plantfile.PlantEditor.Edit;
import dustwright.plantfile.PlantEditor.Value;
import dustwright.plantfile.PlantForm.Field;
import dustwright.plantfile.PlantForm.Form;
import dustwright.plantfile.PlantForm.Kind;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Parts of a plant file as fields: what is written, what may be, what is added where. */
class PlantFormTest {
    private final String text = PlantReaderTest.resource("two-inlets.yaml");

    private static Optional<Form> form(String text, String path, String kind) {
        return PlantForm.of(PlantParts.of(text).orElseThrow(), path, kind);
    }

    private Form form(String path) {
        return form(text, path, "").orElseThrow();
    }

    private static Field field(Form form, String key) {
        return form.fields().stream()
                .filter(f -> f.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** Every written value of a file is reached from the top, and its field says what the file says there. */
    @Test
    void every_value_of_a_file_has_a_field_and_none_is_shown_as_bare_yaml() {
        assertThat(visited("")).isGreaterThan(80);
    }

    private int visited(String path) {
        Form form = form(path);
        int seen = 0;
        for (Field field : form.fields()) {
            if (!field.written()) {
                continue;
            }
            seen++;
            assertThat(field.kind()).as(field.path()).isNotEqualTo(Kind.YAML);
            boolean deeper = field.kind() == Kind.GROUP || field.kind() == Kind.NAMED;
            PlantEditor.scalar(text, field.path())
                    .ifPresent(
                            written -> assertThat(field.text()).as(field.path()).isEqualTo(written));
            seen += deeper ? visited(field.path()) : 0;
        }
        return seen;
    }

    @Test
    void a_field_says_meaning_range_choices_and_what_was_understood() {
        Field hose = field(form("inlets.A1"), "hose");
        assertThat(hose.kind()).isEqualTo(Kind.ID);
        assertThat(hose.choices()).isNotEmpty().contains(hose.text());
        assertThat(hose.help()).isEqualTo("Hose used here.");
        Field leak = field(form("inlets.A2"), "leak");
        assertThat(leak.kind()).isEqualTo(Kind.AMOUNT);
        assertThat(leak.range()).isEqualTo("0 kg/(s.Pa) to 1e-5 kg/(s.Pa)");
        Field temperature = field(form("site"), "temperature");
        assertThat(temperature.quantity()).isPresent();
    }

    /** The file's bare coordinates are metres; A2 is given a coordinate in feet, 12 ft = 3.6576 m. */
    @Test
    void a_coordinate_says_its_unit_and_what_was_understood() {
        String feet = text.replace("at: [9, 2, 1]", "at: [9, 12 ft, 0]");
        List<Field> at = field(form(feet, "inlets.A2", "").orElseThrow(), "at").parts();
        assertThat(at).extracting(Field::unit).containsExactly("m", "", "m");
        assertThat(at.get(0).quantity()).contains(new Length(9));
        assertThat(at.get(1).quantity().orElseThrow().si()).isCloseTo(3.6576, within(1e-9));
        assertThat(at.get(2).quantity()).as("nought in every unit").isEmpty();
    }

    @Test
    void a_part_that_is_not_written_has_its_fields_by_its_kind() {
        String bare =
                PlantEditor.remove(text, "stations.REC.container") instanceof Edit.Done without ? without.text() : text;
        Form drum = form(bare, "stations.REC.container", "drum").orElseThrow();
        assertThat(drum.written()).isFalse();
        assertThat(drum.kinds()).containsExactly("bulk bag", "drum");
        assertThat(drum.fields().stream().map(Field::key)).contains("volume").doesNotContain("loops");
        assertThat(form(text, "stations.REC.roof", "")).isEmpty();
    }

    @Test
    void what_is_added_brings_what_must_stand_around_it() {
        Edit edit = PlantParts.add(
                text, "usage.zones.north.1", Value.keys(Map.of("name", new Value.Plain("North, bay 1"))));
        assertThat(edit).isInstanceOf(Edit.Done.class);
        String after = ((Edit.Done) edit).text();
        assertThat(PlantEditor.onOneLine(after, "usage.zones.north.1")).hasValue("{name: \"North, bay 1\"}");
        assertThat(PlantParts.of(after).orElseThrow().steps("usage.zones.north.1"))
                .isEqualTo(List.of("usage", "zones", "north.1"));
        assertThat(PlantParts.add(after, "usage.zones.north.1", new Value.Plain("again")))
                .isInstanceOf(Edit.Refused.class);
        Edit bleed = PlantParts.add(text, "bleeds.B1", Value.keys(Map.of("at", new Value.Plain("J1"))));
        assertThat(PlantEditor.onOneLine(((Edit.Done) bleed).text(), "bleeds")).hasValue("{B1: {at: J1}}");
    }

    @Test
    void parts_alike_are_found_wherever_they_stand() {
        assertThat(PlantParts.of(text).orElseThrow().alike("inlets.Z1"))
                .contains("inlets.A1")
                .allMatch(path -> path.startsWith("inlets."));
    }

    @Test
    void block_style_is_written_on_one_line_without_its_comments() {
        String block = "a:\n  b: 1 # one\n  c:\n    - 2\n    - {d: x, e: 'y: z'}\n";
        assertThat(PlantEditor.onOneLine(block, "a")).hasValue("{b: 1, c: [2, {d: x, e: \"y: z\"}]}");
    }
}
