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
 */
public record Dust(
        String id,
        String name,
        Optional<DustClass> dustClass,
        Velocity minimumVelocity,
        Source basis,
        Optional<Density> looseBulkDensity) {}
