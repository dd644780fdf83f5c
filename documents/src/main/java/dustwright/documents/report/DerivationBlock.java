package dustwright.documents.report;

import dustwright.documents.writing.Element;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.StepFigures;
import dustwright.documents.writing.Wording;
import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import java.util.stream.Collectors;

/** How one finding came about, down to the source, for page and paper. */
public final class DerivationBlock {
    private static final int MOST_STEPS_TOGETHER = 5;

    private DerivationBlock() {}

    /** Claim, remedy where it does not hold, steps, and where the limit comes from. */
    public static Element of(Finding finding, Show show) {
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
            block.add(steps(finding.derivation()));
        }
        Element limit = Element.of("p")
                .with("class", "cap")
                .text("Limit " + show.pair(finding).limitFull() + " from ");
        return block.add(limit.add(Parts.source(finding.derivation().limitSource())));
    }

    /** The same of a figure on a sheet: what it is, steps, and where it comes from. */
    public static Element of(Sheet sheet, Entry entry, Show show) {
        Element block = Element.of("div").with("class", "derivation");
        block.add(Element.of("p")
                .with("class", "finding")
                .text(Wording.head(sheet) + ": ")
                .add(Element.of("b").text(entry.name()))
                .text(". " + Wording.answer(entry.answer(), Wording.across(sheet, show))));
        if (!entry.derivation().steps().isEmpty()) {
            block.add(steps(entry.derivation()));
        }
        return block.add(Element.of("p")
                .with("class", "cap")
                .text("From ")
                .add(Parts.source(entry.derivation().limitSource())));
    }

    private static Element steps(Derivation derivation) {
        Table table = Table.of(
                Table.sized("Equation", "eq"),
                Table.words("Formula and numbers put in"),
                Table.sized("Result", "res"),
                Table.sized("Source", "src"));
        for (Step step : derivation.steps()) {
            Element numbers = Element.of("span")
                    .add(Element.of("span", "formula", step.formula()), Element.of("br"))
                    .add(Element.of("span", "cap", inputs(step)));
            table.row(step.equation(), numbers, result(step), Parts.source(step.source()));
        }
        return table.element("steps");
    }

    private static String inputs(Step step) {
        StepFigures figures = new StepFigures(step);
        return step.inputs().stream()
                .map(t -> t.symbol() + " = " + figures.input(t) + " (" + t.meaning() + ")")
                .collect(Collectors.joining("; "));
    }

    private static Element result(Step step) {
        Term result = step.result();
        return Element.of("span")
                .add(Element.of("b")
                        .with("class", "value")
                        .text(result.symbol() + " = " + new StepFigures(step).result()))
                .add(Element.of("br"), Element.of("span", "cap", result.meaning()));
    }
}
