package dustwright.documents.report;

import dustwright.documents.drawing.MarginClass;
import dustwright.documents.drawing.WeekChart;
import dustwright.documents.hazard.HazardLists;
import dustwright.documents.writing.Element;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Step;
import dustwright.engine.sheet.Answer;
import dustwright.engine.sheet.DustWeek;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import java.util.List;
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
        List<Sheet> dust = HazardLists.sheets(digest.study());
        digest.study().sheets().stream()
                .filter(s -> !dust.contains(s))
                .forEach(s -> add(section, s, table(s, show, "wide figures")));
        weeks(section);
        if (!dust.isEmpty()) {
            section.add(Parts.mind(HazardLists.CAUTION));
            section.add(Parts.paragraph(
                    "", "The command hazards writes what follows with the hazard study and the earthing test list."));
            dust.forEach(s -> add(section, s, wordy(s, show)));
        }
        return section;
    }

    private void add(Element section, Sheet sheet, Element figures) {
        section.add(Element.of("h3").text(Wording.head(sheet)));
        section.add(figures);
        if (!sheet.findings().isEmpty()) {
            section.add(checked(sheet));
        }
    }

    /** What the figures of a sheet are held against. */
    private Element checked(Sheet sheet) {
        Table table = Table.of(
                Table.sized("Checked", "what"),
                Table.sized("Value and limit", "answer"),
                Table.sized("Margin", "by"),
                Table.sized("Limit from", "from"));
        for (Finding finding : sheet.findings()) {
            table.row(
                    MarginClass.of(finding).glyph(finding.side()) + " " + Wording.claim(finding),
                    Wording.valueAndLimit(finding, show),
                    Show.margin(finding),
                    Parts.source(finding.derivation().limitSource()));
        }
        return table.element("wide figures");
    }

    /** How the dust goes through an ordinary week, drawn. */
    private void weeks(Element section) {
        for (DustWeek week : digest.study().weeks()) {
            section.add(Parts.figure(
                    WeekChart.of(week, show),
                    "Station " + week.station()
                            + ", first week from empty, all cleaning at the end of each shift with set "
                            + week.set() + ". Bars: users vacuum; empty bars: a container is changed. "
                            + (week.holdUp().isPresent()
                                    ? "Dashed: container full, receiver at its high level."
                                    : "Dashed: container full. What the receiver holds is not known.")));
        }
    }

    /** The same for a sheet that says more in words than in figures. */
    static Element wordy(Sheet sheet, Show show) {
        return table(sheet, show, "wide figures wordy");
    }

    private static Element table(Sheet sheet, Show show, String cssClass) {
        Table table = Table.of(
                Table.sized("Figure", "what"),
                Table.sized("Value", "answer"),
                Table.sized("Equations", "by"),
                Table.sized("From", "from"));
        Show units = Wording.across(sheet, show);
        for (Entry entry : sheet.entries()) {
            table.row(
                    entry.name(),
                    answer(entry.answer(), units),
                    entry.derivation().steps().stream()
                            .map(Step::equation)
                            .distinct()
                            .collect(Collectors.joining(", ")),
                    entry.answer() instanceof Answer.Unknown
                            ? ""
                            : Parts.source(entry.derivation().limitSource()));
        }
        return table.element(cssClass);
    }

    private static Element answer(Answer answer, Show units) {
        String text = Wording.answer(answer, units);
        return answer instanceof Answer.Known
                ? Element.of("b").text(text)
                : Element.of("span").text(text);
    }
}
