package dustwright.engine.network;

/**
 * Solves one state after another of a {@link FoldedNetwork}, cold each time: Newton's method on the {@link OpenPaths active nodes}, one
 * sweep from the leaves to the root and one back per step. The unknown at the root is s, u in the receiver, which fixes what lies outside
 * it. It keeps its arrays and allocates nothing; each thread has its own.
 */
final class FoldedSolver {
    /** How a state came out. */
    enum Answer {
        SOLVED,
        /** Something is choked, or there is next to no vacuum: the tables end there. */
        BEYOND_TABLES,
        /** Newton did not settle. */
        NOT_SETTLED
    }

    private static final int STEP_LIMIT = 60;
    /** After this many steps every other one is halved, so that a kink cannot throw the iteration to and fro for ever. */
    private static final int WHOLE_STEPS = 8;
    /** Newton is quadratic: after a step below this share of Pa² less than 4e-11 is left. */
    private static final double LAST_STEP = 4e-6;
    /** The same for flows that go with the root of the vacuum: a step d leaves d²/(8 u²) of Pa². */
    private static final double LAST_STEP_PER_U = 1e-5;
    /** Least u: keeps slopes finite where there is no vacuum. */
    private static final double LEAST_PLACE = 1e-7;

    final OpenPaths paths;
    private final FoldedNetwork folded;
    private final FoldedStarts starts;
    private final PortTables.Sum single;
    private final PortTables.Sum pair;
    private final OutsideTables.Cursor outside;
    private final double ambientSquared;
    private final double perAmbientSquared;
    private final double deepest;

    // at the active nodes: P, u, flow toward the root
    final double[] squared;
    final double[] place;
    final double[] flow;
    /** u in the receiver. */
    private double receiver;
    /** Range of it in which the tables of what lies outside the root hold. */
    private double soundFrom;

    private double soundTo;

    /** What the first so many open inlets draw, to start from. */
    private final double[] drawn;

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

    FoldedSolver(FoldedNetwork folded) {
        this.folded = folded;
        starts = folded.starts;
        paths = new OpenPaths(folded);
        single = folded.branches.singles.new Sum();
        pair = folded.branches.pairs.new Sum();
        outside = folded.surroundings.tables.new Cursor();
        ambientSquared = folded.network.ambientSquared;
        perAmbientSquared = 1 / ambientSquared;
        double greatest = folded.surroundings.tables.machine().greatest();
        deepest = ambientSquared * (1 - greatest * greatest);
        int size = folded.tree.size;
        squared = new double[size];
        place = new double[size];
        flow = new double[size];
        drawn = new double[folded.rankOfInlet.length + 1];
        inflow = new double[size];
        inflowSlope = new double[size];
        ownStep = new double[size];
        stepPerJoined = new double[size];
        ownFlow = new double[size];
        residual = new double[size];
        innerSlope = new double[size];
        outerSlope = new double[size];
        flowSlope = new double[size];
    }

    /**
     * Solves the state in which these inlets are open.
     *
     * @param inlets numbers of inlets in the order of the plant, each at most once
     * @param count how many of them are meant, from the front
     */
    Answer solve(int[] inlets, int count) {
        paths.collect(inlets, count);
        soundFrom = folded.surroundings.tables.soundFrom(paths.surroundings);
        soundTo = folded.surroundings.tables.soundTo(paths.surroundings);
        if (soundFrom > soundTo) {
            return Answer.BEYOND_TABLES;
        }
        choked = false;
        start();
        for (steps = 1; steps <= STEP_LIMIT; steps++) {
            if (steps > 1) {
                evaluateLaws();
            }
            sweepToRoot();
            double share = steps > WHOLE_STEPS && (steps & 1) == 0 ? 0.5 : 1;
            if (sweepBack(share)) {
                return beyondTables() ? Answer.BEYOND_TABLES : Answer.SOLVED;
            }
        }
        return Answer.NOT_SETTLED;
    }

    private void start() {
        double s = starts.place(paths.open, paths.openCount);
        goTo(s > soundFrom && s < soundTo ? s : 0.5 * (soundFrom + soundTo));
        if (paths.active > 1) {
            for (int n = 0; n < paths.openCount; n++) {
                drawn[n + 1] = drawn[n] + starts.drawn_kgPerS(paths.openCount, paths.open[n], receiver);
            }
            for (int a = 1; a < paths.active; a++) {
                startNode(a, paths.joins[a]);
            }
        }
    }

    /** Moves s, half way to its bound where that leads beyond. */
    private void moveRoot(double to) {
        if (!(to <= soundTo)) {
            goTo(0.5 * (receiver + soundTo));
        } else {
            goTo(to < soundFrom ? 0.5 * (receiver + soundFrom) : to);
        }
    }

    private void goTo(double s) {
        receiver = s;
        outside.moveTo(s);
        outside.read(paths.surroundings);
        squared[0] = outside.squared();
        place[0] = place(squared[0]);
    }

    private double place(double squared) {
        return Math.sqrt(Math.max(1 - squared * perAmbientSquared, LEAST_PLACE * LEAST_PLACE));
    }

    /**
     * Takes the pressure that fits the flow; so the first step finds the law met, and its slopes here, without asking for it. With q
     * the rise over the pressure joined, {@code rise = loss/(1 − c w²/P)} meets the law but for {@code c w² (q − ln(1 + q))}.
     */
    private void startNode(int a, int joined) {
        int node = paths.node[a];
        LegLaw leg = folded.law[node];
        double open = drawn[paths.openTo[a]] - drawn[paths.openFrom[a]];
        double w = within(leg, starts.idlePerU[node] * place[joined] + open);
        double kinetic = leg.c() * w * w;
        double below = squared[joined];
        double slope = Math.max(1 - kinetic / below, 0.1);
        double loss = leg.loss_Pa2(w);
        double rise = Math.min(loss / slope, 0.5 * (ambientSquared - below));
        double q = rise / below;
        double inner = below + rise;
        flow[a] = w;
        squared[a] = inner;
        place[a] = place(inner);
        residual[a] = rise - loss - kinetic * q * (1 - 0.5 * q);
        flowSlope[a] = leg.lossSlope(w) + 2 * leg.c() * w * q;
        innerSlope[a] = 1 - kinetic / inner;
        outerSlope[a] = slope;
    }

    private void evaluateLaws() {
        choked = false;
        for (int a = 1; a < paths.active; a++) {
            evaluateLaw(a, paths.joins[a]);
        }
    }

    private void sweepToRoot() {
        for (int a = 0; a < paths.active; a++) {
            addPorts(a);
        }
        for (int a = paths.active - 1; a > 0; a--) {
            eliminate(a, paths.joins[a]);
        }
    }

    private void addPorts(int a) {
        double u = place[a];
        single.of(paths.ports, paths.portFrom[a], paths.portFrom[a + 1], u);
        double sum = paths.leakPerU[a] * u + single.flow();
        double slope = paths.leakPerU[a] + single.slope();
        int pairs = paths.pairFrom[a + 1];
        if (paths.pairFrom[a] < pairs) {
            pair.of(paths.pairs, paths.pairFrom[a], pairs, u);
            sum += pair.flow();
            slope += pair.slope();
        }
        inflow[a] = sum;
        inflowSlope[a] = -slope * 0.5 * perAmbientSquared / u;
    }

    private void evaluateLaw(int a, int joined) {
        LegLaw leg = folded.law[paths.node[a]];
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
        double logarithm = LegLaw.logarithm(inner, outer);
        residual[a] =
                inner - outer - c * w * (leg.lengthOverBore() * friction_w + size * leg.k()) - kinetic * logarithm;
        flowSlope[a] = c * (leg.lengthOverBore() * frictionSlope + 2 * (size * leg.k() + w * logarithm));
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
        int interval = outside.interval();
        double perPlace = outside.squaredSlope();
        double step = (outside.flow() - inflow[0]) / (inflowSlope[0] * perPlace - outside.flowSlope());
        ownStep[0] = step * perPlace;
        moveRoot(receiver + share * step);
        boolean last = share == 1 && small(0);
        for (int a = 1; a < paths.active; a++) {
            double own = ownStep[a] + stepPerJoined[a] * ownStep[paths.joins[a]];
            ownStep[a] = own;
            flow[a] = within(folded.law[paths.node[a]], flow[a] + share * (ownFlow[a] + inflowSlope[a] * own));
            move(a, squared[a] + share * own);
            last &= small(a);
        }
        // the first step takes the laws of legs as met, so with them it is never the last;
        // a kink of the station may lie between two intervals: there a small step proves nothing
        return last && (steps > 1 || paths.active == 1) && outside.interval() == interval;
    }

    private boolean small(int a) {
        return Math.abs(ownStep[a]) < Math.min(LAST_STEP, LAST_STEP_PER_U * place[a]) * ambientSquared;
    }

    private static double within(LegLaw leg, double w) {
        double most = leg.most_kgPerS();
        return Math.abs(w) < most ? w : Math.copySign(0.5 * most, w);
    }

    /** Moves a node's pressure, half way to its bound where that leads beyond. */
    private void move(int a, double to) {
        double moved = to;
        if (!(to < ambientSquared)) {
            moved = 0.5 * (squared[a] + ambientSquared);
        } else if (to < deepest) {
            moved = 0.5 * (squared[a] + deepest);
        }
        squared[a] = moved;
        place[a] = place(moved);
    }

    private boolean beyondTables() {
        boolean beyond = choked;
        for (int b = 0; b < paths.branches; b++) {
            PortTables branches = paths.branchPair[b] ? folded.branches.pairs : folded.branches.singles;
            double u = place[paths.branchAt[b]];
            int table = paths.branchTable[b];
            beyond |= u < branches.soundFrom(table) || u > branches.soundTo(table);
        }
        return beyond;
    }

    /** Newton steps the last state took. */
    int steps() {
        return steps;
    }

    /** Rank of the n-th open inlet. */
    int openRank(int n) {
        return paths.open[n];
    }

    /** u in the receiver. */
    double receiverPlace() {
        return receiver;
    }

    /** Pressure in the receiver [Pa]. */
    double receiver_Pa() {
        return Math.sqrt(ambientSquared * (1 - receiver * receiver));
    }

    /** Air the station draws from the tubing [kg/s]. */
    double drawn_kgPerS() {
        outside.read(folded.surroundings.closed(0));
        return outside.flow();
    }
}
