package dustwright.engine.network;

import dustwright.engine.network.Network.LegKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Runs that alone lead out of a part of the tubing: whatever is fed there passes them, however the air divides elsewhere. In a tree
 * these are all runs. They are the bridges of the graph of runs in which all places where dust may leave, receivers, held points, points
 * from which air is drawn and the still air, count as one.
 */
final class DeadEnds {
    private final int[] first;
    private final int[] second;
    private final List<List<Integer>> around = new ArrayList<>();
    private final boolean[] only;

    private DeadEnds(Network net) {
        first = new int[net.legCount];
        second = new int[net.legCount];
        only = new boolean[net.legCount];
        boolean[] leaves = new boolean[net.nodeCount];
        for (int n = 0; n < net.nodeCount; n++) {
            leaves[n] = net.held[n] || net.supply_kgPerS[n] < 0;
            around.add(new ArrayList<>());
        }
        net.stations.forEach(station -> leaves[station.receiver()] = true);
        for (int leg = 0; leg < net.legCount; leg++) {
            first[leg] = leaves[net.from[leg]] ? Network.STILL_AIR : net.from[leg];
            second[leg] = leaves[net.to[leg]] ? Network.STILL_AIR : net.to[leg];
            if (net.legKind[leg] == LegKind.RUN && first[leg] != second[leg]) {
                around.get(first[leg]).add(leg);
                around.get(second[leg]).add(leg);
            }
        }
    }

    /** By leg, whether all dust from one side of it must pass it. */
    static boolean[] of(Network net) {
        DeadEnds ends = new DeadEnds(net);
        ends.search(net.nodeCount);
        return ends.only;
    }

    /** Depth first, without recursion: a long main is a deep tree. A bridge is a leg below which nothing reaches back above it. */
    private void search(int nodes) {
        int[] entered = new int[nodes];
        int[] lowest = new int[nodes];
        int[] cameBy = new int[nodes];
        int[] next = new int[nodes];
        int[] path = new int[nodes];
        Arrays.fill(cameBy, Network.NONE);
        int clock = 0;
        for (int start = 0; start < nodes; start++) {
            int depth = 0;
            if (entered[start] > 0) {
                continue;
            }
            path[0] = start;
            entered[start] = lowest[start] = ++clock;
            while (depth >= 0) {
                int node = path[depth];
                if (next[node] < around.get(node).size()) {
                    int leg = around.get(node).get(next[node]++);
                    int other = first[leg] == node ? second[leg] : first[leg];
                    if (leg == cameBy[node]) {
                        continue;
                    }
                    if (entered[other] > 0) {
                        lowest[node] = Math.min(lowest[node], entered[other]);
                    } else {
                        entered[other] = lowest[other] = ++clock;
                        cameBy[other] = leg;
                        path[++depth] = other;
                    }
                } else if (--depth >= 0) {
                    int above = path[depth];
                    only[cameBy[node]] = lowest[node] > entered[above];
                    lowest[above] = Math.min(lowest[above], lowest[node]);
                }
            }
        }
    }
}
