package dustwright.engine.conveying;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ChokingTest {
    static List<Row> choking() {
        return Reference.rows("conveying/choking.csv");
    }

    @ParameterizedTest
    @MethodSource("choking")
    void chokes_where_punwani_says(Row row) {
        double flux = row.value("solids_flux_kg_m2s");
        double heavy = row.value("particle_density_kg_m3");
        double bore = row.value("pipe_diameter_m");
        double terminal = row.value("terminal_velocity_m_s");
        Choking punwani = Choking.punwani(flux, heavy, row.value("gas_density_kg_m3"), bore, terminal)
                .orElseThrow();
        row.assertClose("U_choking_punwani_m_s", punwani.velocity_mPerS());
        row.assertClose("voidage_punwani", punwani.voidage());

        // Yang's and Leung's columns are remembered: printed, never failed on
        Choking yang = Choking.yang(flux, heavy, bore, terminal).orElseThrow();
        Reference.report(
                row,
                "Yang 1975 from memory " + row.value("U_choking_yang1975_m_s") + " m/s, here "
                        + (float) yang.velocity_mPerS() + "; Leung 1971 from memory "
                        + row.value("U_choking_leung1971_m_s") + " m/s, here "
                        + (float) Choking.leung_mPerS(flux, heavy, terminal));
    }

    @Test
    void yang_falls_together_with_punwani_in_air_of_normal_density() {
        // 2 g / 0.01 against 2250 / 1.2^0.77: the two constants are 0.3 % apart
        Choking punwani = Choking.punwani(52.3, 2500, 1.2, 0.078, 0.545).orElseThrow();
        Choking yang = Choking.yang(52.3, 2500, 0.078, 0.545).orElseThrow();
        assertClose("velocity", yang.velocity_mPerS(), punwani.velocity_mPerS(), 2e-3);
    }

    @Test
    void the_voidage_found_satisfies_both_equations() {
        SplittableRandom random = new SplittableRandom(20261125);
        for (int n = 0; n < 2000; n++) {
            double flux = Math.pow(10, -2 + 4.5 * random.nextDouble());
            double heavy = 300 + 8000 * random.nextDouble();
            double air = 0.4 + random.nextDouble();
            double bore = 0.03 + 0.2 * random.nextDouble();
            double terminal = 10 * random.nextDouble();
            Choking.punwani(flux, heavy, air, bore, terminal).ifPresent(found -> {
                double e = found.voidage();
                double slip = flux / heavy / (1 - e);
                assertClose("continuity", found.velocity_mPerS(), e * (slip + terminal), 1e-9);
                assertClose(
                        "choking", 2250 * bore * (Math.pow(e, -4.7) - 1) / (slip * slip), Math.pow(air, 0.77), 1e-7);
            });
        }
    }

    @Test
    void a_tube_more_than_four_tenths_full_has_no_answer() {
        assertThat(Choking.punwani(1e5, 1000, 1.2, 0.05, 1)).isEmpty();
        Conveyed flood = Streams.of(200, 1e-3, 1000, 1.2, 0.05);
        assertThat(VelocityLaw.PUNWANI_1976.about(flood)).isInstanceOf(LawAnswer.NoAnswer.class);
    }

    @Test
    void a_tube_without_dust_chokes_at_the_terminal_velocity_of_one_particle() {
        Choking none = Choking.punwani(0, 2500, 1.2, 0.078, 0.545).orElseThrow();
        Choking trace = Choking.punwani(1e-9, 2500, 1.2, 0.078, 0.545).orElseThrow();
        assertThat(none).isEqualTo(new Choking(0.545, 1));
        assertClose("trace", trace.velocity_mPerS(), none.velocity_mPerS(), 0.01);
    }
}
