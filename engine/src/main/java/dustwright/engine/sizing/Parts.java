package dustwright.engine.sizing;

import dustwright.engine.coverage.Question;
import dustwright.engine.network.State;
import dustwright.engine.plant.DesignSet;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.plant.Usage;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The pieces of a plant that share no air: what happens in one depends only on what is open in it. So a plant is covered when every piece
 * is, each for the numbers of users the others leave it, and the cheapest plant is that of the cheapest pieces (equation SIZ-4).
 */
final class Parts {
    /**
     * One piece.
     *
     * @param plant by itself
     * @param choices numbers of the plant's choices that are about it
     * @param users numbers of its inlets that can be open at once, as the whole question has it
     * @param atMost limits of its zones
     * @param conditions as the whole question has them
     * @param idle whether it can be without any user
     */
    record Part(
            Plant plant,
            List<Integer> choices,
            List<Integer> users,
            Map<String, Integer> atMost,
            List<State> conditions,
            boolean idle) {
        /** What is asked of it with these sizes: its own producers run. */
        Question question(Plant sized) {
            Set<String> running = running(sized);
            return new Question(
                    users,
                    atMost,
                    conditions.stream().map(c -> c.withRunning(running)).toList());
        }
    }

    private final Plant plant;
    private final Question question;
    private final Map<String, String> joined = new LinkedHashMap<>();

    private Parts(Plant plant, Question question) {
        this.plant = plant;
        this.question = question;
    }

    /** Ids of the producers that do not stand by. */
    static Set<String> running(Plant sized) {
        return sized.stations().stream()
                .flatMap(s -> s.producers().stream())
                .filter(p -> !p.standby())
                .map(p -> p.id())
                .collect(Collectors.toSet());
    }

    /** The whole plant as the only piece. */
    static Part whole(Plant plant, List<Choice> choices, Question question) {
        return new Part(
                plant,
                IntStream.range(0, choices.size()).boxed().toList(),
                question.users(),
                question.atMost(),
                question.conditions(),
                false);
    }

    /** The pieces, in the order of the stations; pieces that a zone's limit or a choice ties together stay one. */
    static List<Part> of(Plant plant, List<Choice> choices, Question question) {
        return new Parts(plant, question).parts(choices);
    }

    private List<Part> parts(List<Choice> choices) {
        plant.runs().forEach(run -> join(run.from(), run.to()));
        plant.bleeds().forEach(bleed -> join(bleed.point(), bleed.point()));
        plant.stations().forEach(station -> join(station.id(), station.id()));
        plant.inlets().stream()
                .filter(inlet -> question.atMost().containsKey(inlet.zone()))
                .collect(Collectors.groupingBy(
                        Inlet::zone, TreeMap::new, Collectors.mapping(Inlet::id, Collectors.toList())))
                .values()
                .forEach(this::joinAll);
        choices.forEach(choice -> joinAll(places(choice)));
        Map<String, List<Inlet>> pieces = new LinkedHashMap<>();
        plant.stations().forEach(station -> pieces.putIfAbsent(end(station.id()), new ArrayList<>()));
        plant.inlets()
                .forEach(inlet -> pieces.computeIfAbsent(end(inlet.id()), e -> new ArrayList<>())
                        .add(inlet));
        return pieces.size() < 2
                ? List.of(whole(plant, choices, question))
                : pieces.keySet().stream()
                        .map(end -> part(end, pieces, choices))
                        .toList();
    }

    private List<String> places(Choice choice) {
        if (choice instanceof Choice.Tubes tubes) {
            return tubes.runs().stream().map(id -> plant.run(id).from()).toList();
        }
        return choice instanceof Choice.Hoses hoses ? hoses.inlets() : List.of(choice.id());
    }

    private void joinAll(Collection<String> ids) {
        String first = ids.iterator().next();
        ids.forEach(id -> join(first, id));
    }

    private void join(String one, String other) {
        String end = end(one);
        String otherEnd = end(other);
        if (!end.equals(otherEnd)) {
            joined.put(end, otherEnd);
        }
    }

    private String end(String id) {
        String at = id;
        while (!joined.computeIfAbsent(at, a -> a).equals(at)) {
            at = joined.get(at);
        }
        return at;
    }

    private boolean in(String end, String id) {
        return end(id).equals(end);
    }

    private Part part(String end, Map<String, List<Inlet>> pieces, List<Choice> choices) {
        List<Inlet> inlets = Objects.requireNonNull(pieces.get(end));
        List<Inlet> others = pieces.entrySet().stream()
                .filter(e -> !e.getKey().equals(end))
                .flatMap(e -> e.getValue().stream())
                .toList();
        int most = capacity(inlets);
        int mostOfOthers = capacity(others);
        List<Integer> users = IntStream.rangeClosed(0, most)
                .filter(k -> question.users().stream().anyMatch(n -> k <= n && n - k <= mostOfOthers))
                .boxed()
                .toList();
        Set<String> ids = inlets.stream().map(Inlet::id).collect(Collectors.toSet());
        List<Run> runs =
                plant.runs().stream().filter(run -> in(end, run.from())).toList();
        Plant piece = plant.piece(
                runs,
                inlets,
                plant.bleeds().stream().filter(b -> in(end, b.point())).toList(),
                plant.held().stream().filter(h -> in(end, h.point())).toList(),
                plant.stations().stream().filter(s -> in(end, s.id())).toList(),
                new Usage(plant.usage().simultaneousUsers(), plant.usage().zones(), sets(ids)));
        Set<String> zones = inlets.stream().map(Inlet::zone).collect(Collectors.toSet());
        Map<String, Integer> atMost = new TreeMap<>(question.atMost());
        atMost.keySet().retainAll(zones);
        return new Part(
                piece,
                IntStream.range(0, choices.size())
                        .filter(v -> in(end, places(choices.get(v)).get(0)))
                        .boxed()
                        .toList(),
                users.stream().filter(k -> k > 0).toList(),
                atMost,
                question.conditions().stream()
                        .map(c -> condition(c, piece, ids))
                        .distinct()
                        .toList(),
                users.contains(0));
    }

    /** How many of these inlets the zones allow to be open at once. */
    private int capacity(List<Inlet> inlets) {
        Map<String, Integer> byZone = new TreeMap<>();
        inlets.forEach(inlet -> byZone.merge(inlet.zone(), 1, Integer::sum));
        return byZone.entrySet().stream()
                .mapToInt(e -> Math.min(e.getValue(), question.atMost().getOrDefault(e.getKey(), e.getValue())))
                .sum();
    }

    private List<DesignSet> sets(Set<String> ids) {
        return plant.usage().designSets().stream()
                .map(set -> new DesignSet(
                        set.name(), set.open().stream().filter(ids::contains).toList()))
                .filter(set -> !set.open().isEmpty())
                .toList();
    }

    /** What a condition of the whole plant is in a piece. */
    static State condition(State whole, Plant piece, Set<String> inlets) {
        Set<String> feeding = new HashSet<>(whole.feeding());
        feeding.retainAll(inlets);
        Set<String> bleeds = new HashSet<>(whole.openBleeds());
        bleeds.retainAll(piece.bleeds().stream().map(b -> b.id()).toList());
        Set<String> vented = new HashSet<>(whole.ventedStations());
        vented.retainAll(piece.stations().stream().map(Station::id).toList());
        return new State("", List.of(), feeding, whole.filter(), bleeds, vented, running(piece));
    }
}
