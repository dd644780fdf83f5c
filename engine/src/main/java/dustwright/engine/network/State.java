package dustwright.engine.network;

import dustwright.engine.receiver.FilterCondition;
import java.util.List;
import java.util.Set;

/**
 * What is open and running.
 *
 * @param name how people call this state, for example {@code "A1+A7+B3"}
 * @param open ids of open inlets
 * @param feeding ids of inlets whose user picks up dust at the stated rate, where they are open; all others draw clean air
 * @param filter condition of every filter
 * @param openBleeds ids of open far-end bleed valves
 * @param ventedStations ids of stations whose vent valve is open
 * @param runningProducers ids of running producers
 */
public record State(
        String name,
        List<String> open,
        Set<String> feeding,
        FilterCondition filter,
        Set<String> openBleeds,
        Set<String> ventedStations,
        Set<String> runningProducers) {
    public State {
        open = List.copyOf(open);
        feeding = Set.copyOf(feeding);
        openBleeds = Set.copyOf(openBleeds);
        ventedStations = Set.copyOf(ventedStations);
        runningProducers = Set.copyOf(runningProducers);
    }

    /** A state in which nobody picks up dust. */
    public State(
            String name,
            List<String> open,
            FilterCondition filter,
            Set<String> openBleeds,
            Set<String> ventedStations,
            Set<String> runningProducers) {
        this(name, open, Set.of(), filter, openBleeds, ventedStations, runningProducers);
    }

    /** The same state with other producers running. */
    public State withRunning(Set<String> producers) {
        return new State(name, open, feeding, filter, openBleeds, ventedStations, producers);
    }

    /** The same state with other users picking up dust. */
    public State withFeeding(Set<String> inlets) {
        return new State(name, open, inlets, filter, openBleeds, ventedStations, runningProducers);
    }

    /** The same state with other inlets open. */
    public State withOpen(List<String> inlets) {
        return new State(name, inlets, feeding, filter, openBleeds, ventedStations, runningProducers);
    }

    /** The same state with other far-end bleed valves open. */
    public State withOpenBleeds(Set<String> bleeds) {
        return new State(name, open, feeding, filter, bleeds, ventedStations, runningProducers);
    }

    /** The same state with the vent valves of other stations open. */
    public State withVented(Set<String> stations) {
        return new State(name, open, feeding, filter, openBleeds, stations, runningProducers);
    }

    /** The same state with the filters in another condition. */
    public State withFilter(FilterCondition condition) {
        return new State(name, open, feeding, condition, openBleeds, ventedStations, runningProducers);
    }
}
