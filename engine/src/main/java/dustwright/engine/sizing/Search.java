package dustwright.engine.sizing;

import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Answer.Verdict;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Effort;
import dustwright.engine.coverage.Question;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.sizing.Sizing.Neighbour;
import dustwright.engine.sizing.Sizing.Spent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * The cheapest covered design, by boxes of designs, cheapest bound first (equations SIZ-1 to SIZ-3). A box is cut by what earlier designs
 * failed in; a single design is tried on the same, then coverage is proven for it; what the proof shows is learnt. The first design
 * taken from the queue that is covered is the cheapest.
 */
public final class Search {
    private static final int DIVES_EVERY = 64;
    private static final int DIVE_BOXES = 400;
    /** Places a proof may teach of, for each kind of requirement. */
    private static final int LESSONS = 3;

    private final Rules rules;
    private final Patience patience;
    private final Space space;
    private final Tubing tubing;
    private final Bounds bounds;
    private final Boxes boxes;
    private final Map<List<Integer>, Double> bestRunning = new HashMap<>();
    private final Set<List<Integer>> refused = new HashSet<>();
    private final List<Design> undecided = new ArrayList<>();
    private final PriorityQueue<Box> queue =
            new PriorityQueue<>(Comparator.comparingDouble(Box::cost).thenComparing(Box::newestFirst));
    private Optional<Design> best = Optional.empty();
    private Optional<Coverage> certificate = Optional.empty();
    private long looked;
    private long proofs;
    private long numbers;
    private double floor;

    /** Designs not yet decided, none cheaper than the cost. */
    private static final class Box {
        private final long[] options;
        private final double cost;
        private final long number;

        Box(long[] options, double cost, long number) {
            this.options = options;
            this.cost = cost;
            this.number = number;
        }

        double cost() {
            return cost;
        }

        long newestFirst() {
            return -number;
        }
    }

    private Search(Plant plant, List<Choice> choices, Rules rules, Patience patience) {
        this.rules = rules;
        this.patience = patience;
        space = new Space(plant, choices);
        tubing = new Tubing(plant);
        bounds = new Bounds(space, tubing, rules);
        boxes = new Boxes(space, tubing, bounds, patience.stop());
    }

    /**
     * Chooses.
     *
     * @param choices what is open, in one currency, each part in one choice at most
     */
    public static Sizing of(Plant plant, List<Choice> choices, Rules rules, Patience patience) {
        return new Search(plant, choices, rules, patience).sizing();
    }

    private Sizing sizing() {
        push(boxes.all());
        String stopped = go();
        return new Sizing(
                space.choices(),
                best,
                certificate,
                Math.min(floor, best.map(Design::cost).orElse(Double.POSITIVE_INFINITY)),
                tubing.isTree(),
                best.isEmpty() || patience.stop().getAsBoolean() ? List.of() : neighbours(),
                undecided,
                best.isPresent() || !stopped.isEmpty() ? Optional.empty() : obstacle(),
                new Spent(looked, bounds.solved(), proofs, boxes.learnt()),
                stopped);
    }

    /** What stands against every design: of the last box, by its most favourable fit. */
    private Optional<Worst> obstacle() {
        return boxes.obstacle()
                .flatMap(example -> bounds.best(example, boxes.all())
                        .map(finding -> new Worst(finding, example.state().open())));
    }

    private String go() {
        while (!queue.isEmpty()) {
            Box box = queue.peek();
            floor = Math.min(box.cost, leastUndecided());
            if (best.isPresent() && floor >= best.get().cost() * (1 - patience.gap())) {
                return "";
            }
            if (patience.stop().getAsBoolean()) {
                return "stopped before every cheaper design was refuted";
            }
            queue.poll();
            if (best.isPresent() && box.cost >= best.get().cost()) {
                continue;
            }
            looked++;
            tell();
            if (best.isEmpty() && looked % DIVES_EVERY == 1) {
                dive(box.options.clone(), new int[] {DIVE_BOXES});
            }
            expand(box);
        }
        floor = leastUndecided();
        return "";
    }

    private double leastUndecided() {
        return undecided.stream().mapToDouble(Design::cost).min().orElse(Double.POSITIVE_INFINITY);
    }

    private void tell() {
        patience.told()
                .accept(looked + " boxes of designs, " + proofs + " proofs, "
                        + best.map(b -> "cheapest " + Math.round(b.cost()) + ", ")
                                .orElse("")
                        + "none below " + Math.round(floor));
    }

    private void expand(Box box) {
        long[] options = box.options;
        if (!boxes.cut(options)) {
            return;
        }
        if (Boxes.single(options)) {
            decide(options, box.cost);
            return;
        }
        double cost = bound(options);
        if (cost > box.cost * (1 + 1e-12)) {
            queue.add(new Box(options, cost, numbers++));
            return;
        }
        split(options);
    }

    private void push(long[] options) {
        for (long left : options) {
            if (left == 0) {
                return;
            }
        }
        queue.add(new Box(options, bound(options), numbers++));
    }

    /** A single design waits for its turn by its full cost, then is decided. */
    private void decide(long[] options, double bound) {
        int[] chosen = Boxes.design(options);
        Design design = design(chosen);
        if (design.cost() > bound * (1 + 1e-12)) {
            queue.add(new Box(options, design.cost(), numbers++));
        } else {
            tryOut(chosen, design);
        }
    }

    /** Whether a design is covered; if so and cheaper than any before it, it is the best so far. */
    private boolean tryOut(int[] chosen, Design design) {
        if (best.isPresent() && design.cost() >= best.get().cost()) {
            return false;
        }
        if (!refused.add(java.util.Arrays.stream(chosen).boxed().toList())) {
            return false;
        }
        if (boxes.refutes(design.plant())) {
            return false;
        }
        Coverage coverage = covered(design.plant());
        if (coverage.holds()) {
            best = Optional.of(design);
            certificate = Optional.of(coverage);
            return true;
        }
        if (!learn(coverage)) {
            undecided.add(design);
        }
        return false;
    }

    private Coverage covered(Plant sized) {
        proofs++;
        Effort effort =
                new Effort(patience.threads(), patience.mostStates(), false, patience.stop(), share -> {}, List.of());
        return Coverage.of(sized, rules.question(sized), rules.judging(sized), effort);
    }

    /** Takes up sets in which a design fails worst, a few of each kind of requirement. False when it fails in none: it is not decided. */
    private boolean learn(Coverage coverage) {
        Map<FindingCode, Integer> taught = new EnumMap<>(FindingCode.class);
        Set<Place> places = new HashSet<>();
        List<Failing> failing = coverage.answers().stream()
                .filter(a -> a.verdict() == Verdict.FAILS)
                .flatMap(a ->
                        a.worst().stream().filter(w -> !w.finding().holds()).map(w -> new Failing(a, w)))
                .sorted(Comparator.comparingDouble(f -> f.worst().finding().margin()))
                .toList();
        for (Failing one : failing) {
            Finding finding = one.worst().finding();
            if (taught.getOrDefault(finding.code(), 0) < LESSONS && places.add(finding.where())) {
                taught.merge(finding.code(), 1, Integer::sum);
                boxes.learn(new Counterexample(
                        boxes.learnt(),
                        finding.code(),
                        finding.where(),
                        state(coverage.question(), one.answer(), one.worst())));
            }
        }
        return !failing.isEmpty();
    }

    private record Failing(Answer answer, Worst worst) {}

    private static State state(Question question, Answer answer, Worst worst) {
        State condition = question.conditions().stream()
                .filter(c -> Coverage.words(c).equals(answer.condition()))
                .findFirst()
                .orElseThrow();
        return new State(
                worst.finding().state(),
                worst.open(),
                condition.feeding(),
                condition.filter(),
                condition.openBleeds(),
                condition.ventedStations(),
                condition.runningProducers());
    }

    // ---- cost

    private Design design(int[] chosen) {
        Plant sized = space.with(space.fit(chosen));
        List<String> options = new ArrayList<>();
        double first = 0;
        for (int v = 0; v < chosen.length; v++) {
            options.add(space.options(v).get(chosen[v]).id());
            first += space.cost(v, chosen[v]);
        }
        return new Design(options, first, rules.running(sized), sized);
    }

    /** No design of a box costs less (equation SIZ-1): least first costs, and what its widest fit costs to run. */
    private double bound(long[] options) {
        double sum = 0;
        int producers = Space.FIXED;
        for (int v = 0; v < options.length; v++) {
            if (space.isProducer(v) && producers == Space.FIXED) {
                producers = v;
            } else {
                sum += least(options, v);
            }
        }
        if (producers == Space.FIXED) {
            return sum + running(options);
        }
        double least = Double.POSITIVE_INFINITY;
        for (long rest = options[producers]; rest != 0; rest &= rest - 1) {
            long[] with = options.clone();
            with[producers] = rest & -rest;
            least = Math.min(least, space.cost(producers, Long.numberOfTrailingZeros(rest)) + running(with));
        }
        return sum + least;
    }

    private double least(long[] options, int v) {
        double least = Double.POSITIVE_INFINITY;
        for (long rest = options[v]; rest != 0; rest &= rest - 1) {
            least = Math.min(least, space.cost(v, Long.numberOfTrailingZeros(rest)));
        }
        return least;
    }

    private double running(long[] options) {
        int[] widest = new int[options.length];
        List<Integer> key = new ArrayList<>();
        for (int v = 0; v < widest.length; v++) {
            widest[v] = Long.SIZE - 1 - Long.numberOfLeadingZeros(options[v]);
            key.add(widest[v]);
        }
        return bestRunning.computeIfAbsent(key, k -> {
            Plant sized = space.with(space.fit(widest));
            OptionalDouble running =
                    tubing.isTree() && rules.widestRunsCheapest(sized) ? rules.running(sized) : OptionalDouble.empty();
            return running.orElse(0);
        });
    }

    // ---- branching

    private void split(long[] options) {
        int v = widestSpread(options);
        long dear = options[v];
        long cheap = 0;
        int half = Long.bitCount(dear) / 2;
        List<Integer> byCost = byCost(options, v);
        for (int n = 0; n < half; n++) {
            cheap |= 1L << byCost.get(n);
        }
        long[] one = options.clone();
        one[v] = cheap;
        long[] other = options.clone();
        other[v] = dear & ~cheap;
        push(other);
        push(one);
    }

    private List<Integer> byCost(long[] options, int v) {
        List<Integer> list = new ArrayList<>();
        for (long rest = options[v]; rest != 0; rest &= rest - 1) {
            list.add(Long.numberOfTrailingZeros(rest));
        }
        list.sort(Comparator.comparingDouble(o -> space.cost(v, o)));
        return list;
    }

    /** The choice whose options differ most in cost. */
    private int widestSpread(long[] options) {
        int widest = Space.FIXED;
        double most = -1;
        for (int v = 0; v < options.length; v++) {
            if (Long.bitCount(options[v]) > 1) {
                List<Integer> byCost = byCost(options, v);
                double spread = space.cost(v, byCost.get(byCost.size() - 1)) - space.cost(v, byCost.get(0));
                if (spread > most) {
                    most = spread;
                    widest = v;
                }
            }
        }
        return widest;
    }

    /** Looks for a covered design in a box, cheap ones first, to have one early. */
    private boolean dive(long[] options, int[] left) {
        if (left[0]-- <= 0 || patience.stop().getAsBoolean() || !boxes.cut(options)) {
            return false;
        }
        if (Boxes.single(options)) {
            int[] chosen = Boxes.design(options);
            return tryOut(chosen, design(chosen));
        }
        int v = widestSpread(options);
        for (int option : byCost(options, v)) {
            long[] sub = options.clone();
            sub[v] = 1L << option;
            if (dive(sub, left)) {
                return true;
            }
        }
        return false;
    }

    // ---- neighbours

    private List<Neighbour> neighbours() {
        Design found = best.orElseThrow();
        int[] chosen = new int[space.size()];
        for (int v = 0; v < chosen.length; v++) {
            chosen[v] = space.options(v).stream()
                    .map(Choice.Priced::id)
                    .toList()
                    .indexOf(found.options().get(v));
        }
        List<Neighbour> neighbours = new ArrayList<>();
        for (int v = 0; v < chosen.length; v++) {
            for (int step : new int[] {-1, 1}) {
                int option = chosen[v] + step;
                if (option >= 0 && option < space.options(v).size()) {
                    int[] changed = chosen.clone();
                    changed[v] = option;
                    neighbours.add(neighbour(v, option, changed, found));
                }
            }
        }
        return neighbours;
    }

    private Neighbour neighbour(int v, int option, int[] changed, Design found) {
        Design other = design(changed);
        double difference = other.cost() - found.cost();
        String id = space.options(v).get(option).id();
        if (!boxes.neverNarrower(box(changed))) {
            return new Neighbour(v, id, difference, Optional.empty(), "a tube would get narrower toward the producer");
        }
        Optional<Worst> known = boxes.firstFailing(other.plant());
        if (known.isPresent()) {
            return new Neighbour(v, id, difference, known, "");
        }
        if (patience.stop().getAsBoolean()) {
            return new Neighbour(v, id, difference, Optional.empty(), "not looked at: the search was stopped");
        }
        Coverage coverage = covered(other.plant());
        Optional<Worst> fails = coverage.answers().stream()
                .flatMap(a -> a.worst().stream())
                .filter(w -> !w.finding().holds())
                .min(Comparator.comparingDouble(w -> w.finding().margin()));
        return new Neighbour(
                v, id, difference, fails, fails.isPresent() ? "" : coverage.holds() ? "holds too" : "not decided");
    }

    private static long[] box(int[] chosen) {
        long[] box = new long[chosen.length];
        for (int v = 0; v < box.length; v++) {
            box[v] = 1L << chosen[v];
        }
        return box;
    }
}
