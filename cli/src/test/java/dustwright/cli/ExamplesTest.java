package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dustwright.documents.answers.TextAnswers;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.OperatingChart;
import dustwright.engine.PressureProfile;
import dustwright.engine.StateAnswer;
import dustwright.engine.States;
import dustwright.engine.StationCurves;
import dustwright.engine.Study;
import dustwright.engine.Trial;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.plant.DesignSet;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Zone;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The example plants as tests: each is read, solved and judged as {@code verify} does it, and keeps the verdict stated here and the
 * printed answer accepted beside it. {@code -Ddustwright.accept=true} writes the answers anew: read the difference before committing.
 */
class ExamplesTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final int WIDTH = 100;
    private static final Map<String, Study> STUDIES = new HashMap<>();

    /**
     * What is stated of a plant.
     *
     * @param failing runs or inlets where something does not hold, worst first; empty when everything holds
     * @param codes what does not hold there
     */
    record Stated(String plant, int inlets, int users, List<String> failing, Set<FindingCode> codes) {
        /** Where nothing fails but that dust settles. */
        Stated(String plant, int inlets, int users, List<String> settles) {
            this(plant, inlets, users, settles, Set.of(FindingCode.TRANSPORT_VELOCITY));
        }

        @Override
        public String toString() {
            return plant;
        }
    }

    static List<Stated> stated() {
        return List.of(
                new Stated("aluminium-finishing", 22, 2, List.of("H1", "H2")),
                new Stated("bakery", 24, 3, List.of()),
                new Stated("bakery-one-main", 24, 3, List.of("HP1", "HP2")),
                new Stated("bakery-unsized", 24, 3, List.of("HM1", "HM2")),
                new Stated("cement-packing", 60, 5, List.of()),
                new Stated("furniture", 120, 6, List.of()),
                new Stated("furniture-hall-unsized", 60, 3, List.of("DW1-1", "HW1-1")),
                new Stated("plastics", 36, 3, List.of()),
                new Stated("supplement", 28, 2, List.of()),
                new Stated(
                        "supplement-new-bay",
                        34,
                        2,
                        List.of("S8b", "S8b"),
                        Set.of(FindingCode.INLET_VACUUM, FindingCode.TOOL_FLOW)),
                new Stated("supplement-ring", 28, 2, List.of("HS13", "HS12")));
    }

    @Test
    void every_folder_of_examples_has_a_stated_verdict_and_a_line_in_the_list() throws IOException {
        try (Stream<Path> folders = Files.list(EXAMPLES)) {
            assertThat(folders.filter(Files::isDirectory)
                            .map(f -> f.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(
                            stated().stream().map(Stated::plant).toList());
        }
        String list = Files.readString(EXAMPLES.resolve("README.md"));
        assertThat(stated()).allSatisfy(s -> assertThat(list).contains("(" + s.plant() + "/plant.yaml)"));
    }

    @ParameterizedTest
    @MethodSource("stated")
    void an_example_says_that_it_is_invented_and_asks_users_apart_from_inlets(Stated stated) {
        Plant plant = read(stated.plant()).plant();
        assertThat(plant.note()).contains("Invented demo plant");
        assertThat(plant.inlets()).hasSize(stated.inlets());
        assertThat(plant.usage().simultaneousUsers()).isEqualTo(stated.users());
    }

    @ParameterizedTest
    @MethodSource("stated")
    void design_sets_keep_to_the_users_agreed_for_the_plant_and_for_each_zone(Stated stated) {
        Plant plant = read(stated.plant()).plant();
        for (DesignSet set : plant.usage().designSets()) {
            assertThat(set.open()).as(set.name()).hasSize(stated.users());
            for (Zone zone : plant.usage().zones()) {
                long inZone = set.open().stream()
                        .filter(id -> plant.inlet(id).zone().equals(zone.id()))
                        .count();
                assertThat(inZone)
                        .as(set.name() + " in " + zone.id())
                        .isLessThanOrEqualTo(zone.users().orElseThrow());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("stated")
    void every_state_of_an_example_is_solved_unchoked_and_passes_the_audit(Stated stated) {
        Study study = study(stated.plant());
        assertThat(study.states())
                .isNotEmpty()
                .allSatisfy(answer -> assertThat(duty(answer).unchoked())
                        .as(answer.state().name())
                        .isTrue());
        assertThat(study.worstFirst()).extracting(Finding::code).doesNotContain(FindingCode.BALANCE);
    }

    private static DutyPoint duty(StateAnswer answer) {
        return answer.duty().match(duty -> duty, why -> {
            throw new AssertionError(answer.state().name() + ": " + why);
        });
    }

    @ParameterizedTest
    @MethodSource("stated")
    void an_example_holds_or_fails_where_it_is_stated(Stated stated) {
        Study study = study(stated.plant());
        List<Finding> failing =
                study.worstPerPlace().stream().filter(f -> !f.holds()).toList();
        assertThat(study.holds()).isEqualTo(stated.failing().isEmpty());
        assertThat(failing).extracting(Finding::code).allMatch(stated.codes()::contains);
        assertThat(failing.stream()
                        .limit(stated.failing().size())
                        .map(f -> f.where().id()))
                .containsExactlyElementsOf(stated.failing());
    }

    /** The report draws them; where they cross is where the network was solved, but for the chords between seventeen points. */
    /** As the head of its file says: the bleed carries the far stretch but starves three users. */
    @Test
    void in_the_room_with_one_main_a_bleed_raises_the_velocity_and_starves_the_tools() {
        Study study = study("bakery-one-main").withCurves();
        Trial bleed = study.trials().stream()
                .filter(t -> t.change() instanceof Trial.Change.OpenBleed)
                .findFirst()
                .orElseThrow();
        assertThat(bleed.run()).isEqualTo("HP1");
        Finding before = study.worstFirst().get(0);
        assertThat(bleed.there().orElseThrow().margin()).isGreaterThan(before.margin());
        assertThat(bleed.tightest().orElseThrow().code()).isEqualTo(FindingCode.TOOL_FLOW);
        assertThat(bleed.tightest().orElseThrow().fails()).isTrue();
    }

    /** Opened at its slowest run, the ring is a tree: all air of the one user passes the drop and one side of the main. */
    @Test
    void the_ring_opened_where_it_is_slowest_carries_the_dust_of_that_user() {
        List<Trial> trials = study("supplement-ring").withCurves().trials();
        assertThat(trials).extracting(Trial::change).containsExactly(new Trial.Change.OpenLoop());
        assertThat(trials.get(0).there().orElseThrow().holds()).isTrue();
    }

    @Test
    void nothing_is_tried_where_no_dust_settles() {
        assertThat(study("bakery").withCurves().trials()).isEmpty();
    }

    /** In a loop main the largest flow is not the way past the slowest run. */
    @ParameterizedTest
    @MethodSource("stated")
    void the_path_shown_leads_through_the_run_or_inlet_with_the_smallest_margin(Stated stated) {
        Study study = study(stated.plant()).withCurves();
        PressureProfile profile = study.profiles().get(0);
        StateAnswer state = study.states().stream()
                .filter(a -> a.state().name().equals(profile.state()))
                .findFirst()
                .orElseThrow();
        Place worst = state.findings().stream()
                .filter(f -> f.where().kind() == Place.Kind.RUN || f.where().kind() == Place.Kind.INLET)
                .min(Comparator.comparingDouble(Finding::margin))
                .orElseThrow()
                .where();
        Stream<String> passed = Stream.concat(
                Stream.of(profile.inlet()), profile.stretches().stream().map(PressureProfile.Stretch::piece));
        assertThat(passed).contains(worst.id());
        assertThat(profile.stretches()).isSortedAccordingTo(Comparator.comparing(PressureProfile.Stretch::vacuumFrom));
    }

    @ParameterizedTest
    @MethodSource("stated")
    void system_and_producers_meet_at_the_operating_point(Stated stated) {
        for (StationCurves curves : study(stated.plant()).withCurves().charts()) {
            OperatingChart chart = curves.chart();
            double flow = chart.operating().flow().si();
            double vacuum = chart.operating().vacuum().si();
            assertThat(at(flow, chart.system())).as("system").isCloseTo(vacuum, withinPercentage(5));
            assertThat(at(flow, chart.producer())).as("producers").isCloseTo(vacuum, withinPercentage(5));
        }
    }

    private static double at(double flow, List<OperatingChart.ChartPoint> curve) {
        for (int n = 1; n < curve.size(); n++) {
            double from = curve.get(n - 1).flow().si();
            double to = curve.get(n).flow().si();
            if (flow >= from && flow <= to) {
                double share = (flow - from) / (to - from);
                return curve.get(n - 1).vacuum().si() * (1 - share)
                        + curve.get(n).vacuum().si() * share;
            }
        }
        throw new AssertionError(
                "no point of the curve on either side of " + flow + " m³/s, " + curve.size() + " points");
    }

    @ParameterizedTest
    @MethodSource("stated")
    void verify_prints_what_was_accepted(Stated stated) throws IOException {
        String printed =
                TextAnswers.verify(study(stated.plant()), read(stated.plant()).units(), WIDTH);
        accepted(stated.plant(), "verify.txt", printed);
    }

    /** Every figure of every sheet, one to a line: a change of one is seen here, whatever page prints it. */
    @ParameterizedTest
    @MethodSource("stated")
    void the_figures_of_the_sheets_are_those_that_were_accepted(Stated stated) throws IOException {
        Show show = new Show(read(stated.plant()).units());
        String figures = study(stated.plant()).withSheets().sheets().stream()
                .flatMap(sheet -> Stream.concat(
                        sheet.entries().stream()
                                .map(entry -> sheet.id() + " | " + entry.id() + " | "
                                        + Wording.answer(entry.answer(), Wording.across(sheet, show))),
                        sheet.findings().stream()
                                .map(finding -> sheet.id() + " | " + finding.code() + " | "
                                        + Wording.valueAndLimit(finding, show))))
                .map(line -> line.replace('\u00A0', ' ') + "\n")
                .collect(Collectors.joining());
        accepted(stated.plant(), "sheets.txt", figures);
    }

    private static void accepted(String plant, String file, String printed) throws IOException {
        Path accepted = EXAMPLES.resolve(plant).resolve("expected").resolve(file);
        if (Boolean.getBoolean("dustwright.accept")) {
            Files.createDirectories(accepted.getParent());
            Files.writeString(accepted, printed);
        }
        assertThat(accepted).as("accept the answer once, see the recipe").exists();
        assertThat(printed).isEqualToNormalizingNewlines(Files.readString(accepted));
    }

    private static Reading.Read read(String plant) {
        Reading reading = PlantReader.read(EXAMPLES.resolve(plant).resolve("plant.yaml"));
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Read.class);
        return (Reading.Read) reading;
    }

    static Study study(String plant) {
        return STUDIES.computeIfAbsent(plant, p -> {
            Plant read = read(p).plant();
            return Study.of(read, States.usual(read));
        });
    }
}
