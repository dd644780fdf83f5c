package dustwright.engine.coverage;

import dustwright.engine.coverage.Answer.Verdict;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

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

    /** The worst of all answers per requirement and place, smallest margin first. */
    public List<Answer.Worst> worstPerPlace() {
        return Answer.Worst.perPlace(answers.stream().flatMap(a -> a.worst().stream()));
    }

    /** How an answer calls its condition. */
    public static String words(State condition) {
        return ExactStates.words(condition);
    }

    /** What is shown so far, for a later run to take up. */
    public List<Effort.Known> known() {
        return answers.stream().flatMap(a -> Effort.Known.of(a).stream()).toList();
    }

    /** Greatest number of users asked up to which every number asked holds in every condition. */
    public Users carried() {
        int shown = 0;
        for (int users : question.users()) {
            Optional<Answer> stop = answers.stream()
                    .filter(a -> a.users() == users && a.verdict() != Verdict.HOLDS)
                    .min(Comparator.comparing(a -> a.verdict() != Verdict.FAILS));
            if (stop.isPresent()) {
                return Users.upTo(shown, stop);
            }
            shown = users;
        }
        return Users.upTo(shown, Optional.empty());
    }

    /** True when some answers are missing because the work was cancelled. */
    public boolean partial() {
        return answers.stream().anyMatch(a -> a.verdict() == Verdict.NOT_DONE);
    }
}
