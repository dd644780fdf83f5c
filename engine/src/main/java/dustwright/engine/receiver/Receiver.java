package dustwright.engine.receiver;

import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Length;
import java.util.Optional;

/**
 * The vessel that separates, filters and holds.
 *
 * @param diameter of the shell; absent where not known
 * @param freeArea cross-section left between the filter elements; absent where not known, and then no can velocity is said
 */
public record Receiver(Optional<Length> diameter, Optional<Area> freeArea) {}
