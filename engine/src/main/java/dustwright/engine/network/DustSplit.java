package dustwright.engine.network;

import dustwright.engine.network.Network.InletParts;
import dustwright.engine.network.Network.LegKind;
import java.util.Arrays;

/**
 * Where the dust goes: every open inlet feeds its own, a leg carries what is fed upstream of it, and where streams part the dust
 * parts as the air does (equation NET-7). With x the dust per air leaving a node:
 *
 * <pre>
 * x · Σ w_out = feed + Σ x_upstream · w_in
 * </pre>
 *
 * Linear, and also right where air runs in a circle. The receiver keeps it: nothing passes the filter.
 */
final class DustSplit {
    private final Network net;
    private final Elimination elimination;
    private final double[] perAir;
    private final double[] leaving;
    private final double[] feed;

    DustSplit(Network net) {
        this.net = net;
        elimination = new Elimination(net.nodeCount, net.from, net.to);
        perAir = new double[net.nodeCount];
        leaving = new double[net.nodeCount];
        feed = new double[net.nodeCount];
    }

    /** Dust on every leg, in the direction of the flow [kg/s]. */
    double[] along(NetworkState state) {
        fill(state);
        elimination.solve(perAir);
        double[] dust = new double[net.legCount];
        for (int leg = 0; leg < net.legCount; leg++) {
            if (carries(leg)) {
                dust[leg] = perAir[upstream(state, leg)] * Math.abs(state.flow[leg]);
            }
        }
        for (InletParts inlet : net.inlets) {
            if (state.flow[inlet.hoseLeg()] > 0) {
                dust[inlet.hoseLeg()] = inlet.feed_kgPerS();
            }
        }
        return dust;
    }

    private void fill(NetworkState state) {
        Arrays.fill(leaving, 0);
        Arrays.fill(feed, 0);
        elimination.clear();
        for (int leg = 0; leg < net.legCount; leg++) {
            leaving[upstream(state, leg)] += Math.abs(state.flow[leg]);
        }
        for (InletParts inlet : net.inlets) {
            feed[inlet.node()] += state.flow[inlet.hoseLeg()] > 0 ? inlet.feed_kgPerS() : 0;
        }
        for (int n = 0; n < net.nodeCount; n++) {
            boolean sink = n == Network.STILL_AIR || leaving[n] == 0;
            elimination.addDiagonal(n, sink ? 1 : leaving[n] + Math.max(0, -net.supply_kgPerS[n]));
            elimination.addRight(n, sink ? 0 : feed[n]);
        }
        for (int leg = 0; leg < net.legCount; leg++) {
            int into = state.flow[leg] >= 0 ? net.to[leg] : net.from[leg];
            if (carries(leg) && into != Network.STILL_AIR && leaving[into] > 0) {
                double brought = -Math.abs(state.flow[leg]);
                boolean drawn = into == net.to[leg];
                elimination.addEdge(leg, drawn ? 0 : brought, drawn ? brought : 0);
            }
        }
    }

    private int upstream(NetworkState state, int leg) {
        return state.flow[leg] >= 0 ? net.from[leg] : net.to[leg];
    }

    private boolean carries(int leg) {
        return net.legKind[leg] == LegKind.RUN || net.legKind[leg] == LegKind.HOSE;
    }
}
