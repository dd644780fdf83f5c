package dustwright.engine.noise;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.noise.Exposure.Rule;
import org.junit.jupiter.api.Test;

class ExposureTableTest {
    @Test
    void permitted_exposure_is_the_tabulated_one_and_the_formula_rounds_to_it() {
        for (Row row : Reference.everyRow("equipment-table-noise-limits.csv")) {
            assertThat(Exposure.tabulatedLimit_dBA(row.value("hours_per_day"))).isEqualTo(row.value("dBA_slow"));
            assertClose(
                    row.toString(),
                    Exposure.permitted_h(Rule.OSHA, row.value("dBA_slow")),
                    row.value("hours_per_day"),
                    0.02);
        }
    }

    @Test
    void no_source_has_no_level() {
        assertThatThrownBy(SoundLevel::sum_dB).hasMessageContaining("no source");
    }

    @Test
    void weighting_is_none_at_one_kilohertz() {
        assertClose("A(1 kHz)", SoundLevel.aWeighting_dB(1000), 0, 0, 0.01);
    }
}
