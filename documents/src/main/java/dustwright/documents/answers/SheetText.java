package dustwright.documents.answers;

import dustwright.documents.drawing.MarginClass;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.finding.Finding;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;

/** Sheets of equipment in lines. */
final class SheetText {
    private final Show show;
    private final Lines lines;

    SheetText(Show show, Lines lines) {
        this.show = show;
        this.lines = lines;
    }

    void sheet(Sheet sheet) {
        lines.head(Wording.head(sheet) + "   [" + sheet.id() + "]");
        TextTable table = TextTable.of(
                TextTable.words("Figure"),
                TextTable.words("Value"),
                TextTable.words("From"),
                TextTable.words("Explain"));
        Show units = Wording.across(sheet, show);
        for (Entry entry : sheet.entries()) {
            String answer = Wording.answer(entry.answer(), units);
            if (Wording.isShort(entry.answer())) {
                table.row(
                        Lines.plain(entry.name()),
                        Lines.plain(answer),
                        Wording.trust(entry.derivation().limitSource()),
                        entry.id());
            }
        }
        if (!table.isEmpty()) {
            lines.table(table);
        }
        for (Entry entry : sheet.entries()) {
            if (!Wording.isShort(entry.answer())) {
                lines.text("  ", entry.name() + ": " + Wording.answer(entry.answer(), units));
            }
        }
        for (Finding finding : sheet.findings()) {
            lines.text(
                    "  ",
                    MarginClass.of(finding).glyph(finding.side()) + " " + Wording.claim(finding) + ": "
                            + Wording.valueAndLimit(finding, show) + " (" + Show.margin(finding) + ")");
        }
    }

    void head(Sheet sheet, Entry entry) {
        lines.text("", Wording.head(sheet) + ": " + entry.name());
        lines.text("", Wording.answer(entry.answer(), show));
    }
}
