package dustwright.cli;

import static dustwright.cli.Edits.with;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.plant.Plant;
import dustwright.engine.sheet.Answer;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What would hold only by a limit nobody vouches for, or by a figure of no measured point, is not known. */
class NotVouchedForTest {
    private static String bakery = "";

    @BeforeAll
    static void read() throws IOException {
        bakery = Files.readString(Path.of("..", "examples", "bakery", "plant.yaml"));
    }

    private static Study study(String text) {
        Reading reading = PlantReader.read(text);
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Read.class);
        Plant plant = ((Reading.Read) reading).plant();
        return Study.of(plant, States.usual(plant)).withSheets();
    }

    private static List<Finding> findings(String text, FindingCode code) {
        return study(text).findings().filter(f -> f.code() == code).toList();
    }

    private static Answer answer(String text, String figure) {
        return study(text).sheets().stream()
                .flatMap(sheet -> sheet.entries().stream())
                .filter(entry -> entry.id().equals(figure))
                .findFirst()
                .orElseThrow()
                .answer();
    }

    /** 14 ft/min where factor method and table give less: a limit of 20 ft/min passes it only with the name of who confirms it. */
    @Test
    void a_filter_above_all_published_sizing_holds_only_by_a_limit_somebody_is_named_for() {
        String little = with(bakery, "cloth: 95 ft2", "cloth: 22 ft2");
        String own = with(little, "  air to cloth: 5 ft/min", "  air to cloth: 40 ft/min");
        assertThat(findings(own, FindingCode.AIR_TO_CLOTH)).anyMatch(Finding::unjudged);
        String named = with(
                little,
                "  air to cloth: 5 ft/min",
                "  air to cloth: {value: 40 ft/min, source: the maker in a letter}");
        assertThat(findings(named, FindingCode.AIR_TO_CLOTH)).isNotEmpty().allMatch(Finding::holds);
    }

    /** A multistage machine and a relief valve that opens deeper than its curve reaches: how deep it draws then nobody measured. */
    @Test
    void a_shell_does_not_hold_by_a_vacuum_beyond_the_measured_points() {
        assertThat(findings(bakery, FindingCode.SHELL_VACUUM)).allMatch(Finding::holds);
        String curve = bakery.replaceFirst(
                "P1: \\{model: DL-15, speed: 2155 rpm,[^}]*\\}, service factor: 1.15, nameplate current: 18 A,\\s+start: direct,[^}]*\\}\\}",
                "P1: {model: DM-15, start: direct}");
        String deep = with(
                curve,
                "relief valve: {set: 8.5 inHg, full: 11 inHg, rated: 350 scfm, stated for: site air}",
                "relief valve: {set: 12 inHg, full: 13 inHg, rated: 900 scfm}");
        assertThat(deep).contains("DM-15");
        assertThat(findings(deep, FindingCode.SHELL_VACUUM)).anyMatch(Finding::unjudged);
        assertThat(answer(deep, "stuck/REC"))
                .isInstanceOfSatisfying(
                        Answer.Unknown.class, u -> assertThat(u.why()).contains("runs beyond the points"));
    }
}
