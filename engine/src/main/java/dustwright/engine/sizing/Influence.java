package dustwright.engine.sizing;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * How far each choice moves the margin of a counterexample, all others at the end that favours it. It steers what is looked at, and proves
 * nothing: a choice that hardly moves the margin is left at its favourable end, where it bounds every box (equation SIZ-8).
 */
final class Influence {
    /** Choices that together move the margin by less than this hardly matter [-]. */
    private static final double HARDLY = 0.01;
    /** Elsewhere than where it was measured a choice may move the margin more. */
    private static final double SPARE = 2;

    private final long[] all;
    private final double[] moves;
    private final boolean[] idle;
    private final double looseness;

    private Influence(long[] all, double[] moves) {
        this.all = all;
        this.moves = moves;
        idle = new boolean[moves.length];
        double sum = 0;
        for (int v : IntStream.range(0, moves.length)
                .boxed()
                .sorted(Comparator.comparingDouble(n -> moves[n]))
                .toList()) {
            idle[v] = sum + moves[v] <= HARDLY;
            sum += idle[v] ? moves[v] : 0;
        }
        looseness = SPARE * sum;
    }

    /** Measures it. The choice of the place itself and of its producers count as moving it beyond all measure. */
    static Influence of(Bounds bounds, Counterexample example, Space space) {
        long[] all = space.all();
        long[] best = bounds.mostFavourable(example, all);
        double most = bounds.margin(example, best);
        double[] moves = new double[all.length];
        Arrays.fill(moves, Double.POSITIVE_INFINITY);
        for (int v = 0; v < moves.length; v++) {
            if (best[v] == all[v] && Double.isFinite(most)) {
                double least = Math.min(
                        bounds.margin(example, with(best, v, Long.lowestOneBit(all[v]))),
                        bounds.margin(example, with(best, v, Long.highestOneBit(all[v]))));
                moves[v] = Math.max(0, most - least);
            }
        }
        return new Influence(all, moves);
    }

    private static long[] with(long[] box, int v, long options) {
        long[] other = box.clone();
        other[v] = options;
        return other;
    }

    /** The box with every option of the choices that hardly matter. */
    long[] loosened(long[] box) {
        long[] loose = box.clone();
        for (int v = 0; v < loose.length; v++) {
            if (idle[v]) {
                loose[v] = all[v];
            }
        }
        return loose;
    }

    /** How much less a margin may be than that of the loosened box. */
    double looseness() {
        return looseness;
    }

    /** Whether one choice alone can hardly take up so much margin. */
    boolean spares(int v, double margin) {
        return margin > SPARE * moves[v];
    }
}
