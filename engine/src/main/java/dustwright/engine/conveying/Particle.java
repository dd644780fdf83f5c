package dustwright.engine.conveying;

import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Range;

/**
 * The particle that stands for a dust: a sphere of its median size by mass.
 *
 * @param size diameter, 1 µm to 20 mm
 * @param density of the solid itself, not of the heap, 50 to 25 000 kg/m³
 */
public record Particle(Length size, Density density) {
    private static final Range SIZE = new Range("a particle", "d", "m", 1e-6, 0.02);
    private static final Range DENSITY = new Range("a particle", "ρ_p", "kg/m³", 50, 25_000);

    public Particle {
        SIZE.check(size.metres());
        DENSITY.check(density.kgPerCubicMetre());
    }
}
