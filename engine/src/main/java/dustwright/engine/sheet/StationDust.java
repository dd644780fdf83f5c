package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.plant.DesignSet;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Shifts;
import dustwright.engine.plant.Station;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The dust that reaches one station as the plant's own sets are solved: the largest rate, in which set, of which dusts, and how much in a
 * shift.
 *
 * @param governing the set of open inlets with the largest rate; empty where no set has an answer
 * @param rates rate of each dust in that set [kg/s], by dust id
 * @param shiftMix dust of a shift [kg] by dust id, or the rates of the set [kg/s] where no shift is stated
 * @param cleaning_s time of cleaning in a shift; empty where no shifts are stated or nothing is picked up, or one of it has no feed
 * @param pickingUp least time in which users pick up what a shift brings
 */
record StationDust(
        Optional<DesignSet> governing,
        Map<String, Double> rates,
        Map<String, Double> shiftMix,
        Optional<Double> cleaning_s,
        PickingUp pickingUp) {
    /** No dust comes, as far as is known. */
    static final StationDust NONE =
            new StationDust(Optional.empty(), Map.of(), Map.of(), Optional.empty(), PickingUp.NOTHING);

    /** Two rates closer than this are the same, and the earlier set is named. */
    private static final double SAME = 1 + 1e-12;

    static StationDust of(Plant plant, Station station, DustWays ways) {
        Optional<DesignSet> governing = Optional.empty();
        Map<String, Double> largest = Map.of();
        for (DesignSet set : ways.sets(station)) {
            Optional<Map<String, Double>> feeds = ways.feeds(set, station);
            if (feeds.isPresent() && (governing.isEmpty() || sum(feeds.get()) > sum(largest) * SAME)) {
                governing = Optional.of(set);
                largest = feeds.get();
            }
        }
        return of(plant, station, ways, governing, byDust(plant, largest));
    }

    private static StationDust of(
            Plant plant, Station station, DustWays ways, Optional<DesignSet> set, Map<String, Double> rates) {
        double rate_kgPerS = sum(rates);
        Optional<Shifts> shifts = plant.operation().shifts();
        Optional<Shifts.Cleaning.PickedUp> picked = shifts.filter(s -> s.cleaning() instanceof Shifts.Cleaning.PickedUp)
                .map(s -> (Shifts.Cleaning.PickedUp) s.cleaning());
        Map<String, Double> mix =
                picked.map(p -> pickedUp(plant, p, station, ways)).orElse(rates);
        PickingUp pickingUp =
                picked.map(p -> PickingUp.of(plant, p, station, ways)).orElse(PickingUp.NOTHING);
        Optional<Double> cleaning_s = shifts.filter(s -> rate_kgPerS > 0)
                .filter(s -> pickingUp.withoutFeed().isEmpty())
                .map(s -> s.cleaning() instanceof Shifts.Cleaning.Minutes minutes
                        ? minutes.each().seconds()
                        : Math.max(sum(mix) / rate_kgPerS, least_s(pickingUp)));
        return new StationDust(set, rates, mix, cleaning_s, pickingUp);
    }

    private static double least_s(PickingUp pickingUp) {
        return pickingUp.least().map(step -> step.result().value().si()).orElse(0.0);
    }

    /** Whether users and inlets, not the rate of the dustiest set, say how long a stated mass takes. */
    boolean slowerThanItsRate() {
        return cleaning_s.filter(time_s -> time_s > mixed() / rate_kgPerS()).isPresent();
    }

    /** Rate of dust while users clean [kg/s]: that of the dustiest set, or less where a stated mass takes longer. */
    double cleaningRate_kgPerS() {
        return slowerThanItsRate() ? mixed() / cleaning_s.orElseThrow() : rate_kgPerS();
    }

    /** Name of the set with the largest rate; empty where no set has an answer. */
    String set() {
        return governing.map(DesignSet::name).orElse("");
    }

    /** Why no rate is known. */
    String whyNothing() {
        if (!pickingUp.withoutFeed().isEmpty()) {
            return "Enter \"feed\" of the inlets that pick up " + String.join(", ", pickingUp.withoutFeed())
                    + ": how long a shift cleans is not known.";
        }
        return governing.isEmpty()
                ? "No design set has an answer, so nobody knows where its dust goes."
                : "No dust comes here in a design set: enter \"feed\" of the inlets, or put a producer in service that draws it here.";
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

    private static Map<String, Double> byDust(Plant plant, Map<String, Double> feeds) {
        Map<String, Double> rates = new TreeMap<>();
        feeds.forEach(
                (inlet, feed) -> plant.inlet(inlet).dust().ifPresent(dust -> rates.merge(dust, feed, Double::sum)));
        return rates;
    }

    private static Map<String, Double> pickedUp(
            Plant plant, Shifts.Cleaning.PickedUp pickedUp, Station station, DustWays ways) {
        Map<String, Double> masses = new TreeMap<>();
        for (Shifts.PickUp pickUp : pickedUp.dusts()) {
            double share = PickingUp.share(PickingUp.where(plant, pickUp), station, ways);
            masses.merge(pickUp.dust(), share * pickUp.perShift().kilograms(), Double::sum);
        }
        return masses;
    }
}
