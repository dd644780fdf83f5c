package dustwright.documents.report;

import dustwright.documents.writing.CoverWording;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.Study;
import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.finding.Finding;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is known of a plant in a few sentences: every set of open inlets, and what the sheets of the equipment judge, which does not go by
 * sets. It never says that more holds than {@link Verdict} does of the same study.
 */
public final class Conclusion {
    /** So many requirements are named; the papers list the others. */
    private static final int MOST_NAMED = 3;

    private Conclusion() {}

    /**
     * Puts it in sentences, what does not hold first.
     *
     * @param coverage of every set
     * @param study of the sets the plant file names and every single user, with sheets
     */
    public static String of(Coverage coverage, Study study, Show show) {
        List<Finding> worst = study.worstPerPlace();
        List<Finding> unknown = worst.stream().filter(f -> !f.decided()).toList();
        List<Finding> failing = worst.stream()
                .filter(Finding::fails)
                .filter(f -> !told(coverage, f))
                .toList();
        Optional<Finding> least = least(coverage, worst);
        String leastMargin = least.filter(Finding::holds)
                .map(f -> "Least margin found " + Show.margin(f) + ": " + Wording.claim(f) + ", "
                        + Wording.valueAndLimit(f, show) + ".")
                .orElse("");
        String unsolved =
                study.states().stream().allMatch(Digest::isSolved) ? "" : "A set that was asked has no answer.";
        String sets = CoverWording.verdict(coverage, show);
        String notKnown = unknown.isEmpty() ? "" : "Not known: " + named(unknown);
        if (!failing.isEmpty()) {
            boolean setsFail = coverage.answers().stream().anyMatch(a -> a.verdict() == Answer.Verdict.FAILS);
            String beside = (setsFail ? "Besides, does not hold: " : "Does not hold: ") + named(failing);
            return setsFail ? joined(sets, beside, notKnown, unsolved) : joined(beside, notKnown, sets, unsolved);
        }
        if (!coverage.holds()) {
            return joined(sets, notKnown, unsolved, leastMargin);
        }
        return unknown.isEmpty()
                ? joined(sets, "The sheets of the equipment leave nothing open.", unsolved, leastMargin)
                : joined(notKnown, "What can be judged of the states holds for every set.", unsolved, leastMargin);
    }

    private static String joined(String... sentences) {
        return Stream.of(sentences).filter(s -> !s.isEmpty()).collect(Collectors.joining(" "));
    }

    /** Whether the coverage judges it too, which says then by itself that it fails. */
    private static boolean told(Coverage coverage, Finding finding) {
        return judged(coverage)
                .anyMatch(f ->
                        f.fails() && f.code() == finding.code() && f.where().equals(finding.where()));
    }

    private static Stream<Finding> judged(Coverage coverage) {
        return coverage.answers().stream()
                .map(Answer::worst)
                .flatMap(List::stream)
                .map(Answer.Worst::finding);
    }

    /** The least margin that was found, over the sets and the sheets; of equals that of the study. */
    private static Optional<Finding> least(Coverage coverage, List<Finding> worst) {
        return Stream.concat(worst.stream(), judged(coverage))
                .filter(f -> f.decided() && !f.nothingByDesign())
                .min(Comparator.comparingDouble(Finding::margin));
    }

    private static String named(List<Finding> findings) {
        int others = findings.size() - MOST_NAMED;
        return findings.stream().limit(MOST_NAMED).map(Wording::requirement).collect(Collectors.joining("; "))
                + (others < 1 ? "" : "; and " + Wording.counted(others, "other requirement", "other requirements"))
                + ".";
    }
}
