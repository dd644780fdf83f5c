package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.plant.DesignSet;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Shifts;
import dustwright.engine.plant.Station;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The dust that reaches one station: the largest rate, in which set, of which dusts, and how much in a shift. An inlet belongs to the
 * station its runs lead to as they are drawn; where they lead to several, to each of them in equal parts.
 *
 * @param set the set of open inlets with the largest rate
 * @param rates rate of each dust in that set [kg/s], by dust id
 * @param shiftMix dust of a shift [kg] by dust id, or the rates of the set [kg/s] where no shift is stated
 * @param cleaning_s time of cleaning in a shift; empty where no shifts are stated or nothing is picked up
 */
record StationDust(String set, Map<String, Double> rates, Map<String, Double> shiftMix, Optional<Double> cleaning_s) {
    static StationDust of(Plant plant, Station station) {
        Map<String, Double> shares = shares(plant, station);
        DesignSet set = governing(plant, shares);
        Map<String, Double> rates = byDust(plant, feeds(plant, set, shares));
        double rate_kgPerS = sum(rates);
        Optional<Shifts> shifts = plant.operation().shifts();
        Map<String, Double> mix = shifts.filter(s -> s.cleaning() instanceof Shifts.Cleaning.PickedUp)
                .map(s -> pickedUp(plant, (Shifts.Cleaning.PickedUp) s.cleaning(), shares))
                .orElse(rates);
        Optional<Double> cleaning_s = shifts.filter(s -> rate_kgPerS > 0)
                .map(s -> s.cleaning() instanceof Shifts.Cleaning.Minutes minutes
                        ? minutes.each().seconds()
                        : sum(mix) / rate_kgPerS);
        return new StationDust(set.name(), rates, mix, cleaning_s);
    }

    /** Vacuuming at a station in a week [s]; empty where no shifts are stated, or what is picked up has no rate. */
    static Optional<Double> vacuumingPerWeek_s(Plant plant, Station station) {
        Optional<Shifts> shifts = plant.operation().shifts();
        return shifts.flatMap(s -> (s.cleaning() instanceof Shifts.Cleaning.Minutes minutes
                        ? Optional.of(minutes.each().seconds())
                        : of(plant, station).cleaning_s())
                .map(cleaning_s -> s.perWeek() * Math.min(cleaning_s, s.length().seconds())));
    }

    /** Largest rate of dust [kg/s] (equation DIS-1). */
    double rate_kgPerS() {
        return sum(rates);
    }

    /** Dust of a shift [kg], or the rate [kg/s] where no shift is stated: what the parts of the mix add up to. */
    double mixed() {
        return sum(shiftMix);
    }

    /**
     * Loose bulk density of the dusts as they come together [kg/m³]: their bulk volumes add (equation DIS-2). Empty where one has no
     * stated density, or nothing comes.
     */
    Optional<Double> loose_kgPerM3(Plant plant) {
        double volume = 0;
        for (Map.Entry<String, Double> part : shiftMix.entrySet()) {
            Optional<Double> density =
                    plant.dust(part.getKey()).looseBulkDensity().map(d -> d.kgPerCubicMetre());
            if (part.getValue() > 0 && density.isEmpty()) {
                return Optional.empty();
            }
            volume += part.getValue() > 0 ? part.getValue() / density.orElseThrow() : 0;
        }
        return volume > 0 ? Optional.of(mixed() / volume) : Optional.empty();
    }

    /** Names of dusts that come and have no stated bulk density. */
    List<Dust> withoutDensity(Plant plant) {
        return shiftMix.entrySet().stream()
                .filter(part -> part.getValue() > 0)
                .map(part -> plant.dust(part.getKey()))
                .filter(dust -> dust.looseBulkDensity().isEmpty())
                .toList();
    }

    private static double sum(Map<String, Double> parts) {
        return parts.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Without design sets, as many inlets as there are users, those with the largest feeds. */
    private static DesignSet governing(Plant plant, Map<String, Double> shares) {
        if (plant.usage().designSets().isEmpty()) {
            List<String> largest = plant.inlets().stream()
                    .sorted(Comparator.comparingDouble(
                                    (Inlet i) -> -i.feed().kgPerSecond() * shares.getOrDefault(i.id(), 0.0))
                            .thenComparing(Inlet::id))
                    .limit(plant.usage().simultaneousUsers())
                    .map(Inlet::id)
                    .toList();
            return new DesignSet("the inlets with the largest feeds", largest);
        }
        DesignSet governing = plant.usage().designSets().get(0);
        for (DesignSet set : plant.usage().designSets()) {
            if (sum(feeds(plant, set, shares)) > sum(feeds(plant, governing, shares)) * (1 + 1e-12)) {
                governing = set;
            }
        }
        return governing;
    }

    private static Map<String, Double> feeds(Plant plant, DesignSet set, Map<String, Double> shares) {
        Map<String, Double> feeds = new LinkedHashMap<>();
        for (String id : set.open()) {
            double feed_kgPerS = plant.inlet(id).feed().kgPerSecond() * shares.getOrDefault(id, 0.0);
            if (feed_kgPerS > 0) {
                feeds.put(id, feed_kgPerS);
            }
        }
        return feeds;
    }

    private static Map<String, Double> byDust(Plant plant, Map<String, Double> feeds) {
        Map<String, Double> rates = new TreeMap<>();
        feeds.forEach(
                (inlet, feed) -> plant.inlet(inlet).dust().ifPresent(dust -> rates.merge(dust, feed, Double::sum)));
        return rates;
    }

    private static Map<String, Double> pickedUp(
            Plant plant, Shifts.Cleaning.PickedUp pickedUp, Map<String, Double> shares) {
        Map<String, Double> masses = new TreeMap<>();
        for (Shifts.PickUp pickUp : pickedUp.dusts()) {
            List<Inlet> where = plant.inlets().stream()
                    .filter(i -> i.dust().filter(pickUp.dust()::equals).isPresent())
                    .filter(i -> pickUp.zone().map(i.zone()::equals).orElse(true))
                    .toList();
            double share = where.stream()
                    .mapToDouble(i -> shares.getOrDefault(i.id(), 0.0))
                    .average()
                    .orElse(0);
            masses.merge(pickUp.dust(), share * pickUp.perShift().kilograms(), Double::sum);
        }
        return masses;
    }

    /** Share of each inlet's dust that comes to the station. */
    private static Map<String, Double> shares(Plant plant, Station station) {
        Map<String, List<String>> onward = new LinkedHashMap<>();
        for (Run run : plant.runs()) {
            onward.computeIfAbsent(run.from(), from -> new ArrayList<>()).add(run.to());
        }
        Set<String> stations = new LinkedHashSet<>();
        plant.stations().forEach(s -> stations.add(s.id()));
        Map<String, Double> shares = new LinkedHashMap<>();
        for (Inlet inlet : plant.inlets()) {
            Set<String> reached = reached(inlet.id(), onward);
            reached.retainAll(stations);
            if (reached.contains(station.id())) {
                shares.put(inlet.id(), 1.0 / reached.size());
            }
        }
        return shares;
    }

    private static Set<String> reached(String from, Map<String, List<String>> onward) {
        Set<String> seen = new LinkedHashSet<>();
        Deque<String> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty()) {
            String node = open.removeFirst();
            if (seen.add(node)) {
                open.addAll(onward.getOrDefault(node, List.of()));
            }
        }
        return seen;
    }
}
