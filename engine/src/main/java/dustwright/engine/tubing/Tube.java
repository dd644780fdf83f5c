package dustwright.engine.tubing;

import dustwright.engine.quantity.Length;
import java.util.Optional;

/**
 * A size of tubing.
 *
 * @param bore inside diameter
 * @param outside outside diameter, by which thin-wall tube is called; absent where only the bore is known
 */
public record Tube(String id, Length bore, Optional<Length> outside, Wall wall) {}
