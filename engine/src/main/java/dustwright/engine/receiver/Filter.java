package dustwright.engine.receiver;

import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.FilterResistance;
import dustwright.engine.quantity.Temperature;

/**
 * Filter elements of a receiver: cloth area and resistance (pressure drop over filtration velocity) in three conditions.
 *
 * @param service what it has to bear beside the flow
 */
public record Filter(
        Area cloth, FilterResistance clean, FilterResistance normal, FilterResistance dirty, FilterService service) {

    /** A filter in ordinary service. */
    public Filter(Area cloth, FilterResistance clean, FilterResistance normal, FilterResistance dirty) {
        this(cloth, clean, normal, dirty, FilterService.USUAL);
    }

    /** The same cloth with one resistance, whatever its condition is called. */
    public Filter withResistance(FilterResistance resistance) {
        return new Filter(cloth, resistance, resistance, resistance, service);
    }

    /** Temperature of the air at the cloth: as stated, else that of the site. */
    public Temperature temperature(Temperature site) {
        return service.continuous().orElse(site);
    }

    /** Resistance in a condition. */
    public FilterResistance resistance(FilterCondition condition) {
        return switch (condition) {
            case CLEAN -> clean;
            case NORMAL -> normal;
            case DIRTY -> dirty;
        };
    }

    /**
     * Drop of pressure squared over mass flow [Pa² s/kg] (equation FLT-1): laminar through the cloth, at local density.
     *
     * <pre>
     * p1² − p2² = 2 S R T w / A
     * </pre>
     *
     * @param rt_JPerKg R T of the air at the cloth [J/kg]
     * @source filter drag Δp = S V, as in EPA/452/B-02-001; integrated over the falling density
     */
    public double squaredPressurePerFlow(FilterCondition condition, double rt_JPerKg) {
        return 2 * resistance(condition).pascalSecondsPerMetre() * rt_JPerKg / cloth.squareMetres();
    }
}
