package dustwright.engine.sheet;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.FilterResistance;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FilterSheetTest {
    /** The cloth's resistance at the end of the interval, put into a second solve, leaves the weakest tool exactly its limit. */
    @Test
    void at_the_end_of_the_interval_the_weakest_tool_gets_its_limit() {
        EquipmentSketch sketch = new EquipmentSketch();
        double start_PaSPerM = 40_000;
        double collected_kgPerM2 =
                sketch.interval_s() * 2 * sketch.feed_kgPerS * (1 - sketch.preSeparation) / sketch.cloth_m2;
        FilterResistance end = new FilterResistance(start_PaSPerM + sketch.cake_perS * collected_kgPerM2);
        Plant plant = sketch.plant();
        Station station = plant.station("REC");
        Plant loaded = plant.withStation(station.withFilter(station.filter().withResistance(end)));
        DutyPoint duty = EquipmentSketch.solved(DutyPointSolver.solve(loaded, PlantSketch.feeding(loaded, "A", "B")));
        double flow = duty.inlets().stream()
                .mapToDouble(i -> FreeAirFlow.of(i.flow()).cubicMetresPerSecond() / sketch.toolFlow_m3PerS)
                .min()
                .orElseThrow();
        double vacuum = duty.inlets().stream()
                .map(InletResult::vacuumAtValve)
                .mapToDouble(v -> v.pascals() / (2 * EquipmentSketch.INCH_OF_MERCURY_Pa))
                .min()
                .orElseThrow();
        assertClose("tightest", Math.min(flow, vacuum), 1, 1e-6);
    }

    @Test
    void more_dust_a_stickier_cake_less_cloth_or_less_falling_out_never_lengthen_the_interval() {
        SplittableRandom random = new SplittableRandom(21);
        for (int n = 0; n < 12; n++) {
            EquipmentSketch base = new EquipmentSketch();
            EquipmentSketch worse = new EquipmentSketch();
            base.feed_kgPerS = random.nextDouble(0.005, 0.02);
            worse.feed_kgPerS = base.feed_kgPerS;
            double by = random.nextDouble(1.05, 1.5);
            switch (n % 4) {
                case 0 -> worse.feed_kgPerS *= by;
                case 1 -> worse.cake_perS *= by;
                case 2 -> worse.cloth_m2 /= by;
                default -> worse.preSeparation = 1 - (1 - worse.preSeparation) * by;
            }
            assertThat(worse.interval_s()).isLessThan(base.interval_s());
        }
    }

    /** The cloth's resistance at the end of the run, put into a second solve, leaves the drop at the set point of the sequence's contact. */
    @Test
    void the_run_ends_where_the_default_sequence_holds_when_that_comes_before_a_tool_falls_short() {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.toolFlow_m3PerS = 0.001;
        List<Sheet> sheets = sketch.sheets();
        double[] inches = {6, 10};
        String[] ids = {"due-A+B", "hold-A+B"};
        for (int n = 0; n < ids.length; n++) {
            double time_s = EquipmentSketch.value(sheets, ids[n]).si();
            double collected_kgPerM2 = time_s * 2 * sketch.feed_kgPerS * (1 - sketch.preSeparation) / sketch.cloth_m2;
            FilterResistance end = new FilterResistance(40_000 + sketch.cake_perS * collected_kgPerM2);
            Plant plant = sketch.plant();
            Station station = plant.station("REC");
            Plant loaded = plant.withStation(station.withFilter(station.filter().withResistance(end)));
            DutyPoint duty =
                    EquipmentSketch.solved(DutyPointSolver.solve(loaded, PlantSketch.feeding(loaded, "A", "B")));
            // an inch of water is 249.089 Pa
            assertClose(ids[n], duty.stations().get(0).filterLoss().pascals() / (inches[n] * 249.089), 1, 1e-6);
        }
        Finding interval =
                EquipmentSketch.finding(sheets, FindingCode.CLEANING_INTERVAL).orElseThrow();
        assertThat(interval.value().si())
                .isEqualTo(EquipmentSketch.value(sheets, "hold-A+B").si())
                .isLessThan(EquipmentSketch.value(sheets, "interval-A+B").si());
        assertThat(((Answer.Words) EquipmentSketch.answer(sheets, "ends-first")).text())
                .contains("hold of the default sequence", "A+B");
        assertThat(((Answer.Words) EquipmentSketch.answer(sheets, "sequence-cleaning")).text())
                .contains("after 25 min", "38 s");
    }

    @Test
    void a_tool_that_falls_short_before_the_sequence_holds_ends_the_run() {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.toolFlow_m3PerS = 0.049;
        List<Sheet> sheets = sketch.sheets();
        double tool_s = EquipmentSketch.value(sheets, "interval-A+B").si();
        assertThat(tool_s)
                .isPositive()
                .isLessThan(EquipmentSketch.value(sheets, "hold-A+B").si());
        assertThat(EquipmentSketch.finding(sheets, FindingCode.CLEANING_INTERVAL)
                        .orElseThrow()
                        .value()
                        .si())
                .isEqualTo(tool_s);
        assertThat(((Answer.Words) EquipmentSketch.answer(sheets, "ends-first")).text())
                .contains("a tool");
    }

    @Test
    void a_drop_the_default_sequence_never_lets_come_says_so_in_its_name() {
        EquipmentSketch sketch = new EquipmentSketch();
        List<Entry> drops = sketch.sheets().stream()
                .flatMap(sheet -> sheet.entries().stream())
                .filter(entry -> entry.id().startsWith("drop-"))
                .toList();
        assertThat(drops)
                .allSatisfy(drop -> assertThat(drop.name().endsWith("at which the default sequence holds"))
                        .isEqualTo(((Answer.Known) drop.answer()).value().si() > 10 * 249.089));
        assertThat(drops).anyMatch(drop -> drop.name().endsWith("holds"));
    }

    @Test
    void what_elements_bear_is_held_against_the_drop_of_the_sequence_and_unknown_where_not_stated() {
        EquipmentSketch sketch = new EquipmentSketch();
        assertThat(EquipmentSketch.answer(sketch.sheets(), "bears"))
                .isInstanceOfSatisfying(
                        Answer.Unknown.class, u -> assertThat(u.why()).contains("\"greatest difference\""));
        assertThat(EquipmentSketch.finding(sketch.sheets(), FindingCode.FILTER_DIFFERENCE))
                .isEmpty();
        sketch.bears = Optional.of(new PressureDifference(2400));
        assertThat(EquipmentSketch.finding(sketch.sheets(), FindingCode.FILTER_DIFFERENCE))
                .hasValueSatisfying(f -> assertThat(f.fails()).isTrue());
        sketch.bears = Optional.of(new PressureDifference(2600));
        assertThat(EquipmentSketch.finding(sketch.sheets(), FindingCode.FILTER_DIFFERENCE))
                .hasValueSatisfying(f -> assertThat(f.holds()).isTrue());
    }

    @Test
    void a_tool_that_is_short_on_the_cleaned_cloth_has_no_interval_and_no_dust_is_blamed_for_it() {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.toolFlow_m3PerS = 0.08;
        List<Sheet> sheets = sketch.sheets();
        assertThat(EquipmentSketch.answer(sheets, "interval-A+B"))
                .isInstanceOfSatisfying(
                        Answer.Unknown.class,
                        u -> assertThat(u.why()).contains("on the cleaned cloth already", "before any dust"));
        List<Finding> intervals = sheets.stream()
                .flatMap(sheet -> sheet.findings().stream())
                .filter(f -> f.code() == FindingCode.CLEANING_INTERVAL)
                .toList();
        // the sequence holds too soon for its own reason, or nobody can say: never both of one set
        assertThat(intervals).singleElement().satisfies(f -> {
            assertThat(f.holds()).isFalse();
            assertThat(f.unjudged()
                            || f.value().si()
                                    == EquipmentSketch.value(sheets, "hold-A+B").si())
                    .isTrue();
        });
    }

    /** The cleaned cloth of 40 000 Pa·s/m takes 10 inH2O, 2491 Pa, at 0.062 m/s: with so little cloth the sequence holds at once. */
    @Test
    void a_cleaned_cloth_beyond_the_set_point_is_held_at_once_and_says_that_it_is_beyond() {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.toolFlow_m3PerS = 0.001;
        sketch.cloth_m2 = 1;
        List<Sheet> sheets = sketch.sheets();
        assertThat(EquipmentSketch.value(sheets, "hold-A+B").si()).isZero();
        Finding finding =
                EquipmentSketch.finding(sheets, FindingCode.CLEANING_INTERVAL).orElseThrow();
        assertThat(finding.fails()).isTrue();
        assertThat(finding.derivation().steps().get(0).formula()).contains("takes more than the set point");
    }

    @Test
    void without_the_cakes_resistance_the_interval_is_not_known_and_it_says_what_to_enter() {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.known = false;
        List<Sheet> sheets = sketch.sheets();
        assertThat(EquipmentSketch.answer(sheets, "cake"))
                .isInstanceOfSatisfying(
                        Answer.Unknown.class, u -> assertThat(u.why()).contains("\"cake resistance\""));
        assertThat(EquipmentSketch.answer(sheets, "factor-flour"))
                .isInstanceOfSatisfying(
                        Answer.Unknown.class, u -> assertThat(u.why()).contains("\"particle size\""));
        assertThat(EquipmentSketch.finding(sheets, FindingCode.CLEANING_INTERVAL))
                .hasValueSatisfying(f -> assertThat(f.unjudged()).isTrue());
    }

    /** As the cloth loads the air falls: the drop is that of the whole network solved with the cloth so loaded, and less than at the first flow. */
    @Test
    void the_drop_after_a_time_is_that_of_the_network_with_its_cloth_so_loaded() {
        EquipmentSketch sketch = new EquipmentSketch();
        Plant plant = sketch.plant();
        Station station = plant.station("REC");
        List<Sheet> sheets = sketch.sheets();
        double start_PaSPerM = station.filter().normal().pascalSecondsPerMetre();
        for (int minutes : new int[] {10, 30, 60}) {
            double load_kgPerM2 = minutes * 60 * 2 * sketch.feed_kgPerS * (1 - sketch.preSeparation) / sketch.cloth_m2;
            double loaded_PaSPerM = start_PaSPerM + sketch.cake_perS * load_kgPerM2;
            Plant loaded = plant.withStation(
                    station.withFilter(station.filter().withResistance(new FilterResistance(loaded_PaSPerM))));
            DutyPoint duty =
                    EquipmentSketch.solved(DutyPointSolver.solve(loaded, PlantSketch.feeding(loaded, "A", "B")));
            double drop_Pa =
                    EquipmentSketch.value(sheets, "drop-" + minutes + "min").si();
            assertClose(
                    minutes + " min",
                    drop_Pa,
                    duty.stations().get(0).filterLoss().pascals(),
                    1e-6);
            double atFirstFlow_Pa = loaded_PaSPerM
                    * EquipmentSketch.value(sheets, "drop-normal").si()
                    / start_PaSPerM;
            assertThat(drop_Pa).isLessThan(atFirstFlow_Pa);
        }
    }

    /** EPA's table, from memory: 12 ft/min for flour on pulse-jet felt. */
    @Test
    void the_published_ratio_stands_beside_the_velocity() {
        List<Sheet> sheets = new EquipmentSketch().sheets();
        assertClose("table", EquipmentSketch.value(sheets, "ratio-flour").si(), 12 * 0.3048 / 60, 1e-9);
        assertThat(EquipmentSketch.value(sheets, "filtration").si()).isBetween(0.01, 0.04);
    }

    /** EPA's 12 ft/min for flour is an upper guide: an eighth of the cloth is over it, and no plant need ask for that to be told. */
    @Test
    void too_little_cloth_fails_against_published_sizing_where_the_plant_states_no_limit() {
        EquipmentSketch sketch = new EquipmentSketch();
        Finding enough = EquipmentSketch.finding(sketch.sheets(), FindingCode.AIR_TO_CLOTH)
                .orElseThrow();
        assertThat(enough.holds()).isTrue();
        assertClose("limit", enough.limit().si(), 12 * 0.3048 / 60, 1e-9);
        sketch.cloth_m2 = 1;
        List<Sheet> sheets = sketch.sheets();
        assertThat(EquipmentSketch.finding(sheets, FindingCode.AIR_TO_CLOTH)
                        .orElseThrow()
                        .fails())
                .isTrue();
        assertThat(EquipmentSketch.answer(sheets, "guides"))
                .isInstanceOfSatisfying(
                        Answer.Words.class, words -> assertThat(words.text()).contains("above the table for Flour"));
    }

    /** The gas law by hand: at 150 °C a kilogram of air takes 423.15/293.15 of its room at 20 °C, and laminar cloth as much more of a drop. */
    @Test
    void hot_air_at_the_cloth_is_hot_for_flow_velocity_and_drop() {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.atCloth = Optional.of(new Temperature(423.15));
        Plant plant = sketch.plant();
        DutyPoint duty = sketch.duty(plant);
        StationResult hot = duty.stations().get(0);
        double room_m3PerS = hot.throughFilter().kgPerSecond()
                * plant.site().air().gasConstant_JPerKgK()
                * 423.15
                / hot.receiver().pascals();
        assertClose("actual flow", hot.receiverFlow().cubicMetresPerSecond(), room_m3PerS, 1e-12);
        List<Sheet> sheets = EquipmentSketch.sheets(plant, List.of(duty));
        assertClose("velocity", EquipmentSketch.value(sheets, "filtration").si(), room_m3PerS / sketch.cloth_m2, 1e-12);
        double clean_Pa = hot.receiver().pascals() - hot.filterLoss().pascals();
        double mean_Pa = (hot.receiver().pascals() + clean_Pa) / 2;
        double meanVelocity_mPerS =
                room_m3PerS / sketch.cloth_m2 * hot.receiver().pascals() / mean_Pa;
        double resistance_PaSPerM =
                plant.station("REC").filter().resistance(duty.state().filter()).pascalSecondsPerMetre();
        assertClose("drop", hot.filterLoss().pascals(), resistance_PaSPerM * meanVelocity_mPerS, 1e-6);
    }

    @Test
    void dust_that_nobody_tested_asks_for_a_dissipative_medium() {
        assertThat(EquipmentSketch.answer(new EquipmentSketch().sheets(), "medium"))
                .isInstanceOfSatisfying(
                        Answer.Words.class,
                        words -> assertThat(words.text()).contains("polyester", "static-dissipative", "not tested"));
    }
}
