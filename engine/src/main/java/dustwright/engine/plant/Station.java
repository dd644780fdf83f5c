package dustwright.engine.plant;

import dustwright.engine.bagging.Container;
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.producer.SafetyFilterRating;
import dustwright.engine.producer.StatedLoss;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.producer.VentValve;
import dustwright.engine.receiver.Filter;
import dustwright.engine.receiver.Receiver;
import dustwright.engine.rotaryvalve.RotaryValve;
import dustwright.engine.tubing.Position;
import java.util.List;
import java.util.Optional;

/**
 * Receiver, filter, valves and producers standing together. Its id is the point where tubing enters the receiver.
 *
 * @param safetyRating what the safety filter is made for
 * @param producers in parallel, each behind a check valve
 */
public record Station(
        String id,
        Optional<Position> at,
        Receiver receiver,
        Filter filter,
        Optional<StatedLoss> safetyFilter,
        SafetyFilterRating safetyRating,
        Optional<ReliefValve> relief,
        Optional<VentValve> vent,
        Optional<RotaryValve> rotaryValve,
        Optional<Container> container,
        List<VacuumProducer> producers) {
    public Station {
        producers = List.copyOf(producers);
    }

    /** The same station with other producers and relief valve. */
    public Station withProducers(List<VacuumProducer> others, Optional<ReliefValve> otherRelief) {
        return new Station(
                id,
                at,
                receiver,
                filter,
                safetyFilter,
                safetyRating,
                otherRelief,
                vent,
                rotaryValve,
                container,
                others);
    }

    /** The same station with its rotary valve taken off and the flange blanked. */
    public Station withoutRotaryValve() {
        return new Station(
                id,
                at,
                receiver,
                filter,
                safetyFilter,
                safetyRating,
                relief,
                vent,
                Optional.empty(),
                container,
                producers);
    }

    /** The same station with its filter elements in another state or other ones. */
    public Station withFilter(Filter other) {
        return new Station(
                id, at, receiver, other, safetyFilter, safetyRating, relief, vent, rotaryValve, container, producers);
    }
}
