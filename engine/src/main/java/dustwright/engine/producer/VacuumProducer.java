package dustwright.engine.producer;

import dustwright.engine.air.StandardAtmosphere;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.TemperatureRise;
import java.util.Optional;

/**
 * A vacuum producer with its motor and limits. Several at one station work in parallel, each behind a check valve.
 *
 * @param nameplate motor nameplate power
 * @param deepestVacuum stated limit of vacuum at its inlet
 * @param greatestRise stated limit of the air's temperature rise
 * @param leastSpeed lower end of its speed range
 * @param greatestSpeed upper end of its speed range
 * @param silencer loss on its discharge, part of its pressure difference
 * @param standby true when it stands by and does not run in ordinary service
 */
public record VacuumProducer(
        String id,
        Machine machine,
        Drive drive,
        Power nameplate,
        PressureDifference deepestVacuum,
        TemperatureRise greatestRise,
        RotationalSpeed leastSpeed,
        RotationalSpeed greatestSpeed,
        Optional<StatedLoss> silencer,
        boolean standby) {
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
