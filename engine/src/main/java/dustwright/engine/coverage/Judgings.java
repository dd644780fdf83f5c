package dustwright.engine.coverage;

import dustwright.engine.plant.Plant;

/** How a changed plant's states are judged. */
@FunctionalInterface
public interface Judgings {
    /** The judging of one plant. */
    Judging of(Plant plant);
}
