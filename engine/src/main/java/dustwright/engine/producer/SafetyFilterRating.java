package dustwright.engine.producer;

import dustwright.engine.quantity.FreeAirFlow;
import java.util.Optional;

/**
 * What a safety filter is made for; absent where not known.
 *
 * @param efficiencyClass of EN 1822-1 or ISO 29463-1
 * @param greatest air its maker allows
 */
public record SafetyFilterRating(Optional<String> efficiencyClass, Optional<FreeAirFlow> greatest) {
    /** Nothing known. */
    public static final SafetyFilterRating UNKNOWN = new SafetyFilterRating(Optional.empty(), Optional.empty());
}
