package dustwright.engine.receiver;

import dustwright.engine.quantity.Length;
import java.util.Optional;

/**
 * Where and how tubing enters a receiver.
 *
 * @param place around the shell; absent where not known
 * @param lowEdge height of its lower edge above the hopper's outlet; absent where not known
 * @param slot width and height of a tangential inlet; absent where the air enters plainly
 */
public record ReceiverInlet(Optional<SidePlace> place, Optional<Length> lowEdge, Optional<Slot> slot) {
    /** Opening of a tangential inlet. */
    public record Slot(Length width, Length height) {}
}
