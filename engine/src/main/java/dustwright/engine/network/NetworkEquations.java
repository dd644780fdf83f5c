package dustwright.engine.network;

import dustwright.engine.network.Network.StationParts;
import java.util.Arrays;
import java.util.List;

/**
 * All laws and balances of one state at its present pressures and flows, how far each is from being met, and the Newton step that
 * would meet them (equation NET-6). Flows are eliminated leg by leg, which leaves one system in the pressures with the pattern of
 * the network.
 */
final class NetworkEquations {
    /** At rest flows are measured against this share of the flow scale: rounding in a dead-headed producer is of that size. */
    private static final double REST_FLOW = 0.1;

    private static final double NOTHING_LEFT = 1e-6;
    private static final double CHOKED_SLOPE = 0.05;
    private static final double SCALE_VELOCITY_mPerS = 15;

    /** What the Newton step changes; valid after {@link #step}. */
    final double[] squaredStep;

    final double[] flowStep;

    private final Network net;
    private final NetworkState state;
    private final List<StationEnd> ends;
    private final LegLaws laws;
    private final Elimination elimination;
    private final double flowScale_kgPerS;

    /** Row of the system for every node; negative for held nodes. */
    private final int[] row;

    private final boolean[] pinned;
    private final double[] pinnedSquared;
    private final double[] legResidual;
    private final double[] slopeFrom;
    private final double[] slopeTo;
    private final double[] slopeFlow;
    private final double[] balance;
    private final double[] portSlope;
    private final double[] through;
    private final double[] solution;

    NetworkEquations(Network net, NetworkState state, List<StationEnd> ends, DustLoad dust) {
        this.net = net;
        this.state = state;
        this.ends = ends;
        flowScale_kgPerS = flowScale(net);
        laws = new LegLaws(net, flowScale_kgPerS, dust);
        row = new int[net.nodeCount];
        int rows = 0;
        for (int n = 0; n < net.nodeCount; n++) {
            row[n] = net.held[n] ? -1 : rows++;
        }
        elimination = new Elimination(rows, rowsOf(net.from), rowsOf(net.to));
        solution = new double[rows];
        pinned = new boolean[net.nodeCount];
        pinnedSquared = new double[net.nodeCount];
        legResidual = new double[net.legCount];
        slopeFrom = new double[net.legCount];
        slopeTo = new double[net.legCount];
        slopeFlow = new double[net.legCount];
        balance = new double[net.nodeCount];
        portSlope = new double[net.nodeCount];
        through = new double[net.nodeCount];
        squaredStep = new double[net.nodeCount];
        flowStep = new double[net.legCount];
    }

    private int[] rowsOf(int[] nodes) {
        return Arrays.stream(nodes).map(n -> row[n]).toArray();
    }

    /** Mass flow of the widest tube at an ordinary velocity: what flows are measured against. */
    private static double flowScale(Network net) {
        double widest_m = Arrays.stream(net.bore_m).max().orElse(0);
        return net.air.density_kgPerM3(net.ambient_Pa)
                * SCALE_VELOCITY_mPerS
                * Math.PI
                / 4
                * Math.max(widest_m * widest_m, 1e-4);
    }

    /** Says which nodes keep a pressure while solving: parts at rest, and the suction of a drive that holds its vacuum. */
    void pin(boolean[] resting) {
        for (int n = 0; n < net.nodeCount; n++) {
            pinned[n] = resting[n];
            pinnedSquared[n] = net.ambientSquared;
        }
        for (int s = 0; s < ends.size(); s++) {
            int suction = net.stations.get(s).suction();
            if (ends.get(s).holding() && !net.held[suction]) {
                pinned[suction] = true;
                pinnedSquared[suction] = ends.get(s).heldSquared();
            }
        }
    }

    /** Evaluates laws, balances and their slopes; returns the sum of squared misfits, each against its scale [-]. */
    double evaluate() {
        System.arraycopy(net.supply_kgPerS, 0, balance, 0, net.nodeCount);
        Arrays.fill(portSlope, 0);
        double sum = 0;
        for (int leg = 0; leg < net.legCount; leg++) {
            if (state.active[leg]) {
                sum += evaluateLeg(leg);
            }
        }
        for (int s = 0; s < ends.size(); s++) {
            StationParts station = net.stations.get(s);
            double suction_Pa = Math.sqrt(state.squared[station.suction()]);
            ends.get(s).evaluate(suction_Pa);
            balance[station.suction()] += ends.get(s).inflow_kgPerS();
            portSlope[station.suction()] += ends.get(s).slope_kgPerSPa() / (2 * suction_Pa);
        }
        for (int n = 0; n < net.nodeCount; n++) {
            if (unknown(n)) {
                double share = balance[n] / flowScale_kgPerS;
                sum += share * share;
            } else if (pinned[n]) {
                double share = (pinnedSquared[n] - state.squared[n]) / net.ambientSquared;
                sum += share * share;
            }
        }
        return sum;
    }

    private double evaluateLeg(int leg) {
        lawOf(leg);
        legResidual[leg] = laws.residual;
        slopeFrom[leg] = laws.slopeFrom;
        slopeTo[leg] = laws.slopeTo;
        slopeFlow[leg] = laws.slopeFlow;
        balance[net.from[leg]] -= state.flow[leg];
        balance[net.to[leg]] += state.flow[leg];
        double share = laws.residual / net.ambientSquared;
        return share * share;
    }

    private boolean unknown(int node) {
        return row[node] >= 0 && !pinned[node];
    }

    /** Finds the Newton step; returns a node whose pressure cannot be found, or NONE. */
    int step() {
        int singular = solveLinear();
        if (singular != Network.NONE) {
            openChoked();
            singular = solveLinear();
        }
        if (singular != Network.NONE) {
            return node(singular);
        }
        for (int n = 0; n < net.nodeCount; n++) {
            squaredStep[n] = row[n] >= 0 ? solution[row[n]] : 0;
        }
        for (int leg = 0; leg < net.legCount; leg++) {
            if (state.active[leg]) {
                flowStep[leg] = (legResidual[leg]
                                + slopeFrom[leg] * squaredStep[net.from[leg]]
                                - slopeTo[leg] * squaredStep[net.to[leg]])
                        / slopeFlow[leg];
            }
        }
        return Network.NONE;
    }

    /** Solves for the pressure steps; returns a row without pivot, or NONE. */
    private int solveLinear() {
        elimination.clear();
        for (int n = 0; n < net.nodeCount; n++) {
            if (unknown(n)) {
                elimination.addDiagonal(row[n], -portSlope[n]);
                elimination.addRight(row[n], balance[n]);
            } else if (pinned[n]) {
                elimination.addDiagonal(row[n], 1);
                elimination.addRight(row[n], pinnedSquared[n] - state.squared[n]);
            }
        }
        for (int leg = 0; leg < net.legCount; leg++) {
            if (state.active[leg]) {
                assemble(leg);
            }
        }
        return elimination.solve(solution);
    }

    /**
     * Behind a piece that an iterate finds choked, pressure has no say; where nothing else has, a little say leads out of there. Only
     * the step changes by it, not the laws.
     */
    private void openChoked() {
        for (int leg = 0; leg < net.legCount; leg++) {
            slopeFrom[leg] = Math.max(slopeFrom[leg], CHOKED_SLOPE);
            slopeTo[leg] = Math.max(slopeTo[leg], CHOKED_SLOPE);
        }
    }

    private void assemble(int leg) {
        int from = net.from[leg];
        int to = net.to[leg];
        double byFrom = slopeFrom[leg] / slopeFlow[leg];
        double byTo = slopeTo[leg] / slopeFlow[leg];
        double own = legResidual[leg] / slopeFlow[leg];
        if (unknown(from)) {
            elimination.addDiagonal(row[from], byFrom);
            elimination.addRight(row[from], -own);
        }
        if (unknown(to)) {
            elimination.addDiagonal(row[to], byTo);
            elimination.addRight(row[to], own);
        }
        elimination.addEdge(leg, unknown(from) ? -byTo : 0, unknown(to) ? -byFrom : 0);
    }

    private int node(int wantedRow) {
        int n = 0;
        while (row[n] != wantedRow) {
            n++;
        }
        return n;
    }

    /** Greatest error of a leg law, in pressure squared over ambient squared. */
    double worstLegError() {
        int leg = worstLeg();
        return leg == Network.NONE ? 0 : Math.abs(legResidual[leg]) / net.ambientSquared;
    }

    double worstBalance_kgPerS() {
        int node = worstNode();
        return node == Network.NONE ? 0 : Math.abs(balance[node]);
    }

    /** How far a node is from the pressure it is to keep, in pressure squared over ambient squared. */
    double worstPin() {
        double worst = 0;
        for (int n = 0; n < net.nodeCount; n++) {
            if (pinned[n]) {
                worst = Math.max(worst, Math.abs(pinnedSquared[n] - state.squared[n]));
            }
        }
        return worst / net.ambientSquared;
    }

    /** What balances are measured against: the greatest flow through any node. */
    double greatestFlow_kgPerS() {
        Arrays.fill(through, 0);
        for (int leg = 0; leg < net.legCount; leg++) {
            through[net.from[leg]] += Math.abs(state.flow[leg]);
            through[net.to[leg]] += Math.abs(state.flow[leg]);
        }
        double greatest = REST_FLOW * flowScale_kgPerS;
        for (int n = 0; n < net.nodeCount; n++) {
            greatest = Math.max(greatest, Math.max(through[n], Math.abs(net.supply_kgPerS[n])));
        }
        return greatest;
    }

    private int worstLeg() {
        int worst = Network.NONE;
        for (int leg = 0; leg < net.legCount; leg++) {
            if (state.active[leg]
                    && (worst == Network.NONE || Math.abs(legResidual[leg]) > Math.abs(legResidual[worst]))) {
                worst = leg;
            }
        }
        return worst;
    }

    private int worstNode() {
        int worst = Network.NONE;
        for (int n = 0; n < net.nodeCount; n++) {
            if (unknown(n) && (worst == Network.NONE || Math.abs(balance[n]) > Math.abs(balance[worst]))) {
                worst = n;
            }
        }
        return worst;
    }

    /** What is worst, in words. */
    String worst() {
        StringBuilder text = new StringBuilder();
        for (int n = 0; n < net.nodeCount; n++) {
            if (unknown(n) && state.squared[n] < NOTHING_LEFT * net.ambientSquared) {
                text.append("the pressure at ")
                        .append(net.nodeId[n])
                        .append(" falls to nothing: more air is drawn there than can come; ");
                break;
            }
        }
        int leg = worstLeg();
        if (leg != Network.NONE) {
            text.append("worst piece ")
                    .append(net.legId[leg])
                    .append(", off by ")
                    .append((float) worstLegError());
            text.append(" of the barometer's square");
            if (lawOf(leg).choked) {
                text.append(", choked: it cannot pass ")
                        .append((float) Math.abs(state.flow[leg]))
                        .append(" kg/s");
            }
        }
        int node = worstNode();
        if (node != Network.NONE) {
            text.append("; worst point ")
                    .append(net.nodeId[node])
                    .append(", ")
                    .append((float) balance[node])
                    .append(" kg/s do not balance");
        }
        return text.toString();
    }

    /** A draw that cannot be had, and what to do; empty where that is not the reason. */
    String impossibleDraw() {
        int leg = worstLeg();
        if (leg == Network.NONE || !lawOf(leg).choked) {
            return "";
        }
        for (int n = 0; n < net.nodeCount; n++) {
            if (net.supply_kgPerS[n] < 0 && !net.nodeId[n].contains("/")) {
                return "the flow drawn at " + net.nodeId[n] + " is more than " + net.legId[leg]
                        + " can pass, whatever the vacuum: state a smaller draw, or widen " + net.legId[leg] + "; ";
            }
        }
        return "";
    }

    /** Imbalance at a pinned node: what its producers must take [kg/s]. */
    double imbalance_kgPerS(int node) {
        return balance[node];
    }

    /** The law of a leg at the present pressures and flows: its friction factor, whether it is choked. */
    LegLaws lawOf(int leg) {
        double from = state.squared[net.from[leg]];
        double to = state.squared[net.to[leg]];
        laws.evaluate(leg, state.flow[leg], from, to, state.linear[leg], state.junction[leg]);
        return laws;
    }
}
