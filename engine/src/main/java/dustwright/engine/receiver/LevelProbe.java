package dustwright.engine.receiver;

import dustwright.engine.quantity.Length;
import java.util.Optional;

/**
 * The probe that tells a full receiver.
 *
 * @param place around the shell; absent where not known
 * @param height above the hopper's outlet; absent where not known
 */
public record LevelProbe(Optional<SidePlace> place, Optional<Length> height) {}
