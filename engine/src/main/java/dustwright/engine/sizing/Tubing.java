package dustwright.engine.sizing;

import dustwright.engine.plant.Plant;
import dustwright.engine.tubing.Run;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which run lies behind which, as air goes: what a bound needs to know of the tubing. */
final class Tubing {
    static final int NONE = -1;

    private final Plant plant;
    private final Map<String, Integer> byId = new HashMap<>();
    private final Map<String, Integer> leaving = new HashMap<>();
    private final int[] next;
    private final List<BitSet> behind = new ArrayList<>();
    private final boolean tree;

    Tubing(Plant plant) {
        this.plant = plant;
        List<Run> runs = plant.runs();
        boolean branching = false;
        for (int n = 0; n < runs.size(); n++) {
            byId.put(runs.get(n).id(), n);
            branching |= leaving.put(runs.get(n).from(), n) != null;
        }
        next = new int[runs.size()];
        for (int n = 0; n < next.length; n++) {
            next[n] = leaving.getOrDefault(runs.get(n).to(), NONE);
            behind.add(new BitSet());
        }
        tree = !branching && allEndAtStations();
        if (tree) {
            for (int n = 0; n < next.length; n++) {
                for (int below = next[n]; below != NONE; below = next[below]) {
                    behind.get(below).set(n);
                }
            }
        }
    }

    private boolean allEndAtStations() {
        for (int n = 0; n < next.length; n++) {
            int run = n;
            for (int steps = 0; next[run] != NONE; steps++) {
                if (steps > next.length) {
                    return false;
                }
                run = next[run];
            }
            String end = plant.runs().get(run).to();
            if (plant.stations().stream().noneMatch(s -> s.id().equals(end))) {
                return false;
            }
        }
        return plant.held().isEmpty();
    }

    /** Whether all air goes down one way each, to a station; only then is there an order to bound by. */
    boolean isTree() {
        return tree;
    }

    int run(String id) {
        return byId.getOrDefault(id, NONE);
    }

    /** The run air enters from an inlet. */
    int ofInlet(String inlet) {
        return leaving.getOrDefault(inlet, NONE);
    }

    /** The run after this one, or NONE at the receiver. */
    int next(int run) {
        return next[run];
    }

    /** Runs whose air passes this one. */
    BitSet behind(int run) {
        return behind.get(run);
    }

    /** A run and those its air passes on to the receiver. */
    BitSet onward(int run) {
        BitSet path = new BitSet();
        for (int n = run; n != NONE; n = next[n]) {
            path.set(n);
        }
        return path;
    }

    /** Station at the end of a run's way. */
    String station(int run) {
        int last = run;
        while (next[last] != NONE) {
            last = next[last];
        }
        return plant.runs().get(last).to();
    }
}
