package dustwright.engine.tubing;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class IsothermalFlowTest {
    private static final double R_DRY = 287.05287;

    static List<Row> legs() {
        return Reference.rows("pipe-isothermal.csv");
    }

    static List<Row> choked() {
        return Reference.rows("pipe-isothermal-choked.csv");
    }

    private static double area_m2(double bore_m) {
        return Math.PI / 4 * bore_m * bore_m;
    }

    private static double resistance(Row row) {
        return row.value("f_darcy") * row.value("length_m") / row.value("diameter_m");
    }

    @ParameterizedTest
    @MethodSource("legs")
    void a_leg_passes_the_tabulated_flow_with_the_tabulated_velocities(Row row) {
        double p1 = row.value("p1_Pa");
        double p2 = row.value("p2_Pa");
        double area = area_m2(row.value("diameter_m"));
        double rt = R_DRY * row.value("temperature_K");
        double w = IsothermalFlow.massFlow_kgPerS(p1, p2, resistance(row), area, rt);

        row.assertClose("mass_flow_kg_s", w);
        row.assertClose("velocity_in_m_s", w / area * rt / p1);
        row.assertClose("velocity_out_m_s", w / area * rt / p2);
        row.assertClose("mach_out", IsothermalFlow.mach(w / area, p2, rt));
        row.assertClose("p2_choke_Pa", IsothermalFlow.chokePressure_Pa(p1, resistance(row)));
    }

    @ParameterizedTest
    @MethodSource("choked")
    void a_choked_leg_passes_its_greatest_flow_whatever_the_vacuum_behind_it(Row row) {
        double p1 = row.value("p1_Pa");
        double area = area_m2(row.value("diameter_m"));
        double rt = R_DRY * row.value("temperature_K");
        double n = resistance(row);
        double w = IsothermalFlow.massFlow_kgPerS(p1, row.value("p_receiver_Pa"), n, area, rt);

        row.assertClose("mass_flow_choked_kg_s", w);
        row.assertClose("mass_flow_choked_kg_s", IsothermalFlow.chokedFlow_kgPerS(p1, n, area, rt));
        row.assertClose("p2_choke_Pa", IsothermalFlow.chokePressure_Pa(p1, n));
        row.assertClose("mach_in", IsothermalFlow.mach(w / area, p1, rt));
        row.assertClose("mach_out", IsothermalFlow.mach(w / area, IsothermalFlow.chokePressure_Pa(p1, n), rt));
        assertThat(w).isGreaterThan(row.value("mass_flow_if_choke_ignored_kg_s"));
    }

    @ParameterizedTest
    @MethodSource("legs")
    void outlet_pressure_of_the_flow_is_the_outlet_it_came_from(Row row) {
        double p1 = row.value("p1_Pa");
        double p2 = row.value("p2_Pa");
        double area = area_m2(row.value("diameter_m"));
        double rt = R_DRY * row.value("temperature_K");
        double w = IsothermalFlow.massFlow_kgPerS(p1, p2, resistance(row), area, rt);
        // next to the choke the flow hardly depends on the outlet, so the outlet keeps only half of the digits
        double choke = IsothermalFlow.chokePressure_Pa(p1, resistance(row));
        double tolerance = p2 > 1.005 * choke ? 1e-9 : 1e-6;
        assertClose("p2", IsothermalFlow.outletPressure_Pa(p1, w, resistance(row), area, rt), p2, tolerance);
    }

    @Test
    void splitting_a_leg_anywhere_changes_nothing() {
        SplittableRandom random = new SplittableRandom(7);
        for (int n = 0; n < 2000; n++) {
            double area = area_m2(0.03 + 0.1 * random.nextDouble());
            double rt = R_DRY * (270 + 40 * random.nextDouble());
            double resistance = 0.5 + 200 * random.nextDouble();
            double w = (0.2 + 0.78 * random.nextDouble())
                    * IsothermalFlow.chokedFlow_kgPerS(101_325, resistance, area, rt);
            double share = random.nextDouble(0.01, 0.99);
            double between = IsothermalFlow.outletPressure_Pa(101_325, w, share * resistance, area, rt);
            double inTwo = IsothermalFlow.outletPressure_Pa(between, w, (1 - share) * resistance, area, rt);
            assertClose("p2", inTwo, IsothermalFlow.outletPressure_Pa(101_325, w, resistance, area, rt), 1e-9);
        }
    }

    @Test
    void flow_rises_as_the_outlet_falls_until_it_chokes_and_is_level_below() {
        double choke = IsothermalFlow.chokePressure_Pa(101_325, 5);
        double before = 0;
        for (double p2 = 101_000; p2 > choke; p2 -= 50) {
            double w = IsothermalFlow.massFlow_kgPerS(101_325, p2, 5, 0.001, 84_000);
            assertThat(w).isGreaterThan(before);
            before = w;
        }
        double greatest = IsothermalFlow.massFlow_kgPerS(101_325, choke, 5, 0.001, 84_000);
        assertThat(greatest).isGreaterThanOrEqualTo(before);
        assertClose("below the choke", IsothermalFlow.massFlow_kgPerS(101_325, 0, 5, 0.001, 84_000), greatest, 1e-14);
    }

    @Test
    void double_length_at_half_friction_passes_the_same() {
        double f = 0.02;
        double d = 0.0475;
        double shortLeg = IsothermalFlow.massFlow_kgPerS(101_325, 80_000, f * 10 / d, area_m2(d), 84_000);
        double longLeg = IsothermalFlow.massFlow_kgPerS(101_325, 80_000, f / 2 * 20 / d, area_m2(d), 84_000);
        assertClose("flow", longLeg, shortLeg, 1e-15);
    }

    @Test
    void no_flow_loses_no_pressure() {
        assertThat(IsothermalFlow.outletPressure_Pa(101_325, 0, 5, 0.001, 84_000))
                .isEqualTo(101_325);
        assertThat(IsothermalFlow.massFlow_kgPerS(101_325, 101_325, 5, 0.001, 84_000))
                .isZero();
    }

    @ParameterizedTest
    @MethodSource("choked")
    void the_choked_flow_leaves_at_the_choke_pressure(Row row) {
        double area = area_m2(row.value("diameter_m"));
        double rt = R_DRY * row.value("temperature_K");
        double p1 = row.value("p1_Pa");
        double w = IsothermalFlow.chokedFlow_kgPerS(p1, resistance(row), area, rt);
        double p2 = IsothermalFlow.outletPressure_Pa(p1, w, resistance(row), area, rt);
        assertClose("p2", p2, row.value("p2_choke_Pa"), 1e-5);
    }

    @Test
    void a_flow_no_vacuum_can_draw_is_refused_with_the_greatest_one_named() {
        assertThatThrownBy(() -> IsothermalFlow.outletPressure_Pa(101_325, 1, 5, 0.001, 84_000))
                .hasMessageContaining("chokes at");
        assertThatThrownBy(() -> IsothermalFlow.entryPressure_Pa(101_325, 1, 0.5, 0.001, 84_000))
                .hasMessageContaining("cannot pass");
    }

    @Test
    void entry_from_still_air_satisfies_its_own_balance() {
        double p = IsothermalFlow.entryPressure_Pa(101_325, 0.06, 0.5, 0.001, 84_000);
        double head = 60 * 60 * 84_000.0 / (2 * p);
        assertClose("drop", 101_325 - p, 1.5 * head, 1e-12);
    }
}
