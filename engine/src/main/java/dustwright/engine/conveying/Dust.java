package dustwright.engine.conveying;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Velocity;
import java.util.Optional;

/**
 * A dust the plant picks up.
 *
 * @param minimumVelocity least transport velocity, from the class or stated in the plant file
 * @param basis where the minimum velocity comes from
 * @param looseBulkDensity absent where not known
 * @param tappedBulkDensity after settling; absent where not known
 * @param particle absent where size or density of the particles is not known: what it costs to carry it is then unknown
 * @param levelFriction form of its friction in level tubes
 */
public record Dust(
        String id,
        String name,
        Optional<DustClass> dustClass,
        Velocity minimumVelocity,
        Source basis,
        Optional<Density> looseBulkDensity,
        Optional<Density> tappedBulkDensity,
        Optional<Particle> particle,
        LevelFriction levelFriction) {}
