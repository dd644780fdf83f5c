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

    private final Inside inside;
    private final TubingTree tree;
    private final Grid grid;
    private final Counters counters;
    private final Draw draw;
    private final Elsewhere elsewhere;
    private final int[] users;
    private final Watch watch;
    private final Check check;
    private final Extremes extremes;

    Outside(Inside inside, Draw draw, Elsewhere others, Limits limits, int[] users, Watch watch) {
        this.inside = inside;
        this.tree = inside.tree;
        this.grid = inside.grid;
        this.counters = inside.counters;
        this.draw = draw;
        this.elsewhere = withFeedsHere(others, inside.at(0).junction().counts(), users);
        this.users = users;
        this.watch = watch;
        check = new Check(grid);
        extremes = new Extremes(inside, elsewhere, limits, users, check);
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
        double[] machine = machine();
        double[][] curves = new double[elsewhere.counts().size()][];
        Arrays.fill(curves, machine);
        Frame root = new Frame(0, Optional.empty(), new Family(elsewhere.counts(), curves, curves));
        extremes.receiver(root, draw);
        new Sweep(root).invoke();
        return extremes.found();
    }

    /** Why the extremes may not be relied on; empty when they may. */
    String objection() {
        String own = extremes.objection(check);
        return own.isEmpty() ? extremes.objection(inside.check) : own;
    }

    /** Drawn by the station. */
    private double[] machine() {
        double[] curve = grid.curve();
        for (int knot = 0; knot <= grid.intervals; knot++) {
            double u = grid.place(knot);
            grid.put(curve, knot, draw.flow_kgPerS(u), draw.slope(u));
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
            if (inside.inlet[node] != null) {
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
        Check own = new Check(grid);
        Family drawn = drawnBelow(step, own);
        LegMaps maps = new LegMaps(grid);
        double[][] most = new double[drawn.size()][];
        double[][] least = new double[drawn.size()][];
        for (int n = 0; n < drawn.size(); n++) {
            LegDust dust = inside.dust(child, drawn.counts().get(n));
            most[n] = maps.inward(tree.law(child), dust, drawn.most(n));
            least[n] = drawn.single(n) ? most[n] : maps.inward(tree.law(child), dust, drawn.least(n));
        }
        own.legs(maps);
        check.add(own);
        Frame below = new Frame(child, Optional.of(step), new Family(drawn.counts(), most, least));
        extremes.run(child, step, drawn, below.drawn());
        return below;
    }

    private void hose(Frame frame) {
        int inlet = tree.inlet(frame.node());
        int[] one = counters.one(inlet);
        int[] zones = Arrays.copyOfRange(one, 1, 1 + counters.zones);
        Step step = step(frame, Inside.INLET, zones, List.of(one));
        Check own = new Check(grid);
        Family drawn = drawnBelow(step, own);
        check.add(own);
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
        double[] best = grid.curve();
        WyeMaps maps = new WyeMaps(grid);
        int[] lefts = step.mix().left(target);
        int[] rights = step.mix().right(target);
        for (int n = 0; n < lefts.length; n++) {
            double[] draws = above.curve(lefts[n], greatest);
            double[] brings = besides.curve(rights[n], !greatest);
            for (int knot = 0; knot <= grid.intervals; knot++) {
                double value;
                double slope;
                if (step.wye().isPresent()) {
                    Wye wye = step.wye().get();
                    maps.from(wye, step.part() == wye.branch(), draws, brings, grid.place(knot));
                    own.wye(maps, knot);
                    value = maps.flow;
                    slope = maps.slope;
                } else {
                    value = grid.at(draws, knot) - grid.at(brings, knot);
                    slope = grid.slopeAt(draws, knot) - grid.slopeAt(brings, knot);
                }
                if (n == 0 || (greatest ? value > grid.at(best, knot) : value < grid.at(best, knot))) {
                    grid.put(best, knot, value, slope);
                }
            }
        }
        return best;
    }
}
