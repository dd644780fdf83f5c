package dustwright.engine.sheet;

import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Shifts;
import dustwright.engine.plant.Station;
import dustwright.engine.plant.Zone;
import dustwright.engine.quantity.Mass;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.WorkingTime;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Least time in which users pick up what a shift brings: nobody picks a dust up faster than the fastest inlet that has it, and no more of
 * them at once than there are users, users of its zone, or inlets (equation DIS-10).
 *
 * @param least step to the greatest of those times; empty where nothing is picked up or a feed is missing
 * @param withoutFeed dusts that are picked up where no inlet has a feed, in words
 */
record PickingUp(Optional<Step> least, List<String> withoutFeed) {
    static final PickingUp NOTHING = new PickingUp(Optional.empty(), List.of());

    private static final Source BOUND =
            Source.ownReading("least: everybody works all the time, at the fastest inlet that has the dust");

    /** One dust of one zone as it comes to a station. */
    private record Part(String dust, Optional<String> zone, double mass_kg, double feed_kgPerS, int inlets) {
        double work_s() {
            return mass_kg / feed_kgPerS;
        }

        String words(Plant plant) {
            return plant.dust(dust).name() + zone.map(z -> " in zone " + z).orElse("");
        }
    }

    static PickingUp of(Plant plant, Shifts.Cleaning.PickedUp pickedUp, Station station, DustWays ways) {
        List<Part> parts = pickedUp.dusts().stream()
                .flatMap(pickUp -> part(plant, pickUp, station, ways).stream())
                .toList();
        List<String> without = parts.stream()
                .filter(part -> part.feed_kgPerS() <= 0)
                .map(part -> part.words(plant))
                .toList();
        return without.isEmpty()
                ? new PickingUp(longest(plant, parts), without)
                : new PickingUp(Optional.empty(), without);
    }

    /** Inlets that have a dust, where it is said to lie. */
    static List<Inlet> where(Plant plant, Shifts.PickUp pickUp) {
        return plant.inlets().stream()
                .filter(i -> i.dust().filter(pickUp.dust()::equals).isPresent())
                .filter(i -> pickUp.zone().map(i.zone()::equals).orElse(true))
                .toList();
    }

    /** Share of it that comes to a station, mean of its inlets. */
    static double share(List<Inlet> where, Station station, DustWays ways) {
        return where.stream()
                .mapToDouble(inlet -> ways.shareAlone(inlet, station))
                .average()
                .orElse(0);
    }

    private static Optional<Part> part(Plant plant, Shifts.PickUp pickUp, Station station, DustWays ways) {
        List<Inlet> where = where(plant, pickUp);
        double mass_kg = share(where, station, ways) * pickUp.perShift().kilograms();
        List<Inlet> here =
                where.stream().filter(i -> ways.shareAlone(i, station) > 0).toList();
        double fastest =
                here.stream().mapToDouble(i -> i.feed().kgPerSecond()).max().orElse(0);
        return mass_kg > 0
                ? Optional.of(new Part(pickUp.dust(), pickUp.zone(), mass_kg, fastest, here.size()))
                : Optional.empty();
    }

    private static Optional<Step> longest(Plant plant, List<Part> parts) {
        int users = Math.max(1, plant.usage().simultaneousUsers());
        List<Step> bounds = new ArrayList<>();
        bounds.add(step(plant, parts, users, "users at once"));
        Map<String, Integer> ofZone = new TreeMap<>();
        plant.usage()
                .zones()
                .forEach((Zone zone) -> ofZone.put(
                        zone.id(), Math.min(users, Math.max(1, zone.users().orElse(users)))));
        ofZone.forEach((zone, most) -> bounds.add(step(
                plant,
                parts.stream()
                        .filter(p -> p.zone().filter(zone::equals).isPresent())
                        .toList(),
                most,
                "users at once in zone " + zone)));
        for (Part part : parts) {
            bounds.add(step(plant, List.of(part), Math.min(users, part.inlets()), "users or inlets that have it"));
        }
        return bounds.stream()
                .filter(bound -> bound.result().value().si() > 0)
                .max(Comparator.comparingDouble(bound -> bound.result().value().si()));
    }

    private static Step step(Plant plant, List<Part> parts, int users, String who) {
        List<Term> inputs = new ArrayList<>();
        double work_s = 0;
        for (Part part : parts) {
            String words = part.words(plant);
            inputs.add(new Term("m(" + part.dust() + ")", words + ", a shift", new Mass(part.mass_kg())));
            inputs.add(
                    new Term("f(" + part.dust() + ")", "fastest inlet that has it", new MassFlow(part.feed_kgPerS())));
            work_s += part.work_s();
        }
        inputs.add(new Term("n", who, new Ratio(users)));
        return new Step(
                "DIS-10",
                "t = Σ (m / f) / n",
                inputs,
                new Term("t", "least time to pick it all up", new WorkingTime(work_s / users)),
                BOUND);
    }
}
