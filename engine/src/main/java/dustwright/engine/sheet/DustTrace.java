package dustwright.engine.sheet;

import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.NodeResult;
import dustwright.engine.plant.Held;
import dustwright.engine.plant.Plant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Where the dust goes in one solved state, followed along the flow as solved and not as drawn: at every point it parts as the air does
 * (equation NET-7). The one place that says which share of an inlet's dust comes to which station.
 *
 * <pre>
 * s(point) · Σ w_out = Σ w_out · s(next),   s(station) = 1
 * </pre>
 */
final class DustTrace {
    /** Sweeps until nothing changes; one does where the pressure falls along every flow. */
    private static final int MOST_SWEEPS = 10_000;

    /** Runs that leave a point. */
    private final Map<String, List<LegResult>> leaving = new HashMap<>();
    /** All that leaves a point, be it by runs, as draw or through a leak [kg/s]. */
    private final Map<String, Double> out_kgPerS = new HashMap<>();
    /** Points from low pressure to high: what is downstream comes first. */
    private final List<String> points;

    private final Set<String> stations = new HashSet<>();
    private final Set<String> drawing = new HashSet<>();

    private DustTrace(Plant plant, DutyPoint duty) {
        plant.stations().forEach(station -> stations.add(station.id()));
        for (LegResult leg : duty.legs()) {
            double w = leg.flow().kgPerSecond();
            if (leg.kind() == LegResult.Kind.RUN && w != 0) {
                String upstream = w > 0 ? leg.from() : leg.to();
                leaving.computeIfAbsent(upstream, point -> new ArrayList<>()).add(leg);
                out_kgPerS.merge(upstream, Math.abs(w), Double::sum);
            } else if (leg.kind() == LegResult.Kind.HOSE && w > 0) {
                drawing.add(leg.id());
            }
        }
        for (InletResult inlet : duty.inlets()) {
            out_kgPerS.merge(inlet.id(), Math.max(0, -inlet.flow().kgPerSecond()), Double::sum);
        }
        for (Held held : plant.held()) {
            if (held instanceof Held.Supply supply) {
                out_kgPerS.merge(supply.point(), Math.max(0, -supply.into().kgPerSecond()), Double::sum);
            }
        }
        points = duty.nodes().stream()
                .sorted(Comparator.comparing(NodeResult::pressure).thenComparing(NodeResult::id))
                .map(NodeResult::id)
                .toList();
    }

    static DustTrace of(Plant plant, DutyPoint duty) {
        return new DustTrace(plant, duty);
    }

    /** Share of the dust of every open inlet that comes to a station, by inlet; without those whose dust goes elsewhere. */
    Map<String, Double> sharesTo(String station) {
        Map<String, Double> shares = new HashMap<>();
        shares.put(station, 1.0);
        boolean moves = true;
        for (int sweep = 0; moves && sweep < MOST_SWEEPS; sweep++) {
            moves = false;
            for (String point : points) {
                if (!stations.contains(point) && leaving.containsKey(point)) {
                    double share = share(point, shares);
                    moves |= share != shares.getOrDefault(point, 0.0);
                    shares.put(point, share);
                }
            }
        }
        shares.keySet().retainAll(drawing);
        shares.values().removeIf(share -> share == 0);
        return shares;
    }

    private double share(String point, Map<String, Double> shares) {
        double arriving_kgPerS = 0;
        for (LegResult leg : leaving.getOrDefault(point, List.of())) {
            double w = leg.flow().kgPerSecond();
            arriving_kgPerS += Math.abs(w) * shares.getOrDefault(w > 0 ? leg.to() : leg.from(), 0.0);
        }
        return arriving_kgPerS / out_kgPerS.getOrDefault(point, arriving_kgPerS);
    }
}
