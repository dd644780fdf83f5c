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

class BendLossTest {
    static List<Row> bends() {
        return Reference.rows("pipe-bends.csv");
    }

    @ParameterizedTest
    @MethodSource("bends")
    void loss_is_that_of_rennels_and_hudson(Row row) {
        BendLoss bend = BendLoss.rennels(Math.toRadians(row.value("angle_deg")), row.value("radius_over_diameter"));
        row.assertClose("K_rennels", bend.k(row.value("f_darcy")));
    }

    @Test
    void a_bend_of_no_angle_loses_nothing() {
        assertThat(BendLoss.rennels(0, 3).k(0.02)).isZero();
    }

    @Test
    void a_wide_bend_tends_to_the_friction_of_its_own_length_and_a_small_turning_loss() {
        BendLoss wide = BendLoss.rennels(Math.PI / 2, 100);
        double turning = wide.k(0.02) - 0.02 * 100 * Math.PI / 2;
        assertThat(turning).isBetween(0.1 * Math.sin(Math.PI / 4), 0.12);
    }

    @Test
    void the_straight_length_replaced_by_a_square_bend_is_its_radius_on_each_side() {
        assertClose("tangent", BendLoss.tangent_m(Math.PI / 2, 0.3), 0.3, 1e-15);
        assertClose("tangent of 45 degrees", BendLoss.tangent_m(Math.PI / 4, 0.3), 0.3 * (Math.sqrt(2) - 1), 1e-14);
    }

    @Test
    void a_bend_tighter_than_half_a_bore_is_refused() {
        assertThatThrownBy(() -> BendLoss.rennels(1, 0.4))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("r/D = 0.4");
    }
}
