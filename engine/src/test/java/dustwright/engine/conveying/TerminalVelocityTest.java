package dustwright.engine.conveying;

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

class TerminalVelocityTest {
    static List<Row> spheres() {
        return Reference.rows("conveying/terminal-velocity.csv");
    }

    @ParameterizedTest
    @MethodSource("spheres")
    void spheres_fall_as_published(Row row) {
        Particle particle = Streams.particle(row.value("particle_diameter_m"), row.value("particle_density_kg_m3"));
        double air = row.value("gas_density_kg_m3");
        double viscosity = row.value("gas_viscosity_Pa_s");
        double falls = TerminalVelocity.ofSphere(particle, air, viscosity).metresPerSecond();
        row.assertClose("terminal_velocity_m_s", falls);
        // the same law as the table's first column: far closer than its tolerance
        assertClose(row + " same drag law", falls, row.value("terminal_velocity_m_s"), 1e-6);
        assertClose(
                row + " drag", SphereDrag.barati(row.value("reynolds_particle")), row.value("drag_coefficient"), 1e-5);
        row.assertClose(
                "terminal_velocity_schiller_naumann_m_s",
                TerminalVelocity.bySchillerNaumann(particle, air, viscosity).metresPerSecond());
        if (row.value("terminal_velocity_stokes_m_s") * air * particle.size().metres() / viscosity <= 0.3) {
            assertClose(
                    row + " Stokes",
                    TerminalVelocity.byStokes(particle, air, viscosity).metresPerSecond(),
                    row.value("terminal_velocity_stokes_m_s"),
                    1e-6);
        } else {
            assertThatThrownBy(() -> TerminalVelocity.byStokes(particle, air, viscosity))
                    .isInstanceOf(OutOfRangeException.class)
                    .hasMessageContaining("Re");
        }
    }

    @Test
    void stokes_law_is_refused_for_coarse_sand() {
        Particle sand = Streams.particle(500e-6, 2650);
        assertThatThrownBy(() -> TerminalVelocity.byStokes(sand, 1.2041, 1.8134e-5))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void larger_and_heavier_spheres_fall_faster_and_thinner_air_holds_them_less() {
        double before = 0;
        for (double size = 1e-6; size < 0.006; size *= 1.3) {
            double falls = TerminalVelocity.ofSphere(Streams.particle(size, 2650), 1.2, 1.8e-5)
                    .metresPerSecond();
            assertThat(falls).isGreaterThan(before);
            assertThat(TerminalVelocity.ofSphere(Streams.particle(size, 3000), 1.2, 1.8e-5)
                            .metresPerSecond())
                    .isGreaterThan(falls);
            assertThat(TerminalVelocity.ofSphere(Streams.particle(size, 2650), 0.7, 1.8e-5)
                            .metresPerSecond())
                    .isGreaterThan(falls * (1 + 1e-5));
            before = falls;
        }
    }

    @Test
    void drag_laws_meet_stokes_in_creeping_flow_and_keep_their_range() {
        assertClose("Barati", SphereDrag.barati(0.005), SphereDrag.stokes(0.005), 1e-12);
        assertClose("Barati at 0.1", SphereDrag.barati(0.1), SphereDrag.stokes(0.1), 0.03);
        assertClose("three pieces", SphereDrag.threePieces(0.1), SphereDrag.stokes(0.1), 1e-12);
        assertClose("Barati", SphereDrag.barati(200), 0.7682237950, 1e-9); // printed in the paper's table
        assertThatThrownBy(() -> SphereDrag.barati(3e5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> SphereDrag.stokes(0.31)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void a_particle_of_no_size_is_refused() {
        assertThatThrownBy(() -> Streams.particle(0, 2650)).isInstanceOf(OutOfRangeException.class);
    }
}
