package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The description of the interface holds what the studio does, and its examples run. */
class ApiTest extends Served {
    ApiTest() {
        super("bakery-one-main");
    }

    /** Every call in the program is described, and nothing else is. */
    @Test
    void the_description_names_every_call_and_no_other() throws Exception {
        Set<String> written = new TreeSet<>();
        try (Stream<Path> sources = Files.list(Path.of("src/main/java/dustwright/studio"))) {
            for (Path source : sources.toList()) {
                Matcher call = Pattern.compile("routes\\s*\\.(get|post|sse)\\(\\s*\"(/api/[^\"]+)\"")
                        .matcher(Files.readString(source));
                while (call.find()) {
                    written.add((call.group(1).equals("sse") ? "get" : call.group(1)) + " " + call.group(2));
                }
            }
        }
        Set<String> described = new TreeSet<>();
        description()
                .path("paths")
                .properties()
                .forEach(path -> path.getValue()
                        .fieldNames()
                        .forEachRemaining(method -> described.add(method + " " + path.getKey())));
        assertThat(described).isEqualTo(written);
    }

    private JsonNode description() throws IOException, InterruptedException {
        return JSON.valueToTree(new Yaml(new SafeConstructor(new LoaderOptions())).load(get("api/openapi.yaml")));
    }

    /** Not asked here: they need people set up or a picture, and are asked where those are. */
    private static final Set<String> ASKED_ELSEWHERE = Set.of(
            "post /api/sign",
            "post /api/session",
            "post /api/session/password",
            "post /api/floorplan",
            "post /api/floorplan/picture",
            "post /api/floorplan/away");

    private final Set<String> asked = new TreeSet<>();

    /** Asks, and holds the answer against what is described of it: every field of an answer is named there. */
    private JsonNode asks(String path) throws Exception {
        return described("get", path, 200, get(path.substring(1)));
    }

    private JsonNode does(String path, String body, int status) throws Exception {
        var answer = post(path.substring(1), body);
        assertThat(answer.statusCode()).as(path + ": " + answer.body()).isEqualTo(status);
        return described("post", path, status, answer.body());
    }

    private JsonNode described(String method, String path, int status, String answer) throws Exception {
        JsonNode description = description();
        String bare = path.replaceFirst("[?].*", "");
        JsonNode described = resolved(
                description,
                description
                        .path("paths")
                        .path(bare)
                        .path(method)
                        .path("responses")
                        .path(String.valueOf(status)));
        JsonNode schema = described.path("content").path("application/json").path("schema");
        assertThat(schema.isMissingNode())
                .as(method + " " + path + " " + status)
                .isFalse();
        ObjectNode whole = JSON.createObjectNode();
        whole.set("components", closed(description.path("components").deepCopy()));
        whole.setAll((ObjectNode) closed(schema.deepCopy()));
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(whole.toString(), InputFormat.JSON)
                        .validate(answer, InputFormat.JSON))
                .as(method + " " + path)
                .isEmpty();
        asked.add(method + " " + bare);
        return JSON.readTree(answer);
    }

    private static JsonNode resolved(JsonNode description, JsonNode node) {
        String ref = node.path("$ref").asText("");
        return ref.isEmpty() ? node : description.at(ref.substring(1));
    }

    /** With no other fields than those described. */
    private static JsonNode closed(JsonNode node) {
        if (node instanceof ObjectNode object
                && object.path("properties").isObject()
                && !object.has("additionalProperties")) {
            object.put("additionalProperties", false);
        }
        node.forEach(ApiTest::closed);
        return node;
    }

    /** Everywhere in the answers what an object holds and what a list is of. */
    @Test
    void no_answer_is_described_thinly() throws Exception {
        List<String> thin = new ArrayList<>();
        JsonNode description = description();
        description.path("components").path("schemas").properties().forEach(e -> thin(e.getKey(), e.getValue(), thin));
        description
                .path("paths")
                .properties()
                .forEach(path -> path.getValue().properties().forEach(call -> {
                    JsonNode answer = resolved(
                            description, call.getValue().path("responses").path("200"));
                    if (answer.path("content").isMissingNode()) {
                        thin.add(call.getKey() + " " + path.getKey() + " says nothing of its answer");
                    }
                    thin(
                            path.getKey(),
                            answer.path("content").path("application/json").path("schema"),
                            thin);
                }));
        assertThat(thin).isEmpty();
    }

    private static void thin(String where, JsonNode schema, List<String> thin) {
        if (schema.path("type").asText("").equals("object")
                && !schema.has("properties")
                && !schema.has("additionalProperties")) {
            thin.add(where + ": an object without fields");
        }
        if (schema.path("type").asText("").equals("array") && !schema.has("items")) {
            thin.add(where + ": a list of nothing");
        }
        schema.path("properties").properties().forEach(e -> thin(where + "." + e.getKey(), e.getValue(), thin));
        if (schema.has("items")) {
            thin(where + "[]", schema.path("items"), thin);
        }
    }

    private String version() throws Exception {
        return "{\"version\":" + json("api/plant").path("version").asLong();
    }

    @Test
    void answers_are_as_described() throws Exception {
        for (String path : List.of(
                "plant",
                "set?open=A1",
                "set?open=",
                "sets",
                "coverage",
                "part?kind=run&id=HP1",
                "part?path=stations.REC",
                "part?path=stations.REC.producers.P9",
                "places",
                "text",
                "session",
                "floorplan",
                "panel",
                "machines?open=A1&sets=one",
                "papers")) {
            asks("/api/" + path);
        }
        does("/api/accept", version() + ",\"author\":\"A\",\"note\":\"n\"}", 200);
        does("/api/accept", version() + ",\"author\":\"A\",\"note\":\"n\"}", 422);
        does("/api/alternative", version() + ",\"name\":\"x\"}", 200);
        does("/api/value", version() + ",\"path\":\"runs.HP1.tube\",\"value\":\"T2\"}", 200);
        does("/api/value", "{\"version\":1,\"path\":\"runs.HP1.tube\",\"value\":\"T3\"}", 409);
        does("/api/draw", version() + ",\"what\":\"split\",\"run\":\"HP1\"}", 200);
        does("/api/text", version() + ",\"text\":\"dustwright: 2\"}", 200);
        does("/api/walk", version() + ",\"steps\":-1}", 200);
        does("/api/write", version() + "}", 200);
        does("/api/value", version() + ",\"path\":\"plant.name\",\"value\":\"another\"}", 200);
        asks("/api/left");
        does("/api/left", version() + ",\"left\":" + json("api/left").get(0).path("version") + "}", 200);
        does("/api/walk", version() + ",\"steps\":-1}", 200);
        asks("/api/revisions");
        asks("/api/revision/coverage?revision=1");
        asks("/api/alternatives");
        asks("/api/since");
        asks("/api/compare?before=r1&after=now");
        asks("/api/extension?today=r1&then=now");
        does("/api/alternative/text", "{\"name\":\"x\"}", 200);
        does("/api/alternative/letgo", "{\"name\":\"x\"}", 200);
        does("/api/coverage/stop", version() + "}", 200);
        String id = does("/api/panel/begin?units=us", "{\"soonFull\":true}", 200)
                .path("id")
                .asText();
        does("/api/panel/go?units=us", "{\"id\":\"" + id + "\",\"known\":0,\"acts\":[],\"next\":true}", 200);
        JsonNode sequence = asks("/api/sequence");
        String text = sequence.path("text").asText();
        ObjectNode edit = JSON.createObjectNode();
        edit.put("station", sequence.path("station").asText()).put("number", 0).put("text", text + "\n# own\n");
        does("/api/sequence", edit.toString(), 200);
        does("/api/sequence/prove", JSON.createObjectNode().put("text", text).toString(), 200);
        does("/api/papers/make", "{\"paper\":\"report\",\"units\":\"us\"}", 200);
        does("/api/papers/stop", "{\"paper\":\"report\"}", 200);
        does("/api/session/end", "{}", 200);
        Set<String> answers = new TreeSet<>();
        JsonNode description = description();
        description
                .path("paths")
                .properties()
                .forEach(path -> path.getValue().properties().forEach(call -> {
                    JsonNode answer = resolved(
                            description, call.getValue().path("responses").path("200"));
                    if (answer.path("content").has("application/json")) {
                        answers.add(call.getKey() + " " + path.getKey());
                    }
                }));
        answers.removeAll(ASKED_ELSEWHERE);
        assertThat(asked).isEqualTo(answers);
    }

    @Test
    void what_is_not_done_is_answered_in_words_whatever_the_reason() throws Exception {
        Path away = folder.resolve("away");
        Files.move(file, Files.createDirectory(away).resolve(String.valueOf(file.getFileName())));
        does("/api/write", version() + "}", 200);
        Files.delete(file);
        Files.createSymbolicLink(file, folder.resolve("gone").resolve("plant.yaml"));
        String unwritten = does("/api/write", version() + "}", 500).path("why").asText();
        assertThat(unwritten).contains(file.toString()).contains("is not there").contains("write again");
        assertThat(JSON.readTree(get("api/nothing")).path("why").asText()).contains("no call GET /api/nothing");
        assertThat(JSON.readTree(get("api/set?filter=old")).path("why").asText())
                .contains("clean, normal or dirty");
        assertThat(JSON.readTree(post("api/text", "{no json").body())
                        .path("why")
                        .asText())
                .contains("no JSON");
        var large = post("api/text", "\"" + "x".repeat(20_000_000) + "\"");
        assertThat(large.statusCode()).isEqualTo(413);
        assertThat(JSON.readTree(large.body()).path("why").asText()).contains("at most 6 MB");
    }

    /** Each field that the description says must be there, left out alone and put as another kind of thing; the panel's own calls are asked where they are. */
    @Test
    void a_field_that_is_missing_or_of_another_kind_is_refused_by_its_name() throws Exception {
        JsonNode before = json("api/text");
        List<String> taken = new ArrayList<>();
        for (Map.Entry<String, JsonNode> path : description().path("paths").properties()) {
            JsonNode schema = path.getValue()
                    .path("post")
                    .path("requestBody")
                    .path("content")
                    .path("application/json")
                    .path("schema");
            if (path.getKey().startsWith("/api/panel/")
                    || schema.path("required").isEmpty()) {
                continue;
            }
            for (JsonNode required : schema.path("required")) {
                String field = required.asText();
                ObjectNode body = JSON.createObjectNode();
                schema.path("required")
                        .forEach(other -> put(
                                body, other.asText(), schema.path("properties").path(other.asText())));
                body.remove(field);
                refusedBy(path.getKey(), body, field, taken);
                if (!field.equals("value")) {
                    body.putObject(field);
                    refusedBy(path.getKey(), body, field, taken);
                }
            }
        }
        assertThat(taken).isEmpty();
        assertThat(json("api/text")).isEqualTo(before);
    }

    private static void put(ObjectNode body, String name, JsonNode schema) {
        switch (schema.path("type").asText("")) {
            case "integer" -> body.put(name, 1);
            case "array" -> body.putArray(name);
            case "" -> body.set(name, schema.path("enum").get(0));
            default -> body.put(name, "x");
        }
    }

    private void refusedBy(String path, ObjectNode body, String field, List<String> taken) throws Exception {
        var answer = post(path.substring(1), body.toString());
        String why = JSON.readTree(answer.body()).path("why").asText();
        if (answer.statusCode() != 422 || !why.matches(".*\\b" + field + "\\b.*")) {
            taken.add(path + " " + body + ": " + answer.statusCode() + " " + why);
        }
    }

    /** Each field the hand looks at is described, and no other. */
    @Test
    void what_a_hand_is_asked_is_described_field_by_field() throws Exception {
        Set<String> looked = new TreeSet<>(Set.of("version", "what"));
        Matcher field = Pattern.compile("(?:\\b(?:asked|piece)\\.(?:path|has)\\(|metres\\(\\w+, )\"(\\w+)\"")
                .matcher(Files.readString(Path.of("src/main/java/dustwright/studio/Hand.java")));
        while (field.find()) {
            looked.add(field.group(1));
        }
        Set<String> described = new TreeSet<>();
        JsonNode schema =
                description().at("/paths/~1api~1draw/post/requestBody/content/application~1json/schema/properties");
        schema.fieldNames().forEachRemaining(described::add);
        schema.path("pieces").at("/items/properties").fieldNames().forEachRemaining(described::add);
        assertThat(described).isEqualTo(looked);
    }

    private static String example(String language) throws IOException {
        Matcher fence = Pattern.compile("(?s)```" + language + "\\n(.*?)```")
                .matcher(Files.readString(Path.of("../docs/studio-api.md")));
        assertThat(fence.find()).isTrue();
        return fence.group(1);
    }

    private String run(String... command) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("STUDIO", studio.address().replaceFirst("/$", ""));
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said.strip();
    }

    private void movesTheTube(String said) throws IOException, InterruptedException {
        assertThat(get("api/text")).contains("tube: T2");
        assertThat(JSON.readTree(get("api/plant")).path("step").asInt()).isEqualTo(2);
        JsonNode worst =
                JSON.readTree(get("api/set?open=A1&units=us")).path("findings").get(0);
        assertThat(said)
                .isEqualTo(worst.path("claim").asText() + ": "
                        + worst.path("figures").asText());
    }

    @Test
    void the_example_for_curl_runs() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/curl")), "curl is not installed");
        movesTheTube(run("bash", "-ec", example("bash")));
    }

    @Test
    void the_example_for_java_runs() throws Exception {
        Path source = Files.writeString(folder.resolve("SmallerTube.java"), example("java"));
        movesTheTube(run(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dstdout.encoding=UTF-8",
                source.toString()));
    }
}
