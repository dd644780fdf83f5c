package dustwright.engine.network;

import java.util.Arrays;

/**
 * Finds the junction losses that agree with the flows they cause: solve with the losses held, take those of the new flows, repeat.
 *
 * <p>A loss mostly answers to the flow of its own leg, so every leg takes its own secant step: where last time the gap between wanted
 * and used loss fell from g to g' by a change x, the next change is {@code x g'/(g − g')}, within bounds.
 */
final class JunctionRounds {
    /** Losses have settled when they change by no more than this, over ambient squared [-]. */
    static final double TOLERANCE = 1e-12;

    private static final double LEAST_SHARE = 1e-4;
    private static final double MOST_SHARE = 3;

    private final Network net;
    private final Junctions junctions;
    private final double[] wanted;
    private final double[] lastGap;
    private final double[] lastChange;
    private int worstLeg;

    JunctionRounds(Network net) {
        this.net = net;
        junctions = new Junctions(net);
        wanted = new double[net.legCount];
        lastGap = new double[net.legCount];
        lastChange = new double[net.legCount];
    }

    void clear() {
        Arrays.fill(lastChange, 0);
    }

    /** Whether the losses used agree with the flows; if not, puts better ones in place for the next round. */
    boolean settled(NetworkState state) {
        if (!junctions.any()) {
            return true;
        }
        junctions.losses(state.active, state.flow, wanted);
        double worst = 0;
        for (int leg = 0; leg < wanted.length; leg++) {
            double gap = Math.abs(wanted[leg] - state.junction[leg]);
            if (gap > worst) {
                worst = gap;
                worstLeg = leg;
            }
        }
        if (worst <= TOLERANCE * net.ambientSquared) {
            return true;
        }
        for (int leg = 0; leg < wanted.length; leg++) {
            double gap = wanted[leg] - state.junction[leg];
            double change = share(leg, gap) * gap;
            state.junction[leg] += change;
            lastGap[leg] = gap;
            lastChange[leg] = change;
        }
        return false;
    }

    /** Wanted less used loss of every leg, at the flows. */
    double[] gaps(NetworkState state) {
        junctions.losses(state.active, state.flow, wanted);
        double[] gap = new double[wanted.length];
        for (int leg = 0; leg < wanted.length; leg++) {
            gap[leg] = wanted[leg] - state.junction[leg];
        }
        return gap;
    }

    private double share(int leg, double gap) {
        double fell = lastGap[leg] - gap;
        if (lastChange[leg] == 0 || fell == 0) {
            return 1;
        }
        return Math.max(LEAST_SHARE, Math.min(MOST_SHARE, lastChange[leg] / fell));
    }

    String worst() {
        return "last moving where " + net.legId[worstLeg]
                + " joins, whose stream is about to turn; state the loss of that junction as K" + " instead of a wye";
    }
}
