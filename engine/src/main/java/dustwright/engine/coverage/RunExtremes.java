package dustwright.engine.coverage;

import dustwright.engine.network.LegDust;
import dustwright.engine.network.LegLaw;
import dustwright.engine.network.TubingTree;
import java.util.Arrays;
import java.util.List;

/** What a run comes to at worst with so many users inside and so many outside: slowest, fastest, fullest of dust (equations COV-5, COV-9). */
final class RunExtremes {
    /** A pad is never taken for the whole of a figure where it divides. */
    private static final double MOST_PAD = 0.999;

    private final Inside inside;
    private final TubingTree tree;
    private final Grid grid;
    private final Counters counters;
    private final Limits limits;
    private final Meetings meetings;
    private final Looked.Spans seen;

    RunExtremes(Inside inside, Limits limits, Meetings meetings, Looked.Spans seen) {
        this.inside = inside;
        this.tree = inside.tree;
        this.grid = inside.grid;
        this.counters = inside.counters;
        this.limits = limits;
        this.meetings = meetings;
        this.seen = seen;
    }

    static final class Bests {
        final Best fastest = new Best();
        final Best fastestDusty = new Best();
        final Best slowest = new Best();
        final Best heaviest = new Best();
        final Best leastCarried = new Best();
        final Best nearestChoking = new Best();
        /** Whether in some states no published law of carrying may be asked of all dust here. */
        boolean notJudged;

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
        /** How far the figures at the least flow may be off. */
        private final double pad;

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
            pad = meetings.pad(own.least(in), drawn.least(out), least);
        }

        double flow(double u, boolean greatest) {
            return grid.value(inside.out(node).curve(in, greatest), u);
        }
    }

    /** Takes the extremes of one pair of counts, inside and outside, of a run. */
    void offer(int node, int in, int out, Family drawn, Family drawnFar, Bests bests) {
        Pair pair = new Pair(node, in, out, drawn, drawnFar);
        fast(pair, bests);
        slow(pair, bests);
    }

    private void fast(Pair pair, Bests bests) {
        double[] drawn = pair.drawn.most(pair.out);
        double spare = 1 - meetings.sonicShare(tree.law(pair.node), pair.most, pair.flow(pair.most, true));
        double bound = 1 - (1 - spare) * meetings.overshoot(drawn, pair.most, pair.deep);
        double pad = meetings.pad(inside.out(pair.node).most(pair.in), drawn, pair.most);
        bests.fastest.offer(spare, pair.in, pair.out, pair.most, pad);
        bests.fastest.bounded(bound, 1 - (1 - bound) * (1 + pad));
        int[] count = inside.out(pair.node).counts().get(pair.in);
        if (limits.wears && counters.dusty(count)) {
            bests.fastestDusty.offer(spare, pair.in, pair.out, pair.most, pad);
            bests.fastestDusty.bounded(bound, 1 - (1 - bound) * (1 + pad));
        }
    }

    /** Offers the least velocity of a pair, against what the dust's class asks, and against what its load asks. */
    private void slow(Pair pair, Bests bests) {
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
        double velocity_mPerS = Math.sqrt(law.c() * tree.rt_JPerKg() / inlet) * flow;
        double undershoot =
                meetings.undershoot(pair.drawnFar.least(pair.out), grid.placeOf(inlet), grid.placeOf(shallowInlet));
        if (counters.dusty(count)) {
            byClass(count, pair, bests.slowest, velocity_mPerS, undershoot);
        }
        double loaded_kgPerS =
                limits.loads ? Arrays.stream(counters.load_kgPerS(count)).sum() : 0;
        if (loaded_kgPerS > 0) {
            double load = loaded_kgPerS / flow;
            bests.heaviest.offer(-load, pair.in, pair.out, pair.least, pair.pad);
            bests.heaviest.bounded(-load, -load / (1 - Math.min(pair.pad, MOST_PAD)));
        }
        if (dust.adds()) {
            byLoad(pair, bests, dust, new double[] {inlet, shallowInlet, deepInlet}, velocity_mPerS, undershoot);
        }
    }

    /** @param inlets pressures squared at the far end: in the extreme, the shallowest and the deepest */
    private void byLoad(
            Pair pair, Bests bests, LegDust dust, double[] inlets, double velocity_mPerS, double undershoot) {
        double inlet_Pa = Math.sqrt(inlets[0]);
        double shallow_Pa = Math.sqrt(inlets[1]);
        double deep_Pa = Math.sqrt(inlets[2]);
        if (limits.carriesByLaws) {
            bests.notJudged |= !dust.carryingKnown(shallow_Pa) || !dust.carryingKnown(deep_Pa);
            Carried carried = new Carried(dust::carryingVelocity_mPerS, shallow_Pa, deep_Pa);
            offer(carried, pair, bests.leastCarried, velocity_mPerS, inlet_Pa, undershoot);
        }
        double foot_Pa = dust.foot_Pa(inlet_Pa, Math.sqrt(grid.squared(pair.least)));
        double near = meetings.undershoot(pair.drawn.least(pair.out), pair.least, pair.shallow);
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
                if (slowest.offer(ratio - 1, pair.in, pair.out, pair.least, pair.pad)) {
                    slowest.velocity_mPerS = velocity_mPerS;
                }
                slowest.bounded(ratio * undershoot - 1, ratio * undershoot * (1 - pair.pad) - 1);
            }
        }
    }

    private void offer(Carried carried, Pair pair, Best best, double velocity_mPerS, double at_Pa, double undershoot) {
        double asked = carried.asked_mPerS().applyAsDouble(at_Pa);
        if (asked > 0) {
            best.offer(velocity_mPerS / asked - 1, pair.in, pair.out, pair.least, pair.pad);
        }
        double most = carried.mostAsked_mPerS(at_Pa, Extremes.SAME);
        if (most > 0) {
            double share = velocity_mPerS * undershoot / most;
            best.bounded(share - 1, share * (1 - pair.pad) - 1);
        }
    }
}
