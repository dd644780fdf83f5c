package dustwright.engine.electrical;

import java.util.Optional;

/** What a plant file says of supply and panel; what it does not say stays unknown. */
public record Electrical(Optional<Supply> supply, Optional<Panel> panel) {
    /** Nothing is said. */
    public static final Electrical UNKNOWN = new Electrical(Optional.empty(), Optional.empty());
}
