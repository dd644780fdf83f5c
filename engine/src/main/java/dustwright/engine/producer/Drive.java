package dustwright.engine.producer;

import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;

/** How a producer is turned. */
public sealed interface Drive {
    /** Belt or direct: one speed. */
    record Fixed(RotationalSpeed speed) implements Drive {}

    /** A drive that holds a vacuum at the producer between its least and greatest speed. */
    record Holding(RotationalSpeed least, RotationalSpeed greatest, PressureDifference vacuum) implements Drive {}
}
