package dustwright.engine.coverage;

import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.finding.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Keeps the least margin of every requirement at every place over solved states, whatever order they come in. */
final class Tally {
    private record Kept(Finding finding, long set, List<String> open) {}

    private final Map<String, Kept> least = new TreeMap<>();
    private long solved;
    private long failing;
    private double gap;
    private String unsolved = "";
    private long unsolvedSet = Long.MAX_VALUE;

    /** Takes the findings of one state; the earlier set of equals is kept. */
    void add(long set, List<String> open, List<Finding> findings) {
        solved++;
        boolean fails = false;
        for (Finding finding : findings) {
            fails |= finding.fails();
            String key = finding.code() + "/" + finding.where().kind() + "/"
                    + finding.where().id();
            Kept kept = least.get(key);
            if (kept == null || before(finding.margin(), set, kept.finding.margin(), kept.set)) {
                least.put(key, new Kept(finding, set, open));
            }
        }
        failing += fails ? 1 : 0;
    }

    /** Takes how far a state is from what was foretold of it, over what was allowed for. */
    void addGap(double found) {
        gap = Math.max(gap, found);
    }

    /** Greatest distance between what was foretold and what was solved, over what was allowed for [-]. */
    double gap() {
        return gap;
    }

    void addUnsolved(long set, String why) {
        failing++;
        solved++;
        if (set < unsolvedSet) {
            unsolvedSet = set;
            unsolved = why;
        }
    }

    private static boolean before(double margin, long set, double otherMargin, long otherSet) {
        int order = Double.compare(margin, otherMargin);
        return order < 0 || (order == 0 && set < otherSet);
    }

    /** Takes over another tally. */
    void add(Tally other) {
        solved += other.solved;
        failing += other.failing;
        gap = Math.max(gap, other.gap);
        if (other.unsolvedSet < unsolvedSet) {
            unsolvedSet = other.unsolvedSet;
            unsolved = other.unsolved;
        }
        other.least.forEach((key, kept) -> least.merge(
                key,
                kept,
                (mine, theirs) ->
                        before(theirs.finding.margin(), theirs.set, mine.finding.margin(), mine.set) ? theirs : mine));
    }

    /** Takes over the states another tally found, but for how far they were from what was foretold of them. */
    void addFound(Tally other) {
        double own = gap;
        add(other);
        gap = own;
    }

    long solved() {
        return solved;
    }

    /** States in which some requirement does not hold or that have no answer. */
    long failing() {
        return failing;
    }

    /** Whether some requirement fails in a state found. */
    boolean fails() {
        return least.values().stream().anyMatch(kept -> kept.finding.fails());
    }

    /** Why a state has no answer; empty when all have. */
    String unsolved() {
        return unsolved;
    }

    /** Smallest margin first, then by requirement and place. */
    List<Worst> worst() {
        List<Worst> worst = new ArrayList<>();
        least.values().forEach(kept -> worst.add(new Worst(kept.finding, kept.open)));
        worst.sort(Comparator.comparingDouble(w -> w.finding().margin()));
        return worst;
    }
}
