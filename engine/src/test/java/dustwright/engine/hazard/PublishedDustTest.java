package dustwright.engine.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.finding.Confidence;
import dustwright.engine.hazard.DustCard.Stated;
import dustwright.engine.quantity.Quantity;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The library holds the published rows, no more and no less, and says of each value whether it was read or remembered. */
class PublishedDustTest {
    private static final double BAR_Pa = 1e5;

    @Test
    void every_row_is_in_the_library_with_its_values_and_their_confidence() {
        Set<String> seen = new HashSet<>();
        int severities = 0;
        int sensitivities = 0;
        for (Row row : Reference.everyRow("hazard-dusts.csv")) {
            String read = row.text("confidence");
            if (row.text("row_kind").equals("severity")) {
                severities++;
                PublishedDust dust = PublishedDust.severity(row.text("dust"));
                assertThat(dust.size_um()).isEqualTo(row.text("median_size_um"));
                holds(row, "Kst_bar_m_per_s", dust.kst(), BAR_Pa, 0, read.startsWith("Kst confirmed"));
                holds(row, "Pmax_bar_g", dust.greatest(), BAR_Pa, 0, false);
                holds(row, "MEC_g_per_m3", dust.explosible(), 1e-3, 0, false);
            } else {
                sensitivities++;
                String name = row.text("dust");
                PublishedDust dust = PublishedDust.sensitivity(seen.add(name) ? name : name + " (second table)");
                boolean all = read.equals("confirmed");
                holds(row, "MIE_mJ", dust.ignition(), 1e-3, 0, all);
                holds(
                        row,
                        "MIT_cloud_C",
                        dust.cloud(),
                        1,
                        273.15,
                        all || read.startsWith("cloud temperature confirmed"));
                holds(row, "LIT_layer_C", dust.layer(), 1, 273.15, all);
                holds(row, "MEC_g_per_m3", dust.explosible(), 1e-3, 0, all);
            }
        }
        assertThat(PublishedDust.severities()).hasSize(severities).doesNotHaveDuplicates();
        assertThat(PublishedDust.sensitivities()).hasSize(sensitivities).doesNotHaveDuplicates();
    }

    private static void holds(
            Row row,
            String column,
            Optional<? extends Stated<? extends Quantity>> value,
            double factor,
            double offset,
            boolean read) {
        if (row.text(column).isEmpty()) {
            assertThat(value).as("%s of %s", column, row).isEmpty();
            return;
        }
        Stated<? extends Quantity> stated = value.orElseThrow();
        Reference.assertClose(row + " " + column, stated.value().si(), row.value(column) * factor + offset, 1e-12);
        assertThat(stated.source().confidence())
                .as("%s of %s", column, row)
                .isEqualTo(read ? Confidence.PUBLISHED : Confidence.FROM_MEMORY);
        assertThat(stated.source().text()).contains(row.text("dust"));
    }

    @Test
    void a_dust_that_is_in_no_table_is_refused() {
        assertThatThrownBy(() -> PublishedDust.severity("Gravel")).hasMessageContaining("Gravel");
        assertThat(List.of(PublishedDust.WARNING)).allMatch(w -> w.contains("has to be tested"));
    }
}
