package dustwright.cli;

import static dustwright.cli.Edits.plant;
import static dustwright.cli.Edits.study;
import static dustwright.cli.Edits.withEach;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Effort;
import dustwright.engine.coverage.Question;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.receiver.FilterCondition;
import dustwright.plantfile.keys.PlantKeys;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a plant file asks is judged, or it is said that nobody can judge it and what to enter: it does not vanish. */
class StatedRequirementsTest {
    private record Asked(String value, FindingCode code) {}

    /** Every key under "requirements", with a value and the finding that answers it. */
    private static final Map<String, Asked> ALL = Map.ofEntries(
            entry("tool flow", new Asked("100 scfm", FindingCode.TOOL_FLOW)),
            entry("inlet vacuum", new Asked("2 inHg", FindingCode.INLET_VACUUM)),
            entry("transport factor", new Asked("1.2", FindingCode.TRANSPORT_VELOCITY)),
            entry("saltation factor", new Asked("1.5", FindingCode.CARRYING_VELOCITY)),
            entry("loading ratio", new Asked("2", FindingCode.LOADING_RATIO)),
            entry("wear velocity", new Asked("60 m/s", FindingCode.WEAR_VELOCITY)),
            entry("air to cloth", new Asked("5 ft/min", FindingCode.AIR_TO_CLOTH)),
            entry("can velocity", new Asked("300 ft/min", FindingCode.CAN_VELOCITY)),
            entry("cleaning interval", new Asked("30 min", FindingCode.CLEANING_INTERVAL)),
            entry("hold-up", new Asked("30 min", FindingCode.HOLD_UP)),
            entry("valve capacity", new Asked("2", FindingCode.VALVE_CAPACITY)),
            entry("container life", new Asked("1 d", FindingCode.CONTAINER_LIFE)),
            entry("sock velocity", new Asked("4 ft/min", FindingCode.SOCK_VELOCITY)),
            entry("sound at 1 m", new Asked("85 dBA", FindingCode.SOUND_AT_ONE_METRE)),
            entry("daily exposure", new Asked("80 dBA", FindingCode.DAILY_EXPOSURE)));

    private static String bakery = "";

    @BeforeAll
    static void read() throws IOException {
        bakery = Files.readString(Path.of("..", "examples", "bakery", "plant.yaml"));
    }

    private static Asked asked(String key) {
        return Objects.requireNonNull(ALL.get(key), key);
    }

    static Stream<String> keys() {
        return PlantKeys.REQUIREMENTS.names().stream();
    }

    private static List<Finding> of(Study study, FindingCode code) {
        return study.findings().filter(finding -> finding.code() == code).toList();
    }

    /** The plant file asking this and nothing else. */
    private static String asking(String text, String key, String... besides) {
        return text.replaceFirst(
                "(?m)^requirements:\\n( .*\\n)*",
                "requirements:\n  " + key + ": " + asked(key).value() + "\n"
                        + Stream.of(besides).map(line -> "  " + line + "\n").collect(Collectors.joining()));
    }

    @Test
    void every_key_of_the_requirements_is_looked_at_here() {
        assertThat(ALL.keySet()).containsExactlyInAnyOrderElementsOf(PlantKeys.REQUIREMENTS.names());
    }

    @ParameterizedTest
    @MethodSource("keys")
    void what_is_asked_of_a_described_plant_is_answered(String key) {
        assertThat(of(study(asking(bakery, key)), asked(key).code())).as(key).isNotEmpty();
    }

    /** One entry is taken away: the requirement stays, and is said to be not known. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "hold-up           | ', height: 0.7 m'                 | ''  | level probe",
                "hold-up           | ', feed: [0-9]+ kg/h'              | ''  | feed",
                "hold-up           | ' bulk density: 480 kg/m3,'        | ''  | bulk density",
                "can velocity      | 'free area: 0.45 m2, '            | ''  | free area",
                "daily exposure    | ', elsewhere: 76 dBA'             | ''  | elsewhere",
                "daily exposure    | ', time there: 30 min'            | ''  | time there",
                "daily exposure    | ' operator at: 4 m,'              | ''  | operator at",
                "daily exposure    | '  shifts: .*\\n'                 | ''  | shifts",
                "daily exposure    | '(?s)\\nsound:.*$'                | ''  | operator at",
                "daily exposure    | 'model: DL-15, speed: 2155 rpm'   | 'kind: lobe, displacement: 0.0076 m3, deepest vacuum: 14 inHg, greatest rise: 130 K, motor: 15 hp, speed range: [700 rpm, 2300 rpm], speed: 2155 rpm' | casing sound",
                "sound at 1 m      | 'model: DL-15, speed: 2155 rpm'   | 'kind: lobe, displacement: 0.0076 m3, deepest vacuum: 14 inHg, greatest rise: 130 K, motor: 15 hp, speed range: [700 rpm, 2300 rpm], speed: 2155 rpm' | casing sound",
                "cleaning interval | ', cake resistance: [^,]*'        | ''  | cake resistance",
                "cleaning interval | ', feed: [0-9]+ kg/h'              | ''  | feed",
                "cleaning interval | 'inlet vacuum: 3 inHg'            | 'can velocity: 300 ft/min' | tool flow",
                "valve capacity    | ', feed: [0-9]+ kg/h'              | ''  | feed",
                "valve capacity    | ' bulk density: 480 kg/m3,'        | ''  | bulk density",
                "container life    | '  shifts: .*\\n'                 | ''  | shifts",
                "container life    | '(?s)    container:\\n.*?    producers:' | '    producers:'  | container",
                "sock velocity     | '(?s)    container:\\n.*?    producers:' | '    producers:'  | container",
                "sock velocity     | '      vent sock: 1.4 m2\\n'      | ''  | vent sock",
                "valve capacity    | '(?s)    rotary valve:.*?    container:' | '    container:' | rotary valve",
                "valve capacity    | 'speed: 15 rpm'                    | 'speed: 90 rpm' | 0.8 m/s",
                "container life    | 'speed: 15 rpm'                    | 'speed: 90 rpm' | 0.8 m/s",
                "sock velocity     | 'speed: 15 rpm'                    | 'speed: 90 rpm' | 0.8 m/s",
                "sock velocity     | '(?s)    rotary valve:.*?    container:' | '    container:' | rotary valve",
                "loading ratio     | ', feed: [0-9]+ kg/h'              | ''  | feed",
                "saltation factor  | ', feed: [0-9]+ kg/h'              | ''  | feed",
                "saltation factor  | ' particle size: [^,]*, particle density: [^,]*,' | ''  | particle size",
                "saltation factor  | 'particle size: 0.06 mm'          | 'particle size: 0.002 mm' | carrying velocity"
            })
    void what_cannot_be_judged_is_not_known_and_says_what_to_enter(
            String key, String entered, String instead, String toEnter) {
        String text = asking(bakery, key, "inlet vacuum: 3 inHg");
        Study study = study(withEach(text, unquoted(entered), unquoted(instead)));
        FindingCode code = asked(key).code();
        Finding finding = study.worstPerPlace().stream()
                .filter(f -> f.code() == code)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " has vanished"));
        assertThat(finding.unjudged()).as(finding.toString()).isTrue();
        assertThat(finding.derivation().steps().get(0).formula()).contains(toEnter);
        assertThat(study.holds()).isFalse();
    }

    @Test
    void what_is_measured_to_carry_a_dust_too_fine_for_the_laws_is_judged() {
        String fine = withEach(
                asking(bakery, "saltation factor", "inlet vacuum: 3 inHg"),
                "particle size: 0.06 mm",
                "particle size: 0.002 mm, carrying velocity: 9 m/s");
        assertThat(of(study(fine), FindingCode.CARRYING_VELOCITY))
                .isNotEmpty()
                .allMatch(Finding::decided)
                .anySatisfy(finding -> assertThat(finding.limit().si()).isCloseTo(1.5 * 9, within(1e-12)));
    }

    @Test
    void no_proof_over_all_sets_where_no_law_may_be_asked() {
        Plant plant = plant(withEach(
                asking(bakery, "saltation factor", "inlet vacuum: 3 inHg"),
                "particle size: 0.06 mm",
                "particle size: 0.002 mm"));
        List<State> conditions = States.conditions(plant, List.of(FilterCondition.CLEAN));
        Coverage coverage = Coverage.of(
                plant,
                new Question(List.of(1), Map.of(), conditions),
                duty -> Study.judge(plant, duty),
                new Effort(1, 1000, 0, false, false, () -> false, share -> {}, List.of()));
        assertThat(coverage.holds()).isFalse();
        assertThat(coverage.answers())
                .filteredOn(answer -> answer.verdict() == Answer.Verdict.UNDECIDED)
                .isNotEmpty()
                .allSatisfy(answer -> assertThat(answer.why()).contains("carrying velocity"));
    }

    @Test
    void a_dust_that_flows_poorly_and_was_not_tested_leaves_bridging_open() {
        String untested = withEach(
                bakery,
                "wall friction: 20 deg, effective angle: 44 deg, (repose: 48 deg, largest lump: 30 mm),(?s).*?\\}\\}",
                "$1}}");
        assertThat(of(study(untested), FindingCode.HOPPER_OUTLET))
                .singleElement()
                .satisfies(open -> {
                    assertThat(open.unjudged()).isTrue();
                    assertThat(open.derivation().steps().get(0).formula()).contains("shear cell", "poor");
                });
        assertThat(of(study(withEach(untested, "repose: 48 deg", "repose: 33 deg")), FindingCode.HOPPER_OUTLET))
                .as("what flows by itself is judged by its lumps")
                .isNotEmpty()
                .allMatch(Finding::holds);
        assertThat(of(study(bakery), FindingCode.HOPPER_OUTLET)).isNotEmpty().allMatch(Finding::holds);
    }

    @Test
    void a_scale_set_above_what_the_container_holds_does_not_stop_it() {
        String scale = withEach(bakery, "stop: level probe", "stop: scale");
        assertThat(of(study(scale), FindingCode.SCALE_TOO_LATE)).singleElement().matches(Finding::fails);
        assertThat(of(
                        study(withEach(scale, "safe working load: 500 kg", "safe working load: 200 kg")),
                        FindingCode.SCALE_TOO_LATE))
                .singleElement()
                .matches(Finding::holds);
        assertThat(of(study(bakery), FindingCode.SCALE_TOO_LATE)).isEmpty();
    }

    /** Nobody asks an interval, but the shift vacuums for a stated time and the filter is cleaned off line. */
    @Test
    void a_filter_lasts_while_a_shift_vacuums_where_no_interval_is_asked() {
        String silent = withEach(
                withEach(bakery, "  cleaning interval: .*\n", ""), "pre-separation: [^,}]*", "pre-separation: 0 %");
        assertThat(of(study(silent), FindingCode.CLEANING_INTERVAL))
                .isNotEmpty()
                .anyMatch(Finding::fails);
    }

    @Test
    void a_fibre_that_this_air_spoils_is_a_finding() {
        String moist = withEach(bakery, "fibre: polyester,", "fibre: polyester, hot and moist: yes,");
        assertThat(of(study(moist), FindingCode.FIBRE_UNFIT)).singleElement().matches(Finding::fails);
        assertThat(of(study(bakery), FindingCode.FIBRE_UNFIT)).isEmpty();
    }

    @Test
    void a_drum_without_a_rotary_valve_above_it_is_held_against_the_vacuum() throws IOException {
        String supplement = Files.readString(Path.of("..", "examples", "supplement", "plant.yaml"));
        assertThat(of(study(supplement), FindingCode.DRUM_VACUUM))
                .singleElement()
                .matches(Finding::holds);
        assertThat(of(study(withEach(supplement, "greatest vacuum: [^#\n]*", "")), FindingCode.DRUM_VACUUM))
                .singleElement()
                .matches(Finding::unjudged);
        assertThat(of(
                        study(withEach(supplement, "greatest vacuum: [^#\n]*", "greatest vacuum: 2 inHg ")),
                        FindingCode.DRUM_VACUUM))
                .singleElement()
                .matches(Finding::fails);
    }

    private static String unquoted(String quoted) {
        return quoted.substring(1, quoted.length() - 1);
    }

    @Test
    void one_set_of_several_whose_cleaning_interval_is_not_known_is_not_covered_by_the_others() {
        Study study = study(withEach(bakery, ", cake resistance: 2e5 1/s", ""));
        List<Finding> intervals = of(study, FindingCode.CLEANING_INTERVAL);
        assertThat(intervals).anyMatch(Finding::holds);
        assertThat(intervals).filteredOn(Finding::unjudged).singleElement().satisfies(open -> {
            assertThat(open.state()).isEqualTo("with-allergen");
            assertThat(study.worstPerPlace()).contains(open);
        });
    }

    @Test
    void a_filter_that_hardly_loads_runs_at_least_until_its_formula_ends() {
        String light = withEach(bakery, "cake resistance: [0-9.e]+ 1/s", "cake resistance: 1000 1/s");
        Study half = study(light);
        assertThat(of(half, FindingCode.CLEANING_INTERVAL)).isNotEmpty().allMatch(Finding::holds);
        Study much = study(withEach(light, "cleaning interval: 30 min", "cleaning interval: 2000 h"));
        assertThat(of(much, FindingCode.CLEANING_INTERVAL)).isNotEmpty().allMatch(Finding::unjudged);
    }

    @Test
    void elements_that_bear_less_than_the_set_point_of_the_filter_drop_fail_in_the_units_of_the_filters_sheet() {
        Study weak = study(withEach(bakery, "fibre: polyester,", "fibre: polyester, greatest difference: 8 inH2O,"));
        assertThat(of(weak, FindingCode.FILTER_DIFFERENCE)).singleElement().satisfies(finding -> {
            assertThat(finding.fails()).isTrue();
            assertThat(Wording.valueAndLimit(finding, new Show(UnitSystem.US)).replace('\u00A0', ' '))
                    .isEqualTo("8.00 inH₂O, least 10.00");
        });
        Study strong = study(withEach(bakery, "fibre: polyester,", "fibre: polyester, greatest difference: 20 inH2O,"));
        assertThat(of(strong, FindingCode.FILTER_DIFFERENCE)).singleElement().matches(Finding::holds);
    }

    @Test
    void a_bulk_bag_without_a_rotary_valve_above_it_stands_under_vacuum() {
        Study study = study(withEach(bakery, "(?s)    rotary valve:.*?    container:", "    container:"));
        assertThat(of(study, FindingCode.BAG_UNDER_VACUUM))
                .singleElement()
                .satisfies(finding -> assertThat(finding.fails()).isTrue());
        assertThat(of(study, FindingCode.SOCK_VELOCITY)).singleElement().matches(Finding::unjudged);
        assertThat(of(study(bakery), FindingCode.BAG_UNDER_VACUUM)).isEmpty();
    }
}
