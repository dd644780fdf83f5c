package dustwright.engine.receiver;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.FilterResistance;
import org.junit.jupiter.api.Test;

class FilterTest {
    private static final Filter FILTER = new Filter(
            new Area(8), new FilterResistance(9000), new FilterResistance(36_000), new FilterResistance(54_000));

    @Test
    void small_drop_is_resistance_times_filtration_velocity_at_local_density() {
        double rt = 287.05287 * 293.15;
        double w = 0.2;
        double p1_Pa = 75_000;
        double p2_Pa = Math.sqrt(p1_Pa * p1_Pa - FILTER.squaredPressurePerFlow(FilterCondition.CLEAN, rt) * w);
        double velocity_mPerS = w * rt / ((p1_Pa + p2_Pa) / 2) / 8;
        assertClose("drop", p1_Pa - p2_Pa, 9000 * velocity_mPerS, 1e-12);
    }

    @Test
    void dirtier_cloth_takes_more() {
        assertThat(FILTER.squaredPressurePerFlow(FilterCondition.DIRTY, 84_000))
                .isGreaterThan(FILTER.squaredPressurePerFlow(FilterCondition.NORMAL, 84_000));
    }
}
