package dustwright.engine.coverage;

import dustwright.engine.coverage.Answer.Method;
import dustwright.engine.coverage.Answer.Verdict;
import dustwright.engine.finding.Outcome;
import dustwright.engine.network.Network;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Supplier;

/** The work behind one coverage: which argument serves which number of users in which condition. */
final class Proof {
    /** Up to so many sets are solved one by one before any splitting. */
    private static final long FEW_SETS = 1000;
    /** Up to so many sets of a box are: to bound them takes as long. */
    private static final long BOX_SETS = 150;
    /** Boxes looked at before the work is given up, and where the verdict is known and only some places are open. */
    private static final long MOST_BOXES = 4000;

    private static final long FEW_BOXES = 60;

    private final Plant plant;
    private final Question question;
    private final Judging judging;
    private final Effort effort;
    private final Network network;
    private final Watch watch;
    private final Doubts doubts;
    /** Whether some set was found that does not hold. */
    private boolean refuted;

    Proof(Plant plant, Question question, Judging judging, Effort effort) {
        this.plant = plant;
        this.question = question;
        this.judging = judging;
        this.effort = effort;
        network = Network.compile(plant);
        doubts = new Doubts(plant);
        watch = new Watch(effort.cancelled(), effort.progress());
    }

    Coverage coverage() {
        ForkJoinPool pool = new ForkJoinPool(effort.threads());
        try {
            return pool.submit(this::answers).join();
        } finally {
            pool.shutdownNow();
        }
    }

    private Coverage answers() {
        Map<String, Outcome<Envelopes>> alike = new TreeMap<>();
        List<Answer> answers = new ArrayList<>();
        Optional<String> unfolded = Optional.empty();
        watch.questions(question.conditions().size() * question.users().size());
        for (State condition : question.conditions()) {
            if (question.users().stream()
                    .allMatch(users -> few(users) || known(users, condition).isPresent())) {
                Outcome<Envelopes> needless = new Outcome.NotSolved<>("");
                question.users().forEach(users -> answers.add(answer(needless, Optional.empty(), condition, users)));
                continue;
            }
            Outcome<Envelopes> envelopes = alike.computeIfAbsent(sweptAlike(condition), key -> envelopes(key));
            unfolded = unfolded.or(() -> envelopes.match(e -> Optional.empty(), Optional::of));
            Optional<Envelopes.Found> found =
                    envelopes.match(e -> watched(() -> e.extremes(condition, false)), why -> Optional.empty());
            for (int users : question.users()) {
                answers.add(answer(envelopes, found, condition, users));
            }
        }
        return new Coverage(question, answers, unfolded);
    }

    /** Whether there are so few sets that each is solved: then every margin is exact. */
    private boolean few(int users) {
        BigInteger sets = question.sets(plant, users);
        BigInteger cost = sets.multiply(BigInteger.valueOf(plant.inlets().size()));
        return cost.compareTo(BigInteger.valueOf(effort.few())) <= 0 && mayList(sets);
    }

    /** What the sweep from the inlets depends on. */
    private String sweptAlike(State condition) {
        return Envelopes.feeding(plant, condition) + " " + new TreeSet<>(condition.openBleeds());
    }

    private Outcome<Envelopes> envelopes(String alike) {
        List<State> conditions = question.conditions().stream()
                .filter(c -> sweptAlike(c).equals(alike))
                .toList();
        return watched(() ->
                        Envelopes.of(plant, network, question, conditions, Envelopes.INTERVALS, Box.all(plant), watch))
                .orElse(new Outcome.NotSolved<>("the work was cancelled"));
    }

    private Answer answer(Outcome<Envelopes> envelopes, Optional<Envelopes.Found> found, State condition, int users) {
        Answer answer = found(envelopes, found, condition, users);
        watch.answered();
        return answer;
    }

    private Answer found(Outcome<Envelopes> envelopes, Optional<Envelopes.Found> found, State condition, int users) {
        BigInteger sets = question.sets(plant, users);
        if (sets.signum() == 0) {
            return none(condition, users, sets, Verdict.NO_SET, "");
        }
        Optional<Answer> answer = watched(() -> {
            if (few(users)) {
                return bySets(condition, users, sets, "");
            }
            Optional<Effort.Known> known = known(users, condition);
            if (known.isPresent()) {
                return again(known.get(), condition, users, sets);
            }
            if (effort.count()) {
                return bySets(condition, users, sets, "every set is to be counted");
            }
            if (found.isPresent() && !found.get().objection().any()) {
                return byEnvelopes(found.get(), condition, users, sets);
            }
            if (enough()) {
                return notDone(condition, users, sets, "another set does not hold");
            }
            String why = found.map(f -> f.objection().why()).orElse(envelopes.match(e -> "", reason -> reason));
            return otherwise(condition, users, sets, why, Optional.empty());
        });
        return answer.orElse(notDone(condition, users, sets, "the work was cancelled"));
    }

    private static Answer notDone(State condition, int users, BigInteger sets, String why) {
        return none(condition, users, sets, Verdict.NOT_DONE, why);
    }

    private static Answer none(State condition, int users, BigInteger sets, Verdict verdict, String why) {
        String words = ExactStates.words(condition);
        return new Answer(users, words, verdict, sets, Method.NONE, 0, OptionalLong.empty(), List.of(), why);
    }

    /** Whether no more is asked than whether some set does not hold, and one was found. */
    private boolean enough() {
        return effort.verdictOnly() && refuted;
    }

    private Optional<Effort.Known> known(int users, State condition) {
        return effort.known().stream()
                .filter(known -> known.users() == users && known.condition().equals(ExactStates.words(condition)))
                .findFirst();
    }

    /** What an earlier run showed: its worst sets are solved once more. */
    private Answer again(Effort.Known known, State condition, int users, BigInteger sets) {
        List<String> ids = plant.inlets().stream().map(i -> i.id()).toList();
        List<int[]> worst = known.worst().stream()
                .map(open -> open.stream().mapToInt(ids::indexOf).toArray())
                .toList();
        watch.expect(worst.size());
        Tally tally = new ExactStates(plant, network, condition, judging, watch)
                .solve(ListedSets.of(worst), effort.threads());
        return judged(tally, condition, users, sets, known.method(), Widening.of(known.bounds()));
    }

    /** States that make the extremes of one sweep, and what it shows of all others. */
    private record Bounded(Tally tally, Widening widening) {}

    private Answer byEnvelopes(Envelopes.Found found, State condition, int users, BigInteger sets) {
        Bounded first = bounded(found.extremes(), condition, users);
        Answer answer = judged(first, condition, users, sets);
        boolean known = answer.verdict() == Verdict.FAILS && !mayList(sets); // only margins are left, of very many sets
        if (known || enough() || !open(answer, condition)) {
            return answer;
        }
        Bounded shown = finer(condition, users).map(finer -> both(first, finer)).orElse(first);
        Answer finer = judged(shown, condition, users, sets);
        String why = finer.verdict() == Verdict.UNDECIDED
                ? finer.why()
                : finer.worst().stream()
                        .filter(Answer.Worst::undecided)
                        .findFirst()
                        .map(Widening::doubt)
                        .orElse("");
        return open(finer, condition) ? otherwise(condition, users, sets, why, Optional.of(shown)) : finer;
    }

    /** Whether more work can tell what is not known yet: of the whole, or of some place in it. */
    private boolean open(Answer answer, State condition) {
        return answer.worst().stream().anyMatch(Answer.Worst::undecided)
                || (answer.verdict() == Verdict.UNDECIDED && !doubts.lacksEntries(answer, condition));
    }

    private boolean mayList(BigInteger sets) {
        return sets.compareTo(BigInteger.valueOf(effort.mostStates())) <= 0;
    }

    private static Bounded both(Bounded first, Bounded finer) {
        Tally tally = finer.tally;
        tally.addFound(first.tally);
        return new Bounded(tally, finer.widening.narrowedBy(first.widening));
    }

    /** Where envelopes over all sets do not serve: few sets one by one, many by branch and bound, else what is known already. */
    private Answer otherwise(State condition, int users, BigInteger sets, String why, Optional<Bounded> shown) {
        boolean mayList = mayList(sets);
        if (mayList && sets.compareTo(BigInteger.valueOf(FEW_SETS)) <= 0) {
            return bySets(condition, users, sets, why);
        }
        watch.expect(1);
        Optional<Answer> known =
                shown.map(s -> judged(s, condition, users, sets)).filter(a -> a.verdict() != Verdict.UNDECIDED);
        long boxes = known.isPresent()
                ? FEW_BOXES
                : mayList ? Math.max(FEW_BOXES, sets.longValueExact() / BOX_SETS) : MOST_BOXES;
        Optional<Branches.Found> found = new Branches(
                        plant, network, question, condition, users, judging, effort, watch, BOX_SETS, boxes)
                .find();
        boolean closed = found.isPresent() && found.get().open().signum() == 0;
        refuted |= found.isPresent() && found.get().tally().fails();
        if (!closed && known.isPresent()) {
            return known.get();
        }
        if (!closed && mayList && !enough()) {
            return bySets(condition, users, sets, why);
        }
        return found.map(branches -> branched(branches, condition, users, sets, why, shown))
                .orElseGet(() -> shown.map(s -> judged(s, condition, users, sets))
                        .orElseGet(() -> bySets(condition, users, sets, why)));
    }

    private Answer branched(
            Branches.Found found, State condition, int users, BigInteger sets, String why, Optional<Bounded> shown) {
        String open = found.open().signum() == 0
                ? ""
                : "of " + found.open() + " sets nothing is shown, because " + found.why();
        Optional<Widening> bounds = shown.filter(s -> s.tally.gap() <= 1).map(Bounded::widening);
        Widening widening = open.isEmpty()
                ? bounds.map(found.widening()::narrowedBy).orElse(found.widening())
                : bounds.orElse(Widening.unknown()).leaving(open);
        Tally tally = found.tally();
        shown.ifPresent(s -> tally.addFound(s.tally));
        return judged(tally, condition, users, sets, Method.BRANCHES, widening)
                .because(why + "; so sets were split by which inlets are open, into " + found.boxes() + " boxes"
                        + (open.isEmpty() ? "" : "; " + open));
    }

    private Bounded bounded(List<Extreme> extremes, State condition, int users) {
        ListedSets listed = ListedSets.of(extremes, users);
        watch.expect(listed.size());
        Tally tally = new ExactStates(plant, network, condition, judging, watch).solve(listed, effort.threads());
        return new Bounded(tally, Widening.of(tally.worst(), extremes, users));
    }

    private Answer judged(Bounded bounded, State condition, int users, BigInteger sets) {
        return judged(bounded.tally, condition, users, sets, Method.ENVELOPES, bounded.widening);
    }

    /** The same with finer tables and no kinks in them, for this number of users only. */
    private Optional<Bounded> finer(State condition, int users) {
        Question alone = new Question(List.of(users), question.atMost(), List.of(condition));
        return Envelopes.of(plant, network, alone, List.of(condition), Envelopes.FINE_INTERVALS, Box.all(plant), watch)
                .match(Optional::of, why -> Optional.<Envelopes>empty())
                .map(envelopes -> envelopes.extremes(condition, true))
                .filter(found -> !found.objection().any())
                .map(found -> bounded(found.extremes(), condition, users));
    }

    private Answer bySets(State condition, int users, BigInteger sets, String why) {
        if (sets.compareTo(BigInteger.valueOf(effort.mostStates())) > 0) {
            return none(
                    condition,
                    users,
                    sets,
                    Verdict.UNDECIDED,
                    "no bound was used, because " + why + ", and " + sets
                            + " sets are more than may be solved one by one");
        }
        EverySet every = new EverySet(plant, question, users, Box.all(plant));
        watch.expect(every.size());
        Tally tally = new ExactStates(plant, network, condition, judging, watch).solve(every, effort.threads());
        return judged(tally, condition, users, sets, Method.EVERY_SET, Widening.none())
                .because(why);
    }

    private Answer judged(Tally tally, State condition, int users, BigInteger sets, Method method, Widening widening) {
        List<Answer.Worst> worst = widening.of(tally.worst());
        boolean fails = tally.fails();
        refuted |= fails;
        String doubt = doubts.of(tally, method, condition, users, fails ? "" : widening.doubt(worst));
        Verdict verdict = fails ? Verdict.FAILS : doubt.isEmpty() ? Verdict.HOLDS : Verdict.UNDECIDED;
        boolean counted =
                method == Method.EVERY_SET && BigInteger.valueOf(tally.solved()).equals(sets);
        return new Answer(
                users,
                ExactStates.words(condition),
                verdict,
                sets,
                method,
                tally.solved(),
                counted ? OptionalLong.of(tally.failing()) : OptionalLong.empty(),
                worst,
                doubt);
    }

    private <T> Optional<T> watched(Supplier<T> work) {
        try {
            watch.goOn();
            return Optional.of(work.get());
        } catch (CancellationException nobodyWantsIt) {
            return Optional.empty();
        }
    }
}
