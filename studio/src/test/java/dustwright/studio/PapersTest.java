package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;

/** Packages of papers are made behind the page, kept with what they were made of, and fetched. */
class PapersTest extends Served {
    private static final Duration LONGEST_WAIT = Duration.ofMinutes(4);

    PapersTest() {
        super("bakery-one-main");
    }

    private JsonNode one(String id) throws IOException, InterruptedException {
        for (JsonNode kind : json("api/papers").path("packages")) {
            if (kind.path("id").asText().equals(id)) {
                return kind;
            }
        }
        throw new AssertionError("no package " + id);
    }

    private HttpResponse<String> make(String id) throws IOException, InterruptedException {
        return post("api/papers/make", "{\"paper\":\"" + id + "\",\"units\":\"us\"}");
    }

    private JsonNode made(String id) throws IOException, InterruptedException {
        assertThat(make(id).statusCode()).isEqualTo(200);
        Instant end = Instant.now().plus(LONGEST_WAIT);
        while (Instant.now().isBefore(end)) {
            JsonNode kind = one(id);
            if (!List.of("waiting", "working").contains(kind.path("stage").asText())) {
                return kind;
            }
            Thread.sleep(200);
        }
        throw new AssertionError(id + " is not made in time");
    }

    private HttpResponse<byte[]> file(String id, String name) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(
                                        URI.create(studio.address() + "api/papers/file?paper=" + id + "&name=" + name))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
    }

    private static List<String> names(JsonNode kind) {
        List<String> names = new ArrayList<>();
        kind.path("files").forEach(f -> names.add(f.path("name").asText()));
        return names;
    }

    private void change(String path, String value) throws IOException, InterruptedException {
        long version = json("api/plant").path("version").asLong();
        assertThat(post(
                                "api/value",
                                JSON.createObjectNode()
                                        .put("version", version)
                                        .put("path", path)
                                        .put("value", value)
                                        .put("plain", true)
                                        .toString())
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void the_report_is_made_with_what_it_is_of_and_stays_when_the_plant_goes_on() throws Exception {
        JsonNode report = made("report");
        assertThat(report.path("words").asText()).isEmpty();
        assertThat(names(report)).containsExactly("report.html", "report.pdf", "drawing.svg");
        assertThat(report.path("of").asText())
                .startsWith("Step 1, mark ")
                .contains("draft: no revision is accepted yet")
                .endsWith("US units");
        assertThat(report.path("older").asBoolean()).isFalse();
        HttpResponse<byte[]> page = file("report", "report.html");
        assertThat(new String(page.body(), StandardCharsets.UTF_8))
                .contains("Verification report")
                .contains("ft/min");
        assertThat(page.headers().firstValue("Content-Security-Policy").orElse(""))
                .contains("sandbox")
                .doesNotContain("script-src");
        assertThat(new String(file("report", "report.pdf").body(), 0, 5, StandardCharsets.US_ASCII))
                .isEqualTo("%PDF-");
        change("runs.HP1.tube", "T2");
        JsonNode older = one("report");
        assertThat(older.path("older").asBoolean()).isTrue();
        assertThat(older.path("of").asText()).startsWith("Step 1, ");
        assertThat(file("report", "report.html").body()).isEqualTo(page.body());
    }

    @Test
    void control_papers_and_those_on_dust_are_the_files_of_the_commands_and_go_into_one_zip() throws Exception {
        Files.writeString(folder.resolve("hazard-study.yaml"), "");
        assertThat(made("hazards").path("words").asText())
                .as("an empty study beside the plant file")
                .contains("The hazard study beside the plant file has faults");
        Files.delete(folder.resolve("hazard-study.yaml"));
        JsonNode hazards = made("hazards");
        assertThat(names(hazards)).containsExactly("hazards.html", "hazards.pdf", "hazards.xlsx", "hazard-study.yaml");
        JsonNode control = made("control-REC");
        assertThat(names(control))
                .containsExactly(
                        "control.html",
                        "control.pdf",
                        "control.xlsx",
                        "sequence.st",
                        "sequence.xml",
                        "steps.svg",
                        "model.pml",
                        "sequence.yaml");
        assertThat(new String(file("control-REC", "sequence.st").body(), StandardCharsets.UTF_8))
                .contains("FUNCTION_BLOCK");
        assertThat(new String(file("control-REC", "control.xlsx").body(), 0, 2, StandardCharsets.US_ASCII))
                .isEqualTo("PK");
        List<String> packed = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(studio.address() + "api/papers/package.zip"))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray())
                .body()))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                packed.add(entry.getName());
            }
        }
        assertThat(packed)
                .contains("plant.yaml", "hazards/hazards.pdf", "control-REC/sequence.xml")
                .hasSize(1 + 4 + 8);
        assertThat(file("plant", "").body()).isEqualTo(Files.readAllBytes(file));
    }

    @Test
    void coverage_is_proven_and_says_so() throws Exception {
        JsonNode coverage = made("coverage");
        assertThat(names(coverage)).containsExactly("coverage.pdf", "coverage.html");
        assertThat(new String(file("coverage", "coverage.html").body(), StandardCharsets.UTF_8))
                .contains("Coverage: Bakery ingredients room")
                .contains("hold for every set");
    }

    @Test
    void what_waits_can_be_stopped_and_what_cannot_be_made_says_why() throws Exception {
        make("report");
        make("control-REC");
        assertThat(post("api/papers/stop", "{\"paper\":\"control-REC\"}").statusCode())
                .isEqualTo(200);
        JsonNode stopped = made("report");
        assertThat(stopped.path("stage").asText()).isEqualTo("ready");
        Instant end = Instant.now().plus(LONGEST_WAIT);
        while (one("control-REC").path("stage").asText().equals("waiting")
                && Instant.now().isBefore(end)) {
            Thread.sleep(100);
        }
        assertThat(one("control-REC").path("stage").asText()).isEqualTo("stopped");
        assertThat(one("sizing").path("why").asText()).contains("Nothing is open to choice");
        assertThat(make("sizing").body()).contains("no such papers");
        assertThat(get("api/papers/file?paper=report&name=../../etc/passwd")).contains("not made yet");
    }

    /** Takes a minute: here only that it goes on device by device, and can be stopped. */
    @Test
    void device_faults_are_looked_at_one_after_the_other_until_somebody_stops_it() throws Exception {
        make("faults-REC");
        Instant end = Instant.now().plus(LONGEST_WAIT);
        while (!one("faults-REC").path("words").asText().contains("device faults looked at")
                && Instant.now().isBefore(end)) {
            Thread.sleep(100);
        }
        assertThat(one("faults-REC").path("words").asText()).contains("device faults looked at");
        post("api/papers/stop", "{\"paper\":\"faults-REC\"}");
        while (one("faults-REC").path("stage").asText().equals("working")
                && Instant.now().isBefore(end)) {
            Thread.sleep(100);
        }
        assertThat(one("faults-REC").path("stage").asText()).isEqualTo("stopped");
        assertThat(names(one("faults-REC"))).isEmpty();
    }

    @Test
    void a_text_with_faults_makes_no_papers() throws Exception {
        long version = json("api/plant").path("version").asLong();
        post(
                "api/text",
                JSON.createObjectNode()
                        .put("version", version)
                        .put("text", "dustwright: 1\nplant: {")
                        .toString());
        assertThat(json("api/papers").path("why").asText()).contains("The text has faults");
        assertThat(make("report").body()).contains("faults");
    }

    @Test
    void a_name_that_looks_like_a_script_stays_text_on_paper() throws Exception {
        change("plant.name", "<script>document.title=1</script>");
        assertThat(made("control-REC").path("stage").asText()).isEqualTo("ready");
        assertThat(new String(file("control-REC", "control.html").body(), StandardCharsets.UTF_8))
                .doesNotContain("<script>document");
        made("report");
        assertThat(new String(file("report", "report.html").body(), StandardCharsets.UTF_8))
                .doesNotContain("<script>document");
    }
}
