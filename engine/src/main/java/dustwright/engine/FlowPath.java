package dustwright.engine;

import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

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

    /**
     * Runs the air of an open inlet takes by way of a given run, in the order it passes them; empty where its air does not pass that run. In
     * a loop main this may be another way than that of the largest flow.
     */
    static List<LegResult> through(DutyPoint duty, String inlet, LegResult run) {
        Set<String> reached = reached(duty, inlet);
        List<LegResult> path = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        LegResult at = run;
        while (seen.add(at.id()) && reached.contains(upstreamEnd(at))) {
            path.add(at);
            String node = upstreamEnd(at);
            if (node.equals(inlet)) {
                Collections.reverse(path);
                path.addAll(downstream(duty, downstreamEnd(run)));
                return path;
            }
            Optional<LegResult> before = flowing(duty)
                    .filter(l -> downstreamEnd(l).equals(node) && reached.contains(upstreamEnd(l)))
                    .max(Comparator.comparingDouble(l -> Math.abs(l.flow().kgPerSecond())));
            if (before.isEmpty()) {
                break;
            }
            at = before.get();
        }
        return List.of();
    }

    /** Every point some of the air from a point passes. */
    private static Set<String> reached(DutyPoint duty, String start) {
        Set<String> reached = new HashSet<>();
        Deque<String> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            String node = open.removeFirst();
            if (reached.add(node)) {
                flowing(duty).filter(l -> upstreamEnd(l).equals(node)).forEach(l -> open.addLast(downstreamEnd(l)));
            }
        }
        return reached;
    }

    private static Stream<LegResult> flowing(DutyPoint duty) {
        return duty.legs().stream()
                .filter(l -> l.kind() == LegResult.Kind.RUN && l.flow().kgPerSecond() != 0);
    }

    /** The point a path ends at. */
    static String end(List<LegResult> path) {
        return downstreamEnd(path.get(path.size() - 1));
    }

    static String downstreamEnd(LegResult leg) {
        return leg.flow().kgPerSecond() > 0 ? leg.to() : leg.from();
    }

    private static String upstreamEnd(LegResult leg) {
        return leg.flow().kgPerSecond() > 0 ? leg.from() : leg.to();
    }

    private static Optional<LegResult> next(DutyPoint duty, String node) {
        return flowing(duty)
                .filter(l -> upstreamEnd(l).equals(node))
                .max(Comparator.comparingDouble(l -> Math.abs(l.flow().kgPerSecond())));
    }
}
