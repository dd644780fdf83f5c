package dustwright.engine.tubing;

import dustwright.engine.hazard.ChargePath;
import dustwright.engine.quantity.Length;
import java.util.Optional;

/**
 * A size of tubing.
 *
 * @param bore inside diameter
 * @param outside outside diameter, by which thin-wall tube is called; absent where only the bore is known
 * @param charge how charge leaves it, bridged at every coupling as the plant is to be built
 */
public record Tube(String id, Length bore, Optional<Length> outside, Wall wall, ChargePath charge) {
    /** A tube of which nobody has said how charge leaves it. */
    public Tube(String id, Length bore, Optional<Length> outside, Wall wall) {
        this(id, bore, outside, wall, ChargePath.UNKNOWN);
    }
}
