package dustwright.engine.network;

/**
 * Solves one state after another of a {@link FoldedNetwork}, cold each time: Newton's method on the points above which two or more
 * inlets are open, one sweep from the leaves to the receiver and one back per step. It keeps its arrays and allocates nothing; each
 * thread has its own.
 *
 * <p>A solved state is read as pieces: the runs and hoses between every open inlet and the receiver.
 */
final class FoldedSolver {
    /** How a state came out. */
    enum Answer {
        SOLVED,
        /** Something is choked: the tables end there. */
        CHOKED,
        /** Newton did not settle. */
        NOT_SETTLED
    }

    private static final int STEP_LIMIT = 60;
    /** After this many steps every other one is halved, so that a kink cannot throw the iteration to and fro for ever. */
    private static final int WHOLE_STEPS = 8;
    /** Newton is quadratic: after a step below this share of Pa² less than 4e-11 is left. */
    private static final double LAST_STEP = 4e-6;
    /** Least u: keeps slopes finite where there is no vacuum. */
    private static final double LEAST_PLACE = 1e-7;

    private final FoldedNetwork folded;
    private final FoldedTree tree;
    private final PortTables.Cursor cursor;
    private final MachineEnd.Cursor machine;
    private final double ambientSquared;
    private final double perAmbientSquared;
    private final double deepest;

    private final int[] open;
    private int openCount;
    /** Tables of the open inlets, each alone, seen from the receiver. */
    private final int[] atReceiver;
    /** What the first so many open inlets draw, to start from. */
    private final double[] drawn;

    // active nodes: the receiver first, each after the node it joins
    private int active;
    private final int[] node;
    private final int[] joins;
    private final int[] openFrom;
    private final int[] openTo;
    private final double[] leakPerU;
    private final int[] portFrom;
    private final int[] ports;
    private final double[] squared;
    private final double[] place;
    private final double[] flow;

    // elimination: dP = ownStep + stepPerJoined · dP of the node joined; dw = ownFlow + inflowSlope · dP
    private final double[] inflow;
    private final double[] inflowSlope;
    private final double[] ownStep;
    private final double[] stepPerJoined;
    private final double[] ownFlow;
    private final double[] residual;
    private final double[] innerSlope;
    private final double[] outerSlope;
    private final double[] flowSlope;
    private boolean choked;
    private int steps;

    // branches with one open inlet, by the active node they hang on
    private int branches;
    private final int[] branchDepth;
    private final int[] branchInlet;
    private final int[] branchAt;
    private final double[] branchPlace;

    private int pieces;
    private final int[] pieceLeg;
    private final double[] pieceFlow;
    private final double[] pieceSquared;

    FoldedSolver(FoldedNetwork folded) {
        this.folded = folded;
        tree = folded.tree;
        cursor = folded.tables.new Cursor();
        machine = folded.machine.new Cursor();
        ambientSquared = folded.network.ambientSquared;
        perAmbientSquared = 1 / ambientSquared;
        deepest = ambientSquared * (1 - folded.machine.greatest() * folded.machine.greatest());
        int inlets = folded.hose.length;
        int size = tree.size;
        open = new int[inlets];
        atReceiver = new int[inlets];
        drawn = new double[inlets + 1];
        node = new int[size];
        joins = new int[size];
        openFrom = new int[size];
        openTo = new int[size];
        leakPerU = new double[size];
        portFrom = new int[size + 1];
        ports = new int[2 * size + inlets];
        squared = new double[size];
        place = new double[size];
        flow = new double[size];
        inflow = new double[size];
        inflowSlope = new double[size];
        ownStep = new double[size];
        stepPerJoined = new double[size];
        ownFlow = new double[size];
        residual = new double[size];
        innerSlope = new double[size];
        outerSlope = new double[size];
        flowSlope = new double[size];
        branchDepth = new int[inlets];
        branchInlet = new int[inlets];
        branchAt = new int[inlets];
        branchPlace = new double[inlets];
        pieceLeg = new int[size + inlets];
        pieceFlow = new double[size + inlets];
        pieceSquared = new double[size + inlets];
    }

    /**
     * Solves the state in which these inlets are open.
     *
     * @param inlets numbers of inlets in the order of the plant, each at most once
     * @param count how many of them are meant, from the front
     */
    Answer solve(int[] inlets, int count) {
        rank(inlets, count);
        collect();
        start();
        Answer answer = iterate();
        if (answer == Answer.SOLVED) {
            readPieces();
            answer = choked ? Answer.CHOKED : Answer.SOLVED;
        }
        return answer;
    }

    private void rank(int[] inlets, int count) {
        openCount = count;
        for (int n = 0; n < count; n++) {
            int rank = folded.rankOfInlet[inlets[n]];
            int m = n;
            for (; m > 0 && open[m - 1] > rank; m--) {
                open[m] = open[m - 1];
            }
            open[m] = rank;
        }
        for (int n = 0; n < count; n++) {
            atReceiver[n] = folded.atReceiver[open[n]];
        }
    }

    /** Finds the active nodes and what hangs on each. */
    private void collect() {
        active = 1;
        branches = 0;
        node[0] = 0;
        openFrom[0] = 0;
        openTo[0] = openCount;
        int port = 0;
        for (int a = 0; a < active; a++) {
            int here = node[a];
            int next = openFrom[a];
            int end = openTo[a];
            portFrom[a] = port;
            leakPerU[a] = 0;
            int inlet = tree.inletHere[here];
            if (inlet != FoldedNetwork.NONE) {
                if (next < end && open[next] == inlet) {
                    ports[port++] = folded.hose[inlet];
                    branch(a, tree.pathTo[inlet].length, inlet);
                    next++;
                } else {
                    leakPerU[a] = folded.leakPerU[here];
                }
            }
            if (folded.bleed[here] != FoldedNetwork.NONE) {
                ports[port++] = folded.bleed[here];
            }
            for (int child : tree.children[here]) {
                int first = next;
                int endOfBranch = tree.endInlet[child];
                while (next < end && open[next] < endOfBranch) {
                    next++;
                }
                if (next == first) {
                    if (folded.closed[child] != FoldedNetwork.NONE) {
                        ports[port++] = folded.closed[child];
                    }
                } else if (next == first + 1) {
                    ports[port++] = folded.oneOpen(child, open[first]);
                    branch(a, tree.depth[child], open[first]);
                } else {
                    node[active] = child;
                    joins[active] = a;
                    openFrom[active] = first;
                    openTo[active] = next;
                    active++;
                }
            }
        }
        portFrom[active] = port;
    }

    private void branch(int at, int depth, int inlet) {
        branchAt[branches] = at;
        branchDepth[branches] = depth;
        branchInlet[branches] = inlet;
        branches++;
    }

    /**
     * Every open inlet draws what it would draw alone, less a share that inlets open together usually lose; with that one step for the
     * pressure in the receiver, and pressures up the tree.
     */
    private void start() {
        double share = folded.startShare[openCount];
        double u = folded.startPlace[openCount];
        cursor.moveTo(u);
        machine.moveTo(u);
        cursor.sum(atReceiver, 0, openCount);
        double idle = folded.idlePerU[0];
        double own = openCount * idle;
        double spare = machine.flow() - idle * u - share * (cursor.flow() - own * u);
        double moved = u - spare / (machine.slope() - idle - share * (cursor.flowSlope() - own));
        place[0] = moved > 0.5 * u && moved < 0.5 * (1 + u) ? moved : u;
        squared[0] = ambientSquared * (1 - place[0] * place[0]);
        // flows are nearly in proportion to u
        double scale = share * place[0] / u;
        for (int n = 0; n < openCount; n++) {
            drawn[n + 1] = drawn[n] + scale * (cursor.flow(atReceiver[n]) - idle * u);
        }
        for (int a = 1; a < active; a++) {
            startNode(a, joins[a]);
        }
    }

    /**
     * Takes the pressure that fits the flow; so the first step finds the law met, and its slopes here, without asking for it. With q
     * the rise over the pressure joined, {@code rise = loss/(1 − c w²/P)} meets the law but for {@code c w² (q − ln(1 + q))}.
     */
    private void startNode(int a, int joined) {
        double w = folded.idlePerU[node[a]] * place[joined] + drawn[openTo[a]] - drawn[openFrom[a]];
        LegLaw leg = folded.law[node[a]];
        double kinetic = leg.c() * w * w;
        double below = squared[joined];
        double slope = Math.max(1 - kinetic / below, 0.1);
        double loss = leg.loss_Pa2(w);
        double rise = Math.min(loss / slope, 0.5 * (ambientSquared - below));
        double q = rise / below;
        double inner = below + rise;
        flow[a] = w;
        squared[a] = inner;
        place[a] = Math.sqrt(1 - inner * perAmbientSquared);
        residual[a] = rise - loss - kinetic * q * (1 - 0.5 * q);
        flowSlope[a] = leg.lossSlope(w) + 2 * leg.c() * w * q;
        innerSlope[a] = 1 - kinetic / inner;
        outerSlope[a] = slope;
    }

    /** Share of what the open inlets would draw alone, at the pressure now in the receiver, that they draw together. */
    double shareDrawn() {
        double u = place[0];
        cursor.moveTo(u);
        cursor.sum(atReceiver, 0, openCount);
        double idle = folded.idlePerU[0] * u;
        double alone = cursor.flow() - openCount * idle;
        return alone > 0 ? (drawn_kgPerS() - idle) / alone : 1;
    }

    private Answer iterate() {
        for (steps = 1; steps <= STEP_LIMIT; steps++) {
            if (steps > 1) {
                choked = false;
                evaluateLaws();
            }
            sweepToReceiver();
            double share = steps > WHOLE_STEPS && (steps & 1) == 0 ? 0.5 : 1;
            if (sweepBack(share)) {
                return Answer.SOLVED;
            }
        }
        return Answer.NOT_SETTLED;
    }

    private void evaluateLaws() {
        for (int a = 1; a < active; a++) {
            evaluateLaw(a, joins[a]);
        }
    }

    private void sweepToReceiver() {
        for (int a = 0; a < active; a++) {
            addPorts(a);
        }
        for (int a = active - 1; a > 0; a--) {
            eliminate(a, joins[a]);
        }
    }

    private void addPorts(int a) {
        double u = place[a];
        cursor.moveTo(u);
        cursor.sum(ports, portFrom[a], portFrom[a + 1]);
        inflow[a] = leakPerU[a] * u + cursor.flow();
        inflowSlope[a] = -(leakPerU[a] + cursor.flowSlope()) * 0.5 * perAmbientSquared / u;
    }

    private void evaluateLaw(int a, int joined) {
        LegLaw leg = folded.law[node[a]];
        double w = flow[a];
        double inner = squared[a];
        double c = leg.c();
        double size = Math.abs(w);
        double kinetic = c * size * size;
        double outer = squared[joined];
        if (kinetic >= outer) {
            choked = true;
            outer = kinetic;
        }
        double x = size * leg.unitPerFlow();
        double friction_w = leg.laminar();
        double frictionSlope = friction_w;
        if (x >= 1) {
            int piece = FrictionTable.piece(x);
            double into = FrictionTable.into(x);
            double factor = leg.friction().at(piece, into);
            friction_w = factor * size;
            frictionSlope = size * (2 * factor + x * leg.friction().slope(piece, into));
        }
        double kAndLogarithm = leg.k() + LegLaw.logarithm(inner, outer);
        residual[a] = inner - outer - c * w * (leg.lengthOverBore() * friction_w + size * kAndLogarithm);
        flowSlope[a] = c * (leg.lengthOverBore() * frictionSlope + 2 * size * kAndLogarithm);
        innerSlope[a] = 1 - kinetic / inner;
        outerSlope[a] = 1 - kinetic / outer;
    }

    /** Expresses the changes of a node and its leg by that of the node joined, and passes them on to it. */
    private void eliminate(int a, int joined) {
        double spare = inflow[a] - flow[a];
        double perStep = inflowSlope[a];
        double scale = 1 / (innerSlope[a] - flowSlope[a] * perStep);
        double own = (flowSlope[a] * spare - residual[a]) * scale;
        double perJoined = outerSlope[a] * scale;
        ownStep[a] = own;
        stepPerJoined[a] = perJoined;
        ownFlow[a] = spare;
        inflow[joined] += inflow[a] + perStep * own;
        inflowSlope[joined] += perStep * perJoined;
    }

    /** Takes the step; true when it was the last one needed. */
    private boolean sweepBack(double share) {
        machine.moveTo(place[0]);
        int interval = machine.interval();
        double machineSlope = -machine.slope() * 0.5 * perAmbientSquared / place[0];
        double step = (machine.flow() - inflow[0]) / (inflowSlope[0] - machineSlope);
        // the first step takes the laws as met, so it is never the last
        boolean last = move(0, step, share) && steps > 1;
        ownStep[0] = step;
        for (int a = 1; a < active; a++) {
            step = ownStep[a] + stepPerJoined[a] * ownStep[joins[a]];
            ownStep[a] = step;
            flow[a] = within(folded.law[node[a]], flow[a] + share * (ownFlow[a] + inflowSlope[a] * step));
            last &= move(a, step, share);
        }
        machine.moveTo(place[0]);
        // a kink of the station may lie between two intervals: there a small step proves nothing
        return last && machine.interval() == interval;
    }

    private static double within(LegLaw leg, double w) {
        double most = leg.most_kgPerS();
        return w < most ? w : 0.5 * most;
    }

    /** Moves a node's pressure, half way to its bound where the step leads beyond; true when the step was small and whole. */
    private boolean move(int a, double step, double share) {
        double to = squared[a] + share * step;
        boolean small = share == 1 && Math.abs(step) < LAST_STEP * ambientSquared;
        if (!(to < ambientSquared)) {
            to = 0.5 * (squared[a] + ambientSquared);
        } else if (to < deepest) {
            to = small ? to : 0.5 * (squared[a] + deepest);
        }
        squared[a] = to;
        place[a] = Math.max(Math.sqrt(1 - to * perAmbientSquared), LEAST_PLACE);
        return small;
    }

    /** Walks from the active nodes out to every open inlet, in all branches at once: a step waits for the one before in its branch only. */
    private void readPieces() {
        pieces = 0;
        for (int a = 1; a < active; a++) {
            add(tree.leg[node[a]], flow[a], squared[a]);
        }
        for (int n = 0; n < branches; n++) {
            branchPlace[n] = place[branchAt[n]];
            choked |= branchPlace[n] > folded.tables.unchokedUpTo(outermost(n));
        }
        boolean further = true;
        while (further) {
            further = false;
            for (int n = 0; n < branches; n++) {
                further |= walk(n);
            }
        }
        for (int n = 0; n < branches; n++) {
            int table = folded.hose[branchInlet[n]];
            cursor.moveTo(branchPlace[n]);
            double start = cursor.inner(table);
            add(folded.hoseLeg[branchInlet[n]], cursor.flow(table), ambientSquared * (1 - start * start));
        }
    }

    private int outermost(int branch) {
        int rank = branchInlet[branch];
        int[] path = tree.pathTo[rank];
        int depth = branchDepth[branch];
        return depth == path.length ? folded.hose[rank] : folded.oneOpen(path[depth], rank);
    }

    /** Goes one leg further out in a branch; false when it is at its inlet. */
    private boolean walk(int branch) {
        int rank = branchInlet[branch];
        int[] path = tree.pathTo[rank];
        int depth = branchDepth[branch];
        if (depth == path.length) {
            return false;
        }
        int table = folded.oneOpen(path[depth], rank);
        cursor.moveTo(branchPlace[branch]);
        double inner = cursor.inner(table);
        add(tree.leg[path[depth]], cursor.flow(table), ambientSquared * (1 - inner * inner));
        branchPlace[branch] = inner;
        branchDepth[branch] = depth + 1;
        return true;
    }

    private void add(int leg, double w, double startSquared) {
        pieceLeg[pieces] = leg;
        pieceFlow[pieces] = w;
        pieceSquared[pieces] = startSquared;
        pieces++;
    }

    /** Newton steps the last state took. */
    int steps() {
        return steps;
    }

    /** Number of pieces on open paths. */
    int pieces() {
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

    /** u in the receiver. */
    double receiverPlace() {
        return place[0];
    }

    /** Pressure in the receiver [Pa]. */
    double receiver_Pa() {
        return Math.sqrt(squared[0]);
    }

    /** Air the station draws from the tubing [kg/s]. */
    double drawn_kgPerS() {
        machine.moveTo(place[0]);
        return machine.flow();
    }
}
