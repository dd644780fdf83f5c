package dustwright.documents.answers;

import dustwright.documents.writing.Figures;
import dustwright.engine.finding.Finding;
import dustwright.engine.sizing.Curve;
import dustwright.engine.sizing.Curve.Point;
import dustwright.engine.sizing.Escape;
import dustwright.engine.sizing.OpenSizes;
import dustwright.engine.sizing.Sizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was asked besides the cheapest sizes.
 *
 * @param curve cost by number of users
 * @param escapes sized anew after each remedy
 * @param openInSheets what the sheets of the design found leave open, which sizing does not read; empty where none was found
 */
public record SizeBesides(Optional<Curve> curve, List<Escape> escapes, List<Finding> openInSheets) {
    /** What is to be known of remedies. */
    public static final String NO_SIZE =
            "Sized anew after each. The price of the remedy itself is not in the cost. Separate headers that meet only at the"
                    + " receiver are often the right answer: draw them and size again. A relief valve never is: its air does not"
                    + " pass the tubing.";

    public SizeBesides {
        escapes = List.copyOf(escapes);
        openInSheets = List.copyOf(openInSheets);
    }

    /** Whether some search of it was stopped. */
    boolean partial() {
        return curve.stream()
                        .flatMap(c -> c.points().stream())
                        .anyMatch(p -> p.sizing().partial())
                || escapes.stream().anyMatch(e -> e.sizing().partial());
    }

    /** What is said of one number of users: cost, bound, or why there is none. */
    public static String said(Sizing sizing) {
        if (sizing.best().isPresent()) {
            double gap = sizing.gap().orElse(0.0);
            return gap < 5e-7
                    ? "cheapest"
                    : "within " + Figures.fixed(100 * gap, 1) + " % of the cheapest"
                            + (sizing.stopped().isEmpty() ? "" : ", stopped");
        }
        return sizing.stopped().isEmpty() && sizing.undecided().isEmpty()
                ? "no choice of these sizes holds"
                : "none found" + (sizing.stopped().isEmpty() ? ", some not decided" : ": stopped");
    }

    /** What changes against one user fewer. */
    public static String changed(Curve curve, int number) {
        Sizing here = curve.points().get(number).sizing();
        if (number == 0
                || here.best().isEmpty()
                || curve.points().get(number - 1).sizing().best().isEmpty()) {
            return "";
        }
        List<String> before =
                curve.points().get(number - 1).sizing().best().orElseThrow().options();
        List<String> now = here.best().orElseThrow().options();
        List<String> parts = new ArrayList<>();
        for (int v = 0; v < now.size(); v++) {
            if (!now.get(v).equals(before.get(v))) {
                parts.add(here.choices().get(v).id() + " " + now.get(v) + " for " + before.get(v));
            }
        }
        return parts.isEmpty() ? "the same sizes" : String.join(", ", parts);
    }

    /** Least margin of a design's certificate. */
    public static Optional<Double> leastMargin(Sizing sizing) {
        return sizing.coverage()
                .flatMap(c -> c.answers().stream()
                        .flatMap(a -> a.least().stream())
                        .map(w -> w.finding().margin())
                        .min(Double::compare));
    }

    void written(Lines lines, OpenSizes open) {
        curve.ifPresent(c -> curve(lines, open, c));
        escapes(lines, open);
    }

    private static void curve(Lines lines, OpenSizes open, Curve curve) {
        TextTable table = TextTable.of(
                TextTable.number("Users"),
                TextTable.number("Cost " + open.currency()),
                TextTable.number("None below"),
                TextTable.words("What is shown"),
                TextTable.words("Against one user fewer"));
        for (int n = 0; n < curve.points().size(); n++) {
            Point point = curve.points().get(n);
            Sizing sizing = point.sizing();
            table.row(
                    Lines.plain(String.valueOf(point.users())),
                    sizing.best().map(b -> Figures.count(Math.round(b.cost()))).orElse("-"),
                    Double.isFinite(sizing.bound()) ? Figures.count(Math.round(sizing.bound())) : "-",
                    said(sizing),
                    Lines.plain(changed(curve, n)));
        }
        lines.head("Cost by number of users at once").table(table);
    }

    private void escapes(Lines lines, OpenSizes open) {
        if (escapes.isEmpty()) {
            return;
        }
        TextTable table = TextTable.of(
                TextTable.words("Remedy"), TextTable.number("Cost " + open.currency()), TextTable.words("Then"));
        for (Escape escape : escapes) {
            table.row(
                    Lines.plain(escape.what()),
                    escape.sizing()
                            .best()
                            .map(b -> Figures.count(Math.round(b.cost())))
                            .orElse("-"),
                    then(escape));
        }
        lines.head("What would let some sizes hold").table(table);
        lines.text("  ", NO_SIZE);
    }

    /** What comes of a remedy. */
    public static String then(Escape escape) {
        Sizing sizing = escape.sizing();
        if (sizing.best().isPresent()) {
            return "holds, " + said(sizing);
        }
        return said(sizing)
                + (Double.isFinite(escape.misses())
                        ? "; the nearest found misses by " + Figures.fixed(100 * escape.misses(), 1) + " %"
                        : "");
    }
}
