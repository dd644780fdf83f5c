package dustwright.documents.answers;

import dustwright.documents.writing.DustWords;
import dustwright.documents.writing.Figures;
import dustwright.documents.writing.Show;
import dustwright.engine.Carrying;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Dimension;
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
                TextTable.number("Adds"),
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
        lines.gap();
        for (LegResult leg : legs) {
            for (String laws : DustWords.laws(Carrying.of(plant, leg), show)) {
                lines.text("  ", Lines.plain(DutyText.piece(leg) + ", " + laws));
            }
        }
    }
}
