package dustwright.engine.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.Study;
import dustwright.engine.conveying.DustClass;
import dustwright.engine.coverage.AskedPlants;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Effort;
import dustwright.engine.coverage.Judging;
import dustwright.engine.coverage.Question;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.network.State;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Requirements;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.sizing.Choice.Priced;
import dustwright.engine.tubing.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The chosen sizes against trying every design in every set of users. */
class SearchTest {
    private static final double[] BORES_m = {0.0348, 0.0475, 0.0602, 0.0729, 0.0983};

    /** Lobe pumps at fixed speed: their power falls with the vacuum, so wide tubes run cheapest. */
    static final class Lobes implements Rules {
        private final int users;
        private final double perWatt;

        Lobes(int users, double perWatt) {
            this.users = users;
            this.perWatt = perWatt;
        }

        @Override
        public Judging judging(Plant plant) {
            // the sketched pump's speed is no part of this
            return duty -> Study.judge(plant, duty).stream()
                    .filter(f -> f.code() != FindingCode.PRODUCER_SPEED)
                    .toList();
        }

        @Override
        public Question question(Plant plant) {
            return new Question(
                    java.util.stream.IntStream.rangeClosed(1, users).boxed().toList(),
                    Map.of(),
                    List.of(
                            AskedPlants.condition(plant, FilterCondition.CLEAN, false),
                            AskedPlants.condition(plant, FilterCondition.DIRTY, false)));
        }

        @Override
        public OptionalDouble running(Plant plant) {
            if (perWatt == 0) {
                return OptionalDouble.empty();
            }
            State one = AskedPlants.condition(plant, FilterCondition.CLEAN, false)
                    .withOpen(List.of(plant.inlets().get(0).id()));
            DutyPoint duty = ((Outcome.Solved<DutyPoint>) DutyPointSolver.solve(plant, one)).value();
            return OptionalDouble.of(perWatt
                    * duty.stations().stream()
                            .flatMap(s -> s.producers().stream())
                            .mapToDouble(p -> p.shaftPower().watts())
                            .sum());
        }

        @Override
        public boolean widestRunsCheapest(Plant plant) {
            return true;
        }
    }

    record Drawn(Plant plant, List<Choice> choices) {}

    /** A small tree: mains in a row with an inlet at each joint, some on drops; every other run open, two or three tubes each. */
    static Drawn drawn(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        PlantSketch sketch = asking(random);
        int joints = 2 + random.nextInt(3);
        List<Choice> choices = new ArrayList<>();
        String below = "REC";
        for (int n = 1; n <= joints; n++) {
            double length_m = 3 + 25 * random.nextDouble();
            sketch.points("J" + n).run("M" + n, "J" + n, below, "T2", length_m, random.nextDouble());
            choices.add(tubes(random, "M" + n, 1));
            sketch.inlet("A" + n, "dust0", 0);
            double drop_m = 1 + 20 * random.nextDouble();
            if (random.nextInt(3) == 0) {
                sketch.branch("D" + n, "A" + n, "J" + n, "T1", drop_m, 0.4, 45);
            } else {
                sketch.run("D" + n, "A" + n, "J" + n, "T1", drop_m, 0.4);
            }
            if (random.nextInt(2) == 0 && choices.size() < 6) {
                choices.add(tubes(random, "D" + n, 0));
            }
            below = "J" + n;
        }
        boolean relief = random.nextInt(2) == 0;
        PlantSketch.StationSketch station = sketch.station("REC").lobe("P", 0.05 + 0.05 * random.nextDouble());
        return new Drawn((relief ? station.relief(9, 11, 0.2) : station).and().plant(), choices);
    }

    private static PlantSketch asking(SplittableRandom random) {
        PlantSketch sketch = new PlantSketch()
                .dust(AskedPlants.dust("dust0", DustClass.DRY_POWDER))
                .asking(new Requirements(
                        Optional.of(new Limit<>(new FreeAirFlow(0.015 + 0.01 * random.nextDouble()), Source.entered())),
                        Optional.empty(),
                        new Limit<>(new Ratio(1), Source.entered()),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Limit<>(new Velocity(60), Source.entered())),
                        Optional.empty(),
                        Optional.empty()));
        for (int n = 0; n < BORES_m.length; n++) {
            sketch.tube("T" + n, BORES_m[n], 4.5e-5);
        }
        return sketch;
    }

    /** A ring of three mains with an inlet at each corner: no order to bound by. */
    private static Drawn ring(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        PlantSketch sketch = asking(random);
        List<Choice> choices = new ArrayList<>();
        String[] corners = {"REC", "J1", "J2"};
        sketch.points("J1", "J2");
        for (int n = 0; n < corners.length; n++) {
            sketch.run("M" + n, corners[n], corners[(n + 1) % corners.length], "T2", 5 + 20 * random.nextDouble(), 0.3);
            choices.add(tubes(random, "M" + n, 0));
        }
        for (int n = 1; n < corners.length; n++) {
            sketch.inlet("A" + n, "dust0", 0).run("D" + n, "A" + n, "J" + n, "T1", 2, 0.4);
        }
        return new Drawn(sketch.station("REC").lobe("P", 0.08).and().plant(), choices);
    }

    @Test
    void in_a_ring_designs_are_tried_one_by_one_and_the_cheapest_is_found_too() {
        int solvable = 0;
        for (int seed = 0; seed < 6; seed++) {
            Drawn drawn = ring(seed);
            Rules rules = new Lobes(1, 0);
            Sizing sizing = Search.of(drawn.plant(), drawn.choices(), rules, Patience.endless());
            double least = leastByTrying(drawn, rules);
            assertThat(sizing.basis().tree()).isFalse();
            if (Double.isFinite(least)) {
                solvable++;
                assertThat(sizing.best().orElseThrow().cost()).isCloseTo(least, within(1e-9 * least));
            } else {
                assertThat(sizing.best()).isEmpty();
            }
        }
        assertThat(solvable).isPositive();
    }

    @Test
    void a_search_that_is_stopped_says_so_and_names_no_gap_it_has_not_shown() {
        Drawn drawn = drawn(18);
        int[] asked = {0};
        Patience short_ = new Patience(0, 1, 1_000_000, () -> ++asked[0] > 40, words -> {}, List.of(), List.of());
        Sizing sizing = Search.of(drawn.plant(), drawn.choices(), new Lobes(2, 0), short_);
        Sizing whole = Search.of(drawn.plant(), drawn.choices(), new Lobes(2, 0), Patience.endless());
        assertThat(sizing.stopped()).isNotEmpty();
        assertThat(sizing.bound())
                .isLessThanOrEqualTo(whole.best().orElseThrow().cost() * (1 + 1e-12));
    }

    /** Two halls with a station each, no tubing between: two inlets on a row of mains in either. */
    private static Drawn halls(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        PlantSketch sketch = asking(random);
        List<Choice> choices = new ArrayList<>();
        for (String hall : List.of("E", "W")) {
            String below = "REC" + hall;
            for (int n = 1; n <= 2; n++) {
                String at = "J" + hall + n;
                sketch.points(at)
                        .run("M" + hall + n, at, below, "T2", 3 + 25 * random.nextDouble(), random.nextDouble());
                choices.add(tubes(random, "M" + hall + n, 1));
                sketch.inlet("A" + hall + n, "dust0", 0)
                        .run("D" + hall + n, "A" + hall + n, at, "T1", 1 + 20 * random.nextDouble(), 0.4);
                below = at;
            }
            sketch.station("REC" + hall)
                    .lobe("P" + hall, 0.05 + 0.05 * random.nextDouble())
                    .relief(9, 11, 0.2)
                    .and();
        }
        return new Drawn(sketch.plant(), choices);
    }

    @Test
    void halls_that_share_no_air_are_sized_each_by_itself_and_the_whole_is_the_cheapest_and_has_its_certificate() {
        int solvable = 0;
        for (int seed = 0; seed < 8; seed++) {
            Drawn drawn = halls(seed);
            Rules rules = new Lobes(3, 0);
            Sizing sizing = Search.of(drawn.plant(), drawn.choices(), rules, Patience.endless());
            double least = leastByTrying(drawn, rules);
            assertThat(sizing.basis().pieces()).isEqualTo(2);
            assertThat(Double.isFinite(least))
                    .as("seed " + seed)
                    .isEqualTo(sizing.best().isPresent());
            if (sizing.best().isPresent()) {
                solvable++;
                assertThat(sizing.best().get().cost()).as("seed " + seed).isCloseTo(least, within(1e-9 * least));
                Coverage certificate = sizing.coverage().orElseThrow();
                assertThat(certificate.holds()).isTrue();
                Coverage whole = Coverage.of(
                        sizing.best().get().plant(),
                        rules.question(sizing.best().get().plant()),
                        rules.judging(sizing.best().get().plant()),
                        Effort.alone());
                assertThat(certificate.answers()).hasSameSizeAs(whole.answers());
                for (int n = 0; n < whole.answers().size(); n++) {
                    assertThat(certificate.answers().get(n).users())
                            .isEqualTo(whole.answers().get(n).users());
                    assertThat(certificate
                                    .answers()
                                    .get(n)
                                    .least()
                                    .orElseThrow()
                                    .finding()
                                    .margin())
                            .isCloseTo(
                                    whole.answers()
                                            .get(n)
                                            .least()
                                            .orElseThrow()
                                            .finding()
                                            .margin(),
                                    within(1e-9));
                }
            }
        }
        assertThat(solvable).isPositive();
    }

    @Test
    void where_no_design_holds_the_states_that_exclude_each_other_are_named_and_no_design_misses_less_than_is_said() {
        int told = 0;
        for (int seed = 0; seed < 50 && told < 4; seed++) {
            Drawn drawn = drawn(seed);
            Rules rules = new Lobes(2, 0);
            Sizing sizing = Search.of(drawn.plant(), drawn.choices(), rules, Patience.endless());
            if (sizing.best().isEmpty()) {
                Deadlock deadlock = sizing.deadlock().orElseThrow();
                double leastMiss = leastMissByTrying(drawn, rules);
                if (deadlock.nearest().isPresent()) {
                    told++;
                    assertThat(deadlock.nearest().get().least())
                            .as("seed " + seed)
                            .isLessThanOrEqualTo(leastMiss + 1e-9);
                    assertThat(deadlock.nearest().get().miss())
                            .as("seed " + seed)
                            .isGreaterThanOrEqualTo(leastMiss - 1e-9);
                }
                deadlock.clash().forEach(one -> assertThat(one.best().open()).isNotEmpty());
            }
        }
        assertThat(told).isPositive();
    }

    /** Every design that does not get narrower, each in every set: the least of their worst misses. */
    private static double leastMissByTrying(Drawn drawn, Rules rules) {
        Space space = new Space(drawn.plant(), drawn.choices());
        Tubing tubing = new Tubing(drawn.plant());
        int[] design = new int[space.size()];
        double least = Double.POSITIVE_INFINITY;
        do {
            Plant sized = space.with(space.fit(design));
            if (neverNarrower(tubing, sized)) {
                Coverage coverage = Coverage.of(
                        sized,
                        rules.question(sized),
                        rules.judging(sized),
                        new Effort(1, 1_000_000, 0, true, false, () -> false, share -> {}, List.of()));
                double miss = -coverage.answers().stream()
                        .mapToDouble(a -> a.least().orElseThrow().finding().margin())
                        .min()
                        .orElseThrow();
                least = Math.min(least, miss);
            }
        } while (next(design, space));
        return least;
    }

    @Test
    void a_bound_with_what_hardly_matters_left_favourable_refutes_no_box_that_the_whole_bound_keeps() {
        int refuted = 0;
        int looser = 0;
        for (int seed = 0; seed < 12; seed++) {
            Drawn drawn = drawn(seed);
            Rules rules = new Lobes(2, 0);
            Space space = new Space(drawn.plant(), drawn.choices());
            Bounds bounds = new Bounds(space, new Tubing(drawn.plant()), rules);
            SplittableRandom random = new SplittableRandom(seed);
            List<String> open =
                    drawn.plant().inlets().stream().map(i -> i.id()).limit(2).toList();
            State state = rules.question(drawn.plant()).conditions().get(0).withOpen(open);
            Counterexample example =
                    new Counterexample(0, FindingCode.TOOL_FLOW, new Place(Place.Kind.INLET, open.get(0)), state);
            for (int n = 0; n < 20; n++) {
                long[] box = space.all();
                for (int v = 0; v < box.length; v++) {
                    box[v] &= 1 + random.nextLong(box[v]);
                    box[v] = box[v] == 0 ? 1 : box[v];
                }
                double exact = bounds.margin(example, box);
                double loose = bounds.margin(example, bounds.influence(example).loosened(box));
                double asked = exact + 0.02 * (random.nextDouble() - 0.5);
                assertThat(loose).as("seed " + seed).isGreaterThanOrEqualTo(exact - 1e-9);
                if (!bounds.mayHold(example, box, asked)) {
                    refuted++;
                    assertThat(exact).as("seed " + seed).isLessThan(asked);
                }
                looser += loose > exact + 1e-9 ? 1 : 0;
            }
        }
        assertThat(refuted).isPositive();
        assertThat(looser).isPositive();
    }

    @Test
    void sets_that_another_search_learnt_change_no_answer() {
        Drawn drawn = drawn(7);
        Rules rules = new Lobes(2, 0);
        Sizing first = Search.of(drawn.plant(), drawn.choices(), rules, Patience.endless());
        Sizing again = Search.of(
                drawn.plant(), drawn.choices(), rules, Patience.endless().asking(first.learnt()));
        assertThat(again.best().map(Design::options)).isEqualTo(first.best().map(Design::options));
        assertThat(again.bound()).isEqualTo(first.bound());
        assertThat(again.effort().proofs()).isLessThanOrEqualTo(first.effort().proofs());
    }

    private static Choice tubes(SplittableRandom random, String run, int from) {
        List<Priced> options = new ArrayList<>();
        int count = 2 + random.nextInt(2);
        for (int n = from; n < Math.min(from + count, BORES_m.length); n++) {
            options.add(new Priced("T" + n, 20 + 900 * BORES_m[n] + 5 * random.nextDouble()));
        }
        return new Choice.Tubes(run, List.of(run), options);
    }

    /** Every design, each in every set: the least cost of those that hold everywhere. */
    static double leastByTrying(Drawn drawn, Rules rules) {
        Space space = new Space(drawn.plant(), drawn.choices());
        Tubing tubing = new Tubing(drawn.plant());
        int[] design = new int[space.size()];
        double least = Double.POSITIVE_INFINITY;
        do {
            double cost = 0;
            for (int v = 0; v < design.length; v++) {
                cost += space.cost(v, design[v]);
            }
            Plant sized = space.with(space.fit(design));
            if (cost < least && (!tubing.isTree() || neverNarrower(tubing, sized))) {
                cost += rules.running(sized).orElse(0);
                if (cost < least && holdsEverywhere(sized, rules)) {
                    least = cost;
                }
            }
        } while (next(design, space));
        return least;
    }

    private static boolean neverNarrower(Tubing tubing, Plant plant) {
        for (int n = 0; n < plant.runs().size(); n++) {
            if (tubing.next(n) != Tubing.NONE && bore(plant, n) > bore(plant, tubing.next(n)) + 1e-12) {
                return false;
            }
        }
        return true;
    }

    private static double bore(Plant plant, int run) {
        Run at = plant.runs().get(run);
        return plant.tube(at.tube()).bore().metres();
    }

    private static boolean next(int[] design, Space space) {
        for (int v = 0; v < design.length; v++) {
            if (++design[v] < space.options(v).size()) {
                return true;
            }
            design[v] = 0;
        }
        return false;
    }

    static boolean holdsEverywhere(Plant plant, Rules rules) {
        Question question = rules.question(plant);
        int inlets = plant.inlets().size();
        for (int set = 1; set < 1 << inlets; set++) {
            if (!question.users().contains(Integer.bitCount(set))) {
                continue;
            }
            List<String> open = new ArrayList<>();
            for (int n = 0; n < inlets; n++) {
                if ((set >> n & 1) == 1) {
                    open.add(plant.inlets().get(n).id());
                }
            }
            for (State condition : question.conditions()) {
                Outcome<DutyPoint> duty = DutyPointSolver.solve(plant, condition.withOpen(open));
                if (!(duty instanceof Outcome.Solved<DutyPoint> solved)
                        || !rules.judging(plant).of(solved.value()).stream().allMatch(Finding::holds)) {
                    return false;
                }
            }
        }
        return true;
    }

    @Test
    void fifty_small_plants_get_the_very_design_that_trying_all_of_them_finds() {
        int solvable = 0;
        for (int seed = 0; seed < 50; seed++) {
            Drawn drawn = drawn(seed);
            Rules rules = new Lobes(2, seed % 3 == 0 ? 0.4 : 0);
            Sizing sizing = Search.of(drawn.plant(), drawn.choices(), rules, Patience.endless());
            double least = leastByTrying(drawn, rules);
            assertThat(sizing.undecided()).as("seed " + seed).isEmpty();
            if (!sizing.basis().wyes()) {
                assertThat(sizing.basis().proven()).isTrue();
                assertThat(sizing.basis().departure()).as("seed " + seed).isZero();
            }
            if (Double.isInfinite(least)) {
                assertThat(sizing.best()).as("seed " + seed).isEmpty();
            } else {
                solvable++;
                assertThat(sizing.best().orElseThrow().cost())
                        .as("seed " + seed)
                        .isCloseTo(least, within(1e-9 * least));
                assertThat(sizing.gap().orElseThrow()).isLessThan(1e-12);
                assertThat(sizing.runnersUp()).allSatisfy(next -> {
                    assertThat(next.cost()).isGreaterThanOrEqualTo(least * (1 - 1e-9));
                    assertThat(holdsEverywhere(next.plant(), rules)).isTrue();
                });
                assertThat(sizing.coverage().orElseThrow().holds()).isTrue();
            }
        }
        assertThat(solvable).isBetween(12, 48);
    }
}
