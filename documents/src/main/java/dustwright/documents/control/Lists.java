package dustwright.documents.control;

import dustwright.engine.electrical.Instrument;
import dustwright.engine.interlock.Sequence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The tables a panel builder and a programmer work from, as rows of words: signals, alarms, causes and effects, times, combinations. */
public final class Lists {
    private Lists() {}

    /** A table: head and rows of equal width. */
    public record Rows(String title, List<String> head, List<List<String>> rows) {}

    /** Inputs and outputs with their tags; letters after ISA-5.1. */
    public static Rows signals(Sequence sequence) {
        List<List<String>> rows = new ArrayList<>();
        for (Sequence.Input i : sequence.inputs()) {
            String filter = i.filter().map(f -> time(sequence, f)).orElse("");
            rows.add(List.of(
                    i.tag(),
                    "input",
                    reading(i.tag()),
                    i.words(),
                    i.good(),
                    i.bad() + "; so reads a broken wire",
                    filter));
        }
        for (Sequence.Button b : sequence.buttons()) {
            String pressed = b.opensWhenPressed() ? "0" : "1";
            rows.add(List.of(
                    b.tag(),
                    "input",
                    reading(b.tag()),
                    "button " + b.words(),
                    pressed.equals("1") ? "pressed" : "not pressed",
                    pressed.equals("0") ? "pressed; so reads a broken wire" : "not pressed; so reads a broken wire",
                    ""));
        }
        for (Sequence.Output o : sequence.outputs()) {
            rows.add(List.of(
                    o.tag(), "output", reading(o.tag()), o.words(), o.on(), o.off() + "; so without power", ""));
        }
        for (Sequence.Lamp l : sequence.lamps()) {
            rows.add(List.of(
                    l.tag(),
                    "output",
                    reading(l.tag()),
                    l.colour() + (l.flashes() ? " flashing" : "") + " lamp " + l.words(),
                    "lit",
                    "dark",
                    ""));
        }
        return new Rows("Signals", List.of("Tag", "Kind", "Letters", "What", "1", "0", "Filter"), rows);
    }

    /** Alarms with cause, consequence and response; a message nobody has to act on is a status and no alarm. */
    public static Rows alarms(Sequence sequence) {
        List<List<String>> rows = new ArrayList<>();
        for (Sequence.Cause c : sequence.causes()) {
            rows.add(List.of(
                    c.message(),
                    c.priority() == Sequence.Priority.STATUS
                            ? "status, no alarm"
                            : c.priority().name().toLowerCase(Locale.ROOT),
                    within(c.priority()),
                    c.when().text(),
                    c.consequence(),
                    c.response(),
                    c.latched() ? "RESET" : "by itself"));
        }
        return new Rows(
                "Alarms",
                List.of("Message", "Priority", "Time to respond", "Set when", "Consequence", "Response", "Cleared by"),
                rows);
    }

    private static String within(Sequence.Priority priority) {
        return switch (priority) {
            case HIGH -> "at once";
            case MEDIUM -> "minutes";
            case LOW -> "the shift";
            case STATUS -> "";
        };
    }

    /** Causes against outputs: what each demands. Sequences are not in it. */
    public static Rows causesAndEffects(Sequence sequence) {
        List<String> head = new ArrayList<>(List.of("Cause", "When"));
        sequence.outputs().forEach(o -> head.add(o.words()));
        head.addAll(List.of("Latched", "Released by"));
        List<List<String>> rows = new ArrayList<>();
        for (Sequence.Cause c : sequence.causes()) {
            List<String> row = new ArrayList<>(List.of(c.message(), c.when().text()));
            sequence.outputs().forEach(o -> row.add(c.demands().getOrDefault(o.name(), "")));
            row.add(c.latched() ? "yes" : "");
            row.add(c.response());
            rows.add(row);
        }
        return new Rows("Causes and effects", head, rows);
    }

    /** Two causes at once: the strictest demand of both, output by output; a table of its own beside the matrix. */
    public static Rows pairs(Sequence sequence) {
        List<Sequence.Cause> demanding =
                sequence.causes().stream().filter(c -> !c.demands().isEmpty()).toList();
        List<String> head = new ArrayList<>(List.of("Cause", "and cause"));
        sequence.outputs().forEach(o -> head.add(o.words()));
        List<List<String>> rows = new ArrayList<>();
        for (int a = 0; a < demanding.size(); a++) {
            for (int b = a + 1; b < demanding.size(); b++) {
                List<String> row = new ArrayList<>(
                        List.of(demanding.get(a).message(), demanding.get(b).message()));
                for (Sequence.Output o : sequence.outputs()) {
                    row.add(strictest(
                            o, demanding.get(a).demands(), demanding.get(b).demands()));
                }
                rows.add(row);
            }
        }
        return new Rows("Pairs of causes", head, rows);
    }

    private static String strictest(Sequence.Output output, Map<String, String> first, Map<String, String> second) {
        String a = first.getOrDefault(output.name(), "");
        String b = second.getOrDefault(output.name(), "");
        if (a.equals(output.stop()) || b.equals(output.stop())) {
            return output.stop();
        }
        List<String> weaker = List.of("limit", "run-on", "turns");
        int rank = Math.min(rank(weaker, a), rank(weaker, b));
        return rank < weaker.size() ? weaker.get(rank) : a.isEmpty() ? b : a;
    }

    private static int rank(List<String> words, String word) {
        int at = words.indexOf(word);
        return at < 0 ? words.size() : at;
    }

    /** Times with their ranges. */
    public static Rows times(Sequence sequence) {
        List<List<String>> rows = new ArrayList<>();
        sequence.timers()
                .forEach(t -> rows.add(List.of(
                        t.name(), t.words(), seconds(t.time_s()), seconds(t.least_s()), seconds(t.greatest_s()))));
        return new Rows("Times", List.of("Name", "What for", "Time", "Least", "Greatest"), rows);
    }

    static String time(Sequence sequence, String timer) {
        return seconds(sequence.timer(timer).time_s());
    }

    private static String seconds(double time_s) {
        return (time_s == Math.rint(time_s) ? String.valueOf((long) time_s) : String.valueOf(time_s)) + " s";
    }

    /** The letters of a tag in words, where our table of instruments holds them. */
    private static String reading(String tag) {
        String letters = tag.replaceAll("-.*", "");
        return Instrument.all().stream()
                .filter(i -> i.letters().equals(letters))
                .map(Instrument::reading)
                .findFirst()
                .orElse("");
    }
}
