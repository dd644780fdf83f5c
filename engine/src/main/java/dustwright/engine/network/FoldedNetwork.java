package dustwright.engine.network;

import dustwright.engine.finding.Outcome;
import dustwright.engine.network.Network.BleedParts;
import dustwright.engine.network.Network.InletParts;
import dustwright.engine.network.Network.StationParts;
import dustwright.engine.tubing.Friction;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/**
 * A tree of tubing folded for many states (equations NET-9, NET-10): compiled once per network and condition of its station, then read
 * by any number of {@link FoldedSolver}s, one per thread.
 *
 * <p>A branch whose inlets are all in a given condition is a function of one pressure. Two kinds of such branches are tabulated
 * ({@link PortTables}): every branch with all its inlets closed, and every branch with exactly one of its inlets open. The station is a
 * third function of one pressure ({@link MachineEnd}). What is left to solve are the points above which two or more inlets are open.
 */
final class FoldedNetwork {
    static final int NONE = Network.NONE;

    /** Even intervals of every table: errors of node pressures stay below 1e-10 of ambient. */
    private static final int INTERVALS = 256;

    /** Rows of all tables that may be kept, 32 bytes each; larger networks are solved unfolded. */
    private static final long MOST_ROWS = 6_000_000;

    final Network network;
    final FoldedTree tree;
    final MachineEnd machine;
    final PortTables tables;

    final LegLaw[] law;
    /** Leak of the closed inlet at a node, per u [kg/s]. */
    final double[] leakPerU;
    /** Table of the open bleed at a node, or NONE. */
    final int[] bleed;
    /** Table of a branch with all its inlets closed, seen from the node it joins; NONE where it draws nothing. */
    final int[] closed;
    /** Where the tables of a branch with one inlet open would start for rank 0. */
    private final int[] oneOpen;
    /** Table of an open hose with its tool, by rank of the inlet. */
    final int[] hose;
    /** Leg of the hose, by rank. */
    final int[] hoseLeg;
    /** u in the receiver with so many inlets open, evenly spread: where to start from. */
    final double[] startPlace;
    /** What they then draw, as a share of what they would draw alone. */
    final double[] startShare;
    /** Table of an inlet open alone, seen from the receiver, by rank. */
    final int[] atReceiver;
    /** What leaks bring through a branch, about, per u; for the receiver: all of them [kg/s]. */
    final double[] idlePerU;
    /** Rank of an inlet, in the order of the plant. */
    final int[] rankOfInlet;

    private final Map<Double, FrictionTable> friction = new TreeMap<>();
    private int nextTable;

    /** Folds a network in the condition of its station that a state gives; which inlets are open does not matter here. */
    static Outcome<FoldedNetwork> fold(Network network, State state) {
        String obstacle = FoldedTree.obstacle(network);
        if (!obstacle.isEmpty()) {
            return new Outcome.NotSolved<>("not folded, because " + obstacle);
        }
        FoldedTree tree = new FoldedTree(network);
        long tables = tableCount(network, tree);
        if (tables * (INTERVALS + 1) > MOST_ROWS) {
            return new Outcome.NotSolved<>("not folded, because it would take " + tables + " tables");
        }
        StationParts station = network.stations.get(0);
        StationEnd end = new StationEnd(network, station);
        end.set(state);
        if (end.holding()) {
            return new Outcome.NotSolved<>("not folded, because a drive of " + station.id() + " holds its vacuum");
        }
        MachineEnd machine = new MachineEnd(new StationDraw(network, station, end, state));
        return new Outcome.Solved<>(new FoldedNetwork(network, state, tree, machine, (int) tables));
    }

    private static long tableCount(Network network, FoldedTree tree) {
        long count = 2L * network.inlets.size() + network.bleeds.size() + tree.size;
        for (int node = 1; node < tree.size; node++) {
            count += tree.endInlet[node] - tree.firstInlet[node];
        }
        return count;
    }

    private FoldedNetwork(Network network, State state, FoldedTree tree, MachineEnd machine, int tableCount) {
        this.network = network;
        this.tree = tree;
        this.machine = machine;
        tables = new PortTables(machine.greatest(), INTERVALS, tableCount);
        int inlets = network.inlets.size();
        law = new LegLaw[tree.size];
        leakPerU = new double[tree.size];
        bleed = new int[tree.size];
        closed = new int[tree.size];
        oneOpen = new int[tree.size];
        hose = new int[inlets];
        hoseLeg = new int[inlets];
        rankOfInlet = new int[inlets];
        startPlace = new double[inlets + 1];
        startShare = new double[inlets + 1];
        atReceiver = new int[inlets];
        idlePerU = new double[tree.size];

        PortBuilder builder = new PortBuilder(network, tables);
        for (int rank = 0; rank < inlets; rank++) {
            rankOfInlet[tree.inletOfRank[rank]] = rank;
            hoseLeg[rank] = network.inlets.get(tree.inletOfRank[rank]).hoseLeg();
            hose[rank] = hose(builder, network.inlets.get(tree.inletOfRank[rank]), rank);
        }
        for (int node = 0; node < tree.size; node++) {
            prepareNode(builder, state, node);
        }
        for (int node = tree.size - 1; node > 0; node--) {
            foldBranch(builder, node);
        }
        prepareStarts();
        findStarts();
    }

    private int next() {
        int table = nextTable;
        nextTable += tables.size();
        return table;
    }

    /** Table of a branch with one inlet open. */
    int oneOpen(int branch, int rank) {
        return oneOpen[branch] + rank * tables.size();
    }

    /** Equal hoses share one table. */
    private int hose(PortBuilder builder, InletParts inlet, int rank) {
        for (int other = 0; other < rank; other++) {
            if (sameHose(inlet, network.inlets.get(tree.inletOfRank[other]))) {
                return hose[other];
            }
        }
        if (inlet.toolLeg() == NONE) {
            builder.fromStillAir(nextTable, inlet.hoseLeg());
        } else {
            int tool = next();
            builder.fromStillAir(tool, inlet.toolLeg());
            builder.through(nextTable, lawOf(inlet.hoseLeg()), 0, new int[] {tool}, 1);
        }
        return next();
    }

    private boolean sameHose(InletParts one, InletParts other) {
        return one.toolLeg() == NONE
                && other.toolLeg() == NONE
                && network.c[one.hoseLeg()] == network.c[other.hoseLeg()]
                && lawOf(one.hoseLeg()).equals(lawOf(other.hoseLeg()));
    }

    private LegLaw lawOf(int leg) {
        double fixed = network.fixedFriction[leg];
        boolean byRoughness = fixed == Network.BY_ROUGHNESS;
        double roughness = byRoughness ? network.relativeRoughness[leg] : 0;
        FrictionTable table =
                friction.computeIfAbsent(roughness, e -> new FrictionTable(reynolds -> Friction.darcy(reynolds, e)));
        double lengthOverBore = network.lengthOverBore[leg];
        return new LegLaw(
                network.c[leg],
                byRoughness ? lengthOverBore : 0,
                network.k[leg] + (byRoughness ? 0 : fixed * lengthOverBore),
                network.reynoldsPerFlow[leg] / FrictionTable.REYNOLDS_UNIT,
                64 / network.reynoldsPerFlow[leg],
                table);
    }

    private void prepareNode(PortBuilder builder, State state, int node) {
        bleed[node] = NONE;
        int networkNode = tree.networkNode[node];
        for (BleedParts parts : network.bleeds) {
            if (parts.node() == networkNode && state.openBleeds().contains(parts.id())) {
                builder.fromStillAir(nextTable, parts.leg());
                bleed[node] = next();
            }
        }
        int rank = tree.inletHere[node];
        if (rank != NONE) {
            int leak = network.inlets.get(tree.inletOfRank[rank]).leakLeg();
            leakPerU[node] = leak == NONE ? 0 : Math.sqrt(network.ambientSquared / network.quadratic[leak]);
        }
        if (node > 0) {
            law[node] = lawOf(tree.leg[node]);
        }
    }

    /** Tabulates a branch: all its inlets closed, then each of them open alone. */
    private void foldBranch(PortBuilder builder, int node) {
        int[] ports = new int[tree.children[node].length + 2];
        int count = collectPorts(ports, node, NONE);
        if (count == 0 && leakPerU[node] == 0) {
            closed[node] = NONE;
        } else {
            builder.through(nextTable, law[node], leakPerU[node], ports, count);
            closed[node] = next();
        }
        oneOpen[node] = nextTable - tree.firstInlet[node] * tables.size();
        for (int rank = tree.firstInlet[node]; rank < tree.endInlet[node]; rank++) {
            count = collectPorts(ports, node, rank);
            double leak = tree.inletHere[node] == rank ? 0 : leakPerU[node];
            builder.through(next(), law[node], leak, ports, count);
        }
    }

    /** Lists the tables that hang on a node while one inlet further in is open, or none. */
    private int collectPorts(int[] ports, int node, int openInlet) {
        int count = 0;
        if (bleed[node] != NONE) {
            ports[count++] = bleed[node];
        }
        if (openInlet != NONE && tree.inletHere[node] == openInlet) {
            ports[count++] = hose[openInlet];
        }
        for (int child : tree.children[node]) {
            boolean holdsOpen =
                    openInlet != NONE && openInlet >= tree.firstInlet[child] && openInlet < tree.endInlet[child];
            int table = holdsOpen ? oneOpen(child, openInlet) : closed[child];
            if (table != NONE) {
                ports[count++] = table;
            }
        }
        return count;
    }

    private void prepareStarts() {
        for (int rank = 0; rank < hose.length; rank++) {
            int[] path = tree.pathTo[rank];
            atReceiver[rank] = path.length == 1 ? hose[rank] : oneOpen(path[1], rank);
        }
        PortTables.Cursor cursor = tables.new Cursor();
        double middle = machine.greatest() / 2;
        cursor.moveTo(middle);
        for (int node = 1; node < tree.size; node++) {
            idlePerU[node] = closed[node] == NONE ? 0 : cursor.flow(closed[node]) / middle;
            if (tree.parent[node] == 0) {
                idlePerU[0] += idlePerU[node];
            }
        }
    }

    /** Solves evenly spread sets of one, two, three … open inlets, each from the one before. */
    private void findStarts() {
        FoldedSolver solver = new FoldedSolver(this);
        int inlets = hose.length;
        int[] spread = new int[inlets];
        startPlace[0] = 0.9 * machine.greatest();
        for (int count = 0; count <= inlets; count++) {
            for (int n = 0; n < count; n++) {
                spread[n] = tree.inletOfRank[(int) ((n + 0.5) * inlets / count)];
            }
            startPlace[count] = startPlace[Math.max(count - 1, 0)];
            startShare[count] = count == 0 ? 1 : startShare[count - 1];
            if (solver.solve(Arrays.copyOf(spread, count), count) != FoldedSolver.Answer.NOT_SETTLED) {
                startPlace[count] = solver.receiverPlace();
                startShare[count] = solver.shareDrawn();
            }
        }
    }
}
