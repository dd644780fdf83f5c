package dustwright.engine.plant;

import dustwright.engine.air.Air;
import dustwright.engine.quantity.Length;
import java.util.Optional;

/**
 * Where the plant stands.
 *
 * @param altitude absent when the barometer was given
 * @param relativeHumidity 0 to 1 [-]
 */
public record Site(Air air, Optional<Length> altitude, double relativeHumidity) {}
