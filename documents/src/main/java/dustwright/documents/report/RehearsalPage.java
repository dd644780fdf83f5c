package dustwright.documents.report;

import dustwright.documents.control.Clock;
import dustwright.documents.control.RehearsalText;
import dustwright.documents.drawing.RehearsalChart;
import dustwright.documents.writing.Element;
import dustwright.documents.writing.Show;
import dustwright.engine.finding.Assumption;
import dustwright.engine.rehearsal.Played;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;

/** A rehearsal on one page: what the operator sees and should do, the course as curves and bars, and moment by moment. */
public final class RehearsalPage {
    private final Played played;
    private final List<Element> body;

    private RehearsalPage(Played played, Show show) {
        this.played = played;
        body = body(show);
    }

    /** The page of a rehearsal. */
    public static RehearsalPage of(Played played, Show show) {
        return new RehearsalPage(played, show);
    }

    /** A page of its own: nothing is fetched from anywhere. */
    public String html() {
        return Standing.page("Rehearsal: " + played.script().title(), body);
    }

    /** Writes the same as PDF; the stream is left open. */
    public void pdf(PaperSize size, OutputStream out) throws IOException {
        Standing.pdf("Rehearsal: " + played.script().title(), body, size, out);
    }

    private List<Element> body(Show show) {
        List<Element> all = new ArrayList<>();
        all.add(Element.of("h1").text("Rehearsal: " + played.script().title()));
        all.add(Parts.paragraph(
                "note",
                played.sequence() + ". Begins " + Clock.of(played, 0) + ", seed " + played.seed()
                        + ": the same seed goes the same way."));
        all.add(Parts.mind(RehearsalText.CAUTION));
        all.add(list("What the operator sees", played.script().sees()));
        all.add(list("What the operator should do", played.script().does()));
        all.add(list("Dust that came and went", List.of(RehearsalText.totals(played, show))));
        all.add(list("What must be so", RehearsalText.verdicts(played)));
        all.add(list(
                "Taken as common practice, without a source",
                played.assumptions().stream().map(Assumption::what).toList()));
        all.add(Parts.section("course", "Course")
                .add(Parts.figure(
                        RehearsalChart.of(played, show), "Amounts, steps, outputs and lamps by time of day.")));
        Table moments = Table.of(Table.sized("Time", "tight"), Table.words("About"), Table.words("What happens"));
        played.moments()
                .forEach(m -> moments.row(Clock.of(played, m.at_ms()), m.who().words(), m.words()));
        all.add(Parts.section("moments", "Moment by moment").add(moments.element("")));
        return all;
    }

    private static Element list(String title, List<String> items) {
        Element section = Element.of("section").with("class", "together");
        if (items.isEmpty()) {
            return section;
        }
        section.add(Element.of("h2").text(title));
        items.forEach(i -> section.add(Element.of("p").text(i)));
        return section;
    }
}
