package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.Comparison;
import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.plant.Plant;
import dustwright.plantfile.PlantEditor;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Two designs side by side: an example and the same with one size changed. */
class ComparisonTest {
    private static final Path FOLDER = Path.of("../examples/bakery");
    private static final Path FILE = FOLDER.resolve("plant.yaml");

    private static Study study(String text) {
        Plant plant = ((Reading.Read) PlantReader.read(text, FOLDER)).plant();
        return Study.of(plant, States.usual(plant)).withSheets();
    }

    private static String smaller(String text) {
        return ((PlantEditor.Edit.Done) PlantEditor.set(text, "runs.HS8.tube", new PlantEditor.Value.Plain("T25")))
                .text();
    }

    @Test
    void a_design_beside_itself_differs_in_nothing() throws IOException {
        Study bakery = study(Files.readString(FILE));
        Comparison none = Comparison.of(bakery, study(Files.readString(FILE)));
        assertThat(none.findings()).isEmpty();
        assertThat(none.figures()).isEmpty();
    }

    @Test
    void one_smaller_run_shows_with_verdicts_first_and_the_other_way_round_alike() throws IOException {
        Study before = study(Files.readString(FILE));
        Study after = study(smaller(Files.readString(FILE)));
        Comparison there = Comparison.of(before, after);
        Comparison back = Comparison.of(after, before);
        assertThat(there.findings()).isNotEmpty().hasSameSizeAs(back.findings());
        boolean turned = true;
        for (Comparison.Judged judged : there.findings()) {
            assertThat(judged.verdictDiffers() && !turned).isFalse();
            turned = judged.verdictDiffers();
        }
        Comparison.Judged run = there.findings().stream()
                .filter(j -> j.any().id().startsWith("WEAR_VELOCITY/HS8/"))
                .findFirst()
                .orElseThrow();
        Optional<Double> was = run.before().map(Finding::margin);
        assertThat(run.after().map(Finding::margin).orElseThrow()).isLessThan(was.orElseThrow());
        assertThat(there.figures()).extracting(Comparison.Figure::sheet).contains("Running cost");
        assertThat(there.figures()).extracting(Comparison.Figure::sheetId).contains("running-cost");
        assertThat(changes(there)).hasSizeGreaterThan(20).isEqualTo(changes(back));
        assertThat(changes(there).values()).allMatch(change -> change > 0);
    }

    private static Map<String, Double> changes(Comparison comparison) {
        Map<String, Double> changes = new HashMap<>();
        comparison.figures().forEach(f -> changes.merge(f.sheetId() + "/" + f.name(), f.change(), Math::max));
        return changes;
    }
}
