package dustwright.engine;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Length;
import dustwright.engine.tubing.Bleed;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.Tube;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * One thing changed at the run in which dust settles worst, and the same set solved once more: a way to look in, not a design. All other
 * sets are left as they were.
 *
 * @param run the run the change is made for
 * @param state name of the set
 * @param change what was changed
 * @param there velocity that carries the dust in that run with the change; where the run itself is taken out, in the slowest run that is left;
 *     absent where the set has no answer
 * @param tightest the finding of the set with the smallest margin with the change
 */
public record Trial(String run, String state, Change change, Optional<Finding> there, Optional<Finding> tightest) {
    /** What is changed. */
    public sealed interface Change {
        /** The next smaller tube of the plant file in this run alone, or in every run of its size. */
        record SmallerTube(String tube, Length bore, boolean everyRun) implements Change {}

        /** A far-end bleed of the plant file that stands shut. */
        record OpenBleed(String bleed) implements Change {}

        /** A loop main opened by taking this run out. */
        record OpenLoop() implements Change {}
    }

    /** Trials for the worst failing velocity of a solved state; empty where dust settles in no run. */
    static List<Trial> of(Plant plant, StateAnswer answer) {
        return answer.findings().stream()
                .filter(f ->
                        f.code() == FindingCode.TRANSPORT_VELOCITY && f.where().kind() == Place.Kind.RUN)
                .min(Comparator.comparingDouble(Finding::margin))
                .filter(Finding::fails)
                .map(worst -> of(plant, answer.state(), plant.run(worst.where().id())))
                .orElse(List.of());
    }

    private static List<Trial> of(Plant plant, State state, Run run) {
        List<Trial> trials = new ArrayList<>();
        smaller(plant, run).ifPresent(tube -> {
            trials.add(withTube(plant, state, run, tube, false));
            trials.add(withTube(plant, state, run, tube, true));
        });
        for (Bleed bleed : plant.bleeds()) {
            if (!state.openBleeds().contains(bleed.id())) {
                Set<String> open = new HashSet<>(state.openBleeds());
                open.add(bleed.id());
                trials.add(tried(
                        plant,
                        state.withOpenBleeds(open),
                        run.id(),
                        new Change.OpenBleed(bleed.id()),
                        inRun(run.id())));
            }
        }
        if (inLoop(plant, run)) {
            Plant opened = withRuns(
                    plant,
                    plant.runs().stream().filter(r -> !r.id().equals(run.id())).toList());
            trials.add(tried(opened, state, run.id(), new Change.OpenLoop(), f -> true));
        }
        return trials;
    }

    private static Plant withRuns(Plant plant, List<Run> runs) {
        return plant.with(runs, plant.inlets(), plant.stations());
    }

    private static Optional<Tube> smaller(Plant plant, Run run) {
        Length bore = plant.tube(run.tube()).bore();
        return plant.tubes().stream().filter(t -> t.bore().compareTo(bore) < 0).max(Comparator.comparing(Tube::bore));
    }

    private static Trial withTube(Plant plant, State state, Run run, Tube tube, boolean everyRun) {
        Predicate<Run> changed = r -> everyRun ? r.tube().equals(run.tube()) : r.id().equals(run.id());
        Plant other = withRuns(
                plant,
                plant.runs().stream()
                        .map(r -> changed.test(r) ? r.in(tube.id()) : r)
                        .toList());
        Change change = new Change.SmallerTube(tube.id(), tube.bore(), everyRun);
        return tried(other, state, run.id(), change, inRun(run.id()));
    }

    private static Predicate<Finding> inRun(String run) {
        return f -> f.where().id().equals(run);
    }

    private static Trial tried(Plant plant, State state, String run, Change change, Predicate<Finding> where) {
        List<Finding> findings = solved(plant, state);
        return new Trial(
                run,
                state.name(),
                change,
                findings.stream()
                        .filter(f -> f.code() == FindingCode.TRANSPORT_VELOCITY
                                && f.where().kind() == Place.Kind.RUN)
                        .filter(where)
                        .min(Comparator.comparingDouble(Finding::margin)),
                findings.stream().min(Comparator.comparingDouble(Finding::margin)));
    }

    /** Findings of the set; empty where it has no answer, or where a formula refuses the change. */
    private static List<Finding> solved(Plant plant, State state) {
        try {
            return DutyPointSolver.solve(plant, state)
                    .match((DutyPoint duty) -> Study.judge(plant, duty), why -> List.<Finding>of());
        } catch (IllegalArgumentException outsideFormula) {
            return List.of();
        }
    }

    /** True when both ends of a run are joined without it. */
    private static boolean inLoop(Plant plant, Run run) {
        Deque<String> open = new ArrayDeque<>(List.of(run.from()));
        Set<String> seen = new HashSet<>(Set.of(Run.STILL_AIR));
        while (!open.isEmpty()) {
            String node = open.removeFirst();
            if (seen.add(node)) {
                plant.runs().stream()
                        .filter(r -> !r.id().equals(run.id()))
                        .flatMap(r -> r.from().equals(node)
                                ? Stream.of(r.to())
                                : r.to().equals(node) ? Stream.of(r.from()) : Stream.<String>empty())
                        .forEach(open::addLast);
            }
        }
        return seen.contains(run.to());
    }
}
