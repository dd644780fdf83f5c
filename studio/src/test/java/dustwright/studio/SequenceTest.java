package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.plant.Plant;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import dustwright.plantfile.SequenceText;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A sequence that somebody edits in the studio: what is taken, what goes by it, what is refused. */
class SequenceTest extends Served {
    SequenceTest() {
        super("bakery");
    }

    private HttpResponse<String> take(int number, String text) throws Exception {
        ObjectNode body = JSON.createObjectNode();
        body.put("station", "REC").put("number", number).put("text", text);
        return post("api/sequence", body.toString());
    }

    private String plain() throws Exception {
        return json("api/sequence").path("text").asText();
    }

    /** The lamp of the bag's level gets other words, which every page and paper must show. */
    private String reworded() throws Exception {
        String plain = plain();
        String edited = plain.replace("BAG HIGH LEVEL", "BAG IS FULL NOW");
        assertThat(edited).isNotEqualTo(plain);
        return edited;
    }

    @Test
    void a_plant_begins_with_the_sequence_its_commands_begin_with() throws Exception {
        Plant plant = ((Reading.Read) PlantReader.read(file)).plant();
        assertThat(json("api/sequence").path("own").asBoolean()).isFalse();
        assertThat(json("api/sequence").path("number").asInt()).isZero();
        assertThat(plain())
                .isEqualTo(SequenceText.of(DefaultSequence.of(
                        plant.name() + ", station REC",
                        Options.of(plant.stations().get(0), Set.of()))));
        assertThat(get("api/sequence/plain?extras=PURGE,ISOLATION"))
                .contains("purge")
                .isNotEqualTo(plain());
    }

    @Test
    void the_panel_goes_by_an_edited_sequence_and_by_the_plants_own_again() throws Exception {
        String edited = reworded();
        JsonNode taken = JSON.readTree(take(0, edited).body());
        assertThat(taken.path("number").asInt()).isEqualTo(1);
        assertThat(taken.path("own").asBoolean()).isTrue();
        JsonNode panel = JSON.readTree(post("api/panel/begin", "{}").body());
        assertThat(panel.path("edit").asInt()).isEqualTo(1);
        assertThat(panel.path("lamps").toString()).contains("BAG IS FULL NOW");
        assertThat(take(1, "").statusCode()).isEqualTo(200);
        JsonNode back = JSON.readTree(post("api/panel/begin", "{}").body());
        assertThat(back.path("edit").asInt()).isZero();
        assertThat(back.path("lamps").toString()).doesNotContain("BAG IS FULL NOW");
        JsonNode earlier = json("api/sequence").path("earlier");
        assertThat(earlier.get(0).path("number").asInt()).isEqualTo(1);
        assertThat(earlier.get(0).path("text").asText()).isEqualTo(edited);
    }

    @Test
    void a_fault_is_told_with_its_line_and_nothing_is_kept() throws Exception {
        String[] lines = plain().split("\n", -1);
        String wrong = plain().replaceFirst("(?m)^scan: .*$", "scan: never");
        assertThat(wrong).isNotEqualTo(plain());
        HttpResponse<String> refused = take(0, wrong);
        assertThat(refused.statusCode()).isEqualTo(422);
        JsonNode fault = JSON.readTree(refused.body()).path("faults").get(0);
        assertThat(lines[fault.path("line").asInt() - 1]).startsWith("scan:");
        assertThat(take(0, "\0 x").statusCode()).isEqualTo(422);
        assertThat(take(0, "a".repeat(3_000_000)).statusCode()).isIn(413, 422);
        assertThat(json("api/sequence").path("number").asInt()).isZero();
    }

    @Test
    void of_two_who_edit_one_sequence_the_second_is_told_and_both_texts_stay() throws Exception {
        String edited = reworded();
        assertThat(take(0, edited).statusCode()).isEqualTo(200);
        HttpResponse<String> second = take(0, edited.replace("NOW", "LATER"));
        assertThat(second.statusCode()).isEqualTo(409);
        assertThat(second.body()).contains("Nothing was overwritten");
        assertThat(plain()).isEqualTo(edited);
    }

    @Test
    void a_proof_tells_what_does_not_hold_of_a_text_that_is_not_kept() throws Exception {
        ObjectNode body = JSON.createObjectNode().put("text", plain());
        JsonNode holds =
                JSON.readTree(post("api/sequence/prove", body.toString()).body());
        assertThat(holds.path("holds").asBoolean())
                .as(holds.path("text").asText())
                .isTrue();
        String lit = plain().replaceFirst("shows: VACUUMING\n    when: suction", "shows: VACUUMING\n    when: motion");
        assertThat(lit).isNotEqualTo(plain());
        body.put("text", lit);
        HttpResponse<String> wrong = post("api/sequence/prove", body.toString());
        assertThat(wrong.statusCode()).as(wrong.body()).isEqualTo(200);
        assertThat(JSON.readTree(wrong.body()).path("holds").asBoolean()).isFalse();
        assertThat(json("api/sequence").path("number").asInt()).isZero();
    }

    @Test
    void edits_outlive_the_studio_and_go_into_a_backup() throws Exception {
        String edited = reworded();
        take(0, edited);
        studio.close();
        Path backup = folder.resolve("all.db");
        Backup.write(folder.resolve("kept.db"), backup);
        studio = Studio.open(file, backup, 0, "dustwright test");
        assertThat(plain()).isEqualTo(edited);
    }

    @Test
    void a_station_that_is_not_there_is_refused_in_words() throws Exception {
        assertThat(get("api/sequence?station=NONE")).contains("No station is called");
    }
}
