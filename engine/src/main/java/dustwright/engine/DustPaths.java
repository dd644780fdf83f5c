package dustwright.engine;

import dustwright.engine.conveying.Dust;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which pieces carry which dust: followed along the flow from every open inlet, whatever its feed rate. */
final class DustPaths {
    /** Flow below this share of the largest is no path for dust [-]. */
    private static final double STILL = 1e-9;

    private final Map<String, Set<String>> dustsByLeg = new HashMap<>();
    private final Plant plant;

    private DustPaths(Plant plant) {
        this.plant = plant;
    }

    static DustPaths of(Plant plant, DutyPoint duty) {
        DustPaths paths = new DustPaths(plant);
        Map<String, List<LegResult>> leaving = leavingByNode(duty);
        Map<String, LegResult> hoses = new HashMap<>();
        duty.legs().stream().filter(l -> l.kind() == LegResult.Kind.HOSE).forEach(l -> hoses.put(l.id(), l));
        for (String id : duty.state().open()) {
            Inlet inlet = plant.inlet(id);
            inlet.dust().ifPresent(dust -> {
                LegResult hose = hoses.get(id);
                if (hose != null && hose.flow().kgPerSecond() > 0) {
                    paths.mark(hose, dust);
                    paths.follow(id, dust, leaving);
                }
            });
        }
        return paths;
    }

    private static Map<String, List<LegResult>> leavingByNode(DutyPoint duty) {
        double largest = duty.legs().stream()
                .mapToDouble(l -> Math.abs(l.flow().kgPerSecond()))
                .max()
                .orElse(0);
        Map<String, List<LegResult>> leaving = new LinkedHashMap<>();
        for (LegResult leg : duty.legs()) {
            double w = leg.flow().kgPerSecond();
            if (leg.kind() == LegResult.Kind.RUN && Math.abs(w) > STILL * largest) {
                leaving.computeIfAbsent(w > 0 ? leg.from() : leg.to(), n -> new java.util.ArrayList<>())
                        .add(leg);
            }
        }
        return leaving;
    }

    private void follow(String start, String dust, Map<String, List<LegResult>> leaving) {
        Deque<String> open = new ArrayDeque<>(List.of(start));
        Set<String> seen = new HashSet<>();
        while (!open.isEmpty()) {
            String node = open.removeFirst();
            if (!seen.add(node)) {
                continue;
            }
            for (LegResult leg : leaving.getOrDefault(node, List.of())) {
                mark(leg, dust);
                open.addLast(leg.flow().kgPerSecond() > 0 ? leg.to() : leg.from());
            }
        }
    }

    private void mark(LegResult leg, String dust) {
        dustsByLeg.computeIfAbsent(key(leg), k -> new HashSet<>()).add(dust);
    }

    private static String key(LegResult leg) {
        return leg.kind() + "/" + leg.id();
    }

    /** The dust in this piece with the largest lump or particle; empty where none is known. */
    Optional<Dust> coarsest(LegResult leg) {
        return dustsByLeg.getOrDefault(key(leg), Set.of()).stream()
                .map(plant::dust)
                .filter(dust -> dust.largestPiece().isPresent())
                .max(Comparator.comparing((Dust dust) -> dust.largestPiece().orElseThrow())
                        .thenComparing(Dust::id));
    }

    /** The dust in this piece that needs the most velocity; empty where the piece carries none. */
    Optional<Dust> mostDemanding(LegResult leg) {
        return dustsByLeg.getOrDefault(key(leg), Set.of()).stream()
                .map(plant::dust)
                .max(Comparator.comparing(Dust::minimumVelocity).thenComparing(Dust::id));
    }
}
