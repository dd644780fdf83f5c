package dustwright.documents.answers;

import dustwright.documents.writing.Figures;
import dustwright.documents.writing.SheetWording;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.coverage.Question;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.sizing.Choice;
import dustwright.engine.sizing.Design;
import dustwright.engine.sizing.OpenSizes;
import dustwright.engine.sizing.Sizing;
import dustwright.engine.sizing.Sizing.Neighbour;
import java.util.stream.Collectors;

/** The sizes that were chosen, for a person at a terminal. */
public final class SizeText {
    private static final int NARROWEST = 60;

    private final SizeWords words;
    private final OpenSizes open;
    private final Sizing sizing;
    private final SizeBesides besides;
    private final Show show;
    private final Lines lines;

    private SizeText(SizeWords words, OpenSizes open, Sizing sizing, SizeBesides besides, Show show, int width) {
        this.words = words;
        this.open = open;
        this.sizing = sizing;
        this.besides = besides;
        this.show = show;
        this.lines = new Lines(Math.max(width, NARROWEST));
    }

    /** The cheapest covered design, how sure that is, and why its neighbours are not taken. */
    public static String of(
            Plant plant,
            OpenSizes open,
            Question question,
            Sizing sizing,
            SizeBesides besides,
            UnitSystem units,
            int width) {
        Show show = new Show(units);
        return new SizeText(new SizeWords(plant, open, question, sizing, show), open, sizing, besides, show, width)
                .written()
                .toString();
    }

    private Lines written() {
        lines.text("", words.name()).gap();
        lines.text(
                "",
                words.verdict()
                        + sizing.best()
                                .map(best -> " " + SheetWording.beside(besides.openInSheets()))
                                .orElse(""));
        words.partial(besides).ifPresent(said -> lines.text("", said));
        lines.text("", words.asked());
        sizing.best().ifPresent(this::chosen);
        sizing.deadlock().ifPresent(d -> new DeadlockText(sizing, show, lines, words::money).written(d));
        SheetLines.write(besides.openInSheets(), show, lines);
        runnersUp();
        neighbours();
        besides.written(lines, open);
        mind();
        lines.gap();
        lines.text("", Wording.freeAir(show));
        return lines.text("", Wording.SCREENING);
    }

    private void chosen(Design best) {
        TextTable table = TextTable.of(
                TextTable.words("Choice"),
                TextTable.words("Of"),
                TextTable.words("Present"),
                TextTable.words("Chosen"),
                TextTable.number("Cost " + open.currency()),
                TextTable.words("Could be"));
        for (int v = 0; v < sizing.choices().size(); v++) {
            Choice choice = sizing.choices().get(v);
            table.row(
                    Lines.plain(choice.id()),
                    SizeWords.kind(choice),
                    Lines.plain(words.present(choice)),
                    Lines.plain(best.options().get(v)),
                    Figures.count(Math.round(best.firsts().get(v))),
                    Lines.plain(choice.options().stream().map(Choice.Priced::id).collect(Collectors.joining(", "))));
        }
        lines.head("Chosen").table(table);
    }

    private void runnersUp() {
        if (sizing.runnersUp().isEmpty()) {
            return;
        }
        Design best = sizing.best().orElseThrow();
        TextTable table = TextTable.of(TextTable.number("Cost " + open.currency()), TextTable.words("Differs by"));
        for (Design other : sizing.runnersUp()) {
            table.row(
                    SizeWords.signed(other.cost() - best.cost()),
                    Lines.plain(SizeWords.difference(sizing, best, other)));
        }
        lines.head("Next cheapest that hold").table(table);
    }

    private void neighbours() {
        if (sizing.neighbours().isEmpty()) {
            return;
        }
        TextTable table = TextTable.of(
                TextTable.words("Choice"),
                TextTable.words("As"),
                TextTable.number("Cost " + open.currency()),
                TextTable.words("Then"));
        for (Neighbour neighbour : sizing.neighbours()) {
            table.row(
                    Lines.plain(sizing.choices().get(neighbour.choice()).id()),
                    Lines.plain(neighbour.option()),
                    SizeWords.signed(neighbour.difference()),
                    Lines.plain(neighbour.fails().map(words::failing).orElse(neighbour.said())));
        }
        lines.head("Why not one size smaller or larger").table(table);
    }

    private void mind() {
        lines.head("What this rests on");
        words.grounds().forEach(ground -> lines.text("  ", ground));
    }
}
