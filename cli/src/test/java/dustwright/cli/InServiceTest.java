package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A producer that stands by is judged, where it is asked for, as one in service is: sets, relief valve, all inlets shut, sound, panel, energy. */
class InServiceTest {
    private static final String PLANT = "../examples/supplement-new-bay/plant.yaml";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"verify", "sheet"})
    void running_what_stands_by_says_what_the_exchanged_plant_says(String command) throws IOException {
        String text = Files.readString(Path.of(PLANT));
        String first = producer(text, "P1");
        String second = producer(text, "P2");
        String exchanged = text.replace(first, first.stripTrailing().replaceFirst("}$", ", standby: yes}") + "\n")
                .replace(second, second.replace(", standby: yes", ""));
        Path file = folder.resolve("plant.yaml");

        Files.writeString(file, exchanged);
        String right = answer(command, file.toString());
        Files.writeString(file, text);
        String usual = answer(command, file.toString());
        String asked = answer(command, file.toString(), "--running", "P2");

        assertThat(asked).isEqualTo(right).isNotEqualTo(usual);
    }

    /** The lines of a producer of the plant file. */
    private static String producer(String text, String id) {
        int from = text.indexOf("      " + id + ": {kind: lobe");
        int to = text.indexOf("      P" + (Integer.parseInt(id.substring(1)) + 1) + ": {kind", from);
        return text.substring(from, to);
    }

    /** But for the mark of the file's text. */
    private static String answer(String... arguments) {
        StringWriter told = new StringWriter();
        PrintWriter to = new PrintWriter(told);
        assertThat(Main.run(to, to, arguments)).isLessThan(2);
        return told.toString().replaceAll("mark [0-9a-f]+", "mark");
    }
}
