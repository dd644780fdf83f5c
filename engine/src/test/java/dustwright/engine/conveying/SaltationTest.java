package dustwright.engine.conveying;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SaltationTest {
    static List<Row> saltation() {
        return Reference.rows("conveying/saltation.csv");
    }

    @ParameterizedTest
    @MethodSource("saltation")
    void each_author_gives_the_published_velocity(Row row) {
        double solids = row.value("solids_flow_kg_s");
        double heavy = row.value("particle_density_kg_m3");
        double size = row.value("particle_diameter_m");
        double air = row.value("gas_density_kg_m3");
        double bore = row.value("pipe_diameter_m");
        double terminal = row.value("terminal_velocity_m_s");
        double rizk = Saltation.rizk_mPerS(solids, size, air, bore);
        row.assertClose("U_rizk_m_s", rizk);
        row.assertClose("U_matsumoto1974_m_s", Saltation.matsumoto1974_mPerS(solids, heavy, size, air, bore, terminal));
        row.assertClose("U_matsumoto1975_m_s", Saltation.matsumoto1975_mPerS(solids, heavy, size, air, bore, terminal));
        row.assertClose("U_matsumoto1977_m_s", Saltation.matsumoto1977_mPerS(solids, heavy, size, air, bore, terminal));
        row.assertClose("U_schade_m_s", Saltation.schade_mPerS(solids, heavy, size, air, bore));
        row.assertClose("U_weber_m_s", Saltation.weber_mPerS(solids, size, air, bore, terminal));
        row.assertClose(
                "U_geldart_ling_m_s", Saltation.geldartLing_mPerS(solids, air, bore, row.value("gas_viscosity_Pa_s")));
        row.assertClose("loading_at_rizk_kg_kg", solids / (air * rizk * Math.PI / 4 * bore * bore));
    }

    @Test
    void more_feed_needs_more_velocity_and_denser_air_needs_less() {
        for (VelocityLaw law : VelocityLaw.values()) {
            double light = velocity(law, 0.02, 1.0);
            assertThat(velocity(law, 0.04, 1.0)).as("%s, double feed", law).isGreaterThan(light);
            if (law != VelocityLaw.YANG_1975 && law != VelocityLaw.LEUNG_1971) {
                assertThat(velocity(law, 0.02, 1.2)).as("%s, denser air", law).isLessThan(light);
            }
        }
    }

    @Test
    void no_feed_needs_no_velocity_to_keep_it_off_the_floor() {
        assertClose("Rizk", Saltation.rizk_mPerS(0, 1e-4, 1.2, 0.078), 0, 0);
        assertClose("Schade", Saltation.schade_mPerS(0, 2500, 1e-4, 1.2, 0.078), 0, 0);
    }

    private static double velocity(VelocityLaw law, double solids_kgPerS, double density_kgPerM3) {
        Conveyed c = Streams.of(solids_kgPerS, 5e-4, 2000, density_kgPerM3, 0.06);
        return law.about(c)
                .match(
                        v -> v.metresPerSecond(),
                        outside -> outside.extrapolated().metresPerSecond(),
                        why -> {
                            throw new AssertionError(why);
                        });
    }
}
