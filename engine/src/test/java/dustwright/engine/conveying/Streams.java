package dustwright.engine.conveying;

import dustwright.engine.Reference.Row;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.quantity.Viscosity;

/** Streams of dust for tests. */
final class Streams {
    private static final double VISCOSITY_PaS = 1.84e-5;

    private Streams() {}

    static Particle particle(double size_m, double density_kgPerM3) {
        return new Particle(new Length(size_m), new Density(density_kgPerM3));
    }

    static Conveyed of(double solids_kgPerS, double size_m, double particleDensity, double airDensity, double bore_m) {
        return Conveyed.of(
                new MassFlow(solids_kgPerS),
                particle(size_m, particleDensity),
                new Density(airDensity),
                new Viscosity(VISCOSITY_PaS),
                new Length(bore_m));
    }

    /** The stream of a row, with the row's own terminal velocity. */
    static Conveyed of(Row row) {
        return new Conveyed(
                new MassFlow(row.value("solids_flow_kg_s")),
                particle(row.value("particle_diameter_m"), row.value("particle_density_kg_m3")),
                new Density(row.value("gas_density_kg_m3")),
                new Viscosity(row.value("gas_viscosity_Pa_s")),
                new Length(row.value("pipe_diameter_m")),
                new Velocity(row.value("terminal_velocity_m_s")));
    }
}
