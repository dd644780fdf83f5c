package dustwright.engine.sizing;

import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.finding.Finding;
import dustwright.engine.sizing.Deadlock.Clash;
import dustwright.engine.sizing.Deadlock.Left;
import dustwright.engine.sizing.Deadlock.Nearest;
import dustwright.engine.sizing.Trials.Tried;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Finds which few states no design withstands together, and the design that misses least. */
final class Deadlocks {
    private static final int MOST_STATES = 8;
    /** A miss is told to half a percent. */
    private static final double MISS_STEP = 0.005;

    private static final double[] MISSES = {0.02, 0.05, 0.1, 0.2, 0.4, 0.8};
    private static final int MOST_PROOFS = 3;
    private static final int MOST_BOXES = 300;

    private final PartSearch search;
    private final List<Integer> choices;

    /**
     * Of a piece.
     *
     * @param choices numbers of its choices in the whole plant
     */
    Deadlocks(PartSearch search, List<Integer> choices) {
        this.search = search;
        this.choices = choices;
    }

    Deadlock found() {
        return new Deadlock(clash(), nearest());
    }

    // ---- states that exclude each other

    private List<Clash> clash() {
        List<Counterexample> chosen = new ArrayList<>();
        Boxes none = search.boxes().only(List.of());
        while (chosen.size() < MOST_STATES) {
            long[] box = none.all();
            if (!search.boxes().only(chosen).cut(box)) {
                return told(chosen);
            }
            Optional<Counterexample> last = emptying(box, chosen);
            if (last.isEmpty()) {
                return List.of();
            }
            chosen.add(last.get());
        }
        return List.of();
    }

    /** The first counterexample that, with those before it and those chosen, leaves nothing of a box. */
    private Optional<Counterexample> emptying(long[] box, List<Counterexample> chosen) {
        long[] before;
        do {
            before = box.clone();
            for (Counterexample example : search.boxes().examples()) {
                List<Counterexample> together = new ArrayList<>(chosen);
                together.add(example);
                if (!chosen.contains(example) && !search.boxes().only(together).cut(box)) {
                    return Optional.of(example);
                }
            }
        } while (!Arrays.equals(before, box));
        return Optional.empty();
    }

    private List<Clash> told(List<Counterexample> chosen) {
        List<Clash> clash = new ArrayList<>();
        for (int n = 0; n < chosen.size(); n++) {
            Counterexample example = chosen.get(n);
            long[] left = search.boxes().all();
            if (n == chosen.size() - 1) {
                search.boxes().only(chosen.subList(0, n)).cut(left);
            }
            List<Left> leaves = leaves(example);
            search.bounds()
                    .best(example, left)
                    .ifPresent(finding -> clash.add(new Clash(
                            new Worst(finding, example.state().open()), Coverage.words(example.state()), leaves)));
        }
        return clash;
    }

    private List<Left> leaves(Counterexample example) {
        long[] box = search.boxes().all();
        if (!search.boxes().only(List.of(example)).cut(box)) {
            return List.of();
        }
        List<Left> left = new ArrayList<>();
        for (int v = 0; v < box.length; v++) {
            List<String> options = new ArrayList<>();
            for (long rest = box[v]; rest != 0; rest &= rest - 1) {
                options.add(search.space()
                        .options(v)
                        .get(Long.numberOfTrailingZeros(rest))
                        .id());
            }
            if (options.size() < search.space().options(v).size()) {
                left.add(new Left(choices.get(v), options));
            }
        }
        return left;
    }

    // ---- the design that misses least

    private Optional<Nearest> nearest() {
        Optional<Nearest> best = Optional.empty();
        for (int n = 0; n < MOST_PROOFS; n++) {
            Optional<Reached> reached = reached();
            if (reached.isEmpty()) {
                return best;
            }
            int[] chosen = reached.get().chosen;
            Design design = search.prices().design(chosen);
            Tried tried = search.trials().judged(design.plant());
            Coverage coverage = tried.coverage().orElseThrow();
            double miss = miss(coverage);
            double least = reached.get().least;
            if (best.isEmpty() || miss < best.get().miss()) {
                best = Optional.of(new Nearest(design, coverage, miss, least));
            } else {
                Nearest kept = best.get();
                best = Optional.of(new Nearest(kept.design(), kept.coverage(), kept.miss(), least));
            }
            if (best.get().miss() <= least + 2 * MISS_STEP) {
                return best;
            }
            search.learn(tried.failing());
        }
        return best;
    }

    private static double miss(Coverage coverage) {
        return -coverage.answers().stream()
                .flatMap(a -> a.worst().stream())
                .map(Worst::finding)
                .mapToDouble(Finding::margin)
                .min()
                .orElse(0);
    }

    /** A design that misses by no more than some share in all that was learnt, and the share below which none was left. */
    private static final class Reached {
        private final int[] chosen;
        private final double least;

        Reached(int[] chosen, double least) {
            this.chosen = chosen;
            this.least = least;
        }
    }

    private Optional<Reached> reached() {
        double least = 0;
        for (double miss : MISSES) {
            Optional<int[]> chosen = within(miss);
            if (chosen.isPresent()) {
                return Optional.of(between(least, miss, chosen.get()));
            }
            least = miss;
        }
        return Optional.empty();
    }

    private Reached between(double below, double above, int[] chosen) {
        double least = below;
        double most = above;
        int[] reached = chosen;
        while (most - least > MISS_STEP) {
            double middle = (least + most) / 2;
            Optional<int[]> nearer = within(middle);
            if (nearer.isPresent()) {
                reached = nearer.get();
                most = middle;
            } else {
                least = middle;
            }
        }
        return new Reached(reached, least);
    }

    private Optional<int[]> within(double miss) {
        Boxes boxes = search.boxes().missing(miss);
        return search.cheapestLeft(boxes, boxes.all(), new int[] {MOST_BOXES});
    }
}
