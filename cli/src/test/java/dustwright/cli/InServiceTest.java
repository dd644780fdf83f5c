package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
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

    /** Whoever is handed the answer reads what was asked, and nothing that the file's silence would have meant. */
    @Test
    void what_is_asked_stands_beside_the_overrides_and_no_assumption_says_otherwise() throws IOException {
        String asked = "As asked, whatever the plant file says: P1 standing by, P2 in service, P3 standing by.";
        for (String command : List.of("verify", "sheet", "solve")) {
            assertThat(printed(command, PLANT, "--running", "P2")).as(command).contains(asked);
            assertThat(printed(command, PLANT)).as(command).doesNotContain("As asked");
        }
        JsonNode json = new ObjectMapper().readTree(printed("verify", PLANT, "--running", "P2", "--format", "json"));
        assertThat(json.get("overrides")).anySatisfy(override -> {
            assertThat(override.get("place").get("id").asText()).isEqualTo("P2");
            assertThat(override.get("what").asText()).isEqualTo("in service");
            assertThat(override.get("by").asText()).isEqualTo("who asked");
        });
        assertThat(json.get("assumptions").toString()).doesNotContain("runs unless it says standby");
        assertThat(printed("verify", PLANT, "--format", "json")).contains("runs unless it says standby");
        printed("report", PLANT, "--running", "P2", "--out", folder.toString());
        String page = Files.readString(folder.resolve("report.html"));
        assertThat(page.substring(page.indexOf("Assumptions and overrides")))
                .contains("vacuum producer P1", "standing by", "asked with this answer, whatever the plant file says")
                .doesNotContain("runs unless it says standby");
        assertThat(page).contains(asked);
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("report.pdf").toFile())) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("whatever the plant file says", "who asked");
        }
    }

    private static String printed(String... arguments) {
        StringWriter told = new StringWriter();
        PrintWriter to = new PrintWriter(told);
        assertThat(Main.run(to, to, arguments)).isLessThan(2);
        return told.toString().replaceAll("\\s+", " ");
    }

    /** The lines of a producer of the plant file. */
    private static String producer(String text, String id) {
        int from = text.indexOf("      " + id + ": {kind: lobe");
        int to = text.indexOf("      P" + (Integer.parseInt(id.substring(1)) + 1) + ": {kind", from);
        return text.substring(from, to);
    }

    /** But for the mark of the file's text and what it rests on. */
    private static String answer(String... arguments) {
        StringWriter told = new StringWriter();
        PrintWriter to = new PrintWriter(told);
        assertThat(Main.run(to, to, arguments)).isLessThan(2);
        return told.toString().replaceAll("mark [0-9a-f]+", "mark").replaceAll("(?s)\nRests on .*", "");
    }
}
