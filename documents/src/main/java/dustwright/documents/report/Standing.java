package dustwright.documents.report;

import dustwright.documents.drawing.Lettering;
import dustwright.documents.writing.Element;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** A document that stands alone, as page and as paper, in the faces and rules of the report. */
final class Standing {
    private Standing() {}

    /** A page of its own: nothing is fetched from anywhere. */
    static String page(String title, List<Element> body) {
        StringBuilder text = new StringBuilder();
        body.forEach(e -> text.append(e.markup()));
        String css = Faces.embedded(text) + Report.resource("paper.css") + Report.resource("screen.css");
        Element page = Element.of("main").with("class", "sheet").addAll(body);
        return "<!DOCTYPE html>\n" + document(title, css, Element.of("body").add(page)) + "\n";
    }

    /** Writes the same as PDF; the stream is left open. */
    static void pdf(String title, List<Element> body, PaperSize size, OutputStream out) throws IOException {
        String css = size.css() + Report.resource("paper.css") + Report.resource("print.css");
        ReportPdf.write(document(title, css, Element.of("body").addAll(body)), out);
    }

    /** The same with a line at the head and one at the foot of every page. */
    static void pdf(String title, String head, String foot, List<Element> body, PaperSize size, OutputStream out)
            throws IOException {
        String css = size.css() + Report.resource("paper.css") + Report.resource("print.css");
        Element running = Element.of("div").with("class", "running").text(Lettering.fitted(head, 8, 380));
        Element footing = Element.of("div").with("class", "footing").text(Lettering.fitted(foot, 8, 420));
        ReportPdf.write(
                document(title, css, Element.of("body").add(running, footing).addAll(body)), out);
    }

    private static String document(String title, String css, Element content) {
        Element head = Element.of("head")
                .add(
                        Element.of("meta").with("charset", "utf-8"),
                        Element.of("title").text(title),
                        Element.of("style").text(css));
        return Element.of("html")
                .with("lang", "en")
                .with("xmlns", "http://www.w3.org/1999/xhtml")
                .add(head, content)
                .markup();
    }
}
