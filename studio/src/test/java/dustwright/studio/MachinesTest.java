package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dustwright.documents.answers.TextAnswers;
import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
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
}
