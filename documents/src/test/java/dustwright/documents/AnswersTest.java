package dustwright.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dustwright.documents.answers.CatalogueAnswer;
import dustwright.documents.answers.CoverJson;
import dustwright.documents.answers.CoverText;
import dustwright.documents.answers.JsonAnswers;
import dustwright.documents.answers.RehearsalJson;
import dustwright.documents.answers.TextAnswers;
import dustwright.documents.drawing.RehearsalChart;
import dustwright.documents.report.CoverPage;
import dustwright.documents.report.Origin;
import dustwright.documents.writing.Show;
import dustwright.engine.Study;
import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.ByHand;
import dustwright.engine.coverage.Carry;
import dustwright.engine.coverage.CarryBySize;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Effort;
import dustwright.engine.coverage.Judging;
import dustwright.engine.coverage.Question;
import dustwright.engine.coverage.Remedy;
import dustwright.engine.finding.Finding;
import dustwright.engine.interlock.Expr;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.rehearsal.Played;
import dustwright.engine.rehearsal.Script;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

final class AnswersTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Study STUDY = InventedStudy.of(12);

    private static List<Error> faults(String answer, String json) throws Exception {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(JsonAnswers.schema(answer));
        return schema.validate(JSON.readTree(json));
    }

    private static Coverage covered() {
        Answer answer = new Answer(
                1,
                "filter clean",
                Answer.Verdict.FAILS,
                BigInteger.TWO.pow(70),
                Answer.Method.EVERY_SET,
                3,
                OptionalLong.of(1),
                List.of(new Answer.Worst(STUDY.worstPerPlace().get(0), List.of("A1"))),
                "");
        State condition = STUDY.states().get(0).state();
        return new Coverage(
                new Question(List.of(1), Map.of("hall", 1), List.of(condition)), List.of(answer), Optional.empty());
    }

    /** One of each that may be asked besides. */
    private static CoverText.Besides besides() {
        Plant plant = STUDY.plant();
        Judging judging = duty -> Study.judge(plant, duty);
        Question question = covered().question();
        Coverage coverage =
                Coverage.of(plant, new Question(List.of(2), Map.of(), question.conditions()), judging, Effort.alone());
        Answer answer = covered().answers().get(0);
        return new CoverText.Besides(
                List.of(new Carry("hall", 2, 1, 2, Optional.of(answer))),
                List.of(new CarryBySize(plant.stations().get(0).producers().get(0), 1, 2, Optional.of(answer))),
                List.of(new Remedy("at most 1 user", 1, answer.least(), true, false)),
                ByHand.of(plant, coverage, judging),
                STUDY.worstPerPlace().stream().limit(1).toList());
    }

    @Test
    void the_page_of_a_coverage_has_every_inlet_every_run_and_the_way_by_hand() {
        CoverPage page = CoverPage.of(
                STUDY.plant(),
                covered(),
                besides(),
                new Show(UnitSystem.SI),
                new Origin("plant.yaml", "f9a9", "0.1.0"));
        String html = page.html();
        assertThat(html).contains("Why this set is the worst, by hand").contains("at most 1 user");
        STUDY.plant().inlets().forEach(inlet -> assertThat(html).contains("<td>" + inlet.id() + "</td>"));
        STUDY.plant().runs().forEach(run -> assertThat(html).contains("<td>" + run.id() + "</td>"));
        assertThat(html).doesNotContain("NaN").doesNotContain("Infinity");
    }

    private static final CoverText.Besides NOTHING =
            new CoverText.Besides(List.of(), List.of(), List.of(), Optional.empty(), List.of());

    private static final Answer NOT_DONE = new Answer(
            1,
            "filter clean",
            Answer.Verdict.NOT_DONE,
            BigInteger.TWO,
            Answer.Method.NONE,
            0,
            OptionalLong.empty(),
            List.of(),
            "the work was cancelled");

    @Test
    void what_was_stopped_is_partial_in_words_on_paper_and_for_programs_and_carries_no_zero() throws Exception {
        Plant plant = STUDY.plant();
        CoverText.Besides stopped = new CoverText.Besides(
                List.of(
                        new Carry("hall", 2, 0, 2, Optional.of(NOT_DONE)),
                        new Carry("", 2, 1, 2, Optional.of(NOT_DONE))),
                List.of(new CarryBySize(plant.stations().get(0).producers().get(0), 0, 2, Optional.of(NOT_DONE))),
                List.of(new Remedy("at most 1 user", 0, Optional.empty(), false, true)),
                Optional.empty(),
                List.of());
        String text = CoverText.of(plant, covered(), stopped, UnitSystem.SI, 200);
        assertThat(text).contains("Partial: the work was stopped").contains("1 or more, not done");
        assertThat(text).containsPattern("at most 1 user \\(stopped before it was covered\\)\\s+not done");
        assertThat(text.lines().filter(l -> l.contains("not done")).count()).isGreaterThan(3);
        assertThat(CoverPage.of(
                                plant,
                                covered(),
                                stopped,
                                new Show(UnitSystem.SI),
                                new Origin("plant.yaml", "f9a9", "0.1.0"))
                        .html())
                .contains("Partial: the work was stopped")
                .doesNotContain("<td>0</td>");
        String json = CoverJson.of(plant, "f9a9", covered(), stopped);
        assertThat(faults("cover", json)).isEmpty();
        assertThat(JSON.readTree(json).get("partial").asBoolean()).isTrue();
        assertThat(JSON.readTree(json).get("carries").get(0).get("users").isNull())
                .isTrue();
        assertThat(JSON.readTree(json).get("remedies").get(0).get("failing").isNull())
                .isTrue();
    }

    @Test
    void a_margin_that_is_not_exact_stands_beside_its_bound_and_one_of_open_sign_is_named() throws Exception {
        Finding finding = STUDY.worstPerPlace().stream()
                .filter(f -> f.holds() && f.decided())
                .findFirst()
                .orElseThrow();
        Answer answer = new Answer(
                1,
                "filter clean",
                Answer.Verdict.UNDECIDED,
                BigInteger.TWO.pow(20),
                Answer.Method.ENVELOPES,
                3,
                OptionalLong.empty(),
                List.of(new Answer.Worst(finding, List.of("A1"), -0.25)),
                "because");
        Coverage open = new Coverage(covered().question(), List.of(answer), Optional.empty());
        String text = CoverText.of(STUDY.plant(), open, NOTHING, UnitSystem.SI, 400);
        assertThat(text)
                .contains("No set below")
                .contains("Not decided for 1 of these margins")
                .containsPattern("no set below -25\\s%");
        String json = CoverJson.of(STUDY.plant(), "f9a9", open, NOTHING);
        assertThat(faults("cover", json)).isEmpty();
        assertThat(JSON.readTree(json)
                        .get("answers")
                        .get(0)
                        .get("worst")
                        .get(0)
                        .get("bound")
                        .asDouble())
                .isEqualTo(-0.25);
    }

    @Test
    void every_json_answer_keeps_to_its_schema() throws Exception {
        assertThat(faults("verify", JsonAnswers.verify(STUDY))).isEmpty();
        assertThat(faults("solve", JsonAnswers.solve(STUDY))).isEmpty();
        assertThat(faults("cover", CoverJson.of(STUDY.plant(), "f9a9", covered(), besides())))
                .isEmpty();
        assertThat(faults(
                        "explain",
                        JsonAnswers.explain(STUDY, STUDY.worstPerPlace().get(0))))
                .isEmpty();
        Sheet sheet = STUDY.sheets().get(0);
        assertThat(faults("sheet", JsonAnswers.sheet(STUDY, STUDY.sheets()))).isEmpty();
        for (Entry entry : sheet.entries()) {
            assertThat(faults("figure", JsonAnswers.figure(STUDY, sheet, entry)))
                    .as(entry.id())
                    .isEmpty();
        }
    }

    @Test
    void the_answer_of_a_rehearsal_keeps_to_its_schema() throws Exception {
        Played played = played(new Played.Trace(Played.Amount.VACUUM, 0, List.of(new Played.Point(0, 1.5))));
        assertThat(faults("rehearse", RehearsalJson.of(played))).isEmpty();
        assertThat(faults("rehearse", RehearsalJson.of(played).replace("\"step\"", "\"stop\"")))
                .isNotEmpty();
    }

    /** What is left by rounding is no dust to scale an axis by. */
    @Test
    void the_axis_of_dust_reaches_the_probe_however_little_lies_there() {
        Played played = played(new Played.Trace(
                Played.Amount.RECEIVER, 40, List.of(new Played.Point(0, 0), new Played.Point(9, 5e-10))));
        assertThat(RehearsalChart.of(played, new Show(UnitSystem.SI)).svg().markup())
                .contains(">0<", ">20<", ">40<")
                .doesNotContain("0.00");
    }

    private static Played played(Played.Trace trace) {
        Script script = new Script(
                "t",
                60,
                10,
                1,
                1,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(new Script.Must(Script.When.AT_THE_END, Expr.of("not trip"))));
        return new Played(
                script,
                "R",
                "bag",
                1,
                List.of(new Played.Moment(5, Played.Who.LAMP, "FAULT lit")),
                List.of(trace),
                List.of(new Played.Lane(Played.Kind.STEP, "in_standing", "standing", List.of(new Played.Span(0, 10)))),
                List.of(new Played.Verdict(script.must().get(0), true)),
                2,
                1,
                0,
                0,
                0,
                3,
                STUDY.plant().assumptions());
    }

    @Test
    void a_figure_that_is_not_known_says_what_to_enter_and_gives_no_number() throws Exception {
        JsonNode figures = JSON.readTree(JsonAnswers.sheet(STUDY, STUDY.sheets()))
                .get("sheets")
                .get(0)
                .get("figures");
        assertThat(figures.get(2).get("unknown").asText()).contains("Enter");
        assertThat(figures.get(2).has("value")).isFalse();
        assertThat(TextAnswers.sheet(STUDY, STUDY.sheets(), UnitSystem.SI, 100))
                .contains("Safe working load: not known. Enter", "495.0 kg");
    }

    @Test
    void the_answers_of_a_catalogue_keep_to_their_schema_and_say_what_serves() throws Exception {
        var producers = STUDY.plant().stations().get(0).producers();
        var air = STUDY.plant().site().air();
        CatalogueAnswer list = CatalogueAnswer.list(producers, air);
        CatalogueAnswer duty =
                CatalogueAnswer.duty(producers, air, new FreeAirFlow(0.1), new PressureDifference(20_000));
        assertThat(faults("catalogue", list.json())).isEmpty();
        assertThat(faults("catalogue", duty.json())).isEmpty();
        assertThat(duty.text(UnitSystem.SI, 100))
                .contains("P1     lobe")
                .contains("P2: too little air at its greatest speed");
        assertThat(duty.text(UnitSystem.US, 100)).contains("Rise °F").doesNotContain("°F rise");
    }

    @Test
    void the_schema_refuses_another_format_an_unknown_key_and_a_missing_duty_point() throws Exception {
        String solve = JsonAnswers.solve(STUDY);
        assertThat(faults("verify", solve)).isNotEmpty();
        assertThat(faults("solve", solve.replace("\"reynolds\"", "\"renolds\"")))
                .isNotEmpty();
        assertThat(faults("solve", solve.replace("\"solved\" : false", "\"solved\" : true")))
                .isNotEmpty();
    }

    @Test
    void a_solved_state_gives_back_every_digit_of_every_leg() throws Exception {
        JsonNode state = JSON.readTree(JsonAnswers.solve(STUDY)).get("states").get(0);
        DutyPoint duty = STUDY.states().get(0).duty().match(d -> d, why -> {
            throw new AssertionError(why);
        });
        assertThat(state.get("legs").size()).isEqualTo(duty.legs().size());
        for (int i = 0; i < duty.legs().size(); i++) {
            JsonNode leg = state.get("legs").get(i);
            assertThat(leg.get("id").asText()).isEqualTo(duty.legs().get(i).id());
            assertThat(leg.get("flow_kgPerS").asDouble())
                    .isEqualTo(duty.legs().get(i).flow().kgPerSecond());
            assertThat(leg.get("pressureTo_Pa").asDouble())
                    .isEqualTo(duty.legs().get(i).pressureTo().pascals());
        }
        assertThat(state.get("nodes").size()).isEqualTo(duty.nodes().size());
    }

    @Test
    void an_unsolved_state_has_a_reason_and_no_numbers() throws Exception {
        JsonNode state = JSON.readTree(JsonAnswers.solve(STUDY)).get("states").get(2);
        assertThat(state.get("solved").asBoolean()).isFalse();
        assertThat(state.get("why").asText()).contains("choked");
        assertThat(state.has("legs")).isFalse();
    }

    @Test
    void names_with_quotes_and_brackets_stay_names_in_json() throws Exception {
        String name = "a\"b</script>\n\u0007ü";
        JsonNode answer = JSON.readTree(JsonAnswers.verify(InventedStudy.named(4, "", name)));
        assertThat(answer.get("plant").get("name").asText()).isEqualTo(name);
    }

    @Test
    void a_finding_that_holds_is_not_explained_as_if_it_failed() {
        Finding holds = STUDY.worstPerPlace().stream()
                .filter(Finding::holds)
                .findFirst()
                .orElseThrow();
        assertThat(TextAnswers.explain(STUDY, holds, UnitSystem.US, 200))
                .contains("If it did not hold: " + holds.code().meaning());
        assertThat(TextAnswers.explain(STUDY, STUDY.worstPerPlace().get(0), UnitSystem.US, 200))
                .doesNotContain("If it did not hold");
    }

    @Test
    void solve_names_the_worst_of_what_does_not_hold_in_its_state() {
        assertThat(TextAnswers.solve(STUDY, UnitSystem.US, 200))
                .contains("Does not hold here: Dust settles in run MA1");
    }

    @Test
    void verify_numbers_findings_as_explain_takes_them() {
        String text = TextAnswers.verify(STUDY, UnitSystem.US, 100);
        assertThat(text)
                .contains("Does not hold in 2 of 3 sets.")
                .contains("   1  ▼▼  Dust settles in run MA1")
                .contains("Velocity with one user, slowest 8 of 24 runs");
        assertThat(STUDY.worstPerPlace().get(0).where().id()).isEqualTo("MA1");
    }

    @Test
    void value_and_limit_show_enough_places_to_see_that_it_fails() {
        assertThat(TextAnswers.verify(STUDY, UnitSystem.US, 110)).contains("2999.8 ft/min, least 3000.0  -0.01 %");
    }

    @Test
    void no_line_is_longer_than_the_terminal() {
        for (int width : new int[] {80, 100, 140}) {
            int most = width;
            assertThat(TextAnswers.verify(STUDY, UnitSystem.SI, width).lines())
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(most));
        }
        assertThat(TextAnswers.solve(STUDY, UnitSystem.SI, 110).lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(110));
    }

    @Test
    void a_name_cannot_steer_the_terminal() {
        Study study = InventedStudy.named(4, "", "red\u001B[31m\nnext");
        assertThat(TextAnswers.verify(study, UnitSystem.US, 80))
                .doesNotContain("\u001B")
                .startsWith("red\uFFFD[31m\uFFFDnext");
    }

    @Test
    void explain_gives_each_step_with_numbers_units_and_source() {
        String text = TextAnswers.explain(STUDY, STUDY.worstPerPlace().get(0), UnitSystem.US, 100);
        assertThat(text)
                .contains("1. AIR-1   rho = p/(R T)")
                .contains("p = 77600 Pa   static pressure at the upstream end")
                .contains("→ v = 10.189 m/s (2006 ft/min)   velocity at the slow end")
                .contains("source: continuity (published)")
                .contains("from: ACGIH Industrial Ventilation");
    }

    @Test
    void there_is_no_schema_for_an_answer_that_does_not_exist() {
        assertThatThrownBy(() -> JsonAnswers.schema("guess")).isInstanceOf(IllegalArgumentException.class);
    }
}
