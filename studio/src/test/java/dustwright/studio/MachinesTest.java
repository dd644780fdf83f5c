package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dustwright.documents.answers.TextAnswers;
import dustwright.documents.writing.Show;
import dustwright.engine.States;
import dustwright.engine.StationCurves;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.network.State;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/** What the place Machines gets is what the sheets of the plant say, and every line of it opens. */
class MachinesTest extends Served {
    MachinesTest() {
        super("bakery");
    }

    private static JsonNode sheet(JsonNode view, String id) {
        return StreamSupport.stream(view.path("sheets").spliterator(), false)
                .filter(s -> s.path("id").asText().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Test
    void the_sheets_are_those_of_the_command_figure_by_figure() throws Exception {
        JsonNode view = json("api/machines?sets=all&units=us");
        var plant = ((Reading.Read) PlantReader.read(file)).plant();
        Study study = Study.of(plant, States.usual(plant)).withSheets();
        assertThat(view.path("sets").asInt()).isEqualTo(study.states().size());
        assertThat(view.path("sheets")).hasSameSizeAs(study.sheets());
        for (Sheet sheet : study.sheets()) {
            String markup = text(sheet(view, sheet.id()).path("markup").asText());
            for (Entry entry : sheet.entries()) {
                // what the command prints of one figure, in its second line
                String printed = TextAnswers.figure(study, sheet, entry, UnitSystem.US, 10_000)
                        .lines()
                        .toList()
                        .get(1);
                assertThat(markup).as(entry.id()).contains(text(entry.name())).contains(text(printed));
            }
        }
        assertThat(view.path("charts").get(0).path("markup").asText())
                .startsWith("<svg")
                .contains("they meet at");
        assertThat(view.path("weeks").get(0).path("caption").asText()).contains("first week from empty");
    }

    /** Words without markup and spaces, which page and terminal set differently. */
    private static String text(String markup) {
        return markup.replaceAll("<[^>]*>", "")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&")
                .replaceAll("[\\s\\h]", "");
    }

    @Test
    void every_line_of_every_sheet_opens_its_derivation() throws Exception {
        JsonNode view = json("api/machines?sets=one&open=A1&units=si");
        assertThat(view.path("set").asText()).startsWith("A1");
        int opened = 0;
        for (JsonNode sheet : view.path("sheets")) {
            Matcher line = Pattern.compile("data-(figure|finding)=\"([^\"]+)\"")
                    .matcher(sheet.path("markup").asText());
            while (line.find()) {
                String markup = get("api/machines/derivation?sets=one&open=A1&units=si&sheet="
                        + coded(sheet.path("id").asText()) + "&" + line.group(1) + "=" + coded(line.group(2)));
                assertThat(markup).as(line.group(2)).startsWith("<div class=\"derivation");
                opened++;
            }
        }
        assertThat(opened).isGreaterThan(200);
        assertThat(get("api/machines/derivation?sets=one&open=A1&sheet=none&figure=none"))
                .contains("No sheet of this plant has such a figure.");
    }

    @Test
    void a_change_of_the_plant_is_a_change_of_the_figures() throws Exception {
        String before = sheet(json("api/machines?sets=one&open=A1"), "receiver/REC")
                .path("markup")
                .asText();
        long version = json("api/plant").path("version").asLong();
        assertThat(post(
                                "api/value",
                                "{\"version\":" + version
                                        + ",\"path\":\"stations.REC.receiver.diameter\",\"value\":\"30 in\",\"plain\":true}")
                        .statusCode())
                .isEqualTo(200);
        JsonNode after = json("api/machines?sets=one&open=A1");
        assertThat(after.path("version").asLong()).isGreaterThan(version);
        assertThat(sheet(after, "receiver/REC").path("markup").asText()).isNotEqualTo(before);
    }

    @Test
    void what_the_sheets_are_held_against_stands_with_its_sheet() throws Exception {
        JsonNode view = json("api/machines?sets=all");
        List<String> sheets = view.path("sheets").findValuesAsText("id");
        assertThat(view.path("findings")).isNotEmpty();
        view.path("findings")
                .forEach(f -> assertThat(sheets).contains(f.path("sheet").asText()));
    }

    /** What the plan shows of a machine in its sets is not told thinner there than here. */
    @Test
    void the_index_says_the_least_margin_of_what_the_sets_judge_of_a_machine_too() throws Exception {
        var plant = ((Reading.Read) PlantReader.read(file)).plant();
        Study study = Study.of(plant, States.usual(plant)).withSheets();
        Finding speed = study.worstPerPlace().stream()
                .filter(f ->
                        f.code() == FindingCode.PRODUCER_SPEED && f.where().id().equals("P1"))
                .findFirst()
                .orElseThrow();
        JsonNode view = json("api/machines?sets=all&units=us");
        assertThat(sheet(view, "producer/P1").path("margin").asText()).isEqualTo(Show.margin(speed));
        JsonNode row = StreamSupport.stream(view.path("findings").spliterator(), false)
                .filter(f -> f.path("row").path("id").asText().equals(speed.id()))
                .findFirst()
                .orElseThrow();
        assertThat(row.path("sheet").asText()).isEqualTo("producer/P1");
        assertThat(get("api/machines/derivation?sets=all&units=us&sheet=producer/P1&finding=" + coded(speed.id())))
                .startsWith("<div class=\"derivation");
    }

    /** Of each of two stations the sets in which people are on it: six users stand three and three, and one alone is on one of both. */
    @Test
    void each_station_is_shown_in_sets_of_its_own() {
        var plant = ((Reading.Read) PlantReader.read(Path.of("..", "examples", "furniture", "plant.yaml"))).plant();
        List<State> sets = States.usual(plant, List.of(FilterCondition.CLEAN)).stream()
                .filter(set -> set.name().matches("(far-six|W2-4 alone|E1-1 alone), filter clean, no dust"))
                .toList();
        assertThat(sets).hasSize(3);
        List<StationCurves> curves =
                StationCurves.of(plant, Study.of(plant, sets).states());
        assertThat(curves.stream()
                        .map(c -> c.chart().station() + " " + c.users() + " "
                                + c.chart().state()))
                .containsExactlyInAnyOrder(
                        "WEST 3 far-six, filter clean, no dust",
                        "WEST 1 W2-4 alone, filter clean, no dust",
                        "EAST 3 far-six, filter clean, no dust",
                        "EAST 1 E1-1 alone, filter clean, no dust");
        for (int n = 0; n < 4; n += 2) {
            assertThat(curves.get(n).users()).isEqualTo(3);
            assertThat(curves.get(n).chart().operating().flow().cubicMetresPerSecond())
                    .isGreaterThan(
                            1.5 * curves.get(n + 1).chart().operating().flow().cubicMetresPerSecond());
        }
    }

    /** With a header too narrow for three, several sets leave the same unknown behind. */
    @Test
    void what_several_sets_leave_unknown_alike_stands_there_once() throws Exception {
        long version = json("api/plant").path("version").asLong();
        assertThat(post(
                                "api/value",
                                "{\"version\":" + version
                                        + ",\"path\":\"runs.HS4.tube\",\"value\":\"T2\",\"plain\":true}")
                        .statusCode())
                .isEqualTo(200);
        assertThat(StreamSupport.stream(
                                json("api/machines?sets=all").path("findings").spliterator(), false)
                        .map(f -> f.path("sheet").asText()
                                + f.path("row").path("claim").asText()
                                + f.path("row").path("figures").asText())
                        .toList())
                .doesNotHaveDuplicates();
    }
}
