package dustwright.engine.coverage;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/** The sets that make extremes, each once, in a fixed order. */
record ListedSets(List<int[]> sets) implements ExactStates.Sets {
    private static final Comparator<int[]> ORDER = Arrays::compare;

    static ListedSets of(List<Extreme> extremes, int users) {
        TreeSet<int[]> sets = new TreeSet<>(ORDER);
        extremes.stream()
                .filter(e -> e.users() == users)
                .forEach(e -> sets.add(e.open().stream().mapToInt(n -> n).toArray()));
        return new ListedSets(List.copyOf(sets));
    }

    @Override
    public long size() {
        return sets.size();
    }

    @Override
    public int[] set(long number) {
        return sets.get((int) number);
    }
}
