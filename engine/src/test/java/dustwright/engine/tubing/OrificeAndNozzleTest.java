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

class OrificeAndNozzleTest {
    private static final double R_DRY = 287.05287;

    static List<Row> expansibilities() {
        return Reference.rows("pipe-orifice-expansibility.csv");
    }

    static List<Row> meters() {
        return Reference.rows("pipe-orifice-meter.csv");
    }

    static List<Row> nozzles() {
        return Reference.rows("pipe-bleed-nozzle.csv");
    }

    @ParameterizedTest
    @MethodSource("expansibilities")
    void expansibility_is_that_of_the_standard_of_2003(Row row) {
        Orifice orifice = new Orifice(0.1, 0.1 * row.value("beta"));
        double ratio = row.value("p2_over_p1");
        row.assertClose("epsilon_orifice_iso5167_2003", orifice.expansibility(ratio));
    }

    @ParameterizedTest
    @MethodSource("meters")
    void a_meter_reads_the_tabulated_flow_and_loses_the_tabulated_pressure(Row row) {
        Orifice orifice = new Orifice(row.value("diameter_m"), row.value("bore_m"));
        double p1 = row.value("p1_Pa");
        double p2 = row.value("p2_Pa");
        double w = orifice.airFlow_kgPerS(p1, p2, row.value("density_kg_m3"), row.value("viscosity_Pa_s"));
        double reynolds = Friction.reynolds(w, orifice.bore_m(), row.value("viscosity_Pa_s"));
        double c = orifice.dischargeCoefficient(reynolds);

        row.assertClose("mass_flow_kg_s", w);
        row.assertClose("reynolds_pipe", reynolds);
        row.assertClose("discharge_coefficient", c);
        row.assertClose("expansibility", orifice.expansibility(p2 / p1));
        row.assertClose("permanent_loss_Pa", orifice.permanentLoss_Pa(p1 - p2, c));
        row.assertClose("K_permanent_on_pipe_velocity", orifice.k(c));

        double epsilon = orifice.expansibility(p2 / p1);
        double area = Math.PI / 4 * orifice.bore_m() * orifice.bore_m();
        double head_Pa = w * w / (2 * row.value("density_kg_m3") * area * area);
        assertClose(
                "loss of a gas", orifice.k(c) / (epsilon * epsilon) * head_Pa, row.value("permanent_loss_Pa"), 1e-4);
    }

    @ParameterizedTest
    @MethodSource("nozzles")
    void an_opening_passes_the_tabulated_flow_and_chokes_where_it_should(Row row) {
        double area = Math.PI / 4 * Math.pow(row.value("throat_diameter_m"), 2);
        double rt = R_DRY * row.value("temperature0_K");
        double p0 = row.value("p0_Pa");
        double p2 = row.value("p2_Pa");
        row.assertClose("mass_flow_cd1_kg_s", Nozzle.massFlow_kgPerS(area, p0, p2, rt));
        row.assertClose("mass_flow_cd06_kg_s", Nozzle.massFlow_kgPerS(0.6 * area, p0, p2, rt));
        row.assertClose("critical_ratio", Nozzle.CRITICAL_RATIO);
        assertThat(Nozzle.choked(p0, p2)).isEqualTo(!row.text("regime").equals("subcritical"));
    }

    @Test
    void critical_mass_flux_of_a_room_is_the_handbook_figure() {
        double flux = Nozzle.massFlow_kgPerS(1, 101_325, 0, R_DRY * 293.15);
        assertClose("G*", flux, 239.2, 5e-4);
    }

    @Test
    void an_opening_lets_out_as_it_lets_in_and_nothing_at_rest() {
        double in = Nozzle.massFlow_kgPerS(1e-4, 101_325, 90_000, 84_000);
        assertThat(Nozzle.massFlow_kgPerS(1e-4, 90_000, 101_325, 84_000)).isEqualTo(-in);
        assertThat(Nozzle.massFlow_kgPerS(1e-4, 101_325, 101_325, 84_000)).isZero();
    }

    @Test
    void a_small_opening_at_a_small_difference_obeys_the_incompressible_law() {
        double rt = 84_000;
        double flow = Nozzle.massFlow_kgPerS(1e-4, 101_325, 101_325 - 0.01, rt);
        assertClose("w", flow, 1e-4 * Math.sqrt(2 * 101_325 / rt * 0.01), 1e-6);
    }

    @Test
    void an_orifice_outside_the_standard_is_refused() {
        assertThatThrownBy(() -> new Orifice(0.03, 0.02)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Orifice(0.1, 0.08)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Orifice(0.1, 0.05).expansibility(0.5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Orifice(0.1, 0.05).dischargeCoefficient(1000))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Orifice(0.1, 0.07).dischargeCoefficient(7000))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("above 0.56");
    }
}
