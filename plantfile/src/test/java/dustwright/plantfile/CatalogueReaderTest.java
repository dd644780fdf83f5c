package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dustwright.engine.finding.Confidence;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.VacuumProducer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CatalogueReaderTest {
    private static final Path DEMO = Path.of("src/main/resources/catalogue/demo");
    private static final String PLANT = PlantReaderTest.resource("two-inlets.yaml");
    private static final String MACHINES = """
            dustwright catalogue: 1
            catalogue: {name: Shop, source: own tests of May, invented: no}
            producers:
              L1: {kind: lobe, displacement: 7 L, slip at 1 psi: 120 rpm, mechanical efficiency: 0.9, idle loss: 0.4 hp,
                speed: 1800 rpm, speed range: [700 rpm, 2300 rpm], motor: 15 hp, deepest vacuum: 15 inHg, greatest rise: 130 K}
              S1: {kind: side channel, rated speed: 3500 rpm, rated density: 1.2 kg/m3, speed range: [2000 rpm, 3600 rpm],
                curve: [{flow: 300 acfm, vacuum: 2 inHg, power: 3 hp}, {flow: 200 acfm, vacuum: 5 inHg, power: 6 hp}],
                motor: 7.5 hp, deepest vacuum: 7 inHg, greatest rise: 100 K}
            """;

    private static String lobe(String keys) {
        int from = PLANT.indexOf("      P1:");
        int to = PLANT.indexOf("      P2:");
        return PLANT.substring(0, from) + "      P1: {" + keys + "}\n" + PLANT.substring(to);
    }

    private static VacuumProducer read(String keys) {
        return PlantReaderTest.plant(lobe(keys)).station("REC").producers().get(0);
    }

    private static List<String> faults(Map<String, String> files) {
        return ((CatalogueReading.Faults) CatalogueReader.read(new TreeMap<>(files)))
                .faults().stream().map(CatalogueReading.InFile::text).toList();
    }

    @Test
    void the_bundled_files_are_all_of_the_demo_and_say_that_they_are_invented() throws IOException {
        try (Stream<Path> files = Files.list(DEMO)) {
            assertThat(files.map(f -> f.getFileName().toString()).sorted()).isEqualTo(CatalogueReader.DEMO);
        }
        assertThat(CatalogueReader.demo().producers()).hasSizeGreaterThan(40).allSatisfy(p -> {
            assertThat(p.model().orElseThrow().invented()).isTrue();
            assertThat(p.sourceOf("motor").text()).contains("invented");
        });
    }

    @Test
    void every_file_of_the_demo_keeps_to_the_schema_of_a_catalogue() throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(PlantSchema.catalogueJson());
        for (String file : CatalogueReader.DEMO) {
            assertThat(schema.validate(Files.readString(DEMO.resolve(file)), InputFormat.YAML))
                    .isEmpty();
        }
        assertThat(schema.validate(MACHINES.replace("7 L", "7 kg"), InputFormat.YAML))
                .isNotEmpty();
    }

    @Test
    void a_producer_by_its_model_has_the_figures_of_the_catalogue_and_says_so() {
        VacuumProducer p = read("model: DL-15");
        assertThat(((Machine.LobePump) p.machine()).displacement().cubicMetres())
                .isCloseTo(0.00656, within(1e-12));
        assertThat(((Drive.Fixed) p.drive()).speed().rpm()).isCloseTo(1860, within(1e-9));
        assertThat(p.sourceOf("deepest vacuum").confidence()).isEqualTo(Confidence.CATALOGUE);
        assertThat(PlantReaderTest.plant(lobe("model: DL-15")).assumptions()).anySatisfy(a -> {
            assertThat(a.what()).isEqualTo("figures of model DL-15");
            assertThat(a.basis().text()).contains("Demo lobe pumps").contains("invented");
        });
    }

    /** By the affinity laws a curve of 10 rpm at 3600 rpm would ask 360³ of its power: the rated speed lost its zeros. */
    @ParameterizedTest
    @CsvSource({"3500 rpm, 0", "900 rpm, 0", "899 rpm, 1", "10 rpm, 1"})
    void a_curve_is_not_carried_to_many_times_its_speed(String rated, int faults) {
        List<String> told = faults(Map.of(
                "shop.yaml",
                MACHINES.replace("rated speed: 3500 rpm", "rated speed: " + rated)
                        .replace("greatest rise: 100 K", faults == 0 ? "greatest rise: 100" : "greatest rise: 100 K")));
        assertThat(told.stream().filter(fault -> fault.contains("more than four times its speed")))
                .hasSize(faults);
    }

    /** By hand: 3500 rpm by equal sheaves is 3.9 times 900 rpm and 4.4 times 800 rpm; by a machine sheave of half the size 7000 rpm, 7.8 times 900 rpm. */
    @ParameterizedTest
    @CsvSource({"900 rpm, 10 in, false", "800 rpm, 10 in, true", "900 rpm, 5 in, true"})
    void a_belt_carries_a_curve_no_farther(String rated, String sheave, boolean wrong) {
        Reading reading = PlantReader.read(lobe("kind: side channel, rated speed: " + rated
                + ", rated density: 1.2 kg/m3, curve: [{flow: 300 acfm, vacuum: 2 inHg, power: 3 hp}, {flow: 200 acfm,"
                + " vacuum: 5 inHg, power: 6 hp}], motor: 7.5 hp, deepest vacuum: 7 inHg, greatest rise: 100 K, motor speed: 3500 rpm,"
                + " belt: {motor sheave: 10 in, machine sheave: " + sheave + "}"));
        List<String> told = reading instanceof Reading.Faults faults
                ? faults.faults().stream().map(Fault::text).toList()
                : List.of();
        assertThat(told.stream().anyMatch(t -> t.contains("more than four times its speed")))
                .as(told.toString())
                .isEqualTo(wrong);
    }

    @Test
    void files_of_a_catalogue_end_in_yaml_or_yml_in_any_case(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("a.YAML"), MACHINES);
        Files.writeString(
                folder.resolve("b.yml"), MACHINES.replace("L1:", "L2:").replace("S1:", "S2:"));
        assertThat(CatalogueReader.read(folder))
                .isInstanceOfSatisfying(
                        CatalogueReading.Read.class,
                        read -> assertThat(read.catalogue().models()).hasSize(4));
    }

    @Test
    void what_the_plant_states_goes_before_the_catalogue() {
        VacuumProducer p = read("model: DL-15, speed: 2100 rpm, motor: 20 hp");
        assertThat(((Drive.Fixed) p.drive()).speed().rpm()).isCloseTo(2100, within(1e-9));
        assertThat(p.nameplate().watts()).isCloseTo(20 * 745.7, within(1.0));
        assertThat(p.sourceOf("motor").confidence()).isEqualTo(Confidence.ENTERED);
        assertThat(p.sourceOf("deepest vacuum").confidence()).isEqualTo(Confidence.CATALOGUE);
        assertThat(p.model().orElseThrow().replaced()).containsExactly("speed", "motor");
    }

    @Test
    void a_drive_or_a_belt_takes_the_place_of_the_speed_of_the_catalogue() {
        assertThat(read("model: DL-15, hold: 7 inHg").drive()).isInstanceOf(Drive.Holding.class);
        VacuumProducer belted = read(
                "model: DL-15, motor speed: 1750 rpm, belt: {motor sheave: 8 in, machine sheave: 7 in, slip: 1 %}");
        // by hand: 1750 · 8/7 · 0.99
        assertThat(((Drive.Fixed) belted.drive()).speed().rpm()).isCloseTo(1980, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "model: DL-155                     | there is no model \"DL-155\" in the catalogue      | \"DL-15\"",
                "model: DL-15, sped: 1800 rpm      | unknown key \"sped\" of a lobe pump by its model  | \"speed\"",
                "model: DL-15, speed: 9000 rpm     | the speed lies outside its own range            | speed range",
                "model: DL-15, speed: 1800 rpm, hold: 7 inHg | with both speed and hold            | at most one",
                "model: DK-10, kind: screw         | model DK-10 is a claw                           | no \"kind\" beside",
                "model: DL-15, motor: 0.3 hp       | a motor smaller than the idle loss              | above \"idle loss\"",
                "model: DS-10, displacement: 7 L   | unknown key \"displacement\" of a machine        | ",
                "model: DK-10, seal water: 20 degC | seal water on a machine that has none           | liquid ring",
                "model: [DL-15]                    | a list where a single value belongs             | ",
            })
    void a_wrong_model_or_what_does_not_go_with_it_is_a_fault(String keys, String message, String expected) {
        assertThat(FaultsTest.faults(lobe(keys)))
                .anySatisfy(f -> assertThat(f.text()).contains(message).contains(expected == null ? "" : expected));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "invented: no            | invented: perhaps        | line 2, column 61: catalogue.invented | neither yes nor no",
                "source: own tests of May, | ''                     | the catalogue without \"source\"       | ",
                "idle loss: 0.4 hp,      | ''                       | without \"idle loss\"                  | ",
                "displacement: 7 L       | displacment: 7 L         | unknown key \"displacment\"            | \"displacement\"",
                "displacement: 7 L       | displacement: 7 kg       | a mass (kg) where a volume belongs    | ",
                "motor: 15 hp            | motor: 0.4 hp            | a motor smaller than the idle loss    | above",
                "motor: 7.5 hp           | motor: 2 hp              | smaller than the least power of the curve | curve",
                "flow: 200 acfm          | flow: 300 acfm           | producers.S1.curve[1]                 | the curve turns back here",
                "vacuum: 5 inHg, power   | vacuum: 1 inHg, power    | the curve turns back here             | flow falling, vacuum rising",
                "kind: side channel      | kind: side chanel        | none of the words known here          | \"side channel\"",
                "kind: side channel      | kind: claw, curve taken: at rated density | \"curve taken\" of a machine that is not dynamic | dynamic: yes",
                "producers:              | pumps:                   | unknown key \"pumps\" of a catalogue file | ",
                "dustwright catalogue: 1 | dustwright catalogue: 2  | \"2\" does not fit                     | ",
                "S1: {kind               | L1: {kind                | stands here a second time             | ",
                "[700 rpm, 2300 rpm]     | [2300 rpm, 700 rpm]      | least is above its greatest           | ",
            })
    void a_fault_of_a_catalogue_names_file_line_and_way_out(String good, String bad, String message, String more) {
        String text = MACHINES.replace(good, bad);
        assertThat(text).isNotEqualTo(MACHINES);
        assertThat(faults(Map.of("shop.yaml", text)))
                .anySatisfy(f -> assertThat(f)
                        .startsWith("shop.yaml, line ")
                        .contains(message)
                        .contains(more == null ? "" : more));
    }

    @Test
    void one_model_in_two_files_is_a_fault_that_names_both() {
        assertThat(faults(Map.of("a.yaml", MACHINES, "b.yaml", MACHINES)))
                .hasSize(2)
                .allSatisfy(
                        f -> assertThat(f).startsWith("b.yaml, line ").contains("stands already in a.yaml on line "));
    }

    @Test
    void faults_of_a_catalogue_a_plant_names_stand_at_the_key_that_names_it(@TempDir Path folder) throws IOException {
        Files.createDirectory(folder.resolve("machines"));
        Files.writeString(folder.resolve("machines/shop.yaml"), MACHINES.replace("7 L", "7 kg"));
        Path plant = folder.resolve("plant.yaml");
        Files.writeString(plant, lobe("model: L1").replace("plant: {name:", "plant: {catalogue: machines, name:"));
        assertThat(((Reading.Faults) PlantReader.read(plant)).faults())
                .singleElement()
                .satisfies(f -> assertThat(f.text()).startsWith("line 3, ").contains("shop.yaml, line 4"));
        Files.writeString(folder.resolve("machines/shop.yaml"), MACHINES);
        Reading.Read read = (Reading.Read) PlantReader.read(plant);
        assertThat(read.plant()
                        .station("REC")
                        .producers()
                        .get(0)
                        .sourceOf("motor")
                        .text())
                .isEqualTo("model L1, catalogue Shop (own tests of May)");
        assertThat(PlantReader.read(plant, Optional.of(CatalogueReader.demo()))).isInstanceOf(Reading.Faults.class);
    }

    @Test
    void a_folder_that_is_not_there_a_file_and_an_empty_folder_are_said_in_words(@TempDir Path folder)
            throws IOException {
        Path file = Files.writeString(folder.resolve("x.txt"), "");
        for (Path wrong : List.of(folder.resolve("none"), file, folder)) {
            assertThat(CatalogueReader.read(wrong))
                    .isInstanceOfSatisfying(
                            CatalogueReading.Faults.class,
                            f -> assertThat(f.faults()).hasSize(1));
        }
    }

    @Test
    void a_folder_that_is_named_and_not_there_is_a_fault_though_no_model_asks_for_it(@TempDir Path folder)
            throws IOException {
        Path plant = folder.resolve("plant.yaml");
        Files.writeString(plant, PLANT.replace("plant: {name:", "plant: {catalogue: machines, name:"));
        assertThat(PlantReader.read(plant)).isInstanceOfSatisfying(Reading.Faults.class, faults -> {
            assertThat(faults.faults()).singleElement().satisfies(fault -> {
                assertThat(fault.text()).contains("plant.catalogue").contains("there is no folder");
                assertThat(fault.line()).isPositive();
                assertThat(fault.column()).isPositive();
            });
        });
        Files.createDirectory(folder.resolve("machines"));
        Files.writeString(folder.resolve("machines").resolve("shop.yaml"), MACHINES);
        assertThat(PlantReader.read(plant)).isInstanceOf(Reading.Read.class);
    }
}
