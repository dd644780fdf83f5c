package dustwright.engine.receiver;

import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.FilterResistance;

/** Filter elements of a receiver: cloth area and resistance (pressure drop over filtration velocity) in three conditions. */
public record Filter(Area cloth, FilterResistance clean, FilterResistance normal, FilterResistance dirty) {
    /** Resistance in a condition. */
    public FilterResistance resistance(FilterCondition condition) {
        return switch (condition) {
            case CLEAN -> clean;
            case NORMAL -> normal;
            case DIRTY -> dirty;
        };
    }
}
