package dustwright.engine.network;

import dustwright.engine.network.Network.BleedParts;
import dustwright.engine.network.Network.InletParts;

/**
 * Tables of the branches of a tree, seen from the node each hangs on (equation NET-9): with all inlets closed, with each one of them
 * open, and, in branches of moderate size, with each two of them open.
 */
final class BranchTables {
    static final int NONE = Network.NONE;

    /** Even intervals of tables with at most one open inlet: errors of node pressures stay below 1e-10 of ambient. */
    private static final int SINGLE_INTERVALS = 256;
    /** Two open inlets draw so much more than leaks do that their kinks show less. */
    private static final int PAIR_INTERVALS = 128;
    /** Tables with two open inlets, 6 kB each; smaller branches come first. */
    private static final int MOST_PAIRS = 12_000;

    /** Tables with at most one open inlet. */
    final PortTables singles;
    /** Tables with two. */
    final PortTables pairs;
    /** Leak of the closed inlet at a node, per u [kg/s]. */
    final double[] leakPerU;
    /** Table of the open bleed at a node, or NONE. */
    final int[] bleed;
    /** Table of a branch with all its inlets closed; NONE where it draws nothing. */
    final int[] closed;
    /** Table of an open hose with its tool, by rank of the inlet. */
    final int[] hose;

    /** By rank, and by depth of the node further out: the table with that inlet open alone; last the table of its hose. */
    final int[][] pathTable;

    private final Network network;
    private final FoldedTree tree;
    private final LawBook laws;
    private final LegLaw[] law;
    private final PortBuilder builder;
    /** First table of a branch with two inlets open, or NONE. */
    private final int[] twoOpen;

    private int nextSingle;
    private int nextPair;

    /** How many tables with at most one open inlet there will be. */
    static long singlesCount(Network network, FoldedTree tree) {
        long count = 2L * network.inlets.size() + network.bleeds.size() + tree.size;
        for (int node = 1; node < tree.size; node++) {
            count += tree.inlets(node);
        }
        return count;
    }

    BranchTables(Network network, State state, FoldedTree tree, LawBook laws, LegLaw[] law, double greatest) {
        this.network = network;
        this.tree = tree;
        this.laws = laws;
        this.law = law;
        singles = new PortTables(greatest, SINGLE_INTERVALS, (int) singlesCount(network, tree));
        int largest = largestWithPairs();
        pairs = new PortTables(greatest, PAIR_INTERVALS, pairsUpTo(largest));
        builder = new PortBuilder(network, singles, pairs);
        leakPerU = new double[tree.size];
        bleed = new int[tree.size];
        closed = new int[tree.size];
        twoOpen = new int[tree.size];
        hose = new int[network.inlets.size()];
        for (int rank = 0; rank < hose.length; rank++) {
            hose[rank] = hose(network.inlets.get(tree.inletOfRank[rank]), rank);
        }
        for (int node = 0; node < tree.size; node++) {
            prepareNode(state, node);
        }
        pathTable = new int[hose.length][];
        for (int rank = 0; rank < hose.length; rank++) {
            pathTable[rank] = new int[tree.pathTo[rank].length + 1];
            pathTable[rank][tree.pathTo[rank].length] = hose[rank];
        }
        for (int node = tree.size - 1; node > 0; node--) {
            foldClosed(node);
            foldOneOpen(node);
            twoOpen[node] = NONE;
            if (tree.inlets(node) <= largest) {
                foldTwoOpen(node);
            }
        }
    }

    /** Inlets of the largest branches that get tables for every two of them. */
    private int largestWithPairs() {
        int size = 1;
        while (size < network.inlets.size() && pairsUpTo(size + 1) <= MOST_PAIRS) {
            size++;
        }
        return size;
    }

    private int pairsUpTo(int largest) {
        long count = 0;
        for (int node = 1; node < tree.size; node++) {
            long inlets = tree.inlets(node);
            if (inlets <= largest) {
                count += inlets * (inlets - 1) / 2;
            }
        }
        return (int) Math.min(count, Integer.MAX_VALUE);
    }

    /** Table of a branch with one inlet open. */
    int oneOpen(int branch, int rank) {
        return pathTable[rank][tree.depth[branch]];
    }

    /** Table of an inlet open alone, seen from a node on its path: of its hose, or of the branch that leads to it. */
    int toward(int node, int rank) {
        return pathTable[rank][tree.depth[node] + 1];
    }

    /** Whether a branch has tables with two inlets open. */
    boolean hasPairs(int branch) {
        return twoOpen[branch] != NONE;
    }

    /** Table of a branch with two inlets open, the lower rank first. */
    int twoOpen(int branch, int one, int other) {
        int inlets = tree.inlets(branch);
        int i = one - tree.firstInlet[branch];
        return twoOpen[branch] + i * (2 * inlets - i - 1) / 2 + other - one - 1;
    }

    /** Equal hoses share one table. */
    private int hose(InletParts inlet, int rank) {
        for (int other = 0; other < rank; other++) {
            if (sameHose(inlet, network.inlets.get(tree.inletOfRank[other]))) {
                return hose[other];
            }
        }
        if (inlet.toolLeg() == NONE) {
            builder.fromStillAir(nextSingle, inlet.hoseLeg(), laws.of(inlet.hoseLeg()));
            return nextSingle++;
        }
        int tool = nextSingle++;
        builder.fromStillAir(tool, inlet.toolLeg(), laws.of(inlet.toolLeg()));
        Hanging hanging = new Hanging(1);
        hanging.add(tool);
        hanging.open = tool;
        builder.through(nextSingle, laws.of(inlet.hoseLeg()), hanging);
        return nextSingle++;
    }

    private boolean sameHose(InletParts one, InletParts other) {
        return one.toolLeg() == NONE
                && other.toolLeg() == NONE
                && network.c[one.hoseLeg()] == network.c[other.hoseLeg()]
                && laws.of(one.hoseLeg()).equals(laws.of(other.hoseLeg()));
    }

    private void prepareNode(State state, int node) {
        bleed[node] = NONE;
        int networkNode = tree.networkNode[node];
        for (BleedParts parts : network.bleeds) {
            if (parts.node() == networkNode && state.openBleeds().contains(parts.id())) {
                builder.fromStillAir(nextSingle, parts.leg(), laws.of(parts.leg()));
                bleed[node] = nextSingle++;
            }
        }
        int rank = tree.inletHere[node];
        if (rank != NONE) {
            int leak = network.inlets.get(tree.inletOfRank[rank]).leakLeg();
            leakPerU[node] = leak == NONE ? 0 : Math.sqrt(network.ambientSquared / network.quadratic[leak]);
        }
    }

    private void foldClosed(int node) {
        Hanging hanging = hanging(node, NONE, NONE, NONE);
        closed[node] = NONE;
        if (hanging.count > 0 || hanging.leakPerU > 0) {
            builder.through(nextSingle, law[node], hanging);
            closed[node] = nextSingle++;
        }
    }

    private void foldOneOpen(int node) {
        for (int rank = tree.firstInlet[node]; rank < tree.endInlet[node]; rank++) {
            builder.through(nextSingle, law[node], hanging(node, NONE, rank, NONE));
            pathTable[rank][tree.depth[node]] = nextSingle++;
        }
    }

    private void foldTwoOpen(int node) {
        twoOpen[node] = nextPair;
        for (int one = tree.firstInlet[node]; one < tree.endInlet[node]; one++) {
            for (int other = one + 1; other < tree.endInlet[node]; other++) {
                builder.throughWithTwoOpen(nextPair++, law[node], hanging(node, NONE, one, other));
            }
        }
    }

    /**
     * Lists what hangs on a node besides one of its branches, while up to two inlets further in are open.
     *
     * @param without branch left out, or NONE
     * @param one open inlet, or NONE
     * @param other open inlet, or NONE
     */
    Hanging hanging(int node, int without, int one, int other) {
        Hanging hanging = new Hanging(tree.children[node].length + 2);
        hanging.add(bleed[node]);
        int here = tree.inletHere[node];
        if (here != NONE && (here == one || here == other)) {
            hanging.addOpen(hose[here]);
        } else {
            hanging.leakPerU = leakPerU[node];
        }
        for (int child : tree.children[node]) {
            boolean holdsOne = tree.holds(child, one);
            boolean holdsOther = tree.holds(child, other);
            if (child == without) {
                continue;
            }
            if (holdsOne && holdsOther) {
                hanging.pairs[0] = twoOpen(child, one, other);
            } else if (holdsOne || holdsOther) {
                hanging.addOpen(oneOpen(child, holdsOne ? one : other));
            } else {
                hanging.add(closed[child]);
            }
        }
        return hanging;
    }
}
