package dustwright.engine.coverage;

import dustwright.engine.coverage.Extreme.Measure;
import dustwright.engine.coverage.Inside.At;
import dustwright.engine.network.LegLaw;
import dustwright.engine.network.TubingTree;
import dustwright.engine.network.TubingTree.Draw;
import dustwright.engine.network.TubingTree.Wye;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.RecursiveAction;
import java.util.stream.IntStream;

/**
 * The sweep from the receiver back to the inlets (equation COV-3): for every leg and every count of open inlets outside it, the least
 * and the greatest flow that the rest of the plant draws from it. Where such a curve meets that of the branch inside stands the extreme
 * of the leg (equation COV-5); the splits are traced back to the set of inlets that makes it.
 */
final class Outside {
    private static final int ALONE = 24;
    /** Velocities count as one within this share [-]. */
    private static final double SAME = 1e-9;
    /** From this share below sonic on, a piece is unchoked beyond doubt and its fastest set need not be solved [-]. */
    private static final double NEAR_SONIC = 0.05;

    private final Inside inside;
    private final TubingTree tree;
    private final Grid grid;
    private final Counters counters;
    private final Draw draw;
    private final Elsewhere elsewhere;
    private final Limits limits;
    private final int[] users;
    private final Watch watch;
    private final List<List<Extreme>> found = new ArrayList<>();
    private final Check check;
    private final double[] objectionFrom;
    private final double[] objectionTo;

    /** Counts that other trees of the plant may have, and a set for each. */
    record Elsewhere(List<int[]> counts, List<List<Integer>> open) {}

    /** What the limits of the plant say where. */
    interface Limits {
        /** Whether a run is meant for dust. */
        boolean carries(int node);

        /** Least velocity where a dust of this level runs [m/s]. */
        double least_mPerS(int level);

        /** Whether an upper velocity is stated for runs that carry dust. */
        boolean wears();
    }

    /** How curves outside a part of a node came about: from what the node's leg draws, and what else comes to the node. */
    private record Step(Frame above, Mix mix, At besides, Optional<Wye> wye, int part) {}

    /** A node with what the rest of the plant draws from it. */
    private record Frame(int node, Optional<Step> step, Family drawn) {}

    Outside(Inside inside, Draw draw, Elsewhere elsewhere, Limits limits, int[] users, Watch watch) {
        this.inside = inside;
        this.tree = inside.tree;
        this.grid = inside.grid;
        this.counters = inside.counters;
        this.draw = draw;
        this.elsewhere = elsewhere;
        this.limits = limits;
        this.users = users;
        this.watch = watch;
        check = new Check(grid);
        objectionFrom = new double[tree.size()];
        objectionTo = new double[tree.size()];
        Arrays.fill(objectionFrom, Double.MAX_VALUE);
        IntStream.range(0, tree.size()).forEach(n -> found.add(new ArrayList<>()));
    }

    /** Sweeps and finds every extreme, in the order of nodes. */
    List<Extreme> sweep() {
        double[] machine = machine();
        double[][] curves = new double[elsewhere.counts().size()][];
        Arrays.fill(curves, machine);
        Frame root = new Frame(0, Optional.empty(), new Family(elsewhere.counts(), curves, curves));
        receiver(root);
        new Sweep(root).invoke();
        return found.stream().flatMap(List::stream).toList();
    }

    /** Why the extremes may not be relied on; empty when they may. */
    String objection() {
        double from = Arrays.stream(objectionFrom).min().orElse(0);
        double to = Arrays.stream(objectionTo).max().orElse(1);
        String own = check.objection(from, to);
        return own.isEmpty() ? inside.check.objection(from, to) : own;
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
            int node = frame.node;
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
        Step step = step(above, child, inside.zonesBelow(child));
        Check own = new Check(grid);
        Family drawn = drawnBelow(step, own);
        LegMaps maps = new LegMaps(grid);
        LegLaw law = tree.law(child);
        double[][] most = new double[drawn.size()][];
        double[][] least = new double[drawn.size()][];
        for (int n = 0; n < drawn.size(); n++) {
            most[n] = maps.inward(law, drawn.most(n));
            least[n] = drawn.single(n) ? most[n] : maps.inward(law, drawn.least(n));
        }
        check.add(own);
        Frame below = new Frame(child, Optional.of(step), new Family(drawn.counts(), most, least));
        run(child, step, drawn, below.drawn);
        return below;
    }

    private Step step(Frame above, int part, int[] zonesBelow) {
        At besides = inside.besides(above.node, part);
        Mix mix = Mix.of(
                counters,
                above.drawn.counts(),
                besides.junction().counts(),
                count -> counters.outside(count, zonesBelow));
        return new Step(above, mix, besides, tree.wye(above.node), part);
    }

    /** What is drawn at the end of a leg: by the leg of the node it joins, less what else comes there. */
    private Family drawnBelow(Step step, Check own) {
        Family besides = step.besides.junction().family(own);
        Family above = step.above.drawn;
        double[][] most = new double[step.mix.size()][];
        double[][] least = new double[step.mix.size()][];
        for (int target = 0; target < most.length; target++) {
            least[target] = drawnBelow(step, above, besides, target, false, own);
            boolean one = step.mix.left(target).length == 1
                    && above.single(step.mix.left(target)[0])
                    && besides.single(step.mix.right(target)[0]);
            most[target] = one ? least[target] : drawnBelow(step, above, besides, target, true, own);
        }
        return new Family(step.mix.counts(), most, least);
    }

    private double[] drawnBelow(Step step, Family above, Family besides, int target, boolean greatest, Check own) {
        double[] best = grid.curve();
        WyeMaps maps = new WyeMaps(grid);
        int[] lefts = step.mix.left(target);
        int[] rights = step.mix.right(target);
        for (int n = 0; n < lefts.length; n++) {
            double[] draws = above.curve(lefts[n], greatest);
            double[] brings = besides.curve(rights[n], !greatest);
            for (int knot = 0; knot <= grid.intervals; knot++) {
                double value;
                double slope;
                if (step.wye.isPresent()) {
                    Wye wye = step.wye.get();
                    maps.from(wye, step.part == wye.branch(), draws, brings, grid.place(knot));
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

    // ---- extremes

    private void receiver(Frame root) {
        At all = inside.at(0);
        Family in = all.junction().family(new Check(grid));
        for (int n : users) {
            for (boolean most : new boolean[] {false, true}) {
                Best best = new Best();
                for (int i = 0; i < in.size(); i++) {
                    for (int o = 0; o < root.drawn.size(); o++) {
                        if (counters.together(
                                in.counts().get(i), root.drawn.counts().get(o), n)) {
                            double u = meetMachine(in.curve(i, most));
                            see(0, u);
                            best.offer(most ? u : -u, i, o, u);
                        }
                    }
                }
                if (best.any) {
                    List<Integer> open = new ArrayList<>(elsewhere.open().get(best.outside));
                    inside.trace(0, all, best.inside, best.place, most, open);
                    add(0, most ? Measure.MOST_DRAWN : Measure.LEAST_DRAWN, n, 0, open);
                }
            }
        }
    }

    /** Where a curve of the tubing meets the station's own, kinks and all. */
    private double meetMachine(double[] rising) {
        double low = 0;
        double high = draw.greatest();
        for (int n = 0; n < 60; n++) {
            double middle = 0.5 * (low + high);
            if (grid.value(rising, middle) < draw.flow_kgPerS(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private void run(int node, Step step, Family drawn, Family drawnFar) {
        Family out = inside.out(node);
        for (int n : users) {
            Best slowest = new Best();
            Best fastest = new Best();
            Best fastestDusty = new Best();
            double spared = Double.MAX_VALUE;
            double slowed = Double.MAX_VALUE;
            for (int i = 0; i < out.size(); i++) {
                int[] count = out.counts().get(i);
                boolean dusty = limits.carries(node) && counters.dusty(count);
                for (int o = 0; o < drawn.size(); o++) {
                    if (counters.together(count, drawn.counts().get(o), n)) {
                        double u = grid.meeting(out.most(i), drawn.most(o));
                        double spare = spareToSonic(node, tree.law(node), u, grid.value(out.most(i), u));
                        spared = Math.min(
                                spared,
                                1
                                        - (1 - spare)
                                                * overshoot(
                                                        drawn.most(o), u, grid.meeting(out.least(i), drawn.most(o))));
                        fastest.offer(spare, i, o, u);
                        if (dusty && limits.wears()) {
                            fastestDusty.offer(spare, i, o, u);
                        }
                        if (dusty) {
                            slowed = Math.min(slowed, slow(node, slowest, i, o, drawn, drawnFar));
                        }
                    }
                }
            }
            if ((fastest.any && spared < fastest.value - SAME) || (slowest.any && slowed < slowest.value - SAME)) {
                check.volumeFalls(tree.run(node));
            }
            if (fastest.any && fastest.value < NEAR_SONIC) {
                add(node, Measure.FASTEST_RUN, n, fastest.value, traced(node, step, fastest, true));
            }
            if (fastestDusty.any) {
                add(node, Measure.FASTEST_DUSTY_RUN, n, fastestDusty.value, traced(node, step, fastestDusty, true));
            }
            if (slowest.any) {
                add(node, Measure.SLOWEST_RUN, n, slowest.velocity, traced(node, step, slowest, false));
            }
        }
    }

    /** 1 less Mach number over that at which a pipe chokes, at the end of a leg [-]. */
    private double spareToSonic(int node, LegLaw law, double u, double flow) {
        see(node, u);
        double kinetic = law.c() * flow * flow;
        return 1 - Math.sqrt(kinetic / Math.max(grid.squared(u), kinetic));
    }

    /** Offers the velocity of a pair; returns the least margin that a meeting further along the curve outside could have. */
    private double slow(int node, Best slowest, int i, int o, Family drawn, Family drawnFar) {
        Family out = inside.out(node);
        LegLaw law = tree.law(node);
        double u = grid.meeting(out.least(i), drawn.least(o));
        see(node, u);
        double flow = grid.value(out.least(i), u);
        double inlet = new LegMaps(grid).upstream(law, grid.squared(u), flow);
        double velocity_mPerS = Math.sqrt(law.c() * tree.rt_JPerKg() / inlet) * flow;
        double shallow = grid.meeting(out.most(i), drawn.least(o));
        double shallowInlet = new LegMaps(grid).upstream(law, grid.squared(shallow), grid.value(out.most(i), shallow));
        double undershoot = undershoot(drawnFar.least(o), grid.placeOf(inlet), grid.placeOf(shallowInlet));
        double bound = Double.MAX_VALUE;
        for (int level = 0; level < Math.max(1, counters.level_mPerS.length); level++) {
            if (counters.level_mPerS.length == 0 || counters.has(out.counts().get(i), level)) {
                double ratio = velocity_mPerS / limits.least_mPerS(level);
                if (slowest.offer(ratio - 1, i, o, u)) {
                    slowest.velocity = velocity_mPerS;
                }
                bound = Math.min(bound, ratio * undershoot - 1);
            }
        }
        return bound;
    }

    /** Greatest volume flow drawn from a place down to a deeper one, over that at the place: 1 where it does not fall as pressure rises. */
    private double overshoot(double[] drawn, double u, double deepest) {
        double here = volume(grid.value(drawn, u), u);
        double most = here;
        for (int knot = (int) Math.ceil(u / grid.step); knot <= deepest / grid.step; knot++) {
            most = Math.max(most, volume(grid.at(drawn, knot), grid.place(knot)));
        }
        return most / here;
    }

    /** Least volume flow drawn from a place up to a shallower one, over that at the place: 1 where it does not fall as pressure rises. */
    private double undershoot(double[] drawn, double u, double shallowest) {
        double here = volume(grid.value(drawn, u), u);
        double least = here;
        for (int knot = (int) Math.ceil(shallowest / grid.step); knot <= u / grid.step; knot++) {
            least = Math.min(least, volume(grid.at(drawn, knot), grid.place(knot)));
        }
        return least / here;
    }

    private static double volume(double flow, double u) {
        return flow / Math.sqrt(1 - u * u);
    }

    private void hose(Frame frame) {
        int node = frame.node;
        int inlet = tree.inlet(node);
        Step step = step(frame, Inside.INLET, zonesOf(inlet));
        Check own = new Check(grid);
        Family drawn = drawnBelow(step, own);
        check.add(own);
        double[] hose = inside.inlet[node].most(1);
        int[] count = counters.one(inlet);
        for (int n : users) {
            for (boolean most : new boolean[] {false, true}) {
                Best best = new Best();
                for (int o = 0; o < drawn.size(); o++) {
                    if (counters.together(count, drawn.counts().get(o), n)) {
                        double u = grid.meeting(hose, drawn.curve(o, most));
                        see(node, u);
                        best.offer(most ? -u : u, 1, o, u);
                    }
                }
                if (!best.any) {
                    continue;
                }
                double flow = grid.value(hose, best.place);
                double spare = spareToSonic(node, tree.hose(inlet), best.place, flow);
                if (!most || spare < NEAR_SONIC) {
                    List<Integer> open = new ArrayList<>(List.of(inlet));
                    traceOutside(step, best.outside, best.place, most, open);
                    add(node, most ? Measure.FASTEST_HOSE : Measure.WEAKEST_TOOL, n, most ? spare : flow, open);
                }
            }
        }
    }

    private int[] zonesOf(int inlet) {
        int[] one = counters.one(inlet);
        return Arrays.copyOfRange(one, 1, 1 + counters.zones);
    }

    private List<Integer> traced(int node, Step step, Best best, boolean most) {
        List<Integer> open = new ArrayList<>();
        inside.traceBranch(node, best.inside, best.place, most, open);
        traceOutside(step, best.outside, best.place, most, open);
        return open;
    }

    /** Finds the open inlets outside a part of a node, at a place at the end of that part. */
    private void traceOutside(Step step, int target, double u, boolean greatest, List<Integer> open) {
        Family above = step.above.drawn;
        int[] lefts = step.mix.left(target);
        int[] rights = step.mix.right(target);
        WyeMaps maps = new WyeMaps(grid);
        double best = 0;
        int pair = 0;
        double node = u;
        double other = u;
        for (int n = 0; n < lefts.length; n++) {
            double[] draws = above.curve(lefts[n], greatest);
            double value;
            double nodeHere = u;
            double otherHere = u;
            if (step.wye.isPresent()) {
                Wye wye = step.wye.get();
                boolean branch = step.part == wye.branch();
                maps.from(wye, branch, draws, step.besides.junction().onlyPart(rights[n], !greatest), u);
                value = maps.flow;
                nodeHere = maps.nodePlace;
                otherHere = branch ? maps.runPlace : maps.branchPlace;
            } else {
                value = grid.value(draws, u) - step.besides.junction().value(rights[n], u, !greatest);
            }
            if (n == 0 || (greatest ? value > best : value < best)) {
                best = value;
                pair = n;
                node = nodeHere;
                other = otherHere;
            }
        }
        traceBesides(step, rights[pair], step.wye.isPresent() ? other : node, !greatest, open);
        traceAbove(step.above, lefts[pair], node, greatest, open);
    }

    private void traceBesides(Step step, int count, double u, boolean greatest, List<Integer> open) {
        inside.trace(step.above.node, step.besides, count, u, greatest, open);
    }

    private void traceAbove(Frame frame, int count, double u, boolean greatest, List<Integer> open) {
        if (frame.step.isEmpty()) {
            open.addAll(elsewhere.open().get(count));
            return;
        }
        double flow = grid.value(frame.drawn.curve(count, greatest), u);
        double near = new LegMaps(grid).downstream(tree.law(frame.node), grid.squared(u), flow);
        traceOutside(frame.step.get(), count, grid.placeOf(near), greatest, open);
    }

    private void add(int node, Measure measure, int n, double value, List<Integer> open) {
        String place = node == 0
                ? tree.station()
                : measure == Measure.WEAKEST_TOOL || measure == Measure.FASTEST_HOSE
                        ? tree.point(node)
                        : tree.run(node);
        found.get(node)
                .add(new Extreme(
                        place, measure, n, value, open.stream().sorted().toList()));
    }

    private void see(int node, double u) {
        objectionFrom[node] = Math.min(objectionFrom[node], u - grid.step);
        objectionTo[node] = Math.max(objectionTo[node], u + grid.step);
    }

    /** The least value offered so far; the first of equals. */
    private static final class Best {
        private boolean any;
        private double value;
        private int inside;
        private int outside;
        private double place;

        private double velocity;

        boolean offer(double offered, int in, int out, double u) {
            boolean better = !any || offered < value;
            if (better) {
                any = true;
                value = offered;
                inside = in;
                outside = out;
                place = u;
            }
            return better;
        }
    }
}
