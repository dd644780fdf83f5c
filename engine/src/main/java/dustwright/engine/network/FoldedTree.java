package dustwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The tubing of one station as a rooted tree, numbered for folding: node 0 is the receiver, every branch is one block of numbers
 * ("preorder"), and inlets are ranked in the same order, so that the inlets of a branch are one range of ranks.
 */
final class FoldedTree {
    static final int NONE = Network.NONE;

    final int size;
    final int[] networkNode;
    /** Leg from the node toward the receiver; NONE at the receiver. */
    final int[] leg;

    final int[] parent;
    final int[][] children;
    /** Rank of the inlet at the node, or NONE. */
    final int[] inletHere;
    /** Ranks of the branch's inlets: from here up to, not including, {@link #endInlet}. */
    final int[] firstInlet;

    final int[] endInlet;
    /** Number of an inlet in the order of the plant, by rank. */
    final int[] inletOfRank;
    /** Runs between a node and the receiver. */
    final int[] depth;
    /** Nodes from the receiver to an inlet, by its rank; the place of a node in it is its depth. */
    final int[][] pathTo;

    /** Node where the paths of two inlets meet, by their ranks; for an inlet with itself its own node. */
    final int[][] meeting;

    private final Network network;
    private final List<List<Integer>> runsAt = new ArrayList<>();
    private final boolean[] seen;
    private int numbered;
    private int ranked;

    /**
     * @param network without an {@link #obstacle}
     */
    FoldedTree(Network network) {
        this.network = network;
        size = network.runLeg.length + 1;
        networkNode = new int[size];
        leg = new int[size];
        parent = new int[size];
        children = new int[size][];
        inletHere = new int[size];
        firstInlet = new int[size];
        endInlet = new int[size];
        inletOfRank = new int[network.inlets.size()];
        depth = new int[size];
        pathTo = new int[network.inlets.size()][];
        seen = new boolean[network.nodeCount];
        collectRuns();
        number(network.stations.get(0).receiver(), NONE, NONE);
        meeting = new int[ranked][ranked];
        for (int node = 0; node < size; node++) {
            // nodes further out come later and stand
            for (int rank = firstInlet[node]; rank < endInlet[node]; rank++) {
                Arrays.fill(meeting[rank], firstInlet[node], endInlet[node], node);
            }
        }
    }

    /** Number of inlets in a branch. */
    int inlets(int branch) {
        return endInlet[branch] - firstInlet[branch];
    }

    /** Whether an inlet lies in a branch; false for none. */
    boolean holds(int branch, int rank) {
        return rank != NONE && rank >= firstInlet[branch] && rank < endInlet[branch];
    }

    /** Why a network is no tree that can be folded, in words that follow "because"; empty when it can. */
    static String obstacle(Network network) {
        if (network.stations.size() != 1) {
            return "it has " + network.stations.size() + " stations, and folding takes one";
        }
        int receiver = network.stations.get(0).receiver();
        for (int node = 1; node < network.nodeCount; node++) {
            if (network.held[node] || (node != receiver && network.supply_kgPerS[node] != 0)) {
                return "pressure or supply of " + network.nodeId[node] + " is held from outside";
            }
        }
        for (int run : network.runLeg) {
            if (network.wye_rad[run] != 0) {
                return "the loss of the wye that " + network.legId[run] + " enters depends on how the air splits";
            }
            if (network.from[run] == Network.STILL_AIR || network.to[run] == Network.STILL_AIR) {
                return network.legId[run] + " stands open to still air";
            }
        }
        return isTree(network, receiver) ? "" : "its tubing is not one tree";
    }

    /** One tree: as many joins as runs, and everything hangs on the receiver. */
    private static boolean isTree(Network network, int receiver) {
        int[] root = new int[network.nodeCount];
        Arrays.setAll(root, node -> node);
        for (int run : network.runLeg) {
            int one = top(root, network.from[run]);
            int other = top(root, network.to[run]);
            if (one == other) {
                return false;
            }
            root[one] = other;
        }
        for (int run : network.runLeg) {
            if (top(root, network.from[run]) != top(root, receiver)) {
                return false;
            }
        }
        return network.inlets.stream().allMatch(inlet -> top(root, inlet.node()) == top(root, receiver));
    }

    private static int top(int[] root, int node) {
        int at = node;
        while (root[at] != at) {
            root[at] = root[root[at]];
            at = root[at];
        }
        return at;
    }

    private void collectRuns() {
        for (int node = 0; node < network.nodeCount; node++) {
            runsAt.add(new ArrayList<>());
        }
        for (int run : network.runLeg) {
            runsAt.get(network.from[run]).add(run);
            runsAt.get(network.to[run]).add(run);
        }
    }

    private int number(int node, int run, int above) {
        int here = numbered++;
        seen[node] = true;
        networkNode[here] = node;
        leg[here] = run;
        parent[here] = above;
        depth[here] = above == NONE ? 0 : depth[above] + 1;
        firstInlet[here] = ranked;
        inletHere[here] = NONE;
        for (int inlet = 0; inlet < network.inlets.size(); inlet++) {
            if (network.inlets.get(inlet).node() == node) {
                inletHere[here] = ranked;
                inletOfRank[ranked] = inlet;
                pathTo[ranked++] = pathTo(here);
            }
        }
        List<Integer> below = new ArrayList<>();
        for (int further : runsAt.get(node)) {
            int next = network.from[further] == node ? network.to[further] : network.from[further];
            if (!seen[next]) {
                below.add(number(next, further, here));
            }
        }
        children[here] = below.stream().mapToInt(Integer::intValue).toArray();
        endInlet[here] = ranked;
        return here;
    }

    private int[] pathTo(int here) {
        int[] path = new int[depth[here] + 1];
        int at = here;
        for (int n = path.length - 1; n >= 0; n--) {
            path[n] = at;
            at = parent[at];
        }
        return path;
    }
}
