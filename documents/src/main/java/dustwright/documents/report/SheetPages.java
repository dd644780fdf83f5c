package dustwright.documents.report;

import dustwright.documents.drawing.WeekChart;
import dustwright.documents.hazard.HazardLists;
import dustwright.documents.writing.Element;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.sheet.DustWeek;
import dustwright.engine.sheet.Sheet;
import java.util.List;

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
                .forEach(s -> add(section, s, SheetBlock.of(s, show)));
        weeks(section);
        if (!dust.isEmpty()) {
            section.add(Parts.mind(HazardLists.CAUTION));
            section.add(Parts.paragraph(
                    "", "The command hazards writes what follows with the hazard study and the earthing test list."));
            dust.forEach(s -> add(section, s, SheetBlock.wordy(s, show)));
        }
        return section;
    }

    private static void add(Element section, Sheet sheet, SheetBlock block) {
        section.add(Element.of("h3").text(Wording.head(sheet))).addAll(block.elements());
    }

    /** How the dust goes through an ordinary week, drawn. */
    private void weeks(Element section) {
        for (DustWeek week : digest.study().weeks()) {
            section.add(Parts.figure(WeekChart.of(week, show), WeekChart.caption(week)));
        }
    }
}
