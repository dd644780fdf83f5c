package dustwright.documents.drawing;

import dustwright.engine.plant.Plant;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which inlets lie on another floor than most: inlets are sorted by height and parted where two metres lie between. */
record Floors(Set<String> elsewhere, double mainHeight_m) {
    private static final double BETWEEN_FLOORS_m = 2;

    static Floors of(Plant plant) {
        List<Inlet> sorted = plant.inlets().stream()
                .filter(i -> i.at().isPresent())
                .sorted(Comparator.comparingDouble(Floors::height))
                .toList();
        List<List<Inlet>> floors = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (Inlet inlet : sorted) {
            if (height(inlet) - last > BETWEEN_FLOORS_m) {
                floors.add(new ArrayList<>());
            }
            floors.get(floors.size() - 1).add(inlet);
            last = height(inlet);
        }
        if (floors.size() < 2) {
            return new Floors(
                    Set.of(), floors.isEmpty() ? 0 : height(floors.get(0).get(0)));
        }
        List<Inlet> most =
                floors.stream().max(Comparator.comparingInt(List::size)).orElseThrow();
        Set<String> elsewhere = new HashSet<>();
        floors.stream().filter(f -> f != most).forEach(f -> f.forEach(i -> elsewhere.add(i.id())));
        return new Floors(elsewhere, height(most.get(0)));
    }

    private static double height(Inlet inlet) {
        return inlet.at().orElseThrow().z_m();
    }
}
