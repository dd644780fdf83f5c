package dustwright.engine.network;

import static dustwright.engine.network.DutyPointSolverTest.leg;
import static dustwright.engine.network.DutyPointSolverTest.pressure;
import static dustwright.engine.network.DutyPointSolverTest.reason;
import static dustwright.engine.network.DutyPointSolverTest.solved;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import dustwright.engine.audit.Audit;
import dustwright.engine.plant.Plant;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Volume;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.tubing.Tool;
import dustwright.engine.tubing.ToolCurve;
import dustwright.engine.tubing.Wall;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** States that make a plain Newton's method stumble, cycle or divide by zero. */
class HardStatesTest {
    private static final double INCH_OF_MERCURY_Pa = 3386.389;

    /** Two inlets on a header, one lobe pump. */
    private static PlantSketch.StationSketch header() {
        return new PlantSketch()
                .tube("T2", 0.0475, 4.5e-5)
                .tube("T3", 0.0729, 4.5e-5)
                .points("J", "K")
                .inlet("A")
                .inlet("B")
                .run("DA", "A", "J", "T2", 7, 1.3)
                .run("DB", "B", "K", "T2", 7, 1.3)
                .run("M1", "J", "K", "T3", 20, 0.5)
                .run("M2", "K", "REC", "T3", 20, 0.5)
                .station("REC");
    }

    /**
     * At the set vacuum the valve's flow turns from nothing to steep: undamped Newton steps go to and fro between both sides for ever
     * when the solution lies just past the kink.
     */
    @Test
    void the_relief_valve_is_solved_on_both_sides_of_its_kink_and_on_it() {
        Plant without = header().lobe("P", 0.15).and().plant();
        double vacuum_inHg = 1
                / INCH_OF_MERCURY_Pa
                * (101_325
                        - solved(without, PlantSketch.open(without, "A"))
                                .stations()
                                .get(0)
                                .suction()
                                .pascals());
        for (double off : List.of(-0.3, -1e-2, -1e-3, -1e-4, -1e-6, -1e-9, 0.0, 1e-9, 1e-6, 1e-4, 1e-2)) {
            double set_inHg = vacuum_inHg * (1 + off);
            Plant plant = header().relief(set_inHg, set_inHg + 0.1, 0.5)
                    .lobe("P", 0.15)
                    .and()
                    .plant();
            DutyPoint duty = solved(plant, PlantSketch.open(plant, "A"));
            assertThat(Audit.of(plant, duty)).isEmpty();
            double relief = duty.stations().get(0).relief().kgPerSecond();
            if (off < -1e-8) {
                assertThat(relief).isPositive();
            } else if (off > 1e-8) {
                assertThat(relief).isZero();
            }
        }
    }

    @Test
    void a_weak_pump_beside_a_strong_one_has_its_check_valve_shut() {
        Plant plant = header().lobe("STRONG", 0.4).lobe("WEAK", 0.012).and().plant();
        ProducerResult weak = solved(plant, PlantSketch.open(plant))
                .stations()
                .get(0)
                .producers()
                .get(1);
        // with every inlet shut the strong pump goes deeper than the weak one's slip lets it follow
        assertThat(weak.id()).isEqualTo("WEAK");
        assertThat(weak.running()).isTrue();
        assertThat(weak.flow().kgPerSecond() == 0).isEqualTo(weak.checkValveShut());
    }

    @Test
    void a_pump_of_little_speed_cannot_open_its_check_valve() {
        Plant plant = header().lobe("P", 0.4)
                .producer(
                        "SLOW",
                        new Machine.LobePump(new Volume(0.005), RotationalSpeed.ofRpm(600), 0.9, new Power(0)),
                        new Drive.Fixed(RotationalSpeed.ofRpm(900)))
                .and()
                .plant();
        DutyPoint duty = solved(plant, PlantSketch.open(plant, "A"));
        assertThat(duty.stations().get(0).producers().get(1).checkValveShut()).isTrue();
        assertThat(duty.stations().get(0).producers().get(1).flow().kgPerSecond())
                .isZero();
        assertThat(Audit.of(plant, duty)).isEmpty();
    }

    /** Its own inlet stands where it takes no air any more: what its curve says further on, here less than nothing, is not its power. */
    @Test
    void a_machine_by_points_behind_a_shut_check_valve_takes_at_least_the_power_of_its_last_point() {
        Machine exhauster = new Machine.CurveMachine(
                "multistage centrifugal",
                RotationalSpeed.ofRpm(3550),
                new Density(1.2),
                true,
                List.of(
                        new Machine.CurvePoint(
                                new ActualVolumeFlow(0.42), new PressureDifference(10_160), new Power(13_400)),
                        new Machine.CurvePoint(
                                new ActualVolumeFlow(0.28), new PressureDifference(16_930), new Power(10_400)),
                        new Machine.CurvePoint(
                                new ActualVolumeFlow(0.14), new PressureDifference(19_640), new Power(6_000))));
        Plant plant = header().lobe("STRONG", 0.4)
                .producer("SHUT", exhauster, new Drive.Fixed(RotationalSpeed.ofRpm(3550)))
                .and()
                .plant();
        ProducerResult shut = solved(plant, PlantSketch.open(plant))
                .stations()
                .get(0)
                .producers()
                .get(1);
        assertThat(shut.checkValveShut()).isTrue();
        // the last point, at the thinner air of the machine's own inlet
        assertThat(shut.shaftPower().watts()).isBetween(0.7 * 6_000, 6_000.0);
    }

    @Test
    void a_drive_holds_its_vacuum_within_its_speeds_and_lets_go_at_their_ends() {
        Plant holds = header().holdingLobe("P", 0.15, 6).and().plant();
        ProducerResult held = solved(holds, PlantSketch.open(holds, "A", "B"))
                .stations()
                .get(0)
                .producers()
                .get(0);
        assertThat(held.vacuum().pascals()).isCloseTo(6 * INCH_OF_MERCURY_Pa, within(1e-6));
        assertThat(held.speed().rpm()).isBetween(700.0, 2200.0);

        Plant tooSmall = header().holdingLobe("P", 0.05, 10).and().plant();
        ProducerResult fast = solved(tooSmall, PlantSketch.open(tooSmall, "A", "B"))
                .stations()
                .get(0)
                .producers()
                .get(0);
        assertThat(fast.speed().rpm()).isCloseTo(2200, within(1e-9));
        assertThat(fast.vacuum().pascals()).isLessThan(10 * INCH_OF_MERCURY_Pa);

        Plant tooLarge = header().holdingLobe("P", 1, 2).and().plant();
        ProducerResult slow = solved(tooLarge, PlantSketch.open(tooLarge, "A"))
                .stations()
                .get(0)
                .producers()
                .get(0);
        assertThat(slow.speed().rpm()).isCloseTo(700, within(1e-9));
        assertThat(slow.vacuum().pascals()).isGreaterThan(2 * INCH_OF_MERCURY_Pa);
    }

    @Test
    void two_drives_of_one_station_share_what_they_hold() {
        Plant plant =
                header().holdingLobe("P", 0.1, 6).holdingLobe("Q", 0.1, 6).and().plant();
        DutyPoint duty = solved(plant, PlantSketch.open(plant, "A", "B"));
        List<ProducerResult> both = duty.stations().get(0).producers();
        assertThat(both.get(0).flow()).isEqualTo(both.get(1).flow());
        assertThat(both.get(0).vacuum().pascals()).isCloseTo(6 * INCH_OF_MERCURY_Pa, within(1e-6));
        assertThat(Audit.of(plant, duty)).isEmpty();
    }

    @Test
    void air_runs_backward_through_a_drawn_leg_of_a_loop() {
        Plant plant = new PlantSketch()
                .tube("T", 0.06, 4.5e-5)
                .points("X", "U", "V", "Y")
                .run("1", "X", "U", "T", 5, 0)
                .run("2", "X", "V", "T", 50, 0)
                .run("3", "V", "U", "T", 5, 0)
                .run("4", "U", "Y", "T", 50, 0)
                .run("5", "V", "Y", "T", 5, 0)
                .holdPressure("X", 101_325)
                .holdPressure("Y", 90_000)
                .plant();
        DutyPoint duty = solved(plant, PlantSketch.open(plant));
        assertThat(leg(duty, "3").flow().kgPerSecond()).isNegative();
        assertThat(leg(duty, "3").velocityFrom().metresPerSecond()).isPositive();
        assertThat(Audit.of(plant, duty)).isEmpty();
    }

    @Test
    void a_choked_leg_is_named_and_a_deeper_vacuum_brings_no_more_air() {
        double[] flow = new double[2];
        for (int n = 0; n < 2; n++) {
            Plant plant = new PlantSketch()
                    .tube("T", 0.05, 4.5e-5)
                    .points("X", "Y")
                    .run("R", "X", "Y", "T", 3, 0.5)
                    .holdPressure("X", 101_325)
                    .holdPressure("Y", n == 0 ? 20_000 : 5_000)
                    .plant();
            DutyPoint duty = solved(plant, PlantSketch.open(plant));
            assertThat(leg(duty, "R").choked()).isTrue();
            assertThat(duty.unchoked()).isFalse();
            flow[n] = leg(duty, "R").flow().kgPerSecond();
            assertThat(leg(duty, "R").velocityTo().metresPerSecond())
                    .isCloseTo(Math.sqrt(PlantSketch.SEA_LEVEL_AIR.rt()), within(1e-6));
        }
        assertThat(flow[1]).isCloseTo(flow[0], within(1e-12));
    }

    @Test
    void a_pump_behind_a_choked_hose_still_finds_its_suction_pressure() {
        Plant plant = new PlantSketch()
                .hose("SHORT", 0.02, 0.3, 1e-5)
                .tool("none", new Tool.Law.VelocityHeads(0))
                .inlet("A", "SHORT", "none", 0)
                .tube("T", 0.1, 4.5e-5)
                .run("R", "A", "REC", "T", 1, 0)
                .station("REC")
                .lobe("P", 0.5)
                .and()
                .plant();
        DutyPoint duty = solved(plant, PlantSketch.open(plant, "A"));
        assertThat(duty.inlets().get(0).choked()).isTrue();
        assertThat(Audit.of(plant, duty)).isEmpty();
    }

    @Test
    void at_rest_nothing_flows_and_everything_stands_at_the_barometer() {
        Plant plant = header().lobe("P", 0.15).and().plant();
        State stopped = new State("stopped", List.of("A"), FilterCondition.NORMAL, Set.of(), Set.of(), Set.of());
        DutyPoint duty = solved(plant, stopped);
        assertThat(pressure(duty, "REC")).isCloseTo(101_325, within(1e-6));
        assertThat(leg(duty, "M2").flow().kgPerSecond()).isCloseTo(0, within(1e-12));
    }

    @Test
    void fittings_without_length_and_dead_ends_are_solved_at_no_flow() {
        Plant plant = new PlantSketch()
                .tube("T", 0.05, 4.5e-5)
                .points("X", "U", "V", "Y", "DEAD")
                .run("1", "X", "U", "T", 0, 2)
                .run("2", "X", "V", "T", 0, 2)
                .run("bridge", "U", "V", "T", 0, 1)
                .run("3", "U", "Y", "T", 0, 3)
                .run("4", "V", "Y", "T", 0, 3)
                .run("end", "U", "DEAD", "T", 0, 1)
                .holdPressure("X", 101_325)
                .holdPressure("Y", 95_000)
                .plant();
        DutyPoint duty = solved(plant, PlantSketch.open(plant));
        double through = leg(duty, "1").flow().kgPerSecond();
        assertThat(through).isPositive();
        assertThat(leg(duty, "bridge").flow().kgPerSecond()).isCloseTo(0, within(1e-5 * through));
        assertThat(leg(duty, "end").flow().kgPerSecond()).isCloseTo(0, within(1e-12 * through));
        assertThat(pressure(duty, "DEAD")).isCloseTo(pressure(duty, "U"), within(1e-6));
    }

    @Test
    void what_cannot_have_an_answer_is_said_with_the_place() {
        PlantSketch.StationSketch shut = new PlantSketch()
                .tube("T", 0.05, 4.5e-5)
                .points("J")
                .run("R", "J", "REC", "T", 5, 0)
                .station("REC");
        Plant closed = shut.lobe("P", 0.1).and().plant();
        assertThat(reason(closed, PlantSketch.open(closed)))
                .startsWith("no air can reach the running producer behind J, REC");

        Plant drawn = new PlantSketch()
                .tube("T", 0.01, 4.5e-5)
                .points("X", "Y")
                .run("R", "X", "Y", "T", 5, 0)
                .holdPressure("X", 101_325)
                .supply("Y", -0.5)
                .plant();
        assertThat(reason(drawn, PlantSketch.open(drawn)))
                .contains(
                        "the flow drawn at Y is more than R can pass, whatever the vacuum: state a smaller draw, or widen R")
                .contains("worst piece R,")
                .contains("choked: it cannot pass");

        Plant afloat = new PlantSketch()
                .tube("T", 0.05, 4.5e-5)
                .points("X", "Y")
                .run("R", "X", "Y", "T", 5, 0)
                .supply("X", 0.01)
                .supply("Y", -0.01)
                .plant();
        assertThat(reason(afloat, PlantSketch.open(afloat))).startsWith("the pressure of X, Y is not determined");
        assertThat(reason(drawn, PlantSketch.open(drawn, "Z"))).isEqualTo("no inlet is called Z");
    }

    @Test
    void dust_adds_up_along_a_tree_and_parts_as_the_air_does_in_a_loop() {
        Plant tree = header().lobe("P", 0.2).and().plant();
        DutyPoint duty = solved(tree, PlantSketch.feeding(tree, "A", "B"));
        double feed = 60.0 / 3600;
        assertThat(leg(duty, "M1").dust().kgPerSecond()).isCloseTo(feed, within(1e-15));
        assertThat(leg(duty, "M2").dust().kgPerSecond()).isCloseTo(2 * feed, within(1e-15));
        assertThat(leg(duty, "DB").dust().kgPerSecond()).isCloseTo(feed, within(1e-15));

        Plant loop = new PlantSketch()
                .tube("T", 0.06, 4.5e-5)
                .points("J")
                .inlet("A")
                .run("D", "A", "J", "T", 5, 0)
                .run("SHORT", "J", "REC", "T", 10, 0)
                .run("LONG", "J", "REC", "T", 40, 0)
                .station("REC")
                .lobe("P", 0.1)
                .and()
                .plant();
        DutyPoint parted = solved(loop, PlantSketch.feeding(loop, "A"));
        double shortDust = leg(parted, "SHORT").dust().kgPerSecond();
        double longDust = leg(parted, "LONG").dust().kgPerSecond();
        assertThat(shortDust + longDust).isCloseTo(feed, within(1e-15));
        assertThat(shortDust / longDust)
                .isCloseTo(
                        leg(parted, "SHORT").flow().kgPerSecond()
                                / leg(parted, "LONG").flow().kgPerSecond(),
                        within(1e-9));
    }

    @Test
    void tools_and_machines_known_by_measured_points_stand_on_them() {
        Tool.Law.Curve curve = new Tool.Law.Curve(List.of(
                new Tool.CurvePoint(new PressureDifference(3000), new FreeAirFlow(0.025)),
                new Tool.CurvePoint(new PressureDifference(8000), new FreeAirFlow(0.045)),
                new Tool.CurvePoint(new PressureDifference(20_000), new FreeAirFlow(0.075))));
        Machine sideChannel = new Machine.CurveMachine(
                "side channel",
                RotationalSpeed.ofRpm(3550),
                new Density(1.2),
                true,
                List.of(
                        new Machine.CurvePoint(
                                new ActualVolumeFlow(0.14), new PressureDifference(7000), new Power(2200)),
                        new Machine.CurvePoint(
                                new ActualVolumeFlow(0.09), new PressureDifference(17_000), new Power(4500))));
        Plant plant = new PlantSketch()
                .tool("measured", curve)
                .tube("T", 0.06, new Wall.FixedFactor(0.02))
                .tube("C", 0.06, new Wall.Corrugated(new Length(0.006)))
                .points("J")
                .inlet("A", "H", "measured", 8e-9)
                .inlet("B", "H", "measured", 8e-9)
                .run("1", "A", "J", "T", 5, 1)
                .run("2", "B", "J", "C", 1, 1)
                .run("3", "J", "REC", "T", 20, 1)
                .station("REC")
                .producer("P", sideChannel, new Drive.Fixed(RotationalSpeed.ofRpm(3550)))
                .and()
                .plant();
        DutyPoint duty = solved(plant, PlantSketch.open(plant, "A", "B"));
        assertThat(Audit.of(plant, duty)).isEmpty();
        double vacuum_Pa = 101_325 - pressure(duty, "A/tool");
        assertThat(duty.inlets().get(0).flow().kgPerSecond())
                .isCloseTo(new ToolCurve(curve).massFlow_kgPerS(vacuum_Pa), within(1e-12));
        ProducerResult machine = duty.stations().get(0).producers().get(0);
        assertThat(machine.inletFlow().cubicMetresPerSecond()).isBetween(0.06, 0.14);
        assertThat(machine.flow().kgPerSecond())
                .isCloseTo(duty.stations().get(0).throughFilter().kgPerSecond(), within(1e-12));
    }

    @Test
    void a_warm_newton_solve_with_dust_allocates_nothing() {
        RandomPlants.Case random = DustyPlants.of(RandomPlants.loops(7, 200), 7);
        Network net = Network.compile(random.plant());
        NetworkState state = new NetworkState(net);
        state.set(net, random.state());
        List<StationEnd> ends = new ArrayList<>();
        net.stations.forEach(station -> ends.add(new StationEnd(net, station)));
        ends.forEach(end -> end.set(random.state()));
        DustLoad dust = new DustLoad(net);
        dust.set(random.state());
        NewtonSolver newton = new NewtonSolver(net, state, ends, dust);
        Reach reach = Reach.of(net, state);
        assertThat(reach.judge(random.state())).isEmpty();
        newton.equations().pin(reach.resting);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = 0;
        newton.start(true);
        boolean solved = newton.solve() == null;
        assertThat(dust.settled(state))
                .as("dust comes in after the first round")
                .isFalse();
        for (int n = 0; n < 60; n++) {
            if (n == 30) {
                before = threads.getCurrentThreadAllocatedBytes();
            }
            newton.start(true);
            solved &= newton.solve() == null;
        }
        long perSolve = (threads.getCurrentThreadAllocatedBytes() - before) / 30;
        assertThat(solved).isTrue();
        assertThat(perSolve).isLessThan(64);
    }
}
