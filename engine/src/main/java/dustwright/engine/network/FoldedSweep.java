package dustwright.engine.network;

/**
 * One state after another of a {@link FoldedNetwork}, solved by a {@link FoldedSolver} and read as far as asked: what every open inlet
 * draws; and pieces, which are the runs and hoses between every open inlet and the receiver. Allocates nothing.
 */
final class FoldedSweep {
    private static final int NONE = Network.NONE;

    private final FoldedNetwork folded;
    private final FoldedTree tree;
    private final BranchTables tables;
    private final FoldedSolver solver;
    private final OpenPaths paths;
    private final OutsideTables.Cursor outside;
    private final double ambientSquared;

    private final double[] inletFlow;
    private boolean inletsRead;
    private boolean piecesRead;
    // on their way from an active node to one open inlet or two
    private int walkers;
    private final int[] walkerRank;
    private final int[] walkerOther;
    private final int[] walkerDepth;
    private final double[] walkerPlace;

    private int pieces;
    private final int[] pieceLeg;
    private final double[] pieceFlow;
    private final double[] pieceSquared;

    FoldedSweep(FoldedNetwork folded) {
        this.folded = folded;
        solver = new FoldedSolver(folded);
        tree = folded.tree;
        tables = folded.branches;
        paths = solver.paths;
        outside = folded.surroundings.tables.new Cursor();
        ambientSquared = folded.network.ambientSquared;
        int inlets = folded.rankOfInlet.length;
        inletFlow = new double[inlets];
        walkerRank = new int[inlets];
        walkerOther = new int[inlets];
        walkerDepth = new int[inlets];
        walkerPlace = new double[inlets];
        pieceLeg = new int[tree.size + inlets];
        pieceFlow = new double[tree.size + inlets];
        pieceSquared = new double[tree.size + inlets];
    }

    /**
     * Solves the state in which these inlets are open.
     *
     * @param inlets numbers of inlets in the order of the plant, each at most once
     */
    FoldedSolver.Answer solve(int[] inlets) {
        inletsRead = false;
        piecesRead = false;
        return solver.solve(inlets, inlets.length);
    }

    /** Pressure in the receiver [Pa]. */
    double receiver_Pa() {
        return solver.receiver_Pa();
    }

    /** Air the station draws from the tubing [kg/s]. */
    double drawn_kgPerS() {
        return solver.drawn_kgPerS();
    }

    private void readInlets() {
        inletsRead = true;
        for (int b = 0; b < paths.branches; b++) {
            double u = solver.place[paths.branchAt[b]];
            int first = paths.branchOpen[b];
            if (paths.branchPair[b]) {
                readTwo(first, tables.pairs.far(paths.branchTable[b], u));
            } else {
                inletFlow[paths.asked[first]] = tables.singles.far(paths.branchTable[b], u);
            }
        }
        if (paths.outside != NONE) {
            int at = tree.meeting[paths.outside][paths.open[paths.openFrom[0]]];
            outside.moveTo(solver.receiverPlace());
            outside.read(folded.surroundings.closed(at));
            inletFlow[paths.asked[paths.outsideAt]] =
                    tables.singles.far(tables.toward(at, paths.outside), place(outside.squared()));
        }
    }

    /** Two inlets from u at the node where their paths meet. */
    private void readTwo(int first, double u) {
        int one = paths.open[first];
        int other = paths.open[first + 1];
        int at = tree.meeting[one][other];
        inletFlow[paths.asked[first]] = tables.singles.far(tables.toward(at, one), u);
        inletFlow[paths.asked[first + 1]] = tables.singles.far(tables.toward(at, other), u);
    }

    private double place(double squared) {
        return Math.sqrt(1 - squared / ambientSquared);
    }

    /** What an open inlet draws, by its place among those asked for [kg/s]. */
    double inletFlow_kgPerS(int asked) {
        if (!inletsRead) {
            readInlets();
        }
        return inletFlow[asked];
    }

    private void readPieces() {
        piecesRead = true;
        pieces = 0;
        walkers = 0;
        walkOutside();
        for (int a = 1; a < paths.active; a++) {
            add(tree.leg[paths.node[a]], solver.flow[a], solver.squared[a]);
        }
        for (int b = 0; b < paths.branches; b++) {
            int first = paths.branchOpen[b];
            int other = paths.branchPair[b] ? paths.open[first + 1] : NONE;
            int at = paths.branchAt[b];
            walker(paths.node[at], paths.open[first], other, solver.place[at]);
        }
        walkOn();
    }

    private void walker(int node, int rank, int other, double place) {
        walkerRank[walkers] = rank;
        walkerOther[walkers] = other;
        walkerDepth[walkers] = tree.depth[node];
        walkerPlace[walkers] = place;
        walkers++;
    }

    /** All walkers in turn, one leg at a time: a leg waits for the one before on its own path only. */
    private void walkOn() {
        boolean further = true;
        while (further) {
            further = false;
            for (int n = 0; n < walkers; n++) {
                further |= walkerOther[n] == NONE ? step(n) : stepForTwo(n);
            }
        }
    }

    /** One leg further out on the way to an inlet; false when there. */
    private boolean step(int walker) {
        int rank = walkerRank[walker];
        int depth = walkerDepth[walker] + 1;
        int[] legs = folded.pathLeg[rank];
        if (depth == legs.length) {
            return false;
        }
        int table = tables.pathTable[rank][depth];
        double u = walkerPlace[walker];
        arrive(walker, depth, legs[depth], tables.singles.flow(table, u), tables.singles.inner(table, u));
        return true;
    }

    /** One leg further out on the common way to two inlets; where it ends, one walker becomes two. */
    private boolean stepForTwo(int walker) {
        int rank = walkerRank[walker];
        int other = walkerOther[walker];
        int depth = walkerDepth[walker];
        double u = walkerPlace[walker];
        int meeting = tree.meeting[rank][other];
        if (depth == tree.depth[meeting]) {
            walkerOther[walker] = NONE;
            walker(meeting, other, NONE, u);
            return true;
        }
        int next = tree.pathTo[rank][depth + 1];
        int table = tables.twoOpen(next, rank, other);
        arrive(walker, depth + 1, tree.leg[next], tables.pairs.flow(table, u), tables.pairs.inner(table, u));
        return true;
    }

    private void arrive(int walker, int depth, int leg, double w, double u) {
        add(leg, w, ambientSquared * (1 - u * u));
        walkerDepth[walker] = depth;
        walkerPlace[walker] = u;
    }

    /** From the root to the receiver, and out to the inlet open on the way. */
    private void walkOutside() {
        outside.moveTo(solver.receiverPlace());
        boolean passed = paths.outside == NONE;
        for (int node = paths.node[0]; ; node = tree.parent[node]) {
            outside.read(folded.surroundings.of(node, paths.outside));
            if (!passed && tree.holds(node, paths.outside)) {
                walker(node, paths.outside, NONE, place(outside.squared()));
                passed = true;
            }
            if (node == 0) {
                return;
            }
            add(tree.leg[node], outside.flow(), outside.squared());
        }
    }

    private void add(int leg, double w, double startSquared) {
        pieceLeg[pieces] = leg;
        pieceFlow[pieces] = w;
        pieceSquared[pieces] = startSquared;
        pieces++;
    }

    /** Number of pieces on open paths; the pieces can be asked for after it. */
    int pieces() {
        if (!piecesRead) {
            readPieces();
        }
        return pieces;
    }

    /** Leg of a piece, as the network numbers it. */
    int leg(int piece) {
        return pieceLeg[piece];
    }

    /** Flow toward the receiver [kg/s]. */
    double flow_kgPerS(int piece) {
        return pieceFlow[piece];
    }

    /** Static pressure at the end away from the receiver, where the air is slowest; a hose from still air starts at ambient [Pa]. */
    double startPressure_Pa(int piece) {
        return Math.sqrt(pieceSquared[piece]);
    }
}
