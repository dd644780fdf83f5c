package dustwright.engine.network;

import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.PressureDifference;
import java.util.List;

/**
 * One station: pressures along its clean side, what its valves let in, where its producers work.
 *
 * @param throughFilter air through the filter
 * @param receiverFlow the same at the actual state in the receiver, at the temperature of the air at the cloth
 * @param filterLoss pressure drop over the filter
 * @param suction pressure at the producers' common inlet
 * @param relief air admitted by the relief valve
 * @param vent air admitted by the open vent valve
 * @param rotaryValve air leaking up through the rotary valve
 */
public record StationResult(
        String id,
        AbsolutePressure receiver,
        MassFlow throughFilter,
        ActualVolumeFlow receiverFlow,
        PressureDifference filterLoss,
        PressureDifference safetyFilterLoss,
        AbsolutePressure suction,
        MassFlow relief,
        MassFlow vent,
        MassFlow rotaryValve,
        List<ProducerResult> producers) {
    public StationResult {
        producers = List.copyOf(producers);
    }
}
