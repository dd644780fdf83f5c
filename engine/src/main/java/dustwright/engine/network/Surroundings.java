package dustwright.engine.network;

/**
 * What lies outside every branch that holds at least two inlets, seen from its first node (equation NET-13): with all inlets out there
 * closed, and, for the largest branches, with each one of them open.
 */
final class Surroundings {
    static final int NONE = Network.NONE;

    /** Tables with one inlet open outside, about 25 kB each; larger branches, with few inlets outside, come first. */
    private static final int MOST_ONE_OPEN = 1_000;

    final OutsideTables tables;
    private final FoldedTree tree;
    private final int[] closed;
    private final int[] oneOpen;
    private int next;

    Surroundings(Network network, FoldedTree tree, LegLaw[] law, BranchTables branches, MachineEnd machine) {
        this.tree = tree;
        closed = new int[tree.size];
        oneOpen = new int[tree.size];
        int least = leastWithOneOpen();
        tables = new OutsideTables(machine, tree.size + oneOpenFrom(least));
        OutsideBuilder builder = new OutsideBuilder(network, tables, branches.singles);
        builder.station(next);
        closed[0] = next++;
        oneOpen[0] = NONE;
        for (int node = 1; node < tree.size; node++) {
            closed[node] = NONE;
            oneOpen[node] = NONE;
            int nearer = tree.parent[node];
            if (tree.inlets(node) >= 2) {
                builder.through(next, closed[nearer], law[node], branches.hanging(nearer, node, NONE, NONE));
                closed[node] = next++;
            }
            if (tree.inlets(node) >= least) {
                oneOpen[node] = next;
                next += tree.inletOfRank.length - tree.inlets(node);
                for (int rank = 0; rank < tree.inletOfRank.length; rank++) {
                    if (!tree.holds(node, rank)) {
                        int before = tree.holds(nearer, rank) ? closed[nearer] : oneOpen(nearer, rank);
                        builder.through(
                                oneOpen(node, rank), before, law[node], branches.hanging(nearer, node, rank, NONE));
                    }
                }
            }
        }
    }

    /** Inlets of the smallest branches that get tables with one inlet open outside. */
    private int leastWithOneOpen() {
        int least = tree.inletOfRank.length;
        while (least > 2 && oneOpenFrom(least - 1) <= MOST_ONE_OPEN) {
            least--;
        }
        return Math.max(least, 2);
    }

    private int oneOpenFrom(int least) {
        long count = 0;
        for (int node = 1; node < tree.size; node++) {
            if (tree.inlets(node) >= least) {
                count += tree.inletOfRank.length - tree.inlets(node);
            }
        }
        return (int) Math.min(count, Integer.MAX_VALUE);
    }

    /** Whether a branch has tables with one inlet open outside. */
    boolean hasOneOpen(int branch) {
        return oneOpen[branch] != NONE;
    }

    /** Table with all inlets outside a branch closed; NODE 0 for the receiver, outside which there is the station alone. */
    int closed(int branch) {
        return closed[branch];
    }

    /** Table with one inlet outside the branch open. */
    int oneOpen(int branch, int rank) {
        return oneOpen[branch] + (rank < tree.firstInlet[branch] ? rank : rank - tree.inlets(branch));
    }

    /**
     * Table for a node on the path to the branch outside which an inlet is open.
     *
     * @param open the inlet, or NONE
     */
    int of(int branch, int open) {
        return open == NONE || tree.holds(branch, open) ? closed[branch] : oneOpen(branch, open);
    }
}
