package dustwright.engine.producer;

import dustwright.engine.air.Air;
import dustwright.engine.air.SaturationPressure;
import dustwright.engine.air.StandardAtmosphere;
import dustwright.engine.electrical.Motor;
import dustwright.engine.electrical.MotorRating;
import dustwright.engine.finding.Source;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.SoundPressureLevel;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.TemperatureRise;
import java.util.Optional;

/**
 * A vacuum producer with its motor and limits. Several at one station work in parallel, each behind a check valve.
 *
 * @param motor its motor
 * @param deepestVacuum stated limit of vacuum at its inlet, at a barometer of 101 325 Pa
 * @param greatestRise stated limit of the air's temperature rise
 * @param leastSpeed lower end of its speed range
 * @param greatestSpeed upper end of its speed range
 * @param silencer loss on its discharge, part of its pressure difference
 * @param standby true when it stands by and does not run in ordinary service
 * @param model of a catalogue that its figures come from
 * @param coupling by which its motor turns it, where the plant file describes it
 * @param sealWater temperature of a liquid-ring pump's seal water
 * @param sound its levels at 1 m
 */
public record VacuumProducer(
        String id,
        Machine machine,
        Drive drive,
        Motor motor,
        PressureDifference deepestVacuum,
        TemperatureRise greatestRise,
        RotationalSpeed leastSpeed,
        RotationalSpeed greatestSpeed,
        Optional<StatedLoss> silencer,
        boolean standby,
        Optional<Model> model,
        Optional<Coupling> coupling,
        Optional<Temperature> sealWater,
        Sound sound) {
    /** Motors are rated up to this altitude (NEMA MG 1; from memory) [m]. */
    private static final double HIGHEST_FOR_SERVICE_FACTOR_m = 1000;

    /** And up to this ambient, by the same rule [K]. */
    private static final double HOTTEST_FOR_SERVICE_FACTOR_K = 313.15;

    /**
     * Sound of a machine at 1 m, as its maker states it.
     *
     * @param casing and drive, without a hood
     * @param discharge open, without a silencer
     */
    public record Sound(Optional<SoundPressureLevel> casing, Optional<SoundPressureLevel> discharge) {
        /** Nothing is stated. */
        public static final Sound UNKNOWN = new Sound(Optional.empty(), Optional.empty());
    }

    /** The same producer, running in ordinary service. */
    public VacuumProducer inService() {
        return new VacuumProducer(
                id,
                machine,
                drive,
                motor,
                deepestVacuum,
                greatestRise,
                leastSpeed,
                greatestSpeed,
                silencer,
                false,
                model,
                coupling,
                sealWater,
                sound);
    }

    /** The same machine in the place of another one: under its id, behind its silencer. */
    public VacuumProducer inPlaceOf(VacuumProducer other) {
        return new VacuumProducer(
                other.id,
                machine,
                drive,
                motor,
                deepestVacuum,
                greatestRise,
                leastSpeed,
                greatestSpeed,
                other.silencer,
                other.standby,
                model,
                coupling,
                sealWater,
                sound);
    }

    /** The same producer, standing by or not. */
    public VacuumProducer standingBy(boolean standsBy) {
        return new VacuumProducer(
                id,
                machine,
                drive,
                motor,
                deepestVacuum,
                greatestRise,
                leastSpeed,
                greatestSpeed,
                silencer,
                standsBy,
                model,
                coupling,
                sealWater,
                sound);
    }

    /** A producer of which nothing more is known than its plant file needs. */
    public VacuumProducer(
            String id,
            Machine machine,
            Drive drive,
            Motor motor,
            PressureDifference deepestVacuum,
            TemperatureRise greatestRise,
            RotationalSpeed leastSpeed,
            RotationalSpeed greatestSpeed,
            Optional<StatedLoss> silencer,
            boolean standby) {
        this(
                id,
                machine,
                drive,
                motor,
                deepestVacuum,
                greatestRise,
                leastSpeed,
                greatestSpeed,
                silencer,
                standby,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sound.UNKNOWN);
    }

    /**
     * Greatest vacuum at its inlet at a site: what plant file or catalogue state at sea level, carried to the barometer (PRD-6); never
     * beyond what the seal water of a liquid-ring pump leaves (PRD-11).
     */
    public PressureDifference vacuumLimit(AbsolutePressure barometer) {
        PressureDifference here = deepestVacuumAt(barometer);
        return sealVacuum(barometer).filter(seal -> seal.compareTo(here) < 0).orElse(here);
    }

    /** Deepest vacuum its seal water leaves: it boils there (equation PRD-11). Empty where no seal water is stated. */
    public Optional<PressureDifference> sealVacuum(AbsolutePressure barometer) {
        return sealWater.map(water -> new PressureDifference(
                LiquidRing.deepestVacuum_Pa(barometer.pascals(), SaturationPressure.of_Pa(water.kelvin()))));
    }

    /** Whether a variable-frequency drive turns its motor. */
    public boolean driven() {
        return drive instanceof Drive.Holding
                || motor.starting().filter(Motor.Starting.DRIVE::equals).isPresent();
    }

    /**
     * Whether the motor's service factor may be drawn on: not on a drive, not above 1000 m of the standard atmosphere or 40 °C, and not where
     * its maker states what it gives at the site.
     */
    public boolean serviceFactorCounts(Air site) {
        return !driven()
                && motor.atSite().isEmpty()
                && site.temperature().kelvin() <= HOTTEST_FOR_SERVICE_FACTOR_K
                && site.ambient().pascals() >= StandardAtmosphere.pressure_Pa(HIGHEST_FOR_SERVICE_FACTOR_m);
    }

    /** Whether its motor's rating is known at a site: stated for it, or no hotter and higher than motors are rated for (ELE-43). */
    public boolean ratedAt(Air site) {
        return motor.atSite().isPresent() || nameplateHolds(site);
    }

    /** Whether a motor of which nothing is stated for the site gives its nameplate there (ELE-43). */
    public static boolean nameplateHolds(Air site) {
        return MotorRating.givesNameplate(
                StandardAtmosphere.altitude_m(site.ambient().pascals()),
                site.temperature().kelvin());
    }

    /** Greatest shaft power of the motor at a site: its rating there, times its service factor where that counts (ELE-3). */
    public Power powerLimit(Air site) {
        return serviceFactorCounts(site)
                ? new Power(MotorRating.serviceFactorPower_W(nameplate().watts(), motor.serviceFactor()))
                : motor.rating();
    }

    /** The same producer turned another way. */
    public VacuumProducer withDrive(Drive other) {
        return new VacuumProducer(
                id,
                machine,
                other,
                motor,
                deepestVacuum,
                greatestRise,
                leastSpeed,
                greatestSpeed,
                silencer,
                standby,
                model,
                coupling,
                sealWater,
                sound);
    }

    /** Motor nameplate power. */
    public Power nameplate() {
        return motor.nameplate();
    }

    /** Where the figure of a key of the plant file comes from: the plant file, or the catalogue of its model. */
    public Source sourceOf(String key) {
        return model.map(m -> m.sourceOf(key)).orElseGet(Source::entered);
    }

    /**
     * The stated deepest vacuum, taken at 101 325 Pa, carried to another barometer at the same pressure ratio (equation PRD-6):
     * {@code v · p_a / 101 325 Pa}.
     *
     * @source Machine Design, "Vacuum pumps": 24 inHg at sea level is 17.6 inHg at a barometer of 22 inHg
     */
    public PressureDifference deepestVacuumAt(AbsolutePressure barometer) {
        return new PressureDifference(deepestVacuum.pascals() * barometer.pascals() / StandardAtmosphere.SEA_LEVEL_Pa);
    }
}
