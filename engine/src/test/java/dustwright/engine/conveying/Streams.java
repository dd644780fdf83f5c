package dustwright.engine.conveying;

import dustwright.engine.Reference.Row;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.quantity.Viscosity;
import dustwright.engine.receiver.ClothDust;
import dustwright.engine.receiver.HopperDust;
import java.util.Optional;

/** Streams of dust for tests. */
final class Streams {
    private static final double VISCOSITY_PaS = 1.84e-5;

    private Streams() {}

    static Particle particle(double size_m, double density_kgPerM3) {
        return new Particle(new Length(size_m), new Density(density_kgPerM3));
    }

    /** A dust of which only the name and what is measured to carry it matters. */
    static Dust dust(String id, Optional<Velocity> carrying) {
        return new Dust(
                id,
                id,
                Optional.empty(),
                new Velocity(15),
                Source.entered(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                LevelFriction.YANG,
                carrying,
                Optional.empty(),
                ClothDust.UNKNOWN,
                HopperDust.UNKNOWN,
                DustCard.UNKNOWN);
    }

    static Dust dust(String id) {
        return dust(id, Optional.empty());
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
