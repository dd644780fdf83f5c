package dustwright.engine.network;

/**
 * What a state leaves to be solved: the active nodes, and which tables hang on each. The first is the root: the branch point of the open
 * paths, all inlets but perhaps one being open in its branch. The tables of its {@link Surroundings} stand for everything outside. Other
 * active nodes are those above which more inlets are open than there are tables for.
 */
final class OpenPaths {
    private static final int NONE = Network.NONE;

    private final FoldedNetwork folded;
    private final FoldedTree tree;
    private final BranchTables tables;

    /** Ranks of the open inlets, rising. */
    final int[] open;
    /** Which of the inlets asked for each of them is. */
    final int[] asked;

    int openCount;
    /** The inlet open outside the root's branch, or NONE. */
    int outside;
    /** Its place among the open inlets. */
    int outsideAt;
    /** Table of what lies outside the root. */
    int surroundings;

    // active nodes: the root first, each after the node it joins
    int active;
    final int[] node;
    final int[] joins;
    final int[] openFrom;
    final int[] openTo;
    final double[] leakPerU;
    /** Tables with at most one inlet open that hang on a node: from here to where the next node's begin. */
    final int[] portFrom;

    final int[] ports;
    final int[] pairFrom;
    final int[] pairs;

    // tables with open inlets among them
    int branches;
    final int[] branchAt;
    final int[] branchTable;
    /** Place of its first inlet among the open ones. */
    final int[] branchOpen;

    final boolean[] branchPair;

    OpenPaths(FoldedNetwork folded) {
        this.folded = folded;
        tree = folded.tree;
        tables = folded.branches;
        int inlets = folded.rankOfInlet.length;
        int size = tree.size;
        open = new int[inlets];
        asked = new int[inlets];
        node = new int[size];
        joins = new int[size];
        openFrom = new int[size];
        openTo = new int[size];
        leakPerU = new double[size];
        portFrom = new int[size + 1];
        ports = new int[2 * size + inlets];
        pairFrom = new int[size + 1];
        pairs = new int[inlets];
        branchAt = new int[inlets];
        branchTable = new int[inlets];
        branchOpen = new int[inlets];
        branchPair = new boolean[inlets];
    }

    /** Goes to the state in which these inlets are open, by their numbers in the plant. */
    void collect(int[] inlets, int count) {
        rank(inlets, count);
        findRoot();
        active = 1;
        branches = 0;
        portFrom[0] = 0;
        pairFrom[0] = 0;
        for (int a = 0; a < active; a++) {
            collectNode(a);
        }
    }

    private void rank(int[] inlets, int count) {
        openCount = count;
        for (int n = 0; n < count; n++) {
            int rank = folded.rankOfInlet[inlets[n]];
            int m = n;
            for (; m > 0 && open[m - 1] > rank; m--) {
                open[m] = open[m - 1];
                asked[m] = asked[m - 1];
            }
            open[m] = rank;
            asked[m] = n;
        }
    }

    /** Ranks rise along the tree, so that the paths of all meet where those of the first and the last do. */
    private void findRoot() {
        int root = 0;
        outside = NONE;
        openFrom[0] = 0;
        openTo[0] = openCount;
        if (openCount >= 2) {
            root = tree.meeting[open[0]][open[openCount - 1]];
        }
        if (openCount >= 3) {
            int withoutFirst = withTables(tree.meeting[open[1]][open[openCount - 1]], root);
            int withoutLast = withTables(tree.meeting[open[0]][open[openCount - 2]], root);
            if (withoutFirst != root) {
                root = withoutFirst;
                outsideAt = 0;
                outside = open[0];
                openFrom[0] = 1;
            } else if (withoutLast != root) {
                root = withoutLast;
                outsideAt = openCount - 1;
                outside = open[outsideAt];
                openTo[0] = outsideAt;
            }
        }
        node[0] = root;
        surroundings = folded.surroundings.of(root, outside);
    }

    /** The node itself, or the next toward the root, that has tables with one inlet open outside. */
    private int withTables(int further, int root) {
        int at = further;
        while (at != root && !folded.surroundings.hasOneOpen(at)) {
            at = tree.parent[at];
        }
        return at;
    }

    /** Finds what hangs on an active node and which further nodes are active. */
    private void collectNode(int a) {
        int here = node[a];
        int next = openFrom[a];
        int end = openTo[a];
        int port = portFrom[a];
        int pair = pairFrom[a];
        leakPerU[a] = tables.leakPerU[here];
        int inlet = tree.inletHere[here];
        if (inlet != NONE && next < end && open[next] == inlet) {
            leakPerU[a] = 0;
            ports[port++] = branch(a, next, tables.hose[inlet], false);
            next++;
        }
        if (tables.bleed[here] != NONE) {
            ports[port++] = tables.bleed[here];
        }
        for (int child : tree.children[here]) {
            int first = next;
            int endOfBranch = tree.endInlet[child];
            while (next < end && open[next] < endOfBranch) {
                next++;
            }
            if (next == first) {
                if (tables.closed[child] != NONE) {
                    ports[port++] = tables.closed[child];
                }
            } else if (next == first + 1) {
                ports[port++] = branch(a, first, tables.oneOpen(child, open[first]), false);
            } else if (next == first + 2 && tables.hasPairs(child)) {
                pairs[pair++] = branch(a, first, tables.twoOpen(child, open[first], open[first + 1]), true);
            } else {
                node[active] = child;
                joins[active] = a;
                openFrom[active] = first;
                openTo[active] = next;
                active++;
            }
        }
        portFrom[a + 1] = port;
        pairFrom[a + 1] = pair;
    }

    private int branch(int at, int first, int table, boolean pair) {
        branchAt[branches] = at;
        branchOpen[branches] = first;
        branchTable[branches] = table;
        branchPair[branches] = pair;
        branches++;
        return table;
    }
}
