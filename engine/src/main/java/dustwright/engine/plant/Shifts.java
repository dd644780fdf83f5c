package dustwright.engine.plant;

import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.Mass;
import java.util.List;
import java.util.Optional;

/**
 * Shifts of an ordinary week, one after another; everybody cleans together at the end of each.
 *
 * @param perDay shifts a day
 * @param daysPerWeek working days a week
 * @param length of a shift
 * @param weeksPerYear working weeks a year
 * @param producersRunOn true where producers run through the shift, unloaded but for the cleaning
 */
public record Shifts(
        int perDay, int daysPerWeek, Duration length, int weeksPerYear, boolean producersRunOn, Cleaning cleaning) {
    /** How much is cleaned in a shift. */
    public sealed interface Cleaning {
        /** Every user vacuums for so long in each shift. */
        record Minutes(Duration each) implements Cleaning {}

        /** So much dust is picked up in each shift. */
        record PickedUp(List<PickUp> dusts) implements Cleaning {
            public PickedUp {
                dusts = List.copyOf(dusts);
            }
        }
    }

    /**
     * Dust picked up in a shift.
     *
     * @param dust its id
     * @param zone id of the zone where it lies; absent where it lies wherever it is picked up
     */
    public record PickUp(String dust, Optional<String> zone, Mass perShift) {}

    /** Shifts in a week. */
    public int perWeek() {
        return perDay * daysPerWeek;
    }
}
