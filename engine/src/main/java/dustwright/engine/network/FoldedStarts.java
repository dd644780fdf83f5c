package dustwright.engine.network;

import java.util.Arrays;

/**
 * Where the solution of a state starts, by the number of open inlets: every one of them draws what it would draw alone at a usual
 * pressure, less a share that inlets open together usually lose; with that one step for the pressure in the receiver.
 */
final class FoldedStarts {
    private final FoldedTree tree;
    private final BranchTables branches;
    private final Surroundings surroundings;
    private final double greatest;
    /** What leaks bring through a branch, about, per u; for the receiver: all of them [kg/s]. */
    final double[] idlePerU;

    // by number of open inlets
    private final double[] place;
    /** What the station draws beyond leaks at that place, and its slope. */
    private final double[] draw;

    private final double[] drawSlope;
    /** By rank: what an inlet is taken to draw there, and its slope. */
    private final double[][] flow;

    private final double[][] slope;

    FoldedStarts(FoldedTree tree, BranchTables branches, Surroundings surroundings) {
        this.tree = tree;
        this.branches = branches;
        this.surroundings = surroundings;
        greatest = surroundings.tables.machine().greatest();
        int inlets = tree.inletOfRank.length;
        place = new double[inlets + 1];
        draw = new double[inlets + 1];
        drawSlope = new double[inlets + 1];
        flow = new double[inlets + 1][inlets];
        slope = new double[inlets + 1][inlets];
        idlePerU = new double[tree.size];
        double middle = greatest / 2;
        for (int node = 1; node < tree.size; node++) {
            int closed = branches.closed[node];
            idlePerU[node] = closed == Network.NONE ? 0 : branches.singles.flow(closed, middle) / middle;
            if (tree.parent[node] == 0) {
                idlePerU[0] += idlePerU[node];
            }
        }
    }

    /** Solves evenly spread sets of none, one, two, three … open inlets, each from the one before. */
    void find(FoldedSolver solver) {
        int inlets = tree.inletOfRank.length;
        int[] spread = new int[inlets];
        double u = 0.9 * greatest;
        double drawn = 1;
        for (int count = 0; count <= inlets; count++) {
            for (int n = 0; n < count; n++) {
                spread[n] = tree.inletOfRank[(int) ((n + 0.5) * inlets / count)];
            }
            set(count, u, drawn);
            if (solver.solve(Arrays.copyOf(spread, count), count) != FoldedSolver.Answer.NOT_SETTLED) {
                u = solver.receiverPlace();
                drawn = shareDrawn(solver, count);
                set(count, u, drawn);
            }
        }
    }

    private void set(int count, double u, double drawn) {
        place[count] = u;
        OutsideTables.Cursor station = surroundings.tables.new Cursor();
        station.moveTo(u);
        station.read(surroundings.closed(0));
        draw[count] = station.flow() - idlePerU[0] * u;
        drawSlope[count] = station.flowSlope() - idlePerU[0];
        PortTables.Sum alone = branches.singles.new Sum();
        int[] table = new int[1];
        for (int rank = 0; rank < flow[count].length; rank++) {
            table[0] = branches.toward(0, rank);
            alone.of(table, 0, 1, u);
            flow[count][rank] = drawn * (alone.flow() - idlePerU[0] * u);
            slope[count][rank] = drawn * (alone.slope() - idlePerU[0]);
        }
    }

    /** Share of what the open inlets would draw alone, at the pressure now in the receiver, that they draw together. */
    private double shareDrawn(FoldedSolver solver, int count) {
        double u = solver.receiverPlace();
        double alone = 0;
        for (int n = 0; n < count; n++) {
            alone += branches.singles.flow(branches.toward(0, solver.openRank(n)), u) - idlePerU[0] * u;
        }
        return alone > 0 ? (solver.drawn_kgPerS() - idlePerU[0] * u) / alone : 1;
    }

    /** u in the receiver to start from. */
    double place(int[] open, int count) {
        double u = place[count];
        double alone = 0;
        double aloneSlope = 0;
        double[] flows = flow[count];
        double[] slopes = slope[count];
        for (int n = 0; n < count; n++) {
            alone += flows[open[n]];
            aloneSlope += slopes[open[n]];
        }
        double moved = u - (draw[count] - alone) / (drawSlope[count] - aloneSlope);
        return moved > 0.5 * u && moved < 0.5 * (greatest + u) ? moved : u;
    }

    /** What an inlet draws with u in the receiver, to start from: flows are nearly in proportion to u [kg/s]. */
    double drawn_kgPerS(int count, int rank, double u) {
        return flow[count][rank] * u / place[count];
    }
}
