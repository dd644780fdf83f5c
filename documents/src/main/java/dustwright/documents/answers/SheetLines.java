package dustwright.documents.answers;

import dustwright.documents.drawing.MarginClass;
import dustwright.documents.writing.SheetWording;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.finding.Finding;
import java.util.List;

/** What the sheets leave open, below an answer that does not read them. */
final class SheetLines {
    private SheetLines() {}

    static void write(List<Finding> open, Show show, Lines lines) {
        if (open.isEmpty()) {
            return;
        }
        TextTable table = TextTable.of(
                TextTable.words(""),
                TextTable.words("Finding"),
                TextTable.words("Value and limit"),
                TextTable.number("Margin"),
                TextTable.words("Set"));
        for (Finding finding : open) {
            table.row(
                    MarginClass.of(finding).glyph(finding.side()),
                    Lines.plain(Wording.claim(finding)),
                    Lines.plain(Wording.valueAndLimit(finding, show)),
                    Lines.plain(Show.margin(finding)),
                    Lines.plain(finding.state()));
        }
        lines.head(SheetWording.HEAD).table(table);
    }
}
