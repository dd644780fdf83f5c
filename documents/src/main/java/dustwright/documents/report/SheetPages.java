package dustwright.documents.report;

import dustwright.documents.writing.Element;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.finding.Step;
import dustwright.engine.sheet.Answer;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import java.util.stream.Collectors;

/** What each piece of equipment comes to, figure by figure. */
final class SheetPages {
    private final Digest digest;
    private final Show show;

    SheetPages(Digest digest, Show show) {
        this.digest = digest;
        this.show = show;
    }

    Element element() {
        Element section = Parts.section("equipment", "9  Equipment");
        if (digest.study().sheets().isEmpty()) {
            return section.add(Parts.paragraph("", "No sheet was asked, or the plant has no station."));
        }
        section.add(Parts.paragraph(
                "", "Figures that do not belong to one set. The command explain shows the steps of each."));
        for (Sheet sheet : digest.study().sheets()) {
            section.add(Element.of("h3").text(Wording.head(sheet)));
            section.add(table(sheet));
        }
        return section;
    }

    private Element table(Sheet sheet) {
        Table table = Table.of(
                Table.words("Figure"), Table.words("Value"), Table.words("Equations"), Table.sized("From", "src"));
        for (Entry entry : sheet.entries()) {
            table.row(
                    entry.name(),
                    answer(entry.answer()),
                    entry.derivation().steps().stream()
                            .map(Step::equation)
                            .distinct()
                            .collect(Collectors.joining(", ")),
                    entry.answer() instanceof Answer.Unknown
                            ? ""
                            : Parts.source(entry.derivation().limitSource()));
        }
        return table.element("wide");
    }

    private Element answer(Answer answer) {
        String text = Wording.answer(answer, show);
        return answer instanceof Answer.Known
                ? Element.of("b").text(text)
                : Element.of("span").text(text);
    }
}
