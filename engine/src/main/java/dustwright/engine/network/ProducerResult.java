package dustwright.engine.network;

import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.TemperatureRise;

/**
 * Where a producer works.
 *
 * @param checkValveShut true when it runs but its check valve stays shut
 * @param beyondPoints true when it passes air at a difference that its curve was not measured at: flow, power and rise are not measured
 * @param inletFlow actual volume flow at its inlet
 * @param vacuum below the barometer at its inlet
 * @param difference over the machine, silencer included
 * @param rise of the air's temperature; 0 while no air passes and where seal water takes the heat. Behind a shut check valve no steady temperature exists and the machine
 *     heats up: look at {@code checkValveShut} first
 */
public record ProducerResult(
        String id,
        boolean running,
        boolean checkValveShut,
        boolean beyondPoints,
        RotationalSpeed speed,
        MassFlow flow,
        ActualVolumeFlow inletFlow,
        AbsolutePressure inletPressure,
        PressureDifference vacuum,
        PressureDifference difference,
        Power shaftPower,
        TemperatureRise rise) {}
