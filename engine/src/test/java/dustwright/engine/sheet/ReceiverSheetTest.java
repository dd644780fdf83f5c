package dustwright.engine.sheet;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Angle;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Stress;
import dustwright.engine.receiver.FlowFunction;
import dustwright.engine.receiver.HopperDust;
import dustwright.engine.receiver.ShellBuckling;
import dustwright.engine.receiver.SidePlace;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ReceiverSheetTest {
    private static FlowFunction.Point point(double consolidation_Pa, double strength_Pa) {
        return new FlowFunction.Point(new Stress(consolidation_Pa), new Stress(strength_Pa));
    }

    private static HopperDust tested(double strength, double lump_m) {
        return new HopperDust(
                Optional.of(Angle.ofDegrees(21)),
                Optional.of(Angle.ofDegrees(42)),
                Optional.of(new FlowFunction(List.of(point(1000, 500 * strength), point(4000, 1200 * strength)))),
                Optional.of(Angle.ofDegrees(43)),
                Optional.of(new Length(lump_m)));
    }

    /** A plain 3 mm shell of 1.2 m by 1.8 m is good for about 11 inHg with a factor of 3, not for 16: rows RCV-14 and RCV-15. */
    @Test
    void a_plain_three_millimetre_shell_is_good_for_about_eleven_inches_of_mercury() {
        List<Sheet> sheets = new EquipmentSketch().sheets();
        double allowed_inHg = EquipmentSketch.value(sheets, "shell").si() / EquipmentSketch.INCH_OF_MERCURY_Pa;
        assertClose("allowed", allowed_inHg, 10.8, 0.01);
        assertThat(EquipmentSketch.finding(sheets, FindingCode.SHELL_VACUUM)
                        .orElseThrow()
                        .holds())
                .as("the relief valve goes to 11 inHg")
                .isFalse();
    }

    @Test
    void a_thicker_or_stiffened_shell_never_buckles_earlier() {
        double before_Pa = 0;
        for (double thickness_m = 0.002; thickness_m < 0.008; thickness_m += 0.0005) {
            EquipmentSketch sketch = new EquipmentSketch();
            sketch.thickness_m = thickness_m;
            double full_Pa = sketch.plant().site().air().ambient().pascals();
            double plain_Pa = EquipmentSketch.value(sketch.sheets(), "shell").si();
            sketch.rings = 1;
            double ringed_Pa = EquipmentSketch.value(sketch.sheets(), "shell").si();
            assertThat(plain_Pa).isGreaterThanOrEqualTo(Math.min(Math.nextUp(before_Pa), full_Pa));
            assertThat(ringed_Pa).isGreaterThanOrEqualTo(Math.min(Math.nextUp(plain_Pa), full_Pa));
            assertThat(ringed_Pa).isLessThanOrEqualTo(full_Pa);
            before_Pa = plain_Pa;
        }
        assertThat(before_Pa).as("8 mm bear full vacuum").isGreaterThan(101_000);
    }

    /** By hand: 2 · 235 MPa · 6 mm / 1.2 m is 2.35 MPa of yielding, a third of it far above full vacuum, which is all there can be. */
    @Test
    void a_short_stiff_shell_yields_before_it_buckles_and_sees_full_vacuum_at_most() {
        assertClose("yielding", ShellBuckling.yielding_Pa(235e6, 1.2, 0.006), 2.35e6, 1e-12);
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.thickness_m = 0.006;
        sketch.rings = 14;
        List<Sheet> sheets = sketch.sheets();
        double full_Pa = sketch.plant().site().air().ambient().pascals();
        assertThat(EquipmentSketch.value(sheets, "shell").si()).isEqualTo(full_Pa);
        assertThat(EquipmentSketch.finding(sheets, FindingCode.SHELL_VACUUM)
                        .orElseThrow()
                        .holds())
                .isTrue();
        assertThat(EquipmentSketch.answer(sheets, "full-vacuum")).isInstanceOf(Answer.Words.class);
    }

    @Test
    void a_shell_too_short_for_the_formula_is_not_judged_and_not_passed() {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.rings = 49;
        List<Sheet> sheets = sketch.sheets();
        assertThat(EquipmentSketch.answer(sheets, "shell"))
                .isInstanceOfSatisfying(
                        Answer.Unknown.class, u -> assertThat(u.why()).startsWith("Outside its formula"));
        assertThat(EquipmentSketch.finding(sheets, FindingCode.SHELL_VACUUM)
                        .orElseThrow()
                        .unjudged())
                .isTrue();
    }

    /** The solver with every inlet shut finds the same balance but for what leaks in there, near a hundredth; a relief valve of 20 L/s is far too small for it. */
    @Test
    void a_shell_is_held_against_what_a_small_relief_valve_really_lets_the_producers_draw() {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.relief_m3PerS = 0.02;
        sketch.thickness_m = 0.0032;
        List<Sheet> sheets = sketch.sheets();
        Plant plant = sketch.plant();
        double blocked_Pa = EquipmentSketch.value(sheets, "blocked").si();
        double ambient_Pa = plant.site().air().ambient().pascals();
        DutyPoint shut = EquipmentSketch.solved(DutyPointSolver.solve(plant, PlantSketch.open(plant)));
        assertClose("solved", ambient_Pa - shut.stations().get(0).receiver().pascals(), blocked_Pa, 0.015);
        assertThat(shut.stations().get(0).receiver().pascals())
                .as("shut inlets leak")
                .isGreaterThan(ambient_Pa - blocked_Pa);
        Finding shell =
                EquipmentSketch.finding(sheets, FindingCode.SHELL_VACUUM).orElseThrow();
        assertThat(shell.limit().si()).isEqualTo(blocked_Pa);
        assertThat(shell.value().si())
                .as("more than 11 inHg, the valve's full")
                .isGreaterThan(11 * EquipmentSketch.INCH_OF_MERCURY_Pa);
        assertThat(shell.fails()).isTrue();
        assertThat(EquipmentSketch.finding(sheets, FindingCode.RELIEF_CAPACITY)
                        .orElseThrow()
                        .fails())
                .isTrue();
        sketch.relief_m3PerS = 0.2;
        assertThat(EquipmentSketch.finding(sketch.sheets(), FindingCode.SHELL_VACUUM)
                        .orElseThrow()
                        .holds())
                .isTrue();
        assertThat(EquipmentSketch.finding(sketch.sheets(), FindingCode.RELIEF_CAPACITY)
                        .orElseThrow()
                        .holds())
                .isTrue();
    }

    /** Common practice, no source: three places 90° apart, and the probe moves when the inlet takes its own. */
    @Test
    void inlet_and_level_probe_never_share_a_place() {
        for (SidePlace inlet : SidePlace.values()) {
            assertThat(SidePlace.ofProbe(inlet)).isNotEqualTo(inlet);
            for (SidePlace probe : SidePlace.values()) {
                EquipmentSketch sketch = new EquipmentSketch();
                sketch.inlet = inlet;
                sketch.probe = probe;
                assertThat(EquipmentSketch.finding(sketch.sheets(), FindingCode.LEVEL_PROBE_PLACE)
                                .orElseThrow()
                                .holds())
                        .isEqualTo(inlet != probe);
            }
        }
    }

    /** By hand: cone of 20° ends 1.305 m up, so 2.3 m would count a metre of shell among elements that hang down to 1.6 m, over an inlet at 1.4 m. */
    @Test
    void dust_that_would_stand_over_elements_or_inlet_is_not_counted_and_the_probe_fails() {
        EquipmentSketch sketch = new EquipmentSketch();
        double kept_m3 =
                EquipmentSketch.value(sketch.sheets(), "working-volume").si();
        assertThat(height(sketch).holds()).isTrue();
        sketch.probe_m = 2.3;
        double inCone_m3 = Math.PI * cone_m() * (1.44 + 1.2 * 0.25 + 0.0625) / 12;
        assertThat(height(sketch).fails()).isTrue();
        assertThat(height(sketch).limit().si()).as("the inlet").isEqualTo(1.4);
        double high_m3 =
                EquipmentSketch.value(sketch.sheets(), "working-volume").si();
        assertClose("to the inlet", high_m3, inCone_m3 + Math.PI * 0.36 * (1.4 - cone_m()), 1e-12);
        assertThat(high_m3).isGreaterThan(kept_m3);
        sketch.elementsDownTo_m = Optional.of(1.2);
        assertThat(height(sketch).limit().si()).as("elements").isEqualTo(1.2);
        sketch.elementsDownTo_m = Optional.empty();
        assertThat(height(sketch).fails()).as("the inlet alone").isTrue();
    }

    @Test
    void a_time_to_high_level_by_elements_that_hang_nobody_knows_how_low_does_not_hold() {
        EquipmentSketch sketch = new EquipmentSketch();
        assertThat(EquipmentSketch.finding(sketch.sheets(), FindingCode.HOLD_UP)
                        .orElseThrow()
                        .holds())
                .isTrue();
        sketch.elementsDownTo_m = Optional.empty();
        for (FindingCode code : List.of(FindingCode.HOLD_UP, FindingCode.LEVEL_PROBE_HEIGHT)) {
            Finding open = EquipmentSketch.finding(sketch.sheets(), code).orElseThrow();
            assertThat(open.unjudged()).as(code.name()).isTrue();
            assertThat(open.derivation().steps().get(0).formula()).contains("elements down to");
        }
        sketch.feed_kgPerS = 4000.0 / 3600;
        assertThat(EquipmentSketch.finding(sketch.sheets(), FindingCode.HOLD_UP)
                        .orElseThrow()
                        .fails())
                .as("too soon up to the probe already")
                .isTrue();
    }

    private static Finding height(EquipmentSketch sketch) {
        return EquipmentSketch.finding(sketch.sheets(), FindingCode.LEVEL_PROBE_HEIGHT)
                .orElseThrow();
    }

    private static double cone_m() {
        return (1.2 - 0.25) / 2 / Math.tan(Math.toRadians(20));
    }

    /** By hand: cone of 20° from 0.25 m up to 0.9 m height is 0.905 m wide there, 0.2594 m³; at 550 kg/m³ and 80 kg/h 1.78 h. */
    @Test
    void the_hopper_holds_what_geometry_says_until_the_probe() {
        List<Sheet> sheets = new EquipmentSketch().sheets();
        double top_m = 0.25 + 2 * 0.9 * Math.tan(Math.toRadians(20));
        double volume_m3 = Math.PI * 0.9 * (top_m * top_m + top_m * 0.25 + 0.0625) / 12;
        assertClose("volume", EquipmentSketch.value(sheets, "working-volume").si(), volume_m3, 1e-12);
        assertClose("time", EquipmentSketch.value(sheets, "hold-up").si(), volume_m3 * 550 / (80 / 3600.0), 1e-9);
    }

    @Test
    void a_stronger_dust_or_a_larger_lump_asks_for_a_wider_outlet_until_the_finding_fails() {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.flow = none -> tested(1, 0.01);
        double weak_m = EquipmentSketch.value(sketch.sheets(), "bridging-flour").si();
        assertThat(holds(sketch)).isTrue();
        sketch.flow = none -> tested(1.3, 0.01);
        assertThat(EquipmentSketch.value(sketch.sheets(), "bridging-flour").si())
                .isGreaterThan(weak_m);
        sketch.flow = none -> tested(1, 0.05);
        assertThat(holds(sketch)).as("six lumps of 50 mm are 300 mm").isFalse();
    }

    /** The limit of RCV-17 for this dust is near 27° (Jenike's radial field): steeper it bridges, flatter nothing here can say what it does. */
    @Test
    void a_cone_too_flat_for_mass_flow_is_not_judged_and_one_too_narrow_for_lumps_still_fails() {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.flow = none -> tested(3, 0.01);
        assertThat(holds(sketch)).as("a strong dust over 0.25 m").isFalse();
        sketch.halfAngle_deg = 60;
        Finding flat = EquipmentSketch.finding(sketch.sheets(), FindingCode.HOPPER_OUTLET)
                .orElseThrow();
        assertThat(flat.unjudged()).isTrue();
        assertThat(flat.derivation().steps().get(0).formula()).contains("Flour", "too flat for mass flow");
        sketch.flow = none -> tested(3, 0.05);
        assertThat(EquipmentSketch.finding(sketch.sheets(), FindingCode.HOPPER_OUTLET)
                        .orElseThrow()
                        .fails())
                .as("lumps of 50 mm")
                .isTrue();
    }

    private static boolean holds(EquipmentSketch sketch) {
        return EquipmentSketch.finding(sketch.sheets(), FindingCode.HOPPER_OUTLET)
                .orElseThrow()
                .holds();
    }

    @Test
    void what_nobody_measured_is_unknown_with_what_to_test_or_enter() {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.known = false;
        List<Sheet> sheets = sketch.sheets();
        for (String id : List.of("rising", "between", "places", "working-volume", "shell")) {
            assertThat(EquipmentSketch.answer(sheets, id))
                    .as(id)
                    .isInstanceOfSatisfying(
                            Answer.Unknown.class, u -> assertThat(u.why()).containsIgnoringCase("enter \""));
        }
        assertThat(EquipmentSketch.answer(sheets, "bridging-flour"))
                .isInstanceOfSatisfying(
                        Answer.Unknown.class, u -> assertThat(u.why()).contains("shear cell"));
        assertThat(EquipmentSketch.finding(sheets, FindingCode.SHELL_VACUUM))
                .get()
                .matches(Finding::unjudged);
    }

    @Test
    void a_tangential_inlet_takes_out_the_coarse_dust_by_estimate() {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.slotHeight_m = 0.3;
        List<Sheet> sheets = sketch.sheets();
        assertThat(EquipmentSketch.value(sheets, "inlet-velocity").si()).isBetween(5.0, 30.0);
        assertThat(EquipmentSketch.value(sheets, "coarse-cut-flour").si()).isBetween(0.9, 1.0);
    }

    /** By hand: 1.8 m and half of 1.31 m of cone over an inlet 0.15 m high would be 16 turns, where cyclones make 5 to 10. */
    @Test
    void a_vessel_that_is_no_cyclone_gets_no_coarse_cut() {
        assertThat(EquipmentSketch.answer(new EquipmentSketch().sheets(), "coarse-cut-flour"))
                .isInstanceOfSatisfying(
                        Answer.Unknown.class, u -> assertThat(u.why()).contains("16 times", "5 to 10"));
    }
}
