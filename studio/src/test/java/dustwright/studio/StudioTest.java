package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dustwright.documents.report.Digest;
import dustwright.documents.report.Verdict;
import dustwright.documents.writing.Show;
import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.UnitSystem;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the pages ask of the studio, and what others must not get. */
class StudioTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @SuppressWarnings("NullAway.Init")
    @TempDir
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Studio studio;

    private final HttpClient client = HttpClient.newHttpClient();

    @BeforeEach
    void open() throws IOException {
        Path file = Plants.copy("bakery-one-main", folder);
        studio = Studio.open(file, folder.resolve("kept.db"), 0, "dustwright test");
    }

    @AfterEach
    void close() {
        studio.close();
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(URI.create(studio.address() + path)).build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, String body, String... headers)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(studio.address() + path))
                .POST(HttpRequest.BodyPublishers.ofString(body));
        for (int n = 0; n < headers.length; n += 2) {
            request.header(headers[n], headers[n + 1]);
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private JsonNode json(String path) throws IOException, InterruptedException {
        return JSON.readTree(get(path).body());
    }

    @Test
    void one_set_comes_with_drawing_profile_findings_worst_first_and_title_block() throws Exception {
        JsonNode set = json("api/set?open=A1%0AC1&filter=dirty&units=us");
        assertThat(set.path("solved").asBoolean()).isTrue();
        assertThat(set.path("drawing").asText()).contains("data-run=\"HP1\"").contains("data-inlet=\"A1\"");
        assertThat(set.path("profile").asText()).startsWith("<svg");
        JsonNode worst = set.path("findings").get(0);
        assertThat(worst.path("claim").asText()).startsWith("Dust settles in run");
        assertThat(worst.path("marginClass").asText()).isIn("far", "short");
        assertThat(worst.path("letter").asText()).isEqualTo("a");
        assertThat(set.path("block").toString()).contains("scfm").contains("inHg below site");
    }

    @Test
    void drawing_and_words_of_a_set_can_be_asked_for_alone_and_a_drawing_beside_the_one_before() throws Exception {
        String asked = "api/set?open=A1&filter=dirty&units=us";
        JsonNode all = json(asked);
        JsonNode words = json(asked + "&part=words");
        for (String told : List.of("profile", "findings", "readings", "block", "rest", "version", "set")) {
            assertThat(words.path(told)).as(told).isEqualTo(all.path(told));
        }
        assertThat(words.path("drawing").asText()).isEmpty();
        JsonNode drawing = json(asked + "&part=drawing");
        assertThat(drawing.path("drawing")).isEqualTo(all.path("drawing"));
        assertThat(drawing.path("findings")).isEmpty();
        long had = drawing.path("drawn").asLong();
        assertThat(json(asked + "&part=drawing&had=" + had).path("drawing").asText())
                .isEqualTo("=0 " + all.path("drawing").asText().lines().count());
        assertThat(json(asked + "&had=nothing").path("drawing")).isEqualTo(all.path("drawing"));
        assertThat(get("api/set?part=both").statusCode()).isEqualTo(400);
    }

    @Test
    void a_finding_opens_down_to_its_source() throws Exception {
        String id = json("api/set?open=A1").path("findings").get(0).path("id").asText();
        String steps = get("api/derivation?open=A1&finding=" + java.net.URLEncoder.encode(id, StandardCharsets.UTF_8))
                .body();
        assertThat(steps).contains("continuity").contains("TUB-6");
        assertThat(get("api/derivation?open=A1&finding=none").statusCode()).isEqualTo(404);
    }

    @Test
    void a_smaller_main_moves_the_figures_of_the_next_answer() throws Exception {
        double before = velocityMargin();
        long version = json("api/plant").path("version").asLong();
        HttpResponse<String> changed = post(
                "api/value",
                "{\"version\":" + version + ",\"path\":\"runs.HP1.tube\",\"value\":\"T2\",\"plain\":true}",
                Guard.OWN_HEADER,
                "studio");
        assertThat(changed.statusCode()).isEqualTo(200);
        assertThat(velocityMargin()).isGreaterThan(before);
    }

    private double velocityMargin() throws Exception {
        for (JsonNode finding : json("api/set?open=A1").path("findings")) {
            if (finding.path("id").asText().startsWith("TRANSPORT_VELOCITY/HP1/")) {
                return finding.path("bar").asDouble();
            }
        }
        throw new AssertionError("no velocity at HP1");
    }

    @Test
    void the_users_scale_is_worked_out_behind_the_page() throws Exception {
        JsonNode progress = json("api/sets");
        for (int n = 0; n < 600 && progress.path("scale").isEmpty(); n++) {
            Thread.sleep(50);
            progress = json("api/sets");
        }
        assertThat(progress.path("done").asInt()).isEqualTo(progress.path("all").asInt());
        assertThat(progress.path("scale").get(0).path("users").asInt()).isEqualTo(3);
        assertThat(progress.path("scale").get(0).path("words").asText()).endsWith("not all hold");
    }

    /** The starter leaves values of its dust open, so nobody may read that everything holds. */
    @Test
    void the_verdict_over_every_set_says_no_more_than_verify_does() throws Exception {
        Plant plant = ((Reading.Read) PlantReader.read(Studio.starter())).plant();
        Verdict verify =
                Verdict.of(new Digest(Study.of(plant, States.usual(plant)).withSheets()), new Show(UnitSystem.US));
        assertThat(verify.word()).isEqualTo("Not known.");
        long version = json("api/plant").path("version").asLong();
        assertThat(post(
                                "api/text",
                                JSON.createObjectNode()
                                        .put("version", version)
                                        .put("text", Studio.starter())
                                        .toString(),
                                Guard.OWN_HEADER,
                                "studio")
                        .statusCode())
                .isEqualTo(200);
        JsonNode progress = json("api/coverage?units=us");
        for (int n = 0; n < 600 && !progress.path("done").asBoolean(); n++) {
            Thread.sleep(50);
            progress = json("api/coverage?units=us");
        }
        String verdict = progress.path("verdict").asText();
        assertThat(verdict)
                .startsWith("Not known: Values missing of dust mixed; ")
                .doesNotContain("Every set holds");
        Matcher others = Pattern.compile("And (\\d+) others are not known").matcher(verify.reason());
        assertThat(others.find()).as(verify.reason()).isTrue();
        assertThat(verdict).contains("; and " + (Integer.parseInt(others.group(1)) - 1) + " other requirements.");
        Matcher least = Pattern.compile("least margin (.*)$").matcher(verify.reason());
        assertThat(least.find()).as(verify.reason()).isTrue();
        assertThat(verdict).endsWith("Least margin found " + least.group(1));
    }

    @Test
    void a_page_of_somebody_else_changes_nothing() throws Exception {
        String body = "{\"version\":1,\"text\":\"dustwright: 1\"}";
        assertThat(post("api/text", body).statusCode()).isEqualTo(403);
        assertThat(post("api/text", body, Guard.OWN_HEADER, "studio", "Origin", "http://elsewhere.example")
                        .statusCode())
                .isEqualTo(403);
        assertThat(json("api/plant").path("version").asLong()).isEqualTo(1);
    }

    /** A name of somebody else's that was made to point to this machine. */
    @Test
    void a_foreign_name_in_the_address_gets_no_answer() throws Exception {
        URI address = URI.create(studio.address());
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), address.getPort())) {
            OutputStream out = socket.getOutputStream();
            out.write("GET /api/text HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n"
                    .getBytes(StandardCharsets.US_ASCII));
            InputStream in = socket.getInputStream();
            assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8)).startsWith("HTTP/1.1 403");
        }
    }

    @Test
    void paths_lead_nowhere_but_to_the_pages() throws Exception {
        for (String path : new String[] {
            "assets/..%2f..%2fplant.yaml",
            "assets/%2e%2e/pom.xml",
            "assets/Studio.class",
            "api/part?kind=run&id=..",
            "x"
        }) {
            HttpResponse<String> answer = get(path);
            assertThat(answer.body()).as(path).doesNotContain("dustwright:").doesNotContain("<project");
        }
    }

    @Test
    void a_name_that_looks_like_a_script_stays_text() throws Exception {
        String hostile = "<script>document.title=1</script>";
        long version = json("api/plant").path("version").asLong();
        HttpResponse<String> changed = post(
                "api/value",
                JSON.createObjectNode()
                        .put("version", version)
                        .put("path", "plant.name")
                        .put("value", hostile)
                        .put("plain", true)
                        .toString(),
                Guard.OWN_HEADER,
                "studio");
        assertThat(changed.statusCode()).isEqualTo(200);
        assertThat(json("api/set?open=A1").path("drawing").asText()).doesNotContain("<script");
        assertThat(get("").headers().firstValue("Content-Security-Policy").orElse(""))
                .contains("script-src 'self'")
                .doesNotContain("script-src 'self' 'unsafe-inline'");
    }

    @Test
    void every_set_is_covered_behind_the_page_and_the_worst_is_no_better_than_the_worst_asked() throws Exception {
        JsonNode progress = json("api/coverage");
        for (int n = 0; n < 1200 && !progress.path("done").asBoolean(); n++) {
            Thread.sleep(100);
            progress = json("api/coverage");
        }
        JsonNode three = progress.path("scale").get(0);
        assertThat(three.path("users").asInt()).isEqualTo(3);
        assertThat(three.path("words").asText()).matches("all [0-9\u202f]+ sets covered: not all hold");
        assertThat(progress.path("verdict").asText()).startsWith("Does not hold for every set. Worst: ");
        assertThat(progress.path("verdict").asText()).contains("m/s");
        assertThat(json("api/coverage?units=us").path("verdict").asText()).contains("ft/min");
        JsonNode worst = three.path("worst").get(0);
        String open = String.join(
                "%0A",
                java.util.stream.StreamSupport.stream(worst.path("open").spliterator(), false)
                        .map(JsonNode::asText)
                        .toList());
        JsonNode set = json("api/set?open=" + open + "&filter="
                + worst.path("filter").asText() + (worst.path("dust").asBoolean() ? "" : "&dust=no"));
        assertThat(set.path("findings").get(0).path("margin").asText())
                .isEqualTo(worst.path("margin").asText());
    }

    @Test
    void what_is_no_json_or_far_too_large_is_refused_without_a_trace_of_the_program() throws Exception {
        HttpResponse<String> wrong = post("api/text", "{", Guard.OWN_HEADER, "studio");
        assertThat(wrong.statusCode()).isEqualTo(400);
        HttpResponse<String> large = post("api/text", "x".repeat(9_000_000), Guard.OWN_HEADER, "studio");
        assertThat(large.statusCode()).isEqualTo(413);
        assertThat(wrong.body() + large.body())
                .doesNotContain("dustwright.studio")
                .doesNotContain("Exception");
    }
}
