package dustwright.engine.coverage;

import dustwright.engine.coverage.Answer.Method;
import dustwright.engine.coverage.Answer.Verdict;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Outcome;
import dustwright.engine.network.Network;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Length;
import dustwright.engine.tubing.Hose;
import dustwright.engine.tubing.Tube;
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
import java.util.stream.Stream;

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

    Proof(Plant plant, Question question, Judging judging, Effort effort) {
        this.plant = plant;
        this.question = question;
        this.judging = judging;
        this.effort = effort;
        network = Network.compile(plant);
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
        BigInteger cost = question.sets(plant, users)
                .multiply(BigInteger.valueOf(plant.inlets().size()));
        return cost.compareTo(BigInteger.valueOf(effort.few())) <= 0;
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
        String words = ExactStates.words(condition);
        BigInteger sets = question.sets(plant, users);
        if (sets.signum() == 0) {
            return new Answer(users, words, Verdict.NO_SET, sets, Method.NONE, 0, OptionalLong.empty(), List.of(), "");
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
            String why = found.map(f -> f.objection().why()).orElse(envelopes.match(e -> "", reason -> reason));
            return otherwise(condition, users, sets, why, Optional.empty());
        });
        return answer.orElse(new Answer(
                users,
                words,
                Verdict.NOT_DONE,
                sets,
                Method.NONE,
                0,
                OptionalLong.empty(),
                List.of(),
                "the work was cancelled"));
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
        if (!open(answer)) {
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
        return open(finer) ? otherwise(condition, users, sets, why, Optional.of(shown)) : finer;
    }

    /** Whether the whole or some place in it is not known to hold or not to. */
    private static boolean open(Answer answer) {
        return answer.verdict() == Verdict.UNDECIDED || answer.worst().stream().anyMatch(Answer.Worst::undecided);
    }

    private static Bounded both(Bounded first, Bounded finer) {
        Tally tally = finer.tally;
        tally.addFound(first.tally);
        return new Bounded(tally, finer.widening.narrowedBy(first.widening));
    }

    /** Where envelopes over all sets do not serve: few sets one by one, many by branch and bound, else what is known already. */
    private Answer otherwise(State condition, int users, BigInteger sets, String why, Optional<Bounded> shown) {
        boolean mayList = sets.compareTo(BigInteger.valueOf(effort.mostStates())) <= 0;
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
        if (!closed && known.isPresent()) {
            return known.get();
        }
        if (!closed && mayList) {
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
            return new Answer(
                    users,
                    ExactStates.words(condition),
                    Verdict.UNDECIDED,
                    sets,
                    Method.NONE,
                    0,
                    OptionalLong.empty(),
                    List.of(),
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
        boolean fails = worst.stream().anyMatch(w -> w.finding().fails());
        String doubt = users == 0 ? "" : unknownDust(condition).orElse("");
        doubt = doubt.isEmpty() ? doubt(tally, method) : doubt;
        doubt = doubt.isEmpty() ? notJudged(tally) : doubt;
        doubt = doubt.isEmpty() && !fails ? widening.doubt(worst) : doubt;
        doubt = doubt.isEmpty() && method != Method.EVERY_SET && lumpMayStop()
                ? "some dust has pieces wider than some bore, and only solving every set tells whether they come there"
                : doubt;
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

    /** Whether the largest piece of any dust is wider than the narrowest hose, tube or tool of the plant. */
    private boolean lumpMayStop() {
        double widest_m = plant.dusts().stream()
                .flatMap(dust -> dust.largestPiece().stream())
                .mapToDouble(Length::metres)
                .max()
                .orElse(0);
        return Stream.of(
                        plant.hoses().stream().map(Hose::bore),
                        plant.tubes().stream().map(Tube::bore),
                        plant.tools().stream().flatMap(tool -> tool.widest().stream()))
                .flatMap(bores -> bores)
                .anyMatch(bore -> bore.metres() < widest_m);
    }

    /** A dust whose loss is not known and that some set feeds: then nothing is shown to hold. */
    private Optional<String> unknownDust(State condition) {
        return plant.inlets().stream()
                .filter(inlet -> condition.feeding().contains(inlet.id()) && plant.feedsUnknownLoss(inlet))
                .findFirst()
                .flatMap(inlet -> inlet.dust())
                .map(dust ->
                        "what dust " + dust + " costs is not known; enter \"particle size\" and \"particle density\"");
    }

    /** What is asked and could not be judged in some set; empty where all could. */
    private static String notJudged(Tally tally) {
        return tally.worst().stream()
                .map(Answer.Worst::finding)
                .filter(Finding::unjudged)
                .findFirst()
                .map(finding -> finding.code().title() + ", " + finding.where() + ": "
                        + finding.derivation().steps().get(0).formula().replaceFirst("\\.$", ""))
                .orElse("");
    }

    /** Why a set may be worse than the worst found, or have no answer; empty when not. */
    private static String doubt(Tally tally, Method method) {
        if (!tally.unsolved().isEmpty()) {
            return "a state has no answer: " + tally.unsolved();
        }
        if (method == Method.EVERY_SET) {
            return "";
        }
        return tally.gap() > 1
                ? "an envelope and the solved state that makes it differ by more than its bound allows"
                : "";
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
