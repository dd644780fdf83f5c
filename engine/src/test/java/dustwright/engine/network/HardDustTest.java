package dustwright.engine.network;

import static dustwright.engine.network.DutyPointSolverTest.leg;
import static dustwright.engine.network.DutyPointSolverTest.solved;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.Carrying;
import dustwright.engine.Study;
import dustwright.engine.air.Air;
import dustwright.engine.audit.Audit;
import dustwright.engine.finding.Outcome;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Temperature;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dust where nobody means it to be: without end, at closed inlets, finest and coarsest, on a mountain, with the pumps standing. */
class HardDustTest {
    /** 3 500 m up and 40 °C. */
    private static final Air MOUNTAIN =
            new Air(new AbsolutePressure(65_764), new Temperature(313.15), 287.05287, 1.91e-5);

    private static PlantSketch riser(double size_m, double density_kgPerM3, double feed_kgPerS) {
        return new PlantSketch()
                .dust("dust", size_m, density_kgPerM3)
                .tube("T", 0.048, 4.5e-5)
                .points("J")
                .inlet("A", "dust", feed_kgPerS)
                .inlet("B", "dust", feed_kgPerS)
                .riser("UP", "A", "J", "T", 12, 12)
                .run("D", "B", "J", "T", 3, 0.5)
                .run("M", "J", "REC", "T", 20, 0.5);
    }

    private static Plant plant(PlantSketch sketch) {
        return sketch.station("REC").lobe("P", 0.1).and().plant();
    }

    /** From a speck to a hundred tons an hour: an answer that passes the audit, slower the more there is, and no figure that is none. */
    @Test
    void the_more_is_fed_the_less_air_comes_up_to_any_feed() {
        double before = Double.MAX_VALUE;
        for (double feed : new double[] {0, 1e-12, 1e-6, 1e-3, 0.01, 0.03, 0.1, 0.3, 1, 3, 10, 30}) {
            Plant plant = plant(riser(2e-4, 2650, feed));
            DutyPoint duty = solved(plant, PlantSketch.feeding(plant, "A"));
            assertThat(Audit.of(plant, duty)).as("feed " + feed).isEmpty();
            double flow = leg(duty, "UP").flow().kgPerSecond();
            assertThat(flow).as("feed " + feed).isPositive().isLessThanOrEqualTo(before * (1 + 1e-12));
            assertThat(Study.judge(plant, duty)).allMatch(f -> Double.isFinite(f.margin()));
            before = flow;
        }
    }

    @Test
    void a_hundred_tons_an_hour_have_no_dilute_flow_and_are_found() {
        Plant plant = plant(riser(2e-4, 2650, 30));
        DutyPoint duty = solved(plant, PlantSketch.feeding(plant, "A"));
        assertThat(duty.dilute()).isFalse();
        assertThat(Study.judge(plant, duty)).anyMatch(f -> !f.holds());
    }

    @Test
    void what_is_fed_at_a_closed_inlet_is_fed_nowhere() {
        Plant plant = plant(riser(2e-4, 2650, 0.02));
        DutyPoint onlyA = solved(plant, PlantSketch.feeding(plant, "A"));
        DutyPoint both = solved(plant, PlantSketch.feeding(plant, "A").withFeeding(Set.of("A", "B")));
        assertThat(both.legs()).isEqualTo(onlyA.legs());
        assertThat(leg(both, "D").dust().kgPerSecond()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"1e-6, 50", "1e-6, 25000", "2e-5, 3100", "2e-4, 2650", "3e-3, 950", "2e-2, 50"})
    void finest_and_coarsest_lightest_and_heaviest_particles_have_an_answer(double size_m, double density_kgPerM3) {
        for (Air air : List.of(PlantSketch.SEA_LEVEL_AIR, MOUNTAIN)) {
            Plant plant = plant(riser(size_m, density_kgPerM3, 0.003).air(air));
            DutyPoint duty = solved(plant, PlantSketch.feeding(plant, "A", "B"));
            assertThat(Audit.of(plant, duty)).isEmpty();
            assertThat(leg(duty, "UP").solidsDrop().pascals()).isPositive();
            assertThat(Carrying.of(plant, leg(duty, "M"))).hasSize(1);
        }
    }

    /** The law of their lag ends before: taken at its end, said not to be known, and recomputed by the audit. */
    @Test
    void particles_beyond_the_law_of_their_lag_are_solved_at_its_end_and_told() {
        Plant plant = plant(riser(2e-2, 25_000, 0.003));
        assertThat(plant.feedsUnknownLoss(plant.inlet("A"))).isTrue();
        Outcome<DutyPoint> outcome = DutyPointSolver.solve(plant, PlantSketch.feeding(plant, "A"));
        String said = outcome.match(duty -> Audit.of(plant, duty).isEmpty() ? "" : "audit", why -> why);
        assertThat(said).doesNotContain("Exception", "audit");
    }

    /** On a mountain the pump moves the same volume of thinner air: the same dust loads it more, and lifts less well. */
    @Test
    void thin_air_is_loaded_more_and_is_nearer_to_its_least_drop() {
        Plant sea = plant(riser(2e-4, 2650, 0.02));
        Plant high = plant(riser(2e-4, 2650, 0.02).air(MOUNTAIN));
        LegResult below = leg(solved(sea, PlantSketch.feeding(sea, "A")), "UP");
        LegResult above = leg(solved(high, PlantSketch.feeding(high, "A")), "UP");
        assertThat(above.loading()).isGreaterThan(below.loading());
        assertThat(distance(above)).isLessThan(distance(below));
    }

    private static double distance(LegResult leg) {
        return leg.streams().get(0).drop().orElseThrow().distanceToLeastDrop().orElseThrow();
    }

    @Test
    void with_the_pumps_standing_nothing_moves_and_nothing_is_carried() {
        Plant plant = plant(riser(2e-4, 2650, 0.02));
        DutyPoint duty = solved(plant, PlantSketch.feeding(plant, "A", "B").withRunning(Set.of()));
        assertThat(Audit.of(plant, duty)).isEmpty();
        assertThat(leg(duty, "M").dust().kgPerSecond()).isCloseTo(0, within(1e-12));
        assertThat(Study.judge(plant, duty)).allMatch(f -> Double.isFinite(f.margin()));
    }

    /** A leg blown backwards by a supply of air: dust fed at its hose has no way in. */
    @Test
    void where_air_blows_out_of_an_open_inlet_no_dust_gets_in() {
        Plant plant = plant(riser(2e-4, 2650, 0.02)
                .points("BLOW")
                .run("X", "BLOW", "B", "T", 2, 0)
                .supply("BLOW", 0.5));
        DutyPoint duty = solved(plant, PlantSketch.feeding(plant, "A", "B"));
        InletResult b = duty.inlets().stream()
                .filter(i -> i.id().equals("B"))
                .findFirst()
                .orElseThrow();
        assertThat(b.flow().kgPerSecond()).isNegative();
        double arriving = leg(duty, "M").dust().kgPerSecond();
        assertThat(arriving).isCloseTo(leg(duty, "UP").flow().kgPerSecond() > 0 ? 0.02 : 0, within(1e-12));
        assertThat(Audit.of(plant, duty)).isEmpty();
    }

    /** Any feed, any air, trees and loops: an answer that passes the audit, or words; never a fault of the program. */
    @TestFactory
    Stream<DynamicTest> random_plants_with_absurd_feeds_are_solved_or_refused_in_words() {
        return IntStream.range(0, 60)
                .mapToObj(seed -> DynamicTest.dynamicTest("seed " + seed, () -> {
                    double factor = new double[] {0, 1e-9, 10, 100, 1e4}[seed % 5];
                    RandomPlants.Case clean = seed % 2 == 0
                            ? RandomPlants.tree(seed, 8 + seed * 2)
                            : RandomPlants.loops(seed, 8 + seed * 2);
                    RandomPlants.Case dusty = DustyPlants.of(clean, seed);
                    Plant plant = DustyPlants.withFeeds(dusty.plant(), factor);
                    Outcome<DutyPoint> outcome = DutyPointSolver.solve(plant, dusty.state());
                    boolean tree = seed % 2 == 0;
                    if (tree || factor < 1) {
                        assertThat(outcome).as(outcome.toString()).isInstanceOf(Outcome.Solved.class);
                    }
                    if (outcome instanceof Outcome.Solved<DutyPoint> s) {
                        assertThat(Audit.of(plant, s.value())).isEmpty();
                        assertThat(Study.judge(plant, s.value())).allMatch(f -> Double.isFinite(f.margin()));
                    } else {
                        assertThat(outcome.toString())
                                .containsAnyOf("did not settle", "solved without dust, not with what is fed");
                    }
                }));
    }
}
