package dustwright.engine.receiver;

import dustwright.engine.quantity.Angle;
import dustwright.engine.quantity.Length;
import java.util.Optional;

/**
 * What a dust is like in a hopper, from a shear cell and simpler tests; absent where not measured.
 *
 * @param wallFriction angle between the dust and the hopper's wall
 * @param effectiveAngle effective angle of internal friction
 * @param flowFunction unconfined strength over consolidation
 * @param repose angle of repose
 * @param largestLump largest piece that gets in
 */
public record HopperDust(
        Optional<Angle> wallFriction,
        Optional<Angle> effectiveAngle,
        Optional<FlowFunction> flowFunction,
        Optional<Angle> repose,
        Optional<Length> largestLump) {
    /** Nothing measured. */
    public static final HopperDust UNKNOWN =
            new HopperDust(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
