package dustwright.documents.report;

import dustwright.documents.writing.Element;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.StepFigures;
import dustwright.documents.writing.Wording;
import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import java.util.stream.Collectors;

/** How one finding came about, down to the source, for page and paper. */
public final class DerivationBlock {
    private static final int MOST_STEPS_TOGETHER = 5;

    private DerivationBlock() {}

    /** Claim, remedy where it does not hold, steps in SI, and where the limit comes from. */
    public static Element of(Finding finding, Show show) {
        return block(finding, show.of(finding), false);
    }

    /** The same for a page: each figure of a step in the page's units too, before the SI figure that its formula is computed with. */
    public static Element onPage(Finding finding, Show show) {
        return block(finding, show.of(finding), show.isUs());
    }

    private static Element block(Finding finding, Show show, boolean both) {
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
            block.add(steps(finding.derivation(), show, both));
        }
        Element limit = Element.of("p")
                .with("class", "cap")
                .text("Limit " + show.pair(finding).limitFull() + " from ");
        return block.add(limit.add(Parts.source(finding.derivation().limitSource())));
    }

    /** Of a figure on a sheet, for a page: what it is, steps, and where it comes from. */
    public static Element onPage(Sheet sheet, Entry entry, Show show) {
        Element block = Element.of("div").with("class", "derivation");
        block.add(Element.of("p")
                .with("class", "finding")
                .text(Wording.head(sheet) + ": ")
                .add(Element.of("b").text(entry.name()))
                .text(". " + Wording.answer(entry.answer(), Wording.across(sheet, show))));
        if (!entry.derivation().steps().isEmpty()) {
            block.add(steps(entry.derivation(), Wording.across(sheet, show), show.isUs()));
        }
        return block.add(Element.of("p")
                .with("class", "cap")
                .text("From ")
                .add(Parts.source(entry.derivation().limitSource())));
    }

    private static Element steps(Derivation derivation, Show show, boolean both) {
        Table table = Table.of(
                Table.sized("Equation", "eq"),
                Table.words("Formula and numbers put in"),
                Table.sized("Result", "res"),
                Table.sized("Source", "src"));
        for (Step step : derivation.steps()) {
            Element numbers = Element.of("span")
                    .add(Element.of("span", "formula", step.formula()), Element.of("br"))
                    .add(Element.of("span", "cap", inputs(step, show, both)));
            table.row(step.equation(), numbers, result(step, show, both), Parts.source(step.source()));
        }
        return table.element("steps");
    }

    private static String inputs(Step step, Show show, boolean both) {
        StepFigures figures = new StepFigures(step);
        return step.inputs().stream()
                .map(t ->
                        t.symbol() + " = " + figure(t.value(), figures.input(t), show, both) + " (" + t.meaning() + ")")
                .collect(Collectors.joining("; "));
    }

    /** In the units of the page, then as the formula takes it; once where both are the same unit. */
    private static String figure(Quantity value, String si, Show show, boolean both) {
        String own = show.full(value);
        boolean same = value.dimension() == Dimension.RATIO
                || value.dimension() == Dimension.COUNT
                || unit(own).equals(unit(si));
        return !both || same ? si : own + " (" + si + ")";
    }

    private static String unit(String figure) {
        return figure.substring(figure.lastIndexOf('\u00A0') + 1);
    }

    private static Element result(Step step, Show show, boolean both) {
        Term result = step.result();
        return Element.of("span")
                .add(Element.of("b")
                        .with("class", "value")
                        .text(result.symbol() + " = "
                                + figure(result.value(), new StepFigures(step).result(), show, both)))
                .add(Element.of("br"), Element.of("span", "cap", result.meaning()));
    }
}
