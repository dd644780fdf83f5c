package dustwright.engine.sheet;

import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.plant.DesignSet;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The way of the dust to every station in the plant's own sets of open inlets, whichever states a study was asked. */
public final class DustWays {
    private final Plant plant;
    private final Function<List<String>, Outcome<DutyPoint>> solving;
    private final Map<List<String>, Optional<DustTrace>> traces = new HashMap<>();
    private final Map<String, StationDust> stations = new LinkedHashMap<>();

    private DustWays(Plant plant, Function<List<String>, Outcome<DutyPoint>> solving) {
        this.plant = plant;
        this.solving = solving;
        plant.stations().forEach(station -> stations.put(station.id(), StationDust.of(plant, station, this)));
    }

    /**
     * Follows the dust.
     *
     * @param solving the state with these inlets open, all of them picking up dust
     */
    public static DustWays of(Plant plant, Function<List<String>, Outcome<DutyPoint>> solving) {
        return new DustWays(plant, solving);
    }

    StationDust to(Station station) {
        return stations.getOrDefault(station.id(), StationDust.NONE);
    }

    /** Dust that comes to a station in a set, by inlet [kg/s]; empty where the set has no answer. */
    Optional<Map<String, Double>> feeds(DesignSet set, Station station) {
        return shares(set.open(), station).map(shares -> {
            Map<String, Double> feeds = new LinkedHashMap<>();
            for (String id : set.open()) {
                double feed_kgPerS = plant.inlet(id).feed().kgPerSecond() * shares.getOrDefault(id, 0.0);
                if (feed_kgPerS > 0) {
                    feeds.put(id, feed_kgPerS);
                }
            }
            return feeds;
        });
    }

    /** Share of the dust of one inlet that comes to a station while nobody else vacuums; nothing where that has no answer. */
    double shareAlone(Inlet inlet, Station station) {
        return shares(List.of(inlet.id()), station)
                .map(shares -> shares.getOrDefault(inlet.id(), 0.0))
                .orElse(0.0);
    }

    /** The sets of the plant file; where there are none, as many inlets as there are users, those that bring most to a station. */
    List<DesignSet> sets(Station station) {
        if (!plant.usage().designSets().isEmpty()) {
            return plant.usage().designSets();
        }
        List<Inlet> feeding = new ArrayList<>(plant.inlets().stream()
                .filter(inlet -> inlet.feed().kgPerSecond() > 0)
                .toList());
        feeding.sort(
                Comparator.comparingDouble((Inlet inlet) -> -inlet.feed().kgPerSecond() * shareAlone(inlet, station))
                        .thenComparing(Inlet::id));
        List<String> largest = feeding.stream()
                .limit(plant.usage().simultaneousUsers())
                .map(Inlet::id)
                .toList();
        return List.of(new DesignSet("the inlets with the largest feeds", largest));
    }

    private Optional<Map<String, Double>> shares(List<String> open, Station station) {
        return traces.computeIfAbsent(open, this::trace).map(trace -> trace.sharesTo(station.id()));
    }

    private Optional<DustTrace> trace(List<String> open) {
        return solving.apply(open).match(duty -> Optional.of(DustTrace.of(plant, duty)), why -> Optional.empty());
    }
}
