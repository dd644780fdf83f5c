package dustwright.engine.sizing;

import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Answer.Verdict;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Effort;
import dustwright.engine.coverage.Judging;
import dustwright.engine.coverage.Question;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.Network;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.sizing.Parts.Part;
import dustwright.engine.tubing.Inlet;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/**
 * Tells whether one design is covered, cheapest question first: every user alone and the sets that were worst for other designs are
 * solved; only a design that withstands them is worth a proof over all sets. What a proof shows joins the sets asked first.
 */
final class Trials {
    /** Margins below this in a proof are worth asking other designs about. */
    private static final double TIGHT = 0.15;

    private final Part part;
    private final Rules rules;
    private final Patience patience;
    private final Set<Suspect> suspects = new LinkedHashSet<>();
    private long proofs;
    private long solved;

    /** A set in a condition, by its number. */
    private record Suspect(int condition, List<String> open) {}

    /** One requirement that does not hold, and the state in which it does not. */
    record Failing(Worst worst, State state) {
        double margin() {
            return worst.finding().margin();
        }
    }

    /**
     * What became of a design.
     *
     * @param coverage its certificate, as far as it was made; empty where a single state refuted the design
     * @param failing what does not hold, worst first, one per requirement and place
     */
    record Tried(Optional<Coverage> coverage, List<Failing> failing) {
        boolean holds() {
            return failing.isEmpty() && coverage.filter(Coverage::holds).isPresent();
        }
    }

    Trials(Part part, Rules rules, Patience patience) {
        this.part = part;
        this.rules = rules;
        this.patience = patience;
        Question question = part.question(part.plant());
        for (int condition = 0; condition < question.conditions().size(); condition++) {
            if (part.idle()) {
                suspects.add(new Suspect(condition, List.of()));
            }
            if (question.users().contains(1)) {
                for (Inlet inlet : part.plant().inlets()) {
                    suspects.add(new Suspect(condition, List.of(inlet.id())));
                }
            }
        }
    }

    long proofs() {
        return proofs;
    }

    long solved() {
        return solved;
    }

    /** Sets another run learnt of, for this one to ask first. */
    void suspect(List<List<String>> sets) {
        int conditions = part.conditions().size();
        for (List<String> open : sets) {
            for (int condition = 0; condition < conditions; condition++) {
                suspects.add(new Suspect(condition, open));
            }
        }
    }

    /** Refutes a design by single states, else proves or refutes it over all sets. */
    Tried tried(Plant sized) {
        List<Failing> failing = firstFailing(sized);
        return failing.isEmpty() ? proven(sized) : new Tried(Optional.empty(), failing);
    }

    /** What does not hold in the sets suspected so far. */
    List<Failing> firstFailing(Plant sized) {
        return worstOf(sized).stream().filter(f -> f.margin() < Boxes.FAILS).toList();
    }

    /** The least margin of every requirement at every place in the sets suspected so far, smallest first. */
    List<Failing> worstOf(Plant sized) {
        Map<String, Failing> worst = new LinkedHashMap<>();
        Judging judging = rules.judging(sized);
        List<State> conditions = part.question(sized).conditions();
        try {
            DutyPointSolver solver = new DutyPointSolver(Network.compile(sized));
            for (Suspect suspect : suspects) {
                if (patience.stop().getAsBoolean()) {
                    break;
                }
                solved++;
                State state = conditions.get(suspect.condition).withOpen(suspect.open);
                if (solver.solve(state) instanceof Outcome.Solved<DutyPoint> duty) {
                    judging.of(duty.value()).forEach(f -> take(worst, new Failing(new Worst(f, suspect.open), state)));
                }
            }
        } catch (IllegalArgumentException outsideFormula) {
            return List.of();
        }
        return worst.values().stream()
                .sorted(Comparator.comparingDouble(Failing::margin))
                .toList();
    }

    private static void take(Map<String, Failing> worst, Failing one) {
        Finding finding = one.worst.finding();
        worst.merge(finding.code() + "/" + finding.where(), one, (a, b) -> b.margin() < a.margin() ? b : a);
    }

    /** Proves or refutes over all sets; a condition of dust at a time, for one that fails is enough to refute. */
    Tried proven(Plant sized) {
        return proven(sized, false);
    }

    /** Judges over all sets and conditions, also those behind one that fails. */
    Tried judged(Plant sized) {
        return proven(sized, true);
    }

    private Tried proven(Plant sized, boolean all) {
        proofs++;
        Question question = part.question(sized);
        List<Answer> answers = new ArrayList<>();
        Map<String, Failing> failing = new LinkedHashMap<>();
        for (boolean dust : new boolean[] {false, true}) {
            List<State> conditions = question.conditions().stream()
                    .filter(c -> dust != c.feeding().isEmpty())
                    .toList();
            if (!conditions.isEmpty() && (all || failing.isEmpty())) {
                Question alone = new Question(question.users(), question.atMost(), conditions);
                Coverage found = Coverage.of(sized, alone, rules.judging(sized), effort(!all));
                answers.addAll(found.answers());
                found.answers().forEach(answer -> learn(alone, answer, failing));
            }
        }
        if (part.idle()) {
            question.conditions().forEach(condition -> answers.add(idle(sized, condition)));
        }
        return new Tried(
                Optional.of(new Coverage(question, inOrder(question, answers), Optional.empty())),
                failing.values().stream()
                        .sorted(Comparator.comparingDouble(Failing::margin))
                        .toList());
    }

    /** The piece while all users are elsewhere. */
    private Answer idle(Plant sized, State condition) {
        Outcome<DutyPoint> duty = DutyPointSolver.solve(sized, condition.withOpen(List.of()));
        List<Worst> worst = duty.match(
                solved -> rules.judging(sized).of(solved).stream()
                        .map(f -> new Worst(f, List.of()))
                        .sorted(Comparator.comparingDouble(w -> w.finding().margin()))
                        .toList(),
                why -> List.<Worst>of());
        Verdict solved = worst.stream().allMatch(w -> w.finding().holds()) ? Verdict.HOLDS : Verdict.FAILS;
        return new Answer(
                0,
                Coverage.words(condition),
                duty instanceof Outcome.Solved ? solved : Verdict.UNDECIDED,
                BigInteger.ONE,
                Answer.Method.EVERY_SET,
                1,
                OptionalLong.empty(),
                worst,
                duty.match(s -> "", why -> "the piece without users has no answer: " + why));
    }

    /** @param refute whether one set that does not hold is enough */
    private Effort effort(boolean refute) {
        return new Effort(
                patience.threads(), patience.mostStates(), 0, false, refute, patience.stop(), share -> {}, List.of());
    }

    private static List<Answer> inOrder(Question question, List<Answer> answers) {
        List<String> words = question.conditions().stream().map(Coverage::words).toList();
        return answers.stream()
                .sorted(Comparator.comparingInt(a -> words.indexOf(a.condition())))
                .toList();
    }

    private void learn(Question question, Answer answer, Map<String, Failing> failing) {
        State condition = question.conditions().stream()
                .filter(c -> Coverage.words(c).equals(answer.condition()))
                .findFirst()
                .orElseThrow();
        int number = numberOf(condition);
        for (Worst worst : answer.worst()) {
            if (worst.finding().margin() < TIGHT) {
                suspects.add(new Suspect(number, worst.open()));
            }
            if (answer.verdict() == Verdict.FAILS && worst.finding().margin() < Boxes.FAILS) {
                take(failing, new Failing(worst, condition.withOpen(worst.open())));
            }
        }
    }

    private int numberOf(State condition) {
        String words = Coverage.words(condition);
        return part.conditions().stream().map(Coverage::words).toList().indexOf(words);
    }

    /** Sets suspected so far, for another run. */
    List<List<String>> suspected() {
        return suspects.stream()
                .map(Suspect::open)
                .filter(open -> open.size() > 1)
                .distinct()
                .toList();
    }
}
