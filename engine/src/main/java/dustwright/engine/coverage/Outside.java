package dustwright.engine.coverage;

import dustwright.engine.coverage.Frame.Elsewhere;
import dustwright.engine.coverage.Frame.Step;
import dustwright.engine.coverage.Inside.At;
import dustwright.engine.network.LegDust;
import dustwright.engine.network.TubingTree;
import dustwright.engine.network.TubingTree.Draw;
import dustwright.engine.network.TubingTree.Wye;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.RecursiveAction;

/**
 * The sweep from the receiver back to the inlets (equation COV-3): for every leg and every count of open inlets outside it, the least
 * and the greatest flow that the rest of the plant draws from it. {@link Extremes} reads off what is worst on the way.
 */
final class Outside {
    private static final int ALONE = 24;
    /** Intervals that the station's own curve is kept beyond the places of all states. */
    private static final int CLEAR = 2;

    private final Inside inside;
    private final TubingTree tree;
    private final Grid grid;
    private final Counters counters;
    private final Draw draw;
    private final Elsewhere elsewhere;
    private final int[] users;
    private final Watch watch;
    private final Extremes extremes;
    private final double[] nothing;

    Outside(Inside inside, Draw draw, Elsewhere others, Limits limits, int[] users, boolean traced, Watch watch) {
        this.inside = inside;
        this.tree = inside.tree;
        this.grid = inside.grid;
        this.counters = inside.counters;
        this.draw = draw;
        nothing = grid.curve();
        this.elsewhere = withFeedsHere(others, inside.at(0).junction().counts(), users);
        this.users = users;
        this.watch = watch;
        extremes = new Extremes(inside, elsewhere, limits, users, traced);
    }

    /** Where feeds are counted, every count elsewhere goes with every count here that makes up the users asked. */
    private Elsewhere withFeedsHere(Elsewhere others, List<int[]> here, int[] asked) {
        if (counters.feeds == 0) {
            return others;
        }
        List<int[]> counts = new ArrayList<>();
        List<List<Integer>> open = new ArrayList<>();
        for (int n = 0; n < others.counts().size(); n++) {
            int[] there = others.counts().get(n);
            for (int[] count : here) {
                if (Arrays.stream(asked).anyMatch(all -> counters.together(count, there, all))) {
                    counts.add(counters.withFeeds(there, count));
                    open.add(others.open().get(n));
                }
            }
        }
        return new Elsewhere(counts, open);
    }

    /** Sweeps and finds every extreme, in the order of nodes. */
    List<Extreme> sweep() {
        double[] range = receiver();
        return sweep(range[0], range[1]);
    }

    /** Finds the extremes of the receiver, and between which places there all states stand; all places where the station has no kink. */
    double[] receiver() {
        extremes.receiver(root(machine(0, grid.place(grid.intervals))), draw);
        double[] range = extremes.receiverRange();
        if (draw.kinks(0, draw.greatest()).isEmpty()) {
            return new double[] {0, grid.place(grid.intervals)};
        }
        return new double[] {range[0] - CLEAR * grid.step, range[1] + CLEAR * grid.step};
    }

    /** Sweeps with what the station draws between two places, and along its tangents beyond. */
    List<Extreme> sweep(double from, double to) {
        new Sweep(root(machine(from, to))).invoke();
        return extremes.found();
    }

    /** Why the extremes may not be relied on; empty when they may. */
    Objection objection() {
        return extremes.objection();
    }

    private Frame root(double[] machine) {
        double[][] curves = new double[elsewhere.counts().size()][];
        Arrays.fill(curves, machine);
        return new Frame(0, Optional.empty(), new Family(elsewhere.counts(), curves, curves));
    }

    /**
     * Drawn by the station. Between two places as it is; beyond them, where no state stands, along the tangent, so that no kink there blurs
     * what is looked for.
     */
    private double[] machine(double from, double to) {
        double[] curve = grid.curve();
        for (int knot = 0; knot <= grid.intervals; knot++) {
            double u = grid.place(knot);
            double at = Math.max(Math.max(0, from), Math.min(to, u));
            grid.put(curve, knot, draw.flow_kgPerS(at) + draw.slope(at) * (u - at), draw.slope(at));
        }
        for (int i = 0; i < grid.intervals; i++) {
            if (grid.place(i + 1) > from && grid.place(i) < to) {
                double[] slopes = draw.slopes(Math.max(grid.place(i), from), Math.min(grid.place(i + 1), to));
                grid.putError(curve, i, grid.between(curve, i, slopes[0], slopes[1]));
            }
        }
        return curve;
    }

    private final class Sweep extends RecursiveAction {
        private static final long serialVersionUID = 1;
        private final transient Frame frame;

        Sweep(Frame frame) {
            this.frame = frame;
        }

        @Override
        protected void compute() {
            watch.goOn();
            int node = frame.node();
            if (inside.mayOpen(node)) {
                hose(frame);
            }
            List<Sweep> further = new ArrayList<>();
            for (int child : tree.children(node)) {
                further.add(new Sweep(child(frame, child)));
                if (inside.branchSize(node) <= ALONE) {
                    further.get(further.size() - 1).compute();
                }
            }
            if (inside.branchSize(node) > ALONE) {
                invokeAll(further);
            }
            watch.did(1);
        }
    }

    /** Goes through a leg away from the receiver, taking its extremes on the way. */
    private Frame child(Frame above, int child) {
        Step step =
                step(above, child, inside.zonesBelow(child), inside.out(child).counts());
        Family drawn = drawnBelow(step, extremes.looked().atEnd[child]);
        LegMaps maps = new LegMaps(grid);
        double[][] most = new double[drawn.size()][];
        double[][] least = new double[drawn.size()][];
        for (int n = 0; n < drawn.size(); n++) {
            LegDust dust = inside.dust(child, drawn.counts().get(n));
            most[n] = maps.inward(tree.law(child), dust, drawn.most(n));
            least[n] = drawn.single(n) ? most[n] : maps.inward(tree.law(child), dust, drawn.least(n));
        }
        extremes.looked().atNode[child].legs(maps);
        Frame below = new Frame(child, Optional.of(step), new Family(drawn.counts(), most, least));
        extremes.run(child, step, drawn, below.drawn());
        return below;
    }

    private void hose(Frame frame) {
        int inlet = tree.inlet(frame.node());
        int[] one = counters.one(inlet);
        int[] zones = Arrays.copyOfRange(one, 1, 1 + counters.zones);
        Step step = step(frame, Inside.INLET, zones, List.of(one));
        Family drawn = drawnBelow(step, extremes.looked().atValve[frame.node()]);
        extremes.hose(frame.node(), step, drawn);
    }

    /** @param counts what the part itself may count: outside counts that go with none of them are left out */
    private Step step(Frame above, int part, int[] zonesBelow, List<int[]> counts) {
        At besides = inside.besides(above.node(), part);
        Map<int[], Boolean> known = new TreeMap<>(Mix.ORDER);
        Mix mix = Mix.of(above.drawn().counts(), besides.junction().counts(), (drawn, beside) -> {
            int[] sum = counters.sum(drawn, beside);
            int[] feeds = counters.withoutFeeds(drawn, beside);
            if (sum.length == 0 || feeds.length == 0) {
                return new int[0];
            }
            int[] count = counters.withFeeds(counters.outside(sum, zonesBelow), feeds);
            return known.computeIfAbsent(count, c -> wanted(c, counts)) ? count : new int[0];
        });
        return new Step(above, mix, besides, tree.wye(above.node()), part);
    }

    private boolean wanted(int[] outside, List<int[]> inner) {
        return inner.stream()
                .anyMatch(count -> count[0] > 0
                        && counters.sameFeeds(count, outside)
                        && Arrays.stream(users).anyMatch(all -> counters.together(count, outside, all)));
    }

    /** What is drawn at the end of a leg: by the leg of the node it joins, less what else comes there. */
    private Family drawnBelow(Step step, Check own) {
        Family besides = step.besides().junction().family(own);
        Family above = step.above().drawn();
        Mix mix = step.mix();
        double[][] most = new double[mix.size()][];
        double[][] least = new double[mix.size()][];
        for (int target = 0; target < most.length; target++) {
            least[target] = drawnBelow(step, above, besides, target, false, own);
            boolean one = mix.left(target).length == 1
                    && above.single(mix.left(target)[0])
                    && besides.single(mix.right(target)[0]);
            most[target] = one ? least[target] : drawnBelow(step, above, besides, target, true, own);
        }
        return new Family(mix.counts(), most, least);
    }

    private double[] drawnBelow(Step step, Family above, Family besides, int target, boolean greatest, Check own) {
        int[] lefts = step.mix().left(target);
        int[] rights = step.mix().right(target);
        double[] best = grid.curve();
        double[][] candidates = new double[lefts.length][];
        for (int n = 0; n < lefts.length; n++) {
            double[] draws = above.curve(lefts[n], greatest);
            double[] brings = besides.curve(rights[n], !greatest);
            candidates[n] = step.wye().isPresent() ? behindWye(step, draws, brings, own) : draws;
            double[] less = step.wye().isPresent() ? nothing : brings;
            for (int knot = 0; knot <= grid.intervals; knot++) {
                double value = grid.at(candidates[n], knot) - grid.at(less, knot);
                double slope = grid.slopeAt(candidates[n], knot) - grid.slopeAt(less, knot);
                if (n == 0 || (greatest ? value > grid.at(best, knot) : value < grid.at(best, knot))) {
                    grid.put(best, knot, value, slope);
                }
            }
        }
        for (int n = 0; n < lefts.length; n++) {
            double[] less = step.wye().isPresent() ? nothing : besides.curve(rights[n], !greatest);
            grid.passed(best, candidates[n], less, -1, greatest);
        }
        return best;
    }

    private double[] behindWye(Step step, double[] draws, double[] brings, Check own) {
        WyeMaps maps = new WyeMaps(grid);
        Wye wye = step.wye().orElseThrow();
        boolean ofBranch = step.part() == wye.branch();
        double[] curve = grid.curve();
        double lastNode = 0;
        double lastOther = 0;
        double byAbove = 0;
        double bySibling = 0;
        for (int knot = 0; knot <= grid.intervals; knot++) {
            maps.from(wye, ofBranch, draws, brings, grid.place(knot));
            own.wye(maps, knot);
            grid.put(curve, knot, maps.flow, maps.slope);
            double other = ofBranch ? maps.runPlace : maps.branchPlace;
            if (knot > 0) {
                double above = Math.max(byAbove, Math.abs(maps.byAbove));
                double sibling = Math.max(bySibling, Math.abs(maps.bySibling));
                double carried = above * grid.errorBetween(draws, lastNode, maps.nodePlace)
                        + sibling * grid.errorBetween(brings, lastOther, other);
                grid.putError(curve, knot - 1, carried);
            }
            lastNode = maps.nodePlace;
            lastOther = other;
            byAbove = Math.abs(maps.byAbove);
            bySibling = Math.abs(maps.bySibling);
        }
        WyeMaps.bound(grid, curve);
        return curve;
    }
}
