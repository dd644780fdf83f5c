package dustwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableSet;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeSet;

/**
 * Gaussian elimination for matrices with the pattern of a network. The order is found once per network: always the node with the
 * fewest neighbours left, so a forest is eliminated leaf to root without fill, in linear time, and loops cost their own fill. Every
 * column of a network's matrix is diagonally dominant, therefore no pivoting is needed. Nothing is allocated after construction.
 */
final class Elimination {
    private final int size;
    /** Rows in the order of elimination. */
    private final int[] order;
    /** Pairs (pivot, later neighbour): those of pivot n lie from start[n] to start[n + 1]. */
    private final int[] start;

    private final int[] neighbour;
    /** For every two neighbours of one pivot, the pair they form themselves. */
    private final int[] target;

    private final int[] targetStart;
    /** Pair of every edge given to the constructor, and whether its first end is the later one; -1 where it joins a row to itself. */
    private final int[] edgePair;

    private final boolean[] edgeTurned;

    private final double[] diagonal;
    private final double[] upper;
    private final double[] lower;
    private final double[] right;

    /** Order for {@code size} rows coupled by edges (first[e], second[e]); an edge with a negative end couples nothing. */
    Elimination(int size, int[] first, int[] second) {
        this.size = size;
        List<NavigableSet<Integer>> left = neighbours(size, first, second);
        order = new int[size];
        int[] rank = new int[size];
        int[][] later = new int[size][];
        eliminateSymbolically(left, rank, later);

        start = new int[size + 1];
        targetStart = new int[size + 1];
        for (int n = 0; n < size; n++) {
            int count = later[order[n]].length;
            start[n + 1] = start[n] + count;
            targetStart[n + 1] = targetStart[n] + count * (count - 1) / 2;
        }
        neighbour = new int[start[size]];
        for (int n = 0; n < size; n++) {
            System.arraycopy(later[order[n]], 0, neighbour, start[n], later[order[n]].length);
        }
        target = new int[targetStart[size]];
        findTargets(rank);
        edgePair = new int[first.length];
        edgeTurned = new boolean[first.length];
        findEdges(first, second, rank);
        diagonal = new double[size];
        upper = new double[neighbour.length];
        lower = new double[neighbour.length];
        right = new double[size];
    }

    /** Number of couplings kept, fill included; a forest has exactly one per edge. */
    int couplings() {
        return neighbour.length;
    }

    void clear() {
        Arrays.fill(diagonal, 0);
        Arrays.fill(upper, 0);
        Arrays.fill(lower, 0);
        Arrays.fill(right, 0);
    }

    void addDiagonal(int row, double value) {
        diagonal[row] += value;
    }

    void addRight(int row, double value) {
        right[row] += value;
    }

    /** Adds to the entries an edge owns: row of its first end and column of its second, and the reverse. */
    void addEdge(int edge, double firstRow, double secondRow) {
        int pair = edgePair[edge];
        if (pair < 0) {
            return;
        }
        upper[pair] += edgeTurned[edge] ? secondRow : firstRow;
        lower[pair] += edgeTurned[edge] ? firstRow : secondRow;
    }

    /**
     * Solves in place.
     *
     * @return the first row without a usable pivot, or -1 when x holds the solution
     */
    int solve(double[] x) {
        for (int n = 0; n < size; n++) {
            int row = order[n];
            double pivot = diagonal[row];
            if (!(Math.abs(pivot) > 0 && Math.abs(pivot) <= Double.MAX_VALUE)) {
                return row;
            }
            int at = targetStart[n];
            for (int a = start[n]; a < start[n + 1]; a++) {
                int i = neighbour[a];
                double factor = lower[a] / pivot;
                diagonal[i] -= factor * upper[a];
                right[i] -= factor * right[row];
                for (int b = a + 1; b < start[n + 1]; b++) {
                    int pair = target[at++];
                    upper[pair] -= factor * upper[b];
                    lower[pair] -= lower[b] / pivot * upper[a];
                }
            }
        }
        for (int n = size - 1; n >= 0; n--) {
            int row = order[n];
            double rest = right[row];
            for (int a = start[n]; a < start[n + 1]; a++) {
                rest -= upper[a] * x[neighbour[a]];
            }
            x[row] = rest / diagonal[row];
        }
        return -1;
    }

    private static List<NavigableSet<Integer>> neighbours(int size, int[] first, int[] second) {
        List<NavigableSet<Integer>> all = new ArrayList<>();
        for (int n = 0; n < size; n++) {
            all.add(new TreeSet<>());
        }
        for (int e = 0; e < first.length; e++) {
            if (first[e] >= 0 && second[e] >= 0 && first[e] != second[e]) {
                all.get(first[e]).add(second[e]);
                all.get(second[e]).add(first[e]);
            }
        }
        return all;
    }

    private void eliminateSymbolically(List<NavigableSet<Integer>> left, int[] rank, int[][] later) {
        // Fewest neighbours first, then by row. An entry whose row has other neighbours by now is passed over: a newer
        // one follows.
        PriorityQueue<Long> waiting = new PriorityQueue<>();
        boolean[] eliminated = new boolean[size];
        for (int n = 0; n < size; n++) {
            waiting.add(entry(n, left));
        }
        for (int n = 0; n < size; ) {
            long entry = waiting.remove();
            int row = (int) entry;
            if (eliminated[row] || entry != entry(row, left)) {
                continue;
            }
            Set<Integer> around = left.get(row);
            for (int i : around) {
                left.get(i).remove(row);
                left.get(i).addAll(around);
                left.get(i).remove(i);
                waiting.add(entry(i, left));
            }
            later[row] = around.stream().mapToInt(i -> i).toArray();
            eliminated[row] = true;
            order[n] = row;
            rank[row] = n++;
        }
        for (int[] around : later) {
            sortByRank(around, rank);
        }
    }

    private static long entry(int row, List<NavigableSet<Integer>> left) {
        return ((long) left.get(row).size() << Integer.SIZE) | row;
    }

    private static void sortByRank(int[] rows, int[] rank) {
        for (int n = 1; n < rows.length; n++) {
            int row = rows[n];
            int at = n;
            while (at > 0 && rank[rows[at - 1]] > rank[row]) {
                rows[at] = rows[at - 1];
                at--;
            }
            rows[at] = row;
        }
    }

    private void findTargets(int[] rank) {
        for (int n = 0; n < size; n++) {
            int at = targetStart[n];
            for (int a = start[n]; a < start[n + 1]; a++) {
                for (int b = a + 1; b < start[n + 1]; b++) {
                    target[at++] = pair(rank[neighbour[a]], neighbour[b]);
                }
            }
        }
    }

    private void findEdges(int[] first, int[] second, int[] rank) {
        for (int e = 0; e < first.length; e++) {
            if (first[e] < 0 || second[e] < 0 || first[e] == second[e]) {
                edgePair[e] = -1;
                continue;
            }
            edgeTurned[e] = rank[first[e]] > rank[second[e]];
            int earlier = edgeTurned[e] ? second[e] : first[e];
            int later = edgeTurned[e] ? first[e] : second[e];
            edgePair[e] = pair(rank[earlier], later);
        }
    }

    private int pair(int pivot, int laterRow) {
        for (int at = start[pivot]; at < start[pivot + 1]; at++) {
            if (neighbour[at] == laterRow) {
                return at;
            }
        }
        throw new IllegalStateException("fill was not foreseen");
    }
}
