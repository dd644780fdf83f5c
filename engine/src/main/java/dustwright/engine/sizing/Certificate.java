package dustwright.engine.sizing;

import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Answer.Method;
import dustwright.engine.coverage.Answer.Verdict;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Question;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.sizing.Parts.Part;
import dustwright.engine.tubing.Inlet;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One coverage of a plant from those of its pieces: what a place can meet with so many users in the plant is what it can meet with
 * as many of them in its piece as the others leave (equation SIZ-4).
 */
final class Certificate {
    private final Plant plant;
    private final Question question;
    private final List<Part> parts;
    private final List<Coverage> coverages;

    private Certificate(Plant plant, Question question, List<Part> parts, List<Coverage> coverages) {
        this.plant = plant;
        this.question = question;
        this.parts = parts;
        this.coverages = coverages;
    }

    /**
     * The certificate of the whole.
     *
     * @param plant with its sizes
     * @param question asked of it
     */
    static Coverage of(Plant plant, Question question, List<Part> parts, List<Coverage> coverages) {
        if (parts.size() == 1) {
            return coverages.get(0);
        }
        Certificate whole = new Certificate(plant, question, parts, coverages);
        List<Answer> answers = new ArrayList<>();
        for (State condition : question.conditions()) {
            for (int users : question.users()) {
                answers.add(whole.answer(condition, users));
            }
        }
        return new Coverage(question, answers, Optional.empty());
    }

    private Answer answer(State condition, int users) {
        List<Answer> said = new ArrayList<>();
        for (int n = 0; n < parts.size(); n++) {
            said.addAll(said(n, condition, users));
        }
        BigInteger sets = question.sets(plant, users);
        return new Answer(
                users,
                Coverage.words(condition),
                sets.signum() == 0 ? Verdict.NO_SET : verdict(said),
                sets,
                said.stream().anyMatch(a -> a.method() == Method.ENVELOPES) ? Method.ENVELOPES : Method.EVERY_SET,
                said.stream().mapToLong(Answer::solved).sum(),
                OptionalLong.empty(),
                Worst.perPlace(said.stream().flatMap(a -> a.worst().stream())),
                said.stream()
                        .map(Answer::why)
                        .filter(w -> !w.isEmpty())
                        .findFirst()
                        .orElse(""));
    }

    private static Verdict verdict(List<Answer> said) {
        for (Verdict one : new Verdict[] {Verdict.FAILS, Verdict.NOT_DONE, Verdict.UNDECIDED}) {
            if (said.stream().anyMatch(a -> a.verdict() == one)) {
                return one;
            }
        }
        return Verdict.HOLDS;
    }

    /** What a piece said of the numbers of its users that go with so many in the whole. */
    private List<Answer> said(int number, State condition, int users) {
        Part part = parts.get(number);
        Set<String> inlets = part.plant().inlets().stream().map(Inlet::id).collect(Collectors.toSet());
        String words = Coverage.words(Parts.condition(condition, part.plant(), inlets));
        int mostOfOthers = 0;
        for (int other = 0; other < parts.size(); other++) {
            mostOfOthers += other == number
                    ? 0
                    : parts.get(other).users().stream().mapToInt(k -> k).max().orElse(0);
        }
        int least = users - mostOfOthers;
        return coverages.get(number).answers().stream()
                .filter(a -> a.condition().equals(words) && a.users() <= users && a.users() >= least)
                .toList();
    }
}
