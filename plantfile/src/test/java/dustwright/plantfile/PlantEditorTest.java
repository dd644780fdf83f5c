package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.plant.Plant;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.Tool;
import dustwright.plantfile.PlantEditor.Edit;
import dustwright.plantfile.PlantEditor.Value;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlantEditorTest {
    private static final String TEXT = PlantReaderTest.resource("two-inlets.yaml");

    @Test
    void a_changed_value_changes_its_own_characters_only() {
        String edited = done(PlantEditor.set(TEXT, "tools.floor.k", new Value.Plain("7.5")));
        assertThat(edited).isEqualTo(TEXT.replace("floor: {k: 6}", "floor: {k: 7.5}"));
        assertThat(PlantReaderTest.plant(edited).tool("floor").law()).isEqualTo(new Tool.Law.VelocityHeads(7.5));
    }

    @Test
    void a_value_set_to_itself_gives_the_same_bytes() {
        for (String path : List.of("runs.M1.length", "plant.name", "stations.REC.producers.P1.motor", "points.J1[2]")) {
            Span span =
                    ((Reading.Read) PlantReader.read(TEXT)).lines().value(path).orElseThrow();
            String written = TEXT.substring(span.start(), span.end());
            assertThat(done(PlantEditor.set(TEXT, path, new Value.Plain(written))))
                    .isEqualTo(TEXT);
        }
    }

    @Test
    void only_the_line_of_the_value_changes() {
        String edited = done(PlantEditor.set(TEXT, "stations.REC.producers.P2.hold", new Value.Plain("6.5 inHg")));
        assertThat(changedLines(TEXT, edited)).containsExactly("        hold: 6.5 inHg");
    }

    @Test
    void a_remark_behind_a_value_stays() {
        String edited = done(PlantEditor.set(TEXT, "runs.M1.k", new Value.Plain("2.4")));
        assertThat(edited).contains("length: 24 m, k: 2.4}   # as measured on site");
    }

    @Test
    void a_new_key_goes_behind_the_last_one() {
        String edited = done(PlantEditor.add(TEXT, "inlets.A1", "valve k", new Value.Plain("0.7")));
        assertThat(edited).contains("dust: flour, feed: 60 kg/h, valve k: 0.7}\n  A2:");
        assertThat(PlantReaderTest.plant(edited).inlet("A1").valveK()).isEqualTo(0.7);
    }

    @Test
    void a_new_entry_goes_on_its_own_line() {
        String tool = done(PlantEditor.add(TEXT, "tools", "crevice", new Value.Flow("{k: 12}")));
        assertThat(tool).contains("  floor: {k: 6}\n  crevice: {k: 12}\n\npoints:");
        String bleeds = done(PlantEditor.add(tool, "", "bleeds", new Value.Flow("{B1: {at: J1, diameter: 20 mm}}")));
        assertThat(PlantReaderTest.plant(bleeds).bleeds()).hasSize(1);
        assertThat(bleeds).startsWith(tool);
    }

    @Test
    void a_first_entry_goes_under_its_heading() {
        String text = TEXT.replace("\nrequirements:", "\nbleeds:   # none yet\n\nrequirements:");
        String edited = done(PlantEditor.add(text, "bleeds", "B1", new Value.Flow("{at: J1, diameter: 20 mm}")));
        assertThat(edited).contains("bleeds:   # none yet\n  B1: {at: J1, diameter: 20 mm}\n");
    }

    @Test
    void an_item_is_appended_to_lists_of_both_styles() {
        String override = "{set: runs.M1.k, to: 2, reason: \"measured: again\", by: R.K.}";
        String edited = done(PlantEditor.append(TEXT, "overrides", new Value.Flow(override)));
        assertThat(edited).endsWith("by: R.K.}\n  - " + override + "\n");
        assertThat(PlantReaderTest.plant(edited).overrides()).hasSize(2);
        String via = done(PlantEditor.append(TEXT, "runs.D1.via", new Value.Flow("[4.5, 1, 6]")));
        assertThat(via).contains("via: [[4.5, 0, 6], [4.5, 1, 6]]");
    }

    @Test
    void removing_takes_the_entry_and_nothing_else() {
        assertThat(done(PlantEditor.remove(TEXT, "runs.D1.wye"))).isEqualTo(TEXT.replace(", wye: 45 deg", ""));
        assertThat(done(PlantEditor.remove(TEXT, "runs.D2.fittings[0].count")))
                .isEqualTo(TEXT.replace(", count: 2", ""));
        assertThat(done(PlantEditor.remove(TEXT, "plant.note")))
                .isEqualTo(TEXT.replace("note: Invented demo plant., ", ""));
        assertThat(done(PlantEditor.remove(TEXT, "stations.REC.producers.P1.silencer")))
                .isEqualTo(TEXT.replace("        silencer: {loss: 2 kPa, at: 330 scfm, stated for: site air}\n", ""));
        assertThat(done(PlantEditor.remove(TEXT, "overrides[0]")))
                .isEqualTo(TEXT.replace("  - {set: runs.M1.length, to: 31 m, reason: as built, by: R.K.}\n", ""));
        String withoutProducer = done(PlantEditor.remove(TEXT, "stations.REC.producers.P2"));
        assertThat(withoutProducer)
                .isEqualTo(TEXT.substring(0, TEXT.indexOf("      P2:")) + TEXT.substring(TEXT.indexOf("\nusage:")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plain",
                "two words",
                "with: colon",
                "a # remark",
                "'single'",
                "\"double\"",
                "back\\slash",
                "[list]",
                "{map}",
                "- dash",
                "? question",
                "*alias",
                "&anchor",
                "!tag",
                "%directive",
                "@at",
                "`tick",
                "null",
                "~",
                "",
                " leading",
                "trailing ",
                "tab\there",
                "line\nbreak",
                "Größe 3 µm",
                "名前",
                "smile 😀",
                "comma, here",
                "ends with:",
                "\u0007 bell",
                "\u00A0",
                "\u2028",
                "no",
                "1e5",
                "0x1F",
                "C:\\dust"
            })
    void hostile_names_come_back_as_they_were(String name) {
        String edited = done(PlantEditor.set(TEXT, "plant.name", new Value.Plain(name)));
        Faults faults = new Faults();
        Tree.Entries top = TreeReader.read(edited, faults).orElseThrow();
        Tree.Scalar read =
                (Tree.Scalar) Paths.find(top, "plant.name").orElseThrow().value();
        assertThat(read.text()).isEqualTo(name);
        assertThat(read.isNothing()).isFalse();
        assertThat(changedLines(TEXT, edited)).hasSize(1);
        String key = done(PlantEditor.add(TEXT, "dusts", name, new Value.Flow("{name: x}")));
        assertThat(TreeReader.read(key, faults)
                        .orElseThrow()
                        .entry("dusts")
                        .orElseThrow()
                        .value())
                .isInstanceOfSatisfying(
                        Tree.Entries.class, d -> assertThat(d.entry(name)).isPresent());
    }

    @Test
    void what_cannot_be_done_is_refused_with_a_reason() {
        assertThat(refused(PlantEditor.set(TEXT, "runs.M9.length", new Value.Plain("3 m"))))
                .isEqualTo("there is nothing at runs.M9.length");
        assertThat(refused(PlantEditor.add(TEXT, "tools", "floor", new Value.Plain("x"))))
                .isEqualTo("there is already a \"floor\" at tools");
        assertThat(refused(PlantEditor.add(TEXT, "tools.floor.k", "a", new Value.Plain("x"))))
                .isEqualTo("there are no keys at tools.floor.k, only \"6\"");
        assertThat(refused(PlantEditor.set(TEXT, "stations.REC", new Value.Plain("x"))))
                .contains("several lines");
        assertThat(refused(PlantEditor.set(TEXT, "tools.floor", new Value.Flow("{k: 6"))))
                .contains("no list or mapping on one line");
        assertThat(refused(PlantEditor.set(TEXT, "tools.floor", new Value.Flow("{k: 6}}\nx: 1"))))
                .contains("no list or mapping on one line");
        assertThat(refused(PlantEditor.remove(TEXT, ""))).contains("cannot be removed");
        assertThat(refused(PlantEditor.append(TEXT, "tools", new Value.Plain("x"))))
                .isEqualTo("there is no list at tools");
        assertThat(refused(PlantEditor.set("a: [", "a", new Value.Plain("x")))).contains("cannot be read");
        assertThat(refused(PlantEditor.set(TEXT, "plant.name", new Value.Plain("half \uD83D"))))
                .contains("half a character");
    }

    @Test
    void texts_with_windows_line_ends_and_characters_beyond_sixteen_bits_are_edited_in_place() {
        String text =
                TEXT.replace("Invented demo plant.", "Invented 😀 demo plant.").replace("\n", "\r\n");
        String edited = done(PlantEditor.set(text, "runs.M1.length", new Value.Plain("25 m")));
        assertThat(edited).isEqualTo(text.replace("length: 24 m", "length: 25 m"));
        Plant plant = PlantReaderTest.plant(done(PlantEditor.remove(edited, "overrides")));
        assertThat(((Run.Route.Measured) plant.run("M1").route()).length().metres())
                .isEqualTo(25);
        assertThat(done(PlantEditor.add(text, "tools", "t2", new Value.Flow("{k: 3}"))))
                .isEqualTo(text.replace("floor: {k: 6}\r\n", "floor: {k: 6}\r\n  t2: {k: 3}\r\n"));
    }

    @Test
    void every_single_value_of_a_file_can_be_set_and_set_back() {
        Tree.Entries top = TreeReader.read(TEXT, new Faults()).orElseThrow();
        List<String> paths = new ArrayList<>();
        leaves(top, "", paths);
        assertThat(paths).hasSizeGreaterThan(100);
        for (String path : paths) {
            Tree.Scalar old = (Tree.Scalar) Paths.find(top, path).orElseThrow().value();
            String there = done(PlantEditor.set(TEXT, path, new Value.Plain("x: \"y\"")));
            assertThat(done(PlantEditor.set(there, path, new Value.Plain(old.text()))))
                    .isEqualTo(TEXT);
        }
    }

    private static void leaves(Tree tree, String path, List<String> paths) {
        if (tree instanceof Tree.Entries entries) {
            entries.entries()
                    .forEach(e -> leaves(e.value(), Names.path(path, e.key().text()), paths));
        } else if (tree instanceof Tree.Items items) {
            for (int i = 0; i < items.items().size(); i++) {
                leaves(items.items().get(i), path + "[" + i + "]", paths);
            }
        } else {
            paths.add(path);
        }
    }

    private static List<String> changedLines(String before, String after) {
        List<String> old = before.lines().toList();
        List<String> now = after.lines().toList();
        assertThat(now).hasSameSizeAs(old);
        List<String> changed = new ArrayList<>();
        for (int i = 0; i < old.size(); i++) {
            if (!old.get(i).equals(now.get(i))) {
                changed.add(now.get(i));
            }
        }
        return changed;
    }

    private static String done(Edit edit) {
        assertThat(edit).isInstanceOf(Edit.Done.class);
        return ((Edit.Done) edit).text();
    }

    private static String refused(Edit edit) {
        assertThat(edit).isInstanceOf(Edit.Refused.class);
        return ((Edit.Refused) edit).why();
    }
}
