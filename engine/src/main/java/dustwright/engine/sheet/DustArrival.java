package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What one solved state brings to a receiver.
 *
 * @param station what the receiver's station does in it
 * @param inlets open ones whose air comes here
 * @param dusts in the order of the plant file, each with its rate
 */
record DustArrival(DutyPoint duty, StationResult station, List<Inlet> inlets, List<Share> dusts) {
    /** One dust and how much of it arrives. */
    record Share(Dust dust, MassFlow rate) {}

    /** Follows the air back from the receiver; where streams part between receivers the dust is shared as the solver says. */
    static DustArrival of(Plant plant, DutyPoint duty, String station) {
        Set<String> upstream = upstream(duty, station);
        List<Inlet> inlets = duty.state().open().stream()
                .filter(upstream::contains)
                .map(plant::inlet)
                .toList();
        Map<String, Double> fed = new LinkedHashMap<>();
        for (Inlet inlet : inlets) {
            inlet.dust()
                    .filter(dust -> duty.state().feeding().contains(inlet.id()))
                    .ifPresent(dust -> fed.merge(dust, inlet.feed().kgPerSecond(), Double::sum));
        }
        double fed_kgPerS = fed.values().stream().mapToDouble(rate -> rate).sum();
        double share = fed_kgPerS > 0 ? arriving_kgPerS(duty, station) / fed_kgPerS : 0;
        List<Share> dusts = plant.dusts().stream()
                .filter(dust -> fed.containsKey(dust.id()))
                .map(dust -> new Share(dust, new MassFlow(fed.getOrDefault(dust.id(), 0.0) * share)))
                .toList();
        return new DustArrival(duty, result(duty, station), inlets, dusts);
    }

    /** Every point whose air comes to a station, the station itself included. */
    private static Set<String> upstream(DutyPoint duty, String station) {
        Map<String, List<String>> into = new HashMap<>();
        for (LegResult leg : duty.legs()) {
            if (leg.kind() == LegResult.Kind.RUN && leg.flow().kgPerSecond() != 0) {
                boolean forward = leg.flow().kgPerSecond() > 0;
                into.computeIfAbsent(downstream(leg), k -> new ArrayList<>()).add(forward ? leg.from() : leg.to());
            }
        }
        Set<String> seen = new HashSet<>();
        Deque<String> open = new ArrayDeque<>(List.of(station));
        while (!open.isEmpty()) {
            String node = open.removeFirst();
            if (seen.add(node)) {
                open.addAll(into.getOrDefault(node, List.of()));
            }
        }
        return seen;
    }

    private static double arriving_kgPerS(DutyPoint duty, String station) {
        return duty.legs().stream()
                .filter(leg ->
                        leg.kind() == LegResult.Kind.RUN && downstream(leg).equals(station))
                .mapToDouble(leg -> leg.dust().kgPerSecond())
                .sum();
    }

    private static String downstream(LegResult leg) {
        return leg.flow().kgPerSecond() > 0 ? leg.to() : leg.from();
    }

    private static StationResult result(DutyPoint duty, String station) {
        return duty.stations().stream()
                .filter(s -> s.id().equals(station))
                .findFirst()
                .orElseThrow();
    }

    String state() {
        return duty.state().name();
    }

    /** All dust. */
    MassFlow total() {
        return new MassFlow(
                dusts.stream().mapToDouble(s -> s.rate().kgPerSecond()).sum());
    }

    boolean any() {
        return total().kgPerSecond() > 0;
    }

    /** Names of dusts that arrive without a loose bulk density: their volume is not known. */
    List<String> withoutDensity() {
        return dusts.stream()
                .map(Share::dust)
                .filter(dust -> dust.looseBulkDensity().isEmpty())
                .map(Dust::name)
                .toList();
    }

    /** Loose volume of the dust; absent where a bulk density is missing. */
    Optional<ActualVolumeFlow> volume() {
        if (!withoutDensity().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new ActualVolumeFlow(dusts.stream()
                .mapToDouble(s -> s.rate().kgPerSecond()
                        / s.dust()
                                .looseBulkDensity()
                                .map(Density::kgPerCubicMetre)
                                .orElse(1.0))
                .sum()));
    }

    /** Loose bulk density of the mixture; absent where one is missing. */
    Optional<Density> density() {
        return volume().map(volume -> new Density(total().kgPerSecond() / volume.cubicMetresPerSecond()));
    }
}
