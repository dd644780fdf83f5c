package dustwright.engine.tubing;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.quantity.OutOfRangeException;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FrictionTest {
    static List<Row> friction() {
        return Reference.rows("pipe-friction.csv");
    }

    @ParameterizedTest
    @MethodSource("friction")
    void each_author_gives_the_published_factor(Row row) {
        double re = row.value("reynolds");
        double roughness = row.value("relative_roughness");
        row.assertClose("f_churchill1977_darcy", Friction.churchill(re, roughness));
        if (row.has("f_laminar_darcy")) {
            row.assertClose("f_laminar_darcy", Friction.laminar(re));
        }
        if (row.has("f_colebrook_darcy")) {
            row.assertClose("f_colebrook_darcy", Friction.colebrook(re, roughness));
            row.assertClose("f_haaland_darcy", Friction.haaland(re, roughness));
            row.assertClose("f_swamee_jain_darcy", Friction.swameeJain(re, roughness));
        }
    }

    @ParameterizedTest
    @MethodSource("friction")
    void the_network_takes_laminar_or_colebrook_outside_the_blend(Row row) {
        double re = row.value("reynolds");
        double actual = Friction.darcy(re, row.value("relative_roughness"));
        if (re <= 2000) {
            row.assertClose("f_laminar_darcy", actual);
        } else if (re >= 4000) {
            row.assertClose("f_colebrook_darcy", actual);
        } else {
            assertThat(actual).isBetween(64 / re, Math.max(0.1, 64 / 2000.0));
        }
    }

    @ParameterizedTest
    @MethodSource("friction")
    void explicit_formulas_stay_within_their_stated_distance_of_colebrook(Row row) {
        if (row.value("reynolds") >= 4000) {
            double colebrook = row.value("f_colebrook_darcy");
            assertClose("Haaland", row.value("f_haaland_darcy"), colebrook, 0.015);
            assertClose("Churchill", row.value("f_churchill1977_darcy"), colebrook, 0.031);
            assertClose("Swamee-Jain", row.value("f_swamee_jain_darcy"), colebrook, 0.034);
        }
    }

    @Test
    void colebrook_is_solved_to_the_last_digits_everywhere() {
        SplittableRandom random = new SplittableRandom(20261125);
        for (int n = 0; n < 20_000; n++) {
            double re = 2300 * Math.pow(10, 5.5 * random.nextDouble());
            double roughness = n % 10 == 0 ? 0 : Math.pow(10, -7 + 6 * random.nextDouble());
            double x = 1 / Math.sqrt(Friction.colebrook(re, roughness));
            assertClose("1/sqrt(f)", -2 * Math.log10(roughness / 3.7 + 2.51 * x / re), x, 1e-13);
        }
    }

    @Test
    void pressure_gradient_grows_with_flow_through_the_blend_in_tubes_of_this_trade() {
        for (double roughness : new double[] {0, 1e-4, 1e-3, 0.01, 0.05}) {
            double before = 0;
            for (double re = 1; re < 1e5; re *= 1.001) {
                double gradient = Friction.darcy(re, roughness) * re * re;
                assertThat(gradient).isGreaterThan(before);
                before = gradient;
            }
        }
    }

    @Test
    void blend_meets_both_ends_without_a_step() {
        assertClose("at 2000", Friction.darcy(2000.0001, 1e-3), 64 / 2000.0, 1e-6);
        assertClose("at 4000", Friction.darcy(3999.9999, 1e-3), Friction.colebrook(4000, 1e-3), 1e-6);
    }

    @Test
    void outside_its_range_an_author_refuses_and_names_symbol_value_and_limits() {
        assertThatThrownBy(() -> Friction.haaland(100, 1e-4))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("Re = 100 ")
                .hasMessageContaining("2300 to 1000000000");
        assertThatThrownBy(() -> Friction.colebrook(1e5, 0.2)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Friction.laminar(1e5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Friction.churchill(Double.NaN, 0)).isInstanceOf(OutOfRangeException.class);
    }
}
