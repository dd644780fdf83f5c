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

    /** The starter leaves values of its dust open: nothing of it is known to fail. */
    @Test
    void what_is_not_known_of_what_stands_is_not_said_to_fail_nor_to_give_out_first() throws Exception {
        long version = json("api/plant").path("version").asLong();
        post(
                "api/text",
                JSON.createObjectNode()
                        .put("version", version)
                        .put("text", Studio.starter())
                        .toString());
        assertThat(keep("as it stands")).isEqualTo(200);
        JsonNode told = json("api/extension?today=a:as%20it%20stands&then=now&units=us");
        assertThat(told.path("failsToday")).isEmpty();
        assertThat(told.path("newlyUnknown")).isEmpty();
        assertThat(told.path("unknownToday")).isNotEmpty();
        for (JsonNode one : told.path("unknownToday")) {
            assertThat(one.path("marginClass").asText()).isEqualTo("unknown");
        }
        JsonNode first = told.path("limits").get(0);
        assertThat(first.path("marginClass").asText()).isNotEqualTo("unknown");
        assertThat(told.path("verdict").asText())
                .startsWith("Nothing that is known to hold today fails then. What gives out first has "
                        + first.path("margin").asText() + ".")
                .endsWith(" requirements are not known then.");
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
