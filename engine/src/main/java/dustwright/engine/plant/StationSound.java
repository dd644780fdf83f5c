package dustwright.engine.plant;

import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.LevelDifference;
import dustwright.engine.quantity.SoundPressureLevel;
import java.util.Optional;

/**
 * Sound of a station's machines and of the place where its operator stands. What is absent is not known.
 *
 * @param station its id
 * @param casing of one producer's casing and drive at 1 m
 * @param hood what a hood over the casing takes away
 * @param discharge of one producer's open discharge at 1 m
 * @param silencer what the silencer takes away from it
 * @param operatorAt distance of the operator
 * @param background of everything else where the operator stands
 * @param there time the operator spends there in a shift
 * @param elsewhere level during the rest of the shift
 */
public record StationSound(
        String station,
        Optional<SoundPressureLevel> casing,
        Optional<LevelDifference> hood,
        Optional<SoundPressureLevel> discharge,
        Optional<LevelDifference> silencer,
        Optional<Length> operatorAt,
        Optional<SoundPressureLevel> background,
        Optional<Duration> there,
        Optional<SoundPressureLevel> elsewhere) {
    /** Nothing is stated of a station. */
    public static StationSound unknown(String station) {
        return new StationSound(
                station,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
