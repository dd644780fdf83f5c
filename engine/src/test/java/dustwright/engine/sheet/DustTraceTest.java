package dustwright.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.discharge.Discharge;
import dustwright.engine.discharge.DischargeLine;
import dustwright.engine.discharge.DustFlow;
import dustwright.engine.discharge.WorkWeek;
import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DustyPlants;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.network.RandomPlants;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Dust is followed along the solved flow, whatever way runs were drawn, through loops and to several stations. */
class DustTraceTest {
    private static DutyPoint solved(Plant plant, dustwright.engine.network.State state) {
        Outcome<DutyPoint> outcome = DutyPointSolver.solve(plant, state);
        assertThat(outcome).as(outcome.toString()).isInstanceOf(Outcome.Solved.class);
        return ((Outcome.Solved<DutyPoint>) outcome).value();
    }

    /** The same as the solver says of each dust, by code of its own. */
    @TestFactory
    Stream<DynamicTest> what_arrives_of_every_dust_is_what_the_solver_lets_arrive() {
        return IntStream.range(0, 60)
                .mapToObj(seed -> DynamicTest.dynamicTest("seed " + seed, () -> {
                    int legs = 10 + seed * 3;
                    RandomPlants.Case clean = switch (seed % 3) {
                        case 0 -> RandomPlants.tree(seed, legs);
                        case 1 -> RandomPlants.loops(seed, legs);
                        default -> RandomPlants.wyesInLoops(seed, legs);
                    };
                    RandomPlants.Case random = DustyPlants.of(clean, seed);
                    agree(random.plant(), solved(random.plant(), random.state()));
                }));
    }

    private static void agree(Plant plant, DutyPoint duty) {
        plant.stations().forEach(station -> {
            Map<String, Double> bySolver = new HashMap<>();
            for (LegResult leg : duty.legs()) {
                String end = leg.flow().kgPerSecond() > 0 ? leg.to() : leg.from();
                if (leg.kind() == LegResult.Kind.RUN && end.equals(station.id())) {
                    leg.streams().forEach(s -> bySolver.merge(s.dust(), s.flow().kgPerSecond(), Double::sum));
                }
            }
            DustArrival arrival = DustArrival.of(plant, duty, station.id());
            for (DustArrival.Share share : arrival.dusts()) {
                double expected = bySolver.getOrDefault(share.dust().id(), 0.0);
                assertThat(share.rate().kgPerSecond())
                        .as(share.dust().id() + " to " + station.id())
                        .isCloseTo(expected, within(1e-10 * Math.max(1e-3, expected)));
            }
            double sum = bySolver.values().stream().mapToDouble(x -> x).sum();
            assertThat(arrival.total().kgPerSecond()).isCloseTo(sum, within(1e-10 * Math.max(1e-3, sum)));
        });
    }

    /** From the tools of loops, wyes and several stations to bags and receivers over a working week: nothing gets lost. */
    @TestFactory
    Stream<DynamicTest> what_tools_pick_up_in_a_week_lies_in_the_bags_and_receivers_of_all_stations() {
        return IntStream.range(0, 60)
                .mapToObj(seed -> DynamicTest.dynamicTest("seed " + seed, () -> {
                    int legs = 10 + seed * 2;
                    RandomPlants.Case clean = switch (seed % 4) {
                        case 0 -> RandomPlants.tree(seed, legs);
                        case 1 -> RandomPlants.plain(seed, legs, true);
                        case 2 -> RandomPlants.wyes(seed, legs);
                        default -> RandomPlants.wyesInLoops(seed, legs);
                    };
                    RandomPlants.Case random = DustyPlants.of(clean, seed);
                    Plant plant = DustyPlants.withFeeds(random.plant(), 0.05);
                    DutyPoint duty = solved(plant, random.state());
                    double inBags_kg = 0;
                    for (Station station : plant.stations()) {
                        double rate = DustArrival.of(plant, duty, station.id())
                                .total()
                                .kgPerSecond();
                        DischargeLine line = new DischargeLine(OptionalDouble.of(10), 1e6, 250 + 10 * seed, 600, true);
                        DustFlow flow =
                                Discharge.over(line, WorkWeek.ofShifts(5, 2, 28_800, 9_000 + 50 * seed, rate), 1, 0);
                        inBags_kg += flow.removed_kg() + flow.container_kg() + flow.receiver_kg();
                    }
                    double fed = random.state().open().stream()
                            .filter(random.state().feeding()::contains)
                            .filter(id -> drawing(duty, id))
                            .mapToDouble(id -> plant.inlet(id).feed().kgPerSecond())
                            .sum();
                    double fed_kg = fed * 10 * (9_000 + 50 * seed);
                    assertThat(inBags_kg).isCloseTo(fed_kg, within(1e-9 * Math.max(fed_kg, 1e-9)));
                }));
    }

    private static boolean drawing(DutyPoint duty, String inlet) {
        return duty.legs().stream()
                .anyMatch(leg -> leg.kind() == LegResult.Kind.HOSE
                        && leg.id().equals(inlet)
                        && leg.flow().kgPerSecond() > 0);
    }

    /** Sand is fed where only station A draws, flour between both: each is shared for itself, not as a mixture. */
    @Test
    void two_dusts_that_part_differently_between_two_stations_are_told_apart() {
        Plant plant = twoStations();
        DutyPoint duty = solved(plant, PlantSketch.feeding(plant, "NEAR_A", "BETWEEN"));
        agree(plant, duty);
        DustArrival a = DustArrival.of(plant, duty, "A");
        DustArrival b = DustArrival.of(plant, duty, "B");
        assertThat(rate(a, "sand")).isCloseTo(0.02, within(1e-12));
        assertThat(rate(b, "sand")).isZero();
        assertThat(rate(a, "flour")).isBetween(0.001, 0.009);
        assertThat(rate(a, "flour") + rate(b, "flour")).isCloseTo(0.01, within(1e-12));
    }

    /** Runs drawn away from the station carry to it all the same, and the week of the station counts them. */
    @Test
    void a_run_drawn_the_wrong_way_round_brings_its_dust_to_the_receiver() {
        Plant drawn = single("M", "REC");
        Plant turned = single("REC", "M");
        DustArrival usual = DustArrival.of(drawn, solved(drawn, PlantSketch.feeding(drawn, "A")), "REC");
        DustArrival other = DustArrival.of(turned, solved(turned, PlantSketch.feeding(turned, "A")), "REC");
        assertThat(usual.total().kgPerSecond()).isCloseTo(0.01, within(1e-15));
        assertThat(other.total()).isEqualTo(usual.total());
        StationDust load = ways(turned).to(turned.station("REC"));
        assertThat(load.rate_kgPerS()).isCloseTo(0.01, within(1e-15));
    }

    @Test
    void where_no_set_has_an_answer_no_rate_is_claimed_and_that_is_said() {
        Plant plant = single("M", "REC");
        StationDust load =
                DustWays.of(plant, open -> new Outcome.NotSolved<>("not asked")).to(plant.station("REC"));
        assertThat(load.rate_kgPerS()).isZero();
        assertThat(load.whyNothing()).contains("No design set has an answer");
    }

    private static DustWays ways(Plant plant) {
        return DustWays.of(
                plant, open -> DutyPointSolver.solve(plant, PlantSketch.feeding(plant, open.toArray(new String[0]))));
    }

    private static double rate(DustArrival arrival, String dust) {
        return arrival.dusts().stream()
                .filter(s -> s.dust().id().equals(dust))
                .mapToDouble(s -> s.rate().kgPerSecond())
                .sum();
    }

    private static Plant single(String from, String to) {
        return new PlantSketch()
                .dust("flour", 6e-5, 1450)
                .tube("T", 0.06, 4.5e-5)
                .points("M")
                .inlet("A", "flour", 0.01)
                .run("D", "A", "M", "T", 5, 0.5)
                .run("H", from, to, "T", 15, 0.5)
                .station("REC")
                .lobe("P", 0.1)
                .and()
                .plant();
    }

    private static Plant twoStations() {
        return new PlantSketch()
                .dust("sand", 2e-4, 2650)
                .dust("flour", 6e-5, 1450)
                .tube("T", 0.06, 4.5e-5)
                .points("J", "K")
                .inlet("NEAR_A", "sand", 0.02)
                .inlet("BETWEEN", "flour", 0.01)
                .run("DA", "NEAR_A", "J", "T", 3, 0.5)
                .run("DB", "BETWEEN", "K", "T", 3, 0.5)
                .run("JK", "J", "K", "T", 10, 0.5)
                .run("JA", "J", "A", "T", 12, 0.5)
                .run("KB", "K", "B", "T", 20, 0.5)
                .station("A")
                .lobe("PA", 0.12)
                .and()
                .station("B")
                .lobe("PB", 0.06)
                .and()
                .plant();
    }
}
