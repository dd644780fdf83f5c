package dustwright.engine.tubing;

import dustwright.engine.quantity.Length;

/** How a tube's or hose's wall resists the air. */
public sealed interface Wall {
    /** A wall of even roughness: friction by Colebrook. */
    record Rough(Length roughness) implements Wall {}

    /** Annular corrugations of a pitch: friction by Hawthorne, an upper estimate for spirals and worn hose. */
    record Corrugated(Length pitch) implements Wall {}

    /** A stated Darcy friction factor [-], as textbooks and measurements give it. */
    record FixedFactor(double darcy) implements Wall {
        public FixedFactor {
            if (!(darcy >= 0 && darcy <= 1)) {
                throw new IllegalArgumentException("Darcy friction factor " + darcy + " is outside 0 to 1");
            }
        }
    }
}
