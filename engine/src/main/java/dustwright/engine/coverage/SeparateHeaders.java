package dustwright.engine.coverage;

import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Point;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.Tube;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * Separate headers that meet only at the receiver: where the main from a receiver first parts, every branch but one gets a main of its own
 * beside the one there is, with the same route.
 */
final class SeparateHeaders {
    private final Plant plant;

    SeparateHeaders(Plant plant) {
        this.plant = plant;
    }

    /**
     * The plant with separate headers; empty where its mains do not part on the way to the receiver of a run, or another inlet joins before.
     *
     * @param slow run that is too slow
     * @param smaller whether all mains, old and new, take the next smaller tube of the plant
     */
    Optional<Plant> of(String slow, boolean smaller) {
        List<Run> main = mainOf(slow);
        if (main.isEmpty()) {
            return Optional.empty();
        }
        List<Run> joining = joining(main.get(0).from());
        if (joining.size() < 2) {
            return Optional.empty();
        }
        UnaryOperator<Run> sized = run -> smaller ? nextSmaller(run) : run;
        List<Point> points = new ArrayList<>(plant.points());
        Map<String, Run> changed = new TreeMap<>();
        main.forEach(run -> changed.put(run.id(), sized.apply(run)));
        List<Run> added = new ArrayList<>();
        for (int header = 0; header < joining.size(); header++) {
            Run branch = joining.get(header);
            String suffix = " (header " + (header + 1) + ")";
            String from = header == 0 ? main.get(0).from() : main.get(0).from() + suffix;
            changed.put(branch.id(), branch.between(branch.id(), branch.from(), from, Optional.empty()));
            for (int n = 0; n < main.size() && header > 0; n++) {
                Run run = sized.apply(main.get(n));
                boolean last = n == main.size() - 1;
                added.add(run.between(
                        run.id() + suffix, run.from() + suffix, last ? run.to() : run.to() + suffix, run.wye()));
                String point = run.from();
                plant.points().stream()
                        .filter(p -> p.id().equals(point))
                        .forEach(p -> points.add(new Point(p.id() + suffix, p.at())));
            }
        }
        List<Run> runs = new ArrayList<>(plant.runs().stream()
                .map(run -> changed.getOrDefault(run.id(), run))
                .toList());
        runs.addAll(added);
        return Optional.of(plant.withPoints(points, runs));
    }

    private List<Run> joining(String point) {
        return plant.runs().stream().filter(run -> run.to().equals(point)).toList();
    }

    /** Runs from the point where the main of a run first parts, seen from the receiver, to the receiver; all by itself on the way. */
    private List<Run> mainOf(String slow) {
        List<Run> way = new ArrayList<>();
        Optional<Run> next = Optional.of(plant.run(slow));
        while (next.isPresent() && way.size() <= plant.runs().size()) {
            way.add(next.get());
            String to = next.get().to();
            next = plant.runs().stream().filter(run -> run.from().equals(to)).findFirst();
        }
        String end = way.get(way.size() - 1).to();
        if (plant.stations().stream().noneMatch(s -> s.id().equals(end))) {
            return List.of();
        }
        int first = way.size() - 1;
        while (first >= 0 && !parts(way.get(first).from())) {
            first--;
        }
        return first < 0 || ownInlet(way.get(first).from()) ? List.of() : way.subList(first, way.size());
    }

    private boolean parts(String point) {
        return joining(point).size() > 1 || ownInlet(point);
    }

    private boolean ownInlet(String point) {
        return plant.inlets().stream().anyMatch(i -> i.id().equals(point));
    }

    private Run nextSmaller(Run run) {
        double bore_m = plant.tube(run.tube()).bore().metres();
        return plant.tubes().stream()
                .filter(tube -> tube.bore().metres() < bore_m)
                .max(Comparator.comparing(Tube::bore))
                .map(tube -> run.in(tube.id()))
                .orElse(run);
    }
}
