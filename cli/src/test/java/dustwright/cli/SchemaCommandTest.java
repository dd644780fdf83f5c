package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every schema the command names can be had, and what the commands print keeps to it. */
class SchemaCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String EXAMPLES = Path.of("..", "examples").toString();

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), args);
    }

    private JsonNode printed(String... args) throws IOException {
        out.getBuffer().setLength(0);
        assertThat(run(args)).as(err.toString()).isLessThan(ExitCode.BAD_INPUT);
        return JSON.readTree(out.toString());
    }

    @Test
    void everything_the_help_names_has_a_schema() throws IOException {
        for (String subject : new SchemaCommand.Subjects()) {
            assertThat(printed("schema", subject).path("$schema").asText())
                    .as(subject)
                    .startsWith("https://json-schema.org/");
        }
        assertThat(printed("schema", "catalogue_file")).isEqualTo(printed("schema", "catalogue-file"));
        assertThat(run("schema", "foo")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("\"foo\"", "catalogue-file", "size", "changes");
    }

    @ParameterizedTest
    @CsvSource({
        "verify,    verify {}/bakery/plant.yaml",
        "solve,     solve {}/bakery/plant.yaml --open A1",
        "solve,     solve {}/cement-packing/plant.yaml --open AM1,BN1",
        "solve,     solve {}/plastics/plant.yaml",
        "verify,    verify {}/aluminium-finishing/plant.yaml",
        "sheet,     sheet {}/bakery/plant.yaml",
        "explain,   explain {}/bakery/plant.yaml 1",
        "figure,    explain {}/bakery/plant.yaml load/REC",
        "cover,     cover {}/bakery/plant.yaml --users 1",
        "cover,     cover {}/bakery-one-main/plant.yaml --users 1,2 --remedies",
        "size,      size {}/bakery-unsized/plant.yaml --users 1 --curve",
        "changes,   size {}/bakery-unsized/plant.yaml --users 1 --one-change",
        "catalogue, catalogue"
    })
    void what_a_command_prints_keeps_to_the_schema_of_its_name_and_version(String subject, String command)
            throws IOException {
        JsonNode schema = printed("schema", subject);
        JsonNode answer = printed((command.replace("{}", EXAMPLES) + " --format json").split(" "));
        assertThat(schema.path("title").asText())
                .isEqualTo(answer.path("format").asText());
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(schema)
                        .validate(answer))
                .isEmpty();
    }
}
