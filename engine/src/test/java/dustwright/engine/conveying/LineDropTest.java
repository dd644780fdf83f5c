package dustwright.engine.conveying;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.OutOfRangeException;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LineDropTest {
    static List<Row> lines() {
        return Reference.rows("conveying/line-pressure.csv");
    }

    static List<Row> accelerations() {
        return Reference.rows("conveying/acceleration.csv");
    }

    @ParameterizedTest
    @MethodSource("lines")
    void every_term_is_that_of_the_textbook(Row row) {
        LineDrop drop = drop(row);
        row.assertClose("particle_velocity_horizontal_m_s", drop.particleVelocityLevel_mPerS());
        row.assertClose("voidage_horizontal", drop.voidageLevel());
        row.assertClose("gas_velocity_horizontal_m_s", drop.gasVelocityLevel_mPerS());
        row.assertClose("reynolds_particle_slip", drop.slipReynolds());
        row.assertClose("drag_coefficient", drop.drag());
        row.assertClose("f_particle_fanning", drop.solidsFanning());
        row.assertClose("f_gas_fanning", drop.gasFanning());
        row.assertClose("dp_gas_acceleration_Pa", drop.gasAcceleration_Pa());
        row.assertClose("dp_solids_acceleration_Pa", drop.halfSolidsAcceleration_Pa());
        row.assertClose("dp_gas_friction_horizontal_Pa", drop.gasFrictionLevel_Pa());
        row.assertClose("dp_solids_friction_horizontal_Pa", drop.solidsFrictionLevel_Pa());
        row.assertClose("particle_velocity_vertical_m_s", drop.particleVelocityRising_mPerS());
        row.assertClose("voidage_vertical", drop.voidageRising());
        row.assertClose("dp_gas_friction_vertical_Pa", drop.gasFrictionRising_Pa());
        row.assertClose("dp_solids_friction_vertical_konno_saito_Pa", drop.solidsFrictionRising_Pa());
        row.assertClose("dp_solids_weight_Pa", drop.solidsWeight_Pa());
        row.assertClose("dp_gas_weight_Pa", drop.gasWeight_Pa());
        row.assertClose("dp_vertical_total_Pa", drop.rising_Pa());
        row.assertClose("dp_bends_Pa", drop.bends_Pa(), 1e-3);
        // the printed sums hold half the momentum of the dust; ours hold all of it
        row.assertClose("dp_horizontal_total_Pa", drop.level_Pa() - drop.halfSolidsAcceleration_Pa());
        row.assertClose("dp_total_Pa", drop.total_Pa() - drop.halfSolidsAcceleration_Pa());
        Reference.report(
                row, row.text("case") + ": full momentum " + (float) drop.total_Pa() + " Pa; " + row.text("note"));
    }

    @ParameterizedTest
    @MethodSource("accelerations")
    void setting_dust_in_motion_takes_flux_times_velocity(Row row) {
        double flux = row.value("solids_flow_kg_s") / (Math.PI / 4 * Math.pow(row.value("pipe_diameter_m"), 2));
        row.assertClose("solids_flux_kg_m2s", flux);
        // a leg that only sets dust in motion, at the gas velocity that gives the row's particle velocity
        double lag = SolidsFriction.lag(new Particle(new Length(2e-4), new Density(1500)));
        double gas_mPerS = row.value("particle_velocity_m_s") / (1 - lag);
        SolidsLoss starts = Legs.loss(SolidsPath.level(0, true), row.value("pipe_diameter_m"), 2e-4, 1500);
        double density = row.value("gas_density_kg_m3");
        double air_kgPerS = gas_mPerS * density * row.value("solids_flow_kg_s") / flux;
        double starting = Legs.drop_Pa(starts, air_kgPerS, density, row.value("solids_flow_kg_s"));
        row.assertClose("dp_acceleration_momentum_Pa", starting);
        row.assertClose("dp_acceleration_rhodes_half_Pa", starting / 2);
    }

    @Test
    void dust_that_falls_faster_than_the_air_rises_has_no_line_drop() {
        Conveyed shot = Streams.of(0.1, 1e-3, 7800, 1.2, 0.06);
        LineDrop.Line line = new LineDrop.Line(10, 5, 2, OptionalDouble.empty());
        assertThatThrownBy(() -> LineDrop.of(line, shot, 12))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("U − U_T");
    }

    @Test
    void rows_of_continuity_and_of_the_trades_constants_agree() {
        for (Row row : Reference.rows("conveying/mills-velocity.csv")) {
            double air = row.value("air_mass_flow_kg_s");
            double temperature = row.value("temperature_K");
            double bore = row.value("diameter_m");
            double pressure = row.value("pressure_Pa");
            double velocity = MillsVelocity.velocity_mPerS(air, temperature, bore, pressure);
            assertClose(row + " Mills", velocity, row.value("velocity_mills_0p365_m_s"), 1e-6);
            row.assertClose("velocity_exact_m_s", velocity);
            double exact = row.value("velocity_exact_m_s");
            double freeAir = MillsVelocity.freeAir_m3PerS(exact, temperature, bore, pressure);
            row.assertClose("free_air_exact_m3_s", freeAir);
            row.assertClose("free_air_mills_2p23_m3_s", freeAir);
        }
    }

    private static LineDrop drop(Row row) {
        OptionalDouble fanning =
                row.text("case").contains("fg0.005") ? OptionalDouble.of(0.005) : OptionalDouble.empty();
        LineDrop.Line line = new LineDrop.Line(
                row.value("length_horizontal_m"), row.value("length_vertical_m"), (int) row.value("bends"), fanning);
        return LineDrop.of(line, Streams.of(row), row.value("U_superficial_m_s"));
    }
}
