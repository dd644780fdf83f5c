package dustwright.engine;

import dustwright.engine.network.State;
import dustwright.engine.plant.DesignSet;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.tubing.Bleed;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** The states a plant is asked about. Standby producers rest, vent valves are shut, bleed valves stand as the plant file says. */
public final class States {
    private States() {}

    /** What {@code verify} asks unless told otherwise: every design set and every single user, with the filter clean and dirty. */
    public static List<State> usual(Plant plant) {
        return usual(plant, List.of(FilterCondition.CLEAN, FilterCondition.DIRTY));
    }

    /**
     * Every design set and every single user, with the filter in each of the conditions. A plant without inlets, a network of held
     * points, has one state in each: nothing is open.
     */
    public static List<State> usual(Plant plant, List<FilterCondition> conditions) {
        List<State> states = new ArrayList<>();
        for (DesignSet set : plant.usage().designSets()) {
            conditions.forEach(condition -> states.add(state(plant, set.name(), set.open(), condition)));
        }
        for (Inlet inlet : plant.inlets()) {
            conditions.forEach(
                    condition -> states.add(state(plant, inlet.id() + " alone", List.of(inlet.id()), condition)));
        }
        if (states.isEmpty()) {
            conditions.forEach(condition -> states.add(open(plant, List.of(), condition)));
        }
        return List.copyOf(states);
    }

    /** One state by the inlets that are open. */
    public static State open(Plant plant, List<String> open, FilterCondition filter) {
        return state(plant, open.isEmpty() ? "all closed" : String.join("+", open), open, filter);
    }

    private static State state(Plant plant, String name, List<String> open, FilterCondition filter) {
        Set<String> bleeds =
                plant.bleeds().stream().filter(Bleed::open).map(Bleed::id).collect(Collectors.toSet());
        Set<String> running = plant.stations().stream()
                .map(Station::producers)
                .flatMap(List::stream)
                .filter(p -> !p.standby())
                .map(VacuumProducer::id)
                .collect(Collectors.toSet());
        return new State(
                name + ", filter " + filter.name().toLowerCase(Locale.ROOT), open, filter, bleeds, Set.of(), running);
    }
}
