package dustwright.engine.electrical;

import dustwright.engine.quantity.ElectricCurrent;
import dustwright.engine.quantity.Power;
import java.util.Optional;

/**
 * A motor as its nameplate describes it. What the nameplate says and nobody entered stays unknown.
 *
 * @param nameplate rated shaft power
 * @param serviceFactor on the nameplate [-], 1 to 1.5; 1 where none is stated
 * @param poles 2, 4 or 6
 * @param starting how it is started; a drive starts its motor itself
 * @param nameplateCurrent rated current at the supply's voltage
 * @param efficiency at rated load [-]
 * @param powerFactor at rated load [-]
 */
public record Motor(
        Power nameplate,
        double serviceFactor,
        Optional<Integer> poles,
        Optional<Starting> starting,
        Optional<ElectricCurrent> nameplateCurrent,
        Optional<Double> efficiency,
        Optional<Double> powerFactor) {
    /** Ways to start a motor. */
    public enum Starting {
        DIRECT("direct"),
        STAR_DELTA("star-delta"),
        SOFT_STARTER("soft starter"),
        DRIVE("drive");

        private final String words;

        Starting(String words) {
            this.words = words;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }
    }

    /** A motor of which only its power is known. */
    public static Motor of(Power nameplate) {
        return new Motor(
                nameplate, 1, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
