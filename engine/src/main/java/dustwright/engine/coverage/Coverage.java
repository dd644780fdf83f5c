package dustwright.engine.coverage;

import dustwright.engine.coverage.Answer.Method;
import dustwright.engine.coverage.Answer.Verdict;
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
import java.util.stream.Stream;

/**
 * Whether every requirement of a plant holds whichever of its inlets are open, so many at once, and which set is the worst for which
 * requirement. Where the tubing is a tree this is proved by envelopes (equations COV-1 to COV-6) without going through the sets; else
 * every set is solved, up to a number; beyond it the answer is: not decided.
 *
 * @param answers one per number of users and condition, in the order of both
 * @param unfolded why envelopes do not serve this plant; empty when they do
 */
public record Coverage(Question question, List<Answer> answers, Optional<String> unfolded) {
    public Coverage {
        answers = List.copyOf(answers);
    }

    /** Proves or refutes. */
    public static Coverage of(Plant plant, Question question, Judging judging, Effort effort) {
        return new Proof(plant, question, judging, effort).coverage();
    }

    /** True when every answer is: holds. */
    public boolean holds() {
        return answers.stream().allMatch(a -> a.verdict() == Verdict.HOLDS || a.verdict() == Verdict.NO_SET);
    }

    /** How an answer calls its condition. */
    public static String words(State condition) {
        return ExactStates.words(condition);
    }

    /** What is shown so far, for a later run to take up. */
    public List<Effort.Known> known() {
        return answers.stream().flatMap(a -> Effort.Known.of(a).stream()).toList();
    }

    /** True when some answers are missing because the work was cancelled. */
    public boolean partial() {
        return answers.stream().anyMatch(a -> a.verdict() == Verdict.NOT_DONE);
    }

    /** The work behind one coverage. */
    private static final class Proof {
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

        /** What the sweep from the inlets depends on. */
        private String sweptAlike(State condition) {
            return Envelopes.feeding(plant, condition) + " " + new TreeSet<>(condition.openBleeds());
        }

        private Outcome<Envelopes> envelopes(String alike) {
            List<State> conditions = question.conditions().stream()
                    .filter(c -> sweptAlike(c).equals(alike))
                    .toList();
            return watched(() -> Envelopes.of(plant, network, question, conditions, Envelopes.INTERVALS, watch))
                    .orElse(new Outcome.NotSolved<>("the work was cancelled"));
        }

        private Answer answer(
                Outcome<Envelopes> envelopes, Optional<Envelopes.Found> found, State condition, int users) {
            String words = ExactStates.words(condition);
            BigInteger sets = question.sets(plant, users);
            if (sets.signum() == 0) {
                return new Answer(
                        users, words, Verdict.NO_SET, sets, Method.NONE, 0, OptionalLong.empty(), List.of(), 0, "");
            }
            Optional<Answer> answer = watched(() -> {
                for (Effort.Known known : effort.known()) {
                    if (known.users() == users && known.condition().equals(words)) {
                        return again(known, condition, users, sets);
                    }
                }
                if (effort.count()) {
                    return bySets(condition, users, sets, "every set is to be counted");
                }
                if (found.isPresent() && found.get().objection().isEmpty()) {
                    return byEnvelopes(found.get(), condition, users, sets);
                }
                String why = found.map(Envelopes.Found::objection).orElse(envelopes.match(e -> "", reason -> reason));
                return bySets(condition, users, sets, why);
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
                    0,
                    "the work was cancelled"));
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
            return judged(tally, condition, users, sets, known.method(), List.of());
        }

        private Answer byEnvelopes(Envelopes.Found found, State condition, int users, BigInteger sets) {
            Answer answer = bounded(found.extremes(), condition, users, sets);
            if (answer.verdict() == Verdict.UNDECIDED) {
                answer = finer(condition, users, sets).orElse(answer);
            }
            boolean ordered = found.extremes().stream().allMatch(e -> e.users() != users || e.beyond() == 1);
            boolean open = answer.verdict() == Verdict.UNDECIDED;
            if ((open || !ordered) && sets.compareTo(BigInteger.valueOf(effort.mostStates())) <= 0) {
                return bySets(condition, users, sets, open ? answer.why() : "the order of some velocities is not sure");
            }
            return answer;
        }

        private Answer bounded(List<Extreme> extremes, State condition, int users, BigInteger sets) {
            ListedSets listed = ListedSets.of(extremes, users);
            watch.expect(listed.size());
            Tally tally = new ExactStates(plant, network, condition, judging, watch).solve(listed, effort.threads());
            return judged(tally, condition, users, sets, Method.ENVELOPES, extremes);
        }

        /** The same with finer tables and no kinks in them, for this number of users only. */
        private Optional<Answer> finer(State condition, int users, BigInteger sets) {
            Question alone = new Question(List.of(users), question.atMost(), List.of(condition));
            return Envelopes.of(plant, network, alone, List.of(condition), Envelopes.FINE_INTERVALS, watch)
                    .match(Optional::of, why -> Optional.<Envelopes>empty())
                    .map(envelopes -> envelopes.extremes(condition, true))
                    .filter(found -> found.objection().isEmpty())
                    .map(found -> bounded(found.extremes(), condition, users, sets));
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
                        0,
                        "no bound was used, because " + why + ", and " + sets
                                + " sets are more than may be solved one by one");
            }
            EverySet every = new EverySet(plant, question, users);
            watch.expect(every.size());
            Tally tally = new ExactStates(plant, network, condition, judging, watch).solve(every, effort.threads());
            return judged(tally, condition, users, sets, Method.EVERY_SET, List.of())
                    .because(why);
        }

        private Answer judged(
                Tally tally, State condition, int users, BigInteger sets, Method method, List<Extreme> extremes) {
            boolean fails = tally.worst().stream().anyMatch(w -> w.finding().fails());
            Widening widening = Widening.of(tally.worst(), extremes, users);
            String doubt = users == 0 ? "" : unknownDust(condition).orElse("");
            doubt = doubt.isEmpty() ? doubt(tally, method) : doubt;
            doubt = doubt.isEmpty() && !fails ? widening.doubt() : doubt;
            doubt = doubt.isEmpty() && method != Method.EVERY_SET && lumpMayStop()
                    ? "some dust has pieces wider than some bore, and only solving every set tells whether they come there"
                    : doubt;
            Verdict verdict = fails ? Verdict.FAILS : doubt.isEmpty() ? Verdict.HOLDS : Verdict.UNDECIDED;
            boolean counted = method == Method.EVERY_SET
                    && BigInteger.valueOf(tally.solved()).equals(sets);
            return new Answer(
                    users,
                    ExactStates.words(condition),
                    verdict,
                    sets,
                    method,
                    tally.solved(),
                    counted ? OptionalLong.of(tally.failing()) : OptionalLong.empty(),
                    tally.worst(),
                    widening.greatest(),
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
                    .map(dust -> "what dust " + dust
                            + " costs is not known; enter \"particle size\" and \"particle density\"");
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

        private <T> Optional<T> watched(java.util.function.Supplier<T> work) {
            try {
                watch.goOn();
                return Optional.of(work.get());
            } catch (CancellationException nobodyWantsIt) {
                return Optional.empty();
            }
        }
    }
}
