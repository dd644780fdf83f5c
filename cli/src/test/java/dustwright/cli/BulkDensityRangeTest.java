package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.plant.Plant;
import dustwright.engine.sheet.Answer;
import dustwright.engine.sheet.Entry;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The light end of a loose bulk density decides volumes and changes, its heavy end what a full bag weighs. */
class BulkDensityRangeTest {
    /** What the bakery's bag takes to its level probe [m³], and its load [kg]. */
    private static final double VOLUME_m3 = 0.45;

    private static final String ONE_FIGURE = "bulk density: 550 kg/m3, tapped density: 700 kg/m3,";

    private static Study study(String densities) throws IOException {
        String bakery = Files.readString(Path.of("..", "examples", "bakery", "plant.yaml"))
                .replace("safe working load: 500 kg", "safe working load: 280 kg");
        String changed = bakery.replace(ONE_FIGURE, densities);
        assertThat(changed).contains(densities).contains("volume: 0.45 m3");
        Reading reading = PlantReader.read(changed);
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Read.class);
        Plant plant = ((Reading.Read) reading).plant();
        return Study.of(plant, States.usual(plant)).withSheets();
    }

    private static double figure(Study study, String id) {
        Entry entry = study.sheets().stream()
                .flatMap(sheet -> sheet.entries().stream())
                .filter(e -> e.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(id + " is on no sheet"));
        return ((Answer.Known) entry.answer()).value().si();
    }

    private static Finding load(Study study) {
        return study.worstPerPlace().stream()
                .filter(f -> f.code() == FindingCode.CONTAINER_LOAD)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_full_bag_is_held_against_its_load_at_the_heavy_end() throws IOException {
        assertThat(load(study(ONE_FIGURE)).fails()).isFalse();
        Study range = study("bulk density: 550 kg/m3, heaviest bulk density: 650 kg/m3, tapped density: 700 kg/m3,");
        assertThat(load(range).fails()).isTrue();
        assertThat(load(range).value().si()).isCloseTo(VOLUME_m3 * 650, within(1e-9));
    }

    @Test
    void both_ends_of_one_fill_are_told_and_changes_are_of_the_light_end() throws IOException {
        Study range = study("bulk density: 450 kg/m3, heaviest bulk density: 550 kg/m3, tapped density: 700 kg/m3,");
        assertThat(figure(range, "fill-flour/REC")).isCloseTo(VOLUME_m3 * 450, within(1e-9));
        assertThat(figure(range, "fill-heaviest-flour/REC")).isCloseTo(VOLUME_m3 * 550, within(1e-9));
        assertThat(figure(range, "changes/REC")).isGreaterThan(figure(study(ONE_FIGURE), "changes/REC"));
        assertThat(figure(range, "settled-load-flour/REC")).isCloseTo(VOLUME_m3 * 700, within(1e-9));
    }
}
