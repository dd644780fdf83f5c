package dustwright.engine.plant;

import dustwright.engine.quantity.FreeAirVolume;
import dustwright.engine.quantity.Frequency;
import java.util.Optional;

/**
 * Compressed air that a station's filter takes.
 *
 * @param station its id
 * @param perPulse free air of one pulse, as the valve's maker states it
 * @param pulses of all valves while vacuum is on
 */
public record StationAir(String station, Optional<FreeAirVolume> perPulse, Optional<Frequency> pulses) {}
