package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.Place;
import dustwright.engine.hazard.DustFamily;
import dustwright.engine.plant.Held;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A station, or a point of held pressure where tubing leaves the plant file, with everything its tubing is joined to. Valves and flow are
 * not asked: what is joined may be collected together.
 */
public record Collecting(Place place, Optional<Station> station, List<Inlet> inlets, List<Run> runs, List<Dust> dusts) {
    public Collecting {
        inlets = List.copyOf(inlets);
        runs = List.copyOf(runs);
        dusts = List.copyOf(dusts);
    }

    /** Two dusts that must not meet here, and why. */
    public record Clash(Dust one, Dust other, String why) {}

    /** Every place of a plant where dust is collected. */
    public static List<Collecting> all(Plant plant) {
        List<Collecting> all = new ArrayList<>();
        for (Station station : plant.stations()) {
            all.add(of(plant, new Place(Place.Kind.STATION, station.id()), Optional.of(station)));
        }
        for (Held held : plant.held()) {
            boolean inStation = plant.stations().stream().anyMatch(s -> s.id().equals(held.point()));
            if (draws(held) && !inStation) {
                all.add(of(plant, new Place(Place.Kind.POINT, held.point()), Optional.empty()));
            }
        }
        return all;
    }

    /** Air leaves the plant file here: to a held vacuum, or by a held draw. */
    private static boolean draws(Held held) {
        return held instanceof Held.Pressure
                || (held instanceof Held.Supply supply && supply.into().kgPerSecond() < 0);
    }

    private static Collecting of(Plant plant, Place place, Optional<Station> station) {
        Set<String> joined = joined(plant, place.id());
        List<Inlet> inlets =
                plant.inlets().stream().filter(i -> joined.contains(i.id())).toList();
        Set<String> dusts = new HashSet<>();
        inlets.forEach(inlet -> inlet.dust().ifPresent(dusts::add));
        List<Dust> named =
                plant.dusts().stream().filter(d -> dusts.contains(d.id())).toList();
        List<String> unnamed =
                inlets.stream().filter(i -> i.dust().isEmpty()).map(Inlet::id).toList();
        // beside a dust that burns an unnamed one is told once; where none does, it is the one that may
        boolean mayBurn =
                !unnamed.isEmpty() && !plant.dusts().isEmpty() && named.stream().noneMatch(Dust::burns);
        return new Collecting(
                place,
                station,
                inlets,
                plant.runs().stream()
                        .filter(r -> joined.contains(r.from()) || joined.contains(r.to()))
                        .toList(),
                mayBurn
                        ? Stream.concat(named.stream(), Stream.of(Dust.notNamed(unnamed)))
                                .toList()
                        : named);
    }

    private static Set<String> joined(Plant plant, String start) {
        Map<String, List<String>> next = new HashMap<>();
        for (Run run : plant.runs()) {
            if (!run.from().equals(Run.STILL_AIR)) {
                next.computeIfAbsent(run.from(), id -> new ArrayList<>()).add(run.to());
                next.computeIfAbsent(run.to(), id -> new ArrayList<>()).add(run.from());
            }
        }
        Set<String> joined = new HashSet<>(Set.of(start));
        List<String> open = new ArrayList<>(List.of(start));
        while (!open.isEmpty()) {
            for (String id : next.getOrDefault(open.remove(open.size() - 1), List.of())) {
                if (joined.add(id)) {
                    open.add(id);
                }
            }
        }
        return joined;
    }

    /** Dusts that are combustible, or that nobody has shown not to be. */
    public List<Dust> burning() {
        return dusts.stream().filter(Dust::burns).toList();
    }

    /** Dusts of a combustible light metal. */
    List<Dust> lightMetals() {
        return burning().stream().filter(d -> d.card().lightMetal()).toList();
    }

    /** Combustible metal dusts. */
    public List<Dust> metals() {
        return burning().stream().filter(d -> d.card().metal()).toList();
    }

    /** Combustible dusts of which nobody has said what they are made of: each may be a metal. */
    public List<Dust> unnamed() {
        return burning().stream().filter(d -> d.card().family().isEmpty()).toList();
    }

    /** Inlets whose dust nobody has named. */
    public List<Inlet> undusted() {
        return inlets.stream().filter(i -> i.dust().isEmpty()).toList();
    }

    /** Every pair that must not meet. */
    public List<Clash> clashes() {
        List<Clash> clashes = new ArrayList<>();
        for (int n = 0; n < dusts.size(); n++) {
            for (int m = n + 1; m < dusts.size(); m++) {
                Dust one = dusts.get(n);
                Dust other = dusts.get(m);
                one.card()
                        .family()
                        .flatMap(family -> other.card().family().flatMap(family::apartFrom))
                        .ifPresent(why -> clashes.add(new Clash(one, other, why)));
            }
        }
        return clashes;
    }

    /** Metal dusts of which nobody has said whether they are of one family. */
    List<Dust> otherMetals() {
        List<Dust> other = dusts.stream()
                .filter(d -> d.card()
                        .family()
                        .filter(f -> f == DustFamily.OTHER_METAL)
                        .isPresent())
                .toList();
        return other.size() > 1 ? other : List.of();
    }

    /** Runs that end at the station. */
    List<String> mains() {
        return runs.stream()
                .filter(r -> r.to().equals(place.id()) || r.from().equals(place.id()))
                .map(Run::id)
                .toList();
    }

    /** Which inlets pick each dust up, in the order of the plant file. */
    Map<Dust, List<String>> where() {
        Map<Dust, List<String>> where = new LinkedHashMap<>();
        for (Dust dust : dusts) {
            where.put(
                    dust,
                    inlets.stream()
                            .filter(i -> i.dust().map(dust.id()::equals).orElse(dust.isNotNamed()))
                            .map(Inlet::id)
                            .toList());
        }
        return where;
    }
}
