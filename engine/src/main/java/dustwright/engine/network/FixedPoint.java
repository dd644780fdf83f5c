package dustwright.engine.network;

import java.util.Arrays;

/**
 * Finds a vector that a function leaves as it is, x = g(x), with few calls of the function: the next x is the combination of the last few
 * g(x) whose gaps g(x) − x, combined likewise, are least (Anderson's mixing). Owns its arrays; nothing is allocated after construction.
 */
final class FixedPoint {
    private static final int DEPTH = 6;
    /** A direction that adds less than this share of itself to the others is left out [-]. */
    private static final double DEPENDENT = 1e-8;
    /** Rounds of mixing and of short steps in turn: where the function has corners, mixing alone may go to and fro for ever. */
    private static final int TURN = 30;

    private static final double SHORT_STEP = 0.4;

    private final int size;
    private final double[][] gapChange;
    private final double[][] foundChange;
    private final double[][] basis;
    private final double[][] triangle;
    private final double[] along;
    private final double[] weight;
    private final double[] gap;
    private final double[] lastGap;
    private final double[] lastFound;
    private int rounds;

    FixedPoint(int size) {
        this.size = size;
        gapChange = new double[DEPTH][size];
        foundChange = new double[DEPTH][size];
        basis = new double[DEPTH][size];
        triangle = new double[DEPTH][DEPTH];
        along = new double[DEPTH];
        weight = new double[DEPTH];
        gap = new double[size];
        lastGap = new double[size];
        lastFound = new double[size];
    }

    void clear() {
        rounds = 0;
    }

    /**
     * The next x to try.
     *
     * @param x tried last; becomes the next, nowhere below 0
     * @param found g(x)
     */
    void next(double[] x, double[] found) {
        for (int n = 0; n < size; n++) {
            gap[n] = found[n] - x[n];
        }
        int turn = rounds / TURN;
        int since = rounds % TURN;
        boolean mixes = turn % 2 == 0;
        int kept = mixes ? Math.min(since, DEPTH) : 0;
        if (kept > 0) {
            int place = (since - 1) % DEPTH;
            for (int n = 0; n < size; n++) {
                gapChange[place][n] = gap[n] - lastGap[n];
                foundChange[place][n] = found[n] - lastFound[n];
            }
        }
        System.arraycopy(gap, 0, lastGap, 0, size);
        System.arraycopy(found, 0, lastFound, 0, size);
        weigh(kept);
        double step = mixes ? 1 : SHORT_STEP / (turn + 1);
        for (int n = 0; n < size; n++) {
            double mixed = x[n] + step * gap[n];
            for (int j = 0; j < kept; j++) {
                mixed -= weight[j] * foundChange[j][n];
            }
            x[n] = Math.max(0, Math.min(mixed, 2 * Math.max(x[n], found[n])));
        }
        rounds++;
    }

    /** Least squares of the gap by its changes, by orthogonal directions. */
    private void weigh(int kept) {
        Arrays.fill(weight, 0);
        for (int j = 0; j < kept; j++) {
            System.arraycopy(gapChange[j], 0, basis[j], 0, size);
            double whole = Math.sqrt(product(basis[j], basis[j]));
            for (int i = 0; i < j; i++) {
                triangle[i][j] = product(basis[i], basis[j]);
                for (int n = 0; n < size; n++) {
                    basis[j][n] -= triangle[i][j] * basis[i][n];
                }
            }
            double left = Math.sqrt(product(basis[j], basis[j]));
            boolean used = left > DEPENDENT * whole;
            triangle[j][j] = used ? left : 0;
            for (int n = 0; n < size; n++) {
                basis[j][n] = used ? basis[j][n] / left : 0;
            }
            along[j] = product(basis[j], gap);
        }
        for (int j = kept - 1; j >= 0; j--) {
            if (triangle[j][j] > 0) {
                double rest = along[j];
                for (int i = j + 1; i < kept; i++) {
                    rest -= triangle[j][i] * weight[i];
                }
                weight[j] = rest / triangle[j][j];
            }
        }
    }

    private static double product(double[] a, double[] b) {
        double sum = 0;
        for (int n = 0; n < a.length; n++) {
            sum += a[n] * b[n];
        }
        return sum;
    }
}
