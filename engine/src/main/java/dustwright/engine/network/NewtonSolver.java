package dustwright.engine.network;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Newton's method on pressures squared and flows together (equation NET-6), junction losses and dust held fixed. A step is halved while it does
 * not bring laws and balances nearer. Owns all its arrays: a step allocates nothing.
 */
final class NewtonSolver {
    /** A law counts as met when it is off by no more than this, in pressure squared over ambient squared [-]. */
    static final double LEG_TOLERANCE = 1e-12;
    /** A node counts as balanced when it is off by no more than this share of the greatest flow [-]. */
    static final double BALANCE_TOLERANCE = 1e-12;

    /**
     * Where no step brings the balance nearer, rounding of a pressure ahead of something very steep, such as a relief valve with
     * hardly any accumulation, is all that is left; a balance to this share of the greatest flow is then the answer [-].
     */
    private static final double BALANCE_BY_ROUNDING = 1e-10;

    private static final int STEP_LIMIT = 200;
    private static final int HALVING_LIMIT = 25;
    private static final double ENOUGH_DECREASE = 1e-3;
    /** A step takes no pressure lower than this share of its square: below zero there is none. */
    private static final double STILL_SOME_AIR = 0.05;

    private static final double START_VELOCITY_mPerS = 15;

    private final Network net;
    private final NetworkState state;
    private final NetworkEquations equations;
    private final double[] squaredBefore;
    private final double[] flowBefore;
    private double misfit;
    private int steps;

    NewtonSolver(Network net, NetworkState state, List<StationEnd> ends, DustLoad dust) {
        this.net = net;
        this.state = state;
        equations = new NetworkEquations(net, state, ends, dust);
        squaredBefore = new double[net.nodeCount];
        flowBefore = new double[net.legCount];
    }

    /** The equations at the pressures and flows last evaluated. */
    NetworkEquations equations() {
        return equations;
    }

    /** Steps taken since the last start. */
    int steps() {
        return steps;
    }

    /** Puts pressures and flows to where every state may start from. */
    void start(boolean anyProducerRuns) {
        steps = 0;
        restart(anyProducerRuns);
    }

    /** The same, still counting steps. */
    void restart(boolean anyProducerRuns) {
        double squared = net.ambientSquared * (anyProducerRuns ? 0.8 : 1);
        for (int n = 0; n < net.nodeCount; n++) {
            state.squared[n] = net.held[n] ? net.heldSquared[n] : squared;
        }
        double massFlux = net.air.density_kgPerM3(net.ambient_Pa) * START_VELOCITY_mPerS;
        for (int leg = 0; leg < net.legCount; leg++) {
            double area_m2 = net.c[leg] > 0 ? Math.sqrt(net.rt_JPerKg / net.c[leg]) : 0;
            state.flow[leg] = state.active[leg] ? massFlux * area_m2 : 0;
        }
    }

    /**
     * Solves from the present pressures and flows.
     *
     * @return null when solved, else why not
     */
    @Nullable
    String solve() {
        misfit = equations.evaluate();
        for (int n = 0; n < STEP_LIMIT; n++) {
            boolean solved = converged(BALANCE_TOLERANCE);
            int singular = equations.step();
            if (singular != Network.NONE) {
                return "the pressure at " + net.nodeId[singular] + " does not follow from the flows into it; "
                        + equations.worst();
            }
            steps++;
            boolean nearer = search(solved ? 1 : HALVING_LIMIT);
            if (solved) {
                // One step past the tolerance takes Newton to the last digits; it is kept only if it brings them.
                if (!nearer) {
                    restore();
                }
                return null;
            }
            if (!nearer) {
                restore();
                if (converged(BALANCE_BY_ROUNDING)) {
                    return null;
                }
                return unsolved(
                        "Newton steps no longer bring the laws nearer, even halved " + HALVING_LIMIT + " times");
            }
        }
        return unsolved("not solved in " + STEP_LIMIT + " Newton steps");
    }

    /** The reason a person can act on where there is one, then how far the solver came. */
    private String unsolved(String how) {
        return equations.impossibleDraw() + how + "; " + equations.worst();
    }

    private void restore() {
        System.arraycopy(squaredBefore, 0, state.squared, 0, net.nodeCount);
        System.arraycopy(flowBefore, 0, state.flow, 0, net.legCount);
        misfit = equations.evaluate();
    }

    /** Takes the step, shortened until it brings laws and balances nearer; false when none does. */
    private boolean search(int trials) {
        System.arraycopy(state.squared, 0, squaredBefore, 0, net.nodeCount);
        System.arraycopy(state.flow, 0, flowBefore, 0, net.legCount);
        double before = misfit;
        double share = 1;
        for (int n = 0; n < trials; n++) {
            for (int node = 0; node < net.nodeCount; node++) {
                double wanted = squaredBefore[node] + share * equations.squaredStep[node];
                state.squared[node] = Math.max(wanted, STILL_SOME_AIR * squaredBefore[node]);
            }
            for (int leg = 0; leg < net.legCount; leg++) {
                state.flow[leg] = state.active[leg] ? flowBefore[leg] + share * equations.flowStep[leg] : 0;
            }
            misfit = equations.evaluate();
            if (misfit <= (1 - ENOUGH_DECREASE * share) * before) {
                return true;
            }
            share /= 2;
        }
        return false;
    }

    private boolean converged(double balanceShare) {
        return equations.worstLegError() <= LEG_TOLERANCE
                && equations.worstPin() <= LEG_TOLERANCE
                && equations.worstBalance_kgPerS() <= balanceShare * equations.greatestFlow_kgPerS();
    }
}
