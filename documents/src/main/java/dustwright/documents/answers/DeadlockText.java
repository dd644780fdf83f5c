package dustwright.documents.answers;

import dustwright.documents.writing.Figures;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.finding.Finding;
import dustwright.engine.sizing.Deadlock;
import dustwright.engine.sizing.Deadlock.Clash;
import dustwright.engine.sizing.Deadlock.Nearest;
import dustwright.engine.sizing.Sizing;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/** Why no choice of sizes holds, for a person. */
final class DeadlockText {
    private static final int MOST_MISSED = 6;

    private final Sizing sizing;
    private final Show show;
    private final Lines lines;
    private final DoubleFunction<String> money;

    DeadlockText(Sizing sizing, Show show, Lines lines, DoubleFunction<String> money) {
        this.sizing = sizing;
        this.show = show;
        this.lines = lines;
        this.money = money;
    }

    void written(Deadlock deadlock) {
        clash(deadlock.clash());
        deadlock.nearest().ifPresent(this::nearest);
    }

    private void clash(List<Clash> clash) {
        if (clash.isEmpty()) {
            return;
        }
        lines.head(clash.size() == 1 ? "What stands against every choice" : "States that exclude each other");
        for (int n = 0; n < clash.size(); n++) {
            Clash one = clash.get(n);
            boolean last = n == clash.size() - 1;
            String what = Wording.claim(one.best().finding()) + ", " + one.condition() + ", with "
                    + String.join("+", one.best().open()) + " open: at best "
                    + Wording.valueAndLimit(one.best().finding(), show) + " ("
                    + Show.margin(one.best().finding().margin()) + ")";
            lines.text(
                    "  ",
                    (n + 1) + ". " + what
                            + (last
                                    ? clash.size() == 1 ? ", whatever is chosen." : ", with the sizes the others leave."
                                    : ".")
                            + left(one));
        }
        lines.text(
                "  ",
                clash.size() == 1
                        ? "What would help: "
                                + clash.get(0).best().finding().code().remedy()
                        : "No design withstands all of them; with any one left out, these sizes alone would not be excluded."
                                + " No tube gets narrower toward the producer.");
    }

    private String left(Clash one) {
        return one.leaves().isEmpty()
                ? ""
                : " It leaves: "
                        + one.leaves().stream()
                                .map(l ->
                                        sizing.choices().get(l.choice()).id() + " " + String.join(" or ", l.options()))
                                .collect(Collectors.joining("; "))
                        + ".";
    }

    private void nearest(Nearest nearest) {
        lines.head("The design that misses least");
        TextTable table = TextTable.of(TextTable.words("Choice"), TextTable.words("Would be"));
        for (int v = 0; v < nearest.design().options().size(); v++) {
            table.row(
                    Lines.plain(sizing.choices().get(v).id()),
                    Lines.plain(nearest.design().options().get(v)));
        }
        lines.table(table);
        lines.text(
                "  ",
                "It costs " + money.apply(nearest.design().cost()) + " and misses by " + percent(nearest.miss())
                        + " at worst; every design misses by " + percent(nearest.least()) + " or more.");
        for (Worst worst : missed(nearest)) {
            Finding finding = worst.finding();
            lines.text(
                    "  ",
                    Wording.claim(finding) + ": " + Wording.valueAndLimit(finding, show) + " ("
                            + Show.margin(finding.margin()) + "), with " + String.join("+", worst.open()) + " open");
        }
    }

    private static String percent(double share) {
        return Figures.fixed(100 * share, 1) + " %";
    }

    /** The worst at each place, of what it misses. */
    private static List<Worst> missed(Nearest nearest) {
        return nearest.coverage().worstPerPlace().stream()
                .filter(w -> w.finding().fails())
                .limit(MOST_MISSED)
                .toList();
    }
}
