package dustwright.engine.coverage;

import dustwright.engine.coverage.Extreme.Measure;
import dustwright.engine.coverage.Frame.Elsewhere;
import dustwright.engine.coverage.Frame.Step;
import dustwright.engine.network.LegDust;
import dustwright.engine.network.LegLaw;
import dustwright.engine.network.TubingTree;
import dustwright.engine.network.TubingTree.Draw;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The extremes of every run, hose and receiver: where the curve drawn by the rest of the plant meets that of the branch inside stands the
 * extreme of the leg (equation COV-5); the splits are traced back to the set of inlets that makes it.
 */
final class Extremes {
    /** Velocities count as one within this share [-]. */
    private static final double SAME = 1e-9;
    /** From this share below sonic on, a piece is unchoked beyond doubt and its fastest set need not be solved [-]. */
    private static final double NEAR_SONIC = 0.05;
    /** Places between two pressures at which the laws of conveying are looked at. */
    private static final int LOOKS = 8;

    private final Inside inside;
    private final TubingTree tree;
    private final Grid grid;
    private final Counters counters;
    private final Elsewhere elsewhere;
    private final Limits limits;
    private final int[] users;
    private final boolean traced;
    private final Looked looked;
    private final Looked.Spans seen;
    private final Trace trace;
    private final List<List<Extreme>> found = new ArrayList<>();
    private double shallowest = Double.MAX_VALUE;
    private double deepest;

    Extremes(Inside inside, Elsewhere elsewhere, Limits limits, int[] users, boolean traced) {
        this.inside = inside;
        this.tree = inside.tree;
        this.grid = inside.grid;
        this.counters = inside.counters;
        this.elsewhere = elsewhere;
        this.limits = limits;
        this.users = users;
        this.traced = traced;
        looked = new Looked(tree, grid);
        seen = new Looked.Spans(tree.size());
        trace = new Trace(inside, elsewhere);
        IntStream.range(0, tree.size()).forEach(n -> found.add(new ArrayList<>()));
    }

    /** All of them, in the order of nodes. */
    List<Extreme> found() {
        return found.stream().flatMap(List::stream).toList();
    }

    /** What is looked after on the way back from the receiver; what was on the way there is in {@link Inside}. */
    Looked looked() {
        return looked;
    }

    /** Why extremes may not be relied on; empty when they may. */
    String objection() {
        String own = looked.objection(seen);
        return own.isEmpty() ? inside.looked.objection(seen) : own;
    }

    /** Most and least air into the receiver. */
    void receiver(Frame root, Draw draw) {
        Inside.At all = inside.at(0);
        Family in = all.junction().family(new Check(grid));
        for (int n : users) {
            for (boolean most : new boolean[] {false, true}) {
                Best best = new Best();
                for (int i = 0; i < in.size(); i++) {
                    for (int o = 0; o < root.drawn().size(); o++) {
                        if (together(in.counts().get(i), root.drawn().counts().get(o), n)) {
                            double u = meetMachine(in.curve(i, most), draw);
                            seen.atNode[0].see(u);
                            deepest = Math.max(deepest, u);
                            shallowest = Math.min(shallowest, u);
                            best.pad = Math.max(best.pad, padAtReceiver(in.curve(i, most), draw, u));
                            best.offer(most ? u : -u, i, o, u);
                        }
                    }
                }
                if (best.any) {
                    List<Integer> open = new ArrayList<>(elsewhere.open().get(best.outside));
                    inside.trace(0, all, best.inside, best.place, most, open);
                    add(0, most ? Measure.MOST_DRAWN : Measure.LEAST_DRAWN, n, 0, open, best.pad);
                }
            }
        }
    }

    /** Places in the receiver between which all states stand. */
    double[] receiverRange() {
        return new double[] {shallowest, deepest};
    }

    private boolean together(int[] in, int[] out, int all) {
        return counters.together(in, out, all) && counters.sameFeeds(in, out);
    }

    /** Where a curve of the tubing meets the station's own, kinks and all. */
    private double meetMachine(double[] rising, Draw draw) {
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

    /** What is asked of a tool and its hose. */
    void hose(int node, Step step, Family drawn) {
        int inlet = tree.inlet(node);
        double[] hose = inside.inlet[node].most(1);
        int[] count = counters.one(inlet);
        for (int n : users) {
            double weakest = 0;
            for (boolean most : new boolean[] {false, true}) {
                Best best = new Best();
                for (int o = 0; o < drawn.size(); o++) {
                    if (together(count, drawn.counts().get(o), n)) {
                        double u = grid.meeting(hose, drawn.curve(o, most));
                        seen.atValve[node].see(u);
                        best.pad = Math.max(best.pad, pad(hose, drawn.curve(o, most), u));
                        best.offer(most ? -u : u, 1, o, u);
                    }
                }
                if (!best.any) {
                    continue;
                }
                double flow = grid.value(hose, best.place);
                double spare = 1 - sonicShare(tree.hose(inlet), best.place, flow);
                if (most && limits.carriesByLaws) {
                    carriedInHose(node, grid.value(hose, weakest), weakest, flow, best.place);
                }
                weakest = best.place;
                if (most && (1 - spare) * (1 + best.pad) >= 1 && spare > 0) {
                    looked.velocities(node, "the hose of " + tree.point(node));
                }
                if (!most || spare < NEAR_SONIC) {
                    List<Integer> open = new ArrayList<>(List.of(inlet));
                    if (traced) {
                        trace.outside(step, best.outside, best.place, most, open);
                    }
                    add(
                            node,
                            most ? Measure.FASTEST_HOSE : Measure.WEAKEST_TOOL,
                            n,
                            most ? spare : flow,
                            open,
                            best.pad);
                }
            }
        }
    }

    /** In a hose all states lie on one curve: its least air is also what carries least, if what is asked behaves between both ends. */
    private void carriedInHose(int node, double least_kgPerS, double shallow, double most_kgPerS, double deep) {
        LegMaps maps = new LegMaps(grid);
        int inlet = tree.inlet(node);
        LegLaw law = tree.hose(inlet);
        LegDust dust = tree.hoseDust(inlet, counters.load_kgPerS(counters.one(inlet)));
        if (dust.adds()) {
            double from_Pa = Math.sqrt(maps.upstream(law, dust, grid.squared(shallow), least_kgPerS));
            double to_Pa = Math.sqrt(maps.upstream(law, dust, grid.squared(deep), most_kgPerS));
            Carried carried = new Carried(dust::carryingVelocity_mPerS, from_Pa, to_Pa);
            if (carried.mostAsked_mPerS(from_Pa) > carried.asked_mPerS.applyAsDouble(from_Pa)) {
                looked.velocities(node, "the hose of " + tree.point(node));
            }
        }
    }

    /** What is asked of a run: fast enough, not too fast, not too full of dust. */
    void run(int node, Step step, Family drawn, Family drawnFar) {
        Family out = inside.out(node);
        closed(node, out);
        for (int n : users) {
            RunBests bests = new RunBests();
            for (int i = 0; i < out.size(); i++) {
                for (int o = 0; o < drawn.size(); o++) {
                    int[] count = out.counts().get(i);
                    if (count[0] > 0 && together(count, drawn.counts().get(o), n)) {
                        Pair pair = new Pair(node, i, o, drawn, drawnFar);
                        fast(pair, bests);
                        slow(pair, bests);
                    }
                }
            }
            boolean unseen = bests.all().stream().anyMatch(best -> !best.any && best.doubted(SAME));
            boolean sonic = bests.fastest.value > 0 && (1 - bests.fastest.bound) * (1 + bests.fastest.pad) >= 1;
            if (unseen || sonic) {
                looked.velocities(node, tree.run(node));
            }
            keep(node, n, step, bests);
        }
    }

    /** A run behind which all is shut carries leaks only: what they are at the deepest place of the receiver shows that it is nowhere near sonic. */
    private void closed(int node, Family out) {
        for (int i = 0; i < out.size(); i++) {
            double flow = grid.value(out.most(i), deepest);
            if (out.counts().get(i)[0] == 0 && sonicShare(tree.law(node), deepest, flow) > 1 - NEAR_SONIC) {
                looked.velocities(node, tree.run(node));
            }
        }
    }

    private static final class RunBests {
        private final Best fastest = new Best();
        private final Best fastestDusty = new Best();
        private final Best slowest = new Best();
        private final Best heaviest = new Best();
        private final Best leastCarried = new Best();
        private final Best nearestChoking = new Best();

        List<Best> all() {
            return List.of(fastest, fastestDusty, slowest, heaviest, leastCarried, nearestChoking);
        }
    }

    /**
     * A count inside and one outside that make up the users asked, and the places at the end of the run where their states stand: the
     * deepest, the shallowest, those of most and of least flow.
     */
    private final class Pair {
        private final int node;
        private final int in;
        private final int out;
        private final Family drawn;
        private final Family drawnFar;
        private final double deep;
        private final double shallow;
        private final double most;
        private final double least;

        Pair(int node, int in, int out, Family drawn, Family drawnFar) {
            this.node = node;
            this.in = in;
            this.out = out;
            this.drawn = drawn;
            this.drawnFar = drawnFar;
            Family own = inside.out(node);
            deep = grid.meeting(own.least(in), drawn.most(out));
            shallow = grid.meeting(own.most(in), drawn.least(out));
            most = own.single(in) ? deep : grid.meeting(own.most(in), drawn.most(out));
            least = own.single(in) ? shallow : grid.meeting(own.least(in), drawn.least(out));
        }

        double flow(double u, boolean greatest) {
            return grid.value(inside.out(node).curve(in, greatest), u);
        }
    }

    private void keep(int node, int n, Step step, RunBests bests) {
        if (bests.fastest.any && Math.min(bests.fastest.bound, bests.fastest.value) < NEAR_SONIC) {
            add(
                    node,
                    Measure.FASTEST_RUN,
                    n,
                    bests.fastest.value,
                    traced ? trace.run(node, step, bests.fastest, true) : List.of(),
                    0);
        }
        keep(node, n, step, bests.fastestDusty, Measure.FASTEST_DUSTY_RUN);
        keep(node, n, step, bests.slowest, Measure.SLOWEST_RUN);
        keep(node, n, step, bests.heaviest, Measure.HEAVIEST_RUN);
        keep(node, n, step, bests.leastCarried, Measure.LEAST_CARRIED_RUN);
        keep(node, n, step, bests.nearestChoking, Measure.NEAREST_CHOKING_RUN);
    }

    private void keep(int node, int n, Step step, Best best, Measure measure) {
        if (best.any) {
            boolean most = measure == Measure.FASTEST_DUSTY_RUN;
            double beyond = most ? best.fasterThan(SAME) : best.slowerThan(SAME);
            List<Integer> open = traced ? trace.run(node, step, best, most) : List.of();
            double velocity_mPerS = measure == Measure.SLOWEST_RUN ? best.velocity_mPerS : 0;
            add(node, new Extreme(tree.run(node), measure, n, best.value, open, beyond, best.pad, velocity_mPerS));
        }
    }

    private void fast(Pair pair, RunBests bests) {
        double[] drawn = pair.drawn.most(pair.out);
        double spare = 1 - sonicShare(tree.law(pair.node), pair.most, pair.flow(pair.most, true));
        double bound = 1 - (1 - spare) * overshoot(drawn, pair.most, pair.deep);
        bests.fastest.offer(spare, pair.in, pair.out, pair.most);
        bests.fastest.bound = Math.min(bests.fastest.bound, bound);
        double pad = pad(inside.out(pair.node).most(pair.in), drawn, pair.most);
        bests.fastest.pad = Math.max(bests.fastest.pad, pad);
        bests.fastestDusty.pad = Math.max(bests.fastestDusty.pad, pad);
        int[] count = inside.out(pair.node).counts().get(pair.in);
        if (limits.wears && limits.carries(pair.node) && counters.dusty(count)) {
            bests.fastestDusty.offer(spare, pair.in, pair.out, pair.most);
            bests.fastestDusty.bound = Math.min(bests.fastestDusty.bound, bound);
        }
    }

    /** Mach number at the end of a leg over that at which a pipe chokes [-]. */
    private double sonicShare(LegLaw law, double u, double flow) {
        double kinetic = law.c() * flow * flow;
        return Math.sqrt(kinetic / Math.max(grid.squared(u), kinetic));
    }

    /** Offers the least velocity of a pair, against what the dust's class asks, and against what its load asks. */
    private void slow(Pair pair, RunBests bests) {
        int[] count = inside.out(pair.node).counts().get(pair.in);
        LegDust dust = inside.dust(pair.node, count);
        LegLaw law = tree.law(pair.node);
        LegMaps maps = new LegMaps(grid);
        double flow = pair.flow(pair.least, false);
        double inlet = maps.upstream(law, dust, grid.squared(pair.least), flow);
        double shallowInlet = maps.upstream(law, dust, grid.squared(pair.shallow), pair.flow(pair.shallow, true));
        double deepInlet = maps.upstream(law, dust, grid.squared(pair.deep), pair.flow(pair.deep, false));
        seen.atEnd[pair.node].see(pair.deep);
        seen.atEnd[pair.node].see(pair.shallow);
        seen.atNode[pair.node].see(grid.placeOf(deepInlet));
        seen.atNode[pair.node].see(grid.placeOf(shallowInlet));
        double pad = pad(inside.out(pair.node).least(pair.in), pair.drawn.least(pair.out), pair.least);
        for (Best best : List.of(bests.slowest, bests.heaviest, bests.leastCarried, bests.nearestChoking)) {
            best.pad = Math.max(best.pad, pad);
        }
        double velocity_mPerS = Math.sqrt(law.c() * tree.rt_JPerKg() / inlet) * flow;
        double undershoot = undershoot(pair.drawnFar.least(pair.out), grid.placeOf(inlet), grid.placeOf(shallowInlet));
        if (limits.carries(pair.node) && counters.dusty(count)) {
            byClass(count, pair, bests.slowest, velocity_mPerS, undershoot);
        }
        double loaded_kgPerS =
                limits.loads ? Arrays.stream(counters.load_kgPerS(count)).sum() : 0;
        if (loaded_kgPerS > 0) {
            bests.heaviest.offer(-loaded_kgPerS / flow, pair.in, pair.out, pair.least);
            bests.heaviest.bound = Math.min(bests.heaviest.bound, -loaded_kgPerS / flow);
        }
        if (dust.adds()) {
            byLoad(pair, bests, dust, new double[] {inlet, shallowInlet, deepInlet}, velocity_mPerS, undershoot);
        }
    }

    /** @param inlets pressures squared at the far end: in the extreme, the shallowest and the deepest */
    private void byLoad(
            Pair pair, RunBests bests, LegDust dust, double[] inlets, double velocity_mPerS, double undershoot) {
        double inlet_Pa = Math.sqrt(inlets[0]);
        double shallow_Pa = Math.sqrt(inlets[1]);
        double deep_Pa = Math.sqrt(inlets[2]);
        if (limits.carriesByLaws) {
            Carried carried = new Carried(dust::carryingVelocity_mPerS, shallow_Pa, deep_Pa);
            offer(carried, pair, bests.leastCarried, velocity_mPerS, inlet_Pa, undershoot);
        }
        double foot_Pa = dust.foot_Pa(inlet_Pa, Math.sqrt(grid.squared(pair.least)));
        double near = undershoot(pair.drawn.least(pair.out), pair.least, pair.shallow);
        Carried lifted = new Carried(
                dust::leastDropVelocity_mPerS,
                dust.foot_Pa(shallow_Pa, Math.sqrt(grid.squared(pair.shallow))),
                dust.foot_Pa(deep_Pa, Math.sqrt(grid.squared(pair.deep))));
        double foot_mPerS = velocity_mPerS * inlet_Pa / foot_Pa;
        offer(lifted, pair, bests.nearestChoking, foot_mPerS, foot_Pa, Math.min(undershoot, near));
    }

    private void byClass(int[] count, Pair pair, Best slowest, double velocity_mPerS, double undershoot) {
        for (int level = 0; level < Math.max(1, counters.level_mPerS.length); level++) {
            if (counters.level_mPerS.length == 0 || counters.has(count, level)) {
                double ratio = velocity_mPerS / limits.least_mPerS(level);
                if (slowest.offer(ratio - 1, pair.in, pair.out, pair.least)) {
                    slowest.velocity_mPerS = velocity_mPerS;
                }
                slowest.bound = Math.min(slowest.bound, ratio * undershoot - 1);
            }
        }
    }

    /** A velocity that a load asks, over the pressure, and the pressures that states of a pair may have. */
    private record Carried(java.util.function.DoubleUnaryOperator asked_mPerS, double from_Pa, double to_Pa) {
        /**
         * Greatest velocity asked over all pressures; at the extreme itself where what is asked falls with the pressure, but no faster
         * than the velocity there is, for then the extreme is the least margin.
         */
        double mostAsked_mPerS(double at_Pa) {
            double most = asked_mPerS.applyAsDouble(at_Pa);
            double last = asked_mPerS.applyAsDouble(Math.min(from_Pa, to_Pa));
            double greatest = Math.max(most, last);
            boolean ordered = true;
            double step = Math.abs(from_Pa - to_Pa) / LOOKS;
            for (int n = 1; n <= LOOKS && step > 0; n++) {
                double p = Math.min(from_Pa, to_Pa) + n * step;
                double asked = asked_mPerS.applyAsDouble(p);
                ordered &= asked <= last * (1 + SAME) && asked * p >= last * (p - step) * (1 - SAME);
                greatest = Math.max(greatest, asked);
                last = asked;
            }
            return ordered ? most : greatest;
        }
    }

    private void offer(Carried carried, Pair pair, Best best, double velocity_mPerS, double at_Pa, double undershoot) {
        double asked = carried.asked_mPerS.applyAsDouble(at_Pa);
        if (asked > 0) {
            best.offer(velocity_mPerS / asked - 1, pair.in, pair.out, pair.least);
        }
        double most = carried.mostAsked_mPerS(at_Pa);
        if (most > 0) {
            best.bound = Math.min(best.bound, velocity_mPerS * undershoot / most - 1);
        }
    }

    /**
     * How far flow, vacuum, pressure or a velocity may be off where two curves meet, as a share: their errors move the meeting by no more
     * than they are in flow, and by that over both slopes in place.
     */
    private double pad(double[] rising, double[] falling, double u) {
        double error = grid.errorNear(rising, u) + grid.errorNear(falling, u);
        return pad(rising, u, error, grid.greatestSlope(falling, u - grid.step, u + grid.step));
    }

    /** At the receiver the station's own law is met, not a table of it. */
    private double padAtReceiver(double[] rising, Draw draw, double u) {
        return pad(rising, u, grid.errorNear(rising, u), draw.slopes(u - grid.step, u + grid.step)[1]);
    }

    private double pad(double[] rising, double u, double error, double greatestFalling) {
        double apart = grid.leastSlope(rising, u - grid.step, u + grid.step) - greatestFalling;
        double flow = grid.value(rising, u);
        if (!(apart > 0) || !(flow > error)) {
            return 1;
        }
        double moved = error / apart;
        return Math.min(1, Extreme.ROUNDING + 2 * error / (flow - error) + 2 * moved / u + 2 * moved * u / (1 - u * u));
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

    private void add(int node, Measure measure, int n, double value, List<Integer> open, double pad) {
        String place = node == 0 ? tree.station() : measure == Measure.FASTEST_RUN ? tree.run(node) : tree.point(node);
        add(node, new Extreme(place, measure, n, value, open, 1, pad, 0));
    }

    private void add(int node, Extreme extreme) {
        found.get(node).add(extreme);
    }
}
