package dustwright.engine.tubing;

import dustwright.engine.quantity.ElectricResistance;
import dustwright.engine.quantity.Length;
import java.util.Optional;

/**
 * A hose with the length it is used at.
 *
 * @param resistance from cuff to cuff, as measured; absent where not known
 */
public record Hose(String id, Length bore, Length length, Wall wall, Optional<ElectricResistance> resistance) {
    /** A hose whose electric resistance nobody has stated. */
    public Hose(String id, Length bore, Length length, Wall wall) {
        this(id, bore, length, wall, Optional.empty());
    }
}
