package dustwright.documents.answers;

import dustwright.documents.writing.DustWords;
import dustwright.documents.writing.Figures;
import dustwright.documents.writing.LawTable;
import dustwright.documents.writing.Show;
import dustwright.engine.Carrying;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/** What the dust of a solved state costs in every piece, and what the published laws ask there. */
final class DustText {
    private final Plant plant;
    private final Show show;
    private final Lines lines;
    private final List<LegResult> legs;

    DustText(Plant plant, DutyPoint duty, Show show, Lines lines) {
        this.plant = plant;
        this.show = show;
        this.lines = lines;
        legs = duty.legs().stream().filter(leg -> leg.dust().kgPerSecond() > 0).toList();
    }

    void write() {
        TextTable table = TextTable.of(
                TextTable.words("Dust in"),
                TextTable.number(show.unit(Dimension.MASS_FLOW)),
                TextTable.number("kg/kg air"),
                TextTable.number("Adds\n" + show.lossUnit()),
                TextTable.number("starting"),
                TextTable.number("friction"),
                TextTable.number("lift"),
                TextTable.number("bends"),
                TextTable.number("Above least drop"));
        for (LegResult leg : legs) {
            DustWords words = new DustWords(leg, show);
            table.row(
                    Lines.plain(DutyText.piece(leg)),
                    Lines.plain(show.number(leg.dust())),
                    Lines.plain(Figures.fixed(leg.loading(), 2)),
                    Lines.plain(words.total()),
                    Lines.plain(words.acceleration()),
                    Lines.plain(words.friction()),
                    Lines.plain(words.lift()),
                    Lines.plain(words.bends()),
                    Lines.plain(words.aboveLeastDrop()));
        }
        lines.gap().table(table);
        laws();
    }

    private void laws() {
        LawTable asked = new LawTable(
                legs.stream()
                        .map(leg -> new LawTable.Asked(DutyText.piece(leg), Carrying.of(plant, leg)))
                        .toList(),
                show);
        if (asked.rows().isEmpty()) {
            return;
        }
        List<TextTable.Column> columns = new ArrayList<>(List.of(
                TextTable.words("Least velocity"),
                TextTable.words("Dust"),
                TextTable.words("Asks most"),
                TextTable.number(show.unit(Dimension.VELOCITY))));
        asked.heads().forEach(law -> columns.add(TextTable.number(yearBelow(law))));
        TextTable table = TextTable.of(columns.toArray(TextTable.Column[]::new));
        asked.rows().forEach(row -> table.row(row.stream().map(Lines::plain).toArray(String[]::new)));
        lines.gap().table(table);
        lines.text("  ", asked.note());
    }

    private static String yearBelow(String law) {
        int year = law.lastIndexOf(' ');
        return law.substring(0, year) + "\n" + law.substring(year + 1);
    }
}
