package dustwright.engine.network;

import static dustwright.engine.network.DutyPointSolverTest.leg;
import static dustwright.engine.network.DutyPointSolverTest.solved;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.audit.Audit;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.LeakCoefficient;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.tubing.Inlet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What holds in every network that carries dust, over seeds. A failing seed is named in the test's name. */
class DustLawsTest {
    private static final double ROUNDING = 1e-9;

    private static Stream<DynamicTest> seeds(int count, IntConsumer law) {
        return IntStream.range(0, count)
                .mapToObj(seed -> DynamicTest.dynamicTest("seed " + seed, () -> law.accept(seed)));
    }

    private static int legs(int seed) {
        return 5 + (seed * 37) % 296;
    }

    /** Half of the legs that lift are too slow for their dust in these plants: that is solved, named and clean all the same. */
    @TestFactory
    Stream<DynamicTest> four_hundred_trees_with_and_without_wyes_are_solved_and_pass_the_audit() {
        int perTest = 25;
        return seeds(400 / perTest, block -> {
            for (int seed = block * perTest; seed < (block + 1) * perTest; seed++) {
                RandomPlants.Case clean =
                        seed % 2 == 0 ? RandomPlants.tree(seed, legs(seed)) : RandomPlants.wyes(seed, legs(seed));
                RandomPlants.Case random = DustyPlants.of(clean, seed);
                DutyPoint duty = solved(random.plant(), random.state());
                assertThat(Audit.of(random.plant(), duty))
                        .as("plant of seed " + seed)
                        .isEmpty();
            }
        });
    }

    /** In loops all dusts part at once, and each moves the air of the others. The second row was not settled while each was mixed by itself. */
    @TestFactory
    Stream<DynamicTest> three_hundred_loops_with_and_without_wyes_are_solved_and_pass_the_audit() {
        int perTest = 25;
        IntStream seeds = IntStream.concat(
                IntStream.range(0, 300),
                IntStream.of(223, 269, 447, 495, 543, 593, 637, 867, 915).map(seed -> -seed));
        int[] all = seeds.toArray();
        return seeds((all.length + perTest - 1) / perTest, block -> {
            for (int n = block * perTest; n < Math.min(all.length, (block + 1) * perTest); n++) {
                int seed = Math.abs(all[n]);
                boolean wyes = all[n] < 0 ? seed % 4 == 3 : seed % 2 == 1;
                RandomPlants.Case clean =
                        wyes ? RandomPlants.wyesInLoops(seed, legs(seed)) : RandomPlants.loops(seed, legs(seed));
                RandomPlants.Case random = DustyPlants.of(clean, seed);
                DutyPoint duty = solved(random.plant(), random.state());
                assertThat(Audit.of(random.plant(), duty))
                        .as("plant of seed " + seed)
                        .isEmpty();
            }
        });
    }

    /** As much dust reaches the receivers as is fed, in loops too: the network has no other way out for it. */
    @TestFactory
    Stream<DynamicTest> all_dust_fed_reaches_the_receiver() {
        return seeds(100, seed -> {
            boolean loops = seed % 2 == 1;
            RandomPlants.Case random = moderate(RandomPlants.plain(seed, 5 + seed, loops), seed);
            DutyPoint duty = solved(random.plant(), random.state());
            double fed = duty.state().open().stream()
                    .filter(duty.state().feeding()::contains)
                    .mapToDouble(id -> random.plant().inlet(id).feed().kgPerSecond())
                    .sum();
            double arrived = 0;
            for (LegResult leg : duty.legs()) {
                double sign = leg.flow().kgPerSecond() >= 0 ? 1 : -1;
                arrived += leg.to().equals("REC") ? sign * leg.dust().kgPerSecond() : 0;
                arrived -= leg.from().equals("REC") ? sign * leg.dust().kgPerSecond() : 0;
            }
            assertThat(arrived).isCloseTo(fed, within(1e-12 * Math.max(fed, 1)));
        });
    }

    @TestFactory
    Stream<DynamicTest> no_feed_is_air_alone_to_the_last_digit() {
        return seeds(60, seed -> {
            RandomPlants.Case random = DustyPlants.of(RandomPlants.wyesInLoops(seed, legs(seed) / 3 + 5), seed);
            State silent = random.state().withFeeding(Set.of());
            DutyPoint air = solved(random.plant(), silent);
            Plant unfed = DustyPlants.withFeeds(random.plant(), 0);
            DutyPoint fedNothing = solved(unfed, random.state());
            assertThat(fedNothing.legs()).isEqualTo(air.legs());
            assertThat(fedNothing.nodes()).isEqualTo(air.nodes());
            assertThat(fedNothing.stations()).isEqualTo(air.stations());
            assertThat(fedNothing.convergence()).isEqualTo(air.convergence());
        });
    }

    /** One user, one pump at one speed. */
    @TestFactory
    Stream<DynamicTest> more_feed_never_raises_a_velocity_on_the_way_of_the_dust() {
        return seeds(100, seed -> {
            RandomPlants.Case random = moderate(RandomPlants.plain(seed, legs(seed) / 4 + 5, false), seed);
            String user = random.plant()
                    .inlets()
                    .get(seed % random.plant().inlets().size())
                    .id();
            State alone = random.state().withOpen(List.of(user)).withFeeding(Set.of(user));
            DutyPoint less = solved(random.plant(), alone);
            for (double factor : new double[] {1.3, 2, 4}) {
                DutyPoint more = solved(DustyPlants.withFeeds(random.plant(), factor), alone);
                for (LegResult leg : less.legs()) {
                    if (leg.dust().kgPerSecond() > 0) {
                        double slower = same(more, leg).slowest().metresPerSecond();
                        assertThat(slower)
                                .as(leg.id() + " at " + factor + " times the feed")
                                .isLessThanOrEqualTo(leg.slowest().metresPerSecond() * (1 + ROUNDING));
                    }
                }
                less = more;
            }
        });
    }

    @TestFactory
    Stream<DynamicTest> more_leak_never_gives_a_tool_more_air() {
        return seeds(60, seed -> {
            RandomPlants.Case random = moderate(RandomPlants.plain(seed, legs(seed) / 3 + 5, false), seed);
            DutyPoint tight = solved(random.plant(), random.state());
            DutyPoint leaky = solved(withLeaks(random.plant(), 3), random.state());
            for (InletResult inlet : tight.inlets()) {
                if (inlet.open()) {
                    double after = leaky.inlets().stream()
                            .filter(i -> i.id().equals(inlet.id()))
                            .mapToDouble(i -> i.flow().kgPerSecond())
                            .sum();
                    assertThat(after)
                            .as(inlet.id())
                            .isLessThanOrEqualTo(inlet.flow().kgPerSecond() * (1 + ROUNDING));
                }
            }
        });
    }

    /** Whoever picks up more gets less air, whoever else is on: trees, loops, wyes, one station or two. */
    @TestFactory
    Stream<DynamicTest> more_feed_never_gives_its_own_tool_more_air() {
        return seeds(90, seed -> {
            RandomPlants.Case random = moderate(network(seed), seed);
            List<Inlet> inlets = random.plant().inlets();
            String user = inlets.get(seed % inlets.size()).id();
            Set<String> open = new TreeSet<>(random.state().open());
            Set<String> feeding = new TreeSet<>(random.state().feeding());
            open.add(user);
            feeding.add(user);
            State state = random.state().withOpen(List.copyOf(open)).withFeeding(feeding);
            double before = Double.MAX_VALUE;
            for (double factor : new double[] {0, 1, 1.5, 3}) {
                DutyPoint duty = solved(fedMore(random.plant(), user, factor), state);
                double flow = tool(duty, user);
                assertThat(flow)
                        .as(user + " at " + factor + " times its feed")
                        .isLessThanOrEqualTo(before + ROUNDING * Math.abs(before));
                before = flow;
            }
        });
    }

    @TestFactory
    Stream<DynamicTest> more_leak_never_gives_a_tool_more_air_in_loops_either() {
        return seeds(60, seed -> {
            RandomPlants.Case random = moderate(RandomPlants.plain(seed, legs(seed) / 3 + 5, true), seed);
            DutyPoint tight = solved(random.plant(), random.state());
            DutyPoint leaky = solved(withLeaks(random.plant(), 3), random.state());
            double before = 0;
            double after = 0;
            for (String user : random.state().open()) {
                before += tool(tight, user);
                after += tool(leaky, user);
            }
            assertThat(after).isLessThanOrEqualTo(before * (1 + ROUNDING));
        });
    }

    /** By seed a tree, loops, wyes, or a tree of one or two stations with relief, bleeds and drives. */
    private static RandomPlants.Case network(int seed) {
        int legs = legs(seed) / 3 + 5;
        return switch (seed % 4) {
            case 0 -> RandomPlants.plain(seed, legs, false);
            case 1 -> RandomPlants.plain(seed, legs, true);
            case 2 -> RandomPlants.wyes(seed, legs);
            default -> RandomPlants.tree(seed, legs);
        };
    }

    private static double tool(DutyPoint duty, String inlet) {
        return duty.inlets().stream()
                .filter(i -> i.id().equals(inlet))
                .mapToDouble(i -> i.flow().kgPerSecond())
                .sum();
    }

    private static Plant fedMore(Plant plant, String user, double factor) {
        return DustyPlants.withInlets(
                plant,
                plant.inlets().stream()
                        .map(i -> i.id().equals(user)
                                ? new Inlet(
                                        i.id(),
                                        i.at(),
                                        i.hose(),
                                        i.tool(),
                                        i.valveK(),
                                        i.leak(),
                                        i.zone(),
                                        i.dust(),
                                        new MassFlow(factor * i.feed().kgPerSecond()))
                                : i)
                        .toList());
    }

    @Test
    void a_riser_too_wide_for_its_dust_has_no_dilute_flow_and_is_named() {
        DutyPoint heavy = solved(riser(0.15), PlantSketch.feeding(riser(0.15), "A"));
        assertThat(heavy.dilute()).isFalse();
        assertThat(heavy.legs().stream().filter(LegResult::held).map(LegResult::id))
                .containsExactly("UP");
        assertThat(Audit.of(riser(0.15), heavy)).isEmpty();

        DutyPoint light = solved(riser(0.048), PlantSketch.feeding(riser(0.048), "A"));
        assertThat(light.dilute()).isTrue();
        double least = leg(light, "UP")
                .streams()
                .get(0)
                .drop()
                .orElseThrow()
                .distanceToLeastDrop()
                .orElseThrow();
        assertThat(least).isPositive();
    }

    @Test
    void dust_starves_the_tool_and_deepens_the_vacuum() {
        Plant plant = riser(0.048);
        DutyPoint air = solved(plant, PlantSketch.open(plant, "A"));
        DutyPoint dusty = solved(plant, PlantSketch.feeding(plant, "A"));
        assertThat(dusty.inlets().get(0).flow()).isLessThan(air.inlets().get(0).flow());
        assertThat(dusty.stations().get(0).suction())
                .isLessThan(air.stations().get(0).suction());
        assertThat(leg(dusty, "A").solidsDrop().pascals()).isPositive();
    }

    @Test
    void dust_of_unknown_particles_is_carried_and_adds_nothing() {
        Plant plant = new PlantSketch()
                .tube("T", 0.048, 4.5e-5)
                .inlet("A")
                .run("D", "A", "REC", "T", 20, 1)
                .station("REC")
                .lobe("P", 0.1)
                .and()
                .plant();
        DutyPoint air = solved(plant, PlantSketch.open(plant, "A"));
        DutyPoint dusty = solved(plant, PlantSketch.feeding(plant, "A"));
        assertThat(dusty.nodes()).isEqualTo(air.nodes());
        assertThat(leg(dusty, "D").dust().kgPerSecond()).isCloseTo(60.0 / 3600, within(1e-15));
        assertThat(leg(dusty, "D").loading()).isBetween(0.1, 1.0);
    }

    /** One user lifts sand 12 m through a tube of this bore. */
    private static Plant riser(double bore_m) {
        return new PlantSketch()
                .dust("sand", 5e-4, 2650)
                .tube("T", bore_m, 4.5e-5)
                .points("J")
                .inlet("A", "sand", 0.05)
                .riser("UP", "A", "J", "T", 12, 12)
                .run("M", "J", "REC", "T", 20, 0.5)
                .station("REC")
                .lobe("P", 0.1)
                .and()
                .plant();
    }

    /** A twentieth of the usual dust, so that most pieces that lift stay on the dilute branch. */
    private static RandomPlants.Case moderate(RandomPlants.Case clean, int seed) {
        RandomPlants.Case dusty = DustyPlants.of(clean, seed);
        return new RandomPlants.Case(DustyPlants.withFeeds(dusty.plant(), 0.05), dusty.state());
    }

    private static LegResult same(DutyPoint duty, LegResult leg) {
        return duty.legs().stream()
                .filter(l -> l.kind() == leg.kind() && l.id().equals(leg.id()))
                .findFirst()
                .orElseThrow();
    }

    private static Plant withLeaks(Plant p, double factor) {
        return DustyPlants.withInlets(
                p,
                p.inlets().stream()
                        .map(i -> new Inlet(
                                i.id(),
                                i.at(),
                                i.hose(),
                                i.tool(),
                                i.valveK(),
                                new LeakCoefficient(factor * i.leak().kgPerSecondPascal()),
                                i.zone(),
                                i.dust(),
                                i.feed()))
                        .toList());
    }
}
