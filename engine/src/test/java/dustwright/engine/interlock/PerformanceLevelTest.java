package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.Reference;
import dustwright.engine.interlock.PerformanceLevel.Avoidance;
import dustwright.engine.interlock.PerformanceLevel.Build;
import dustwright.engine.interlock.PerformanceLevel.Category;
import dustwright.engine.interlock.PerformanceLevel.Coverage;
import dustwright.engine.interlock.PerformanceLevel.Endurance;
import dustwright.engine.interlock.PerformanceLevel.Exposure;
import dustwright.engine.interlock.PerformanceLevel.Severity;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** ISO 13849-1 simplified, against the confirmed rows of its risk graph and table, and its classes; rows from memory decide nothing. */
class PerformanceLevelTest {
    private static final Map<String, Category> CATEGORIES =
            Map.of("B", Category.B, "1", Category.ONE, "2", Category.TWO, "3", Category.THREE, "4", Category.FOUR);

    @Test
    void the_risk_graph_asks_for_the_published_levels() {
        for (Reference.Row row : Reference.rows("controls-plr-risk-graph.csv")) {
            PerformanceLevel asked = PerformanceLevel.required(
                    Severity.valueOf(row.text("severity")),
                    Exposure.valueOf(row.text("frequency")),
                    Avoidance.valueOf(row.text("avoidance")));
            assertThat(asked.name().toLowerCase(Locale.ROOT)).as(row.toString()).isEqualTo(row.text("PLr"));
        }
    }

    @Test
    void the_simplified_table_gives_the_published_levels() {
        for (Reference.Row row : Reference.rows("controls-pl-category.csv")) {
            Build build = new Build(
                    Objects.requireNonNull(CATEGORIES.get(row.text("category"))),
                    Coverage.valueOf(row.text("DCavg_class").toUpperCase(Locale.ROOT)),
                    Endurance.valueOf(row.text("MTTFd_class").toUpperCase(Locale.ROOT)));
            String reached = PerformanceLevel.reached(build)
                    .map(l -> l.name().toLowerCase(Locale.ROOT))
                    .orElse("not covered");
            assertThat(reached).as(row.toString()).isEqualTo(row.text("PL"));
        }
    }

    @Test
    void classes_begin_where_the_standard_says() {
        assertThat(Endurance.of(2.9)).isEmpty();
        assertThat(Endurance.of(3)).contains(Endurance.LOW);
        assertThat(Endurance.of(9.9)).contains(Endurance.LOW);
        assertThat(Endurance.of(10)).contains(Endurance.MEDIUM);
        assertThat(Endurance.of(30)).contains(Endurance.HIGH);
        assertThat(Coverage.of(0.59)).isEqualTo(Coverage.NONE);
        assertThat(Coverage.of(0.6)).isEqualTo(Coverage.LOW);
        assertThat(Coverage.of(0.9)).isEqualTo(Coverage.MEDIUM);
        assertThat(Coverage.of(0.99)).isEqualTo(Coverage.HIGH);
        assertThatThrownBy(() -> Coverage.of(60)).hasMessageContaining("between 0 and 1");
    }
}
