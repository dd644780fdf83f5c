package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.review.Deviation;
import dustwright.engine.review.HazardStudy;
import dustwright.engine.review.HazardStudy.Origin;
import dustwright.engine.review.Notes;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A hazard study beside its plant: written, read, judged by the team's own matrix, and written anew without losing a letter. */
class HazardStudyReaderTest {
    private static final List<Deviation> LINES = List.of(line("REC receiver ignition"), line("REC filter torn"));
    private static final String FRESH = HazardStudyText.fresh("A plant", LINES);

    private static Deviation line(String id) {
        return new Deviation(id, "Node", "Other than meant", "why", "what then", List.of("a guard"), List.of("a gap"));
    }

    private static Notes notes(String text) {
        HazardStudyReading reading = HazardStudyReader.read(text);
        assertThat(reading).as(reading.toString()).isInstanceOf(HazardStudyReading.Read.class);
        return ((HazardStudyReading.Read) reading).notes();
    }

    @Test
    void a_new_study_is_read_has_every_line_and_judges_nothing() {
        HazardStudy study = HazardStudy.of(LINES, notes(FRESH));
        assertThat(study.rows())
                .extracting(r -> r.line().id())
                .containsExactly("REC receiver ignition", "REC filter torn");
        assertThat(study.notJudged()).isEqualTo(2);
        assertThat(study.rows()).allMatch(r -> r.origin() == Origin.PLANT);
        assertThat(FRESH).contains("#: Node: Other than meant", "has: a guard", "lacks: a gap", "no source");
    }

    private static final String EDITED =
            FRESH.replace("team: []", "team: [A. Process, B. Maintenance]   # first sitting")
                            .replace(
                                    "  REC filter torn: {}",
                                    "  # seen in the yard\n  REC filter torn:\n    severity: nuisance     # dust only\n    likelihood: every year\n"
                                            + "    action: Fit a watch\n    who: Maintenance\n    consequence: |\n      two lines\n      of it")
                    + "  our own row:\n    node: Roof\n    deviation: Snow on the vent panel\n    severity: one person hurt\n"
                    + "    likelihood: every year\n";

    @Test
    void what_a_team_writes_goes_before_the_words_of_the_plant_and_is_judged_by_its_matrix() {
        HazardStudy study = HazardStudy.of(LINES, notes(EDITED));
        assertThat(study.rows())
                .extracting(HazardStudy.Row::origin)
                .containsExactly(Origin.PLANT, Origin.REWORDED, Origin.TEAM);
        HazardStudy.Row torn = study.rows().get(1);
        assertThat(torn.risk()).contains("medium");
        assertThat(torn.line().consequence()).startsWith("two lines");
        assertThat(torn.line().cause()).isEqualTo("why");
        HazardStudy.Row own = study.rows().get(2);
        assertThat(own.line().node()).isEqualTo("Roof");
        assertThat(own.risk()).contains("high");
        assertThat(study.notJudged()).isEqualTo(1);
        assertThat(study.withoutAction()).isEqualTo(1);
    }

    /** A gap the program found is not gone because the team lists none. */
    @Test
    void what_the_program_finds_missing_stays_beside_what_the_team_writes() {
        HazardStudy study = HazardStudy.of(
                LINES, notes(FRESH.replace("  REC filter torn: {}", "  REC filter torn: {missing: []}")));
        assertThat(study.rows().get(1).line().missing()).isEmpty();
        assertThat(study.rows().get(1).found()).containsExactly("a gap");
    }

    @Test
    void writing_a_study_anew_changes_no_letter_of_the_team_and_nothing_the_second_time() {
        List<Deviation> other = List.of(line("REC valve stands"), line("REC filter torn"));
        String updated = HazardStudyText.updated(EDITED, other);
        assertThat(teams(updated)).containsAll(teams(EDITED));
        assertThat(updated)
                .contains("  REC valve stands: {}")
                .contains("no longer gives rise to this row", "  # seen in the yard\n  REC filter torn:");
        assertThat(HazardStudyText.updated(updated, other)).isEqualTo(updated);
        assertThat(notes(updated).byId().get("our own row"))
                .isEqualTo(notes(EDITED).byId().get("our own row"));
        assertThat(HazardStudy.of(other, notes(updated)).rows().get(3).origin()).isEqualTo(Origin.TEAM);
        assertThat(HazardStudy.of(other, notes(updated)).rows().get(2).origin()).isEqualTo(Origin.GONE);
    }

    /** Judged by its name alone it would stand among the rows of a plant that has lost a part. */
    @Test
    void a_row_of_nobody_is_kept_and_says_that_no_part_is_named() {
        HazardStudy study = HazardStudy.of(LINES, notes(FRESH + "  roof: {deviation: a leak}\n"));
        HazardStudy.Row own = study.rows().get(study.rows().size() - 1);
        assertThat(own.origin()).isEqualTo(Origin.TEAM);
        assertThat(own.line().node()).isEqualTo(HazardStudy.NO_NODE);
    }

    private static List<String> teams(String text) {
        return text.lines().filter(l -> !l.strip().startsWith("#:")).toList();
    }

    /** Plants that grow and shrink at random, rewritten after each change: what was written to a row is there at the end. */
    @Test
    void no_edit_is_lost_however_often_the_plant_changes() {
        SplittableRandom random = new SplittableRandom(42);
        String text = EDITED;
        for (int n = 0; n < 200; n++) {
            List<Deviation> lines = IntStream.range(0, 12)
                    .filter(i -> random.nextBoolean())
                    .mapToObj(i -> line(i == 0 ? "REC filter torn" : "REC part " + i))
                    .toList();
            text = HazardStudyText.updated(text, lines);
            assertThat(notes(text).byId())
                    .containsKey("our own row")
                    .hasEntrySatisfying(
                            "REC filter torn", note -> assertThat(note.action()).contains("Fit a watch"));
            assertThat(text).containsOnlyOnce("# seen in the yard").containsOnlyOnce("# dust only");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "severity: nuisance | severity: dire | is no severity of the matrix",
                "likelihood: every year | likelihood: often | is no likelihood of the matrix",
                "severity: nuisance     # dust only | note: dust only | severity and likelihood belong together",
                "accepted: [low] | accepted: [tiny] | is no risk of the matrix",
                "\"nuisance\": [low, low, low, medium] | \"nuisance\": [low, low] | one risk for each likelihood",
                "likelihood: [ | likelihood: [every year, | \"every year\" stands twice",
                "hazard study: 1 | hazard study: 2 | does not fit",
                "who: Maintenance | whom: Maintenance | unknown key"
            })
    void a_spoilt_study_names_the_line_and_what_is_wrong(String good, String spoilt, String why) {
        String text = EDITED.replace("    nuisance:", "    \"nuisance\":");
        assertThat(text).contains(good);
        HazardStudyReading reading = HazardStudyReader.read(text.replace(good, spoilt));
        assertThat(reading).isInstanceOf(HazardStudyReading.Faults.class);
        assertThat(((HazardStudyReading.Faults) reading).faults())
                .anySatisfy(f -> assertThat(f.text()).contains(why, "line "));
    }
}
