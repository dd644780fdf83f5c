package dustwright.engine.coverage;

import dustwright.engine.plant.Plant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Every set of so many inlets that the zones allow, numbered in the order of the plant file, so that work can be shared out and taken up
 * again at any number.
 */
final class EverySet implements ExactStates.Sets {
    private final List<int[]> sets = new ArrayList<>();

    private final Box box;
    private final int inlets;

    EverySet(Plant plant, Question question, int users, Box box) {
        this.box = box;
        inlets = plant.inlets().size();
        Map<String, Integer> zone = new TreeMap<>();
        plant.inlets().forEach(inlet -> zone.putIfAbsent(inlet.zone(), zone.size()));
        int[] zoneOf = plant.inlets().stream().mapToInt(i -> zone.get(i.zone())).toArray();
        int[] left = new int[zone.size()];
        zone.forEach((id, n) -> left[n] = question.atMost().getOrDefault(id, Integer.MAX_VALUE));
        collect(zoneOf, left, new int[users], 0, 0);
    }

    private void collect(int[] zoneOf, int[] left, int[] set, int chosen, int from) {
        if (chosen == set.length) {
            if (allOpen(from)) {
                sets.add(set.clone());
            }
            return;
        }
        for (int inlet = from; inlet <= zoneOf.length - (set.length - chosen); inlet++) {
            if (left[zoneOf[inlet]] > 0 && box.mayOpen(inlet)) {
                left[zoneOf[inlet]]--;
                set[chosen] = inlet;
                collect(zoneOf, left, set, chosen + 1, inlet + 1);
                left[zoneOf[inlet]]++;
            }
            if (!box.mayShut(inlet)) {
                return; // no set of the box leaves it out
            }
        }
    }

    /** Whether none of the inlets from one on must be open. */
    private boolean allOpen(int from) {
        for (int inlet = from; inlet < inlets; inlet++) {
            if (!box.mayShut(inlet)) {
                return false;
            }
        }
        return true;
    }

    @Override
    public long size() {
        return sets.size();
    }

    @Override
    public int[] set(long number) {
        return sets.get(Math.toIntExact(number));
    }
}
