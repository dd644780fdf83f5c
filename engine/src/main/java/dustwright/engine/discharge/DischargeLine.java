package dustwright.engine.discharge;

import dustwright.engine.quantity.Range;
import java.util.OptionalDouble;

/**
 * What the dust passes after the filter: hopper, rotary valve, container. All amounts are masses, so that one balance holds from inlet
 * to bag.
 *
 * @param valve_kgPerS what the rotary valve discharges while it turns and dust lies over it [kg/s]; absent where the dust falls straight
 *     into a container under vacuum
 * @param hopper_kg dust the receiver holds up to its high level [kg]; 0 where it is not known, so that nothing is collected while the
 *     discharge rests
 * @param container_kg dust a container takes until it is changed [kg]
 * @param change_s time to change a container [s]
 * @param vacuumingGoesOn true where users go on while the container is changed and the receiver holds the dust
 */
public record DischargeLine(
        OptionalDouble valve_kgPerS, double hopper_kg, double container_kg, double change_s, boolean vacuumingGoesOn) {
    private static final Range VALVE = new Range("the discharge", "valve", "kg/s", 1e-9, 1e3);
    private static final Range HOPPER = new Range("the discharge", "hopper", "kg", 0, 1e6);
    private static final Range CONTAINER = new Range("the discharge", "container", "kg", 1e-6, 1e6);
    private static final Range CHANGE = new Range("the discharge", "change", "s", 0, 604_800);

    public DischargeLine {
        valve_kgPerS.ifPresent(VALVE::check);
        HOPPER.check(hopper_kg);
        CONTAINER.check(container_kg);
        CHANGE.check(change_s);
    }

    /** The same line with users who stop, or go on, while the container is changed. */
    public DischargeLine withVacuumingGoingOn(boolean goesOn) {
        return new DischargeLine(valve_kgPerS, hopper_kg, container_kg, change_s, goesOn);
    }

    /** The same line with a container that takes another mass. */
    public DischargeLine withContainer(double other_kg) {
        return new DischargeLine(valve_kgPerS, hopper_kg, other_kg, change_s, vacuumingGoesOn);
    }
}
