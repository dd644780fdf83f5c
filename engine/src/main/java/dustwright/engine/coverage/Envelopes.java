package dustwright.engine.coverage;

import dustwright.engine.coverage.Frame.Elsewhere;
import dustwright.engine.finding.Outcome;
import dustwright.engine.network.Network;
import dustwright.engine.network.State;
import dustwright.engine.network.TubingTree;
import dustwright.engine.network.TubingTree.Draw;
import dustwright.engine.plant.Plant;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The envelopes of a plant whose tubing is one tree per station: swept once from the inlets, then once per condition from the receivers. */
final class Envelopes {
    /** Intervals of the first sweep, and of that for one number of users whose margins the first does not decide. */
    static final int INTERVALS = 512;

    static final int FINE_INTERVALS = 1024;
    /** Ways of feeding that are told apart. */
    private static final int MOST_FEEDS = 4;

    private final Plant plant;
    private final Question question;
    private final Counters counters;
    private final List<Inside> insides;
    private final Watch watch;

    /**
     * Extremes of one condition.
     *
     * @param objection why they may not be relied on
     * @param objected number of the tree where that is so
     */
    record Found(List<Extreme> extremes, Objection objection, int objected) {}

    private Envelopes(Plant plant, Question question, Counters counters, List<Inside> insides, Watch watch) {
        this.plant = plant;
        this.question = question;
        this.counters = counters;
        this.insides = insides;
        this.watch = watch;
    }

    /** Inlets whose users pick up dust that slows the air or counts against a loading ratio. */
    static Set<String> feeding(Plant plant, State condition) {
        boolean loads = plant.requirements().loadingRatio().isPresent();
        return plant.inlets().stream()
                .filter(inlet -> condition.feeding().contains(inlet.id()))
                .filter(inlet -> inlet.feed().kgPerSecond() > 0)
                .filter(inlet -> inlet.dust().map(plant::dust).stream()
                        .anyMatch(dust -> loads || dust.particle().isPresent()))
                .map(Inlet::id)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * Sweeps from the inlets for conditions that differ in filter and producers only; or why that does not serve this plant, in words
     * that follow "because".
     */
    static Outcome<Envelopes> of(
            Plant plant,
            Network network,
            Question question,
            List<State> conditions,
            int intervals,
            Box box,
            Watch watch) {
        Outcome<List<TubingTree>> forest = TubingTree.forest(network, conditions.get(0));
        if (forest instanceof Outcome.NotSolved<List<TubingTree>> none) {
            return new Outcome.NotSolved<>(none.why());
        }
        List<TubingTree> trees = ((Outcome.Solved<List<TubingTree>>) forest).value();
        Counters counters = counters(plant, question, conditions.get(0), box);
        if (counters.freeFeeds(box) > MOST_FEEDS) {
            return new Outcome.NotSolved<>("its inlets feed in " + counters.freeFeeds(box) + " different ways");
        }
        watch.expect(trees.stream().mapToInt(TubingTree::size).sum());
        List<Inside> insides = new ArrayList<>();
        for (TubingTree tree : trees) {
            double greatest = 0;
            for (State condition : conditions) {
                Outcome<Draw> draw = tree.draw(condition);
                if (draw instanceof Outcome.NotSolved<Draw> none) {
                    return new Outcome.NotSolved<>(none.why());
                }
                greatest =
                        Math.max(greatest, ((Outcome.Solved<Draw>) draw).value().greatest());
            }
            Grid grid = new Grid(intervals, greatest, tree.ambientSquared());
            Inside inside = new Inside(tree, grid, counters, box, watch);
            inside.sweep();
            insides.add(inside);
        }
        return new Outcome.Solved<>(new Envelopes(plant, question, counters, insides, watch));
    }

    private static Counters counters(Plant plant, Question question, State condition, Box box) {
        int most = question.users().get(question.users().size() - 1);
        return new Counters(plant, question.atMost(), most, feeding(plant, condition), box);
    }

    /** Where a plant of trees has inlets that feed in too many ways: one that feeds as the fewest others do. */
    static OptionalInt tooManyFeeds(Plant plant, Network network, Question question, State condition, Box box) {
        Counters counters = counters(plant, question, condition, box);
        boolean trees = TubingTree.forest(network, condition).match(f -> true, why -> false);
        return trees && counters.freeFeeds(box) > MOST_FEEDS
                ? OptionalInt.of(counters.rarestFeed(box))
                : OptionalInt.empty();
    }

    /** Inlets on a branch of a tree, nearest to its root first. */
    IntStream inletsBelow(int tree, int node) {
        return insides.get(tree).tree.inletsBelow(node);
    }

    private Outside outside(int tree, Draw draw, boolean traced) {
        return new Outside(
                insides.get(tree),
                draw,
                elsewhere(tree),
                new Limits(plant, counters),
                question.users().stream().mapToInt(u -> u).toArray(),
                traced,
                watch);
    }

    /** Bounds that no kink of the station's curve blurs; those found with them where that does not help. */
    private List<Extreme> withoutKinks(int tree, Draw draw, double[] range, List<Extreme> found) {
        Kinks kinks = new Kinks(draw, range[0], range[1]);
        if (kinks.pieces() == 1 || !kinks.hold()) {
            return found;
        }
        List<List<Extreme>> pieces = new ArrayList<>();
        for (int piece = 0; piece < kinks.pieces(); piece++) {
            Outside outside = outside(tree, draw, false);
            outside.receiver();
            pieces.add(outside.sweep(kinks.from(piece), kinks.to(piece)));
        }
        return kinks.bounded(found, pieces);
    }

    /**
     * Sweeps back from the receivers in one condition.
     *
     * @param kinkless whether kinks of the stations' curves are kept out of the bounds, which takes two or three more sweeps
     */
    Found extremes(State condition, boolean kinkless) {
        List<Extreme> extremes = new ArrayList<>();
        Objection objection = Objection.NONE;
        int objected = 0;
        watch.expect(insides.stream().mapToInt(i -> i.tree.size()).sum());
        for (int n = 0; n < insides.size(); n++) {
            Inside inside = insides.get(n);
            Draw draw = inside.tree.draw(condition).match(d -> d, why -> {
                throw new IllegalStateException(why);
            });
            Outside outside = outside(n, draw, true);
            double[] range = outside.receiver();
            List<Extreme> found = outside.sweep(range[0], range[1]);
            if (!objection.any() && outside.objection().any()) {
                objection = outside.objection();
                objected = n;
            }
            extremes.addAll(kinkless ? withoutKinks(n, draw, range, found) : found);
        }
        return new Found(extremes, objection, objected);
    }

    /** What other trees may have open: it counts, though it draws from another station. */
    private Elsewhere elsewhere(int tree) {
        List<int[]> counts = List.of(counters.none());
        List<List<Integer>> open = List.of(List.of());
        for (int other = 0; other < insides.size(); other++) {
            if (other != tree) {
                Inside inside = insides.get(other);
                List<int[]> there = inside.at(0).junction().counts();
                Mix mix = Mix.of(counts, there, counters::sum);
                List<List<Integer>> sets = new ArrayList<>();
                for (int t = 0; t < mix.size(); t++) {
                    List<Integer> set = new ArrayList<>(open.get(mix.left(t)[0]));
                    inside.trace(
                            0, inside.at(0), mix.right(t)[0], inside.grid.place(inside.grid.intervals / 2), true, set);
                    sets.add(set);
                }
                counts = mix.counts();
                open = sets;
            }
        }
        int[] zonesHere = insides.get(tree).zonesBelow(0);
        TreeMap<int[], List<Integer>> reduced = new TreeMap<>(Mix.ORDER);
        for (int n = 0; n < open.size(); n++) {
            reduced.putIfAbsent(counters.outside(counts.get(n), zonesHere), open.get(n));
        }
        return new Elsewhere(List.copyOf(reduced.keySet()), List.copyOf(reduced.values()));
    }
}
