package dustwright.documents.drawing;

import dustwright.engine.plant.Held;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.tubing.Run;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A scheme of a plant without places: receivers at the right, one column to the left per run walked away from them, a row for each line and
 * one below it for the open ends beside it. Runs that close a loop are drawn as slanted lines between their points.
 */
final class SchemeLayout {
    private final Plant plant;
    private final Map<String, List<Run>> runsAt = new LinkedHashMap<>();
    private final Map<String, Integer> column = new LinkedHashMap<>();
    private final Map<String, Spot> places = new LinkedHashMap<>();
    private final Map<String, List<Run>> branches = new LinkedHashMap<>();
    private final Set<String> treeRuns = new HashSet<>();
    private final Map<String, Integer> depths = new LinkedHashMap<>();
    private final List<List<Double>> rows = new ArrayList<>();

    private SchemeLayout(Plant plant) {
        this.plant = plant;
        for (Run run : plant.runs()) {
            runsAt.computeIfAbsent(end(run, run.from()), id -> new ArrayList<>())
                    .add(run);
            runsAt.computeIfAbsent(end(run, run.to()), id -> new ArrayList<>()).add(run);
        }
    }

    static Layout of(Plant plant) {
        SchemeLayout scheme = new SchemeLayout(plant);
        scheme.roots().forEach(scheme::walk);
        Map<String, List<Spot>> runs = new LinkedHashMap<>();
        plant.runs().forEach(run -> runs.put(run.id(), scheme.line(run)));
        Map<String, Spot> named = new LinkedHashMap<>(scheme.places);
        plant.runs().forEach(run -> named.remove(run.id() + "/" + Run.STILL_AIR));
        return new Layout(Layout.Kind.SCHEME, runs, named, List.of(), Optional.empty(), 0);
    }

    /** Still air is one place for each run that starts in it. */
    private static String end(Run run, String id) {
        return id.equals(Run.STILL_AIR) ? run.id() + "/" + Run.STILL_AIR : id;
    }

    /** Receivers first, then held points, then whatever is left: every piece of a plant in several parts is reached. */
    private List<String> roots() {
        List<String> roots = new ArrayList<>();
        plant.stations().stream().map(Station::id).filter(runsAt::containsKey).forEach(roots::add);
        plant.held().stream().map(Held::point).filter(runsAt::containsKey).forEach(roots::add);
        roots.addAll(runsAt.keySet());
        return roots;
    }

    private void walk(String root) {
        if (column.containsKey(root)) {
            return;
        }
        column.put(root, 0);
        Deque<String> waiting = new ArrayDeque<>(List.of(root));
        while (!waiting.isEmpty()) {
            String here = waiting.removeFirst();
            for (Run run : runsAt.getOrDefault(here, List.of())) {
                String far = other(run, here);
                if (!column.containsKey(far)) {
                    column.put(far, known(column, here) + 1);
                    branches.computeIfAbsent(here, id -> new ArrayList<>()).add(run);
                    treeRuns.add(run.id());
                    waiting.addLast(far);
                }
            }
        }
        placeRows(root);
    }

    private static String other(Run run, String here) {
        String from = end(run, run.from());
        return from.equals(here) ? end(run, run.to()) : from;
    }

    /**
     * Each line goes on straight into its deepest branch. Open ends beside it hang half a column off on the first free row below; other
     * branches get rows of their own further down, those far from the receiver first, so that lines do not cross.
     */
    private void placeRows(String root) {
        Deque<String> lineStarts = new ArrayDeque<>(List.of(root));
        while (!lineStarts.isEmpty()) {
            List<String> line = straightLine(lineStarts.removeFirst());
            int row = rows.size();
            rows.add(new ArrayList<>());
            line.forEach(id -> places.put(id, new Spot(-known(column, id), -row)));
            List<String> further = new ArrayList<>();
            for (String here : line) {
                for (String beside : besides(here, line)) {
                    if (branches.containsKey(beside)) {
                        further.add(beside);
                    } else {
                        hang(beside, -known(column, here), row + 1);
                    }
                }
            }
            Collections.reverse(further);
            further.forEach(lineStarts::addFirst);
        }
    }

    private List<String> straightLine(String start) {
        List<String> line = new ArrayList<>(List.of(start));
        String here = start;
        while (branches.containsKey(here)) {
            String from = here;
            here = onward(from).stream()
                    .max(Comparator.comparingInt(this::depth))
                    .orElseThrow();
            line.add(here);
        }
        return line;
    }

    private List<String> besides(String here, List<String> line) {
        return onward(here).stream().filter(id -> !line.contains(id)).toList();
    }

    private List<String> onward(String here) {
        return branches.getOrDefault(here, List.of()).stream()
                .map(run -> other(run, here))
                .toList();
    }

    /** The first row from {@code least} on where nothing hangs within half a column. */
    private void hang(String id, double x, int least) {
        int row = least;
        while (row < rows.size() && rows.get(row).contains(x)) {
            row++;
        }
        while (rows.size() <= row) {
            rows.add(new ArrayList<>());
        }
        rows.get(row).add(x);
        places.put(id, new Spot(x - 0.5, -row));
    }

    /** Runs from here to the farthest open end behind it. */
    private int depth(String top) {
        Deque<String> path = new ArrayDeque<>(List.of(top));
        while (!path.isEmpty()) {
            String here = path.peekLast();
            List<String> beyond = onward(here);
            List<String> unknown =
                    beyond.stream().filter(id -> !depths.containsKey(id)).toList();
            if (unknown.isEmpty()) {
                depths.put(
                        here,
                        1
                                + beyond.stream()
                                        .mapToInt(id -> known(depths, id))
                                        .max()
                                        .orElse(0));
                path.removeLast();
            } else {
                path.addAll(unknown);
            }
        }
        return known(depths, top);
    }

    /** A branch leaves its junction upright and runs level to the left; a run that closes a loop is a slanted line. */
    private List<Spot> line(Run run) {
        Spot from = known(places, end(run, run.from()));
        Spot to = known(places, end(run, run.to()));
        if (!treeRuns.contains(run.id())) {
            return List.of(from, to);
        }
        boolean towardsRoot = from.x() < to.x();
        Spot near = towardsRoot ? to : from;
        Spot far = towardsRoot ? from : to;
        Spot corner = new Spot(near.x(), far.y());
        List<Spot> line = near.y() == far.y() ? List.of(far, near) : List.of(far, corner, near);
        return towardsRoot ? line : reversed(line);
    }

    private static <T> T known(Map<String, T> map, String id) {
        return Objects.requireNonNull(map.get(id));
    }

    private static List<Spot> reversed(List<Spot> line) {
        List<Spot> turned = new ArrayList<>(line);
        Collections.reverse(turned);
        return turned;
    }
}
