package dustwright.cli;

import dustwright.engine.States;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.tubing.Bleed;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What is open and running, as asked on the command line. */
final class StateOptions {
    private static final List<String> NONE = List.of("none");

    @Option(
            names = "--open",
            paramLabel = "A1,A7,B3",
            description = "Inlets that are open, in one state. Give it again for a further state. \"none\" closes all.")
    private List<String> open = new ArrayList<>();

    @Option(
            names = "--filter",
            paramLabel = "clean|normal|dirty",
            description = "Condition of the filter. Default: normal for solve; clean and dirty for verify and report.")
    private @Nullable FilterCondition filter;

    @Option(
            names = "--running",
            paramLabel = "P1,P2",
            hideParamSyntax = true,
            split = ",",
            description =
                    "Producers in service, in states and sheets; all others stand by. Default: as the plant file says. \"none\" stops all in the states.")
    private @Nullable List<String> running;

    @Option(
            names = "--bleeds",
            paramLabel = "B1,B2",
            hideParamSyntax = true,
            split = ",",
            description = "Far-end bleed valves that are open. Default: as the plant file says. \"none\" shuts all.")
    private @Nullable List<String> bleeds;

    @Option(
            names = "--vent",
            paramLabel = "REC",
            hideParamSyntax = true,
            split = ",",
            description = "Stations whose vent valve is open. Default: none.")
    private List<String> vent = new ArrayList<>();

    @Option(
            names = "--feeding",
            paramLabel = "A1,A7",
            hideParamSyntax = true,
            split = ",",
            description =
                    "Inlets whose users pick up dust. Default: all that are open, at the feed stated; verify and report also ask"
                            + " each set without dust. \"none\" stops all.")
    private @Nullable List<String> feeding;

    @Option(names = "--no-dust", description = "Nobody picks up dust: air alone.")
    private boolean noDust;

    FilterCondition filterOr(FilterCondition usual) {
        return filter == null ? usual : filter;
    }

    /** The plant with those producers in service that run as asked, so that whatever goes by what runs, in sheets too, goes by them; where none runs in the states, the file says. */
    Plant inService(Plant plant) {
        return running == null || running.equals(NONE)
                ? plant
                : plant.withInService(named(running, producers(plant), "producer"));
    }

    /** Whether anything is said about states. */
    boolean anyGiven() {
        return anyOpenGiven()
                || filter != null
                || running != null
                || bleeds != null
                || !vent.isEmpty()
                || feeding != null
                || noDust;
    }

    boolean anyOpenGiven() {
        return !open.isEmpty();
    }

    /** One state per {@code --open}, in each of the given filter conditions unless {@code --filter} names one. */
    List<State> states(Plant plant, FilterCondition... usual) {
        List<State> states = new ArrayList<>();
        for (String one : open) {
            List<String> ids = inlets(plant, one);
            for (FilterCondition condition : filter == null ? List.of(usual) : List.of(filter)) {
                states.add(adapted(plant, States.open(plant, ids, condition)));
            }
        }
        checkFed(states);
        return states;
    }

    /** The same, each with its dust and without, unless the options say who picks up dust. */
    List<State> statesToJudge(Plant plant, FilterCondition... usual) {
        List<State> states = states(plant, usual);
        return saysWhoFeeds()
                ? states
                : states.stream()
                        .flatMap(s -> States.withAndWithoutDust(plant, s).stream())
                        .toList();
    }

    /** The usual states of a plant, adapted to the other options. */
    List<State> usual(Plant plant) {
        List<State> states = filter == null ? States.usual(plant) : States.usual(plant, List.of(filter));
        List<State> adapted = states.stream()
                .filter(s -> !saysWhoFeeds() || !s.feeding().isEmpty() || !States.anyFeeds(plant, s))
                .map(s -> adapted(plant, s))
                .toList();
        checkFed(adapted);
        return adapted;
    }

    /** Nobody picks up dust at an inlet that is shut in every state asked. */
    private void checkFed(List<State> states) {
        if (feeding == null || states.isEmpty()) {
            return;
        }
        for (String inlet : feeding) {
            if (!inlet.equals("none")
                    && states.stream().noneMatch(state -> state.open().contains(inlet.strip()))) {
                throw new BadInput(
                        "Inlet " + inlet.strip() + " is closed, so nobody feeds there: name it in --open too.");
            }
        }
    }

    private boolean saysWhoFeeds() {
        return noDust || feeding != null;
    }

    State adapted(Plant plant, State state) {
        State adapted = NONE.equals(running) ? state.withRunning(Set.of()) : state;
        if (noDust) {
            adapted = States.withoutDust(adapted);
        } else if (feeding != null) {
            Set<String> ids =
                    named(feeding, plant.inlets().stream().map(Inlet::id).toList(), "inlet");
            adapted = adapted.withFeeding(ids);
        }
        if (bleeds != null) {
            adapted = adapted.withOpenBleeds(
                    named(bleeds, plant.bleeds().stream().map(Bleed::id).toList(), "far-end bleed valve"));
        }
        if (!vent.isEmpty()) {
            adapted = adapted.withVented(named(
                    vent,
                    plant.stations().stream()
                            .filter(s -> s.vent().isPresent())
                            .map(Station::id)
                            .toList(),
                    "vent valve at a station called"));
        }
        return adapted;
    }

    private static List<String> inlets(Plant plant, String text) {
        List<String> known = plant.inlets().stream().map(Inlet::id).toList();
        return text.equals("none") ? List.of() : List.copyOf(checked(List.of(text.split(",")), known, "inlet"));
    }

    private static Set<String> named(List<String> asked, List<String> known, String what) {
        return asked.equals(NONE) ? Set.of() : new HashSet<>(checked(asked, known, what));
    }

    private static List<String> checked(List<String> asked, List<String> known, String what) {
        List<String> ids = new ArrayList<>();
        for (String one : asked) {
            String id = one.strip();
            if (!known.contains(id)) {
                throw new BadInput("There is no " + what + " " + id + " in this plant. "
                        + (known.isEmpty() ? "It has none." : "It has " + shortened(known) + "."));
            }
            if (ids.contains(id)) {
                throw new BadInput(what + " " + id + " is named twice.");
            }
            ids.add(id);
        }
        return ids;
    }

    private static String shortened(List<String> known) {
        int most = 12;
        return known.size() <= most
                ? String.join(", ", known)
                : String.join(", ", known.subList(0, most)) + " and " + (known.size() - most) + " more";
    }

    private static List<String> producers(Plant plant) {
        return plant.stations().stream()
                .flatMap(s -> s.producers().stream())
                .map(VacuumProducer::id)
                .toList();
    }
}
