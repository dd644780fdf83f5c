package dustwright.engine.network;

/**
 * Finds the junction losses that agree with the flows they cause: solve with the losses held, take those of the new flows, repeat.
 * The share taken is halved whenever a round brings no improvement, so that strongly coupled junctions settle too.
 */
final class JunctionRounds {
    private static final double TOLERANCE = 1e-12;
    private static final double SLOW = 0.7;

    private final Network net;
    private final Junctions junctions;
    private final double[] wanted;
    private double share;
    private double lastGap;
    private int worstLeg;

    JunctionRounds(Network net) {
        this.net = net;
        junctions = new Junctions(net);
        wanted = new double[net.legCount];
    }

    void clear() {
        share = 1;
        lastGap = Double.MAX_VALUE;
    }

    /** Whether the losses used agree with the flows; if not, puts better ones in place for the next round. */
    boolean settled(NetworkState state) {
        if (!junctions.any()) {
            return true;
        }
        junctions.losses(state.active, state.flow, wanted);
        double gap = 0;
        for (int leg = 0; leg < wanted.length; leg++) {
            double off = Math.abs(wanted[leg] - state.junction[leg]);
            if (off > gap) {
                gap = off;
                worstLeg = leg;
            }
        }
        if (gap <= TOLERANCE * net.ambientSquared) {
            return true;
        }
        if (gap > SLOW * lastGap) {
            share = Math.max(share / 2, 1.0 / 64);
        }
        lastGap = gap;
        for (int leg = 0; leg < wanted.length; leg++) {
            state.junction[leg] += share * (wanted[leg] - state.junction[leg]);
        }
        return false;
    }

    String worst() {
        return "last moving at the downstream end of " + net.legId[worstLeg];
    }
}
