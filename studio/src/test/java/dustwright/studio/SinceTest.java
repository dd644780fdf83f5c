package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What changed since the last accepted revision. */
class SinceTest extends Served {
    SinceTest() {
        super("bakery");
    }

    @Test
    void pieces_and_parts_that_changed_since_the_last_revision_are_told() throws Exception {
        assertThat(json("api/since").path("revision").asInt()).isZero();
        post("api/accept", "{\"version\":1,\"author\":\"A. Example\",\"note\":\"\"}");
        assertThat(pieces()).isEmpty();
        post("api/draw", "{\"version\":1,\"what\":\"inlet\",\"like\":\"A2\",\"x\":16,\"y\":0,\"z\":1}");
        assertThat(pieces()).contains("inlet A5 new").anyMatch(p -> p.startsWith("run ") && p.endsWith(" new"));
        post("api/value", "{\"version\":2,\"path\":\"runs.DG1.tube\",\"value\":\"T3\",\"plain\":true}");
        assertThat(pieces()).contains("run DG1 changed");
        post("api/value", "{\"version\":3,\"path\":\"site.altitude\",\"value\":\"50 m\",\"plain\":true}");
        assertThat(json("api/since").path("parts").toString()).contains("site");
        post("api/draw", "{\"version\":4,\"what\":\"take away\",\"inlets\":[\"G2\"]}");
        assertThat(pieces()).contains("inlet G2 gone");
    }

    private List<String> pieces() throws Exception {
        List<String> pieces = new ArrayList<>();
        for (JsonNode piece : json("api/since").path("pieces")) {
            pieces.add(piece.path("kind").asText() + " " + piece.path("id").asText() + " "
                    + piece.path("what").asText());
        }
        return pieces;
    }
}
