package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.documents.report.Origin;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The hazard papers of the examples and the study beside a plant, by the command that people use. */
class HazardsCommandTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Pattern TAG = Pattern.compile("<[^>]*>");

    private record Ran(int code, String out, String err) {}

    private static Ran run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out), new PrintWriter(err), args);
        return new Ran(code, out.toString(), err.toString());
    }

    private static Path copy(String example, Path folder) throws IOException {
        Path plant = folder.resolve("plant.yaml");
        Files.copy(EXAMPLES.resolve(example).resolve("plant.yaml"), plant);
        return plant;
    }

    private static String papers(Path plant, Path out) throws IOException {
        Ran ran = run("hazards", plant.toString(), "--open", "none", "--out", out.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isLessThan(ExitCode.BAD_INPUT);
        String html = Files.readString(out.resolve("hazards.html"));
        return TAG.matcher(html.substring(html.indexOf("<body")))
                .replaceAll(" ")
                .replace("&#160;", " ")
                .replace("&lt;", "<")
                .replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"aluminium-finishing", "bakery", "cement-packing", "furniture", "plastics", "supplement"})
    void every_example_has_papers_with_cautions_and_without_a_verdict_nobody_can_give(
            String example, @TempDir Path folder) throws IOException {
        String text = papers(copy(example, folder), folder);
        assertThat(text).contains("a qualified person does and signs it", "Only tests of the own dust count");
        assertThat(text.toLowerCase(Locale.ROOT)).doesNotContain(" is safe", "are safe", "nan", "null");
        try (ZipFile workbook = new ZipFile(folder.resolve("hazards.xlsx").toFile())) {
            assertThat(workbook.stream()).hasSizeGreaterThan(4);
            // the first sheet holds the cautions themselves; each other one carries them when it is printed alone
            for (int sheet = 2; sheet <= 5; sheet++) {
                ZipEntry entry = workbook.getEntry("xl/worksheets/sheet" + sheet + ".xml");
                assertThat(new String(workbook.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8))
                        .contains("oddFooter", "the authority having jurisdiction and a licensed engineer decide");
            }
        }
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("hazards.pdf").toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertThat(stripper.getText(pdf)).as("page %s", page).contains("a qualified person signs");
            }
        }
    }

    @Test
    void aluminium_comes_with_separate_collection_isolation_and_what_metal_asks_for(@TempDir Path folder)
            throws IOException {
        assertThat(papers(copy("aluminium-finishing", folder), folder))
                .contains(
                        "a system of its own for this family of metal",
                        "every main into the collector is isolated",
                        "wet, hydrogen vented, sludge taken out daily",
                        "not returned indoors",
                        "no water on burning metal",
                        "Class II Group E; IIIC, conductive",
                        "asked for: flame must not run back to people who hold hoses",
                        "none without a special review of the collector");
    }

    /** The conflicts a safety engineer looks for first: found, located, explained. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bakery | type: C | type: A | Bag type not permitted for a dust in bulk bag or drum REC | type A is not permitted for this ignition energy (50 mJ)",
                "bakery | family: organic | family: aluminium | Light metal comes to the dry receiver REC | Use wet collection",
                "bakery | area class: \"unclassified, dusty indoor\", enclosure: 4X | area class: Class II Div 1, enclosure: \"12\" | Enclosure not for its area: panel | listed for the class, group and temperature",
                "bakery | area class: \"unclassified, dusty indoor\", enclosure: 4X | area class: \"unclassified, dusty indoor\", enclosure: \"12\" | Enclosure not made for what reaches panel | Use an enclosure of the usual type for this exposure",
                "bakery | inlet isolation: flap valve | inlet isolation: none | Flame can run back through a main from receiver REC | none: without it flame runs back to people who hold hoses",
                "supplement | method: flameless venting | method: venting | No way out that does for an explosion in receiver REC | it would vent into the room",
                "furniture | resistance: 1e6 ohm | resistance: 1e10 ohm | Charge does not get to ground through hose H2 | neither conductive nor dissipative"
            })
    void a_conflict_is_found_located_and_explained(
            String example, String good, String bad, String found, String explained, @TempDir Path folder)
            throws IOException {
        Path plant = copy(example, folder);
        String text = Files.readString(plant);
        assertThat(text).contains(inLines(good));
        Files.writeString(plant, text.replace(inLines(good), inLines(bad)));
        assertThat(papers(plant, folder)).contains("does not hold " + found, explained);
    }

    @Test
    void aluminium_and_rust_on_one_system_are_found_with_the_inlets_they_come_from(@TempDir Path folder)
            throws IOException {
        Path plant = copy("aluminium-finishing", folder);
        String text = Files.readString(plant);
        Files.writeString(
                plant,
                text.replaceFirst(
                                "\ndusts:[^\n]*\n",
                                "\ndusts:\n  rust: {name: Rust, class: heavy dust, combustible: no, explosion: {family: rust or iron oxide}}\n")
                        .replaceFirst("(F1: .*)dust: fines", "$1dust: rust"));
        assertThat(papers(plant, folder))
                .contains(
                        "does not hold Dusts that must not meet are collected at point SEP",
                        "burn as thermite",
                        "from F1 and A1");
    }

    @Test
    void the_study_beside_a_plant_keeps_what_a_team_wrote_and_follows_the_plant(@TempDir Path folder)
            throws IOException {
        Path plant = copy("bakery", folder);
        Path study = folder.resolve("hazard-study.yaml");
        assertThat(run("hazards", plant.toString(), "--open", "none", "--study").out())
                .startsWith("Made: ");
        String first = Files.readString(study);
        Files.writeString(
                study,
                first.replace(
                        "  REC valve hand: {}",
                        "  REC valve hand:\n    severity: one person killed or maimed\n    likelihood: once in ten years\n    action: Trapped key"));
        assertThat(papers(plant, folder))
                .contains(
                        "high: one person killed or maimed, once in ten years",
                        "Trapped key",
                        ", hazard-study.yaml " + Origin.mark(Files.readAllBytes(study)));
        Files.writeString(plant, Files.readString(plant).replaceFirst("(?s)    rotary valve: \\{.*?\\}\n", ""));
        assertThat(run("hazards", plant.toString(), "--open", "none", "--study").out())
                .startsWith("Written anew");
        assertThat(Files.readString(study)).contains("action: Trapped key", "no longer gives rise to this row");
        assertThat(papers(plant, folder))
                .contains("no line of this plant; kept", "Nothing was looked for; what the team wrote is kept");
        Files.writeString(study, Files.readString(study).replace("once in ten years\n    action", "often\n    action"));
        Ran wrong = run("hazards", plant.toString(), "--open", "none", "--out", folder.toString());
        assertThat(wrong.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(wrong.err()).contains("is no likelihood of the matrix", "one of not expected");
    }

    /** The study that stands beside the bakery is as the program would write it anew. */
    @Test
    void the_study_of_the_bakery_is_up_to_date(@TempDir Path folder) throws IOException {
        Path plant = copy("bakery", folder);
        Path kept = EXAMPLES.resolve("bakery").resolve("hazard-study.yaml");
        Path study = folder.resolve("hazard-study.yaml");
        Files.copy(kept, study);
        assertThat(run("hazards", plant.toString(), "--study").err()).isEmpty();
        if (Boolean.getBoolean("dustwright.accept")) {
            Files.writeString(kept, Files.readString(study));
        }
        assertThat(Files.readString(study)).isEqualTo(Files.readString(kept));
    }

    /** Wrong values of a dust are told with their line, and a test without explosion ends in words. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kst: -5 bar.m/s | a negative dust explosion constant",
                "mie: -3 mJ | a negative spark energy",
                "kst: 100 bar | a dust explosion constant such as 115 bar.m/s",
                "pmax: 0.3 bar | is outside what is sensible here"
            })
    void a_hostile_value_of_a_dust_is_refused_with_its_line(String value, String told, @TempDir Path folder)
            throws IOException {
        Path plant = copy("bakery", folder);
        Files.writeString(plant, Files.readString(plant).replaceFirst("explodes like: \"Starch, wheat\"", value));
        Ran ran = run("hazards", plant.toString(), "--open", "none", "--out", folder.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(ran.err()).contains("line 23", told);
    }

    @Test
    void every_interlock_of_the_study_says_of_which_sequence_it_is(@TempDir Path folder) throws IOException {
        Path plant = copy("bakery", folder);
        assertThat(papers(plant, folder)).contains("FIRE OR EXPLOSION SIGNAL of the default sequence: ");
        Path own = folder.resolve("own-sequence.yaml");
        assertThat(run("sequence", plant.toString(), "--out", own.toString()).code())
                .isZero();
        // a controller that knows no signal of fire
        Files.writeString(own, Files.readString(own).replaceFirst("(?m)^  fire:\n(    .*\n)+", ""));
        Ran ran = run(
                "hazards", plant.toString(), "--open", "none", "--sequence", "REC=" + own, "--out", folder.toString());
        assertThat(ran.err()).isEmpty();
        String html = Files.readString(folder.resolve("hazards.html"));
        assertThat(html)
                .contains(
                        " of own-sequence.yaml: ",
                        "no signal of fire or explosion stops producers and valve (looked for in own-sequence.yaml)")
                .doesNotContain(" of the default sequence: ", "in the default sequence)");
        Ran unknown = run("hazards", plant.toString(), "--open", "none", "--sequence", "X=" + own);
        assertThat(unknown.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(unknown.err()).contains("no station is called \"X\"", "REC");
        Ran nothing = run("hazards", plant.toString(), "--open", "none", "--sequence", "REC=none.yaml");
        assertThat(nothing.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(nothing.err()).contains("none.yaml").doesNotContain("Exception");
    }

    @Test
    void inlets_without_a_dust_are_told_where_the_plant_handles_combustible_dust(@TempDir Path folder)
            throws IOException {
        Path plant = copy("bakery", folder);
        Files.writeString(plant, Files.readString(plant).replaceAll("dust: (flour|milk), feed: [0-9]+ kg/h, ", ""));
        Ran ran = run("hazards", plant.toString(), "--open", "none", "--out", folder.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(Files.readString(folder.resolve("hazards.html")))
                .contains("which dust comes in there is not stated, and nobody knows whether it burns");
    }

    @Test
    void a_plant_that_picks_up_no_dust_has_nothing_to_study_and_says_so(@TempDir Path folder) throws IOException {
        Path plant = copy("bakery-one-main", folder);
        Files.writeString(
                plant,
                Files.readString(plant)
                        .replaceFirst("(?s)\ndusts:.*?\n# 16 gauge", "\n# 16 gauge")
                        .replaceAll("dust: (flour|milk), feed: [0-9]+ kg/h, ", "")
                        .replaceAll(" picked up: \\[.*?\\],", ""));
        Ran ran = run("hazards", plant.toString(), "--open", "none", "--out", folder.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(ran.err()).contains("names no dust that an inlet picks up, so there is nothing to study");
        assertThat(folder.resolve("hazards.html")).doesNotExist();
    }

    /** What a device was not tested for, what insulates, what a stand-in is not like: each is found where it stands. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "inlet device: {kst: 300 bar.m/s | inlet device: {kst: 90 bar.m/s | Flame can run back through a main from receiver REC | Kst of Wheat flour and starch is greater than what it was tested for",
                "stops: from the receiver | stops: into the receiver | Flame can run back through a main from receiver REC | not one that comes from it",
                "stands at: 5 m | stands at: 9 m | Flame can run back through a main from receiver REC | further from the receiver than its maker allows",
                "valve device: {kst: 300 bar.m/s | valve device: {kst: 90 bar.m/s | An explosion in the receiver reaches bulk bag or drum REC | Kst of Wheat flour and starch is greater",
                "material: conductive, resistance: 5 ohm | material: insulating | Charge stays on the tubing: tube T2 | insulating: it keeps charge",
                "material: conductive, resistance: 10 ohm | material: dissipative, resistance: 1e10 ohm | Charge stays on the tool: tool floor | from its tip to the hose",
                "food contact: yes | food contact: no | Not declared for contact with food: filter REC | is waste, unless the site",
            })
    void what_a_device_or_a_part_is_not_made_for_is_found(
            String good, String bad, String found, String explained, @TempDir Path folder) throws IOException {
        Path plant = copy("bakery-one-main", folder);
        Files.writeString(plant, Edits.with(Files.readString(plant), good, bad));
        assertThat(papers(plant, folder)).contains("does not hold " + found, explained);
    }

    /** Whatever leaves the program takes the caution with it. */
    @Test
    void drawing_steps_model_sequence_and_study_carry_who_decides(@TempDir Path folder) throws IOException {
        Path plant = copy("bakery-one-main", folder);
        StringWriter out = new StringWriter();
        PrintWriter to = new PrintWriter(out);
        Main.run(to, to, "report", plant.toString(), "--out", folder.toString());
        Main.run(to, to, "export", plant.toString(), "--out", folder.toString());
        Main.run(to, to, "hazards", plant.toString(), "--study");
        Main.run(
                to,
                to,
                "sequence",
                plant.toString(),
                "--out",
                folder.resolve("sequence.yaml").toString());
        for (String file : List.of("drawing.svg", "steps.svg", "model.pml", "sequence.yaml", "hazard-study.yaml")) {
            assertThat(Files.readString(folder.resolve(file))).as(file).contains("authority having jurisdiction");
        }
        assertThat(Files.readString(folder.resolve("report.html")))
                .contains("Not tested, values of other samples stand in");
    }

    private static String inLines(String row) {
        return row.replace(", enclosure:", "\n  enclosure:");
    }
}
