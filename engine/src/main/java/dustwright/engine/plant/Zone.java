package dustwright.engine.plant;

import java.util.Optional;

/** An area of the plant and how many may vacuum in it at once; absent where the plant file sets no limit. */
public record Zone(String id, String name, Optional<Integer> users) {}
