package dustwright.engine.sizing;

import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Question;
import dustwright.engine.plant.Plant;
import dustwright.engine.sizing.PartSearch.Found;
import dustwright.engine.sizing.Parts.Part;
import dustwright.engine.sizing.Sizing.Basis;
import dustwright.engine.sizing.Sizing.Neighbour;
import dustwright.engine.sizing.Sizing.Spent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** The cheapest covered design of a plant: that of its pieces, each sought by itself ({@link PartSearch}). */
public final class Search {
    private static final double ADDS_UP = 1e-9;
    private static final int RUNNERS_UP = 3;
    /** What bounds are widened by where a margin was seen to pass its bound, over what was seen. */
    private static final double OVER = 2;

    private static final long WIDENED_BOXES = 150;

    private final Plant plant;
    private final List<Choice> choices;
    private final Rules rules;
    private final Patience patience;
    private final Question question;
    private final List<Part> parts;
    private final List<PartSearch> searches = new ArrayList<>();
    private final Prices prices;
    private final Space space;
    private double departure;
    private long compared;

    private Search(Plant plant, List<Choice> choices, Rules rules, Patience patience) {
        this.plant = plant;
        this.choices = List.copyOf(choices);
        this.rules = rules;
        this.patience = patience;
        question = rules.question(plant);
        space = new Space(plant, choices);
        prices = new Prices(space, new Tubing(plant), rules);
        parts = parts();
        for (Part part : parts) {
            searches.add(of(part));
        }
    }

    /**
     * Chooses.
     *
     * @param choices what is open, in one currency, each part in one choice at most
     */
    public static Sizing of(Plant plant, List<Choice> choices, Rules rules, Patience patience) {
        Search search = new Search(plant, choices, rules, patience);
        search.go();
        return search.answer();
    }

    private PartSearch of(Part part) {
        PartSearch search =
                new PartSearch(part, part.choices().stream().map(choices::get).toList(), rules, patience);
        search.trials().suspect(suspected(part));
        return search;
    }

    private static boolean wyes(Plant plant) {
        return plant.runs().stream().anyMatch(r -> r.wye().isPresent());
    }

    /** Pieces that share no air, where what they cost to run adds up to what the whole costs. */
    private List<Part> parts() {
        List<Part> pieces = plant.held().isEmpty()
                ? Parts.of(plant, choices, question)
                : List.of(Parts.whole(plant, choices, question));
        OptionalDouble whole = rules.running(plant);
        double sum = 0;
        boolean all = true;
        for (Part piece : pieces) {
            OptionalDouble running = rules.running(piece.plant());
            all &= running.isPresent() == whole.isPresent();
            sum += running.orElse(0);
        }
        boolean adds = all && Math.abs(sum - whole.orElse(0)) <= ADDS_UP * Math.abs(sum);
        return adds ? pieces : List.of(Parts.whole(plant, choices, question));
    }

    /** Sets an earlier search learnt of, as far as they lie in a piece. */
    private List<List<String>> suspected(Part part) {
        List<String> inlets = part.plant().inlets().stream().map(i -> i.id()).toList();
        return patience.suspected().stream()
                .map(set -> set.stream().filter(inlets::contains).toList())
                .filter(set -> !set.isEmpty() && part.users().contains(set.size()) && question.allowsZones(plant, set))
                .distinct()
                .toList();
    }

    private void go() {
        for (int n = 0; n < searches.size(); n++) {
            searches.get(n)
                    .begin(
                            patience.begun().size() == choices.size()
                                    ? parts.get(n).choices().stream()
                                            .map(patience.begun()::get)
                                            .toList()
                                    : List.of());
        }
        searches.forEach(PartSearch::finish);
        for (PartSearch search : searches) {
            Order order = new Order(search);
            order.look(search.triedDesigns());
            compared += order.compared();
            departure = Math.max(departure, order.departure());
        }
        if (departure > 0) {
            // a widened search may end sooner, with less shown; a cheaper design may turn up
            for (PartSearch search : searches) {
                search.widen(OVER * departure);
                search.finish(WIDENED_BOXES);
            }
        }
    }

    private Sizing answer() {
        boolean found = searches.stream().allMatch(s -> s.best().isPresent());
        String stopped = searches.stream()
                .map(PartSearch::stopped)
                .filter(s -> !s.isEmpty())
                .findFirst()
                .orElse("");
        List<Neighbour> neighbours = found ? neighbours() : List.of();
        if (stopped.isEmpty() && neighbours.stream().anyMatch(n -> n.said().equals(Neighbours.NOT_LOOKED_AT))) {
            stopped = "stopped before every neighbour was looked at";
        }
        Optional<Design> best = found ? Optional.of(joined(bests())) : Optional.empty();
        return new Sizing(
                choices,
                best,
                best.map(b -> certificate(b, bests())),
                searches.stream().mapToDouble(PartSearch::bound).sum(),
                basis(),
                found ? runnersUp() : List.of(),
                neighbours,
                undecided(),
                deadlock(),
                searches.stream()
                        .flatMap(s -> s.trials().suspected().stream())
                        .distinct()
                        .toList(),
                spent(),
                stopped);
    }

    private List<Found> bests() {
        return searches.stream().map(s -> s.best().orElseThrow()).toList();
    }

    /** The whole plant with the sizes of its pieces. */
    private Design joined(List<Found> pieces) {
        return together(pieces.stream().map(f -> f.design().options()).toList());
    }

    private Design together(List<List<String>> options) {
        String[] all = new String[choices.size()];
        for (int n = 0; n < parts.size(); n++) {
            for (int v = 0; v < parts.get(n).choices().size(); v++) {
                all[parts.get(n).choices().get(v)] = options.get(n).get(v);
            }
        }
        return prices.design(space.numbers(Arrays.asList(all)));
    }

    private Coverage certificate(Design design, List<Found> pieces) {
        return Certificate.of(
                design.plant(),
                rules.question(design.plant()),
                parts,
                pieces.stream().map(Found::coverage).toList());
    }

    /** Each piece's next best with the others' best. */
    private List<Design> runnersUp() {
        List<Design> others = new ArrayList<>();
        for (int n = 0; n < searches.size(); n++) {
            List<Found> found = searches.get(n).found();
            for (Found next : found.subList(1, found.size())) {
                List<Found> pieces = new ArrayList<>(bests());
                pieces.set(n, next);
                others.add(joined(pieces));
            }
        }
        others.sort(Comparator.comparingDouble(Design::cost));
        return others.subList(0, Math.min(RUNNERS_UP, others.size()));
    }

    private List<Neighbour> neighbours() {
        List<Neighbour> neighbours = new ArrayList<>();
        for (int n = 0; n < searches.size(); n++) {
            neighbours.addAll(new Neighbours(searches.get(n), parts.get(n).choices(), patience)
                    .of(searches.get(n).best().orElseThrow().design()));
        }
        neighbours.sort(Comparator.comparingInt(Neighbour::choice));
        return neighbours;
    }

    /** Undecided designs of a piece, with the best of the others; none where another piece has none. */
    private List<Design> undecided() {
        List<Design> undecided = new ArrayList<>();
        for (int n = 0; n < searches.size(); n++) {
            int piece = n;
            boolean others = IntStream.range(0, searches.size())
                    .allMatch(m -> m == piece || searches.get(m).best().isPresent());
            if (others) {
                for (Design open : searches.get(n).undecided()) {
                    List<List<String>> options = new ArrayList<>();
                    for (int m = 0; m < searches.size(); m++) {
                        options.add(
                                m == n
                                        ? open.options()
                                        : searches.get(m)
                                                .best()
                                                .orElseThrow()
                                                .design()
                                                .options());
                    }
                    undecided.add(together(options));
                }
            }
        }
        return undecided;
    }

    /** Of the first piece for which it is shown that no design holds. */
    private Optional<Deadlock> deadlock() {
        for (int n = 0; n < searches.size(); n++) {
            PartSearch search = searches.get(n);
            if (search.best().isEmpty()
                    && search.stopped().isEmpty()
                    && search.undecided().isEmpty()) {
                return Optional.of(new Deadlocks(search, parts.get(n).choices()).found());
            }
        }
        return Optional.empty();
    }

    private Basis basis() {
        return new Basis(
                searches.stream().allMatch(s -> s.tubing().isTree()),
                wyes(plant),
                question.conditions().stream().anyMatch(c -> !c.feeding().isEmpty()),
                compared,
                departure,
                OVER * departure,
                rules.running(plant).isPresent(),
                parts.size());
    }

    private Spent spent() {
        return searches.stream().map(PartSearch::spent).reduce(new Spent(0, 0, 0, 0), Spent::plus);
    }
}
