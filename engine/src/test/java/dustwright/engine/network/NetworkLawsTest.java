package dustwright.engine.network;

import static dustwright.engine.network.DutyPointSolverTest.solved;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.audit.Audit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Point;
import dustwright.engine.quantity.Length;
import dustwright.engine.tubing.Run;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Laws that hold in every network, over seeds. A failing seed is named in the test's name. */
class NetworkLawsTest {
    private static Stream<DynamicTest> seeds(int count, java.util.function.IntConsumer law) {
        return IntStream.range(0, count)
                .mapToObj(seed -> DynamicTest.dynamicTest("seed " + seed, () -> law.accept(seed)));
    }

    private static int legs(int seed) {
        return 5 + (seed * 37) % 296;
    }

    private static RandomPlants.Case mixed(int seed) {
        return switch (seed % 4) {
            case 0 -> RandomPlants.tree(seed, legs(seed));
            case 1 -> RandomPlants.loops(seed, legs(seed));
            case 2 -> RandomPlants.wyes(seed, legs(seed));
            default -> RandomPlants.wyesInLoops(seed, legs(seed));
        };
    }

    /** The audit checks mass to 1e-10 of the greatest flow at every point, and every law, with code of its own. */
    @TestFactory
    Stream<DynamicTest> two_thousand_trees_and_loops_of_5_to_300_legs_are_solved_and_pass_the_audit() {
        int perTest = 50;
        return seeds(2000 / perTest, block -> {
            for (int seed = block * perTest; seed < (block + 1) * perTest; seed++) {
                RandomPlants.Case random = mixed(seed);
                DutyPoint duty = solved(random.plant(), random.state());
                assertThat(Audit.of(random.plant(), duty))
                        .as("plant of seed " + seed)
                        .isEmpty();
            }
        });
    }

    /** Around streams about to turn, losses of neighbouring junctions answer each other so steeply that taking them in turn never ends. */
    @TestFactory
    Stream<DynamicTest> junction_losses_that_hunt_each_other_settle() {
        return IntStream.of(3143, 9559, 30791, 32375, 45751, 70487, 86167, 90207)
                .mapToObj(seed -> DynamicTest.dynamicTest("seed " + seed, () -> {
                    RandomPlants.Case random = RandomPlants.wyesInLoops(seed, legs(seed));
                    DutyPoint duty = solved(random.plant(), random.state());
                    assertThat(Audit.of(random.plant(), duty)).isEmpty();
                }));
    }

    /** Air only, K ≥ 0, no wyes: a monotone network. */
    @TestFactory
    Stream<DynamicTest> opening_one_more_inlet_raises_the_vacuum_nowhere() {
        return seeds(60, seed -> {
            RandomPlants.Case random = RandomPlants.plain(seed, legs(seed), seed % 2 == 0);
            DutyPoint before = solved(random.plant(), random.state());
            List<String> more = new ArrayList<>(random.state().open());
            random.plant().inlets().stream()
                    .map(inlet -> inlet.id())
                    .filter(id -> !more.contains(id))
                    .findFirst()
                    .ifPresent(more::add);
            DutyPoint after = solved(random.plant(), withOpen(random.state(), more));
            for (int n = 0; n < before.nodes().size(); n++) {
                assertThat(after.nodes().get(n).vacuum().pascals())
                        .as(before.nodes().get(n).id())
                        .isLessThanOrEqualTo(before.nodes().get(n).vacuum().pascals() + 1e-6);
            }
        });
    }

    @TestFactory
    Stream<DynamicTest> the_order_of_the_plant_file_changes_no_byte() {
        return seeds(60, seed -> {
            RandomPlants.Case random = mixed(seed);
            DutyPoint asDrawn = solved(random.plant(), random.state());
            DutyPoint shuffled = solved(shuffled(random.plant(), seed), random.state());
            assertThat(byId(shuffled.legs(), l -> l.kind() + l.id()))
                    .isEqualTo(byId(asDrawn.legs(), l -> l.kind() + l.id()));
            assertThat(byId(shuffled.nodes(), NodeResult::id)).isEqualTo(byId(asDrawn.nodes(), NodeResult::id));
            assertThat(shuffled.stations().get(0)).isEqualTo(asDrawn.stations().get(0));
            assertThat(shuffled.convergence()).isEqualTo(asDrawn.convergence());
        });
    }

    @TestFactory
    Stream<DynamicTest> a_run_drawn_as_two_changes_nothing() {
        return seeds(60, seed -> {
            RandomPlants.Case random = mixed(seed);
            Plant plant = random.plant();
            Run run = plant.runs().get(seed % plant.runs().size());
            DutyPoint whole = solved(plant, random.state());
            DutyPoint halves = solved(split(plant, run), random.state());
            double greatest = whole.legs().stream()
                    .mapToDouble(l -> Math.abs(l.flow().kgPerSecond()))
                    .max()
                    .orElseThrow();
            for (LegResult leg : whole.legs()) {
                LegResult same = leg.id().equals(run.id()) && leg.kind() == LegResult.Kind.RUN
                        ? DutyPointSolverTest.leg(halves, run.id() + "-down")
                        : halves.legs().stream()
                                .filter(l -> l.kind() == leg.kind() && l.id().equals(leg.id()))
                                .findFirst()
                                .orElseThrow();
                assertThat(same.flow().kgPerSecond())
                        .as(leg.id())
                        .isCloseTo(leg.flow().kgPerSecond(), within(1e-9 * greatest));
                assertThat(same.pressureTo().pascals())
                        .as(leg.id())
                        .isCloseTo(leg.pressureTo().pascals(), within(1e-9 * 101_325));
            }
        });
    }

    private static State withOpen(State state, List<String> open) {
        return new State(
                state.name(),
                open,
                state.filter(),
                state.openBleeds(),
                state.ventedStations(),
                state.runningProducers());
    }

    private static <T> Map<String, T> byId(List<T> results, Function<T, String> id) {
        return results.stream().collect(Collectors.toMap(id, r -> r, (a, b) -> a, HashMap::new));
    }

    private static <T> List<T> mix(List<T> list, int seed) {
        List<T> mixed = new ArrayList<>(list);
        Collections.shuffle(mixed, new Random(seed));
        return mixed;
    }

    private static Plant shuffled(Plant p, int seed) {
        return copy(p, mix(p.points(), seed), mix(p.runs(), seed + 1), seed);
    }

    private static Plant copy(Plant p, List<Point> points, List<Run> runs, int seed) {
        return new Plant(
                p.name(),
                p.note(),
                p.site(),
                p.dusts(),
                mix(p.tubes(), seed),
                mix(p.hoses(), seed),
                p.tools(),
                points,
                runs,
                mix(p.inlets(), seed),
                p.bleeds(),
                p.held(),
                p.stations(),
                p.usage(),
                p.requirements(),
                p.overrides(),
                p.assumptions());
    }

    /** The run cut at a third of its length and at a quarter of its K. */
    private static Plant split(Plant plant, Run run) {
        Run.Route.Measured route = (Run.Route.Measured) run.route();
        double length_m = route.length().metres();
        String middle = run.id() + "-middle";
        Run up = new Run(
                run.id() + "-up",
                run.from(),
                middle,
                run.tube(),
                new Run.Route.Measured(new Length(length_m / 3), route.k() / 4),
                List.of(),
                Optional.empty(),
                run.dust());
        Run down = new Run(
                run.id() + "-down",
                middle,
                run.to(),
                run.tube(),
                new Run.Route.Measured(new Length(length_m * 2 / 3), route.k() * 3 / 4),
                List.of(),
                run.wye(),
                run.dust());
        List<Run> runs = new ArrayList<>(plant.runs());
        runs.remove(run);
        runs.add(up);
        runs.add(down);
        List<Point> points = new ArrayList<>(plant.points());
        points.add(new Point(middle, Optional.empty()));
        return copy(plant, points, runs, 0);
    }
}
