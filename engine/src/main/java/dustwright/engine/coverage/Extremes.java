package dustwright.engine.coverage;

import dustwright.engine.coverage.Extreme.Measure;
import dustwright.engine.coverage.Frame.Elsewhere;
import dustwright.engine.coverage.Frame.Step;
import dustwright.engine.network.LegDust;
import dustwright.engine.network.LegLaw;
import dustwright.engine.network.TubingTree;
import dustwright.engine.network.TubingTree.Draw;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The extremes of every run, hose and receiver: where the curve drawn by the rest of the plant meets that of the branch inside stands the
 * extreme of the leg (equation COV-5); the splits are traced back to the set of inlets that makes it.
 */
final class Extremes {
    /** Velocities count as one within this share [-]. */
    static final double SAME = 1e-9;
    /** From this share below sonic on, a piece is unchoked beyond doubt and its fastest set need not be solved [-]. */
    private static final double NEAR_SONIC = 0.05;

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
    private final Meetings meetings;
    private final RunExtremes runs;
    private final List<List<Extreme>> found = new ArrayList<>();
    /** Open inlets of the end of what is drawn that was found last. */
    private List<Integer> openOfEnds = List.of();

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
        meetings = new Meetings(grid);
        runs = new RunExtremes(inside, limits, meetings, seen);
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
    Objection objection() {
        Objection own = looked.objection(seen);
        return own.any() ? own : inside.looked.objection(seen);
    }

    /** Most and least air into the receiver, and what the producers take between. */
    void receiver(Frame root, Draw draw) {
        Inside.At all = inside.at(0);
        Family in = all.junction().family(new Check(grid));
        for (int n : users) {
            double[] ends = {receiver(root, draw, all, in, n, true), receiver(root, draw, all, in, n, false)};
            if (ends[0] > 0) {
                Between.of(draw, ends[0], ends[1])
                        .forEach((measure, beyond) -> beyond.forEach((producer, ratio) ->
                                add(0, new Extreme(producer, measure, n, 0, openOfEnds, ratio, Extreme.ROUNDING, 0))));
            }
        }
    }

    /** One end of what is drawn; the place in the receiver beyond which no state stands, 0 where there is none. */
    private double receiver(Frame root, Draw draw, Inside.At all, Family in, int n, boolean most) {
        Best best = new Best();
        double bound = most ? Double.MAX_VALUE : 0;
        for (int i = 0; i < in.size(); i++) {
            for (int o = 0; o < root.drawn().size(); o++) {
                if (together(in.counts().get(i), root.drawn().counts().get(o), n)) {
                    double u = meetings.withStation(in.curve(i, most), draw);
                    double moved = meetings.movedAtStation(in.curve(i, most), draw, u);
                    seen.atNode[0].see(u);
                    deepest = Math.max(deepest, u);
                    shallowest = Math.min(shallowest, u);
                    bound = most ? Math.min(bound, u - moved) : Math.max(bound, u + moved);
                    best.offer(most ? u : -u, i, o, u, 0);
                }
            }
        }
        if (!best.any) {
            return 0;
        }
        openOfEnds = new ArrayList<>(elsewhere.open().get(best.outside));
        inside.trace(0, all, best.inside, best.place, most, openOfEnds);
        double pad = meetings.padOnDraw(draw, best.place, bound);
        add(0, most ? Measure.MOST_DRAWN : Measure.LEAST_DRAWN, n, 0, openOfEnds, pad);
        return Math.max(0, Math.min(draw.greatest(), bound));
    }

    /** Places in the receiver between which all states stand. */
    double[] receiverRange() {
        return new double[] {shallowest, deepest};
    }

    private boolean together(int[] in, int[] out, int all) {
        return counters.together(in, out, all) && counters.sameFeeds(in, out);
    }

    /** What is asked of a tool and its hose. */
    void hose(int node, Step step, Family drawn) {
        int inlet = tree.inlet(node);
        double[] hose = inside.inlet[node].most(inside.inlet[node].size() - 1);
        int[] count = counters.one(inlet);
        for (int n : users) {
            double weakest = 0;
            for (boolean most : new boolean[] {false, true}) {
                Best best = new Best();
                Best vacuum = new Best();
                for (int o = 0; o < drawn.size(); o++) {
                    if (together(count, drawn.counts().get(o), n)) {
                        double u = grid.meeting(hose, drawn.curve(o, most));
                        seen.atValve[node].see(u);
                        double pad = meetings.pad(hose, drawn.curve(o, most), u);
                        best.offer(most ? -u : u, 1, o, u, pad);
                        if (most) {
                            double share = meetings.sonicShare(tree.hose(inlet), u, grid.value(hose, u));
                            best.bounded(1 - share, 1 - share * (1 + pad));
                        } else {
                            best.bounded(grid.value(hose, u) - 1, grid.value(hose, u) * (1 - pad) - 1);
                            vacuum.bounded(u - 1, u * (1 - pad) - 1);
                        }
                    }
                }
                if (!best.any) {
                    continue;
                }
                double flow = grid.value(hose, best.place);
                double spare = 1 - meetings.sonicShare(tree.hose(inlet), best.place, flow);
                double pad = most ? best.padAbove() : Math.max(best.padBelow(), vacuum.padBelow());
                if (most && limits.carriesByLaws) {
                    carriedInHose(node, grid.value(hose, weakest), weakest, flow, best.place);
                }
                weakest = best.place;
                if (most && (1 - spare) * (1 + pad) >= 1 && spare > 0) {
                    looked.velocities(node, "the hose of " + tree.point(node));
                }
                if (!most || spare < NEAR_SONIC) {
                    List<Integer> open = new ArrayList<>(List.of(inlet));
                    if (traced) {
                        trace.outside(step, best.outside, best.place, most, open);
                    }
                    add(node, most ? Measure.FASTEST_HOSE : Measure.WEAKEST_TOOL, n, most ? spare : flow, open, pad);
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
            if (!dust.carryingKnown(from_Pa) || !dust.carryingKnown(to_Pa)) {
                looked.notJudged(node, "the hose of " + tree.point(node));
                return;
            }
            Carried carried = new Carried(dust::carryingVelocity_mPerS, from_Pa, to_Pa);
            if (carried.mostAsked_mPerS(from_Pa, SAME) > carried.asked_mPerS().applyAsDouble(from_Pa)) {
                looked.velocities(node, "the hose of " + tree.point(node));
            }
        }
    }

    /** What is asked of a run: fast enough, not too fast, not too full of dust. */
    void run(int node, Step step, Family drawn, Family drawnFar) {
        Family out = inside.out(node);
        closed(node, out);
        for (int n : users) {
            RunExtremes.Bests bests = new RunExtremes.Bests();
            for (int i = 0; i < out.size(); i++) {
                for (int o = 0; o < drawn.size(); o++) {
                    int[] count = out.counts().get(i);
                    if (count[0] > 0 && together(count, drawn.counts().get(o), n)) {
                        runs.offer(node, i, o, drawn, drawnFar, bests);
                    }
                }
            }
            boolean unseen = bests.all().stream().anyMatch(best -> !best.any && best.doubted(SAME));
            boolean sonic = bests.fastest.value > 0 && (1 - bests.fastest.bound) * (1 + bests.fastest.padAbove()) >= 1;
            if (unseen || sonic) {
                looked.velocities(node, tree.run(node));
            }
            if (bests.notJudged) {
                looked.notJudged(node, tree.run(node));
            }
            keep(node, n, step, bests);
        }
    }

    /** A run behind which all is shut carries leaks only: what they are at the deepest place of the receiver shows that it is nowhere near sonic. */
    private void closed(int node, Family out) {
        for (int i = 0; i < out.size(); i++) {
            double flow = grid.value(out.most(i), deepest);
            if (out.counts().get(i)[0] == 0 && meetings.sonicShare(tree.law(node), deepest, flow) > 1 - NEAR_SONIC) {
                looked.velocities(node, tree.run(node));
            }
        }
    }

    private void keep(int node, int n, Step step, RunExtremes.Bests bests) {
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
            add(
                    node,
                    new Extreme(
                            tree.run(node), measure, n, best.value, open, beyond, pad(best, measure), velocity_mPerS));
        }
    }

    private static double pad(Best best, Measure measure) {
        return measure == Measure.FASTEST_DUSTY_RUN
                ? best.padAbove()
                : measure == Measure.HEAVIEST_RUN ? best.padHeavier() : best.padBelow();
    }

    private void add(int node, Measure measure, int n, double value, List<Integer> open, double pad) {
        String place = node == 0 ? tree.station() : measure == Measure.FASTEST_RUN ? tree.run(node) : tree.point(node);
        add(node, new Extreme(place, measure, n, value, open, 1, pad, 0));
    }

    private void add(int node, Extreme extreme) {
        found.get(node).add(extreme);
    }
}
