package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.rehearsal.Played;
import dustwright.engine.rehearsal.Rehearsal;
import dustwright.engine.rehearsal.StationModel;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import dustwright.plantfile.RehearsalReader;
import dustwright.plantfile.RehearsalReading;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the panel page asks of the studio. */
class PanelTest extends Served {
    PanelTest() {
        super("bakery");
    }

    private JsonNode go(String id, String rest) throws IOException, InterruptedException {
        HttpResponse<String> answer = post("api/panel/go", "{\"id\":\"" + id + "\"," + rest + "}");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return JSON.readTree(answer.body());
    }

    private String begin(String body) throws IOException, InterruptedException {
        return JSON.readTree(post("api/panel/begin", body).body()).path("id").asText();
    }

    @Test
    void what_was_done_by_hand_goes_the_same_way_as_a_script() throws Exception {
        String id = begin("{\"soonFull\":true}");
        go(id, "\"acts\":[{\"users\":true},{\"press\":\"start\"}],\"by_ms\":200000");
        go(id, "\"acts\":[{\"breaks\":\"hopper bridged\"}],\"by_ms\":61234");
        go(id, "\"acts\":[{\"breaks\":\"power lost\"}],\"by_ms\":5000");
        go(
                id,
                "\"acts\":[{\"mended\":\"power lost\"},{\"mended\":\"hopper bridged\"},{\"press\":\"reset\"}],\"by_ms\":90000");
        JsonNode end = go(id, "\"acts\":[{\"press\":\"start\"}],\"by_ms\":900077,\"known\":0");
        List<String> byHand = new ArrayList<>();
        end.path("told")
                .forEach(t ->
                        byHand.add(t.path("at").asText() + " " + t.path("words").asText()));

        RehearsalReading script = RehearsalReader.read(get("api/panel/script?id=" + id));
        assertThat(script).isInstanceOf(RehearsalReading.Read.class);
        Plant plant = ((Reading.Read) PlantReader.read(file)).plant();
        Station station = plant.stations().get(0);
        Played played = Rehearsal.play(
                DefaultSequence.of("x", Options.of(station, Set.of())),
                StationModel.of(plant, station).match(m -> m, why -> {
                    throw new AssertionError(why);
                }),
                ((RehearsalReading.Read) script).script());
        assertThat(played.moments().stream()
                        .map(m -> dustwright.documents.control.Clock.of(played, m.at_ms()) + " "
                                + m.words().replace("container", "bag"))
                        .toList())
                .startsWith(byHand.toArray(String[]::new));
        assertThat(byHand).anyMatch(w -> w.contains("the power fails")).hasSizeGreaterThan(20);
    }

    @Test
    void a_thousandfold_day_is_no_more_than_one_answer() throws Exception {
        String id = begin("{}");
        JsonNode now = go(id, "\"acts\":[{\"users\":true},{\"press\":\"start\"}],\"by_ms\":86400000");
        assertThat(now.path("at_ms").asLong()).isBetween(86_400_000L, 86_400_010L);
        assertThat(get("api/panel/chart?id=" + id)).startsWith("<svg");
    }

    @Test
    void what_is_not_there_is_refused_in_words() throws Exception {
        assertThat(post("api/panel/begin", "{\"drill\":\"nonsense\"}").body()).contains("No drill is called");
        assertThat(post("api/panel/begin", "{\"station\":\"<b>\"}").body()).contains("No station is called");
        String id = begin("{}");
        assertThat(post("api/panel/go", "{\"id\":\"" + id + "\",\"acts\":[{\"press\":\"self destruct\"}]}")
                        .body())
                .contains("has no button");
        assertThat(post("api/panel/go", "{\"id\":\"" + id + "\",\"acts\":[{\"breaks\":\"x\"}]}")
                        .body())
                .contains("Nothing that may break");
        HttpResponse<String> gone = post("api/panel/go", "{\"id\":\"p999\"}");
        assertThat(gone.statusCode()).isEqualTo(422);
        assertThat(gone.body()).contains("Begin another");
    }

    @Test
    void of_many_rehearsals_the_one_not_asked_for_longest_is_let_go() throws Exception {
        String first = begin("{}");
        String second = begin("{}");
        for (int n = 0; n < 10; n++) {
            go(first, "\"by_ms\":100");
            begin("{}");
        }
        go(first, "\"by_ms\":100");
        begin("{}");
        assertThat(post("api/panel/go", "{\"id\":\"" + second + "\"}").statusCode())
                .isEqualTo(422);
        go(first, "\"by_ms\":100");
    }
}
