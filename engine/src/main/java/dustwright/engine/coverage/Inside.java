package dustwright.engine.coverage;

import dustwright.engine.network.LegDust;
import dustwright.engine.network.LegLaw;
import dustwright.engine.network.TubingTree;
import dustwright.engine.network.TubingTree.Wye;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.RecursiveAction;
import java.util.function.UnaryOperator;

/**
 * The sweep from the inlets to the receiver (equations COV-1 and COV-2): for every branch and every count of open inlets in it, the
 * greatest and the least flow over the pressure it is seen at. It does not depend on the station, so one sweep serves every number of
 * users and every condition of the filter.
 */
final class Inside {
    /** Marks a part that is the inlet at the node itself, or its open bleeds. */
    static final int INLET = -1;

    static final int BLEED = -2;

    /** Parts of an interval at whose ends the table of a piece's own law is looked at. */
    private static final int PARTS = 4;

    /** Branches smaller than this are swept by one thread. */
    private static final int ALONE = 24;

    final TubingTree tree;
    final Grid grid;
    final Counters counters;
    final Looked looked;

    /** Curve of an open hose, of its leak when closed, and of open bleeds, by node. */
    final Family[] inlet;

    private final Family[] bleed;
    private final int[][] zonesBelow;
    private final int[] branchSize;
    private final Family[] out;
    private final At[] at;
    private final Box box;
    private final Watch watch;

    /** Everything or some of what comes together at a node; who brings it, by part. */
    record At(Junction junction, List<Integer> who) {}

    Inside(TubingTree tree, Grid grid, Counters counters, Box box, Watch watch) {
        this.box = box;
        this.tree = tree;
        this.grid = grid;
        this.counters = counters;
        this.watch = watch;
        looked = new Looked(tree, grid);
        int size = tree.size();
        inlet = new Family[size];
        bleed = new Family[size];
        out = new Family[size];
        at = new At[size];
        zonesBelow = new int[size][];
        branchSize = new int[size];
        for (int node = size - 1; node >= 0; node--) {
            zonesBelow[node] = counters.zonesBelow(tree, node);
            branchSize[node] = 1;
            for (int child : tree.children(node)) {
                branchSize[node] += branchSize[child];
            }
            if (tree.inlet(node) != TubingTree.NONE) {
                LegMaps maps = new LegMaps(grid);
                inlet[node] = inletAt(node, maps);
                looked.atValve[node].legs(maps);
            }
            if (tree.bleeds(node)) {
                int here = node;
                double[] curve = sampled(u -> tree.bleeds_kgPerS(here, u));
                bleed[node] = single(counters.none(), curve);
            }
        }
    }

    private static Family single(int[] count, double[] curve) {
        return new Family(List.of(count), new double[][] {curve}, new double[][] {curve});
    }

    private Family inletAt(int node, LegMaps maps) {
        int number = tree.inlet(node);
        double[] leak = grid.curve();
        double perPlace = tree.leakPerPlace_kgPerS(number);
        for (int knot = 0; knot <= grid.intervals; knot++) {
            grid.put(leak, knot, perPlace * grid.place(knot), perPlace);
        }
        LegLaw law = tree.hose(number);
        LegDust dust = tree.hoseDust(number, counters.load_kgPerS(counters.one(number)));
        double[] hose = tree.hasTool(number)
                ? maps.outward(law, dust, sampled(u -> tree.tool_kgPerS(number, u)))
                : maps.fromStillAir(law, dust);
        if (!box.mayOpen(number)) {
            return single(counters.none(), leak);
        }
        if (!box.mayShut(number)) {
            return single(counters.one(number), hose);
        }
        double[][] curves = {leak, hose};
        return new Family(List.of(counters.none(), counters.one(number)), curves, curves);
    }

    /** A law of one piece, tabulated; its slope by a short central difference, its error twice the greatest seen between the knots. */
    private double[] sampled(java.util.function.DoubleUnaryOperator law) {
        double[] curve = grid.curve();
        double nudge = 1e-5;
        for (int knot = 1; knot <= grid.intervals; knot++) {
            double u = grid.place(knot);
            double slope = (law.applyAsDouble(u + nudge) - law.applyAsDouble(u - nudge)) / (2 * nudge);
            grid.put(curve, knot, law.applyAsDouble(u), slope);
        }
        grid.putStart(curve);
        grid.putError(curve, 0, grid.stepError(curve, 0));
        for (int i = 1; i < grid.intervals; i++) {
            double off = 0;
            for (int part = 1; part < PARTS; part++) {
                double u = grid.place(i) + part * grid.step / PARTS;
                off = Math.max(off, Math.abs(grid.value(curve, u) - law.applyAsDouble(u)));
            }
            grid.putError(curve, i, 2 * off);
        }
        return curve;
    }

    /** Sweeps the whole tree. */
    void sweep() {
        new Sweep(0).invoke();
    }

    private final class Sweep extends RecursiveAction {
        private static final long serialVersionUID = 1;
        private final int node;

        Sweep(int node) {
            this.node = node;
        }

        @Override
        protected void compute() {
            watch.goOn();
            List<Sweep> further = new ArrayList<>();
            for (int child : tree.children(node)) {
                further.add(new Sweep(child));
            }
            if (branchSize[node] > ALONE) {
                invokeAll(further);
            } else {
                further.forEach(Sweep::compute);
            }
            at[node] = everything(node);
            if (node > 0) {
                out[node] = throughLeg(node);
            }
            watch.did(1);
        }
    }

    private Family throughLeg(int node) {
        Family in = at[node].junction().family(looked.atNode[node]);
        LegMaps maps = new LegMaps(grid);
        double[][] most = new double[in.size()][];
        double[][] least = new double[in.size()][];
        for (int n = 0; n < in.size(); n++) {
            LegDust dust = dust(node, in.counts().get(n));
            most[n] = maps.outward(tree.law(node), dust, in.most(n));
            least[n] = in.single(n) ? most[n] : maps.outward(tree.law(node), dust, in.least(n));
        }
        looked.atEnd[node].legs(maps);
        return new Family(in.counts(), most, least);
    }

    /** What the dust of so many open inlets adds to the run from a node. */
    LegDust dust(int node, int[] count) {
        return tree.dust(node, counters.load_kgPerS(count));
    }

    /** Everything that comes together at a node. */
    private At everything(int node) {
        return together(node, Integer.MIN_VALUE, count -> counters.inside(count, zonesBelow[node]));
    }

    /** What comes together at a node besides one part of it, with all counts kept. */
    At besides(int node, int part) {
        return together(node, part, count -> count);
    }

    private At together(int node, int without, UnaryOperator<int[]> reduced) {
        List<Family> parts = new ArrayList<>();
        List<Integer> who = new ArrayList<>();
        if (bleed[node] != null) {
            parts.add(bleed[node]);
            who.add(BLEED);
        }
        if (inlet[node] != null && without != INLET) {
            parts.add(inlet[node]);
            who.add(INLET);
        }
        Optional<Wye> wye = tree.wye(node);
        int[] children = wye.map(w -> new int[] {w.branch(), w.run()}).orElse(tree.children(node));
        for (int child : children) {
            if (child != without) {
                parts.add(out[child]);
                who.add(child);
            }
        }
        Optional<Wye> joined = without == Integer.MIN_VALUE ? wye : Optional.empty();
        return new At(new Junction(grid, counters, parts, joined, reduced), List.copyOf(who));
    }

    /** Everything at a node, swept before. */
    At at(int node) {
        return at[node];
    }

    /** Envelopes of a branch, seen from the end of its leg. */
    Family out(int node) {
        return out[node];
    }

    /** Whether the inlet at a node is open in some set. */
    boolean mayOpen(int node) {
        return inlet[node] != null && box.mayOpen(tree.inlet(node));
    }

    int[] zonesBelow(int node) {
        return zonesBelow[node];
    }

    int branchSize(int node) {
        return branchSize[node];
    }

    /** Finds the open inlets that make an envelope of a branch at one place at the end of its leg. */
    void traceBranch(int node, int count, double u, boolean greatest, List<Integer> open) {
        double flow = grid.value(out[node].curve(count, greatest), u);
        LegDust dust = dust(node, out[node].counts().get(count));
        double far = new LegMaps(grid).upstream(tree.law(node), dust, grid.squared(u), flow);
        trace(node, at[node], count, grid.placeOf(far), greatest, open);
    }

    /** Finds the open inlets that make an envelope of some parts of a node at one place there. */
    void trace(int node, At some, int count, double u, boolean greatest, List<Integer> open) {
        Junction.Choice choice = some.junction().choose(count, u, greatest);
        for (int n = 0; n < some.who().size(); n++) {
            int who = some.who().get(n);
            if (who == INLET && inlet[node].counts().get(choice.count(n))[0] == 1) {
                open.add(tree.inlet(node));
            } else if (who >= 0) {
                traceBranch(who, choice.count(n), choice.place(n), greatest, open);
            }
        }
    }
}
