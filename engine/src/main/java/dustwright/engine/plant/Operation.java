package dustwright.engine.plant;

import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.SoundPressureLevel;
import dustwright.engine.quantity.Velocity;
import java.util.List;
import java.util.Optional;

/**
 * How the plant is run over the weeks, what that costs, the air it takes and the sound it makes. What is absent is not known.
 *
 * @param air compressed air, by station
 * @param sound sound of the machines, by station
 */
public record Operation(
        Optional<Shifts> shifts, Optional<Costs> costs, List<StationAir> air, List<StationSound> sound, Asked asked) {
    /** Nothing is said. */
    public static final Operation UNKNOWN =
            new Operation(Optional.empty(), Optional.empty(), List.of(), List.of(), Asked.NOTHING);

    /**
     * Limits on how the plant is run. An absent one is not checked.
     *
     * @param soundAtOneMetre greatest level at 1 m from all producers of a station
     * @param dailyExposure greatest daily noise exposure of the operator
     * @param sockVelocity greatest velocity through the cloth of a vent sock
     * @param containerLife least mean time from change to change
     */
    public record Asked(
            Optional<Limit<SoundPressureLevel>> soundAtOneMetre,
            Optional<Limit<SoundPressureLevel>> dailyExposure,
            Optional<Limit<Velocity>> sockVelocity,
            Optional<Limit<Duration>> containerLife) {
        /** Nothing is asked. */
        public static final Asked NOTHING =
                new Asked(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    public Operation {
        air = List.copyOf(air);
        sound = List.copyOf(sound);
    }

    /** What is said of a station's compressed air. */
    public Optional<StationAir> airOf(String station) {
        return air.stream().filter(a -> a.station().equals(station)).findFirst();
    }

    /** What is said of a station's sound. */
    public Optional<StationSound> soundOf(String station) {
        return sound.stream().filter(s -> s.station().equals(station)).findFirst();
    }
}
