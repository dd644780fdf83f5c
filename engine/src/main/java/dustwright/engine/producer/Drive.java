package dustwright.engine.producer;

import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;

/** How a producer is turned. */
public sealed interface Drive {
    /** Belt or direct: one speed. */
    record Fixed(RotationalSpeed speed) implements Drive {}

    /** A drive that holds a vacuum at the producer between its least and greatest speed. */
    record Holding(RotationalSpeed least, RotationalSpeed greatest, PressureDifference vacuum) implements Drive {
        /** Share of a set-point within which it counts as held: common practice, no source. */
        private static final double BAND = 0.01;

        /** Whether a vacuum at the producer counts as the one that is asked: within 1 %. */
        public boolean holds(PressureDifference reached) {
            return Math.abs(reached.pascals() / vacuum.pascals() - 1) <= BAND;
        }
    }
}
