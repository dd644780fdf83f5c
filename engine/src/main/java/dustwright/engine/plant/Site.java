package dustwright.engine.plant;

import dustwright.engine.air.Air;
import dustwright.engine.quantity.Length;
import dustwright.engine.tubing.Position;
import java.util.List;
import java.util.Optional;

/**
 * Where the plant stands.
 *
 * @param altitude absent when the barometer was given
 * @param relativeHumidity 0 to 1 [-]
 * @param walls of the building, for drawings
 * @param panel where the control panel stands, for drawings
 */
public record Site(
        Air air,
        Optional<Length> altitude,
        double relativeHumidity,
        List<BuildingWall> walls,
        Optional<Position> panel) {
    public Site {
        walls = List.copyOf(walls);
    }

    /** A site of whose building, and of whose panel, nothing is drawn. */
    public Site(Air air, Optional<Length> altitude, double relativeHumidity) {
        this(air, altitude, relativeHumidity, List.of(), Optional.empty());
    }
}
