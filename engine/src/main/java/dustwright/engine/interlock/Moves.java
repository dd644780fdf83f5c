package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Stream;

/** What may happen in one scan, as sets of choices that are made together; the first set is empty. */
final class Moves {
    private final List<int[]> sets;
    private final int undisturbed;
    private final int choices;
    private final long[][] masks;

    private Moves(List<int[]> sets, int undisturbed, int choices) {
        this.sets = sets;
        this.undisturbed = undisturbed;
        this.choices = choices;
        masks = new long[blocks()][choices];
        for (int move = 0; move < sets.size(); move++) {
            for (int choice : sets.get(move)) {
                masks[move >> 6][choice] |= 1L << (move & 63);
            }
        }
    }

    /**
     * Up to {@code most} of the first choices together with up to {@code mostOther} of the second.
     *
     * @param harmless how many of the second, from the front, are no disturbance
     */
    static Moves of(List<Integer> first, int most, List<Integer> second, int mostOther, int harmless, int choices) {
        List<List<Integer>> ones = subsets(first, most);
        List<int[]> sets = new ArrayList<>();
        for (List<Integer> other : subsets(second, mostOther)) {
            for (List<Integer> one : ones) {
                sets.add(Stream.concat(one.stream(), other.stream())
                        .mapToInt(Integer::intValue)
                        .toArray());
            }
        }
        return new Moves(sets, ones.size() * (1 + harmless), choices);
    }

    /** Those of them that make only choices among these. */
    Moves among(BitSet some) {
        List<int[]> left = new ArrayList<>();
        int first = 0;
        for (int move = 0; move < sets.size(); move++) {
            if (among(sets.get(move), some)) {
                left.add(sets.get(move));
                first += move < undisturbed ? 1 : 0;
            }
        }
        return new Moves(left, first, choices);
    }

    private static boolean among(int[] set, BitSet some) {
        for (int choice : set) {
            if (!some.get(choice)) {
                return false;
            }
        }
        return true;
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
        return undisturbed;
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
        return masks[block];
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
