package dustwright.engine.plant;

import dustwright.engine.tubing.Position;
import java.util.Optional;

/** A named place where tubing meets or ends. */
public record Point(String id, Optional<Position> at) {}
