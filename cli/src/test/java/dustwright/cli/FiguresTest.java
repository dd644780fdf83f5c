package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.documents.answers.JsonAnswers;
import dustwright.documents.answers.TextAnswers;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.Study;
import dustwright.engine.finding.Step;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.sheet.Answer;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import dustwright.engine.sheet.Sheets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every figure of every example's sheets can be explained, and is the same figure wherever it stands. */
class FiguresTest {
    /** What stands on a sheet as it was entered or as a table has it: the head of its id. All else is computed and shows how. */
    private static final Set<String> STATED = Set.of(
            "volume",
            "load",
            "seal",
            "cleaning",
            "kst",
            "pmax",
            "producer",
            "mie",
            "mit",
            "lit",
            "mec",
            "cloth",
            "resistance",
            "charge",
            "vent",
            "layer",
            "hose",
            "motor",
            "service",
            "short",
            "vacuum",
            "deepest",
            "pre",
            "relief",
            "throat",
            "elements",
            "inlet",
            "upkeep",
            "safety",
            "sound",
            "supply",
            "container");

    private static final Map<String, Study> STUDIES = new HashMap<>();

    static List<String> plants() {
        return ExamplesTest.stated().stream().map(ExamplesTest.Stated::plant).toList();
    }

    private static Study study(String plant) {
        return STUDIES.computeIfAbsent(plant, p -> ExamplesTest.study(p).withSheets());
    }

    @ParameterizedTest
    @MethodSource("plants")
    void a_figure_that_nobody_entered_shows_how_it_was_found(String plant) {
        for (Sheet sheet : study(plant).sheets()) {
            for (Entry entry : sheet.entries()) {
                List<Step> steps = entry.derivation().steps();
                if (!(entry.answer() instanceof Answer.Known known)) {
                    continue;
                }
                if (steps.isEmpty()) {
                    assertThat(entry.id().split("[-/]", -1)[0]).as(entry.id()).isIn(STATED);
                } else {
                    assertThat(steps.get(steps.size() - 1).result().value())
                            .as(entry.id())
                            .isEqualTo(known.value());
                }
            }
        }
    }

    /** From the hose to the bag and the panel: what a plant with a station must know, each somewhere on its sheets. */
    private static final List<String> CHAIN = List.of(
            "flow",
            "rising",
            "drop-normal",
            "motor-load",
            "discharge-temperature",
            "volume",
            "rate",
            "fill-time",
            "dust-week",
            "changes",
            "pulse-air-week",
            "sound-1m",
            "full-load-current",
            "conductor",
            "connected-current",
            "enclosure",
            "panel-heat",
            "energy",
            "year-cost",
            "life-cycle-cost");

    @ParameterizedTest
    @MethodSource("plants")
    void every_example_with_a_station_knows_the_whole_chain(String plant) {
        Study study = study(plant);
        if (study.plant().stations().isEmpty()) {
            return;
        }
        List<Entry> entries = study.sheets().stream()
                .flatMap(sheet -> sheet.entries().stream())
                .toList();
        for (String link : CHAIN) {
            List<Entry> there = entries.stream()
                    .filter(entry -> entry.id().equals(link)
                            || entry.id().startsWith(link + "/")
                            || (entry.id().startsWith(link + "-") && link.equals("energy")))
                    .toList();
            assertThat(there).as(link).isNotEmpty();
            // cross-sections on an IEC basis are told not to be screened
            if (!(link.equals("conductor") && plant.equals("cement-packing"))) {
                assertThat(there)
                        .as(link)
                        .noneMatch(entry -> entry.answer() instanceof Answer.Unknown u
                                && !u.why().contains("runs in none"));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("plants")
    void a_sheet_that_looks_into_no_state_is_the_same_one_computed_alone(String plant) {
        Study study = study(plant);
        List<Sheet> alone = Study.sheetsWithoutStates(study.plant()).sheets();
        List<Sheet> same = study.sheets().stream()
                .filter(sheet -> !Sheets.ofStates(sheet.id()))
                .toList();
        assertThat(JsonAnswers.sheet(study, alone)).isEqualTo(JsonAnswers.sheet(study, same));
        for (Sheet sheet : study.sheets()) {
            assertThat(Sheets.ofStates(sheet.title().toLowerCase(Locale.ROOT)))
                    .as(sheet.title())
                    .isEqualTo(Sheets.ofStates(sheet.id()));
        }
    }

    /** Without the spaces between thousands and before a unit, which terminal and paper set differently. */
    private static String plain(String figure) {
        return figure.replaceAll("[\\s\u00a0\u2009\u202f]", "").replace('\u2212', '-');
    }

    @ParameterizedTest
    @MethodSource("plants")
    void sheet_and_calculation_show_one_figure_in_one_unit(String plant) {
        Study study = study(plant);
        for (UnitSystem units : UnitSystem.values()) {
            for (Sheet sheet : study.sheets()) {
                Show show = Wording.across(sheet, new Show(units));
                for (Entry entry : sheet.entries()) {
                    if (entry.answer() instanceof Answer.Known known) {
                        String figure = plain(known.least() ? show.least(known.value()) : show.full(known.value()));
                        assertThat(TextAnswers.figure(study, sheet, entry, units, 400)
                                        .lines()
                                        .skip(1)
                                        .map(FiguresTest::plain)
                                        .findFirst())
                                .as(entry.id())
                                .hasValue(figure);
                    }
                }
            }
        }
    }
}
