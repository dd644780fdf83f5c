package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The unsized bakery as its user sizes it, with one user so that it is quick. */
class SizeCommandTest {
    private static final Path UNSIZED = Path.of("..", "examples", "bakery-unsized", "plant.yaml");

    private static final Path NEW_BAY = Path.of("..", "examples", "supplement-new-bay", "plant.yaml");

    @TempDir
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
    void sizes_are_chosen_written_and_hold() throws IOException {
        Path sized = folder.resolve("sized.yaml");
        String text = run(ExitCode.HOLDS, "size", UNSIZED.toString(), "--users", "1", "--write", sized.toString());
        assertThat(text.replaceAll("\\s+", " "))
                .contains("on the grounds named below", "Why not one size smaller or larger", "Written: ");
        Reading.Read read = (Reading.Read) PlantReader.read(sized);
        assertThat(read.plant().runs().stream().filter(r -> r.tube().equals("T4")))
                .isEmpty();
        assertThat(Files.readString(sized)).contains("all prices invented");
        assertThat(run(ExitCode.HOLDS, "cover", sized.toString(), "--users", "1"))
                .contains("Every set holds:");
    }

    @Test
    void costs_of_the_choices_add_up_to_what_is_to_be_bought() {
        String text = run(ExitCode.HOLDS, "size", UNSIZED.toString(), "--users", "1", "--format", "text")
                .replaceAll("[\\u00a0\\u202f]", "");
        Matcher toBuy = Pattern.compile("(\\d+)\\s+EUR\\s+to\\s+buy").matcher(text);
        assertThat(toBuy.find()).isTrue();
        String chosen = text.substring(text.indexOf("Chosen"), text.indexOf("Why not one size"));
        int next = chosen.indexOf("Next cheapest");
        long sum = (next < 0 ? chosen : chosen.substring(0, next))
                .lines()
                .flatMap(line -> Pattern.compile("\\s{2,}(\\d+)\\s{2,}")
                        .matcher(line)
                        .results()
                        .map(r -> r.group(1)))
                .mapToLong(Long::parseLong)
                .sum();
        assertThat(sum).isBetween(Long.parseLong(toBuy.group(1)) - 6, Long.parseLong(toBuy.group(1)) + 6);
    }

    @Test
    void what_is_not_open_or_not_possible_is_said() throws IOException {
        assertThat(run(
                        ExitCode.BAD_INPUT,
                        "size",
                        Path.of("..", "examples", "bakery", "plant.yaml").toString()))
                .contains("Nothing is open to choice");
        assertThat(run(ExitCode.BAD_INPUT, "size", UNSIZED.toString(), "--gap", "120"))
                .contains("--gap");
        assertThat(run(ExitCode.BAD_INPUT, "size", UNSIZED.toString(), "--users", "0"))
                .contains("1 to 24");
        Path only = folder.resolve("only.yaml");
        Files.writeString(
                only,
                Files.readString(UNSIZED)
                        .replace(
                                "{T2: 38 EUR/m, T25: 44 EUR/m, T3: 52 EUR/m, T35: 61 EUR/m, T4: 70 EUR/m}",
                                "{T4: 70 EUR/m}"));
        assertThat(run(ExitCode.DOES_NOT_HOLD, "size", only.toString(), "--users", "1"))
                .contains("No choice of these sizes holds", "What stands against every choice");
    }

    @Test
    void an_answer_in_json_is_taken_up_again_and_the_pages_and_the_curve_say_the_same_cost() throws IOException {
        Path pages = folder.resolve("pages");
        String first = run(
                ExitCode.HOLDS, "size", UNSIZED.toString(), "--users", "1", "--curve", "--report", pages.toString());
        assertThat(first).contains("Cost by number of users at once", "cheapest");
        Path json = pages.resolve("size.json");
        assertThat(Files.readString(json)).contains("dustwright/size/2", "\"curve\"", "\"learnt\"");
        assertThat(Files.readString(pages.resolve("size.html")))
                .contains("Certificate: every set asked", "Why not one size smaller or larger");
        assertThat(Files.size(pages.resolve("size.pdf"))).isPositive();
        String again = run(ExitCode.HOLDS, "size", UNSIZED.toString(), "--users", "1", "--resume", json.toString());
        String cost = first.lines()
                .filter(l -> l.startsWith("Cheapest sizes found"))
                .findFirst()
                .orElseThrow();
        assertThat(again).contains(cost);
        Path other = folder.resolve("other.json");
        Files.writeString(other, "{\"format\": \"something\"}");
        assertThat(run(ExitCode.BAD_INPUT, "size", UNSIZED.toString(), "--resume", other.toString()))
                .contains("it is not an answer of the command size");
    }

    @Test
    void a_search_that_is_stopped_says_that_it_is_partial_and_is_taken_up_again() throws IOException {
        String words = run(ExitCode.DOES_NOT_HOLD, "size", UNSIZED.toString(), "--minutes", "0.00001");
        assertThat(words).contains("Partial: the search was stopped");
        String json =
                run(ExitCode.DOES_NOT_HOLD, "size", UNSIZED.toString(), "--minutes", "0.00001", "--format", "json");
        assertThat(json).contains("\"partial\" : true");
        Path begun = Files.writeString(folder.resolve("begun.json"), json);
        String whole = run(
                ExitCode.HOLDS,
                "size",
                UNSIZED.toString(),
                "--users",
                "1",
                "--resume",
                begun.toString(),
                "--format",
                "json");
        assertThat(whole).contains("\"partial\" : false");
    }

    @Test
    void six_more_inlets_will_the_pump_do_it_and_what_is_changed_first() {
        String answer = run(ExitCode.DOES_NOT_HOLD, "size", NEW_BAY.toString(), "--one-change")
                .replaceAll("[\\s\\u00a0\\u202f]+", " ");
        assertThat(answer)
                .contains("Not every requirement of a state holds as it stands: 12 places fail in some set.")
                .contains(
                        "Each of these cures it by itself, shown for every set: REC P2, 11200 EUR; speed or held vacuum of the"
                                + " producers +10 %, no price stated; REC P3, 12900 EUR.")
                .contains("south-line T25 4 094 1 or more")
                .doesNotContain("REC P1");
    }

    @Test
    void where_nothing_holds_the_remedies_are_sized_anew_each_with_what_comes_of_it() throws IOException {
        Path only = folder.resolve("only.yaml");
        Files.writeString(
                only,
                Files.readString(UNSIZED)
                        .replace(
                                "{T2: 38 EUR/m, T25: 44 EUR/m, T3: 52 EUR/m, T35: 61 EUR/m, T4: 70 EUR/m}",
                                "{T4: 70 EUR/m}"));
        Path pages = folder.resolve("pages");
        String answer = run(
                        ExitCode.DOES_NOT_HOLD,
                        "size",
                        only.toString(),
                        "--users",
                        "1",
                        "--remedies",
                        "--report",
                        pages.toString())
                .replaceAll("\\s+", " ");
        assertThat(answer)
                .contains(
                        "What would let some sizes hold",
                        "discharge coefficient 0.6 assumed",
                        "the nearest found misses by");
        assertThat(Files.readString(pages.resolve("size.html")))
                .contains("What stands against every choice", "whatever is chosen", "Would be")
                .contains("What would let some sizes hold", "The price of the remedy itself is not in the cost")
                .contains("no run gets another tube")
                .doesNotContain("States that exclude each other");
        assertThat(Files.readString(pages.resolve("size.json"))).contains("a bleed always open at");
    }

    @Test
    void one_change_of_a_plant_that_does_not_hold_is_ranked_with_the_plant_as_it_stands_first() {
        String json = run(
                ExitCode.DOES_NOT_HOLD, "size", UNSIZED.toString(), "--users", "1", "--one-change", "--format", "json");
        assertThat(json).contains("dustwright/changes/1", "as it stands", "south-drops T2", "speed or held vacuum");
        assertThat(run(ExitCode.BAD_INPUT, "size", UNSIZED.toString(), "--one-change", "--curve"))
                .contains("answers by itself");
    }
}
