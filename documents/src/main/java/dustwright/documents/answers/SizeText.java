package dustwright.documents.answers;

import dustwright.documents.writing.Figures;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.Question;
import dustwright.engine.finding.Finding;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.sizing.Choice;
import dustwright.engine.sizing.Design;
import dustwright.engine.sizing.OpenSizes;
import dustwright.engine.sizing.Sizing;
import dustwright.engine.sizing.Sizing.Neighbour;
import java.util.List;
import java.util.stream.Collectors;

/** The sizes that were chosen, for a person at a terminal. */
public final class SizeText {
    private static final int NARROWEST = 60;

    private final Plant plant;
    private final OpenSizes open;
    private final Question question;
    private final Sizing sizing;
    private final Show show;
    private final Lines lines;

    private SizeText(Plant plant, OpenSizes open, Question question, Sizing sizing, UnitSystem units, int width) {
        this.plant = plant;
        this.open = open;
        this.question = question;
        this.sizing = sizing;
        this.show = new Show(units);
        this.lines = new Lines(Math.max(width, NARROWEST));
    }

    /** The cheapest covered design, how sure that is, and why its neighbours are not taken. */
    public static String of(
            Plant plant, OpenSizes open, Question question, Sizing sizing, UnitSystem units, int width) {
        return new SizeText(plant, open, question, sizing, units, width)
                .written()
                .toString();
    }

    private Lines written() {
        lines.text("", plant.name()).gap();
        lines.text("", verdict());
        lines.text("", asked());
        sizing.best().ifPresent(this::chosen);
        sizing.deadlock().ifPresent(d -> new DeadlockText(sizing, show, lines, this::money).written(d));
        runnersUp();
        neighbours();
        mind();
        lines.gap();
        lines.text("", Wording.freeAir(show));
        return lines.text("", Wording.SCREENING);
    }

    private String money(double amount) {
        return Figures.count(Math.round(amount)) + " " + open.currency();
    }

    private String verdict() {
        if (sizing.best().isEmpty()) {
            return sizing.stopped().isEmpty() && sizing.undecided().isEmpty()
                    ? "No choice of these sizes holds for every set."
                    : "No design was found for which every requirement is shown to hold"
                            + (sizing.stopped().isEmpty() ? "." : ": " + sizing.stopped() + ".");
        }
        Design best = sizing.best().get();
        double gap = sizing.gap().orElse(0.0);
        String sure = gap < 5e-7
                ? "No cheaper design holds, on the grounds named below."
                : "A design that holds may be cheaper by at most " + Figures.fixed(100 * gap, 1) + " %"
                        + (sizing.stopped().isEmpty() ? "." : ": " + sizing.stopped() + ".");
        return "Cheapest sizes found: " + money(best.cost())
                + (best.running().isPresent()
                        ? ", " + money(best.first()) + " to buy and "
                                + money(best.running().getAsDouble()) + " of energy in present value"
                        : " to buy")
                + ". Whichever of the inlets are open, every requirement holds. " + sure;
    }

    private String asked() {
        String users = question.users().stream().map(String::valueOf).collect(Collectors.joining(", "));
        return "Asked: " + users + " of " + Wording.counted(plant.inlets().size(), "inlet", "inlets") + " open"
                + (question.atMost().isEmpty()
                        ? "."
                        : ", at most "
                                + question.atMost().entrySet().stream()
                                        .map(e -> e.getValue() + " in " + e.getKey())
                                        .sorted()
                                        .collect(Collectors.joining(", "))
                                + ".");
    }

    private void chosen(Design best) {
        TextTable table = TextTable.of(
                TextTable.words("Choice"),
                TextTable.words("Of"),
                TextTable.words("Present"),
                TextTable.words("Chosen"),
                TextTable.words("Could be"));
        for (int v = 0; v < sizing.choices().size(); v++) {
            Choice choice = sizing.choices().get(v);
            table.row(
                    Lines.plain(choice.id()),
                    kind(choice),
                    Lines.plain(present(choice)),
                    Lines.plain(best.options().get(v)),
                    Lines.plain(choice.options().stream().map(Choice.Priced::id).collect(Collectors.joining(", "))));
        }
        lines.head("Chosen").table(table);
    }

    private static String kind(Choice choice) {
        if (choice instanceof Choice.Tubes tubes) {
            return Wording.counted(tubes.runs().size(), "run", "runs");
        }
        if (choice instanceof Choice.Hoses hoses) {
            return "hose of " + Wording.counted(hoses.inlets().size(), "inlet", "inlets");
        }
        return choice instanceof Choice.Producers ? "vacuum producer" : "cloth area";
    }

    private String present(Choice choice) {
        if (choice instanceof Choice.Tubes tubes) {
            return tubes.runs().stream()
                    .map(r -> plant.run(r).tube())
                    .distinct()
                    .collect(Collectors.joining(", "));
        }
        if (choice instanceof Choice.Hoses hoses) {
            return hoses.inlets().stream()
                    .map(i -> plant.inlet(i).hose())
                    .distinct()
                    .collect(Collectors.joining(", "));
        }
        Station station = plant.station(choice.id());
        return choice instanceof Choice.Producers
                ? station.producers().stream()
                        .filter(p -> !p.standby())
                        .map(p -> p.id())
                        .collect(Collectors.joining(", "))
                : show.full(station.filter().cloth());
    }

    private void runnersUp() {
        if (sizing.runnersUp().isEmpty()) {
            return;
        }
        Design best = sizing.best().orElseThrow();
        TextTable table = TextTable.of(TextTable.number("Cost " + open.currency()), TextTable.words("Differs by"));
        for (Design other : sizing.runnersUp()) {
            table.row(signed(other.cost() - best.cost()), Lines.plain(SizeWords.difference(sizing, best, other)));
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
                    signed(neighbour.difference()),
                    Lines.plain(neighbour.fails().map(this::failing).orElse(neighbour.said())));
        }
        lines.head("Why not one size smaller or larger").table(table);
    }

    private static String signed(double amount) {
        long whole = Math.round(amount);
        return (whole > 0 ? "+" : whole < 0 ? "-" : "") + Figures.count(Math.abs(whole));
    }

    private String failing(Worst worst) {
        Finding finding = worst.finding();
        return Wording.claim(finding) + ": " + Wording.valueAndLimit(finding, show) + " ("
                + Show.margin(finding.margin()) + "), with " + String.join("+", worst.open()) + " open";
    }

    private void mind() {
        lines.head("What this rests on");
        lines.text(
                "  ",
                "Counted: price of what is open to choice"
                        + (sizing.basis().energy()
                                ? ", energy of the design sets at today's price over the years of the comparison."
                                : ". Energy is not counted: it takes \"shifts\" of the usage, \"electricity\", \"interest\" and"
                                        + " \"years\" of the costs, and \"feed\" of the inlets."));
        lines.text(
                "  ",
                "Held to every requirement of a state. What the sheets check beside (rotary valve, bag, hopper, circuits) is not:"
                        + " verify the plant with its new sizes.");
        lines.text("  ", SizeWords.ground(sizing.basis()));
        if (!sizing.undecided().isEmpty()) {
            List<Design> first = sizing.undecided().stream().limit(3).toList();
            lines.text(
                    "  ",
                    Wording.counted(sizing.undecided().size(), "cheaper design was", "cheaper designs were")
                            + " neither shown to hold nor to fail: "
                            + first.stream()
                                    .map(d -> String.join("/", d.options()) + " at " + money(d.cost()))
                                    .collect(Collectors.joining("; "))
                            + ".");
        }
        Sizing.Spent spent = sizing.effort();
        lines.text(
                "  ",
                "Search: " + Figures.count(spent.boxes()) + " boxes of designs, " + Figures.count(spent.states())
                        + " states solved, " + Figures.count(spent.proofs()) + " proofs over all sets, "
                        + Figures.count(spent.counterexamples()) + " states learnt in which a design failed.");
    }
}
