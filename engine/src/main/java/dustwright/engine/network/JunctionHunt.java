package dustwright.engine.network;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Ends what {@link JunctionRounds} cannot: losses of a few neighbouring junctions that hunt each other around a stream that is about to
 * turn. Newton's method on the losses of just those legs, the matrix by small changes of one loss after the other and a solution of the
 * network each; a step is halved until all the gaps between used and wanted losses become less. Rare, so it may cost.
 */
final class JunctionHunt {
    private static final int STEP_LIMIT = 40;
    private static final int HALVING_LIMIT = 14;
    private static final double ENOUGH_DECREASE = 1e-3;
    /** More legs than this hunting each other is no hunt but a network in disorder. */
    private static final int MOST_LEGS = 40;
    /** Change of a loss for the matrix, over ambient squared [-]. */
    private static final double SMALL_CHANGE = 1e-8;

    private final Network net;
    private final NetworkState state;
    private final NewtonSolver newton;
    private final JunctionRounds rounds;

    JunctionHunt(Network net, NetworkState state, NewtonSolver newton, JunctionRounds rounds) {
        this.net = net;
        this.state = state;
        this.newton = newton;
        this.rounds = rounds;
    }

    /** Brings the losses in {@code state} as near to agreement as it can; the network need not be solved afterwards. */
    void end() {
        double[] gap = gaps();
        int[] legs = IntStream.range(0, net.legCount)
                .filter(leg -> gap != null && Math.abs(gap[leg]) > JunctionRounds.TOLERANCE * net.ambientSquared)
                .toArray();
        if (gap == null || legs.length > MOST_LEGS) {
            return;
        }
        double[] now = of(gap, legs);
        for (int step = 0; step < STEP_LIMIT && norm(now) > JunctionRounds.TOLERANCE * net.ambientSquared; step++) {
            double[] nearer = step(legs, now);
            if (nearer == null) {
                return;
            }
            now = nearer;
        }
    }

    /** Takes one step; the gaps after it, or null when none brings them nearer. */
    private double @Nullable [] step(int[] legs, double[] now) {
        double[] from = of(state.junction, legs);
        double[] change = DenseSolve.of(
                matrix(legs, from, now), Arrays.stream(now).map(g -> -g).toArray());
        for (int halving = 0; change != null && halving < HALVING_LIMIT; halving++) {
            for (int n = 0; n < legs.length; n++) {
                state.junction[legs[n]] = from[n] + Math.scalb(change[n], -halving);
            }
            double[] gap = gaps();
            if (gap != null && norm(of(gap, legs)) < (1 - Math.scalb(ENOUGH_DECREASE, -halving)) * norm(now)) {
                return of(gap, legs);
            }
        }
        put(legs, from);
        return null;
    }

    /** How every gap answers to every loss. */
    private double[][] matrix(int[] legs, double[] from, double[] now) {
        double[][] matrix = new double[legs.length][legs.length];
        double small = SMALL_CHANGE * net.ambientSquared;
        for (int column = 0; column < legs.length; column++) {
            // towards what is wanted, where the next step goes
            double by = Math.copySign(small, now[column]);
            state.junction[legs[column]] = from[column] + by;
            double[] gap = gaps();
            for (int row = 0; row < legs.length; row++) {
                matrix[row][column] = gap == null ? (row == column ? -1 : 0) : (gap[legs[row]] - now[row]) / by;
            }
            state.junction[legs[column]] = from[column];
        }
        return matrix;
    }

    private double @Nullable [] gaps() {
        return newton.solve() == null ? rounds.gaps(state) : null;
    }

    private void put(int[] legs, double[] losses) {
        for (int n = 0; n < legs.length; n++) {
            state.junction[legs[n]] = losses[n];
        }
    }

    private static double[] of(double[] all, int[] legs) {
        return Arrays.stream(legs).mapToDouble(leg -> all[leg]).toArray();
    }

    private static double norm(double[] values) {
        return Math.sqrt(Arrays.stream(values).map(v -> v * v).sum());
    }
}
