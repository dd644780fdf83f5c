package dustwright.engine.network;

import dustwright.engine.network.Network.InletParts;
import dustwright.engine.network.Network.LegKind;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

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
    private final double[] leaving;
    private final double[] feed;

    DustSplit(Network net) {
        this.net = net;
        elimination = new Elimination(net.nodeCount, net.from, net.to);
        leaving = new double[net.nodeCount];
        feed = new double[net.nodeCount];
    }

    /**
     * Dust on every leg, in the direction of the flow [kg/s].
     *
     * @param feeds dust fed by inlet, in the order of the plant file
     * @param perAir becomes the dust per air leaving every point [-]
     */
    void along(NetworkState state, IntToDoubleFunction feeds, double[] perAir, double[] into) {
        fill(state, feeds);
        elimination.solve(perAir);
        for (int leg = 0; leg < net.legCount; leg++) {
            into[leg] = carries(leg) ? perAir[upstream(state, leg)] * Math.abs(state.flow[leg]) : 0;
        }
        for (int n = 0; n < net.inlets.size(); n++) {
            int hose = net.inlets.get(n).hoseLeg();
            if (state.flow[hose] > 0) {
                into[hose] = feeds.applyAsDouble(n);
            }
        }
    }

    private void fill(NetworkState state, IntToDoubleFunction feeds) {
        Arrays.fill(leaving, 0);
        Arrays.fill(feed, 0);
        elimination.clear();
        for (int leg = 0; leg < net.legCount; leg++) {
            leaving[upstream(state, leg)] += Math.abs(state.flow[leg]);
        }
        for (int n = 0; n < net.inlets.size(); n++) {
            InletParts inlet = net.inlets.get(n);
            feed[inlet.node()] += state.flow[inlet.hoseLeg()] > 0 ? feeds.applyAsDouble(n) : 0;
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
