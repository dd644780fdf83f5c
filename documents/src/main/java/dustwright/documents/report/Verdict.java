package dustwright.documents.report;

import dustwright.documents.writing.Figures;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.StateAnswer;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.network.State;
import dustwright.engine.sheet.Sheet;
import java.util.List;

/**
 * The conclusion in words, the same on paper and in the terminal: holds, does not hold, not known. Nothing else.
 *
 * @param word the conclusion itself
 * @param reason the sentence that follows it
 */
public record Verdict(String word, String reason) {
    /** So many unknown things are named before the list; more hide the verdict. */
    private static final int MOST_NAMED = 2;

    public static Verdict of(Digest digest, Show show) {
        Study study = digest.study();
        long solved = study.states().stream().filter(Digest::isSolved).count();
        int all = study.states().size();
        String sets = Figures.count(solved) + " of " + Wording.counted(all, "set", "sets");
        List<Digest.Group> groups = digest.groups();
        if (digest.failing() > 0) {
            long bad = study.states().stream()
                    .filter(s -> s.findings().stream().anyMatch(Finding::fails))
                    .count();
            Finding worst = groups.stream()
                    .map(Digest.Group::worst)
                    .filter(Finding::fails)
                    .findFirst()
                    .orElseThrow();
            String where = bad == 0
                    ? "in any set. "
                    : "in " + Figures.count(bad) + " of " + Wording.counted(all, "set", "sets") + ". ";
            return new Verdict(
                    "Does not hold", where + sentence(study, worst, show) + unknown(digest, show) + noAnswer(study));
        }
        if (solved == 0) {
            return new Verdict("Not known.", "No set could be solved." + noAnswer(study));
        }
        if (groups.isEmpty()) {
            return new Verdict(
                    "Nothing asked.", "Solved in " + sets + "; the plant file states no requirement for them.");
        }
        Finding tightest = digest.tightest().orElse(groups.get(0).worst());
        String least = "least margin " + Show.margin(tightest) + ": " + Wording.claim(tightest) + ", "
                + Wording.valueAndLimit(tightest, show) + ".";
        if (!digest.undecided().isEmpty()) {
            boolean air = digest.undecided().stream().anyMatch(f -> !f.unjudged());
            String rest = air ? " For air alone all holds in " : " What can be judged holds in ";
            String airAlone = tightest.decided() ? rest + sets + ", " + least : "";
            return new Verdict("Not known.", unknown(digest, show).strip() + airAlone + noAnswer(study));
        }
        return solved < all
                ? new Verdict("Not known", "for every set. Holds in " + sets + ", " + least + noAnswer(study))
                : new Verdict("Holds", "in " + sets + ", " + least);
    }

    /** "Dust settles in run S5 with inlet 1 alone: 9.8 m/s, least 16.0 (−39 %)." */
    static String sentence(Study study, Finding finding, Show show) {
        String set = finding.state().equals(Sheet.ANY_SET) ? "" : " with " + set(study, finding.state());
        return Wording.claim(finding) + set + ": " + Wording.valueAndLimit(finding, show) + " (" + Show.margin(finding)
                + ").";
    }

    /** "Loss unknown by dust cement: 2 t/h fed, enter ..."; of many the first few, the list says the others. */
    private static String unknown(Digest digest, Show show) {
        StringBuilder text = new StringBuilder();
        digest.undecided().stream()
                .limit(MOST_NAMED)
                .forEach(finding -> text.append(' ')
                        .append(Wording.claim(finding))
                        .append(", ")
                        .append(Wording.valueAndLimit(finding, show))
                        .append('.'));
        int others = digest.undecided().size() - MOST_NAMED;
        if (others > 0) {
            text.append(" And ")
                    .append(Wording.counted(others, "other is", "others are"))
                    .append(" not known.");
        }
        return text.toString();
    }

    private static String set(Study study, String name) {
        return study.states().stream()
                .map(StateAnswer::state)
                .filter(s -> s.name().equals(name))
                .findFirst()
                .filter(s -> s.open().size() <= 1)
                .map(State::name)
                .orElse("set " + name);
    }

    private static String noAnswer(Study study) {
        List<StateAnswer> unsolved =
                study.states().stream().filter(s -> !Digest.isSolved(s)).toList();
        if (unsolved.isEmpty()) {
            return "";
        }
        String first = unsolved.get(0).state().name();
        return unsolved.size() == 1
                ? " No answer for set " + first + "."
                : " No answer for " + Figures.count(unsolved.size()) + " sets, the first of them " + first + ".";
    }
}
