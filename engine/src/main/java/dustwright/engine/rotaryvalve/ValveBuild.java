package dustwright.engine.rotaryvalve;

import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Torque;
import java.util.Optional;

/**
 * How a rotary valve is made; absent where not known.
 *
 * @param rotor diameter over the blade tips
 * @param vanes number of blades
 * @param throat smallest width of its inlet opening
 * @param tipGap between blade tips and housing
 * @param motor nameplate power of its gearmotor
 * @param gearEfficiency of gear and chain [-]
 * @param torque the rotor needs when full, as its maker states it
 * @param greatestDifference of pressure its maker allows across it
 */
public record ValveBuild(
        Optional<Length> rotor,
        Optional<Integer> vanes,
        Optional<Length> throat,
        Optional<Length> tipGap,
        Optional<Power> motor,
        Optional<Double> gearEfficiency,
        Optional<Torque> torque,
        Optional<PressureDifference> greatestDifference) {
    /** Nothing known. */
    public static final ValveBuild UNKNOWN = new ValveBuild(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
}
