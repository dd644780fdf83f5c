package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.plantfile.Drills;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drills on example plants: every one does what it must; what does not fit is told in words. */
class RehearseCommandTest {
    private static final Path BAKERY = Path.of("../examples/bakery/plant.yaml");
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(Object... args) {
        String[] words = java.util.Arrays.stream(args).map(String::valueOf).toArray(String[]::new);
        return Main.run(new PrintWriter(out), new PrintWriter(err), words);
    }

    @ParameterizedTest
    @CsvSource({"bakery", "plastics", "cement-packing"})
    void every_drill_does_what_it_must(String example) {
        for (String drill : Drills.names()) {
            assertThat(run("rehearse", "../examples/" + example + "/plant.yaml", "--drill", drill))
                    .as("%s %s%n%s%s", example, drill, out, err)
                    .isEqualTo(ExitCode.HOLDS);
        }
        assertThat(out.toString())
                .contains("BAG HIGH LEVEL: CHANGE BAG")
                .contains("ROTARY VALVE NOT TURNING")
                .contains(
                        "Dust: ", " lay there at the beginning and ", " were taken away in containers, and the rest, ")
                .doesNotContain("NOT MET");
    }

    /** Whoever adds the printed figures up finds them right, in both systems of units. */
    @Test
    void the_printed_dust_adds_up() {
        for (String units : List.of("us", "si")) {
            run("rehearse", BAKERY, "--drill", "bag-fills-at-night", "--units", units);
        }
        List<Double> figures = Pattern.compile("([0-9.]+) (lb|kg)\\b")
                .matcher(String.join(
                        " ",
                        out.toString()
                                .lines()
                                .filter(l -> l.startsWith("Dust: "))
                                .toList()))
                .results()
                .map(m -> Double.valueOf(m.group(1)))
                .toList();
        assertThat(figures).hasSize(10);
        for (int n = 0; n < 10; n += 5) {
            assertThat(figures.get(n) + figures.get(n + 1)).isCloseTo(figures.get(n + 2), within(1e-9));
            assertThat(figures.get(n + 3) + figures.get(n + 4)).isCloseTo(figures.get(n + 2), within(1e-9));
        }
    }

    /** What the drill says is seen is seen, and what it says should be done is done in it. */
    @Test
    void wet_flour_does_not_come_clean_and_blocks_the_receiver_until_it_is_mended() {
        assertThat(run("rehearse", BAKERY, "--drill", "wet-flour")).isEqualTo(ExitCode.HOLDS);
        String[] halves = out.toString().split("mended: wet dust");
        assertThat(halves).hasSize(2);
        assertThat(halves[0])
                .contains(
                        "FILTER DOES NOT COME CLEAN — ",
                        "RECEIVER HIGH LEVEL lit",
                        "RECEIVER BLOCKED — ",
                        "users hang up")
                .doesNotContain("FILTER DOES NOT COME CLEAN: gone");
        assertThat(halves[1]).contains("FILTER DOES NOT COME CLEAN: gone", "users have suction", "step standing");
    }

    @Test
    void a_drum_under_vacuum_has_its_own_sequence_and_is_rehearsed_with_it() {
        assertThat(run("rehearse", "../examples/supplement/plant.yaml", "--drill", "bag-fills-at-night"))
                .as("%s%s", out, err)
                .isEqualTo(ExitCode.HOLDS);
        assertThat(out.toString())
                .contains("DRUM HIGH LEVEL: CHANGE DRUM", "lid clamp of the drum: may be opened")
                .doesNotContain("ROTARY VALVE");
        assertThat(run("rehearse", "../examples/supplement/plant.yaml", "--drill", "valve-chain-breaks"))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("rotor_stands");
    }

    @Test
    void the_page_the_paper_the_drawing_and_the_json_are_written(@TempDir Path folder) throws IOException {
        assertThat(run("rehearse", BAKERY, "--drill", "bag-fills-at-night", "--out", folder, "--format", "json"))
                .isEqualTo(ExitCode.HOLDS);
        assertThat(Files.readString(folder.resolve("rehearsal.json"))).isEqualTo(out.toString());
        assertThat(Files.readString(folder.resolve("rehearsal.svg"))).contains("dust in container".substring(5));
        assertThat(Files.readString(folder.resolve("rehearsal.html")))
                .contains("the container is full")
                .contains("What the operator should do")
                .doesNotContainPattern("\\bsafe\\b");
        try (var pdf = Loader.loadPDF(folder.resolve("rehearsal.pdf").toFile())) {
            PDFTextStripper first = new PDFTextStripper();
            first.setEndPage(1);
            assertThat(first.getText(pdf))
                    .contains("What must be so", "met:", "Dust that came and went", "Taken as common practice");
        }
    }

    @Test
    void a_drill_can_be_printed_edited_and_played(@TempDir Path folder) throws IOException {
        assertThat(run("rehearse", BAKERY, "--drill", "bridged-hopper", "--print-script"))
                .isEqualTo(ExitCode.HOLDS);
        Path mine = folder.resolve("mine.yaml");
        Files.writeString(mine, out.toString().replace("{sometime: blocked}", "{never: blocked}"));
        assertThat(run("rehearse", BAKERY, "--script", mine)).isEqualTo(ExitCode.DOES_NOT_HOLD);
        assertThat(out.toString()).contains("NOT MET: never blocked");
    }

    /** The bakery's pump warms its air by 36 K (65 degF) and more: a plant file that allows 40 K has users wait, one that allows 130 K has not. */
    @Test
    void discharge_air_is_judged_by_the_greatest_rise_of_the_plant_file(@TempDir Path folder) throws IOException {
        String bakery = Files.readString(BAKERY);
        assertThat(run("rehearse", BAKERY, "--drill", "bag-fills-at-night")).isEqualTo(ExitCode.HOLDS);
        assertThat(out.toString()).doesNotContain("DISCHARGE AIR");
        Path mine = folder.resolve("plant.yaml");
        Files.writeString(
                mine, Edits.with(bakery, "start: direct, silencer", "start: direct, greatest rise: 40 K, silencer"));
        run("rehearse", mine, "--drill", "bag-fills-at-night");
        assertThat(out.toString()).contains("WAIT: DISCHARGE AIR WARM");
        Files.writeString(
                mine, Edits.with(bakery, "start: direct, silencer", "start: direct, greatest rise: 15 K, silencer"));
        assertThat(run("rehearse", mine, "--drill", "bag-fills-at-night")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("\"greatest rise\" of more than 15 K of producer P1");
    }

    @Test
    void what_does_not_fit_is_told(@TempDir Path folder) throws IOException {
        Path mine = folder.resolve("mine.yaml");
        Files.writeString(mine, Drills.text("wet-flour").replace("in_pulsing", "in_plusing"));
        assertThat(run("rehearse", BAKERY, "--script", mine)).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("in_plusing");
        assertThat(run("rehearse", BAKERY, "--drill", "tea-break")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("bag-fills-at-night");
        assertThat(run("rehearse", "../examples/furniture/plant.yaml", "--station", "SW", "--drill", "wet-flour"))
                .isEqualTo(ExitCode.BAD_INPUT);
    }
}
