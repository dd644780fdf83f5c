package dustwright.documents.report;

import dustwright.documents.writing.Element;
import dustwright.documents.writing.Figures;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.StepFigures;
import dustwright.documents.writing.Wording;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** All findings by kind, those that fail one by one, and derivations down to the source. */
final class FindingPages {
    private static final int MOST_FAILING_ROWS = 120;
    private static final int MOST_DERIVATIONS = 16;
    private static final int MOST_STEPS_TOGETHER = 5;

    private final Digest digest;
    private final Show show;

    FindingPages(Digest digest, Show show) {
        this.digest = digest;
        this.show = show;
    }

    Element element() {
        Element section = Parts.section("findings", "10  Findings");
        section.add(byKind());
        failing(section);
        section.add(Element.of("h3").text("Derivations"));
        List<Digest.Group> derived = derived();
        section.add(Parts.paragraph(
                "",
                "The tightest finding of each kind and then those that fail, worst first: "
                        + Figures.count(derived.size()) + " of "
                        + Figures.count(digest.groups().size())
                        + " places. The command explain prints any other. Numbers are SI, five figures."));
        derived.forEach(group -> section.add(derivation(group)));
        return section;
    }

    private Element byKind() {
        Table table = Table.of(
                Table.words("Requirement"),
                Table.number("Checked", ""),
                Table.number("Fail", ""),
                Table.words("Tightest at"),
                Table.words("Set"),
                Table.margins());
        for (FindingCode code : FindingCode.values()) {
            List<Digest.Group> groups = digest.groups().stream()
                    .filter(g -> g.worst().code() == code)
                    .toList();
            if (!groups.isEmpty()) {
                Finding worst = groups.get(0).worst();
                table.row(
                        code.title(),
                        Figures.count(
                                groups.stream().mapToInt(Digest.Group::states).sum()),
                        Figures.count(
                                groups.stream().mapToInt(Digest.Group::failing).sum()),
                        worst.where().toString(),
                        worst.state(),
                        Parts.margin(worst));
            }
        }
        return table.element("wide");
    }

    private void failing(Element section) {
        List<Digest.Group> failing =
                digest.groups().stream().filter(g -> g.failing() > 0).toList();
        if (failing.isEmpty()) {
            return;
        }
        section.add(Element.of("h3").text("Does not hold"));
        Table table = Table.of(
                Table.words("Finding"),
                Table.words("Value and limit"),
                Table.words("Worst set"),
                Table.number("Fails in", "sets"),
                Table.margins());
        failing.stream().limit(MOST_FAILING_ROWS).forEach(group -> {
            Finding finding = group.worst();
            table.row(
                    Wording.claim(finding),
                    Wording.valueAndLimit(finding, show),
                    finding.state(),
                    Figures.count(group.failing()) + " of " + Figures.count(group.states()),
                    Parts.margin(finding));
        });
        section.add(table.element("wide"));
        if (failing.size() > MOST_FAILING_ROWS) {
            section.add(Parts.mind("the " + MOST_FAILING_ROWS + " worst of " + Figures.count(failing.size())
                    + " places are listed; the JSON answer of verify holds all."));
        }
    }

    private List<Digest.Group> derived() {
        Set<FindingCode> seen = new HashSet<>();
        List<Digest.Group> first = new ArrayList<>();
        List<Digest.Group> rest = new ArrayList<>();
        for (Digest.Group group : digest.groups()) {
            if (seen.add(group.worst().code())) {
                first.add(group);
            } else if (group.failing() > 0) {
                rest.add(group);
            }
        }
        first.addAll(rest.subList(0, Math.max(0, Math.min(rest.size(), MOST_DERIVATIONS - first.size()))));
        return first;
    }

    private Element derivation(Digest.Group group) {
        Finding finding = group.worst();
        Element head = Element.of("p")
                .with("class", "finding")
                .add(Parts.margin(finding))
                .text(" ")
                .add(Element.of("b").text(Wording.claim(finding)))
                .text(". " + Wording.valueAndLimit(finding, show) + ", set " + finding.state() + ".");
        boolean fits = finding.derivation().steps().size() <= MOST_STEPS_TOGETHER;
        Element block = Element.of("div")
                .with("class", fits ? "derivation together" : "derivation")
                .add(head);
        if (!finding.holds()) {
            block.add(Parts.paragraph(
                    "", finding.code().meaning() + " " + finding.code().remedy()));
        }
        if (!finding.derivation().steps().isEmpty()) {
            block.add(steps(finding));
        }
        Element limit = Element.of("p")
                .with("class", "cap")
                .text("Limit " + show.pair(finding).limitFull() + " from ");
        return block.add(limit.add(Parts.source(finding.derivation().limitSource())));
    }

    private Element steps(Finding finding) {
        Table table = Table.of(
                Table.sized("Equation", "eq"),
                Table.words("Formula and numbers put in"),
                Table.sized("Result", "res"),
                Table.sized("Source", "src"));
        for (Step step : finding.derivation().steps()) {
            Element numbers = Element.of("span")
                    .add(Element.of("span", "formula", step.formula()), Element.of("br"))
                    .add(Element.of("span", "cap", inputs(step)));
            table.row(step.equation(), numbers, result(step), Parts.source(step.source()));
        }
        return table.element("steps");
    }

    private String inputs(Step step) {
        StepFigures figures = new StepFigures(step);
        return step.inputs().stream()
                .map(t -> t.symbol() + " = " + figures.input(t) + " (" + t.meaning() + ")")
                .collect(Collectors.joining("; "));
    }

    private Element result(Step step) {
        Term result = step.result();
        return Element.of("span")
                .add(Element.of("b")
                        .with("class", "value")
                        .text(result.symbol() + " = " + new StepFigures(step).result()))
                .add(Element.of("br"), Element.of("span", "cap", result.meaning()));
    }
}
