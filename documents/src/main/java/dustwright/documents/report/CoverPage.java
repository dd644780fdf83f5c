package dustwright.documents.report;

import dustwright.documents.answers.CoverText;
import dustwright.documents.drawing.CarryChart;
import dustwright.documents.drawing.Layout;
import dustwright.documents.drawing.PlantDrawing;
import dustwright.documents.drawing.PlantViews;
import dustwright.documents.writing.CoverWording;
import dustwright.documents.writing.Element;
import dustwright.documents.writing.Figures;
import dustwright.documents.writing.SheetWording;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.ByHand;
import dustwright.engine.coverage.Carry;
import dustwright.engine.coverage.CarryBySize;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Remedy;
import dustwright.engine.finding.Finding;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Dimension;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Coverage on paper: what holds whichever inlets are open, the matrix by inlet and run, the worst state drawn, why it is the worst, and what
 * was asked besides.
 */
public final class CoverPage {
    private static final int FEW_ROWS = 8;

    private final Plant plant;
    private final Coverage coverage;
    private final CoverText.Besides besides;
    private final Show show;
    private final Origin origin;
    private final List<Element> body;

    private CoverPage(Plant plant, Coverage coverage, CoverText.Besides besides, Show show, Origin origin) {
        this.plant = plant;
        this.coverage = coverage;
        this.besides = besides;
        this.show = show;
        this.origin = origin;
        body = body();
    }

    /** The page of one coverage. */
    public static CoverPage of(Plant plant, Coverage coverage, CoverText.Besides besides, Show show, Origin origin) {
        return new CoverPage(plant, coverage, besides, show, origin);
    }

    /** A page of its own: nothing is fetched from anywhere. */
    public String html() {
        return Standing.page(title(), body);
    }

    /** Writes the same as PDF; the stream is left open. */
    public void pdf(PaperSize size, OutputStream out) throws IOException {
        Standing.pdf(title(), body, size, out);
    }

    private String title() {
        return "Coverage: " + plant.name();
    }

    private List<Element> body() {
        List<Element> all = new ArrayList<>();
        all.add(Element.of("h1").text(title()));
        all.add(Parts.paragraph("note", origin.plantFile() + " " + origin.mark() + " · " + origin.program()));
        all.add(Parts.paragraph(
                "", CoverWording.verdict(coverage, show) + " " + SheetWording.beside(besides.openInSheets())));
        if (coverage.partial() || besides.partial()) {
            all.add(Parts.mind(CoverWording.PARTIAL));
        }
        all.add(Parts.paragraph("", CoverWording.asked(plant, coverage)));
        all.add(answers());
        besides.byHand().ifPresent(hand -> all.add(drawing(hand)));
        besides.byHand().ifPresent(hand -> all.add(byHand(hand)));
        all.add(tightest());
        if (!besides.openInSheets().isEmpty()) {
            all.add(Parts.openInSheets(besides.openInSheets(), show));
        }
        CoverMatrix matrix = new CoverMatrix(plant, coverage);
        all.add(Parts.section("inlets", "Matrix by inlet")
                .add(
                        matrix.key("Least margin of what is asked at an inlet and its hose, by users open in all."),
                        matrix.inlets()));
        all.add(Parts.section("runs", "Matrix by run")
                .add(matrix.key("Least margin of what is asked of a run, by users open in all."), matrix.runs()));
        carried(all);
        remedies(all);
        all.add(Parts.paragraph("cap", Wording.freeAir(show) + " " + Wording.SCREENING));
        return all;
    }

    private Element answers() {
        Table table = Table.of(
                Table.number("Users", ""),
                Table.words("Condition"),
                Table.number("Sets", ""),
                Table.words("Verdict"),
                Table.margins(),
                Table.words("Shown by"),
                Table.number("Solved", ""),
                Table.number("Failing", ""));
        for (Answer answer : coverage.answers()) {
            Object least =
                    answer.least().<Object>map(w -> Parts.margin(w.finding())).orElse("");
            table.row(
                    Integer.toString(answer.users()),
                    answer.condition(),
                    answer.sets().toString(),
                    answer.verdict().words(),
                    least,
                    answer.method().words(),
                    Figures.count(answer.solved()),
                    answer.failing().isPresent()
                            ? Figures.count(answer.failing().getAsLong())
                            : "not counted");
        }
        Element section = Parts.section("sets", "Sets covered").add(table.element(""));
        coverage.answers().stream()
                .map(Answer::why)
                .filter(why -> !why.isEmpty())
                .distinct()
                .forEach(why -> section.add(Parts.mind(why + ".")));
        CoverWording.toDecide(plant, coverage).ifPresent(said -> section.add(Parts.mind(said)));
        CoverWording.bounds(coverage).forEach(said -> section.add(Parts.paragraph("cap", said)));
        return section;
    }

    private Element drawing(ByHand hand) {
        Layout layout = Layout.plan(plant);
        Finding finding = hand.exchanges().worst().finding();
        var sheet = PlantDrawing.of(PlantViews.state(
                plant,
                hand.duty(),
                hand.findings(),
                layout,
                Map.of("a", finding.where().id()),
                show));
        return Parts.section("worst", "The worst state")
                .add(Parts.figure(
                        sheet.scene(),
                        layout.kind().words() + ", set " + finding.state()
                                + ". The letter a marks the least margin of all: "
                                + Wording.claim(finding) + ", " + Wording.valueAndLimit(finding, show)
                                + ". A number at a run is"
                                + " the velocity at its slowest point."));
    }

    private Element byHand(ByHand hand) {
        Finding finding = hand.exchanges().worst().finding();
        Element section = Parts.section("by-hand", "Why this set is the worst, by hand");
        section.add(Parts.paragraph(
                "",
                Wording.claim(finding) + " with " + finding.state() + ": " + Wording.valueAndLimit(finding, show) + " ("
                        + Show.margin(finding) + "). " + CoverWording.harm(hand)));
        Table harms = Table.of(Table.words("Opened"), Table.margins());
        hand.alone()
                .ifPresent(margin -> harms.row("only " + hand.base().orElse(""), Parts.margin(margin, finding.side())));
        hand.harms().stream()
                .limit(FEW_ROWS)
                .forEach(h -> harms.row(h.inlet(), Parts.margin(h.margin(), finding.side())));
        section.add(harms.element(""));
        section.add(Parts.paragraph(
                "",
                "On the way to the receiver the pieces in which more users' air passes take more of the vacuum. The drops can be"
                        + " added up, and each follows from its air by the leg's law (dustwright explain)."));
        section.add(path(hand));
        Table table = Table.of(Table.words("Shut"), Table.words("Open instead"), Table.margins());
        hand.exchanges().tried().stream()
                .limit(FEW_ROWS)
                .forEach(e -> table.row(e.shut(), e.opened(), Parts.margin(e.margin(), finding.side())));
        section.add(Parts.paragraph("", CoverWording.exchanges(hand)));
        return section.add(table.element(""));
    }

    private Element path(ByHand hand) {
        Table table = Table.of(
                Table.words("Piece"),
                Table.words("Air of"),
                Table.number("Air", show.unit(Dimension.FREE_AIR_FLOW)),
                Table.number("Drop", show.lossUnit()),
                Table.number("Drop, nearest exchange", show.lossUnit()));
        for (ByHand.Piece piece : hand.path()) {
            table.row(
                    (piece.kind() == LegResult.Kind.HOSE ? "hose at " : "run ") + piece.id(),
                    String.join(", ", piece.users()),
                    show.freeAir(piece.air()),
                    show.loss(piece.drop()),
                    piece.otherDrop().map(show::loss).orElse(""));
        }
        return table.element("");
    }

    private Element tightest() {
        Table table = Table.of(
                Table.words("Finding"),
                Table.words("Value and limit"),
                Table.margins(),
                Table.number("No set below", ""),
                Table.words("Worst set"));
        for (Worst worst : coverage.worstPerPlace().stream().limit(FEW_ROWS).toList()) {
            Finding f = worst.finding();
            table.row(
                    Wording.claim(f),
                    Wording.valueAndLimit(f, show),
                    Parts.margin(f),
                    CoverWording.bound(worst),
                    f.state());
        }
        return Parts.section("tightest", "Tightest places, each with its own worst set")
                .add(table.element(""));
    }

    private void carried(List<Element> all) {
        if (!besides.carried().isEmpty()) {
            Table table = Table.of(
                    Table.words("Area"),
                    Table.number("Inlets", ""),
                    Table.number("Asked up to", ""),
                    Table.number("Carries", ""),
                    Table.words("What stops the next user"));
            for (Carry carry : besides.carried()) {
                table.row(
                        carry.words(plant),
                        Integer.toString(carry.inlets()),
                        Integer.toString(carry.asked()),
                        CoverWording.number(carry.shown()),
                        carry.stop().map(Answer::words).orElse("nothing asked"));
            }
            all.add(Parts.section("carries", "Users carried, whoever they are").add(table.element("")));
        }
        if (!besides.sizes().isEmpty()) {
            Table table = Table.of(
                    Table.words("Machine"),
                    Table.number("Motor", show.unit(Dimension.POWER)),
                    Table.number("Carries", ""),
                    Table.words("What stops the next user"));
            for (CarryBySize size : besides.sizes()) {
                table.row(
                        size.producer().id(),
                        show.number(size.producer().nameplate()),
                        CoverWording.number(size.shown()),
                        size.stop().map(Answer::words).orElse("nothing asked"));
            }
            all.add(Parts.section("sizes", "Users carried with another machine")
                    .add(
                            Parts.figure(
                                    CarryChart.of(besides.sizes(), show),
                                    "Every producer in service replaced by one machine of the catalogue, at the speed it states,"
                                            + " behind the same filter and relief valve. A plus sign: no greater number was asked."),
                            table.element("")));
        }
    }

    private void remedies(List<Element> all) {
        if (besides.remedies().isEmpty()) {
            return;
        }
        Table table = Table.of(
                Table.words("Remedy"),
                Table.number("Places failing", ""),
                Table.words("Nearest to its limit, or farthest beyond"),
                Table.margins());
        for (Remedy remedy : besides.remedies()) {
            Object margin =
                    remedy.least().<Object>map(w -> Parts.margin(w.finding())).orElse("");
            table.row(
                    remedy.what() + CoverWording.open(remedy),
                    CoverWording.failing(remedy),
                    remedy.least()
                            .map(w -> Wording.claim(w.finding()) + " with "
                                    + w.finding().state())
                            .orElse(""),
                    margin);
        }
        all.add(Parts.section("remedies", "Remedies, each covered anew, best first")
                .add(table.element(""), Parts.paragraph("cap", CoverWording.NO_REMEDY)));
    }
}
