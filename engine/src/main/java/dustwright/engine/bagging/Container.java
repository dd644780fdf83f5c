package dustwright.engine.bagging;

import dustwright.engine.quantity.Mass;
import dustwright.engine.quantity.Volume;
import java.util.Optional;

/** What the dust falls into. Volume to the level probe, mass to the safe working load: whichever comes first. */
public record Container(Kind kind, Volume volume, Optional<Mass> safeWorkingLoad) {
    /** Kind of container. */
    public enum Kind {
        BULK_BAG,
        DRUM
    }
}
