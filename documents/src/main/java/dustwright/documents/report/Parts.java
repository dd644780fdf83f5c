package dustwright.documents.report;

import dustwright.documents.drawing.MarginClass;
import dustwright.documents.drawing.Scene;
import dustwright.documents.writing.Element;
import dustwright.documents.writing.SheetWording;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.finding.Confidence;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import java.util.List;

/** Small pieces that every section of the report uses. */
final class Parts {
    private Parts() {}

    /** Glyph of the class, and the margin, with the class in words for a reader who hears the page. */
    static Element margin(double margin, Side side) {
        return margin(MarginClass.of(margin), side, Show.margin(margin));
    }

    /** The same of a finding, which may not be known. */
    static Element margin(Finding finding) {
        return margin(MarginClass.of(finding), finding.side(), Show.margin(finding));
    }

    private static Element margin(MarginClass marginClass, Side side, String margin) {
        Element glyph = Element.of("span", "glyph", marginClass.glyph(side))
                .with("style", "color:" + marginClass.colour())
                .with("title", marginClass.word());
        return Element.of("span").with("class", "margin").add(glyph).text("\u00A0" + margin);
    }

    /** A letter that ties a row to its place on the drawing. */
    static Element letter(String letter) {
        return Element.of("span", "letter", letter);
    }

    static Element paragraph(String cssClass, String text) {
        return Element.of("p", cssClass, text);
    }

    /** A figure at full width with its caption. */
    static Element figure(Scene scene, String caption) {
        return Element.of("div")
                .with("class", "figure")
                .add(Element.of("div").with("class", "drawing").add(scene.svg()), paragraph("cap", caption));
    }

    /** A source with its mark of confidence; dotted where there is no source behind it. */
    static Element source(Source source) {
        boolean weak =
                source.confidence() == Confidence.COMMON_PRACTICE || source.confidence() == Confidence.FROM_MEMORY;
        return Element.of("span", weak ? "mark weak" : "mark", Wording.source(source));
    }

    /** A caution: an ink bar and a sentence. */
    static Element mind(String text) {
        return Element.of("p")
                .with("class", "mind")
                .add(Element.of("b").text("Mind: "))
                .text(text);
    }

    /** What the sheets leave open, on a page that does not read them. */
    static Element openInSheets(List<Finding> open, Show show) {
        Table table =
                Table.of(Table.words("Finding"), Table.words("Value and limit"), Table.margins(), Table.words("Set"));
        open.forEach(f -> table.row(Wording.claim(f), Wording.valueAndLimit(f, show), margin(f), f.state()));
        return section("sheets", SheetWording.HEAD).add(table.element(""));
    }

    static Element section(String id, String title) {
        return Element.of("section").with("id", id).add(Element.of("h2").text(title));
    }
}
