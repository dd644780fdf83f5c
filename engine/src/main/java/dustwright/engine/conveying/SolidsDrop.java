package dustwright.engine.conveying;

import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Velocity;
import java.util.Optional;

/**
 * Extra pressure drop of a leg that carries dust, in its parts, at one flow: the calculation sheet of {@link SolidsLoss}.
 *
 * @param acceleration of dust fed in at the upstream end (equation CON-32)
 * @param frictionLevel at the wall of level stretches (equations CON-33, CON-35)
 * @param frictionUpright at the wall of rising and falling stretches (equation CON-34)
 * @param lift weight of the dust in rising stretches (equation CON-37)
 * @param bends setting dust in motion again after bends (equation CON-38)
 * @param levelFriction form of the friction in level stretches
 * @param path the way of the dust, in the direction of the flow
 * @param gasVelocity at the leg's mean density
 * @param particleLevel particle velocity in level stretches (equation CON-30)
 * @param particleRising particle velocity in rising stretches (equation CON-31); absent where nothing rises
 * @param leastDropVelocity gas velocity at which the leg loses least in all; absent where nothing rises
 * @param levelFrictionOverWeight wall friction in level stretches over the weight of the dust in them [-]; 0 where none lies level
 * @param held true where the air is slower than that: the parts are those at the velocity of least drop, and the state is no operating
 *     state
 */
public record SolidsDrop(
        PressureDifference acceleration,
        PressureDifference frictionLevel,
        PressureDifference frictionUpright,
        PressureDifference lift,
        PressureDifference bends,
        LevelFriction levelFriction,
        SolidsPath path,
        Velocity gasVelocity,
        Velocity particleLevel,
        Optional<Velocity> particleRising,
        Optional<Velocity> leastDropVelocity,
        double levelFrictionOverWeight,
        boolean held) {
    /** Wall friction of this many times the weight of the dust is more than a straight level tube can plausibly cause [-]. */
    public static final double PLAUSIBLE_FRICTION_OVER_WEIGHT = 5;

    /** At the wall, however it lies. */
    public PressureDifference friction() {
        return new PressureDifference(frictionLevel.pascals() + frictionUpright.pascals());
    }

    /** All parts together (equation CON-39). */
    public PressureDifference total() {
        return new PressureDifference(acceleration.pascals() + friction().pascals() + lift.pascals() + bends.pascals());
    }

    /** The gas velocity at which the parts are taken: that of least drop where they are held there. */
    public Velocity takenAt() {
        return held ? leastDropVelocity.orElse(gasVelocity) : gasVelocity;
    }

    /** Whether the wall friction is an upper estimate, as Hinkle's is for fine dust; the limit is our own reading. */
    public boolean frictionIsUpperEstimate() {
        return levelFrictionOverWeight > PLAUSIBLE_FRICTION_OVER_WEIGHT;
    }

    /** How far the gas velocity lies above that of least drop [-]: 0 at it, negative below; absent where nothing rises. */
    public Optional<Double> distanceToLeastDrop() {
        return leastDropVelocity.map(least -> gasVelocity.metresPerSecond() / least.metresPerSecond() - 1);
    }
}
