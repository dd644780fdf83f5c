package dustwright.engine.network;

import dustwright.engine.finding.Outcome;
import dustwright.engine.network.Network.StationParts;

/**
 * A tree of tubing folded for many states (equations NET-9, NET-10, NET-13): compiled once per network and condition of its station, then
 * read by any number of {@link FoldedSolver}s, one per thread.
 *
 * <p>A part of the tree that hangs on the rest by one leg, its inlets in a given condition, is a function of one pressure. Tabulated are
 * branches with none, one or two of their inlets open ({@link BranchTables}) and, the other way round, the station with everything
 * outside a branch, none or one of the inlets there open ({@link Surroundings}). What is left to solve are the points between.
 */
final class FoldedNetwork {
    /** Tables with at most one open inlet that may be kept, 12 kB each; larger networks are solved unfolded. */
    private static final long MOST_SINGLES = 24_000;

    final Network network;
    final FoldedTree tree;
    /** Law of the leg from a node toward the receiver. */
    final LegLaw[] law;

    final BranchTables branches;
    final Surroundings surroundings;
    final FoldedStarts starts;
    /** By rank, and by depth of the outer node: legs on the way from the receiver to an inlet; last its hose. */
    final int[][] pathLeg;
    /** Rank of an inlet, in the order of the plant. */
    final int[] rankOfInlet;

    /** Folds a network in the condition of its station that a state gives; which inlets are open does not matter here. */
    static Outcome<FoldedNetwork> fold(Network network, State state) {
        String obstacle = FoldedTree.obstacle(network);
        if (!obstacle.isEmpty()) {
            return new Outcome.NotSolved<>("not folded, because " + obstacle);
        }
        FoldedTree tree = new FoldedTree(network);
        long tables = BranchTables.singlesCount(network, tree);
        if (tables > MOST_SINGLES) {
            return new Outcome.NotSolved<>("not folded, because it would take " + tables + " tables");
        }
        StationParts station = network.stations.get(0);
        StationEnd end = new StationEnd(network, station);
        end.set(state);
        if (end.holding()) {
            return new Outcome.NotSolved<>("not folded, because a drive of " + station.id() + " holds its vacuum");
        }
        MachineEnd machine = new MachineEnd(new StationDraw(network, station, end, state));
        return new Outcome.Solved<>(new FoldedNetwork(network, state, tree, machine));
    }

    private FoldedNetwork(Network network, State state, FoldedTree tree, MachineEnd machine) {
        this.network = network;
        this.tree = tree;
        LawBook laws = new LawBook(network);
        law = new LegLaw[tree.size];
        for (int node = 1; node < tree.size; node++) {
            law[node] = laws.of(tree.leg[node]);
        }
        int inlets = network.inlets.size();
        pathLeg = new int[inlets][];
        rankOfInlet = new int[inlets];
        for (int rank = 0; rank < inlets; rank++) {
            rankOfInlet[tree.inletOfRank[rank]] = rank;
            int[] path = tree.pathTo[rank];
            pathLeg[rank] = new int[path.length + 1];
            for (int depth = 0; depth < path.length; depth++) {
                pathLeg[rank][depth] = tree.leg[path[depth]];
            }
            pathLeg[rank][path.length] =
                    network.inlets.get(tree.inletOfRank[rank]).hoseLeg();
        }
        branches = new BranchTables(network, state, tree, laws, law, machine.greatest());
        surroundings = new Surroundings(network, tree, law, branches, machine);
        starts = new FoldedStarts(tree, branches, surroundings);
        starts.find(new FoldedSolver(this));
    }
}
