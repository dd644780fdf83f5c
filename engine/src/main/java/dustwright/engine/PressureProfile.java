package dustwright.engine;

import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Velocity;
import java.util.List;
import java.util.Optional;

/** Vacuum and velocity along the path of one open inlet, from the tool to the producer. */
public record PressureProfile(String state, String inlet, List<Stretch> stretches) {
    public PressureProfile {
        stretches = List.copyOf(stretches);
    }

    /**
     * One piece of the path.
     *
     * @param piece id of the run, or words such as "tool and hose", "filter"
     * @param length developed length; zero for a device
     * @param velocityFrom absent for devices
     * @param least velocity the dust needs here; absent where none is asked
     */
    public record Stretch(
            String piece,
            Length length,
            PressureDifference vacuumFrom,
            PressureDifference vacuumTo,
            Optional<Velocity> velocityFrom,
            Optional<Velocity> velocityTo,
            Optional<Velocity> least) {}
}
