package dustwright.cli;

import static dustwright.cli.Edits.with;
import static dustwright.cli.Edits.withFirst;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dustwright.documents.answers.JsonAnswers;
import dustwright.documents.drawing.MarginClass;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.StateAnswer;
import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.sheet.Answer;
import dustwright.engine.sheet.DustWeek;
import dustwright.engine.sheet.Entry;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bags, weeks, compressed air, sound and cost of a plant file: what holds, what fails, what stays unknown. */
class OperationSheetsTest {
    /** Sheets of this file's subject. */
    private static final List<String> OURS = List.of("bagging", "discharge", "compressed-air", "sound", "running-cost");

    private static final double WEEK_s = 7 * 24 * 3600.0;

    private static String bakery = "";
    private static String cement = "";

    @BeforeAll
    static void read() throws IOException {
        bakery = Files.readString(Path.of("..", "examples", "bakery", "plant.yaml"));
        cement = Files.readString(Path.of("..", "examples", "cement-packing", "plant.yaml"));
    }

    private static Study study(String text) {
        Reading reading = PlantReader.read(text);
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Read.class);
        Plant plant = ((Reading.Read) reading).plant();
        return Study.of(plant, States.usual(plant).subList(0, 2)).withSheets();
    }

    private static Finding finding(Study study, FindingCode code) {
        return study.findings()
                .filter(finding -> finding.code() == code)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no finding " + code));
    }

    private static Answer answer(Study study, String id) {
        return entry(study, id)
                .orElseThrow(() -> new AssertionError("no " + id))
                .answer();
    }

    private static Optional<Entry> entry(Study study, String id) {
        return study.sheets().stream()
                .flatMap(sheet -> sheet.entries().stream())
                .filter(entry -> entry.id().equals(id))
                .findFirst();
    }

    private static double value(Study study, String id) {
        Answer answer = answer(study, id);
        assertThat(answer).as(id).isInstanceOf(Answer.Known.class);
        return ((Answer.Known) answer).value().si();
    }

    // ---- what fails

    @Test
    void cement_overloads_its_bag_where_a_level_probe_stops_it_and_not_where_a_scale_does() {
        assertThat(finding(study(cement), FindingCode.CONTAINER_LOAD).holds()).isTrue();
        Finding byProbe =
                finding(study(withFirst(cement, "stop: scale", "stop: level probe")), FindingCode.CONTAINER_LOAD);
        assertThat(byProbe.holds()).isFalse();
        assertThat(byProbe.value().si()).isCloseTo(0.9 * 1200, within(1e-9));
        assertThat(byProbe.code().remedy()).contains("scale");
    }

    @Test
    void arms_that_would_carry_the_dust_are_a_finding() {
        Study study = study(withFirst(bakery, "base: on floor or pallet", "base: hanging from the arms"));
        Finding finding = finding(study, FindingCode.ARMS_LOAD);
        assertThat(finding.holds()).isFalse();
        assertThat(finding.value().si()).isCloseTo(0.45 * 550 + 2.5, within(1e-9));
        assertThat(study.holds()).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pressure: 4 psi, volume | pressure: 9.5 psi, volume | NECK_SEAL",
                "vent sock: 1.4 m2       | vent sock: 0.4 m2         | SOCK_VELOCITY",
                "headroom: 1.3 m         | headroom: 0.9 m           | HEADROOM",
                "silencer: 25 dB         | silencer: 8 dB            | SOUND_AT_ONE_METRE",
                "arms: 40 kg             | arms: 2 kg                | ARMS_LOAD",
                "spout: 0.45 m           | spout: 0.1 m              | SPOUT_REACH",
                "headroom: 1.3 m         | headroom: 6 m             | SPOUT_REACH",
                "pressure: 4 psi, volume | pressure: 0.3 psi, volume | NECK_SEAL_LOOSE",
                "pressure: 4 psi, volume | pressure: 0 psi, volume   | NECK_SEAL_LOOSE",
            })
    void a_plant_that_breaks_one_rule_fails_at_it_and_keeps_the_others(String good, String bad, FindingCode code) {
        assertThat(finding(study(bakery), code).holds()).as("before").isTrue();
        Study study = study(withFirst(bakery, good, bad));
        assertThat(finding(study, code).holds()).isFalse();
        assertThat(study.sheets().stream().flatMap(s -> s.findings().stream()).filter(f -> !f.holds()))
                .extracting(Finding::code)
                .containsExactly(code);
    }

    /** By hand: 0.45 m³ of 1200 kg/m³ settled are 540 kg; the bag of the bakery is marked for 500 kg. */
    @Test
    void dust_that_settles_while_it_fills_is_weighed_settled() {
        Study study = study(withFirst(bakery, "tapped density: 700 kg/m3", "tapped density: 1200 kg/m3"));
        Finding settled = finding(study, FindingCode.SETTLED_LOAD);
        assertThat(finding(study, FindingCode.CONTAINER_LOAD).holds()).isTrue();
        assertThat(settled.fails()).isTrue();
        assertThat(settled.value().si()).isCloseTo(540, within(1e-9));
        assertThat(settled.limit().si()).isCloseTo(500, within(1e-9));
        assertThat(study.holds()).isFalse();
    }

    @Test
    void without_a_bulk_density_load_and_capacity_are_not_known_and_do_not_vanish() {
        Study study = study(withFirst(bakery, ", bulk density: 550 kg/m3", ""));
        for (FindingCode code : List.of(FindingCode.CONTAINER_LOAD, FindingCode.VALVE_CAPACITY)) {
            Finding finding = finding(study, code);
            assertThat(finding.unjudged()).as(code.toString()).isTrue();
            assertThat(Wording.valueAndLimit(finding, new Show(UnitSystem.US))).contains("enter \"bulk density\"");
        }
    }

    /** By hand: 2.5 kg of cloth on 0.8 m by 0.8 m are 38.3 Pa; a change of 8 min is 480 s. */
    @Test
    void a_fan_opens_the_bag_and_does_so_within_the_change() {
        assertThat(finding(study(bakery), FindingCode.INFLATION_PRESSURE).holds())
                .isTrue();
        assertThat(finding(study(bakery), FindingCode.INFLATION_TIME).holds()).isTrue();
        Finding weak = finding(
                study(withFirst(
                        bakery,
                        "inflation: \\{flow: [^,]*, pressure: [^}]*}",
                        "inflation: {flow: 150 m3/h, pressure: 0.1 mbar}")),
                FindingCode.INFLATION_PRESSURE);
        assertThat(weak.fails()).isTrue();
        assertThat(weak.limit().si()).isCloseTo(2.5 * 9.80665 / 0.64, within(1e-9));
        Finding slow = finding(
                study(withFirst(
                        bakery,
                        "inflation: \\{flow: [^,]*, pressure: [^}]*}",
                        "inflation: {flow: 3 m3/h, pressure: 15 mbar}")),
                FindingCode.INFLATION_TIME);
        assertThat(slow.fails()).isTrue();
        assertThat(slow.value().si()).isCloseTo(540, within(1e-9));
    }

    @Test
    void where_nothing_may_be_there_is_no_percentage_and_the_value_has_a_unit_of_its_size() {
        Finding none = Finding.of(
                FindingCode.HELD_AT_LEVEL,
                new Place(Place.Kind.RECEIVER, "REC"),
                "all",
                Side.AT_MOST,
                new Duration(9596.16),
                new Duration(0),
                new Derivation(List.of(), Source.entered()));
        assertThat(none.margin()).isEqualTo(-1);
        assertThat(Show.margin(none)).isEqualTo("any is too much");
        assertThat(Wording.valueAndLimit(none, new Show(UnitSystem.US))).isEqualTo("2.7\u00A0h, most 0.0");
    }

    @Test
    void a_margin_says_what_it_means_where_a_percentage_would_not() {
        Study study = study(bakery);
        Finding ledge = finding(study, FindingCode.HOPPER_LEDGE);
        assertThat(Show.margin(ledge)).isEqualTo("as meant");
        assertThat(MarginClass.of(ledge)).isEqualTo(MarginClass.AMPLE);
        // by hand: 1500 Pa over 38.3 Pa
        assertThat(Show.margin(finding(study, FindingCode.INFLATION_PRESSURE))).isEqualTo("39\u00A0times");
        assertThat(Wording.valueAndLimit(finding(study, FindingCode.SPEED_ON_SUPPLY), new Show(UnitSystem.US)))
                .isEqualTo("0.1\u00A0% off, most 4.0\u00A0%");
        assertThat(Wording.valueAndLimit(finding(study, FindingCode.INFLATION_TIME), new Show(UnitSystem.US)))
                .isEqualTo("0.2\u00A0min, most 8.0");
    }

    @Test
    void limits_that_are_asked_are_checked_and_others_are_not() {
        assertThat(study(bakery).findings())
                .extracting(Finding::code)
                .doesNotContain(FindingCode.CONTAINER_LIFE, FindingCode.DAILY_EXPOSURE);
        String asked = withFirst(
                bakery,
                "transport factor: 1\\n",
                "transport factor: 1\n  container life: 7 d\n  daily exposure: 70 dBA\n");
        Finding life = finding(study(asked), FindingCode.CONTAINER_LIFE);
        assertThat(life.holds()).isFalse();
        assertThat(Wording.claim(life)).as("7 d are no seven shifts").contains("by the calendar");
        assertThat(finding(study(asked), FindingCode.DAILY_EXPOSURE).holds()).isFalse();
    }

    @Test
    void more_than_a_shift_can_pick_up_is_a_finding() {
        Study study = study(withFirst(cement, "per shift: 800 kg", "per shift: 9 t"));
        Finding finding = finding(study, FindingCode.CLEANING_TIME);
        assertThat(finding.holds()).isFalse();
        assertThat(finding.value().si()).isGreaterThan(9000 / (960 / 3600.0));
        assertThat(value(study, "left/REC")).isPositive();
    }

    /** By hand: 7.5 t at 960 kg/h are 7.8 h of the 8, before anybody waits for a bag; 9 t are 9.4 h whoever waits. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "bulk density: 1200 kg/m3, ; '' ; bulk density",
                "speed: 15 rpm, fill ; speed: 150 rpm, fill ; turn it slower"
            })
    void a_shift_fits_by_no_time_that_leaves_the_waiting_out(String good, String other, String asked) {
        String full = withFirst(cement, "per shift: 800 kg", "per shift: 7500 kg");
        assertThat(finding(study(full), FindingCode.CLEANING_TIME).fails())
                .as("with the waiting")
                .isTrue();
        Study open = study(with(full, good, other));
        Finding finding = finding(open, FindingCode.CLEANING_TIME);
        assertThat(finding.unjudged()).isTrue();
        assertThat(finding.derivation().steps().get(0).formula()).contains("How long users wait is not known", asked);
        assertThat(finding(
                                study(with(withFirst(cement, "per shift: 800 kg", "per shift: 9 t"), good, other)),
                                FindingCode.CLEANING_TIME)
                        .fails())
                .isTrue();
    }

    @Test
    void energy_says_where_it_leaves_the_waiting_out() {
        String fan = "        inflation: {flow: 250 m3/h, pressure: 15 mbar, motor: 0.37 kW}\n";
        String open = with(with(cement, "bulk density: 1200 kg/m3, ", ""), fan, "");
        assertThat(entry(study(open), "energy-REC").orElseThrow().name())
                .isEqualTo("Energy of REC, a year, without waiting");
        assertThat(entry(study(open), "valve-energy-REC").orElseThrow().name()).contains("without waiting");
        assertThat(entry(study(open), "left-out").orElseThrow().answer().toString())
                .contains("energy while users of REC wait");
        assertThat(entry(study(cement), "energy-REC").orElseThrow().name()).isEqualTo("Energy of REC, a year");
        String runsOn = with(open, "producers run: while cleaning", "producers run: through the shift");
        assertThat(entry(study(runsOn), "energy-REC").orElseThrow().name())
                .as("they turn all the time")
                .isEqualTo("Energy of REC, a year");
    }

    /** By hand: 8 h at 15 rpm · 0.0113 m³ · 30 % · 1200 kg/m³ are far above the feed; at 0.1 rpm the valve passes 24.4 kg/h. */
    @Test
    void a_valve_that_takes_less_than_is_fed_is_a_finding_with_the_hours_users_are_held() {
        assertThat(study(cement).findings()).extracting(Finding::code).doesNotContain(FindingCode.HELD_AT_LEVEL);
        Study slow = study(withFirst(cement, "speed: 15 rpm, fill", "speed: 0.1 rpm, fill"));
        Finding held = finding(slow, FindingCode.HELD_AT_LEVEL);
        assertThat(held.fails()).isTrue();
        assertThat(held.value().si()).isEqualTo(value(slow, "waited-level/REC"));
        assertThat(held.value().si()).isGreaterThan(3600);
        assertThat(finding(slow, FindingCode.CLEANING_TIME).fails()).isTrue();
        assertThat(value(slow, "left/REC")).isPositive();
    }

    /** Hours, energy and pulses follow what is done in them: 800 kg in each of 18 shifts at 960 kg/h are 15 h of vacuuming a week. */
    @Test
    void a_stated_mass_is_picked_up_and_its_hours_energy_and_pulses_follow() {
        Study study = study(cement);
        assertThat(value(study, "dust-week/REC")).isCloseTo(18 * 800.0, within(1e-6));
        assertThat(value(study, "left/REC")).isZero();
        double waited_s = value(study, "waited-change/REC");
        assertThat(waited_s).isPositive();
        assertThat(value(study, "cleaning-week/REC")).isCloseTo(15 * 3600.0 + waited_s, within(1e-3));
        // 120 pulses an hour of 40 L each
        assertThat(value(study, "pulse-air-week/REC")).isCloseTo(15 * 120 * 0.04, within(1e-6));
        Study waiting = study(withFirst(cement, "change time: 8 min", "change time: 16 min"));
        assertThat(value(waiting, "dust-week/REC")).isCloseTo(18 * 800.0, within(1e-6));
        assertThat(value(waiting, "pulse-air-week/REC")).isCloseTo(15 * 120 * 0.04, within(1e-6));
        assertThat(value(waiting, "energy-REC"))
                .as("producers turn while users wait")
                .isGreaterThan(value(study, "energy-REC"));
        assertThat(finding(study, FindingCode.CLEANING_TIME).value().si()).isCloseTo(3000 + 480, within(1e-6));
    }

    @Test
    void a_receiver_that_holds_less_than_a_change_brings_is_a_finding_where_users_go_on() {
        String goesOn = withFirst(bakery, "during a change: vacuuming stops", "during a change: vacuuming goes on");
        Study quick = study(goesOn);
        assertThat(finding(quick, FindingCode.RECEIVER_DURING_CHANGE).holds()).isTrue();
        assertThat(value(quick, "waited-change/REC")).isZero();
        Study slow = study(withFirst(goesOn, "change time: 8 min", "change time: 2 h"));
        assertThat(finding(slow, FindingCode.RECEIVER_DURING_CHANGE).holds()).isFalse();
        assertThat(study(bakery).findings())
                .extracting(Finding::code)
                .doesNotContain(FindingCode.RECEIVER_DURING_CHANGE);
    }

    /** By hand: 88 − 12 = 76 and 100 − 25 = 75 dBA make 78.5; 10 log10(10^7.6 + 10^7.5). */
    @Test
    void a_machine_of_a_catalogue_brings_its_sound_and_what_the_plant_states_goes_before_it() {
        Study catalogue = study(bakery);
        assertThat(value(catalogue, "sound-1m/REC")).isCloseTo(78.54, within(0.01));
        Entry casing = entry(catalogue, "sound-casing-P1/REC").orElseThrow();
        assertThat(casing.derivation().limitSource().text()).contains("DL-15").contains("invented");
        Study station = study(withFirst(bakery, "REC: \\{hood: 12 dB", "REC: {casing: 95 dBA, hood: 12 dB"));
        assertThat(value(station, "sound-casing-P1/REC")).isEqualTo(95);
        Study own = study(withFirst(station(95), "model: DL-15", "model: DL-15, casing sound: 97 dBA"));
        assertThat(value(own, "sound-casing-P1/REC")).isEqualTo(97);
        assertThat(entry(own, "sound-casing-P1/REC")
                        .orElseThrow()
                        .derivation()
                        .limitSource()
                        .text())
                .doesNotContain("DL-15");
    }

    private static String station(int casing_dBA) {
        return withFirst(bakery, "REC: \\{hood: 12 dB", "REC: {casing: " + casing_dBA + " dBA, hood: 12 dB");
    }

    @Test
    void a_level_that_is_not_stated_is_told_and_not_counted_and_none_at_all_is_unknown() {
        String open = withFirst(cement, "casing: 90 dBA, hood: 15 dB, discharge: 104 dBA, ", "hood: 15 dB, ");
        Study one = study(withFirst(open, "casing sound: 90 dBA, ", ""));
        assertThat(((Answer.Unknown) answer(one, "sound-casing-P1/REC")).why()).contains("not counted");
        // the second machine states nothing, so no sum is given
        assertThat(((Answer.Unknown) answer(one, "sound-1m/REC")).why()).contains("P2");
    }

    // ---- what a container takes

    /** By hand: 1.8 m³ at 1200 kg/m³ would be 2160 kg; the cement example's bag holds 0.9 m³, so 1080 kg, marked for 1000 kg. */
    @Test
    void a_level_probe_lets_in_what_the_volume_weighs_and_changes_follow_from_that() {
        Study byProbe = study(withFirst(cement, "stop: scale", "stop: level probe"));
        assertThat(value(byProbe, "fill-cement/REC")).isCloseTo(0.9 * 1200, within(1e-9));
        assertThat(entry(byProbe, "fill-cement/REC").orElseThrow().name()).contains("above its safe working load");
        assertThat(byProbe.weeks().get(0).line().container_kg()).isCloseTo(1080, within(1e-9));
        assertThat(study(cement).weeks().get(0).line().container_kg()).isCloseTo(1000, within(1e-9));
    }

    @Test
    void a_marked_load_below_the_empty_bag_is_refused() {
        Reading light = PlantReader.read(withFirst(bakery, "safe working load: 500 kg", "safe working load: 2 kg"));
        assertThat(light).isInstanceOf(Reading.Faults.class);
        assertThat(light.toString()).contains("safe working load").contains("empty");
    }

    // ---- energy

    /** Both pumps of the cement example are coupled directly and start star-delta, so no belt and no drive takes its share. */
    @Test
    void a_machine_coupled_directly_without_a_drive_has_no_drive_to_lose_energy_in() {
        double asStated = value(study(cement), "energy-REC");
        assertThat(value(study(withFirst(cement, "drive efficiency: 0.95", "drive efficiency: 0.5")), "energy-REC"))
                .isEqualTo(asStated);
        String undescribed = cement.replace("coupled: direct, ", "");
        assertThat(value(study(undescribed), "energy-REC") / asStated).isCloseTo(1 / 0.95, within(1e-9));
    }

    // ---- what is not known

    /** Two halls fill bags; where one of them fills drums, its changes cost what a drum costs. */
    @Test
    void bags_and_drums_of_one_plant_have_prices_of_their_own() throws IOException {
        String bags = Files.readString(Path.of("..", "examples", "furniture", "plant.yaml"));
        Study two = study(bags);
        assertThat(two.weeks()).hasSize(2);
        double west = yearly(two, 0);
        double east = yearly(two, 1);
        assertThat(value(two, "container-cost")).isCloseTo(13 * (west + east), within(1e-6));
        int drum = bags.lastIndexOf("      kind: bulk bag");
        String mixing = bags.substring(0, drum)
                + "      {kind: drum, volume: 0.2 m3, safe working load: 150 kg, change time: 4 min, vent sock: 1.4 m2}\n"
                + bags.substring(bags.indexOf("    producers:", drum));
        Study mixed = study(withFirst(mixing, "container: 13 EUR", "container: 13 EUR\n  drum: 4 EUR"));
        assertThat(value(mixed, "container-cost"))
                .isCloseTo(13 * yearly(mixed, 0) + 4 * yearly(mixed, 1), within(1e-6));
        assertThat(entry(mixed, "container-cost").orElseThrow().derivation().steps())
                .anyMatch(step -> step.formula().equals("cost = Σ N price"));
    }

    private static double yearly(Study study, int station) {
        DustWeek week = study.weeks().get(station);
        return week.flow().collected_kg() / week.line().container_kg();
    }

    @Test
    void what_is_left_out_of_the_cost_is_named() {
        assertThat(((Answer.Words) answer(study(bakery), "left-out")).text())
                .contains("work lost")
                .doesNotContain("Containers");
        assertThat(entry(study(cement), "left/REC").orElseThrow().name()).contains("stated as picked up", "no cost");
        Study study = study(withoutDensity());
        assertThat(answer(study, "container-cost")).isInstanceOf(Answer.Unknown.class);
        assertThat(((Answer.Words) answer(study, "left-out")).text()).contains("Containers", "Work of changes");
        assertThat(entry(study, "life-cycle-cost").orElseThrow().name()).contains("of what has a price");
    }

    @Test
    void a_limit_that_is_asked_and_cannot_be_judged_is_not_known() {
        Study study = study(
                withFirst(withoutDensity(), "transport factor: 1\n", "transport factor: 1\n  container life: 7 d\n"));
        Finding life = finding(study, FindingCode.CONTAINER_LIFE);
        assertThat(life.decided()).isFalse();
        assertThat(life.holds()).isFalse();
        assertThat(Wording.valueAndLimit(life, new Show(UnitSystem.SI))).contains("no figure known", "bulk density");
        assertThat(finding(study, FindingCode.SOCK_VELOCITY).unjudged()).isTrue();
        String json = JsonAnswers.verify(study);
        String told = json.substring(json.lastIndexOf("\"id\" : \"" + life.id() + "\""));
        assertThat(told.lines().limit(17))
                .anyMatch(line -> line.contains("\"value\" : null"))
                .anyMatch(line -> line.contains("\"limit\" : 604800"))
                .anyMatch(line -> line.contains("\"margin\" : null"))
                .anyMatch(line -> line.contains("\"decided\" : false"));
    }

    private static String withoutDensity() {
        return withFirst(
                bakery, ", +class: very fine light dust, +bulk density: 550 kg/m3", ", class: very fine light dust");
    }

    @Test
    void what_is_not_stated_stays_unknown_and_says_what_to_enter() {
        Study study = study(withFirst(bakery, " *safe working load: [^\\n]*\\n", ""));
        assertThat(answer(study, "load/REC")).isInstanceOf(Answer.Unknown.class);
        assertThat(((Answer.Unknown) answer(study, "load/REC")).why()).contains("safe working load");
        assertThat(finding(study, FindingCode.CONTAINER_LOAD).unjudged()).isTrue();
        Study noShifts = study(withFirst(bakery, " *shifts: [^\\n]*\\n", ""));
        assertThat(((Answer.Unknown) answer(noShifts, "changes/REC")).why()).contains("shifts");
        assertThat(answer(noShifts, "energy-REC")).isInstanceOf(Answer.Unknown.class);
    }

    @Test
    void a_dust_without_bulk_density_gives_no_bag_life() {
        Study study = study(withFirst(
                bakery, ", +class: very fine light dust, +bulk density: 550 kg/m3", ", class: very fine light dust"));
        assertThat(((Answer.Unknown) answer(study, "changes/REC")).why()).contains("bulk density");
        assertThat(study.weeks()).isEmpty();
    }

    // ---- what comes out

    @Test
    void the_last_step_of_every_figure_gives_that_figure() {
        for (String text : List.of(bakery, cement)) {
            Study study = study(text);
            study.sheets().stream()
                    .filter(s -> OURS.contains(s.id().replace("/REC", "")))
                    .flatMap(s -> s.entries().stream())
                    .forEach(entry -> {
                        List<Step> steps = entry.derivation().steps();
                        if (entry.answer() instanceof Answer.Known known && !steps.isEmpty()) {
                            assertThat(steps.get(steps.size() - 1).result().value())
                                    .as(entry.id())
                                    .isEqualTo(known.value());
                        }
                    });
        }
    }

    @Test
    void a_weeks_dust_is_bags_times_their_fill_on_the_average_of_a_year() {
        DustWeek week = study(cement).weeks().get(0);
        double inBags_kg = week.flow().removed_kg()
                + week.flow().container_kg()
                + week.flow().receiver_kg();
        assertThat(inBags_kg)
                .isCloseTo(week.flow().collected_kg(), within(1e-9 * week.flow().collected_kg()));
        assertThat(week.flow().removed_kg()).isCloseTo(week.flow().changes().size() * 1000.0, within(1e-6));
    }

    @Test
    void a_bag_that_is_not_inflated_is_changed_more_often_and_the_sheet_says_by_how_much() {
        Study inflated = study(bakery);
        Study folded = study(withFirst(bakery, "\\n *inflation: [^\\n]*", ""));
        assertThat(value(folded, "fills-short/REC")).isCloseTo(0.8 * 0.45, within(1e-12));
        // by hand: 0.45 m³ at 550 kg/m³ are 247.5 kg, four fifths of it 198 kg
        double byMass = value(inflated, "dust-week/REC") * (1 / 198.0 - 1 / 247.5);
        assertThat(value(inflated, "short-costs/REC") * WEEK_s).isCloseTo(byMass, within(1e-9 * byMass));
        assertThat(value(folded, "changes/REC")).isGreaterThan(value(inflated, "changes/REC"));
        assertThat(value(folded, "short-costs/REC")).isCloseTo(value(inflated, "short-costs/REC"), withinPercentage(5));
    }

    /** A bag more costs what it is bought for and the time of its change; whole changes of a week make no step in it. */
    @Test
    void what_it_costs_not_to_inflate_runs_straight_with_the_dust() {
        double once = value(study(bakery), "short-cost-REC");
        assertThat(once).isPositive();
        for (String minutes : List.of("10", "40")) {
            Study other = study(withFirst(bakery, "cleaning: 20 min", "cleaning: " + minutes + " min"));
            double share = value(other, "dust-week/REC") / value(study(bakery), "dust-week/REC");
            assertThat(value(other, "short-cost-REC") / once).isCloseTo(share, within(1e-9));
        }
    }

    @Test
    void twice_the_feed_halves_the_time_to_fill() {
        Study once = study(bakery);
        Study twice = study(bakery.replace("feed: 40 kg/h", "feed: 80 kg/h"));
        assertThat(value(twice, "fill-time/REC")).isCloseTo(value(once, "fill-time/REC") / 2, within(1e-6));
        assertThat(value(twice, "changes/REC")).isGreaterThan(value(once, "changes/REC"));
    }

    @Test
    void however_much_is_fed_a_container_fills_no_faster_than_the_full_valve_discharges() {
        Study flooded = study(bakery.replace("feed: 40 kg/h", "feed: 4000 kg/h"));
        assertThat(value(flooded, "valve/REC")).isLessThan(value(flooded, "rate/REC"));
        double taken_kg = value(study(bakery), "fill-time/REC") * value(study(bakery), "rate/REC");
        assertThat(value(flooded, "fill-time/REC") * value(flooded, "valve/REC"))
                .isCloseTo(taken_kg, within(1e-6 * taken_kg));
    }

    @Test
    void states_shared_out_among_threads_are_those_solved_one_by_one_from_scratch() {
        Plant plant = study(bakery).plant();
        List<State> usual = States.usual(plant);
        assertThat(usual).as("enough for several threads").hasSizeGreaterThan(64);
        Study shared = Study.of(plant, usual);
        for (StateAnswer answer : shared.states()) {
            assertThat(DutyPointSolver.solve(plant, answer.state()))
                    .as(answer.state().name())
                    .isEqualTo(answer.duty());
        }
    }

    /** Rows by hand: 88 dBA under a hood of 12 dB and 100 dBA behind a silencer of 25 dB are 76 and 75 dBA, together 78.5. */
    @Test
    void sound_adds_by_energy_behind_hood_and_silencer() {
        assertThat(value(study(bakery), "sound-1m/REC"))
                .isCloseTo(10 * Math.log10(Math.pow(10, 7.6) + Math.pow(10, 7.5)), within(1e-9));
        assertThat(value(study(cement), "sound-1m/REC"))
                .as("two pumps are 3 dB more than one")
                .isCloseTo(10 * Math.log10(2 * (Math.pow(10, 7.5) + Math.pow(10, 7.9))), within(1e-9));
    }

    @Test
    void pulse_air_is_by_the_stated_pulses_and_else_by_the_usual_share() {
        Study stated = study(bakery);
        assertThat(value(stated, "pulse-air/REC")).isCloseTo(120 / 3600.0 * 0.04, within(1e-12));
        Study usual = study(withFirst(bakery, "REC: \\{per pulse: 40 L free, pulses: 120 /h\\}", "REC: {}"));
        assertThat(entry(usual, "pulse-air/REC")
                        .orElseThrow()
                        .derivation()
                        .steps()
                        .get(0)
                        .equation())
                .isEqualTo("CST-15");
    }

    /** One rule with the energy of a year: a sum without one of its parts is no year's air. */
    @Test
    void compressed_air_of_a_year_is_not_known_without_the_air_of_the_seal() {
        Study stated = study(bakery);
        assertThat(value(stated, "air-cost")).isPositive();
        Study study = study(
                withFirst(bakery, "neck seal: \\{pressure: 4 psi, volume: [^}]*\\}", "neck seal: {pressure: 4 psi}"));
        assertThat(entry(study, "air-cost").orElseThrow().answer())
                .isInstanceOfSatisfying(
                        Answer.Unknown.class, u -> assertThat(u.why()).contains("its neck seal, REC"));
        assertThat(entry(study, "left-out").orElseThrow().answer())
                .isInstanceOfSatisfying(
                        Answer.Words.class, w -> assertThat(w.text()).contains("Compressed air, a year"));
    }

    /** NIST Handbook 135 factors at 4 % and 15 years, energy growing by 1 %: UPV 11.1184, and the sheet's own yearly amounts. */
    @Test
    void life_cycle_cost_is_first_cost_and_yearly_amounts_in_present_value() {
        Study study = study(bakery);
        double q = 1.01 / 1.04;
        double growing = 1.01 / 0.03 * (1 - Math.pow(q, 15));
        double filters = 1500 * (Math.pow(1.04, -3) + Math.pow(1.04, -6) + Math.pow(1.04, -9) + Math.pow(1.04, -12));
        double byHand = 78000
                + (value(study, "energy-cost") + value(study, "air-cost")) * growing
                + (value(study, "container-cost") + value(study, "labour-cost") + 1200) * 11.118387
                + filters;
        assertThat(value(study, "life-cycle-cost")).isCloseTo(byHand, within(0.01));
    }

    @Test
    void producers_that_run_through_the_shift_take_more_energy_and_no_inlet_less() {
        double while_cleaning = value(study(bakery), "energy-REC");
        double through = value(
                study(withFirst(bakery, "producers run: while cleaning", "producers run: through the shift")),
                "energy-REC");
        assertThat(through).isGreaterThan(2 * while_cleaning);
    }
}
