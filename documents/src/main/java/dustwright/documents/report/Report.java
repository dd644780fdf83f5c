package dustwright.documents.report;

import dustwright.documents.drawing.Lettering;
import dustwright.documents.drawing.Scene;
import dustwright.documents.writing.Element;
import dustwright.documents.writing.Show;
import dustwright.engine.StateAnswer;
import dustwright.engine.Study;
import dustwright.engine.network.DutyPoint;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The report on a study: first page with the verdict, drawings, curves, tables, findings with derivations, what it rests on. One body of
 * markup is both the page for a browser and the paper.
 */
public final class Report {
    private final Digest digest;
    private final Show show;
    private final Origin origin;
    private final List<Element> body;

    private Report(Digest digest, Show show, Origin origin) {
        this.digest = digest;
        this.show = show;
        this.origin = origin;
        this.body = body();
    }

    public static Report of(Study study, Show show, Origin origin) {
        return new Report(new Digest(study), show, origin);
    }

    /** A page of its own: no other file, nothing fetched from anywhere. */
    public String html() {
        StringBuilder text = new StringBuilder();
        body.forEach(e -> text.append(e.markup()));
        String css = Faces.embedded(text) + resource("paper.css") + resource("screen.css");
        Element page = Element.of("main").with("class", "sheet").addAll(body);
        return "<!DOCTYPE html>\n" + document(css, Element.of("body").add(page)) + "\n";
    }

    /** The drawing of the plant by its margins as an SVG file of its own; empty if nothing was solved. */
    public Optional<String> drawing() {
        return new DrawingPages(digest, show).first().map(Scene::svgFile);
    }

    /** Well-formed markup for the PDF writer, laid out for one paper size. */
    String paper(PaperSize size) {
        String css = size.css() + resource("paper.css") + resource("print.css");
        Element head = Element.of("div")
                .with("class", "running")
                .add(Element.of("b").text("Verification report "))
                .text(" " + shortName() + " · Draft, screening only");
        Element foot = Element.of("div").with("class", "footing").text(footing());
        return document(css, Element.of("body").add(head, foot).addAll(body));
    }

    private String shortName() {
        return Lettering.fitted(digest.study().plant().name(), 8, 380);
    }

    private String footing() {
        return Lettering.fitted(origin.plantFile() + " " + origin.mark() + " · " + origin.program(), 8, 380);
    }

    private String document(String css, Element body) {
        Element head = Element.of("head")
                .add(
                        Element.of("meta").with("charset", "utf-8"),
                        Element.of("meta")
                                .with("name", "viewport")
                                .with("content", "width=device-width, initial-scale=1"),
                        Element.of("title")
                                .text("Verification report, "
                                        + digest.study().plant().name()),
                        Element.of("style").text(css));
        return Element.of("html")
                .with("lang", "en")
                .with("xmlns", "http://www.w3.org/1999/xhtml")
                .add(head, body)
                .markup();
    }

    private List<Element> body() {
        List<Element> all = new ArrayList<>();
        all.add(Element.of("section").with("class", "first").addAll(new FirstPage(digest, show, origin).elements()));
        DrawingPages drawings = new DrawingPages(digest, show);
        all.add(drawings.drawings());
        all.add(drawings.profiles());
        all.add(drawings.charts());
        ResultTables tables = new ResultTables(digest, show);
        all.add(tables.states());
        all.add(tables.oneUser());
        Optional<StateAnswer> worst = digest.worstState();
        Optional<DutyPoint> duty = worst.flatMap(Digest::duty);
        if (worst.isPresent() && duty.isPresent()) {
            all.add(tables.pieces(worst.get(), duty.get()));
            all.add(tables.inlets(worst.get(), duty.get()));
            all.add(tables.stations(worst.get(), duty.get()));
        }
        all.add(new SheetPages(digest, show).element());
        all.add(new FindingPages(digest, show).element());
        BasisPages basis = new BasisPages(digest, show);
        all.add(basis.assumptions());
        all.add(basis.equations());
        all.add(basis.reach());
        return all;
    }

    static String resource(String name) {
        try (InputStream in = Report.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
