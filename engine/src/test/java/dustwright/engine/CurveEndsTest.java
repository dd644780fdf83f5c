package dustwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine.CurveMachine;
import dustwright.engine.producer.Machine.CurvePoint;
import dustwright.engine.producer.ProducerLaw;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.receiver.FilterCondition;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Producers known by their curve, run beyond its measured points. */
class CurveEndsTest {
    private static final double CFM_m3PerS = 4.719474e-4;
    private static final double INCH_OF_MERCURY_Pa = 3386.389;
    private static final double HORSEPOWER_W = 745.6999;
    private static final double AMBIENT_Pa = 101_325;
    private static final double SMALL = 0.15;
    private static final double MIDDLE = 0.6;

    /** Two points of a centrifugal machine; straight on its power is nothing at 7.3 inHg. */
    private static final CurveMachine STEEP = machine(
            "multistage centrifugal",
            1770,
            point(500 * CFM_m3PerS, 3 * INCH_OF_MERCURY_Pa, 18 * HORSEPOWER_W),
            point(350 * CFM_m3PerS, 6 * INCH_OF_MERCURY_Pa, 10 * HORSEPOWER_W));

    private static CurveMachine machine(String kind, double rpm, CurvePoint... points) {
        boolean dynamic = !kind.equals("claw");
        return new CurveMachine(kind, RotationalSpeed.ofRpm(rpm), new Density(1.2), dynamic, List.of(points));
    }

    private static CurvePoint point(double flow_m3PerS, double vacuum_Pa, double power_W) {
        return new CurvePoint(new ActualVolumeFlow(flow_m3PerS), new PressureDifference(vacuum_Pa), new Power(power_W));
    }

    /** One inlet behind a loss coefficient, and one machine. */
    private static Plant plant(CurveMachine machine, double k, double rpm) {
        return new PlantSketch()
                .tube("T4", 0.0976, 4.5e-5)
                .points("J")
                .inlet("A")
                .run("D", "A", "J", "T4", 5, k)
                .run("M", "J", "REC", "T4", 10, 1)
                .station("REC")
                .producer("P1", machine, new Drive.Fixed(RotationalSpeed.ofRpm(rpm)))
                .and()
                .plant();
    }

    private static StateAnswer answer(Plant plant) {
        State state = States.open(plant, List.of("A"), FilterCondition.CLEAN);
        return Study.of(plant, List.of(state)).states().get(0);
    }

    private static ProducerResult result(StateAnswer answer, int producer) {
        return answer.duty().match(duty -> duty.stations().get(0).producers().get(producer), why -> {
            throw new AssertionError(why);
        });
    }

    private static Finding finding(StateAnswer answer, FindingCode code) {
        return answer.findings().stream()
                .filter(f -> f.code() == code)
                .findFirst()
                .orElseThrow();
    }

    private static ProducerLaw law(CurveMachine machine) {
        Plant plant = plant(machine, 1, machine.ratedSpeed().rpm());
        return new ProducerLaw(plant.station("REC").producers().get(0), PlantSketch.SEA_LEVEL_AIR);
    }

    /** By hand: the air of 169 acfm at 7.17 inHg takes 77.0 kPa · 0.0798 m³/s · ln(101.3/77.0) = 1.68 kW = 2.26 hp at the least. */
    @Test
    void no_machine_runs_on_less_power_than_its_air_takes_nor_than_was_measured_at_its_last_point() {
        double inlet_Pa = AMBIENT_Pa - 7.17 * INCH_OF_MERCURY_Pa;
        double speed_perS = STEEP.ratedSpeed().revolutionsPerSecond();
        double density = inlet_Pa / PlantSketch.SEA_LEVEL_AIR.rt();
        ProducerLaw law = law(STEEP);
        double flow_kgPerS = law.massFlow_kgPerS(inlet_Pa, speed_perS);
        assertThat(flow_kgPerS).isPositive();
        double power_W = law.shaftPower_W(inlet_Pa, flow_kgPerS, speed_perS);
        double leastOfAir_W = inlet_Pa * flow_kgPerS / density * Math.log(AMBIENT_Pa / inlet_Pa);
        assertThat(power_W).isGreaterThan(leastOfAir_W);
        assertThat(power_W).isCloseTo(10 * HORSEPOWER_W * density / 1.2, within(1e-6));
    }

    /**
     * By hand, 5 kPa beyond the first point: flow straight on 0.1 + 0.08 · 5 = 0.5 m³/s, power straight on 1100 + 100 · 5 = 1600 W;
     * isothermal work 96 325 Pa · 0.5 m³/s · ln(101 325/96 325) = 2437 W.
     */
    @Test
    void where_the_air_alone_takes_more_than_the_curve_carried_on_it_is_what_the_air_takes() {
        CurveMachine claw = machine("claw", 3000, point(0.1, 10_000, 1100), point(0.02, 11_000, 1000));
        ProducerLaw law = law(claw);
        double flow_kgPerS = law.massFlow_kgPerS(96_325, 50);
        assertThat(flow_kgPerS * PlantSketch.SEA_LEVEL_AIR.rt() / 96_325).isCloseTo(0.5, within(1e-12));
        assertThat(law.shaftPower_W(96_325, flow_kgPerS, 50)).isCloseTo(2437, within(0.5));
        // all of it heats the air
        assertThat(law.rise_K(96_325, flow_kgPerS, 50)).isCloseTo(2437 / (flow_kgPerS * 1005), within(0.01));
    }

    @Test
    void power_has_no_jump_at_an_end_of_the_curve_nor_where_the_check_valve_shuts() {
        SplittableRandom random = new SplittableRandom(20261126);
        for (int n = 0; n < 100; n++) {
            double q = random.nextDouble(0.05, 0.4);
            double v = random.nextDouble(8_000, 15_000);
            double power = random.nextDouble(1.5, 3) * q * v;
            CurveMachine machine = machine(
                    n % 2 == 0 ? "side channel" : "claw",
                    3000,
                    point(q, 0.3 * v, power),
                    point(0.6 * q, 0.8 * v, power * random.nextDouble(0.7, 1.3)),
                    point(0.4 * q, v, power * random.nextDouble(0.6, 1.4)));
            ProducerLaw law = law(machine);
            double speed_perS = random.nextDouble(40, 55);
            double shut_Pa = law.vacuumWithoutFlow_Pa(speed_perS, 90_000);
            double before_W = power_W(law, 1, speed_perS);
            for (double vacuum_Pa = 2; vacuum_Pa < shut_Pa + 2000; vacuum_Pa += 1) {
                double here_W = power_W(law, vacuum_Pa, speed_perS);
                assertThat(here_W).isPositive().isCloseTo(before_W, within(2e-3 * power));
                before_W = here_W;
            }
        }
    }

    private static double power_W(ProducerLaw law, double vacuum_Pa, double speed_perS) {
        double inlet_Pa = AMBIENT_Pa - vacuum_Pa;
        double flow_kgPerS = law.massFlow_kgPerS(inlet_Pa, speed_perS);
        return flow_kgPerS > 0
                ? law.shaftPower_W(inlet_Pa, flow_kgPerS, speed_perS)
                : law.shutPower_W(inlet_Pa, speed_perS);
    }

    /** A machine as large as that share of one of 0.12 m³/s. */
    private static CurveMachine sideChannel(double share) {
        return machine(
                "side channel",
                2900,
                point(share * 0.12, 8_000, share * 2_500),
                point(share * 0.08, 14_000, share * 3_500),
                point(share * 0.05, 17_000, share * 4_200));
    }

    @Test
    void a_machine_beyond_either_end_of_its_curve_is_told_and_one_between_is_not() {
        StateAnswer free = answer(plant(sideChannel(SMALL), 0, 2900));
        Finding shallow = finding(free, FindingCode.CURVE_FREE_END);
        assertThat(shallow.holds()).isFalse();
        assertThat(shallow.value().si()).isLessThan(shallow.limit().si());
        assertThat(finding(free, FindingCode.CURVE_DEEP_END).holds()).isTrue();
        assertThat(result(free, 0).beyondPoints()).isTrue();

        StateAnswer throttled = answer(plant(sideChannel(1), 5000, 2900));
        Finding deep = finding(throttled, FindingCode.CURVE_DEEP_END);
        assertThat(deep.holds()).isFalse();
        assertThat(deep.value().si()).isGreaterThan(deep.limit().si());
        assertThat(finding(throttled, FindingCode.CURVE_FREE_END).holds()).isTrue();
        assertThat(deep.code().meaning()).contains("surge is not excluded");

        StateAnswer between = answer(plant(sideChannel(MIDDLE), 0, 2900));
        assertThat(finding(between, FindingCode.CURVE_FREE_END).holds()).isTrue();
        assertThat(finding(between, FindingCode.CURVE_DEEP_END).holds()).isTrue();
        assertThat(result(between, 0).beyondPoints()).isFalse();
    }

    /** By hand: 17 kPa at 1.2 kg/m³ and 2900 rpm is 17 kPa · ρ/1.2 · (2600/2900)² at 2600 rpm and the density at the inlet. */
    @Test
    void the_end_of_a_curve_moves_with_speed_and_density_of_a_dynamic_machine() {
        StateAnswer slow = answer(plant(sideChannel(1), 5000, 2600));
        Finding deep = finding(slow, FindingCode.CURVE_DEEP_END);
        double density = result(slow, 0).inletPressure().pascals() / PlantSketch.SEA_LEVEL_AIR.rt();
        assertThat(deep.limit().si()).isCloseTo(17_000 * density / 1.2 * 0.803805, within(0.1));
        Step end = deep.derivation().steps().stream()
                .filter(s -> s.equation().equals("PRD-34"))
                .findFirst()
                .orElseThrow();
        double byHand_Pa = in(end, "Δp0") * Math.pow(in(end, "n") / in(end, "n0"), 2) * in(end, "ρ_in") / in(end, "ρ0");
        assertThat(byHand_Pa).isCloseTo(deep.limit().si(), within(1e-6));
    }

    private static Plant besideALobe(CurveMachine weak) {
        return new PlantSketch()
                .tube("T3", 0.0729, 4.5e-5)
                .points("J")
                .inlet("A")
                .run("D", "A", "J", "T3", 10, 1)
                .run("M", "J", "REC", "T3", 20, 1)
                .station("REC")
                .lobe("P1", 0.3)
                .producer("P2", weak, new Drive.Fixed(RotationalSpeed.ofRpm(2900)))
                .and()
                .plant();
    }

    @Test
    void a_vacuum_without_flow_beyond_the_last_point_is_not_called_known_and_a_shut_machine_is_not_called_beyond() {
        StateAnswer answer =
                answer(besideALobe(machine("side channel", 2900, point(0.1, 3_000, 900), point(0.08, 4_000, 1_000))));
        Finding shut = finding(answer, FindingCode.PRODUCER_SHUT);
        assertThat(shut.derivation().steps().get(0).formula()).contains("beyond its last point");
        assertThat(shut.derivation().limitSource().text()).contains("not measured");
        assertThat(answer.findings())
                .filteredOn(f -> f.where().id().equals("P2"))
                .extracting(Finding::code)
                .doesNotContain(FindingCode.CURVE_DEEP_END, FindingCode.CURVE_FREE_END);
        assertThat(result(answer, 1).beyondPoints()).isFalse();

        Finding known = finding(
                answer(besideALobe(machine("side channel", 2900, point(0.1, 3_000, 900), point(0, 4_000, 1_000)))),
                FindingCode.PRODUCER_SHUT);
        Step none = known.derivation().steps().get(0);
        double c = in(none, "Δp_00")
                * Math.pow(in(none, "n") / in(none, "n0"), 2)
                / (in(none, "ρ0") * in(none, "R") * in(none, "T"));
        assertThat(known.limit().si()).isCloseTo(in(none, "p_a") * c / (1 + c), within(1e-6));
        assertThat(none.formula()).doesNotContain("beyond");
        Finding vacuum = answer(
                        besideALobe(machine("side channel", 2900, point(0.1, 3_000, 900), point(0, 4_000, 1_000))))
                .findings()
                .stream()
                .filter(f -> f.code() == FindingCode.PRODUCER_VACUUM
                        && f.where().id().equals("P2"))
                .findFirst()
                .orElseThrow();
        assertThat(vacuum.value()).isEqualTo(known.limit());
        assertThat(known.derivation().limitSource().text()).doesNotContain("not measured");
    }

    private static double in(Step step, String symbol) {
        return step.inputs().stream()
                .filter(t -> t.symbol().equals(symbol))
                .map(Term::value)
                .findFirst()
                .orElseThrow()
                .si();
    }

    private static Step step(Finding finding, String equation, String result) {
        return finding.derivation().steps().stream()
                .filter(s ->
                        s.equation().equals(equation) && s.result().symbol().equals(result))
                .findFirst()
                .orElseThrow();
    }

    /** The formulas as printed, with the figures as printed beside them: what a reader with a pocket calculator gets. */
    @Test
    void flow_and_power_between_two_points_can_be_followed_by_hand() {
        StateAnswer answer = answer(plant(sideChannel(MIDDLE), 0, 2700));
        ProducerResult result = result(answer, 0);
        Finding power = finding(answer, FindingCode.PRODUCER_POWER);
        Step onCurve = step(power, "PRD-4", "Δp0");
        double onCurve_Pa = in(onCurve, "Δp")
                * Math.pow(in(onCurve, "n0") / in(onCurve, "n"), 2)
                * in(onCurve, "ρ0")
                / in(onCurve, "ρ_in");
        assertThat(onCurve_Pa)
                .isCloseTo(onCurve.result().value().si(), within(1e-6))
                .isBetween(8_000.0, 17_000.0);
        double flow0 = between(step(power, "PRD-5", "Q0"), "Q", "q");
        Step flow = step(power, "PRD-4", "Q");
        assertThat(flow0 * in(flow, "n") / in(flow, "n0"))
                .isCloseTo(result.inletFlow().cubicMetresPerSecond(), within(1e-9));
        double power0 = between(step(power, "PRD-5", "P0"), "P", "r");
        Step shaft = step(power, "PRD-4", "P");
        double byHand_W = power0 * Math.pow(in(shaft, "n") / in(shaft, "n0"), 3) * in(shaft, "ρ_in") / in(shaft, "ρ0");
        assertThat(byHand_W).isCloseTo(result.shaftPower().watts(), within(1e-6));
        assertThat(power.derivation().steps())
                .filteredOn(s -> s.equation().startsWith("PRD-"))
                .noneMatch(s -> s.source().text().equals("plant file"));
    }

    private static double between(Step step, String figure, String slope) {
        double x = (in(step, "Δp0") - in(step, "Δp_a")) / (in(step, "Δp_b") - in(step, "Δp_a"));
        double a = in(step, figure + "_a");
        return a
                + x * x * (3 - 2 * x) * (in(step, figure + "_b") - a)
                + x * (1 - x) * (1 - x) * in(step, slope + "_a")
                - x * x * (1 - x) * in(step, slope + "_b");
    }

    @Test
    void beyond_its_points_the_steps_say_that_the_figures_are_not_measured() {
        Finding power = finding(answer(plant(sideChannel(1), 5000, 2900)), FindingCode.PRODUCER_POWER);
        Step carriedOn = step(power, "PRD-34", "P0");
        assertThat(carriedOn.result().meaning()).contains("beyond its last point, not measured");
        double straight = in(carriedOn, "P_b")
                + (in(carriedOn, "Δp0") - in(carriedOn, "Δp_b"))
                        * (in(carriedOn, "P_b") - in(carriedOn, "P_a"))
                        / (in(carriedOn, "Δp_b") - in(carriedOn, "Δp_a"));
        assertThat(Math.max(in(carriedOn, "P_b"), straight))
                .isCloseTo(carriedOn.result().value().si(), within(1e-6));
    }

    @Test
    void the_power_behind_a_shut_check_valve_is_that_of_the_machines_own_inlet_step_by_step() {
        StateAnswer answer =
                answer(besideALobe(machine("side channel", 2900, point(0.1, 3_000, 900), point(0, 4_000, 1_000))));
        Finding power = answer.findings().stream()
                .filter(f ->
                        f.code() == FindingCode.PRODUCER_POWER && f.where().id().equals("P2"))
                .findFirst()
                .orElseThrow();
        Step last = step(power, "PRD-4", "P");
        double byHand_W =
                in(last, "P0") * Math.pow(in(last, "n") / in(last, "n0"), 3) * in(last, "ρ_in") / in(last, "ρ0");
        assertThat(byHand_W).isCloseTo(power.value().si(), within(1e-6 * byHand_W));
    }
}
