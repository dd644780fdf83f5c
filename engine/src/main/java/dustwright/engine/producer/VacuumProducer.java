package dustwright.engine.producer;

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
        boolean standby) {}
