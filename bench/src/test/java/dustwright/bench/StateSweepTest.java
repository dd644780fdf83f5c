package dustwright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.Network;
import dustwright.engine.network.RandomPlants;
import dustwright.engine.network.State;
import dustwright.engine.network.StateSweep;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Folded states are held against the general solver, which shares only the station's laws and the friction law with them. */
class StateSweepTest {
    private static final double BAROMETER_Pa = 101_325;
    /** In pressure, as a share of the barometer. */
    private static final double AGREEMENT = 1e-10;
    /** The same where vacuums and velocities may be several times those of the trade. */
    private static final double RANDOM_PLANTS_AGREEMENT = 5e-9;

    private static final double RANDOM_PLANTS_FLOW_AGREEMENT = 1e-7;
    /** Of flows and velocities themselves, which move several times as much as the pressures that drive them. */
    private static final double FLOW_AGREEMENT = 1e-9;

    private static final Plant SIXTY = TreePlants.plant(5, 12);

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 4, 8})
    void folded_states_equal_unfolded_ones(int users) {
        Network network = Network.compile(SIXTY);
        StateSweep sweep = new StateSweep(network, TreePlants.state(SIXTY));
        DutyPointSolver unfolded = new DutyPointSolver(network);
        for (int[] open : TreePlants.states(50, 60, users, 11 + users)) {
            assertAgrees(sweep, unfolded, SIXTY, open);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"5x12", "8x15"})
    void a_thousand_states_of_four_users_equal_unfolded_ones(String tree) {
        Plant plant = TreePlants.named(tree);
        Network network = Network.compile(plant);
        StateSweep sweep = new StateSweep(network, TreePlants.state(plant));
        DutyPointSolver unfolded = new DutyPointSolver(network);
        for (int[] open : TreePlants.states(1024, plant.inlets().size(), 4, 20_261_125)) {
            assertAgrees(sweep, unfolded, plant, open);
        }
    }

    /** Trees with tools given as openings, bleeds, vents, relief valves and vacuums far beyond the trade's. */
    @Test
    void plants_drawn_from_seeds_agree_wherever_they_are_solved_folded() {
        int folded = 0;
        int states = 0;
        for (int seed = 1; seed <= 60; seed++) {
            RandomPlants.Case drawn = RandomPlants.tree(seed, 5 + seed * 37 % 120);
            Network network = Network.compile(drawn.plant());
            StateSweep sweep = new StateSweep(network, state(drawn));
            if (sweep.unfoldedBecause().isPresent()) {
                continue;
            }
            DutyPointSolver unfolded = new DutyPointSolver(network);
            int inlets = drawn.plant().inlets().size();
            for (int users = 1; users <= Math.min(6, inlets); users++) {
                int[] open = TreePlants.states(1, inlets, users, seed)[0];
                assertThat(sweep.solve(open)).isEmpty();
                DutyPoint duty = solved(unfolded.solve(state(drawn, open)));
                states++;
                folded += sweep.folded() ? 1 : 0;
                assertPressuresAgree(sweep, duty, RANDOM_PLANTS_AGREEMENT);
                assertFlowsAgree(sweep, duty, RANDOM_PLANTS_FLOW_AGREEMENT, open);
            }
        }
        assertThat(states).isGreaterThan(100);
        assertThat(folded).isGreaterThan(states / 2);
    }

    private static State state(RandomPlants.Case drawn, int... open) {
        List<String> ids = IntStream.of(open)
                .mapToObj(inlet -> drawn.plant().inlets().get(inlet).id())
                .toList();
        return drawn.state().withOpen(ids).withFeeding(Set.of());
    }

    @Test
    void all_closed_and_all_open_agree_too() {
        Plant plant = TreePlants.plant(2, 4);
        Network network = Network.compile(plant);
        StateSweep sweep = new StateSweep(network, TreePlants.state(plant));
        DutyPointSolver unfolded = new DutyPointSolver(network);
        assertAgrees(sweep, unfolded, plant);
        assertAgrees(sweep, unfolded, plant, 0, 1, 2, 3, 4, 5, 6, 7);
    }

    /**
     * At the kink where the relief valve opens, and where it is full open, plain Newton steps may jump to and fro between two sides for
     * ever. The valve is set so that the answer lies on the kink, and a little to both sides of it.
     */
    @ParameterizedTest
    @ValueSource(doubles = {-1e-2, -1e-4, -1e-6, -1e-9, 0, 1e-9, 1e-6, 1e-4, 1e-2})
    void a_relief_valve_at_its_kink_is_solved(double beyond) {
        assertSolvedAtKinks(beyond, 17);
        assertSolvedAtKinks(beyond, 17, 40);
    }

    private static void assertSolvedAtKinks(double beyond, int... open) {
        double vacuum_Pa = suctionVacuum_Pa(TreePlants.plant(5, 12, relief(60_000, 5_000)), open);
        assertAgrees(TreePlants.plant(5, 12, relief(vacuum_Pa * (1 - beyond), 300)), open);

        double set_Pa = 0.9 * vacuum_Pa;
        double relieved_Pa = suctionVacuum_Pa(TreePlants.plant(5, 12, relief(set_Pa, 500)), open);
        assertAgrees(TreePlants.plant(5, 12, relief(set_Pa, (relieved_Pa - set_Pa) * (1 - beyond))), open);
    }

    private static void assertAgrees(Plant plant, int... open) {
        Network network = Network.compile(plant);
        assertAgrees(new StateSweep(network, TreePlants.state(plant)), new DutyPointSolver(network), plant, open);
    }

    @Test
    void a_folded_state_allocates_nothing() {
        StateSweep sweep = new StateSweep(Network.compile(SIXTY), TreePlants.state(SIXTY));
        int[][] states = TreePlants.states(64, 60, 4, 5);
        double sum = 0;
        for (int n = 0; n < 20_000; n++) {
            sum += PeerRace.solveAndReadSlowest(sweep, states[n % 64]);
        }
        com.sun.management.ThreadMXBean thread = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = thread.getCurrentThreadAllocatedBytes();
        for (int n = 0; n < 20_000; n++) {
            sum += PeerRace.solveAndReadSlowest(sweep, states[n % 64]);
        }
        long allocated = thread.getCurrentThreadAllocatedBytes() - before;
        assertThat(sum).isPositive();
        // less than one byte per state: what the measurement itself takes
        assertThat(allocated).isLessThan(20_000);
    }

    private static void assertAgrees(StateSweep sweep, DutyPointSolver unfolded, Plant plant, int... open) {
        assertThat(sweep.unfoldedBecause()).isEmpty();
        assertThat(sweep.solve(open)).isEmpty();
        assertThat(sweep.folded()).isTrue();
        DutyPoint duty = solved(unfolded.solve(TreePlants.state(plant, open)));
        assertPressuresAgree(sweep, duty, AGREEMENT);
        assertFlowsAgree(sweep, duty, FLOW_AGREEMENT, open);
        assertThat(sweep.pieces()).isGreaterThanOrEqualTo(2 * open.length);
        for (int piece = 0; piece < sweep.pieces(); piece++) {
            LegResult leg = leg(duty, sweep.kind(piece), sweep.id(piece));
            double slowest_mPerS = leg.slowest().metresPerSecond();
            assertThat(sweep.slowest_mPerS(piece))
                    .as("slowest in %s", leg.id())
                    .isCloseTo(slowest_mPerS, within(FLOW_AGREEMENT * slowest_mPerS));
            double flow_kgPerS = leg.flow().kgPerSecond();
            assertThat(sweep.flow_kgPerS(piece))
                    .as("flow in %s", leg.id())
                    .isCloseTo(flow_kgPerS, within(FLOW_AGREEMENT * flow_kgPerS));
        }
    }

    /** Of the station and of every open inlet. */
    private static void assertFlowsAgree(StateSweep sweep, DutyPoint duty, double agreement, int... open) {
        StationResult station = duty.stations().get(0);
        double drawn_kgPerS =
                station.throughFilter().kgPerSecond() - station.rotaryValve().kgPerSecond();
        assertThat(sweep.drawn_kgPerS()).isCloseTo(drawn_kgPerS, within(agreement * drawn_kgPerS));
        for (int n = 0; n < open.length; n++) {
            double flow_kgPerS = duty.inlets().get(open[n]).flow().kgPerSecond();
            assertThat(sweep.inletFlow_kgPerS(n)).isCloseTo(flow_kgPerS, within(agreement * flow_kgPerS));
        }
    }

    /** In the receiver and at the upstream end of every piece. */
    private static void assertPressuresAgree(StateSweep sweep, DutyPoint duty, double agreement) {
        double receiver_Pa = duty.stations().get(0).receiver().pascals();
        assertThat(sweep.receiver_Pa()).isCloseTo(receiver_Pa, within(agreement * BAROMETER_Pa));
        for (int piece = 0; piece < sweep.pieces(); piece++) {
            LegResult leg = leg(duty, sweep.kind(piece), sweep.id(piece));
            double start_Pa =
                    Math.max(leg.pressureFrom().pascals(), leg.pressureTo().pascals());
            assertThat(sweep.startPressure_Pa(piece))
                    .as("pressure at the start of %s", leg.id())
                    .isCloseTo(start_Pa, within(agreement * BAROMETER_Pa));
        }
    }

    private static LegResult leg(DutyPoint duty, LegResult.Kind kind, String id) {
        return duty.legs().stream()
                .filter(leg -> leg.kind() == kind && leg.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static double suctionVacuum_Pa(Plant plant, int... open) {
        DutyPoint duty = solved(DutyPointSolver.solve(plant, TreePlants.state(plant, open)));
        return BAROMETER_Pa - duty.stations().get(0).suction().pascals();
    }

    private static ReliefValve relief(double set_Pa, double accumulation_Pa) {
        return new ReliefValve(
                new PressureDifference(set_Pa), new PressureDifference(accumulation_Pa), new FreeAirFlow(0.236));
    }

    private static DutyPoint solved(Outcome<DutyPoint> outcome) {
        return outcome.match(duty -> duty, why -> {
            throw new AssertionError(why);
        });
    }
}
