package dustwright.documents.report;

import dustwright.documents.control.Lists;
import dustwright.documents.control.Narrative;
import dustwright.documents.control.ProofText;
import dustwright.documents.control.StateDiagram;
import dustwright.documents.control.Workbooks;
import dustwright.documents.writing.Element;
import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.interlock.ShopTest;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A control sequence on paper: operations in sentences, steps, matrix, signals, alarms, times and the script of the shop test. */
public final class ControlReport {
    private static final int LONG = 10;
    private static final int MANY_letters = 1000;

    private final Sequence sequence;
    private final List<Element> body;

    private ControlReport(Sequence sequence, ShopTest test, List<Lists.Rows> besides) {
        this.sequence = sequence;
        body = body(test, besides);
    }

    /** The report on a sequence. */
    public static ControlReport of(Sequence sequence) {
        return of(sequence, List.of());
    }

    /**
     * The report on a sequence.
     *
     * @param besides further tables, what was proven and what a device fault defeats
     */
    public static ControlReport of(Sequence sequence, List<Lists.Rows> besides) {
        return new ControlReport(sequence, ShopTest.of(sequence), besides);
    }

    /** A page of its own: nothing is fetched from anywhere. */
    public String html() {
        return Standing.page("Control sequence, " + sequence.title(), body);
    }

    /** Writes the same as PDF; the stream is left open. */
    public void pdf(PaperSize size, OutputStream out) throws IOException {
        Standing.pdf("Control sequence, " + sequence.title(), body, size, out);
    }

    private List<Element> body(ShopTest test, List<Lists.Rows> besides) {
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
        all.add(paged(Element.of("section"))
                .add(Element.of("h2").text("Steps and ways between them"), StateDiagram.svg(sequence)));
        all.add(inFileWords(ways));
        Lists.onPaper(sequence).forEach(rows -> all.add(table(rows)));
        besides.forEach(rows -> all.add(table(rows)));
        all.add(shopTest(test, ways));
        return all;
    }

    private static Element entry(Narrative.Entry entry) {
        Element together = Element.of("div").with("class", "together");
        together.add(Element.of("h3").text(entry.title()));
        entry.lines().forEach(l -> together.add(Element.of("p").text(l)));
        return together;
    }

    /** Longer tables begin on a page of their own. */
    private static Element paged(Element section) {
        return section.with("class", "paged");
    }

    private static Element inFileWords(List<StateDiagram.Way> all) {
        Table ways = Table.of(
                Table.number("No.", ""),
                Table.words("From"),
                Table.words("To"),
                Table.words("When, as the sequence file has it"));
        all.forEach(w -> ways.row(
                String.valueOf(w.number()),
                spaced(w.from().orElse("every other step")),
                spaced(w.to()),
                w.conditions().stream().map(Expr::text).collect(Collectors.joining("; or "))));
        return paged(Element.of("section")).add(Element.of("h2").text("Ways between steps, by name"), ways.element(""));
    }

    private static String spaced(String name) {
        return name.replace('_', ' ');
    }

    private static Element table(Lists.Rows rows) {
        Table table = Table.of(rows.head().stream().map(h -> column(rows, h)).toArray(Table.Column[]::new));
        rows.rows().forEach(r -> table.row(r.toArray()));
        Element section = Element.of("section");
        return (isLong(rows) ? paged(section) : section)
                .add(
                        Element.of("h2").text(rows.title()),
                        Element.of("p").with("class", "cap").text(rows.key()),
                        table.element(rows.title().toLowerCase(Locale.ROOT).replace(' ', '-')));
    }

    /** Begins a page of its own, by its rows or by what stands in them. */
    private static boolean isLong(Lists.Rows rows) {
        int letters = rows.rows().stream()
                .flatMap(List::stream)
                .mapToInt(String::length)
                .sum();
        return rows.rows().size() > LONG || letters > MANY_letters;
    }

    /** Tags and single words are not broken. */
    private static Table.Column column(Lists.Rows rows, String head) {
        int at = rows.head().indexOf(head);
        boolean tight = rows.rows().stream()
                .map(r -> r.get(at))
                .allMatch(c -> (c.length() < 9 && !c.contains(" ")) || c.matches("[0-9.]+ s"));
        return tight ? Table.sized(head, "brief") : Table.words(head);
    }

    private Element shopTest(ShopTest test, List<StateDiagram.Way> ways) {
        Table table = Table.of(
                Table.number("No.", ""),
                Table.words("Do"),
                Table.words("Step then"),
                Table.words("See"),
                Table.number("Way", ""),
                Table.words("Seen"));
        int number = 1;
        for (ShopTest.Act act : test.acts()) {
            table.row(
                    String.valueOf(number++),
                    act.scan().happens().isEmpty()
                            ? "wait"
                            : String.join("; ", act.scan().happens()),
                    spaced(act.scan().step()),
                    act.scan().changes().isEmpty()
                            ? "no change"
                            : String.join(", ", act.scan().changes()),
                    act.takes().stream()
                            .map(x -> String.valueOf(StateDiagram.number(ways, x.from(), x.to())))
                            .collect(Collectors.joining(", ")),
                    "☐");
        }
        Element section = paged(Element.of("section"))
                .add(
                        Element.of("h2").text("Shop test"),
                        Element.of("p")
                                .text(
                                        "One walk that takes every way between steps at least once, and one that has several conditions by each of them alone; presses START while each thing stands against it;"
                                                + " brings about every message but those named below, every trip while a producer runs, what holds or waits while users vacuum and while filters are pulsed, every supervision, every limit and every lamp; makes every"
                                                + " contact bad once, presses START and RESET while STOP is down and takes the power away while users vacuum. The nearest not yet done comes next."),
                        Element.of("p")
                                .text(
                                        "Where a time is out, wait for it with everything else left as the line says; a contact with a filter stays bad for"
                                                + " the filter, and every contact a line makes bad until the line is ticked. It is made good again before the next, a button is let go at once where the line does not hold it,"
                                                + " dust on a probe stays until a line takes it away. What stands before \"then\" is done and waited for first; what stands after \"at once\" is prepared and done without a pause, as soon as what stands before it is there. Whoever sets contacts by hand lets them follow: vent and"
                                                + " vacuum switches at once, the motion switch, and a drive's contact for its speed, a second and a half after what they watch is driven, and at once when it no longer is. See: what has changed since the line before, a second after the step is there, the time out or the button let go,"
                                                + " with the contacts still as the line says; lines are told as they go without a pause in between. Where somebody pauses, what ends by a time alone (the producer's rest, the receiver probe"
                                                + " clear) ends lines earlier. Way: number in the diagram of steps. Set counts (starts per hour, own returns) so"
                                                + " high that they do not fill, and back afterwards."),
                        table.element("shop-test"));
        section.add(Element.of("p")
                .text(
                        "Not in the walk, and to be tested besides: how long each time is, by a watch; and, with the controller stopped,"
                                + " that each hard-wired contact takes the power from the outputs the list of signals names. A line that must be done within a short step (warning, proving, settling) needs its switch prepared, or that time"
                                + " lengthened for the test and set back afterwards."));
        if (!test.notTaken().isEmpty()) {
            section.add(Element.of("p")
                    .text(
                            "Not in the walk, since it has to be done within a time shorter than its own; lengthen that time for a test of it: "
                                    + test.notTaken().stream()
                                            .map(x -> spaced(x.from()) + " to " + spaced(x.to()) + ", condition "
                                                    + x.number())
                                            .collect(Collectors.joining("; "))
                                    + "."));
        }
        if (!test.notSeen().isEmpty()) {
            section.add(Element.of("p")
                    .text(
                            "Not in the walk either, to be tested by themselves (what counts by doing it so often, what must already be so beforehand, what takes longer than the step in which it would act): "
                                    + test.notSeen().stream().map(this::told).collect(Collectors.joining("; "))
                                    + "."));
        }
        return section;
    }

    /** A cause, lamp, contact, time or condition as people read it. */
    private String told(String name) {
        int during = name.indexOf("_while_");
        if (during > 0) {
            return told(name.substring(0, during)) + " while " + spaced(name.substring(during + 7));
        }
        int by = name.indexOf(ShopTest.BY);
        if (by > 0) {
            return spaced(name.substring(0, by)) + " when "
                    + Narrative.when(sequence, Expr.of(name.substring(by + ShopTest.BY.length())));
        }
        int with = name.indexOf(ShopTest.WITH);
        if (with > 0) {
            return spaced(name.substring(0, with)) + " while "
                    + Narrative.when(sequence, Expr.of(name.substring(with + ShopTest.WITH.length())));
        }
        return Stream.of(
                        sequence.causes().stream()
                                .filter(c -> c.name().equals(name))
                                .map(Sequence.Cause::message),
                        sequence.lamps().stream()
                                .filter(l -> l.name().equals(name))
                                .map(l -> "lamp " + l.words()),
                        sequence.inputs().stream()
                                .filter(i -> i.name().equals(name))
                                .map(i -> i.words() + " " + i.bad()))
                .flatMap(s -> s)
                .findFirst()
                .orElse(spaced(name));
    }
}
