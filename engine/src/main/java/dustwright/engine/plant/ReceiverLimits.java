package dustwright.engine.plant;

import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.Ratio;
import java.util.Optional;

/**
 * What is asked of receivers, filters and rotary valves beyond one set of open inlets. An absent limit is not checked.
 *
 * @param cleaningInterval least running time from one off-line cleaning to the next
 * @param holdUp least time to the high-level probe when discharge stops
 * @param valveCapacity what a rotary valve discharges over the largest rate of dust; absent without a rotary valve [-]
 */
public record ReceiverLimits(
        Optional<Limit<Duration>> cleaningInterval,
        Optional<Limit<Duration>> holdUp,
        Optional<Limit<Ratio>> valveCapacity) {
    /** Nothing asked. */
    public static final ReceiverLimits NONE = new ReceiverLimits(Optional.empty(), Optional.empty(), Optional.empty());
}
