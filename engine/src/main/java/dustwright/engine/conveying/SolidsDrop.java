package dustwright.engine.conveying;

import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Velocity;
import java.util.Optional;

/**
 * Extra pressure drop of a leg that carries dust, in its parts, at one flow: the calculation sheet of {@link SolidsLoss}.
 *
 * @param acceleration of dust fed in at the upstream end (equation CON-32)
 * @param friction at the wall (equations CON-33 to CON-36)
 * @param lift weight of the dust in rising stretches (equation CON-37)
 * @param bends setting dust in motion again after bends (equation CON-38)
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
        PressureDifference friction,
        PressureDifference lift,
        PressureDifference bends,
        Velocity gasVelocity,
        Velocity particleLevel,
        Optional<Velocity> particleRising,
        Optional<Velocity> leastDropVelocity,
        double levelFrictionOverWeight,
        boolean held) {
    /** Wall friction of this many times the weight of the dust is more than a straight level tube can plausibly cause [-]. */
    public static final double PLAUSIBLE_FRICTION_OVER_WEIGHT = 5;

    /** All parts together. */
    public PressureDifference total() {
        return new PressureDifference(acceleration.pascals() + friction.pascals() + lift.pascals() + bends.pascals());
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
