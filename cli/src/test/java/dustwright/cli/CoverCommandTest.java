package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command cover on an example: exit code, words, and a run taken up again. */
class CoverCommandTest {
    private static final String PLANT = "../examples/bakery/plant.yaml";

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    private static String run(int code, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        assertThat(Main.run(new PrintWriter(out), new PrintWriter(err), args))
                .as(err.toString())
                .isEqualTo(code);
        return out + err.toString();
    }

    @Test
    void the_bakery_holds_for_every_single_user_but_not_for_every_pair() {
        assertThat(run(ExitCode.HOLDS, "cover", PLANT, "--users", "1", "--filter", "dirty"))
                .contains("Every set holds: whichever of the inlets are open")
                .contains("Carries 1 user");
        assertThat(run(ExitCode.DOES_NOT_HOLD, "cover", PLANT, "--users", "2", "--filter", "dirty"))
                .contains("Does not hold for every set")
                .contains("D4+E4");
    }

    /** With hoses of two bores many pairs are nearly as bad as the worst: where sets are few each is solved, whatever is asked beside. */
    @Test
    void of_pairs_that_are_nearly_alike_the_worst_is_named() throws IOException {
        String plant = "src/test/resources/plants/one-main-mixed.yaml";
        JsonNode answers = new ObjectMapper()
                .readTree(run(ExitCode.DOES_NOT_HOLD, "cover", plant, "--filter", "clean", "--format", "json"))
                .path("answers");
        JsonNode worst = StreamSupport.stream(answers.spliterator(), false)
                .filter(a -> a.path("users").asInt() == 2
                        && a.path("condition").asText().equals("filter clean"))
                .flatMap(a -> StreamSupport.stream(a.path("worst").spliterator(), false))
                .filter(f -> f.path("id").asText().startsWith("WEAR_VELOCITY/RB1/"))
                .findFirst()
                .orElseThrow();
        assertThat(worst.path("open").toString()).isEqualTo("[\"B1\",\"E4\"]");
        assertThat(worst.path("bound").asDouble())
                .isEqualTo(worst.path("margin").asDouble());
    }

    @Test
    void an_answer_can_be_taken_up_again_but_not_for_another_plant() throws IOException {
        String json = run(ExitCode.HOLDS, "cover", PLANT, "--users", "1", "--filter", "dirty", "--format", "json");
        Path file = Files.writeString(folder.resolve("cover.json"), json);
        assertThat(run(
                        ExitCode.HOLDS,
                        "cover",
                        PLANT,
                        "--users",
                        "1",
                        "--filter",
                        "dirty",
                        "--resume",
                        file.toString()))
                .contains("Every set holds: whichever of the inlets are open");
        assertThat(run(
                        ExitCode.BAD_INPUT,
                        "cover",
                        "../examples/supplement/plant.yaml",
                        "--users",
                        "1",
                        "--resume",
                        file.toString()))
                .contains("it is about another plant");
        Path empty = Files.writeString(folder.resolve("empty.json"), "");
        assertThat(run(ExitCode.BAD_INPUT, "cover", PLANT, "--users", "1", "--resume", empty.toString()))
                .contains("it is not an answer of the command cover");
        Path changed = Files.writeString(
                folder.resolve("plant.yaml"), Files.readString(Path.of(PLANT)).replace("2155 rpm", "2100 rpm"));
        assertThat(run(ExitCode.BAD_INPUT, "cover", changed.toString(), "--users", "1", "--resume", file.toString()))
                .contains("the plant file has changed since");
        assertThat(run(ExitCode.BAD_INPUT, "cover", PLANT, "--zones", "off", "--resume", file.toString()))
                .contains("other limits of zones");
    }

    @Test
    void what_the_sheets_leave_open_is_listed_and_cover_sheet_and_verify_end_alike() throws IOException {
        String text = Files.readString(Path.of(PLANT));
        String loose = text.replace("neck seal: {pressure: 4 psi", "neck seal: {pressure: 0.5 psi");
        assertThat(loose).isNotEqualTo(text);
        String file = Files.writeString(folder.resolve("loose.yaml"), loose).toString();
        assertThat(run(ExitCode.DOES_NOT_HOLD, "cover", file, "--users", "1", "--filter", "dirty")
                        .replaceAll("\\s+", " "))
                .contains("Every set holds: whichever of the inlets are open, every requirement of their states holds.")
                .contains("The plant does not hold: 1 requirement fails in the sheets of the equipment")
                .contains("In the sheets: what does not hold or is not known");
        assertThat(run(ExitCode.DOES_NOT_HOLD, "cover", file, "--users", "1", "--filter", "dirty", "--format", "json")
                        .replaceAll("\\s+", ""))
                .contains("\"holds\":false,\"setsHold\":true,\"openInSheets\":[{\"id\":\"NECK_SEAL_LOOSE");
        run(ExitCode.DOES_NOT_HOLD, "verify", file);
        run(ExitCode.DOES_NOT_HOLD, "sheet", file);
        assertThat(run(ExitCode.HOLDS, "sheet", file, "producer").replaceAll("\\s+", " "))
                .contains("Besides what is printed here, 1 requirement does not hold or cannot be judged")
                .contains("States were solved for this sheet and not judged");
        assertThat(run(ExitCode.HOLDS, "sheet", file, "sound").replaceAll("\\s+", " "))
                .contains("Only what this sheet needs was computed")
                .doesNotContain("Besides what is printed here");
        assertThat(run(ExitCode.HOLDS, "sheet", PLANT))
                .doesNotContain("Besides what is printed here", "not judged: whether they hold");
    }

    /** A sheet says nothing of the tools: where they starve, all sheets together end as verify does. */
    @Test
    void sheets_that_hold_beside_states_that_do_not_end_as_verify_does() throws IOException {
        String text = Files.readString(Path.of(PLANT));
        String much = text.replace("tool flow: 90 scfm", "tool flow: 120 scfm");
        assertThat(much).isNotEqualTo(text);
        String file = Files.writeString(folder.resolve("much.yaml"), much).toString();
        run(ExitCode.DOES_NOT_HOLD, "verify", file);
        assertThat(run(ExitCode.DOES_NOT_HOLD, "sheet", file)).contains("verify lists them");
    }

    /** Bounds do not look at lumps: where one may stop, they show nothing, whichever inlets their worst sets open. */
    @Test
    void a_lump_wider_than_some_bore_is_never_covered_by_bounds() throws IOException {
        String text = Files.readString(Path.of(PLANT));
        String lumpy = text.replace("largest lump: 30 mm", "largest lump: 40 mm");
        assertThat(lumpy).isNotEqualTo(text);
        Path file = Files.writeString(folder.resolve("plant.yaml"), lumpy);
        assertThat(run(ExitCode.DOES_NOT_HOLD, "cover", file.toString(), "--users", "1", "--filter", "dirty"))
                .doesNotContain("Every set holds: whichever of the inlets are open");
    }

    @Test
    void a_report_has_the_matrix_the_drawing_and_the_way_by_hand_and_larger_machines_carry_no_fewer_than_none()
            throws IOException {
        String said = run(
                ExitCode.HOLDS,
                "cover",
                PLANT,
                "--users",
                "1",
                "--filter",
                "dirty",
                "--carry",
                "1",
                "--sizes",
                "--report",
                folder.toString());
        assertThat(said).contains("DL-3 ").contains("DL-15 ").contains("What stops the next user");
        assertThat(Files.readString(folder.resolve("coverage.html")))
                .contains("Matrix by inlet")
                .contains("The worst state")
                .contains("Why this set is the worst, by hand")
                .contains("Users carried by machine");
        assertThat(folder.resolve("coverage.pdf")).isNotEmptyFile();
    }

    @Test
    void counting_solves_every_set() {
        assertThat(run(ExitCode.DOES_NOT_HOLD, "cover", PLANT, "--users", "2", "--filter", "dirty", "--count"))
                .contains("every set")
                .containsPattern("every set +270 +0 +8");
    }

    @Test
    void nonsense_is_refused_in_words() {
        assertThat(run(ExitCode.BAD_INPUT, "cover", PLANT, "--users", "0"))
                .contains("there are 1 to 24 inlets to open");
        assertThat(run(ExitCode.BAD_INPUT, "cover", PLANT, "--users", "few"))
                .contains("say a number, a range or a list");
        assertThat(run(ExitCode.BAD_INPUT, "cover", PLANT, "--zones", "maybe")).contains("say on or off");
        assertThat(run(ExitCode.BAD_INPUT, "cover", PLANT, "--sizes")).contains("say up to how many with --carry N");
        assertThat(run(ExitCode.BAD_INPUT, "cover", PLANT, "--most-sets", "-1")).contains("1 or more");
        assertThat(run(ExitCode.BAD_INPUT, "cover", PLANT, "--most-sets", "0")).contains("1 or more");
        assertThat(run(ExitCode.BAD_INPUT, "cover", PLANT, "--most-sets", "many"))
                .contains("--most-sets", "many");
    }

    @Test
    void a_run_stopped_at_once_is_partial_and_carries_no_zero() {
        String words =
                run(ExitCode.DOES_NOT_HOLD, "cover", PLANT, "--carry", "2", "--remedies", "--time-limit", "0.001");
        assertThat(words).contains("Partial: the work was stopped").doesNotContain("Carries 0");
        assertThat(words.lines().filter(l -> l.contains("whole plant") && l.contains("not done")))
                .isNotEmpty();
        assertThat(run(
                        ExitCode.DOES_NOT_HOLD,
                        "cover",
                        PLANT,
                        "--carry",
                        "2",
                        "--time-limit",
                        "0.001",
                        "--format",
                        "json"))
                .contains("\"partial\" : true");
    }
}
