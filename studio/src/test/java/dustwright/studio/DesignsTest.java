package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Alternatives and what differs between two designs, as the compare page asks for them. */
class DesignsTest extends Served {
    DesignsTest() {
        super("bakery-one-main");
    }

    private int keep(String name) throws IOException, InterruptedException {
        return post(
                        "api/alternative",
                        JSON.createObjectNode()
                                .put(
                                        "version",
                                        json("api/plant").path("version").asLong())
                                .put("name", name)
                                .toString())
                .statusCode();
    }

    private void tube(String tube) throws IOException, InterruptedException {
        long version = json("api/plant").path("version").asLong();
        assertThat(post(
                                "api/value",
                                "{\"version\":" + version + ",\"path\":\"runs.HP1.tube\",\"value\":\"" + tube
                                        + "\",\"plain\":true}")
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void a_kept_design_is_compared_with_the_working_copy() throws Exception {
        assertThat(keep("as it was")).isEqualTo(200);
        tube("T2");
        JsonNode both = json("api/compare?before=a:as%20it%20was&after=now&open=A1&units=us");
        assertThat(both.path("before").path("drawing").asText()).startsWith("<svg");
        assertThat(both.path("findings").get(0).path("turns").asBoolean()).isTrue();
        assertThat(both.path("findings").toString()).contains("run HP1").contains("ft/min");
        assertThat(both.path("pieces").toString())
                .isEqualTo("[{\"kind\":\"run\",\"id\":\"HP1\",\"what\":\"changed\"}]");
        assertThat(both.path("figures").toString()).doesNotContain("Running cost");
        assertThat(both.path("slight").size())
                .as("a short piece of the main changes little")
                .isGreaterThan(both.path("cost").size());
        JsonNode same = json("api/compare?before=now&after=now&open=A1");
        assertThat(same.path("findings")).isEmpty();
        assertThat(same.path("figures")).isEmpty();
    }

    @Test
    void a_name_is_given_once_and_free_again_when_let_go() throws Exception {
        assertThat(keep("wide main")).isEqualTo(200);
        assertThat(keep("wide main")).isEqualTo(422);
        assertThat(keep("  ")).isEqualTo(422);
        assertThat(keep("x".repeat(61))).isEqualTo(422);
        assertThat(keep("<script>alert(1)</script>")).isEqualTo(200);
        post("api/alternative/letgo", "{\"name\":\"wide main\"}");
        assertThat(json("api/alternatives").size()).isEqualTo(1);
        assertThat(keep("wide main")).isEqualTo(200);
    }

    @Test
    void a_design_that_is_not_there_is_said_so() throws Exception {
        assertThat(get("api/compare?before=r7&after=now")).contains("There is no design");
        assertThat(get("api/compare?before=../../etc/passwd&after=now")).contains("There is no design");
    }
}
