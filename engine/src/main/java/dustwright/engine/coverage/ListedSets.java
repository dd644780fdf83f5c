package dustwright.engine.coverage;

import dustwright.engine.coverage.Extreme.Measure;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.LegResult;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/** The sets that make extremes, each once, in a fixed order, with what the envelopes foretell of them. */
final class ListedSets implements ExactStates.Sets {
    private static final Comparator<int[]> ORDER = Arrays::compare;

    private final List<int[]> sets;
    private final List<List<Extreme>> foretold;

    private ListedSets(List<int[]> sets, List<List<Extreme>> foretold) {
        this.sets = sets;
        this.foretold = foretold;
    }

    static ListedSets of(List<Extreme> extremes, int users) {
        TreeMap<int[], List<Extreme>> bySet = new TreeMap<>(ORDER);
        for (Extreme extreme : extremes) {
            if (extreme.users() == users) {
                int[] set = extreme.open().stream().mapToInt(n -> n).toArray();
                bySet.computeIfAbsent(set, s -> new ArrayList<>()).add(extreme);
            }
        }
        return new ListedSets(List.copyOf(bySet.keySet()), List.copyOf(bySet.values()));
    }

    /** Sets of which nothing is foretold. */
    static ListedSets of(List<int[]> sets) {
        return new ListedSets(sets, sets.stream().map(s -> List.<Extreme>of()).toList());
    }

    @Override
    public long size() {
        return sets.size();
    }

    @Override
    public int[] set(long number) {
        return sets.get((int) number);
    }

    @Override
    public double gap(long number, DutyPoint duty) {
        double greatest = 0;
        for (Extreme extreme : foretold.get((int) number)) {
            greatest = Math.max(greatest, gap(extreme, duty) / extreme.pad());
        }
        return greatest;
    }

    private static double gap(Extreme extreme, DutyPoint duty) {
        if (extreme.measure() == Measure.WEAKEST_TOOL) {
            InletResult inlet = duty.inlets().stream()
                    .filter(i -> i.id().equals(extreme.place()))
                    .findFirst()
                    .orElseThrow();
            return Math.abs(extreme.value() / inlet.flow().kgPerSecond() - 1);
        }
        if (extreme.measure() == Measure.SLOWEST_RUN) {
            LegResult run = duty.legs().stream()
                    .filter(l -> l.kind() == LegResult.Kind.RUN && l.id().equals(extreme.place()))
                    .findFirst()
                    .orElseThrow();
            return Math.abs(extreme.velocity_mPerS() / run.slowest().metresPerSecond() - 1);
        }
        return 0;
    }
}
