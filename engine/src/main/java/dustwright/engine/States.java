package dustwright.engine;

import dustwright.engine.conveying.Dust;
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

    /**
     * What {@code verify} asks unless told otherwise: every design set and every single user, with the filter clean and dirty, while dust is
     * picked up and while it is not.
     */
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
            conditions.forEach(condition ->
                    states.addAll(withAndWithoutDust(plant, state(plant, set.name(), set.open(), condition))));
        }
        for (Inlet inlet : plant.inlets()) {
            conditions.forEach(condition -> states.addAll(
                    withAndWithoutDust(plant, state(plant, inlet.id() + " alone", List.of(inlet.id()), condition))));
        }
        if (states.isEmpty()) {
            conditions.forEach(condition -> states.add(open(plant, List.of(), condition)));
        }
        return List.copyOf(states);
    }

    /** Pick-up stops and starts: where dust changes what the air does, the state is asked with it and without. */
    public static List<State> withAndWithoutDust(Plant plant, State state) {
        return anyFeeds(plant, state) ? List.of(state, withoutDust(state)) : List.of(state);
    }

    /** Every condition in which a plant is judged, filter by filter, with dust and without; what they say of open inlets does not matter. */
    public static List<State> conditions(Plant plant, List<FilterCondition> filters) {
        List<String> all = plant.inlets().stream().map(Inlet::id).toList();
        return filters.stream()
                .flatMap(filter -> withAndWithoutDust(plant, open(plant, all, filter)).stream())
                .toList();
    }

    /** Whether dust picked up at the open inlets, at the rates stated, changes what the air does. */
    public static boolean anyFeeds(Plant plant, State state) {
        return state.open().stream().map(plant::inlet).anyMatch(inlet -> slowsTheAir(plant, inlet));
    }

    private static boolean slowsTheAir(Plant plant, Inlet inlet) {
        return inlet.feed().kgPerSecond() > 0
                && inlet.dust().map(plant::dust).flatMap(Dust::particle).isPresent();
    }

    /** The same state while nobody picks up dust. */
    public static State withoutDust(State state) {
        return new State(
                state.name() + ", no dust",
                state.open(),
                state.filter(),
                state.openBleeds(),
                state.ventedStations(),
                state.runningProducers());
    }

    /** One state by the inlets that are open; every user picks up dust at the rate stated. */
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
        Set<String> feeding = plant.inlets().stream()
                .filter(inlet -> inlet.feed().kgPerSecond() > 0)
                .map(Inlet::id)
                .collect(Collectors.toSet());
        return new State(
                name + ", filter " + filter.name().toLowerCase(Locale.ROOT),
                open,
                feeding,
                filter,
                bleeds,
                Set.of(),
                running);
    }
}
