package dustwright.engine;

import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The way of the air from a point to where it leaves the tubing: at each point along the largest flow. */
final class FlowPath {
    private FlowPath() {}

    /** Runs in the order the air passes them; empty where nothing flows. */
    static List<LegResult> downstream(DutyPoint duty, String start) {
        List<LegResult> path = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        String node = start;
        while (seen.add(node)) {
            Optional<LegResult> next = next(duty, node);
            if (next.isEmpty()) {
                break;
            }
            path.add(next.get());
            node = downstreamEnd(next.get());
        }
        return path;
    }

    /** The point a path ends at. */
    static String end(List<LegResult> path) {
        return downstreamEnd(path.get(path.size() - 1));
    }

    static String downstreamEnd(LegResult leg) {
        return leg.flow().kgPerSecond() > 0 ? leg.to() : leg.from();
    }

    private static Optional<LegResult> next(DutyPoint duty, String node) {
        return duty.legs().stream()
                .filter(l -> l.kind() == LegResult.Kind.RUN)
                .filter(l -> l.flow().kgPerSecond() > 0
                        ? l.from().equals(node)
                        : l.flow().kgPerSecond() < 0 && l.to().equals(node))
                .max(Comparator.comparingDouble(l -> Math.abs(l.flow().kgPerSecond())));
    }
}
