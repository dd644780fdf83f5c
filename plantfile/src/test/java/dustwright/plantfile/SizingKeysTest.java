package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.sizing.Choice;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What is open to choice: read as written, and every way to write it wrongly told with its line. */
class SizingKeysTest {
    private static final Path UNSIZED = Path.of("..", "examples", "bakery-unsized", "plant.yaml");

    private static String good() throws IOException {
        return Files.readString(UNSIZED);
    }

    @Test
    void choices_are_read_with_their_prices() throws IOException {
        Reading.Read read = (Reading.Read) PlantReader.read(good());
        assertThat(read.open().currency()).isEqualTo("EUR");
        assertThat(read.open().choices()).hasSize(11);
        Choice.Tubes far = (Choice.Tubes) read.open().choices().get(0);
        assertThat(far.runs()).containsExactly("HS1");
        assertThat(far.options()).contains(new Choice.Priced("T3", 52));
    }

    private static String faults(String from, String to) throws IOException {
        String text = good().replaceFirst(from, to);
        assertThat(text).isNotEqualTo(good());
        List<Fault> faults = ((Reading.Faults) PlantReader.read(text)).faults();
        return faults.stream().map(Fault::text).collect(Collectors.joining("\n"));
    }

    @Test
    void what_does_not_fit_the_plant_is_told_with_its_line() throws IOException {
        assertThat(faults("runs: \\[HS1\\]", "runs: [HS99]")).contains("line ", "there is no run called \"HS99\"");
        assertThat(faults("runs: \\[HS1\\]", "runs: [HS2]")).contains("is open twice", "south-far");
        assertThat(faults("\\{T2: 38 EUR/m", "{T9: 38 EUR/m")).contains("there is no tube called \"T9\"");
        assertThat(faults("\\{T2: 38 EUR/m", "{T2: 38 USD/m")).contains("USD where other prices are in EUR");
        assertThat(faults("\\{T2: 38 EUR/m", "{T2: 38")).contains("a number without a unit");
        assertThat(faults("\\{P1: 14500 EUR", "{P7: 14500 EUR"))
                .contains("there is no producer of this station called \"P7\"");
        assertThat(faults("\\{H15: 160 EUR", "{H16: 160 EUR")).contains("there is no hose called \"H16\"");
        assertThat(faults("area: 80 ft2, price", "price")).contains("area");
    }
}
