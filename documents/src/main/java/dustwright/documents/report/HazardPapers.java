package dustwright.documents.report;

import dustwright.documents.control.Lists.Rows;
import dustwright.documents.drawing.Layout;
import dustwright.documents.drawing.PlantDrawing;
import dustwright.documents.drawing.PlantView;
import dustwright.documents.drawing.PlantViews;
import dustwright.documents.hazard.HazardLists;
import dustwright.documents.writing.Element;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.Study;
import dustwright.engine.finding.Assumption;
import dustwright.engine.finding.Place;
import dustwright.engine.hazard.PublishedDust;
import dustwright.engine.review.HazardStudy;
import dustwright.engine.sheet.Collecting;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Combustible dust of a plant on paper, to be read alone: what is collected, what was checked, the hazard study, the earthing test list. */
public final class HazardPapers {
    private final Study study;
    private final HazardStudy review;
    private final Show show;
    private final Origin origin;
    private final Footnotes notes = new Footnotes();

    private HazardPapers(Study study, HazardStudy review, Show show, Origin origin) {
        this.study = study;
        this.review = review;
        this.show = show;
        this.origin = origin;
    }

    /** The papers of a plant. */
    public static HazardPapers of(Study study, HazardStudy review, Show show, Origin origin) {
        return new HazardPapers(study, review, show, origin);
    }

    private String title() {
        return "Combustible dust, " + study.plant().name();
    }

    /** A page of its own: nothing is fetched from anywhere. */
    public String html() {
        return Standing.page(title(), body());
    }

    /** Writes the same as PDF; the stream is left open. */
    public void pdf(PaperSize size, OutputStream out) throws IOException {
        Standing.pdf(
                title(),
                "Combustible dust " + study.plant().name() + " · Draft · " + origin.plantFile() + " " + origin.mark(),
                "Prompts, not an analysis: a qualified person signs, the authority having jurisdiction decides. Own tests count.",
                body(),
                size,
                out);
    }

    private List<Element> body() {
        List<Element> all = new ArrayList<>();
        all.add(Element.of("h1").text(title()));
        all.add(Parts.mind(HazardLists.CAUTION));
        all.add(Parts.paragraph(
                "cap",
                origin.plantFile() + " " + origin.mark() + " · " + origin.program() + " · " + Wording.SCREENING));
        all.add(summary());
        all.add(overview());
        Rows checked = HazardLists.findings(study, show);
        all.add(table("1  ", noted(checked), "checked"));
        Element sheets = Element.of("section").add(Element.of("h2").text("2  Dusts and what follows from them"));
        for (Sheet sheet : HazardLists.sheets(study)) {
            sheets.add(Element.of("h3").text(Wording.head(sheet)));
            zones(sheet).ifPresent(sheets::add);
            sheets.add(SheetBlock.noted(withoutZones(sheet), show, notes::of).figures());
        }
        all.add(sheets);
        all.add(studySection());
        all.add(table("4  ", HazardLists.earthing(study.plant(), show), "earthing")
                .add(signatures()));
        all.add(assumptions());
        all.add(Element.of("section")
                .add(
                        Element.of("h2").text("6  Sources"),
                        Parts.paragraph("cap", "Called by their numbers in 1, 2 and 5."),
                        notes.list()));
        return all;
    }

    /** The plant as it is drawn, so that places are found; nothing where it has no places. */
    private Element overview() {
        Layout layout = Layout.plan(study.plant());
        Map<String, String> marks = new LinkedHashMap<>();
        List<String> named = new ArrayList<>();
        for (Collecting here : Collecting.all(study.plant())) {
            String mark = String.valueOf(marks.size() + 1);
            marks.put(mark, here.place().id());
            named.add(mark + " " + here.place());
        }
        PlantView view = PlantViews.plain(study.plant(), layout, marks);
        return Parts.figure(
                PlantDrawing.of(view).scene(),
                layout.kind().words() + ". Dust is collected at: " + String.join(", ", named) + ".");
    }

    /** Every place about one collector with its zone, at a glance. */
    private Optional<Element> zones(Sheet sheet) {
        Table table = Table.of(Table.words("Place"), Table.words("Zone, class and equipment"), Table.words("From"));
        sheet.entries().stream()
                .filter(HazardPapers::isZone)
                .forEach(e -> table.row(
                        e.name(),
                        Wording.answer(e.answer(), show),
                        notes.of(e.derivation().limitSource())));
        return table.isEmpty() ? Optional.empty() : Optional.of(table.element("wide zones"));
    }

    private static boolean isZone(Entry entry) {
        return entry.id().startsWith("area-");
    }

    private static Sheet withoutZones(Sheet sheet) {
        return new Sheet(
                sheet.id(),
                sheet.title(),
                sheet.about(),
                sheet.entries().stream().filter(e -> !isZone(e)).toList(),
                sheet.findings());
    }

    /** The same rows, their last column called by numbers. */
    private Rows noted(Rows rows) {
        return new Rows(
                rows.title(),
                rows.key(),
                rows.head(),
                rows.rows().stream()
                        .map(row -> {
                            List<String> called = new ArrayList<>(row);
                            called.set(row.size() - 1, notes.mark(row.get(row.size() - 1)));
                            return List.copyOf(called);
                        })
                        .toList());
    }

    private static Element signatures() {
        Element lines = Element.of("div").with("class", "together");
        for (String who : List.of("Instruments, their numbers and calibration", "Measured by, date", "Seen by, date")) {
            lines.add(Parts.paragraph("after", who + ": ____________________________________________"));
        }
        return lines;
    }

    private Element summary() {
        long fails = count("does not hold");
        long open = count("not known");
        long leans = review.rows().stream()
                .flatMap(row -> row.found().stream())
                .filter(found -> found.startsWith("not known: "))
                .distinct()
                .count();
        Element list = Element.of("ul");
        list.add(Element.of("li")
                .text(fails + " do not hold, " + open + " are not known, " + count("holds")
                        + " hold of what was checked (1)"
                        + (leans == 0
                                ? "."
                                : "; " + leans + " more checks that the study leans on are not known (3).")));
        HazardLists.untested(study.plant())
                .ifPresent(words -> list.add(Element.of("li").text(words)));
        list.add(Element.of("li")
                .text(review.notJudged() + " of " + review.rows().size()
                        + " rows of the hazard study are not judged by a team yet; " + review.withoutAction()
                        + " judged rows ask for an action and name none (3)."));
        list.add(Element.of("li").text("What the plant file leaves open is taken as the worst case and listed (5)."));
        list.add(Element.of("li").text("Numbers in brackets call the sources (6); " + Footnotes.KEY));
        return list;
    }

    private long count(String verdict) {
        return HazardLists.findings(study, show).rows().stream()
                .filter(r -> r.get(0).equals(verdict))
                .count();
    }

    private Element studySection() {
        Element section = Element.of("section")
                .add(
                        Element.of("h2").text("3  Hazard study"),
                        Parts.paragraph("cap", HazardLists.study(review).key()));
        section.add(Parts.paragraph(
                "",
                review.notes().team().isEmpty()
                        ? nobody()
                        : "Team: " + String.join(", ", review.notes().team())
                                + (review.notes().date().isEmpty()
                                        ? ""
                                        : "; " + review.notes().date())));
        for (HazardStudy.Row row : review.rows()) {
            section.add(row(review, row));
        }
        Rows matrix = HazardLists.matrix(review.notes().matrix());
        Table table = Table.of(matrix.head().stream().map(Table::words).toArray(Table.Column[]::new));
        matrix.rows().forEach(r -> table.row(r.toArray()));
        return section.add(Element.of("div")
                .with("class", "together")
                .add(Element.of("h3").text(matrix.title()), Parts.paragraph("cap", matrix.key()), table.element(""))
                .addAll(review.notes().matrix().odd().stream().map(Parts::mind).toList()));
    }

    private String nobody() {
        long judged = review.rows().size() - review.notJudged();
        return judged == 0
                ? "No team is named: nobody has judged this."
                : "No team is named: " + judged + (judged == 1 ? " row is" : " rows are")
                        + " judged, and nobody says by whom.";
    }

    /** One row as a small table: what, why, what then, what guards, what is missing, and what the team decided. */
    private static Element row(HazardStudy review, HazardStudy.Row row) {
        Table table = Table.of(Table.sized("", "ask"), Table.words(""));
        if (row.origin() == HazardStudy.Origin.GONE) {
            table.row("What it was about", HazardLists.noLine(review, row));
        } else {
            table.row("Cause", row.line().cause());
            table.row("Consequence", row.line().consequence());
            table.row("Safeguards found", items(HazardLists.safeguards(row), "none found"));
            table.row("Missing", items(HazardLists.missing(row), HazardLists.nothing(row)));
        }
        table.row(
                "Risk",
                row.risk()
                        .map(r -> r + ": " + row.note().severity().orElse("") + ", "
                                + row.note().likelihood().orElse(""))
                        .orElse("not judged"));
        row.note().action().ifPresent(a -> table.row("Action", a + who(row)));
        row.note().note().ifPresent(n -> table.row("Note", n));
        return Element.of("div")
                .with("class", "together")
                .add(
                        Element.of("h3")
                                .text(row.line().node()
                                        + (row.line().deviation().isEmpty()
                                                ? ""
                                                : ": " + row.line().deviation())),
                        Parts.paragraph(
                                "cap", row.line().id() + " · " + row.origin().words()),
                        table.element("asks"));
    }

    private static String who(HazardStudy.Row row) {
        return row.note().who().map(w -> "; " + w).orElse("")
                + row.note().by().map(b -> ", by " + b).orElse("")
                + row.note().status().map(s -> ", " + s).orElse("");
    }

    private static Element items(List<String> items, String none) {
        if (items.isEmpty()) {
            return Element.of("span").text(none);
        }
        Element list = Element.of("ul");
        items.forEach(i -> list.add(Element.of("li").text(i)));
        return list;
    }

    /** A table of the lists; the style sheet sets the width of its columns by their place. */
    private static Element table(String number, Rows rows, String cssClass) {
        Table table = Table.of(rows.head().stream().map(Table::words).toArray(Table.Column[]::new));
        rows.rows().forEach(r -> table.row(r.toArray()));
        return Element.of("section")
                .add(
                        Element.of("h2").text(number + rows.title()),
                        Parts.paragraph("cap", rows.key()),
                        table.element(cssClass + " wide"));
    }

    private Element assumptions() {
        Table table = Table.of(Table.words("Place"), Table.words("Taken"), Table.words("Basis"));
        for (Assumption a : study.plant().assumptions()) {
            if (a.place().kind() == Place.Kind.DUST || a.place().kind() == Place.Kind.CONTAINER) {
                table.row(
                        a.place().toString(),
                        a.what().replace(", " + PublishedDust.WARNING, " ¹"),
                        notes.of(a.basis()));
            }
        }
        Element section = Element.of("section").add(Element.of("h2").text("5  Taken where the plant file is silent"));
        return section.add(
                Parts.paragraph("cap", "¹ " + PublishedDust.WARNING + "."),
                table.isEmpty() ? Parts.paragraph("", "Nothing about dust and container.") : table.element("wide"));
    }
}
