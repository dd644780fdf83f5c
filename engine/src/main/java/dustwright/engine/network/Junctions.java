package dustwright.engine.network;

import dustwright.engine.tubing.JunctionLoss;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Losses where a branch joins a run, as they follow from the flows (equation NET-5). Charged to both entering legs at their
 * downstream end, in pressure squared:
 *
 * <pre>
 * a = K·C + max(0, C − c w²),   C = c_common · w_common²,   K by the split q = w_branch / w_common
 * </pre>
 *
 * Acceleration into the common bore is charged, nothing is recovered where a leg runs faster than the common one. Only where exactly
 * two streams, both in their drawn direction and one of them a stated branch, join into one tube and nothing else comes or goes;
 * elsewhere there is no junction loss.
 */
final class Junctions {
    /** A stream below this share of the node's greatest counts as none. */
    private static final double NO_STREAM = 1e-9;

    /** Branch over common bore up to which the loss formula holds; a little over 1 for rounding [-]. */
    static final double SAME_BORE = 1 + 1e-9;

    private final Network net;
    private final int[][] legsAt;
    private final int[] nodes;
    private final @Nullable JunctionLoss[][] loss;

    Junctions(Network net) {
        this.net = net;
        List<List<Integer>> around = new ArrayList<>();
        for (int n = 0; n < net.nodeCount; n++) {
            around.add(new ArrayList<>());
        }
        boolean[] hasBranch = new boolean[net.nodeCount];
        for (int leg = 0; leg < net.legCount; leg++) {
            around.get(net.from[leg]).add(leg);
            around.get(net.to[leg]).add(leg);
            hasBranch[net.to[leg]] |= net.wye_rad[leg] > 0;
        }
        List<Integer> joins = new ArrayList<>();
        for (int n = 1; n < net.nodeCount; n++) {
            if (hasBranch[n] && net.supply_kgPerS[n] == 0 && !net.held[n]) {
                joins.add(n);
            }
        }
        nodes = joins.stream().mapToInt(n -> n).toArray();
        legsAt = new int[nodes.length][];
        loss = new JunctionLoss[nodes.length][];
        for (int j = 0; j < nodes.length; j++) {
            legsAt[j] = around.get(nodes[j]).stream().mapToInt(leg -> leg).toArray();
            loss[j] = tabulate(legsAt[j], nodes[j]);
        }
    }

    boolean any() {
        return nodes.length > 0;
    }

    /** Loss of every (branch, common) pair of legs at a node; null where the pair is none or outside the formula's range. */
    private @Nullable JunctionLoss[] tabulate(int[] legs, int node) {
        JunctionLoss[] pairs = new JunctionLoss[legs.length * legs.length];
        for (int b = 0; b < legs.length; b++) {
            for (int o = 0; o < legs.length; o++) {
                boolean branch = net.to[legs[b]] == node && net.wye_rad[legs[b]] > 0;
                boolean common = net.from[legs[o]] == node && net.c[legs[o]] > 0;
                if (branch && common) {
                    double ratio = net.bore_m[legs[b]] / net.bore_m[legs[o]];
                    if (ratio <= SAME_BORE) {
                        pairs[b * legs.length + o] =
                                JunctionLoss.crane(net.wye_rad[legs[b]], Math.min(1, ratio * ratio));
                    }
                }
            }
        }
        return pairs;
    }

    /** Puts the junction losses that follow from the flows into {@code junction}, 0 for every leg that has none. */
    void losses(boolean[] active, double[] flow, double[] junction) {
        for (int j = 0; j < nodes.length; j++) {
            for (int leg : legsAt[j]) {
                if (net.to[leg] == nodes[j]) {
                    junction[leg] = 0;
                }
            }
            join(j, active, flow, junction);
        }
    }

    private void join(int j, boolean[] active, double[] flow, double[] junction) {
        int[] legs = legsAt[j];
        double greatest = 0;
        for (int leg : legs) {
            greatest = Math.max(greatest, active[leg] ? Math.abs(flow[leg]) : 0);
        }
        int branch = Network.NONE;
        int run = Network.NONE;
        int common = Network.NONE;
        for (int n = 0; n < legs.length; n++) {
            int leg = legs[n];
            if (!active[leg] || Math.abs(flow[leg]) <= NO_STREAM * greatest) {
                continue;
            }
            boolean drawn = flow[leg] > 0 && net.c[leg] > 0;
            if (drawn && net.from[leg] == nodes[j] && common == Network.NONE) {
                common = n;
            } else if (drawn && net.to[leg] == nodes[j] && net.wye_rad[leg] > 0 && branch == Network.NONE) {
                branch = n;
            } else if (drawn && net.to[leg] == nodes[j] && net.wye_rad[leg] == 0 && run == Network.NONE) {
                run = n;
            } else {
                return;
            }
        }
        if (branch == Network.NONE || run == Network.NONE || common == Network.NONE) {
            return;
        }
        @Nullable JunctionLoss k = loss[j][branch * legs.length + common];
        if (k == null) {
            return;
        }
        double through = flow[legs[common]];
        double head = net.c[legs[common]] * through * through;
        double split = Math.min(1, flow[legs[branch]] / through);
        double lesser = Math.min(flow[legs[branch]], flow[legs[run]]);
        double share = Math.min(1, lesser / (JunctionLoss.FULL_FROM * through));
        junction[legs[branch]] = share * (k.branch(split) * head + acceleration(legs[branch], flow, head));
        junction[legs[run]] = share * (k.run(split) * head + acceleration(legs[run], flow, head));
    }

    private double acceleration(int leg, double[] flow, double head) {
        return Math.max(0, head - net.c[leg] * flow[leg] * flow[leg]);
    }
}
