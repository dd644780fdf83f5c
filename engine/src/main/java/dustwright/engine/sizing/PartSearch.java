package dustwright.engine.sizing;

import dustwright.engine.coverage.Coverage;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.sizing.Parts.Part;
import dustwright.engine.sizing.Sizing.Spent;
import dustwright.engine.sizing.Trials.Failing;
import dustwright.engine.sizing.Trials.Tried;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.Supplier;

/**
 * The cheapest covered design of one piece of a plant, by boxes of designs, cheapest bound first (equations SIZ-1 to SIZ-3). A box is cut
 * by what earlier designs failed in; a single design is tried; what that shows is learnt. The first design taken from the queue that is
 * covered is the cheapest.
 */
final class PartSearch {
    /** Designs tried, each the cheapest the counterexamples leave, to have one that holds early. */
    private static final int DIVES = 80;

    private static final int DIVE_BOXES = 400;
    private static final int DIVES_EVERY = 64;
    /** Places a failed design may teach of, for each kind of requirement. */
    private static final int LESSONS = 3;
    /** Designs kept beside the best, and what may be spent on them. */
    private static final int RUNNERS_UP = 2;

    private static final int RUNNER_UP_BOXES = 200;
    private static final int RUNNER_UP_PROOFS = 3;
    private static final double SAME = 1e-12;

    private final Patience patience;
    private final Space space;
    private final Tubing tubing;
    private final Bounds bounds;
    private Boxes boxes;
    private final Prices prices;
    private final Trials trials;
    private final Set<List<Integer>> tried = new LinkedHashSet<>();
    private final List<Design> undecided = new ArrayList<>();
    private final List<Found> found = new ArrayList<>();
    private final PriorityQueue<Box> queue =
            new PriorityQueue<>(Comparator.comparingDouble(Box::cost).thenComparing(Box::newestFirst));
    private long looked;
    private long numbers;
    private double floor;
    private String stopped = "";

    /** A covered design and its certificate. */
    record Found(Design design, Coverage coverage) {
        double cost() {
            return design.cost();
        }
    }

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

    PartSearch(Part part, List<Choice> choices, Rules rules, Patience patience) {
        this.patience = patience;
        space = new Space(part.plant(), choices);
        tubing = new Tubing(part.plant());
        bounds = new Bounds(space, tubing, rules);
        boxes = new Boxes(space, tubing, bounds, patience.stop());
        prices = new Prices(space, tubing, rules);
        trials = new Trials(part, rules, patience);
    }

    Space space() {
        return space;
    }

    Tubing tubing() {
        return tubing;
    }

    Bounds bounds() {
        return bounds;
    }

    Boxes boxes() {
        return boxes;
    }

    Prices prices() {
        return prices;
    }

    Trials trials() {
        return trials;
    }

    /** Designs tried, in the order they were. */
    List<int[]> triedDesigns() {
        return tried.stream().map(d -> d.stream().mapToInt(n -> n).toArray()).toList();
    }

    String stopped() {
        return stopped;
    }

    List<Design> undecided() {
        return List.copyOf(undecided);
    }

    /** Covered designs found, cheapest first. */
    List<Found> found() {
        return List.copyOf(found);
    }

    /** No covered design costs less. */
    double bound() {
        return Math.min(floor, best().map(Found::cost).orElse(Double.POSITIVE_INFINITY));
    }

    Optional<Found> best() {
        return found.stream().findFirst();
    }

    private double bestCost() {
        return best().map(Found::cost).orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * A covered design, not yet the cheapest.
     *
     * @param begun one that may be, as ids of options; empty where none is known
     */
    void begin(List<String> begun) {
        push(boxes.all());
        floor = queue.isEmpty() ? Double.POSITIVE_INFINITY : queue.peek().cost;
        if (!begun.isEmpty()) {
            int[] chosen = space.numbers(begun);
            if (Arrays.stream(chosen).allMatch(n -> n >= 0) && boxes.neverNarrower(Boxes.of(chosen))) {
                tryOut(chosen, () -> prices.design(chosen));
            }
        }
        if (found.isEmpty()) {
            dives(boxes.all());
        }
    }

    /** Down to the asked gap. */
    void finish() {
        stopped = go(Long.MAX_VALUE);
        if (stopped.isEmpty() && best().isPresent()) {
            double shown = floor;
            runnersUp();
            floor = Math.max(shown, Math.min(floor, bestCost()));
        }
    }

    /** The same with so many boxes at most; a search that ends for that has a lower bound and is not stopped. */
    void finish(long mostBoxes) {
        String why = go(mostBoxes);
        stopped = patience.stop().getAsBoolean() ? why : stopped;
    }

    /** Widens every bound and begins with all designs again; what was tried and learnt stays. */
    void widen(double pad) {
        boxes = boxes.missing(pad);
        queue.clear();
        push(boxes.all());
        floor = queue.isEmpty() ? Double.POSITIVE_INFINITY : queue.peek().cost;
    }

    /** What this search took. */
    Spent spent() {
        return new Spent(looked, bounds.solved() + trials.solved(), trials.proofs(), boxes.learnt());
    }

    private String go(long mostBoxes) {
        long last = looked > Long.MAX_VALUE - mostBoxes ? Long.MAX_VALUE : looked + mostBoxes;
        while (!queue.isEmpty()) {
            Box box = queue.peek();
            floor = Math.min(box.cost, leastUndecided());
            if (floor >= bestCost() * (1 - patience.gap())) {
                return "";
            }
            if (patience.stop().getAsBoolean()) {
                return "stopped before every cheaper design was refuted";
            }
            if (looked >= last) {
                return "";
            }
            queue.poll();
            looked++;
            tell();
            if (found.isEmpty() && looked % DIVES_EVERY == 0) {
                dives(box.options);
            }
            expand(box);
        }
        floor = leastUndecided();
        return "";
    }

    /** Goes on a little for the next cheapest. */
    private void runnersUp() {
        long boxesBefore = looked;
        long proofsBefore = trials.proofs();
        while (!queue.isEmpty()
                && found.size() <= RUNNERS_UP
                && looked - boxesBefore < RUNNER_UP_BOXES
                && trials.proofs() - proofsBefore < RUNNER_UP_PROOFS
                && !patience.stop().getAsBoolean()) {
            Box box = queue.poll();
            looked++;
            tell();
            expand(box);
        }
        floor = Math.min(queue.isEmpty() ? Double.POSITIVE_INFINITY : queue.peek().cost, leastUndecided());
    }

    private double leastUndecided() {
        return undecided.stream().mapToDouble(Design::cost).min().orElse(Double.POSITIVE_INFINITY);
    }

    private void tell() {
        patience.told()
                .accept(looked + " boxes of designs, " + trials.proofs() + " proofs, "
                        + best().map(b -> "cheapest " + Math.round(b.cost()) + ", ")
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
        double cost = prices.bound(options);
        if (cost > box.cost * (1 + SAME)) {
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
        queue.add(new Box(options, prices.bound(options), numbers++));
    }

    /** A single design waits for its turn by its full cost, then is decided. */
    private void decide(long[] options, double bound) {
        int[] chosen = Boxes.design(options);
        Design design = prices.design(chosen);
        if (design.cost() > bound * (1 + SAME)) {
            queue.add(new Box(options, design.cost(), numbers++));
        } else {
            tryOut(chosen, () -> design);
        }
    }

    /** Whether a design is covered; what it fails in is learnt. Its price is asked only where it is not refuted: energy takes states of its own. */
    private boolean tryOut(int[] chosen, Supplier<Design> priced) {
        if (!tried.add(Arrays.stream(chosen).boxed().toList()) || boxes.refuted(chosen)) {
            return false;
        }
        Tried outcome = trials.tried(space.with(space.fit(chosen)));
        if (outcome.holds()) {
            found.add(new Found(priced.get(), outcome.coverage().orElseThrow()));
            found.sort(Comparator.comparingDouble(Found::cost));
            return true;
        }
        if (outcome.failing().isEmpty()) {
            undecided.add(priced.get());
        }
        learn(outcome.failing());
        return false;
    }

    /** Takes up states in which a design fails worst, a few of each kind of requirement. */
    void learn(List<Failing> failing) {
        Map<FindingCode, Integer> taught = new EnumMap<>(FindingCode.class);
        Set<Place> places = new HashSet<>();
        for (Failing one : failing) {
            FindingCode code = one.worst().finding().code();
            Place where = one.worst().finding().where();
            if (taught.getOrDefault(code, 0) < LESSONS && places.add(where)) {
                taught.merge(code, 1, Integer::sum);
                boxes.learn(new Counterexample(
                        boxes.learnt(), code, where, one.state().withRunning(Set.of())));
            }
        }
    }

    private void split(long[] options) {
        int v = prices.widestSpread(options);
        long cheap = 0;
        int half = Long.bitCount(options[v]) / 2;
        List<Integer> byCost = prices.byCost(options, v);
        for (int n = 0; n < half; n++) {
            cheap |= 1L << byCost.get(n);
        }
        long[] one = options.clone();
        one[v] = cheap;
        long[] other = options.clone();
        other[v] = options[v] & ~cheap;
        push(other);
        push(one);
    }

    // ---- an early design

    private void dives(long[] from) {
        for (int n = 0; n < DIVES && !patience.stop().getAsBoolean(); n++) {
            Optional<int[]> cheapest = cheapestLeft(boxes, from.clone(), new int[] {DIVE_BOXES});
            tell();
            if (cheapest.isEmpty() || tryOut(cheapest.get(), () -> prices.design(cheapest.get()))) {
                return;
            }
        }
    }

    /** A design that no counterexample refutes, cheap ones first; empty where none was met. */
    Optional<int[]> cheapestLeft(Boxes by, long[] options, int[] left) {
        if (left[0]-- <= 0 || patience.stop().getAsBoolean() || !by.cut(options)) {
            return Optional.empty();
        }
        if (Boxes.single(options)) {
            int[] chosen = Boxes.design(options);
            return tried.contains(Arrays.stream(chosen).boxed().toList()) ? Optional.empty() : Optional.of(chosen);
        }
        int v = prices.widestSpread(options);
        for (int option : prices.byCost(options, v)) {
            long[] sub = options.clone();
            sub[v] = 1L << option;
            Optional<int[]> chosen = cheapestLeft(by, sub, left);
            if (chosen.isPresent()) {
                return chosen;
            }
        }
        return Optional.empty();
    }
}
