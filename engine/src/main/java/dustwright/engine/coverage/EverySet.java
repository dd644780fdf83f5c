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

    EverySet(Plant plant, Question question, int users) {
        Map<String, Integer> zone = new TreeMap<>();
        plant.inlets().forEach(inlet -> zone.putIfAbsent(inlet.zone(), zone.size()));
        int[] zoneOf = plant.inlets().stream().mapToInt(i -> zone.get(i.zone())).toArray();
        int[] left = new int[zone.size()];
        zone.forEach((id, n) -> left[n] = question.atMost().getOrDefault(id, Integer.MAX_VALUE));
        collect(zoneOf, left, new int[users], 0, 0);
    }

    private void collect(int[] zoneOf, int[] left, int[] set, int chosen, int from) {
        if (chosen == set.length) {
            sets.add(set.clone());
            return;
        }
        for (int inlet = from; inlet <= zoneOf.length - (set.length - chosen); inlet++) {
            if (left[zoneOf[inlet]] > 0) {
                left[zoneOf[inlet]]--;
                set[chosen] = inlet;
                collect(zoneOf, left, set, chosen + 1, inlet + 1);
                left[zoneOf[inlet]]++;
            }
        }
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
