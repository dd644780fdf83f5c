package dustwright.documents.answers;

import dustwright.documents.drawing.MarginClass;
import dustwright.documents.drawing.MarginStrip;
import dustwright.documents.hazard.HazardLists;
import dustwright.documents.report.Digest;
import dustwright.documents.report.Verdict;
import dustwright.documents.writing.Figures;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.StepFigures;
import dustwright.documents.writing.Wording;
import dustwright.engine.OneUserVelocity;
import dustwright.engine.StateAnswer;
import dustwright.engine.Study;
import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Answers for a person at a terminal: plain text, no colour needed, no line longer than asked where words can be cut. */
public final class TextAnswers {
    private static final int MOST_FINDINGS = 20;
    private static final int MOST_RUNS = 8;
    private static final int NARROWEST = 60;

    private final Study study;
    private final Show show;
    private final Lines lines;

    private TextAnswers(Study study, UnitSystem units, int width) {
        this(study, new Show(units), width);
    }

    private TextAnswers(Study study, Show show, int width) {
        this.study = study;
        this.show = show;
        this.lines = new Lines(Math.max(width, NARROWEST));
    }

    /** What holds and what does not: verdict, findings worst first with the numbers {@code explain} takes, one-user velocities. */
    public static String verify(Study study, UnitSystem units, int width) {
        return new TextAnswers(study, units, width).verified().toString();
    }

    /** Every pressure, flow and velocity of the states asked. */
    public static String solve(Study study, UnitSystem units, int width) {
        TextAnswers text = new TextAnswers(study, units, width);
        text.lines.text("", study.plant().name());
        study.states().forEach(text::solved);
        return text.footer().toString();
    }

    /** One finding step by step. */
    public static String explain(Study study, Finding finding, UnitSystem units, int width) {
        return new TextAnswers(study, new Show(units).of(finding), width)
                .explained(finding)
                .toString();
    }

    /** Sheets of equipment, figure by figure. */
    public static String sheet(Study study, List<Sheet> sheets, UnitSystem units, int width) {
        TextAnswers text = new TextAnswers(study, units, width);
        text.lines.text("", study.plant().name());
        SheetText sheetText = new SheetText(text.show, text.lines);
        sheets.forEach(sheetText::sheet);
        text.besides(sheets);
        return text.footer().toString();
    }

    /** How much does not hold that the sheets printed do not say. */
    private void besides(List<Sheet> printed) {
        if (study.states().isEmpty()) {
            lines.gap()
                    .text(
                            "",
                            "Only what this sheet needs was computed: whether the rest of the plant holds, verify says.");
            return;
        }
        Set<String> said = printed.stream()
                .flatMap(sheet -> sheet.findings().stream())
                .map(Finding::id)
                .collect(Collectors.toSet());
        long others = study.worstPerPlace().stream()
                .filter(f -> !f.holds() && !said.contains(f.id()))
                .count();
        if (others > 0) {
            lines.gap()
                    .text(
                            "",
                            "Besides what is printed here, "
                                    + Wording.counted(others, "requirement does", "requirements do")
                                    + " not hold or cannot be judged, in states or other sheets; verify lists them.");
        }
        if (study.states().stream().allMatch(state -> state.findings().isEmpty())) {
            lines.gap().text("", "States were solved for this sheet and not judged: whether they hold, verify says.");
        }
        notSolved();
    }

    /** One figure of a sheet step by step, in the units in which its sheet shows it. */
    public static String figure(Study study, Sheet sheet, Entry entry, UnitSystem units, int width) {
        TextAnswers text = new TextAnswers(study, Wording.across(sheet, new Show(units)), width);
        new SheetText(text.show, text.lines).head(sheet, entry);
        text.steps(entry.derivation());
        text.lines.gap().text("", "From: " + Wording.source(entry.derivation().limitSource()));
        return text.footer().toString();
    }

    private Lines verified() {
        Digest digest = new Digest(study);
        Verdict verdict = Verdict.of(digest, show);
        lines.text("", study.plant().name()).gap();
        lines.text("", verdict.word() + " " + verdict.reason());
        findings();
        List<String> minds = Stream.of(digest.usersNotAsked(), digest.transportNotAsked(), digest.standbyNotAsked())
                .flatMap(Optional::stream)
                .toList();
        if (!minds.isEmpty()) {
            lines.gap();
            minds.forEach(mind -> lines.text("", "Mind: " + mind));
        }
        oneUser();
        digest.mostUsers()
                .ifPresent(answer -> Digest.slowest(answer).ifPresent(slowest -> {
                    lines.head("Slowest stretch with most users on");
                    lines.text(
                            "  ",
                            slowest.where() + ", set " + answer.state().name() + ": "
                                    + Wording.valueAndLimit(slowest, show) + " (" + Show.margin(slowest)
                                    + ")");
                }));
        notSolved();
        return footer();
    }

    private void findings() {
        List<Finding> findings = study.worstPerPlace();
        long failing = findings.stream().filter(f -> !f.holds()).count();
        TextTable table = TextTable.of(
                TextTable.number("No"),
                TextTable.words(""),
                TextTable.words("Finding"),
                TextTable.words("Value and limit"),
                TextTable.number("Margin"),
                TextTable.words("Set"));
        long shown = failing == 0 ? Math.min(MOST_RUNS, findings.size()) : Math.min(MOST_FINDINGS, failing);
        for (int i = 0; i < shown; i++) {
            Finding finding = findings.get(i);
            table.row(
                    Integer.toString(i + 1),
                    MarginClass.of(finding).glyph(finding.side()),
                    Lines.plain(Wording.claim(finding)),
                    Lines.plain(Wording.valueAndLimit(finding, show)),
                    Lines.plain(Show.margin(finding)),
                    Lines.plain(finding.state()));
        }
        if (table.isEmpty()) {
            return;
        }
        lines.head(failing == 0 ? "Tightest requirements" : head(findings) + ", worst first")
                .table(table);
        long rest = failing - shown;
        lines.text(
                "  ",
                (rest > 0 ? Wording.counted(rest, "more place fails", "more places fail") + ". " : "")
                        + "explain PLANT NO shows how a finding was calculated.");
    }

    private static String head(List<Finding> findings) {
        return findings.stream().allMatch(Finding::decided)
                ? "What does not hold"
                : "What does not hold or is not known";
    }

    private void oneUser() {
        List<OneUserVelocity> sorted = MarginStrip.worstFirst(study.oneUser());
        if (sorted.isEmpty()) {
            return;
        }
        String velocity = show.unit(Dimension.VELOCITY);
        TextTable table = TextTable.of(
                TextTable.words("Run"),
                TextTable.number("Bore " + show.boreUnit()),
                TextTable.words("Open"),
                TextTable.number("Slowest " + velocity),
                TextTable.number("Least"),
                TextTable.words(""),
                TextTable.number("Margin"));
        Plant plant = study.plant();
        for (OneUserVelocity one : sorted.subList(0, Math.min(MOST_RUNS, sorted.size()))) {
            table.row(
                    one.run(),
                    Lines.plain(
                            show.bore(plant.tube(plant.run(one.run()).tube()).bore())),
                    Lines.plain(one.state()),
                    Lines.plain(show.number(one.slowest())),
                    Lines.plain(show.number(one.least())),
                    MarginClass.of(one.margin()).glyph(Side.AT_LEAST),
                    Lines.plain(Show.margin(one.margin())));
        }
        lines.head("Velocity with one user, slowest " + Math.min(MOST_RUNS, sorted.size()) + " of "
                        + Wording.counted(sorted.size(), "run", "runs"))
                .table(table);
    }

    private void notSolved() {
        for (StateAnswer answer : study.states()) {
            if (answer.duty() instanceof Outcome.NotSolved<DutyPoint> not) {
                lines.head("No answer for set " + answer.state().name());
                lines.text("  ", not.why());
            }
        }
    }

    private Lines footer() {
        Plant plant = study.plant();
        lines.gap();
        lines.text(
                "",
                "Rests on " + Wording.counted(plant.assumptions().size(), "assumption", "assumptions") + " and "
                        + Wording.counted(plant.overrides().size(), "override", "overrides")
                        + "; the report lists them. "
                        + Wording.freeAir(show));
        Wording.asked(plant).ifPresent(words -> lines.text("", words));
        HazardLists.untested(plant).ifPresent(words -> lines.text("", words));
        return lines.text("", Wording.SCREENING);
    }

    private void solved(StateAnswer answer) {
        lines.head(
                study.plant().inlets().isEmpty()
                        ? "As held and fed; the plant has no inlets"
                        : "Set " + answer.state().name() + ": " + Wording.openInlets(answer.state()));
        if (answer.duty() instanceof Outcome.NotSolved<DutyPoint> not) {
            lines.text("  ", "No answer. " + not.why());
        } else if (answer.duty() instanceof Outcome.Solved<DutyPoint> solved) {
            new DutyText(study.plant(), solved.value(), show, lines).write();
            failing(answer);
        }
    }

    private void failing(StateAnswer answer) {
        List<Finding> failing =
                answer.findings().stream().filter(f -> !f.holds()).toList();
        failing.stream().min(Comparator.comparingDouble(Finding::margin)).ifPresent(worst -> {
            lines.gap();
            lines.text(
                    "  ",
                    (worst.decided() ? "Does not hold here: " : "Not known here: ") + Wording.claim(worst) + ", "
                            + Wording.valueAndLimit(worst, show) + " ("
                            + Show.margin(worst) + ")."
                            + (failing.size() > 1
                                    ? " In all " + Figures.count(failing.size()) + "; verify lists them."
                                    : ""));
        });
    }

    private Lines explained(Finding finding) {
        lines.text("", Wording.claim(finding) + ".");
        lines.text(
                "",
                Wording.valueAndLimit(finding, show) + ", margin " + Show.margin(finding) + ", set " + finding.state()
                        + ".");
        lines.gap();
        lines.text(
                "",
                (finding.holds() || finding.unjudged() ? "If it did not hold: " : "")
                        + finding.code().meaning());
        if (!finding.holds()) {
            lines.text("", "What would help: " + finding.code().remedy());
        }
        steps(finding.derivation());
        lines.head("Limit");
        lines.text(
                "  ",
                show.pair(finding).limitFull() + ", from: "
                        + Wording.source(finding.derivation().limitSource()));
        return footer();
    }

    private void steps(Derivation derivation) {
        int n = 1;
        for (Step step : derivation.steps()) {
            step(n, step);
            n++;
        }
    }

    private void step(int n, Step step) {
        lines.head(n + ". " + step.equation() + "   " + step.formula());
        StepFigures figures = new StepFigures(step);
        for (Term input : step.inputs()) {
            lines.text("     ", input.symbol() + " = " + figures.input(input) + "   " + input.meaning());
        }
        Term result = step.result();
        String reader = show.full(result.value());
        String si = figures.result();
        lines.text(
                "   ",
                "→ " + result.symbol() + " = " + si + (reader.equals(si) ? "" : " (" + reader + ")") + "   "
                        + result.meaning());
        lines.text("     ", "source: " + Wording.source(step.source()));
    }
}
