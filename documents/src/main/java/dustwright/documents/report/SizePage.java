package dustwright.documents.report;

import dustwright.documents.answers.SizeBesides;
import dustwright.documents.answers.SizeWords;
import dustwright.documents.drawing.CostChart;
import dustwright.documents.drawing.Layout;
import dustwright.documents.drawing.MarginClass;
import dustwright.documents.drawing.PlantDrawing;
import dustwright.documents.drawing.PlantView;
import dustwright.documents.drawing.PlantView.RunLook;
import dustwright.documents.writing.Element;
import dustwright.documents.writing.Figures;
import dustwright.documents.writing.SheetWording;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Place;
import dustwright.engine.plant.Plant;
import dustwright.engine.sizing.Choice;
import dustwright.engine.sizing.Curve;
import dustwright.engine.sizing.Deadlock;
import dustwright.engine.sizing.Design;
import dustwright.engine.sizing.OpenSizes;
import dustwright.engine.sizing.Sizing;
import dustwright.engine.sizing.Sizing.Neighbour;
import dustwright.engine.tubing.Run;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Chosen sizes on pages: the design, the drawing of what changes, the certificate, the cost by users, why neighbours are not taken. */
public final class SizePage {
    private static final int TIGHTEST = 12;

    private final Plant plant;
    private final OpenSizes open;
    private final Sizing sizing;
    private final SizeBesides besides;
    private final SizeWords words;
    private final Show show;
    private final List<Element> body;

    private SizePage(Plant plant, OpenSizes open, Sizing sizing, SizeBesides besides, SizeWords words, Show show) {
        this.plant = plant;
        this.open = open;
        this.sizing = sizing;
        this.besides = besides;
        this.words = words;
        this.show = show;
        body = body();
    }

    /** The pages of an answer. */
    public static SizePage of(
            Plant plant, OpenSizes open, Sizing sizing, SizeBesides besides, SizeWords words, Show show) {
        return new SizePage(plant, open, sizing, besides, words, show);
    }

    private String title() {
        return "Sizes: " + plant.name();
    }

    /** A page of its own: nothing is fetched from anywhere. */
    public String html() {
        return Standing.page(title(), body);
    }

    /** Writes the same as PDF; the stream is left open. */
    public void pdf(PaperSize size, OutputStream out) throws IOException {
        Standing.pdf(title(), body, size, out);
    }

    private List<Element> body() {
        List<Element> all = new ArrayList<>();
        all.add(Element.of("h1").text(title()));
        all.add(Parts.paragraph("note", plant.note()));
        all.add(Parts.paragraph("", words.verdict()));
        if (sizing.best().isPresent()) {
            all.add(Parts.paragraph("", SheetWording.beside(besides.openInSheets())));
        }
        words.partial(besides).ifPresent(said -> all.add(Parts.mind(said)));
        all.add(Parts.paragraph("", words.asked()));
        all.add(Parts.mind(Wording.SCREENING));
        sizing.best().ifPresent(best -> {
            all.add(chosen(best));
            all.add(drawing(best.plant(), sizing.coverage().orElseThrow(), "Chosen sizes"));
            all.add(certificate(sizing.coverage().orElseThrow()));
        });
        if (!besides.openInSheets().isEmpty()) {
            all.add(Parts.openInSheets(besides.openInSheets(), show));
        }
        sizing.deadlock().ifPresent(deadlock -> all.addAll(deadlock(deadlock)));
        besides.curve().ifPresent(curve -> all.add(curve(curve)));
        if (!besides.escapes().isEmpty()) {
            all.add(escapes());
        }
        if (!sizing.runnersUp().isEmpty()) {
            all.add(runnersUp());
        }
        if (!sizing.neighbours().isEmpty()) {
            all.add(neighbours());
        }
        Element grounds = Parts.section("grounds", "What this rests on");
        words.grounds().forEach(ground -> grounds.add(Parts.paragraph("", ground)));
        all.add(grounds.add(Parts.paragraph("", Wording.freeAir(show))));
        return all;
    }

    private String count(double amount) {
        return Figures.count(Math.round(amount));
    }

    private Element chosen(Design best) {
        Table table = Table.of(
                Table.words("Choice"),
                Table.words("Of"),
                Table.words("Present"),
                Table.words("Chosen"),
                Table.number("Cost", open.currency()),
                Table.words("Could be"));
        for (int v = 0; v < sizing.choices().size(); v++) {
            Choice choice = sizing.choices().get(v);
            table.row(
                    choice.id(),
                    SizeWords.kind(choice),
                    words.present(choice),
                    Element.of("b").text(best.options().get(v)),
                    count(best.firsts().get(v)),
                    choice.options().stream().map(Choice.Priced::id).collect(Collectors.joining(", ")));
        }
        return Parts.section("chosen", "Chosen").add(table.element(""));
    }

    private Element sizes(Design design) {
        Table table =
                Table.of(Table.words("Choice"), Table.words("Of"), Table.words("Present"), Table.words("Would be"));
        for (int v = 0; v < sizing.choices().size(); v++) {
            Choice choice = sizing.choices().get(v);
            table.row(
                    choice.id(),
                    SizeWords.kind(choice),
                    words.present(choice),
                    design.options().get(v));
        }
        return table.element("");
    }

    /** Runs by their least margin over all sets; a run whose size changes is told with its new one. */
    private Element drawing(Plant sized, Coverage coverage, String caption) {
        Map<String, Double> least = new HashMap<>();
        coverage.answers().stream()
                .flatMap(a -> a.worst().stream())
                .map(Worst::finding)
                .filter(f -> f.where().kind() == Place.Kind.RUN)
                .forEach(f -> least.merge(f.where().id(), f.margin(), Math::min));
        Map<String, RunLook> looks = new LinkedHashMap<>();
        int changed = 0;
        for (Run run : sized.runs()) {
            boolean same = run.tube().equals(plant.run(run.id()).tube());
            changed += same ? 0 : 1;
            Double margin = least.get(run.id());
            looks.put(
                    run.id(),
                    new RunLook(
                            margin == null ? MarginClass.NOT_ASKED : MarginClass.of(margin),
                            same ? "" : run.tube(),
                            margin == null ? "" : Show.margin(margin),
                            1));
        }
        Layout layout = Layout.plan(sized);
        PlantView view = new PlantView(
                sized,
                layout,
                layout.kind().words() + " of " + sized.name() + ", tubing by its least margin over all sets",
                looks,
                Set.of(),
                Map.of());
        return Parts.section("drawing", "Drawing")
                .add(Parts.figure(
                        PlantDrawing.of(view).scene(),
                        caption + ". " + layout.kind().words()
                                + ". Each run by its least margin over all sets asked; "
                                + (changed == 0
                                        ? "no run gets another tube than in the plant file."
                                        : Wording.counted(changed, "run gets", "runs get")
                                                + " another tube than in the plant file, named where there is room.")));
    }

    private Element certificate(Coverage coverage) {
        Table table = Table.of(
                Table.number("Users", ""),
                Table.words("Condition"),
                Table.number("Sets", ""),
                Table.words("Verdict"),
                Table.words("Shown by"),
                Table.margins());
        for (Answer answer : coverage.answers()) {
            table.row(
                    String.valueOf(answer.users()),
                    answer.condition(),
                    answer.sets().toString(),
                    answer.verdict().words(),
                    answer.method().words(),
                    answer.least()
                            .map(w -> Parts.margin(w.finding()))
                            .orElse(Element.of("span").text("")));
        }
        return Parts.section("certificate", "Certificate: every set asked")
                .add(table.element(""), Element.of("h3").text("Tightest over all sets"), tightest(coverage));
    }

    private Element tightest(Coverage coverage) {
        Table table = Table.of(
                Table.words("Requirement and place"),
                Table.words("Value and limit"),
                Table.margins(),
                Table.words("Worst set"));
        coverage.worstPerPlace().stream().limit(TIGHTEST).forEach(w -> {
            Finding finding = w.finding();
            table.row(
                    Wording.claim(finding),
                    Wording.valueAndLimit(finding, show),
                    Parts.margin(finding),
                    w.open().isEmpty() ? "nobody" : String.join("+", w.open()));
        });
        return table.element("");
    }

    private List<Element> deadlock(Deadlock deadlock) {
        List<Element> all = new ArrayList<>();
        if (!deadlock.clash().isEmpty()) {
            Table table = Table.of(
                    Table.words("Requirement and place"),
                    Table.words("At best"),
                    Table.margins(),
                    Table.words("With open"),
                    Table.words("Leaves"));
            deadlock.clash()
                    .forEach(state -> table.row(
                            Wording.claim(state.best().finding()) + ", " + state.condition(),
                            Wording.valueAndLimit(state.best().finding(), show),
                            Parts.margin(state.best().finding()),
                            String.join("+", state.best().open()),
                            state.leaves().stream()
                                    .map(l -> sizing.choices().get(l.choice()).id() + " "
                                            + String.join(" or ", l.options()))
                                    .collect(Collectors.joining("; "))));
            boolean one = deadlock.clash().size() == 1;
            all.add(Parts.section("clash", one ? "What stands against every choice" : "States that exclude each other")
                    .add(
                            Parts.paragraph(
                                    "",
                                    one
                                            ? "In this state no design holds, whatever is chosen. What would help: "
                                                    + deadlock.clash()
                                                            .get(0)
                                                            .best()
                                                            .finding()
                                                            .code()
                                                            .remedy()
                                            : "No design withstands all of them; with any one left out they exclude nothing. The last one is told with"
                                                    + " the sizes the others leave, each other one with every size at its best for it. No tube gets narrower toward"
                                                    + " the producer."),
                            table.element("")));
        }
        deadlock.nearest().ifPresent(nearest -> {
            all.add(Parts.section("nearest", "The design that misses least")
                    .add(
                            Parts.paragraph(
                                    "",
                                    "It costs " + words.money(nearest.design().cost()) + " and misses by "
                                            + Figures.fixed(100 * nearest.miss(), 1)
                                            + " % at worst; every design misses by "
                                            + Figures.fixed(100 * nearest.least(), 1) + " % or more."),
                            sizes(nearest.design()),
                            tightest(nearest.coverage())));
            all.add(drawing(nearest.design().plant(), nearest.coverage(), "The design that misses least"));
        });
        return all;
    }

    private Element curve(Curve curve) {
        List<CostChart.Step> steps = curve.points().stream()
                .map(p -> new CostChart.Step(
                        p.users(),
                        p.sizing().best().map(Design::cost),
                        p.sizing().bound(),
                        "none"))
                .toList();
        Table table = Table.of(
                Table.number("Users", ""),
                Table.number("Cost", open.currency()),
                Table.number("None below", open.currency()),
                Table.words("What is shown"),
                Table.words("Against one user fewer"));
        for (int n = 0; n < curve.points().size(); n++) {
            Sizing at = curve.points().get(n).sizing();
            table.row(
                    String.valueOf(curve.points().get(n).users()),
                    at.best().map(b -> count(b.cost())).orElse("-"),
                    Double.isFinite(at.bound()) ? count(at.bound()) : "-",
                    SizeBesides.said(at),
                    SizeBesides.changed(curve, n));
        }
        Element section = Parts.section("curve", "Cost by number of users at once");
        if (curve.points().stream().allMatch(p -> p.sizing().best().isEmpty())) {
            return section.add(table.element(""));
        }
        return section.add(
                Parts.figure(
                        CostChart.of(steps, open.currency()),
                        "Cheapest sizes found for so many users at once, whichever they are; no sizes that hold cost less than the"
                                + " broken line, or than the bar where there is none."),
                table.element(""));
    }

    private Element escapes() {
        Table table = Table.of(Table.words("Remedy"), Table.number("Cost", open.currency()), Table.words("Then"));
        besides.escapes()
                .forEach(e -> table.row(
                        e.what(), e.sizing().best().map(b -> count(b.cost())).orElse("-"), SizeBesides.then(e)));
        return Parts.section("remedies", "What would let some sizes hold")
                .add(table.element(""), Parts.paragraph("", SizeBesides.NO_SIZE));
    }

    private Element runnersUp() {
        Design best = sizing.best().orElseThrow();
        Table table = Table.of(Table.number("Cost", open.currency()), Table.words("Differs by"));
        sizing.runnersUp()
                .forEach(other -> table.row(
                        SizeWords.signed(other.cost() - best.cost()), SizeWords.difference(sizing, best, other)));
        return Parts.section("next", "Next cheapest that hold").add(table.element(""));
    }

    private Element neighbours() {
        Table table = Table.of(
                Table.words("Choice"), Table.words("As"), Table.number("Cost", open.currency()), Table.words("Then"));
        for (Neighbour neighbour : sizing.neighbours()) {
            table.row(
                    sizing.choices().get(neighbour.choice()).id(),
                    neighbour.option(),
                    SizeWords.signed(neighbour.difference()),
                    neighbour.fails().map(words::failing).orElse(neighbour.said()));
        }
        return Parts.section("neighbours", "Why not one size smaller or larger").add(table.element(""));
    }
}
