package dustwright.documents.answers;

import dustwright.documents.writing.Figures;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.Question;
import dustwright.engine.finding.Finding;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.sizing.Choice;
import dustwright.engine.sizing.Design;
import dustwright.engine.sizing.OpenSizes;
import dustwright.engine.sizing.Sizing;
import dustwright.engine.sizing.Sizing.Basis;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Words about chosen sizes that stand alike at the terminal and in the report. */
public final class SizeWords {
    private final Plant plant;
    private final OpenSizes open;
    private final Question question;
    private final Sizing sizing;
    private final Show show;

    /** Of one answer. */
    public SizeWords(Plant plant, OpenSizes open, Question question, Sizing sizing, Show show) {
        this.plant = plant;
        this.open = open;
        this.question = question;
        this.sizing = sizing;
        this.show = show;
    }

    /** Name of the plant. */
    public String name() {
        return plant.name();
    }

    /** An amount in the plant's currency. */
    public String money(double amount) {
        return Figures.count(Math.round(amount)) + " " + open.currency();
    }

    /** The answer in a sentence or two. */
    public String verdict() {
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
                + ". Whichever of the inlets are open, every requirement of their states holds. " + sure;
    }

    /** Said where something asked is missing because the search was stopped; empty where nothing is. */
    public Optional<String> partial(SizeBesides besides) {
        return sizing.partial() || besides.partial()
                ? Optional.of(
                        "Partial: the search was stopped. What is said here is true; what is not said is open. An answer with"
                                + " --format json can be taken up by --resume.")
                : Optional.empty();
    }

    /** What was asked. */
    public String asked() {
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

    /** What a choice is about. */
    public static String kind(Choice choice) {
        if (choice instanceof Choice.Tubes tubes) {
            return Wording.counted(tubes.runs().size(), "run", "runs");
        }
        if (choice instanceof Choice.Hoses hoses) {
            return "hose of " + Wording.counted(hoses.inlets().size(), "inlet", "inlets");
        }
        return choice instanceof Choice.Producers ? "vacuum producer" : "cloth area";
    }

    /** What the plant file has now. */
    public String present(Choice choice) {
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

    /** A difference of cost with its sign. */
    public static String signed(double amount) {
        long whole = Math.round(amount);
        return (whole > 0 ? "+" : whole < 0 ? "-" : "") + Figures.count(Math.abs(whole));
    }

    /** What does not hold, and with which inlets open. */
    public String failing(Worst worst) {
        Finding finding = worst.finding();
        return Wording.claim(finding) + ": " + Wording.valueAndLimit(finding, show) + " ("
                + Show.margin(finding.margin()) + "), with " + String.join("+", worst.open()) + " open";
    }

    /** What the answer rests on, point by point. */
    public List<String> grounds() {
        List<String> grounds = new ArrayList<>();
        grounds.add("Counted: price of what is open to choice"
                + (sizing.basis().energy()
                        ? ", energy of the design sets at today's price over the years of the comparison."
                        : ". Energy is not counted: it takes \"shifts\" of the usage, \"electricity\", \"interest\" and"
                                + " \"years\" of the costs, and \"feed\" of the inlets."));
        grounds.add(
                "Held to every requirement of a state. What the sheets check beside (rotary valve, bag, hopper, circuits) is not:"
                        + " verify the plant with its new sizes.");
        grounds.add(ground(sizing.basis()));
        if (!sizing.undecided().isEmpty()) {
            List<Design> first = sizing.undecided().stream().limit(3).toList();
            grounds.add(Wording.counted(sizing.undecided().size(), "cheaper design was", "cheaper designs were")
                    + " neither shown to hold nor to fail: "
                    + first.stream()
                            .map(d -> String.join("/", d.options()) + " at " + money(d.cost()))
                            .collect(Collectors.joining("; "))
                    + ".");
        }
        Sizing.Spent spent = sizing.effort();
        grounds.add("Search: " + Figures.count(spent.boxes()) + " boxes of designs, " + Figures.count(spent.states())
                + " states solved, " + Figures.count(spent.proofs()) + " proofs over all sets, "
                + Figures.count(spent.counterexamples()) + " states learnt in which a design failed.");
        return grounds;
    }

    /** What the bound rests on, and which part of it is proven. */
    public static String ground(Basis basis) {
        if (!basis.tree()) {
            return "The tubing is no tree, so designs were tried one by one, cheapest first; every one that is cheaper fails in a state"
                    + " that was solved.";
        }
        String order =
                "That nothing cheaper holds is shown by states in which cheaper designs fail, and by the order of a tree:"
                        + " wider tubes on a tool's way and narrower ones elsewhere favour it. ";
        if (basis.proven()) {
            return order + "For air in a tree without wyes that order is proven (decision record 0065).";
        }
        String where = basis.wyes() && basis.dust() ? "At wyes and with dust" : basis.wyes() ? "At wyes" : "With dust";
        return order + where + " it is not proven but looked at: of " + Figures.count(basis.compared())
                + " margins of single designs "
                + (basis.departure() == 0
                        ? "none passed the bound it rests under"
                        : "the worst passed the bound it rests under by " + Figures.fixed(100 * basis.departure(), 2)
                                + " % of its limit, so every bound was widened by "
                                + Figures.fixed(100 * basis.pad(), 2) + " %")
                + ". Proven without it: the design named holds for every set asked, and each neighbour listed with a set fails in"
                + " it.";
    }

    /** Choices in which two designs differ. */
    public static String difference(Sizing sizing, Design best, Design other) {
        List<String> parts = new ArrayList<>();
        for (int v = 0; v < best.options().size(); v++) {
            if (!best.options().get(v).equals(other.options().get(v))) {
                parts.add(sizing.choices().get(v).id() + " " + other.options().get(v) + " for "
                        + best.options().get(v));
            }
        }
        return String.join(", ", parts);
    }
}
