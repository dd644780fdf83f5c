package dustwright.documents.report;

import dustwright.documents.drawing.MarginClass;
import dustwright.documents.hazard.HazardLists;
import dustwright.documents.writing.Element;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.sheet.Answer;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** One sheet of equipment for page and paper: its figures, and what they are held against. */
public final class SheetBlock {
    private final Sheet sheet;
    private final Show show;
    private final String cssClass;
    private final boolean opens;
    private final Function<Source, Element> source;

    private SheetBlock(Sheet sheet, Show show, String cssClass, boolean opens, Function<Source, Element> source) {
        this.sheet = sheet;
        this.show = show;
        this.cssClass = cssClass;
        this.opens = opens;
        this.source = source;
    }

    static SheetBlock of(Sheet sheet, Show show) {
        return new SheetBlock(sheet, show, "wide figures", false, Parts::source);
    }

    /** The same for a sheet that says more in words than in figures. */
    static SheetBlock wordy(Sheet sheet, Show show) {
        return new SheetBlock(sheet, show, "wide figures wordy", false, Parts::source);
    }

    /** The same with its sources called otherwise, such as by numbers. */
    static SheetBlock noted(Sheet sheet, Show show, Function<Source, Element> source) {
        return new SheetBlock(sheet, show, "wide figures noted", false, source);
    }

    /** For a page on which every line opens how it came about: its name is a button that carries its id as {@code data-figure} or {@code data-finding}. */
    public static SheetBlock opening(Sheet sheet, Show show) {
        return new SheetBlock(
                sheet, show, HazardLists.isOne(sheet) ? "wide figures wordy" : "wide figures", true, Parts::source);
    }

    /** Figures, then what they are held against where anything is. */
    public List<Element> elements() {
        List<Element> all = new ArrayList<>(List.of(figures()));
        if (!sheet.findings().isEmpty()) {
            all.add(checked());
        }
        return all;
    }

    Element figures() {
        Table table = Table.of(
                Table.sized("Figure", "what"),
                Table.sized("Value", "answer"),
                Table.sized("Equations", "by"),
                Table.sized("From", "from"));
        Show units = Wording.across(sheet, show);
        for (Entry entry : sheet.entries()) {
            table.row(
                    name("data-figure", entry.id(), entry.name()),
                    answer(entry.answer(), units),
                    entry.derivation().steps().stream()
                            .map(Step::equation)
                            .distinct()
                            .collect(Collectors.joining(", ")),
                    entry.answer() instanceof Answer.Unknown
                            ? ""
                            : source.apply(entry.derivation().limitSource()));
        }
        return table.element(cssClass);
    }

    private Element checked() {
        Table table = Table.of(
                Table.sized("Checked", "what"),
                Table.sized("Value and limit", "answer"),
                Table.sized("Margin", "by"),
                Table.sized("Limit from", "from"));
        for (Finding finding : sheet.findings()) {
            table.row(
                    name(
                            "data-finding",
                            finding.id(),
                            MarginClass.of(finding).glyph(finding.side()) + " " + Wording.claim(finding)),
                    Wording.valueAndLimit(finding, show),
                    Show.margin(finding),
                    source.apply(finding.derivation().limitSource()));
        }
        return table.element("wide figures");
    }

    private Object name(String key, String id, String words) {
        return opens
                ? Element.of("button", "opens", words).with("type", "button").with(key, id)
                : words;
    }

    private static Element answer(Answer answer, Show units) {
        String text = Wording.answer(answer, units);
        return answer instanceof Answer.Known
                ? Element.of("b").text(text)
                : Element.of("span").text(text);
    }
}
