package dustwright.engine.tubing;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.quantity.OutOfRangeException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class JunctionLossTest {
    private static final double NEAR_ZERO = 1e-3;

    static List<Row> junctions() {
        return Reference.everyRow(
                "pipe-junction-converging.csv"); // only its Gardel columns are from memory, and are not used
    }

    @ParameterizedTest
    @MethodSource("junctions")
    void coefficients_are_the_tabulated_ones_on_the_common_velocity_and_on_the_own(Row row) {
        double angle_rad = Math.toRadians(row.value("branch_angle_deg"));
        double a = row.value("area_ratio_branch_over_common");
        double q = row.value("flow_ratio_branch_over_common");
        JunctionLoss junction = JunctionLoss.crane(angle_rad, a);

        row.assertClose("K_branch_crane_common_velocity", junction.branch(q), NEAR_ZERO);
        row.assertClose("K_run_crane_common_velocity", junction.run(q), NEAR_ZERO);
        row.assertClose("K_branch_momentum_common_velocity", JunctionLoss.momentumBranch(angle_rad, a, q), NEAR_ZERO);
        row.assertClose("K_run_momentum_common_velocity", JunctionLoss.momentumRun(angle_rad, a, q), NEAR_ZERO);
        if (q > 0) {
            row.assertClose("K_branch_crane_on_branch_velocity", junction.branch(q) * (a / q) * (a / q), NEAR_ZERO);
        }
        if (q < 1) {
            row.assertClose("K_run_crane_on_run_velocity", junction.run(q) / ((1 - q) * (1 - q)), NEAR_ZERO);
        }
    }

    @Test
    void branch_less_run_is_the_difference_of_velocity_heads() {
        for (double q = 0; q <= 1; q += 0.05) {
            double difference = JunctionLoss.momentumBranch(0.7, 0.3, q) - JunctionLoss.momentumRun(0.7, 0.3, q);
            assertClose("K_branch - K_run", difference, (q / 0.3) * (q / 0.3) - (1 - q) * (1 - q), 1e-12, 1e-12);
        }
    }

    @Test
    void coefficients_have_no_step_in_the_flow_split() {
        for (double degrees : new double[] {30, 45, 52, 60, 75, 90}) {
            JunctionLoss junction = JunctionLoss.crane(Math.toRadians(degrees), 0.6);
            for (double q = 0; q < 1; q += 1e-4) {
                assertThat(Math.abs(junction.branch(q + 1e-4) - junction.branch(q)))
                        .isLessThan(2e-3);
                assertThat(Math.abs(junction.run(q + 1e-4) - junction.run(q))).isLessThan(2e-3);
            }
        }
    }

    @Test
    void between_tabulated_angles_both_coefficients_are_linear_in_the_angle() {
        for (double[] span : new double[][] {{30, 45}, {45, 60}, {60, 90}}) {
            JunctionLoss low = JunctionLoss.crane(Math.toRadians(span[0]), 0.5);
            JunctionLoss middle = JunctionLoss.crane(Math.toRadians((span[0] + span[1]) / 2), 0.5);
            JunctionLoss high = JunctionLoss.crane(Math.toRadians(span[1]), 0.5);
            assertClose("branch", middle.branch(0.3), (low.branch(0.3) + high.branch(0.3)) / 2, 1e-9, 1e-9);
            assertClose("run", middle.run(0.3), (low.run(0.3) + high.run(0.3)) / 2, 1e-9, 1e-9);
        }
    }

    @Test
    void an_angle_outside_the_table_is_refused() {
        assertThatThrownBy(() -> JunctionLoss.crane(Math.toRadians(20), 0.5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> JunctionLoss.crane(Math.toRadians(120), 0.5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> JunctionLoss.crane(Math.toRadians(45), 1.4)).isInstanceOf(OutOfRangeException.class);
    }
}
