package dustwright.engine.conveying;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DustClassTableTest {
    /** The table prints whole m/s; ours is the exact conversion of its ft/min form, at most 0.7 m/s away. Fumes are not in it. */
    @Test
    void least_velocities_of_the_classes_are_the_printed_ones_but_for_rounding() {
        List<Row> rows = Reference.everyRow("equipment-table-duct-velocity.csv");
        List<DustClass> classes = Stream.of(DustClass.values())
                .filter(each -> each != DustClass.FUMES)
                .toList();
        assertThat(classes).hasSameSizeAs(rows);
        for (int n = 0; n < rows.size(); n++) {
            Row row = rows.get(n);
            assertThat(classes.get(n).words().split(" ", -1)[0])
                    .isEqualTo(row.text("class").split(" ", -1)[0]);
            assertClose(row.text("class"), classes.get(n).minimum().metresPerSecond(), row.value("m_s_min"), 0, 0.71);
        }
    }
}
