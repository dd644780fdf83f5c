package dustwright.engine.coverage;

import dustwright.engine.plant.Plant;

/** What the limits of a plant say about its runs. */
final class Limits {
    private final Counters counters;
    private final double factor;
    private final double only_mPerS;

    /** Whether an upper velocity is stated for runs that carry dust. */
    final boolean wears;
    /** Whether a loading ratio is stated, and whether the published laws for carrying are asked. */
    final boolean loads;

    final boolean carriesByLaws;

    Limits(Plant plant, Counters counters) {
        this.counters = counters;
        factor = plant.requirements().transportFactor().value().value();
        wears = plant.requirements().wearVelocity().isPresent();
        loads = plant.requirements().loadingRatio().isPresent();
        carriesByLaws = plant.requirements().saltationFactor().isPresent();
        only_mPerS = plant.inlets().stream()
                .flatMap(inlet -> inlet.dust().stream())
                .mapToDouble(id -> plant.dust(id).minimumVelocity().metresPerSecond())
                .max()
                .orElse(0);
    }

    /** Least velocity where a dust of this level runs [m/s]. */
    double least_mPerS(int level) {
        return factor * (counters.level_mPerS.length == 0 ? only_mPerS : counters.level_mPerS[level]);
    }
}
