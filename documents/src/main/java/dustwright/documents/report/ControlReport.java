package dustwright.documents.report;

import dustwright.documents.control.Lists;
import dustwright.documents.control.Narrative;
import dustwright.documents.control.ProofText;
import dustwright.documents.control.StateDiagram;
import dustwright.documents.control.Workbooks;
import dustwright.documents.writing.Element;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.interlock.ShopTest;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A control sequence on paper: operations in sentences, steps, matrix, signals, alarms, times and the script of the shop test. */
public final class ControlReport {
    private final Sequence sequence;
    private final List<Element> body;

    private ControlReport(Sequence sequence, ShopTest test) {
        this.sequence = sequence;
        body = body(test);
    }

    /** The report on a sequence. */
    public static ControlReport of(Sequence sequence) {
        return new ControlReport(sequence, ShopTest.of(sequence));
    }

    /** A page of its own: nothing is fetched from anywhere. */
    public String html() {
        return Standing.page("Control sequence, " + sequence.title(), body);
    }

    /** Writes the same as PDF; the stream is left open. */
    public void pdf(PaperSize size, OutputStream out) throws IOException {
        Standing.pdf("Control sequence, " + sequence.title(), body, size, out);
    }

    private List<Element> body(ShopTest test) {
        List<Element> all = new ArrayList<>();
        all.add(Element.of("h1").text("Control sequence: " + sequence.title()));
        all.add(Parts.mind(ProofText.CAUTION));
        all.add(Parts.mind(Workbooks.REVIEW));
        for (Narrative.Part part : Narrative.of(sequence)) {
            Element section = Element.of("section").add(Element.of("h2").text(part.title()));
            part.entries().forEach(e -> section.add(entry(e)));
            all.add(section);
        }
        List<StateDiagram.Way> ways = StateDiagram.ways(sequence);
        all.add(diagram(ways));
        Lists.onPaper(sequence).forEach(rows -> all.add(table(rows)));
        all.add(shopTest(test, ways));
        return all;
    }

    private static Element entry(Narrative.Entry entry) {
        Element together = Element.of("div").with("class", "together");
        together.add(Element.of("h3").text(entry.title()));
        entry.lines().forEach(l -> together.add(Element.of("p").text(l)));
        return together;
    }

    private Element diagram(List<StateDiagram.Way> all) {
        Table ways = Table.of(
                Table.number("No.", ""),
                Table.words("From"),
                Table.words("To"),
                Table.words("When, as the sequence file has it"));
        all.forEach(w -> ways.row(
                String.valueOf(w.number()),
                spaced(w.from().orElse("every other step")),
                spaced(w.to()),
                String.join("; or ", w.conditions())));
        return Element.of("section")
                .add(
                        Element.of("h2").text("Steps and ways between them"),
                        StateDiagram.svg(sequence),
                        ways.element(""));
    }

    private static String spaced(String name) {
        return name.replace('_', ' ');
    }

    private static Element table(Lists.Rows rows) {
        Table table = Table.of(rows.head().stream().map(h -> column(rows, h)).toArray(Table.Column[]::new));
        rows.rows().forEach(r -> table.row(r.toArray()));
        return Element.of("section")
                .add(
                        Element.of("h2").text(rows.title()),
                        Element.of("p").with("class", "cap").text(rows.key()),
                        table.element(""));
    }

    /** Tags and single words are not broken. */
    private static Table.Column column(Lists.Rows rows, String head) {
        int at = rows.head().indexOf(head);
        boolean tight = rows.rows().stream()
                .map(r -> r.get(at))
                .allMatch(c -> (c.length() < 9 && !c.contains(" ")) || c.matches("[0-9.]+ s"));
        return tight ? Table.sized(head, "tight") : Table.words(head);
    }

    private static Element shopTest(ShopTest test, List<StateDiagram.Way> ways) {
        Table table = Table.of(
                Table.number("No.", ""),
                Table.words("Do"),
                Table.words("Step then"),
                Table.words("See"),
                Table.number("Way", ""),
                Table.words("Seen"));
        int number = 1;
        for (ShopTest.Act act : test.acts()) {
            if (!isLettingGo(act)) {
                table.row(
                        String.valueOf(number++),
                        act.scan().happens().isEmpty()
                                ? "wait"
                                : String.join("; ", act.scan().happens()),
                        spaced(act.scan().step()),
                        act.scan().changes().isEmpty()
                                ? "no change"
                                : String.join(", ", act.scan().changes()),
                        act.takes()
                                .map(x -> String.valueOf(StateDiagram.number(ways, x.from(), x.to())))
                                .orElse(""),
                        "☐");
            }
        }
        Element section = Element.of("section")
                .add(
                        Element.of("h2").text("Shop test"),
                        Element.of("p")
                                .text(
                                        "One walk that takes every way between steps at least once, and where one way has several conditions each of"
                                                + " them: the nearest not yet taken comes next. Where a time is out, wait for it; times may be shortened for"
                                                + " the test and must be set back. A contact that is bad in one line is made good again before the next, a"
                                                + " button is let go before it is pressed again. Way: number in the diagram of steps."),
                        table.element(""));
        if (!test.notTaken().isEmpty()) {
            section.add(Element.of("p")
                    .text("Not to be reached with healthy devices: "
                            + test.notTaken().stream()
                                    .map(x -> spaced(x.from()) + " to " + spaced(x.to()) + ", condition " + x.number())
                                    .collect(Collectors.joining("; "))
                            + "."));
        }
        return section;
    }

    /** Letting a button go changes nothing by itself: it is said once for all lines. */
    private static boolean isLettingGo(ShopTest.Act act) {
        List<String> happens = act.scan().happens();
        return act.takes().isEmpty()
                && act.scan().changes().isEmpty()
                && happens.size() == 1
                && happens.get(0).endsWith(" is let go");
    }
}
