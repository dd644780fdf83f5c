package dustwright.engine.sheet;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Opening;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.TipSpeed;
import dustwright.engine.quantity.Torque;
import dustwright.engine.quantity.Volume;
import dustwright.engine.receiver.HopperDust;
import dustwright.engine.rotaryvalve.RotaryValve;
import dustwright.engine.rotaryvalve.ValveBuild;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RotaryValveSheetTest {
    private static ValveBuild build(double torque_Nm, double difference_Pa) {
        return new ValveBuild(
                Optional.of(new Length(0.25)),
                Optional.of(8),
                Optional.of(new Length(0.25)),
                Optional.of(new Length(0.00015)),
                Optional.of(new Power(750)),
                Optional.of(0.85),
                Optional.of(new Torque(torque_Nm)),
                Optional.of(new PressureDifference(difference_Pa)));
    }

    private static RotaryValve valve(double speed_rpm, double clearance_m2, double fill) {
        return new RotaryValve(
                new Volume(0.0113),
                RotationalSpeed.ofRpm(speed_rpm),
                fill,
                new Area(clearance_m2),
                0.6,
                build(120, 60_000));
    }

    private static List<Sheet> sheets(RotaryValve valve) {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.valve = Optional.of(valve);
        return sketch.sheets();
    }

    private static boolean holds(List<Sheet> sheets, FindingCode code) {
        return EquipmentSketch.finding(sheets, code).orElseThrow().holds();
    }

    private static double leastTool_m3PerS(DutyPoint duty) {
        return duty.inlets().stream()
                .min(Comparator.comparing(InletResult::flow))
                .map(i -> FreeAirFlow.of(i.flow()).cubicMetresPerSecond())
                .orElseThrow();
    }

    @Test
    void the_leak_costs_the_weakest_tool_what_a_second_solve_without_the_valve_gives() {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.valve = Optional.of(valve(15, 0.75e-4, 0.3));
        Plant with = sketch.plant();
        double cost = EquipmentSketch.value(sketch.sheets(), "cost").si();
        Plant without = with.withStation(with.station("REC").withoutRotaryValve());
        double least_m3PerS = leastTool_m3PerS(sketch.duty(with));
        double free_m3PerS = leastTool_m3PerS(
                EquipmentSketch.solved(DutyPointSolver.solve(without, PlantSketch.feeding(without, "A", "B"))));
        assertClose("cost", cost, free_m3PerS - least_m3PerS, 1e-6);
        assertThat(cost).isPositive();
    }

    @Test
    void leak_up_tool_flow_down() {
        SplittableRandom random = new SplittableRandom(31);
        for (int n = 0; n < 10; n++) {
            double speed_rpm = random.nextDouble(5, 25);
            double clearance_m2 = random.nextDouble(0.2e-4, 2e-4);
            EquipmentSketch tight = new EquipmentSketch();
            EquipmentSketch worn = new EquipmentSketch();
            tight.valve = Optional.of(valve(speed_rpm, clearance_m2, 0.3));
            worn.valve = Optional.of(
                    n % 2 == 0 ? valve(speed_rpm, clearance_m2 * 1.3, 0.3) : valve(speed_rpm * 1.3, clearance_m2, 0.3));
            assertThat(leastTool_m3PerS(worn.duty(worn.plant())))
                    .isLessThan(leastTool_m3PerS(tight.duty(tight.plant())));
            assertThat(EquipmentSketch.value(worn.sheets(), "cost").si())
                    .isGreaterThan(EquipmentSketch.value(tight.sheets(), "cost").si());
        }
    }

    @Test
    void how_full_it_turns_decides_what_it_discharges_and_not_what_it_leaks() {
        List<Sheet> half = sheets(valve(15, 0.75e-4, 0.4));
        List<Sheet> quarter = sheets(valve(15, 0.75e-4, 0.2));
        assertClose(
                "capacity",
                EquipmentSketch.value(half, "capacity").si(),
                2 * EquipmentSketch.value(quarter, "capacity").si(),
                1e-12);
        assertThat(EquipmentSketch.value(half, "leak")).isEqualTo(EquipmentSketch.value(quarter, "leak"));
    }

    /** By hand: 11.3 L × 15/min × 30 % × 550 kg/m³ is 1678 kg/h over 80 kg/h. */
    @Test
    void capacity_stands_over_the_largest_rate_and_the_speed_found_gives_the_margin() {
        List<Sheet> sheets = sheets(valve(15, 0.75e-4, 0.3));
        double ratio = 0.0113 * 15 * 60 * 0.3 * 550 / 80;
        assertClose("ratio", EquipmentSketch.value(sheets, "capacity").si(), ratio, 1e-9);
        assertClose("speed", EquipmentSketch.value(sheets, "needed-speed").si() * 60, 15 * 1.5 / ratio, 1e-9);
        assertThat(holds(sheets, FindingCode.VALVE_CAPACITY)).isTrue();
        assertThat(holds(sheets(valve(0.5, 0.75e-4, 0.3)), FindingCode.VALVE_CAPACITY))
                .isFalse();
    }

    /** By hand: 0.25 m at 90 rpm has a tip speed of 1.178 m/s; the usual fill is known up to 0.8 m/s. */
    @Test
    void above_the_tip_speed_of_the_usual_fill_nobody_says_that_it_discharges_enough() {
        List<Sheet> fast = sheets(valve(90, 0.75e-4, 0.9));
        Finding tip = EquipmentSketch.finding(fast, FindingCode.VALVE_TIP_SPEED).orElseThrow();
        assertThat(tip.fails()).isTrue();
        assertClose("tip", tip.value().si(), Math.PI * 0.25 * 1.5, 1e-12);
        assertThat(List.of(tip.value(), tip.limit(), EquipmentSketch.value(fast, "tip-speed")))
                .as("one kind of figure, one unit")
                .allMatch(TipSpeed.class::isInstance);
        assertThat(EquipmentSketch.finding(fast, FindingCode.VALVE_CAPACITY)
                        .orElseThrow()
                        .unjudged())
                .isTrue();
        List<Sheet> usual = sheets(valve(15, 0.75e-4, 0.9));
        assertThat(holds(usual, FindingCode.VALVE_TIP_SPEED)).isTrue();
        assertThat(EquipmentSketch.answer(usual, "fill-stated"))
                .isInstanceOfSatisfying(
                        Answer.Words.class, words -> assertThat(words.text()).contains("more than is usual"));
    }

    @Test
    void without_a_bulk_density_the_capacity_that_is_asked_is_not_known_and_does_not_vanish() {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.valve = Optional.of(valve(15, 0.75e-4, 0.3));
        sketch.known = false;
        Finding capacity = EquipmentSketch.finding(sketch.sheets(), FindingCode.VALVE_CAPACITY)
                .orElseThrow();
        assertThat(capacity.unjudged()).isTrue();
        assertThat(capacity.derivation().steps().get(0).formula()).contains("enter \"bulk density\"");
        assertThat(EquipmentSketch.finding(sketch.sheets(), FindingCode.HOLD_UP))
                .hasValueSatisfying(f -> assertThat(f.unjudged()).isTrue());
    }

    @Test
    void a_hopper_that_ends_wider_than_the_throat_leaves_a_ledge() {
        List<Sheet> flush = sheets(valve(15, 0.75e-4, 0.3));
        Finding even = EquipmentSketch.finding(flush, FindingCode.HOPPER_LEDGE).orElseThrow();
        assertThat(even.holds()).isTrue();
        assertThat(even.nothingByDesign()).as("flush is as it should be").isTrue();
        RotaryValve usual = valve(15, 0.75e-4, 0.3);
        ValveBuild b = usual.build();
        List<Sheet> narrow = sheets(new RotaryValve(
                usual.swept(),
                usual.speed(),
                usual.fill(),
                usual.clearance(),
                0.6,
                new ValveBuild(
                        b.rotor(),
                        b.vanes(),
                        Optional.of(new Length(0.2)),
                        b.tipGap(),
                        b.motor(),
                        b.gearEfficiency(),
                        b.torque(),
                        b.greatestDifference())));
        assertThat(holds(narrow, FindingCode.HOPPER_LEDGE)).isFalse();
        Finding ledge =
                EquipmentSketch.finding(narrow, FindingCode.HOPPER_LEDGE).orElseThrow();
        assertThat(List.of(ledge.value(), ledge.limit(), EquipmentSketch.value(narrow, "throat")))
                .as("one kind of figure, one unit")
                .allMatch(Opening.class::isInstance);
    }

    @Test
    void torque_difference_and_throat_are_held_against_what_is_stated() {
        EquipmentSketch sketch = new EquipmentSketch();
        RotaryValve usual = valve(15, 0.75e-4, 0.3);
        sketch.flow = none -> new HopperDust(
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(new Length(0.05)));
        sketch.valve = Optional.of(new RotaryValve(
                usual.swept(), usual.speed(), usual.fill(), usual.clearance(), 0.6, build(1000, 10_000)));
        List<Sheet> weak = sketch.sheets();
        assertThat(holds(weak, FindingCode.VALVE_TORQUE)).isFalse();
        assertThat(holds(weak, FindingCode.VALVE_DIFFERENCE)).isFalse();
        assertThat(holds(weak, FindingCode.VALVE_THROAT)).isFalse();
        List<Sheet> strong = sheets(usual);
        assertThat(holds(strong, FindingCode.VALVE_TORQUE)).isTrue();
        assertThat(holds(strong, FindingCode.VALVE_DIFFERENCE)).isTrue();
        assertThat(EquipmentSketch.finding(strong, FindingCode.VALVE_THROAT)).isEmpty();
    }

    @Test
    void a_valve_of_whose_making_nothing_is_known_says_what_to_enter() {
        List<Sheet> sheets =
                sheets(new RotaryValve(new Volume(0.0113), RotationalSpeed.ofRpm(15), 0.3, new Area(0.75e-4), 0.6));
        for (String id : List.of("tip-speed", "torque", "throat", "greatest-difference")) {
            assertThat(EquipmentSketch.answer(sheets, id))
                    .as(id)
                    .isInstanceOfSatisfying(
                            Answer.Unknown.class, u -> assertThat(u.why()).startsWith("Enter \""));
        }
    }
}
