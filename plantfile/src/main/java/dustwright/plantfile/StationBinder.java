package dustwright.plantfile;

import dustwright.engine.air.Air;
import dustwright.engine.electrical.Supply;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.producer.SafetyFilterRating;
import dustwright.engine.producer.StatedLoss;
import dustwright.engine.producer.VentValve;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;
import java.util.Locale;
import java.util.Optional;

/** Makes stations: receiver, filter, valves and producers. */
final class StationBinder {
    private StationBinder() {}

    static Station station(Section s, TubingBinder tubing, Optional<Supply> supply, Air air) {
        return new Station(
                s.id(),
                tubing.place(s.id()),
                ReceiverBinder.receiver(s),
                ReceiverBinder.filter(s.section("filter").orElseThrow()),
                s.section("safety filter").map(StationBinder::statedLoss),
                s.section("safety filter").map(ReceiverBinder::rating).orElse(SafetyFilterRating.UNKNOWN),
                s.section("relief valve").map(relief -> relief(relief, air)),
                s.section("vent valve")
                        .map(v -> new VentValve(TubingBinder.opening(v), v.number("discharge coefficient"))),
                s.section("rotary valve").map(ReceiverBinder::rotaryValve),
                s.section("container").map(ContainerBinder::container),
                s.namedSections("producers").stream()
                        .map(producer -> ProducerBinder.producer(producer, supply))
                        .toList());
    }

    static StatedLoss statedLoss(Section loss) {
        return new StatedLoss(
                loss.get("loss", PressureDifference.class), loss.get("at", FreeAirFlow.class), state(loss));
    }

    private static ReliefValve relief(Section relief, Air air) {
        PressureDifference set = relief.get("set", PressureDifference.class);
        PressureDifference full = relief.get("full", PressureDifference.class);
        PressureDifference accumulation = new PressureDifference(full.pascals() - set.pascals());
        FreeAirFlow rated = relief.get("rated", FreeAirFlow.class);
        return state(relief) == StatedLoss.State.SITE
                ? new ReliefValve(set, accumulation, rated)
                : ReliefValve.ofStandardAir(set, accumulation, rated, air);
    }

    private static StatedLoss.State state(Section stated) {
        return StatedLoss.State.valueOf(
                stated.get("stated for", String.class).replace(" air", "").toUpperCase(Locale.ROOT));
    }
}
