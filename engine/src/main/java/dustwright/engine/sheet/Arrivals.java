package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.tubing.Inlet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What all solved states bring to one station, for the sheets of its equipment. */
record Arrivals(Plant plant, Station station, List<DustArrival> all) {
    static Arrivals of(Plant plant, Station station, List<DutyPoint> duties) {
        return new Arrivals(
                plant,
                station,
                duties.stream()
                        .map(duty -> DustArrival.of(plant, duty, station.id()))
                        .toList());
    }

    /** The state with the greatest actual flow in the receiver. */
    Optional<DustArrival> fastest() {
        return all.stream().max(Comparator.comparing(a -> a.station().receiverFlow()));
    }

    /** The state with the deepest vacuum in the receiver. */
    Optional<DustArrival> deepest() {
        return all.stream().min(Comparator.comparing(a -> a.station().receiver()));
    }

    /** The state that brings most dust, by volume where every bulk density is known; absent where none comes. */
    Optional<DustArrival> dustiest() {
        return all.stream()
                .filter(DustArrival::any)
                .max(Comparator.comparingDouble((DustArrival arrival) ->
                                arrival.volume().map(ActualVolumeFlow::si).orElse(0.0))
                        .thenComparingDouble(arrival -> arrival.total().kgPerSecond()));
    }

    /** Whether no inlet states what is picked up there; else sets without dust are asked as such, and nothing is missing. */
    boolean noFeedStated() {
        return plant.inlets().stream().noneMatch(inlet -> inlet.feed().kgPerSecond() > 0);
    }

    /** The first state that brings dust of unknown bulk density, which may be the dustiest by volume. */
    Optional<DustArrival> ofUnknownVolume() {
        return all.stream()
                .filter(DustArrival::any)
                .filter(arrival -> arrival.density().isEmpty())
                .findFirst();
    }

    /** Every dust picked up at an inlet whose air comes here in some state, in the order of the plant file. */
    List<Dust> dusts() {
        Set<String> coming = new HashSet<>();
        all.forEach(arrival -> arrival.inlets().stream()
                .map(Inlet::dust)
                .flatMap(Optional::stream)
                .forEach(coming::add));
        return plant.dusts().stream().filter(dust -> coming.contains(dust.id())).toList();
    }
}
