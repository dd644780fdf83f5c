package dustwright.engine.plant;

import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.MassFlow;

/** A point whose pressure or supply is given from outside: an as-built reading, a textbook boundary. */
public sealed interface Held {
    /** Id of the point. */
    String point();

    /** The point's pressure is given. */
    record Pressure(String point, AbsolutePressure pressure) implements Held {}

    /** Air enters the network at the point (negative: leaves it). */
    record Supply(String point, MassFlow into) implements Held {}
}
