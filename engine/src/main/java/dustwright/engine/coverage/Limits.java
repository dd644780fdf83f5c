package dustwright.engine.coverage;

import dustwright.engine.network.TubingTree;
import dustwright.engine.plant.Plant;
import java.util.Set;
import java.util.stream.Collectors;

/** What the limits of a plant say about the runs of one tree. */
final class Limits {
    private final TubingTree tree;
    private final Counters counters;
    private final double factor;
    private final double only_mPerS;
    private final Set<String> dusty;

    /** Whether an upper velocity is stated for runs that carry dust. */
    final boolean wears;
    /** Whether a loading ratio is stated, and whether the published laws for carrying are asked. */
    final boolean loads;

    final boolean carriesByLaws;

    Limits(Plant plant, TubingTree tree, Counters counters) {
        this.tree = tree;
        this.counters = counters;
        factor = plant.requirements().transportFactor().value().value();
        wears = plant.requirements().wearVelocity().isPresent();
        loads = plant.requirements().loadingRatio().isPresent();
        carriesByLaws = plant.requirements().saltationFactor().isPresent();
        dusty = plant.runs().stream()
                .filter(run -> run.dust())
                .map(run -> run.id())
                .collect(Collectors.toSet());
        only_mPerS = plant.inlets().stream()
                .flatMap(inlet -> inlet.dust().stream())
                .mapToDouble(id -> plant.dust(id).minimumVelocity().metresPerSecond())
                .max()
                .orElse(0);
    }

    /** Whether a run is meant for dust. */
    boolean carries(int node) {
        return dusty.contains(tree.run(node));
    }

    /** Least velocity where a dust of this level runs [m/s]. */
    double least_mPerS(int level) {
        return factor * (counters.level_mPerS.length == 0 ? only_mPerS : counters.level_mPerS[level]);
    }
}
