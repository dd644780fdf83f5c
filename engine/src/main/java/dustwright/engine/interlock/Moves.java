package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** What may happen in one scan, as sets of choices that are made together; the first set is empty. */
final class Moves {
    private final List<Integer> first;
    private final int most;
    private final List<Integer> second;
    private final int mostOther;
    private final int harmless;
    private final int choices;
    private final List<int[]> sets = new ArrayList<>();
    private final List<long[]> masks = new ArrayList<>();

    private Moves(List<Integer> first, int most, List<Integer> second, int mostOther, int harmless, int choices) {
        this.first = List.copyOf(first);
        this.most = most;
        this.second = List.copyOf(second);
        this.mostOther = mostOther;
        this.harmless = harmless;
        this.choices = choices;
        List<List<Integer>> ones = subsets(first, most);
        for (List<Integer> other : subsets(second, mostOther)) {
            for (List<Integer> one : ones) {
                List<Integer> both = new ArrayList<>(one);
                both.addAll(other);
                sets.add(both.stream().mapToInt(Integer::intValue).toArray());
            }
        }
        for (int block = 0; block < blocks(); block++) {
            long[] mask = new long[choices];
            for (int lane = 0; lane < used(block); lane++) {
                for (int choice : sets.get(block * 64 + lane)) {
                    mask[choice] |= 1L << lane;
                }
            }
            masks.add(mask);
        }
    }

    /**
     * Up to {@code most} of the first choices together with up to {@code mostOther} of the second.
     *
     * @param harmless how many of the second, from the front, are no disturbance
     */
    static Moves of(List<Integer> first, int most, List<Integer> second, int mostOther, int harmless, int choices) {
        return new Moves(first, most, second, mostOther, harmless, choices);
    }

    /** The same with only those choices that are among these. */
    Moves among(BitSet some) {
        return new Moves(
                first.stream().filter(some::get).toList(),
                most,
                second.stream().filter(some::get).toList(),
                mostOther,
                (int) second.stream().limit(harmless).filter(some::get).count(),
                choices);
    }

    /** All subsets with at most so many members, smaller ones first. */
    private static List<List<Integer>> subsets(List<Integer> of, int most) {
        List<List<Integer>> all = new ArrayList<>(List.of(List.of()));
        int from = 0;
        for (int size = 1; size <= Math.min(most, of.size()); size++) {
            int to = all.size();
            for (int s = from; s < to; s++) {
                List<Integer> smaller = all.get(s);
                int next = smaller.isEmpty() ? 0 : of.indexOf(smaller.get(smaller.size() - 1)) + 1;
                for (int i = next; i < of.size(); i++) {
                    List<Integer> larger = new ArrayList<>(smaller);
                    larger.add(of.get(i));
                    all.add(larger);
                }
            }
            from = to;
        }
        return all;
    }

    /** How many moves disturb nothing; they stand first. */
    int undisturbed() {
        return subsets(first, most).size() * (1 + harmless);
    }

    int count() {
        return sets.size();
    }

    int blocks() {
        return (sets.size() + 63) / 64;
    }

    int used(int block) {
        return Math.min(64, sets.size() - block * 64);
    }

    long[] masks(int block) {
        return masks.get(block);
    }

    /** Choices that are made in a move. */
    boolean[] choices(int move) {
        boolean[] made = new boolean[choices];
        for (int choice : sets.get(move)) {
            made[choice] = true;
        }
        return made;
    }
}
