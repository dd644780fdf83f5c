package dustwright.engine.conveying;

import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Range;
import dustwright.engine.quantity.Ratio;
import java.util.Optional;

/**
 * The particle that stands for a dust: a sphere of its median size by mass.
 *
 * @param size diameter, 1 µm to 20 mm
 * @param density of the solid itself, not of the heap, 50 to 25 000 kg/m³
 * @param levelSpeed its velocity in level tubes over that of the air, as measured [-]; absent where CON-30 gives it
 */
public record Particle(Length size, Density density, Optional<Ratio> levelSpeed) {
    private static final Range SIZE = new Range("a particle", "d", "m", 1e-6, 0.02);
    private static final Range SPEED = new Range("a particle", "c/v", "-", 0.05, 1);
    private static final Range DENSITY = new Range("a particle", "ρ_p", "kg/m³", 50, 25_000);

    public Particle {
        SIZE.check(size.metres());
        DENSITY.check(density.kgPerCubicMetre());
        levelSpeed.ifPresent(speed -> SPEED.check(speed.value()));
    }

    /** One whose velocity in level tubes nobody measured. */
    public Particle(Length size, Density density) {
        this(size, density, Optional.empty());
    }
}
