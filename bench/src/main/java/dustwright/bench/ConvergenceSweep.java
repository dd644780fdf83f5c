package dustwright.bench;

import dustwright.engine.audit.Audit;
import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DustyPlants;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.RandomPlants;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Solves and audits seeded random plants of 5 to 300 legs and prints what came of it: half of them trees, half with loops; every
 * fourth pair has wyes whose loss depends on the split. With {@code dusty} every inlet picks up dust, deliberately too much of it
 * ({@link DustyPlants}), and half of the plants have wyes.
 *
 * <p>Usage: {@code ConvergenceSweep [number of plants] [dusty]}, 100 000 unless said.
 */
public final class ConvergenceSweep {
    private static final String[] KINDS = {"trees", "loops", "trees with wyes", "loops with wyes"};

    private ConvergenceSweep() {}

    /** Runs the sweep; ends with status 1 if any plant was not solved or not clean. */
    public static void main(String[] arguments) {
        int count = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 100_000;
        boolean dusty = List.of(arguments).contains("dusty");
        List<String> failures = new ArrayList<>();
        long[] plants = new long[KINDS.length];
        long[] steps = new long[KINDS.length];
        int[] mostSteps = new int[KINDS.length];
        double worstLegError = 0;
        for (int seed = 0; seed < count; seed++) {
            int kind = dusty ? seed % KINDS.length : kind(seed);
            RandomPlants.Case clean = plant(kind, seed, 5 + (seed * 37) % 296);
            RandomPlants.Case random = dusty ? DustyPlants.of(clean, seed) : clean;
            Outcome<DutyPoint> outcome = DutyPointSolver.solve(random.plant(), random.state());
            plants[kind]++;
            if (outcome instanceof Outcome.NotSolved<DutyPoint> not) {
                failures.add("seed " + seed + ": " + not.why());
                continue;
            }
            DutyPoint duty = ((Outcome.Solved<DutyPoint>) outcome).value();
            if (!Audit.of(random.plant(), duty).isEmpty()) {
                failures.add("seed " + seed + " not clean: "
                        + Audit.of(random.plant(), duty).get(0));
            }
            steps[kind] += duty.convergence().iterations();
            mostSteps[kind] = Math.max(mostSteps[kind], duty.convergence().iterations());
            worstLegError = Math.max(worstLegError, duty.convergence().worstLegError());
        }
        System.out.println("kind, plants, mean Newton steps, most Newton steps");
        for (int kind = 0; kind < KINDS.length; kind++) {
            System.out.printf(
                    Locale.ROOT,
                    "%s, %d, %.2f, %d%n",
                    KINDS[kind],
                    plants[kind],
                    plants[kind] == 0 ? 0 : steps[kind] / (double) plants[kind],
                    mostSteps[kind]);
        }
        System.out.println("worst leg error over the barometer's square: " + worstLegError);
        System.out.println("not solved or not clean: " + failures.size());
        failures.forEach(System.out::println);
        System.exit(failures.isEmpty() ? 0 : 1);
    }

    private static int kind(int seed) {
        return (seed / 2) % 4 == 3 ? 2 + seed % 2 : seed % 2;
    }

    private static RandomPlants.Case plant(int kind, int seed, int legs) {
        return switch (kind) {
            case 0 -> RandomPlants.tree(seed, legs);
            case 1 -> RandomPlants.loops(seed, legs);
            case 2 -> RandomPlants.wyes(seed, legs);
            default -> RandomPlants.wyesInLoops(seed, legs);
        };
    }
}
