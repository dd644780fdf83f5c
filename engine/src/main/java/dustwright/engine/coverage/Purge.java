package dustwright.engine.coverage;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.Network;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A purge after each shift: every run in which dust may settle is blown through with so many inlets open together. For each run inlets are
 * opened one after another, each time the one that makes it fastest there; what is named is one way that is shown to do, not the best.
 *
 * @param sets inlets to open together, one set after another
 * @param left runs that no set of so many makes fast enough, with the finding of the fastest
 * @param least the least margin of a run that is blown through
 */
record Purge(List<List<String>> sets, List<Finding> left, Optional<Finding> least) {
    Purge {
        sets = List.copyOf(sets);
        left = List.copyOf(left);
    }

    /**
     * Finds a purge.
     *
     * @param slow runs in which air is too slow in some set
     * @param most inlets open together at most
     */
    static Purge of(Plant plant, State condition, List<String> slow, int most, Judging judging, Watch watch) {
        DutyPointSolver solver = new DutyPointSolver(Network.compile(plant));
        Map<String, Finding> best = new TreeMap<>();
        TreeSet<String> toDo = new TreeSet<>(slow);
        List<List<String>> sets = new ArrayList<>();
        for (String run : slow) {
            if (!toDo.contains(run)) {
                continue;
            }
            List<String> open = new ArrayList<>();
            boolean further = true;
            while (further && open.size() < most && toDo.contains(run)) {
                watch.goOn();
                further = false;
                List<Finding> found = List.of();
                double fastest = margin(best, run);
                List<String> chosen = open;
                for (Inlet inlet : plant.inlets()) {
                    List<String> wider = new ArrayList<>(open);
                    wider.add(inlet.id());
                    List<Finding> here = open.contains(inlet.id())
                            ? List.of()
                            : solver.solve(condition.withOpen(wider)).match(judging::of, why -> List.of());
                    Optional<Finding> own = velocity(here, run);
                    if (own.isPresent() && (own.get().margin() > fastest || !further)) {
                        further = true;
                        fastest = own.get().margin();
                        chosen = wider;
                        found = here;
                    }
                }
                open = new ArrayList<>(chosen);
                take(found, slow, best);
                toDo.removeIf(r -> margin(best, r) >= 0);
            }
            if (!toDo.contains(run)) {
                sets.add(open);
            }
        }
        List<Finding> left = toDo.stream()
                .flatMap(r -> Optional.ofNullable(best.get(r)).stream())
                .toList();
        Optional<Finding> least = best.values().stream()
                .filter(f -> f.margin() >= 0)
                .min((a, b) -> Double.compare(a.margin(), b.margin()));
        return new Purge(sets, left, least);
    }

    private static double margin(Map<String, Finding> best, String run) {
        Finding found = best.get(run);
        return found == null ? -Double.MAX_VALUE : found.margin();
    }

    private static void take(List<Finding> found, List<String> slow, Map<String, Finding> best) {
        for (String run : slow) {
            velocity(found, run).ifPresent(f -> best.merge(run, f, (a, b) -> b.margin() > a.margin() ? b : a));
        }
    }

    private static Optional<Finding> velocity(List<Finding> findings, String run) {
        return findings.stream()
                .filter(f -> f.code() == FindingCode.TRANSPORT_VELOCITY)
                .filter(f ->
                        f.where().kind() == Place.Kind.RUN && f.where().id().equals(run))
                .findFirst();
    }
}
