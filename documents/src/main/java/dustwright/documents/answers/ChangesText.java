package dustwright.documents.answers;

import dustwright.documents.writing.Figures;
import dustwright.documents.writing.SheetWording;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.finding.Finding;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.sizing.OneChange;
import dustwright.engine.sizing.OneChange.Changes;
import dustwright.engine.sizing.OpenSizes;
import java.util.List;
import java.util.stream.Collectors;

/** What one single change does for a plant that stands, for a person at a terminal. */
public final class ChangesText {
    private static final int NARROWEST = 60;
    private static final int MOST_ROWS = 20;

    private ChangesText() {}

    /** Whether the plant holds, then every change, best first, and what its sheets leave open beside. */
    public static String of(
            Plant plant, OpenSizes open, Changes changes, List<Finding> openInSheets, UnitSystem units, int width) {
        Show show = new Show(units);
        Lines lines = new Lines(Math.max(width, NARROWEST));
        lines.text("", plant.name()).gap();
        lines.text("", verdict(changes, open.currency()) + " " + SheetWording.beside(openInSheets));
        if (changes.partial()) {
            lines.text("", "Partial: the work was stopped, so proofs are missing. Allow more --minutes.");
        }
        TextTable table = TextTable.of(
                TextTable.words("Change"),
                TextTable.number("To buy " + open.currency()),
                TextTable.number("Places failing"),
                TextTable.words("Nearest to its limit, or farthest beyond"));
        row(table, changes.present(), show);
        List<OneChange> first = changes.changes().stream().limit(MOST_ROWS).toList();
        first.forEach(change -> row(table, change, show));
        lines.head("One change, everything else as it stands").table(table);
        if (changes.changes().size() > MOST_ROWS) {
            lines.text("  ", (changes.changes().size() - MOST_ROWS) + " more changes are not listed.");
        }
        lines.text(
                "  ",
                "Where it says \"or more\", only single users and the sets that were bad for other changes were solved; of those that failed in"
                        + " none of these the most promising were proven over all sets. To buy: the new parts only, no work, nothing for what comes out.");
        SheetLines.write(openInSheets, show, lines);
        lines.gap();
        lines.text("", Wording.freeAir(show));
        return lines.text("", Wording.SCREENING).toString();
    }

    /** The answer in a sentence. */
    public static String verdict(Changes changes, String currency) {
        if (changes.holdsNow()) {
            return "Every requirement of a state holds as it stands, whichever of the inlets are open.";
        }
        List<OneChange> holding = changes.changes().stream()
                .filter(c -> c.proven() && c.failing() == 0)
                .toList();
        String now = changes.present().proven()
                ? "Not every requirement of a state holds as it stands: "
                        + Wording.counted(changes.present().failing(), "place fails", "places fail")
                        + " in some set. "
                : "Whether every requirement of a state holds as it stands is not decided. ";
        return now
                + (holding.isEmpty()
                        ? "No single change tried is shown to cure it; the one that helps most stands first."
                        : (holding.size() == 1
                                        ? "One change cures it, shown for every set: "
                                        : "Each of these cures it by itself, shown for every set: ")
                                + holding.stream().map(c -> bought(c, currency)).collect(Collectors.joining("; "))
                                + ".");
    }

    private static String bought(OneChange change, String currency) {
        return change.what()
                + (change.price().isPresent()
                        ? ", " + Figures.count(Math.round(change.price().getAsDouble())) + " " + currency
                        : ", no price stated");
    }

    private static void row(TextTable table, OneChange change, Show show) {
        table.row(
                Lines.plain(change.what()),
                change.price().isPresent()
                        ? Figures.count(Math.round(change.price().getAsDouble()))
                        : "-",
                change.failing() + (change.proven() ? "" : " or more"),
                Lines.plain(change.worst().map(w -> nearest(w, show)).orElse("nothing is checked")));
    }

    private static String nearest(Worst worst, Show show) {
        Finding finding = worst.finding();
        return Wording.claim(finding) + ": " + Wording.valueAndLimit(finding, show) + " (" + Show.margin(finding)
                + ")"
                + (worst.open().isEmpty() ? ", nobody" : ", with " + String.join("+", worst.open())) + " open";
    }
}
