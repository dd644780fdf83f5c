package dustwright.engine.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dustwright.engine.Study;
import dustwright.engine.conveying.DustClass;
import dustwright.engine.coverage.Answer.Method;
import dustwright.engine.coverage.Answer.Verdict;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DustyPlants;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.Network;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.network.RandomPlants;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Zone;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Coverage against going through every set, each solved on its own. */
class CoverageTest {
    /** A margin found by envelopes is that of a state solved exactly; only which state it is could be wrong. */
    private static final double MARGIN = 1e-9;

    @Test
    void two_hundred_trees_and_rings_agree_with_every_set_solved() {
        int proven = 0;
        int plants = 0;
        for (int seed = 0; plants < 200; seed++) {
            Plant drawn = (seed % 4 == 3
                            ? RandomPlants.wyesInLoops(seed, 10 + seed % 9)
                            : seed % 4 == 2
                                    ? RandomPlants.tree(seed, 14 + seed % 17)
                                    : RandomPlants.wyes(seed, 14 + seed % 17))
                    .plant();
            Plant plant = AskedPlants.asked(drawn, seed);
            if (plant.inlets().size() > 16) {
                continue;
            }
            plants++;
            int most = plant.inlets().size() > 12 ? 3 : 5;
            List<Integer> users = IntStream.rangeClosed(
                            1, Math.min(most, plant.inlets().size()))
                    .boxed()
                    .toList();
            State condition = AskedPlants.condition(
                    plant, seed % 2 == 0 ? FilterCondition.CLEAN : FilterCondition.DIRTY, seed % 5 == 0);
            Question question = new Question(users, Question.zonesOf(plant), List.of(condition));
            Coverage coverage = Coverage.of(
                    plant,
                    question,
                    duty -> Study.judge(plant, duty),
                    Effort.alone().byBounds());
            for (Answer answer : Coverage.of(plant, question, duty -> Study.judge(plant, duty), Effort.alone())
                    .answers()) {
                assertEquals(0, compare(seed, plant, condition, question, answer));
            }
            for (Answer answer : coverage.answers()) {
                compare(seed, plant, condition, question, answer);
                proven += answer.method() == Method.ENVELOPES ? 1 : 0;
            }
        }
        assertTrue(proven > 200, "by envelopes " + proven);
    }

    @Test
    void trees_and_rings_whose_users_pick_up_dust_agree_with_every_set_solved() {
        int proven = 0;
        Map<String, Integer> otherwise = new TreeMap<>();
        for (int seed = 0; seed < 100; seed++) {
            Plant drawn = (seed % 5 == 4
                            ? RandomPlants.loops(seed, 14 + seed % 9)
                            : seed % 2 == 0
                                    ? RandomPlants.tree(seed, 14 + seed % 17)
                                    : RandomPlants.wyes(seed, 14 + seed % 17))
                    .plant();
            Plant plant =
                    AskedPlants.askedOfDust(DustyPlants.fedAlike(drawn, seed, 1 + seed % 3, seed % 10 == 0 ? 1 : 0.3));
            if (plant.inlets().size() > 12) {
                continue;
            }
            int most = Math.min(4, plant.inlets().size());
            State condition = AskedPlants.condition(plant, FilterCondition.DIRTY, seed % 5 == 0)
                    .withFeeding(plant.inlets().stream().map(Inlet::id).collect(Collectors.toSet()));
            Question question =
                    new Question(IntStream.rangeClosed(1, most).boxed().toList(), Map.of(), List.of(condition));
            Coverage coverage = Coverage.of(
                    plant,
                    question,
                    duty -> Study.judge(plant, duty),
                    Effort.alone().byBounds());
            for (Answer answer : coverage.answers()) {
                compare(seed, plant, condition, question, answer);
                proven += answer.method() == Method.ENVELOPES ? 1 : 0;
                if (answer.method() != Method.ENVELOPES) {
                    otherwise.merge(answer.why(), 1, Integer::sum);
                }
            }
        }
        assertTrue(proven > 100, "by envelopes " + proven + ", otherwise " + otherwise);
    }

    /** Machines by curves whose points end within what the sets ask of them, alone or behind check valves of their own, on drives or not. */
    @Test
    void machines_run_beyond_their_points_agree_with_every_set_solved() {
        int proven = 0;
        Map<FindingCode, Integer> failing = new TreeMap<>();
        for (int seed = 0; seed < 60; seed++) {
            Plant drawn =
                    AskedPlants.asked(RandomPlants.wyes(seed, 14 + seed % 17).plant(), seed);
            Plant plant = AskedPlants.byCurves(drawn, seed);
            if (plant.inlets().size() > 12) {
                continue;
            }
            List<Integer> users = IntStream.rangeClosed(
                            1, Math.min(4, plant.inlets().size()))
                    .boxed()
                    .toList();
            State condition = AskedPlants.condition(plant, FilterCondition.DIRTY, seed % 5 == 0);
            Question question = new Question(users, Question.zonesOf(plant), List.of(condition));
            Coverage coverage = Coverage.of(
                    plant,
                    question,
                    duty -> Study.judge(plant, duty),
                    Effort.alone().byBounds());
            for (Answer answer : coverage.answers()) {
                compare(seed, plant, condition, question, answer);
                proven += answer.method() == Method.ENVELOPES ? 1 : 0;
                answer.worst().stream()
                        .map(Worst::finding)
                        .filter(f -> !f.holds())
                        .forEach(f -> failing.merge(f.code(), 1, Integer::sum));
            }
        }
        assertTrue(proven > 60, "by envelopes " + proven);
        assertTrue(failing.getOrDefault(FindingCode.CURVE_FREE_END, 0) > 10, failing.toString());
        assertTrue(failing.getOrDefault(FindingCode.CURVE_DEEP_END, 0) > 10, failing.toString());
    }

    /** Hoses, tools, leaks and feeds of every kind in one plant: many sets are nearly as bad as the worst, and tables cannot tell them apart. */
    @Test
    void plants_of_mixed_hoses_leaks_and_feeds_are_exact_where_sets_are_few_and_bounded_where_they_are_many() {
        int bounded = 0;
        int plants = 0;
        for (int seed = 0; seed < 80; seed++) {
            Plant drawn = AskedPlants.mixed(
                    seed % 4 < 2 ? RandomPlants.wyes(seed, 16 + seed % 17).plant() : AskedPlants.evenMain(seed), seed);
            Plant plant = seed % 2 == 0
                    ? AskedPlants.asked(drawn, seed)
                    : AskedPlants.askedOfDust(DustyPlants.fedAlike(drawn, seed, 1 + seed % 4, 0.3));
            if (plant.inlets().size() < 4 || plant.inlets().size() > 18) {
                continue;
            }
            plants++;
            State condition = AskedPlants.condition(plant, FilterCondition.CLEAN, seed % 3 == 0);
            if (seed % 2 == 1) {
                condition = condition.withFeeding(
                        plant.inlets().stream().map(Inlet::id).collect(Collectors.toSet()));
            }
            Question question = new Question(List.of(1, 2), Question.zonesOf(plant), List.of(condition));
            Judging judging = duty -> Study.judge(plant, duty);
            for (Answer answer :
                    Coverage.of(plant, question, judging, Effort.alone()).answers()) {
                assertTrue(answer.worst().stream().allMatch(Worst::exact), "seed " + seed);
                assertEquals(0, compare(seed, plant, condition, question, answer));
            }
            for (Answer answer : Coverage.of(
                            plant, question, judging, Effort.alone().byBounds())
                    .answers()) {
                compare(seed, plant, condition, question, answer);
                bounded += (int) answer.worst().stream().filter(w -> !w.exact()).count();
            }
        }
        assertTrue(plants > 20 && bounded > 100, plants + " plants, " + bounded + " margins bounded");
    }

    /** A main of eight tees; the inlet at the seventh hangs on a long, narrow drop: far by its tubing, but it draws little. */
    private static Plant mainWithLongDrop() {
        PlantSketch sketch = new PlantSketch().tube("main", 0.06, 4.5e-5).tube("narrow", 0.035, 4.5e-5);
        String below = "REC";
        for (int n = 1; n <= 8; n++) {
            sketch.points("T" + n).run("M" + n, "T" + n, below, "main", 10, 0.3).inlet("A" + n);
            sketch.run("D" + n, "A" + n, "T" + n, n == 7 ? "narrow" : "main", n == 7 ? 60 : 2, 0.5);
            below = "T" + n;
        }
        Plant drawn =
                sketch.station("REC").relief(10, 12, 0.12).lobe("P", 0.12).and().plant();
        List<Inlet> dusty = drawn.inlets().stream()
                .map(i -> new Inlet(
                        i.id(), i.at(), i.hose(), i.tool(), i.valveK(), i.leak(), "", Optional.of("dust0"), i.feed()))
                .toList();
        return AskedPlants.with(drawn, dusty, List.of(AskedPlants.dust("dust0", DustClass.DRY_POWDER)), List.of());
    }

    private static Coverage covered(Plant plant, int users, Effort effort) {
        State condition = AskedPlants.condition(plant, FilterCondition.DIRTY, false);
        Question question = new Question(List.of(users), Map.of(), List.of(condition));
        return Coverage.of(plant, question, duty -> Study.judge(plant, duty), effort);
    }

    @Test
    void the_farthest_inlets_are_not_always_the_set_that_starves_a_tool_most() {
        Plant plant = mainWithLongDrop();
        Answer answer = covered(plant, 2, Effort.alone().byBounds()).answers().get(0);
        assertEquals(Method.ENVELOPES, answer.method(), answer.why());
        Worst weakest = answer.worst().stream()
                .filter(w -> w.finding().code() == FindingCode.TOOL_FLOW
                        && w.finding().where().id().equals("A8"))
                .findFirst()
                .orElseThrow();
        // the two farthest by length of tubing are A7 (70 + 60 m) and A8 (80 + 2 m)
        assertEquals(List.of("A6", "A8"), weakest.open());
        compare(
                0,
                plant,
                AskedPlants.condition(plant, FilterCondition.DIRTY, false),
                new Question(List.of(2), Map.of(), List.of(AskedPlants.condition(plant, FilterCondition.DIRTY, false))),
                answer);
    }

    @Test
    void no_margin_can_be_lower_than_told_by_more_than_half_a_percent_in_a_small_tree() {
        Answer answer = covered(mainWithLongDrop(), 3, Effort.alone().byBounds())
                .answers()
                .get(0);
        assertEquals(Method.ENVELOPES, answer.method(), answer.why());
        assertTrue(answer.widening() > 0 && answer.widening() < 5e-3, "widening " + answer.widening());
        assertEquals(
                answer.sets().longValueExact(),
                answer.solved() + answer.pruned().longValueExact());
    }

    /** Of eight inlets four are in each of two areas, the far one behind all of the main. */
    private static Plant inTwoAreas() {
        Plant plant = mainWithLongDrop();
        List<Inlet> inlets = plant.inlets().stream()
                .map(i -> new Inlet(
                        i.id(),
                        i.at(),
                        i.hose(),
                        i.tool(),
                        i.valveK(),
                        i.leak(),
                        i.id().compareTo("A5") < 0 ? "near" : "far",
                        i.dust(),
                        i.feed()))
                .toList();
        return AskedPlants.with(
                plant,
                inlets,
                plant.dusts(),
                List.of(new Zone("near", "Near", Optional.empty()), new Zone("far", "Far", Optional.empty())));
    }

    @Test
    void an_area_carries_as_many_as_every_set_of_its_own_inlets_shows() {
        Plant plant = inTwoAreas();
        State condition = AskedPlants.condition(plant, FilterCondition.DIRTY, false);
        for (Carry carry : Carry.of(plant, List.of(condition), 4, duty -> Study.judge(plant, duty), Effort.alone())) {
            int users = 0;
            while (users < carry.asked() && everySetHolds(plant, condition, carry.area(), users + 1)) {
                users++;
            }
            assertEquals(users, carry.users(), carry.area());
            assertEquals(carry.users() < carry.asked(), carry.stop().isPresent(), carry.area());
        }
    }

    private static boolean everySetHolds(Plant plant, State condition, String area, int users) {
        DutyPointSolver solver = new DutyPointSolver(Network.compile(plant));
        return sets(plant, Map.of(), users).stream()
                .filter(open -> open.stream()
                        .allMatch(id -> area.isEmpty() || plant.inlet(id).zone().equals(area)))
                .allMatch(open -> solver.solve(condition.withOpen(open))
                        .match(duty -> Study.judge(plant, duty).stream().noneMatch(Finding::fails), why -> false));
    }

    @Test
    void remedies_begin_with_the_plant_as_it_is_and_come_best_first() {
        Plant plant = mainWithLongDrop();
        State condition = AskedPlants.condition(plant, FilterCondition.DIRTY, false);
        Question question = new Question(List.of(1, 2), Map.of(), List.of(condition));
        Judging judging = duty -> Study.judge(plant, duty);
        Coverage found = Coverage.of(plant, question, judging, Effort.alone());
        assertFalse(found.holds());
        List<Remedy> remedies = Remedy.of(plant, found, changed -> duty -> Study.judge(changed, duty), Effort.alone());
        assertEquals("as it is", remedies.get(0).what());
        assertTrue(remedies.size() > 1, remedies.toString());
        for (int n = 2; n < remedies.size(); n++) {
            assertTrue(remedies.get(n - 1).failing() <= remedies.get(n).failing(), remedies.toString());
        }
        Remedy fewer = remedies.stream()
                .filter(r -> r.what().equals("at most 1 user"))
                .findFirst()
                .orElseThrow();
        assertTrue(fewer.failing() <= remedies.get(0).failing());
    }

    @Test
    void remedies_that_were_stopped_before_they_were_decided_stand_behind_those_that_are() {
        Plant plant = mainWithLongDrop();
        State condition = AskedPlants.condition(plant, FilterCondition.DIRTY, false);
        Question question = new Question(List.of(1, 2), Map.of(), List.of(condition));
        Coverage found = Coverage.of(plant, question, duty -> Study.judge(plant, duty), Effort.alone());
        int[] judged = {0};
        Effort soon = new Effort(1, 1_000_000, 0, false, false, () -> judged[0] > 3, share -> {}, List.of());
        List<Remedy> remedies = Remedy.of(
                plant,
                found,
                changed -> {
                    judged[0]++;
                    return duty -> Study.judge(changed, duty);
                },
                soon);
        List<Boolean> decided = remedies.stream().skip(1).map(Remedy::decided).toList();
        assertTrue(decided.contains(true) && decided.contains(false), remedies.toString());
        assertTrue(decided.lastIndexOf(true) < decided.indexOf(false), remedies.toString());
        assertTrue(
                remedies.stream()
                        .filter(r -> r.what().startsWith("a bleed"))
                        .allMatch(r -> r.what().contains("discharge coefficient 0.6 assumed")),
                remedies.toString());
    }

    @Test
    void no_exchange_of_one_inlet_makes_the_worst_set_worse() {
        Plant plant = mainWithLongDrop();
        Exchanges exchanges = Exchanges.of(plant, covered(plant, 3, Effort.alone()), duty -> Study.judge(plant, duty))
                .orElseThrow();
        assertTrue(exchanges.tried().size() > 5, exchanges.toString());
        assertTrue(
                exchanges.tried().get(0).margin() >= exchanges.worst().finding().margin() - MARGIN,
                exchanges.toString());
    }

    @Test
    void the_answer_is_the_same_whatever_the_threads() {
        Plant plant = mainWithLongDrop();
        String one = words(covered(plant, 3, Effort.threads(1).byBounds()));
        assertEquals(one, words(covered(plant, 3, Effort.threads(2).byBounds())));
        assertEquals(one, words(covered(plant, 3, Effort.threads(7).byBounds())));
    }

    private static List<String> margins(Coverage coverage) {
        return coverage.answers().stream()
                .flatMap(a -> a.worst().stream()
                        .map(w -> a.users() + "/" + w.key() + w.finding().margin() + " " + w.bound()))
                .sorted()
                .toList();
    }

    private static String words(Coverage coverage) {
        StringBuilder words = new StringBuilder();
        for (Answer answer : coverage.answers()) {
            words.append(answer.verdict()).append(answer.solved()).append(answer.why());
            answer.worst()
                    .forEach(w -> words.append(w.finding().id())
                            .append(w.finding().margin())
                            .append(w.open()));
        }
        return words.toString();
    }

    private static Coverage stoppedAfter(Plant plant, Question question, int times) {
        AtomicInteger asked = new AtomicInteger();
        return Coverage.of(
                plant,
                question,
                duty -> Study.judge(plant, duty),
                new Effort(1, 1000, 0, false, false, () -> asked.incrementAndGet() > times, share -> {}, List.of()));
    }

    @Test
    void what_is_told_of_the_work_is_the_share_of_all_answers_not_of_the_one_under_way() {
        Plant plant = mainWithLongDrop();
        List<State> conditions = List.of(
                AskedPlants.condition(plant, FilterCondition.CLEAN, false),
                AskedPlants.condition(plant, FilterCondition.DIRTY, false));
        List<Double> told = new ArrayList<>();
        Coverage.of(
                plant,
                new Question(List.of(1, 2, 3), Map.of(), conditions),
                duty -> Study.judge(plant, duty),
                new Effort(1, 1000, 0, false, false, () -> false, told::add, List.of()));
        assertTrue(told.get(0) <= 1.0 / 6, told.toString());
        assertEquals(1, told.get(told.size() - 1));
        assertEquals(told.stream().sorted().toList(), told);
        for (int n = 1; n <= 6; n++) {
            assertTrue(told.contains(n / 6.0), n + " of 6 answers: " + told);
        }
    }

    @Test
    void a_cancelled_run_says_what_is_done_and_can_be_taken_up_again() {
        Plant plant = mainWithLongDrop();
        State clean = AskedPlants.condition(plant, FilterCondition.CLEAN, false);
        Question question = new Question(List.of(1, 2, 3), Map.of(), List.of(clean));
        Coverage whole = Coverage.of(
                plant,
                question,
                duty -> Study.judge(plant, duty),
                Effort.alone().byBounds());
        Coverage partial = stoppedAfter(plant, question, 40);
        for (int times = 60; partial.answers().get(0).verdict() == Verdict.NOT_DONE; times += 20) {
            partial = stoppedAfter(plant, question, times);
        }
        assertTrue(partial.partial());
        assertFalse(partial.holds());
        assertEquals(Verdict.NOT_DONE, partial.answers().get(2).verdict());
        assertNotEquals(Verdict.NOT_DONE, partial.answers().get(0).verdict());
        Coverage resumed = Coverage.of(
                plant,
                question,
                duty -> Study.judge(plant, duty),
                new Effort(1, 1000, 0, false, false, () -> false, share -> {}, partial.known()));
        assertEquals(margins(whole), margins(resumed));
        assertFalse(resumed.partial());
    }

    /** Compares, and counts margins of which a worse set than the one named exists, within the bound. */
    private static int compare(int seed, Plant plant, State condition, Question question, Answer answer) {
        Map<String, Finding> least = new TreeMap<>();
        Map<String, String> unsolved = new TreeMap<>();
        DutyPointSolver solver = new DutyPointSolver(Network.compile(plant));
        int sets = 0;
        for (List<String> open : sets(plant, question.atMost(), answer.users())) {
            sets++;
            Outcome<DutyPoint> duty = solver.solve(condition.withOpen(open));
            if (duty instanceof Outcome.Solved<DutyPoint> solved) {
                for (Finding finding : Study.judge(plant, solved.value())) {
                    least.merge(
                            finding.code() + "/" + finding.where(), finding, (a, b) -> b.margin() < a.margin() ? b : a);
                }
            } else {
                unsolved.put(String.join("+", open), ((Outcome.NotSolved<DutyPoint>) duty).why());
            }
        }
        String where = "seed " + seed + ", " + answer.users() + " users, " + answer.method() + " ";
        assertEquals(sets, answer.sets().intValueExact(), where + "sets");
        if (sets == 0) {
            assertEquals(Verdict.NO_SET, answer.verdict(), where);
            return 0;
        }
        boolean fails = least.values().stream().anyMatch(f -> !f.holds());
        Verdict wanted = fails ? Verdict.FAILS : unsolved.isEmpty() ? Verdict.HOLDS : Verdict.UNDECIDED;
        assertEquals(wanted, answer.verdict(), where + answer.why() + unsolved);
        Map<String, Worst> found = new HashMap<>();
        answer.worst().forEach(worst -> found.put(worst.key(), worst));
        int missed = 0;
        for (Map.Entry<String, Finding> one : least.entrySet()) {
            String key = one.getKey();
            if (key.startsWith("CHOKED") || key.startsWith("BALANCE")) {
                continue;
            }
            Worst worst = found.get(key);
            assertTrue(worst != null, where + "lacks " + key);
            double truth = one.getValue().margin();
            double margin = worst.finding().margin();
            double same = MARGIN * Math.max(1, Math.abs(truth));
            String what = where + key + " in " + one.getValue().state() + " " + truth + ", found " + margin + " with "
                    + worst.open() + ", bound " + worst.bound();
            assertTrue(margin >= truth - same, what);
            assertTrue(worst.bound() <= truth + same, what);
            boolean hit = margin <= truth + same;
            assertTrue(hit || !worst.exact(), what);
            missed += hit ? 0 : 1;
        }
        return missed;
    }

    private static List<List<String>> sets(Plant plant, Map<String, Integer> atMost, int users) {
        List<List<String>> all = new ArrayList<>();
        List<Inlet> inlets = plant.inlets();
        for (int bits = 0; bits < 1 << inlets.size(); bits++) {
            if (Integer.bitCount(bits) == users) {
                Map<String, Integer> byZone = new HashMap<>();
                List<String> open = new ArrayList<>();
                for (int n = 0; n < inlets.size(); n++) {
                    if ((bits >> n & 1) == 1) {
                        open.add(inlets.get(n).id());
                        byZone.merge(inlets.get(n).zone(), 1, Integer::sum);
                    }
                }
                if (byZone.entrySet().stream().allMatch(e -> e.getValue() <= atMost.getOrDefault(e.getKey(), 99))) {
                    all.add(open);
                }
            }
        }
        return all;
    }
}
