package dustwright.engine.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.CommonOps_DSCC;
import org.junit.jupiter.api.Test;

class EliminationTest {
    @Test
    void a_tree_is_eliminated_without_fill() {
        SplittableRandom random = new SplittableRandom(1);
        int size = 500;
        int[] first = new int[size - 1];
        int[] second = new int[size - 1];
        for (int n = 1; n < size; n++) {
            first[n - 1] = n;
            second[n - 1] = random.nextInt(n);
        }
        assertThat(new Elimination(size, first, second).couplings()).isEqualTo(size - 1);
    }

    @Test
    void random_looped_networks_come_out_as_with_a_library_factorisation() {
        for (int seed = 0; seed < 40; seed++) {
            compareWithLibrary(new SplittableRandom(seed), 5 + 5 * seed);
        }
    }

    /** Columns diagonally dominant and unsymmetric, as a network's are; the library pivots and we do not. */
    private static void compareWithLibrary(SplittableRandom random, int size) {
        int edges = size + size / 4;
        int[] first = new int[edges];
        int[] second = new int[edges];
        double[] toFirst = new double[edges];
        double[] toSecond = new double[edges];
        DMatrixSparseCSC matrix = new DMatrixSparseCSC(size, size);
        double[] diagonal = new double[size];
        for (int n = 0; n < size; n++) {
            diagonal[n] = 0.01;
        }
        for (int e = 0; e < edges; e++) {
            first[e] = e < size - 1 ? e + 1 : random.nextInt(size);
            second[e] = e < size - 1 ? random.nextInt(e + 1) : random.nextInt(size);
            if (first[e] == second[e]) {
                continue;
            }
            toFirst[e] = Math.exp(random.nextDouble(-8, 8));
            toSecond[e] = Math.exp(random.nextDouble(-8, 8));
            diagonal[second[e]] += toFirst[e];
            diagonal[first[e]] += toSecond[e];
            matrix.set(first[e], second[e], matrix.get(first[e], second[e]) - toFirst[e]);
            matrix.set(second[e], first[e], matrix.get(second[e], first[e]) - toSecond[e]);
        }
        Elimination own = new Elimination(size, first, second);
        own.clear();
        DMatrixRMaj right = new DMatrixRMaj(size, 1);
        for (int n = 0; n < size; n++) {
            double value = random.nextDouble(-1, 1);
            right.set(n, 0, value);
            matrix.set(n, n, diagonal[n]);
            own.addDiagonal(n, diagonal[n]);
            own.addRight(n, value);
        }
        for (int e = 0; e < edges; e++) {
            own.addEdge(e, -toFirst[e], -toSecond[e]);
        }
        double[] x = new double[size];
        assertThat(own.solve(x)).isEqualTo(-1);
        DMatrixRMaj expected = new DMatrixRMaj(size, 1);
        assertThat(CommonOps_DSCC.solve(matrix, right, expected)).isTrue();
        double scale = 0;
        for (int n = 0; n < size; n++) {
            scale = Math.max(scale, Math.abs(expected.get(n)));
        }
        for (int n = 0; n < size; n++) {
            assertThat(x[n]).isCloseTo(expected.get(n), within(1e-9 * scale));
        }
    }

    @Test
    void a_row_without_pivot_is_named() {
        Elimination own = new Elimination(3, new int[] {0}, new int[] {1});
        own.clear();
        own.addDiagonal(0, 1);
        own.addDiagonal(1, 1);
        assertThat(own.solve(new double[3])).isEqualTo(2);
    }
}
