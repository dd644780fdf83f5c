package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.documents.control.Lists;
import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.plant.Plant;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import dustwright.plantfile.SequenceReader;
import dustwright.plantfile.SequenceReading;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sequences that lie beside example plants: what each plant begins with, and safety functions that reach their level, do not, or are not known. */
class ExampleSequencesTest {
    private static final Path EXAMPLES = Path.of("..", "examples");

    @ParameterizedTest
    @ValueSource(strings = {"bakery", "supplement"})
    void it_is_what_its_plant_begins_with_but_for_the_safety_functions(String example) throws IOException {
        Plant plant = ((Reading.Read) PlantReader.read(EXAMPLES.resolve(example + "/plant.yaml"))).plant();
        Sequence begun = DefaultSequence.of(
                plant.name() + ", station " + plant.stations().get(0).id(),
                Options.of(plant.stations().get(0), Set.of()));
        Sequence read = sequence(example);

        assertThat(Files.readString(EXAMPLES.resolve(example + "/sequence.yaml")))
                .contains("invented parts");
        assertThat(new Sequence(
                        read.title(),
                        read.options(),
                        read.scan_s(),
                        read.inputs(),
                        read.buttons(),
                        read.outputs(),
                        read.timers(),
                        read.rules(),
                        read.causes(),
                        read.steps(),
                        read.lamps(),
                        begun.safety()))
                .isEqualTo(begun);
    }

    /** Worked by hand: 1/(1/20000 + 1/150 + 1/3250) = 142.4, counted as 100 years; 1/(1/20 + 1/3250) = 19.9; asked are c, d, c, b. */
    @Test
    void the_bakery_shows_a_level_as_asked_one_that_is_less_and_one_not_known() throws IOException {
        assertThat(reached("bakery"))
                .satisfiesExactly(
                        stop -> assertThat(stop).startsWith("c, as is asked or better; category 1; MTTFd 100.0 years"),
                        guard ->
                                assertThat(guard).startsWith("d, as is asked or better; category 3; MTTFd 100.0 years"),
                        start -> assertThat(start).startsWith("b, less than is asked; category B; MTTFd 19.9 years"),
                        relief -> assertThat(relief).isEqualTo("not known; enter category; channels with their parts"));
    }

    /** 1/(1/40 + 1/2166.7) = 39.3 years, coverage (0.6/40 + 0.9/2166.7) x 39.3 = 61 %: low, category 2, c. */
    @Test
    void the_supplement_plant_shows_no_level_one_as_asked_and_one_not_known() throws IOException {
        assertThat(reached("supplement"))
                .satisfiesExactly(
                        stop -> assertThat(stop).startsWith("none: 55 points against failures of common cause"),
                        start -> assertThat(start)
                                .startsWith(
                                        "c, as is asked or better; category 2; MTTFd 39.3 years; diagnostic coverage 61 %"),
                        relief -> assertThat(relief).isEqualTo("not known; enter relief valve: coverage"));
    }

    /** Some editors put a mark (Unicode 2.13, byte order mark) before the first letter; the file is the same. */
    @Test
    void a_sequence_file_may_begin_with_a_byte_order_mark(@TempDir Path folder) throws IOException {
        Path marked = folder.resolve("marked.yaml");
        Files.writeString(marked, "\uFEFF" + Files.readString(EXAMPLES.resolve("supplement/sequence.yaml")));
        StringWriter told = new StringWriter();
        PrintWriter to = new PrintWriter(told);
        assertThat(Main.run(to, to, "prove", marked.toString())).isZero();
        assertThat(told.toString()).contains("properties hold").doesNotContain("BROKEN");
    }

    private static List<String> reached(String example) throws IOException {
        return Lists.safetyFunctions(sequence(example)).rows().stream()
                .map(r -> r.get(r.size() - 1))
                .toList();
    }

    private static Sequence sequence(String example) throws IOException {
        return ((SequenceReading.Read)
                        SequenceReader.read(Files.readString(EXAMPLES.resolve(example + "/sequence.yaml"))))
                .sequence();
    }
}
