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
import java.util.List;
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

    @Test
    void answers_are_as_described() throws Exception {
        JsonNode description = description();
        for (String asked : List.of(
                "plant",
                "set?open=A1",
                "sets",
                "coverage",
                "part?kind=run&id=HP1",
                "places",
                "text",
                "revisions",
                "alternatives",
                "panel",
                "sequence",
                "machines?open=A1&sets=one",
                "papers",
                "compare?before=now&after=now")) {
            ObjectNode schema = JSON.createObjectNode();
            JsonNode answers = description
                    .path("paths")
                    .path("/api/" + asked.replaceFirst("[?].*", ""))
                    .path("get")
                    .path("responses")
                    .path("200")
                    .path("content")
                    .path("application/json")
                    .path("schema");
            assertThat(answers.isMissingNode()).as(asked).isFalse();
            schema.set("components", description.path("components"));
            schema.setAll((ObjectNode) answers.deepCopy());
            assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                            .getSchema(schema.toString(), InputFormat.JSON)
                            .validate(get("api/" + asked), InputFormat.JSON))
                    .as(asked)
                    .isEmpty();
        }
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
