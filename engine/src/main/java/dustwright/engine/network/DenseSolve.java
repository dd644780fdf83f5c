package dustwright.engine.network;

import org.jspecify.annotations.Nullable;

/** A few linear equations, solved by elimination with row exchange. */
final class DenseSolve {
    private DenseSolve() {}

    /** x of A x = b, both overwritten; null where A has no inverse. */
    static double @Nullable [] of(double[][] a, double[] b) {
        int size = b.length;
        for (int k = 0; k < size; k++) {
            int pivot = k;
            for (int row = k + 1; row < size; row++) {
                pivot = Math.abs(a[row][k]) > Math.abs(a[pivot][k]) ? row : pivot;
            }
            if (a[pivot][k] == 0 || Double.isNaN(a[pivot][k])) {
                return null;
            }
            double[] line = a[pivot];
            a[pivot] = a[k];
            a[k] = line;
            double right = b[pivot];
            b[pivot] = b[k];
            b[k] = right;
            for (int row = k + 1; row < size; row++) {
                double times = a[row][k] / a[k][k];
                for (int column = k; column < size; column++) {
                    a[row][column] -= times * a[k][column];
                }
                b[row] -= times * b[k];
            }
        }
        for (int k = size - 1; k >= 0; k--) {
            for (int column = k + 1; column < size; column++) {
                b[k] -= a[k][column] * b[column];
            }
            b[k] /= a[k][k];
        }
        return b;
    }
}
