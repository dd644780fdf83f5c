package dustwright.engine.coverage;

import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Ways of the air of a solved state, from where it enters to a receiver or a held point. In a ring air takes more than one. */
final class Ways {
    private final DutyPoint duty;

    Ways(DutyPoint duty) {
        this.duty = duty;
    }

    /** Hose and runs from an open inlet, at every point along the run with most air. */
    List<LegResult> from(String inlet) {
        List<LegResult> way = new ArrayList<>(hose(inlet).stream().toList());
        onward(inlet, way);
        return way;
    }

    /** The same through a run, back from it along the run that brings most air to every point; empty where it carries none. */
    Optional<List<LegResult>> through(String run) {
        return runs().filter(l -> l.id().equals(run)).findFirst().map(leg -> {
            List<LegResult> way = new ArrayList<>(List.of(leg));
            Optional<LegResult> before = entering(source(leg));
            while (before.isPresent()) {
                way.add(0, before.get());
                before = before.get().kind() == LegResult.Kind.HOSE ? Optional.empty() : entering(source(before.get()));
            }
            onward(end(leg), way);
            return way;
        });
    }

    /** Every piece that some of the air of an open inlet passes. */
    List<LegResult> passed(String inlet) {
        List<LegResult> passed = new ArrayList<>(hose(inlet).stream().toList());
        Set<String> reached = new TreeSet<>(Set.of(inlet));
        List<String> open = new ArrayList<>(List.of(inlet));
        while (!open.isEmpty()) {
            String at = open.remove(open.size() - 1);
            for (LegResult leg : runs().filter(l -> source(l).equals(at)).toList()) {
                passed.add(leg);
                if (reached.add(end(leg))) {
                    open.add(end(leg));
                }
            }
        }
        return passed;
    }

    /** Air runs from higher to lower pressure, so no way comes back to where it was. */
    private void onward(String from, List<LegResult> way) {
        Optional<LegResult> next = leaving(from);
        while (next.isPresent()) {
            way.add(next.get());
            next = leaving(end(next.get()));
        }
    }

    private Stream<LegResult> runs() {
        return duty.legs().stream()
                .filter(l -> l.kind() == LegResult.Kind.RUN && l.flow().kgPerSecond() != 0);
    }

    private Optional<LegResult> hose(String inlet) {
        return duty.legs().stream()
                .filter(l -> l.kind() == LegResult.Kind.HOSE && l.id().equals(inlet))
                .findFirst();
    }

    /** The open hose at a point, else the run that brings most air there. */
    private Optional<LegResult> entering(String at) {
        return duty.state().open().contains(at)
                ? hose(at)
                : runs().filter(l -> end(l).equals(at)).max(most());
    }

    private Optional<LegResult> leaving(String at) {
        return runs().filter(l -> source(l).equals(at)).max(most());
    }

    private static Comparator<LegResult> most() {
        return Comparator.comparingDouble(l -> Math.abs(l.flow().kgPerSecond()));
    }

    private static String source(LegResult leg) {
        return leg.flow().kgPerSecond() > 0 ? leg.from() : leg.to();
    }

    private static String end(LegResult leg) {
        return leg.flow().kgPerSecond() > 0 ? leg.to() : leg.from();
    }
}
