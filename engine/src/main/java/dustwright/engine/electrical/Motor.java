package dustwright.engine.electrical;

import dustwright.engine.quantity.ElectricCurrent;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.SupplyFrequency;
import java.util.Optional;

/**
 * A motor as its nameplate describes it. What the nameplate says and nobody entered stays unknown.
 *
 * @param nameplate rated shaft power
 * @param serviceFactor on the nameplate [-], 1 to 1.5; 1 where none is stated
 * @param poles 2, 4, 6 or 8
 * @param starting how it is started; a drive starts its motor itself
 * @param nameplateCurrent rated current at the supply's voltage
 * @param efficiency at rated load [-]
 * @param powerFactor at rated load [-]
 * @param turns full-load speed on the nameplate; empty where not stated
 * @param slip at full load [-], where the nameplate does not state its speed
 * @param driveInput rated input current of its drive, as the drive's maker states it
 * @param atSite shaft power it gives at the site's ambient and altitude, as its maker states it
 */
public record Motor(
        Power nameplate,
        double serviceFactor,
        Optional<Integer> poles,
        Optional<Starting> starting,
        Optional<ElectricCurrent> nameplateCurrent,
        Optional<Double> efficiency,
        Optional<Double> powerFactor,
        Optional<NameplateSpeed> turns,
        double slip,
        Optional<ElectricCurrent> driveInput,
        Optional<Power> atSite) {
    /**
     * Full-load speed on a nameplate.
     *
     * @param frequency at which it holds; empty where not stated, then it is taken at that of the supply
     */
    public record NameplateSpeed(RotationalSpeed speed, Optional<SupplyFrequency> frequency) {}

    /** A motor whose nameplate speed is not known. */
    public Motor(
            Power nameplate,
            double serviceFactor,
            Optional<Integer> poles,
            Optional<Starting> starting,
            Optional<ElectricCurrent> nameplateCurrent,
            Optional<Double> efficiency,
            Optional<Double> powerFactor) {
        this(
                nameplate,
                serviceFactor,
                poles,
                starting,
                nameplateCurrent,
                efficiency,
                powerFactor,
                Optional.empty(),
                MotorSpeed.USUAL_SLIP,
                Optional.empty(),
                Optional.empty());
    }

    /** Shaft power it gives at the site: as stated for it, else its nameplate. */
    public Power rating() {
        return atSite.orElse(nameplate);
    }

    /** Its full-load speed on a supply, as its nameplate or its poles say; empty where neither does. */
    public Optional<RotationalSpeed> speedOn(Optional<Supply> supply) {
        return turns.<RotationalSpeed>map(plate -> plate.frequency()
                        .flatMap(at -> supply.map(s -> new RotationalSpeed(MotorSpeed.atFrequency_perS(
                                plate.speed().revolutionsPerSecond(),
                                at.hertz(),
                                s.frequency().hertz()))))
                        .orElse(plate.speed()))
                .or(() -> poles.flatMap(p -> supply.map(s -> byPoles(p, s.frequency()))));
    }

    /**
     * The speed its rated torque goes with: the nameplate's, at whatever frequency that holds, else by its poles on a supply. On a drive it
     * gives that torque at lower speeds too, and no more.
     */
    public Optional<RotationalSpeed> ratedSpeed(Optional<Supply> supply) {
        return turns.map(NameplateSpeed::speed).or(() -> speedOn(supply));
    }

    /** Full-load speed of a motor with these poles and this motor's slip. */
    public RotationalSpeed byPoles(int poles, SupplyFrequency frequency) {
        return new RotationalSpeed(
                MotorSpeed.fullLoad_perS(MotorSpeed.synchronous_perS(frequency.hertz(), poles), slip));
    }

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
