package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dustwright.engine.quantity.Unit;
import dustwright.engine.quantity.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlantSchemaTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema SCHEMA = REGISTRY.getSchema(PlantSchema.json());

    @ParameterizedTest
    @ValueSource(strings = {"two-inlets.yaml", "measured-loop.yaml"})
    void what_the_reader_takes_the_schema_takes(String name) {
        assertThat(faults(PlantReaderTest.resource(name))).isEmpty();
    }

    static List<Path> examples() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("..", "examples"))) {
            return folders.map(f -> f.resolve("plant.yaml"))
                    .filter(Files::exists)
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void every_example_plant_passes_reader_and_schema(Path example) throws IOException {
        assertThat(PlantReader.read(example)).isInstanceOf(Reading.Read.class);
        assertThat(faults(Files.readString(example))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "altitude: 120 m          | altitud: 120 m",
                "usage:                   | usge:",
                "length: 25 ft            | length: 25",
                "length: 25 ft            | length: 25 fet",
                "altitude: 120 m          | altitude: 120 kg",
                "set: 8.5 inHg            | set: 80 kPa abs",
                "rated: 500 scfm          | rated: 500 cfm",
                "class: very fine light dust | class: pebbles",
                "kind: lobe               | kind: lobes",
                "floor: {k: 6}            | floor: {k: 2000}",
                "floor: {k: 6}            | floor: {k: 6, opening: 4 cm2}",
                "outside: 2 in, wall      | outside: 2 in, bore: 2 in, wall",
                "outside: 2 in, wall: 0.065 in, roughness | outside: 2 in, roughness",
                "bore: 1 1/2 in, length   | length",
                "J1: [4.5, 2, 6]          | J1: [4.5, 2]",
                "J1: [4.5, 2, 6]          | J/1: [4.5, 2, 6]",
                "simultaneous users: 2    | simultaneous users: two",
                "dustwright: 1            | dustwright: 2",
                "inlet vacuum: 3 inHg     | inlet vacuum: {value: 3 inHg}",
            })
    void what_the_reader_refuses_by_key_shape_or_unit_the_schema_refuses(String good, String spoilt) {
        String text = PlantReaderTest.resource("two-inlets.yaml");
        assertThat(text).contains(good);
        String faulty = text.replaceFirst(Pattern.quote(good), Matcher.quoteReplacement(spoilt));
        assertThat(faults(faulty)).isNotEmpty();
        FaultsTest.faults(faulty);
    }

    @Test
    void the_schema_itself_is_a_schema() {
        Schema meta = REGISTRY.getSchema(
                com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(PlantSchema.json(), InputFormat.JSON)).isEmpty();
    }

    @Test
    void every_unit_the_reader_knows_passes_the_pattern_of_its_kind() throws IOException {
        JsonNode definitions = new ObjectMapper().readTree(PlantSchema.json()).get("$defs");
        int checked = 0;
        for (Map.Entry<String, JsonNode> definition : definitions.properties()) {
            Pattern pattern =
                    Pattern.compile(definition.getValue().get("pattern").asText());
            for (Unit unit : Units.all()) {
                if (unit.dimension().words().replace(' ', '-').equals(definition.getKey())) {
                    assertThat("1.5 " + unit.symbol()).matches(pattern);
                    assertThat(unit.otherNames())
                            .allSatisfy(n -> assertThat("2" + n).matches(pattern));
                    checked++;
                }
            }
        }
        assertThat(checked).isGreaterThan(60);
    }

    private static List<com.networknt.schema.Error> faults(String yaml) {
        return SCHEMA.validate(yaml, InputFormat.YAML);
    }
}
