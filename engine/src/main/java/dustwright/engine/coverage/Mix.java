package dustwright.engine.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BinaryOperator;

/**
 * Which counts two parts of the plant may have together: for every count of the whole, all pairs of counts of the parts.
 */
final class Mix {
    private final List<int[]> counts;
    private final int[][] left;
    private final int[][] right;

    private Mix(List<int[]> counts, int[][] left, int[][] right) {
        this.counts = counts;
        this.left = left;
        this.right = right;
    }

    static final Comparator<int[]> ORDER = Arrays::compare;

    /**
     * All pairs allowed.
     *
     * @param whole what is counted of both together, or an empty array where they may not be
     */
    static Mix of(List<int[]> left, List<int[]> right, BinaryOperator<int[]> whole) {
        Map<int[], List<int[]>> pairs = new TreeMap<>(ORDER);
        for (int l = 0; l < left.size(); l++) {
            for (int r = 0; r < right.size(); r++) {
                int[] sum = whole.apply(left.get(l), right.get(r));
                if (sum.length > 0) {
                    pairs.computeIfAbsent(sum, count -> new ArrayList<>()).add(new int[] {l, r});
                }
            }
        }
        List<int[]> counts = new ArrayList<>(pairs.keySet());
        int[][] lefts = new int[counts.size()][];
        int[][] rights = new int[counts.size()][];
        for (int n = 0; n < lefts.length; n++) {
            List<int[]> found = pairs.get(counts.get(n));
            lefts[n] = found == null
                    ? new int[0]
                    : found.stream().mapToInt(pair -> pair[0]).toArray();
            rights[n] = found == null
                    ? new int[0]
                    : found.stream().mapToInt(pair -> pair[1]).toArray();
        }
        return new Mix(counts, lefts, rights);
    }

    /** Counts of the whole, in a fixed order. */
    List<int[]> counts() {
        return counts;
    }

    /** Counts of the left part, by number, of all pairs that make a count of the whole. */
    int[] left(int whole) {
        return left[whole];
    }

    /** Counts of the right part that go with them. */
    int[] right(int whole) {
        return right[whole];
    }

    int size() {
        return counts.size();
    }
}
