package dustwright.engine.plant;

import dustwright.engine.tubing.Position;
import java.util.List;

/**
 * A wall as the drawing shows it: straight from corner to corner. Nothing is computed from it.
 *
 * @param corners two or more
 */
public record BuildingWall(String id, List<Position> corners) {
    public BuildingWall {
        corners = List.copyOf(corners);
    }
}
