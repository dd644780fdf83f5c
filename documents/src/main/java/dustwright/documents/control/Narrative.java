package dustwright.documents.control;

import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.Sequence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The sequence of operations in sentences, made from the same fields as the program. */
public final class Narrative {
    private static final Pattern JOINED = Pattern.compile(" or |; ");
    private static final Pattern VERB = Pattern.compile(" (is|are|has|have|was|were)( not)?(?= )");

    private final Sequence sequence;
    private final Map<String, String> said = new LinkedHashMap<>();
    private final Map<String, String> opposite = new LinkedHashMap<>();
    private final boolean tags;

    /**
     * Words for a sequence.
     *
     * @param tags whether contacts and outputs bear theirs, as they must where no list stands beside
     */
    private Narrative(Sequence sequence, boolean tags) {
        this.sequence = sequence;
        this.tags = tags;
        sequence.inputs().forEach(i -> said.put(i.name(), tagged(i.words(), i.tag()) + ": " + i.good()));
        sequence.buttons().forEach(b -> said.put("press_" + b.name(), b.words() + " is pressed"));
        sequence.buttons().stream().filter(Sequence.Button::opensWhenPressed).forEach(b -> {
            said.put("down_" + b.name(), b.words() + " is down, or its wire is broken");
            opposite.put("down_" + b.name(), b.words() + " is not down");
        });
        sequence.inputs().forEach(i -> opposite.put(i.name(), tagged(i.words(), i.tag()) + ": " + i.bad()));
        sequence.outputs().forEach(o -> said.put(o.name(), tagged(o.words(), o.tag()) + ": " + o.on()));
        sequence.outputs().forEach(o -> opposite.put(o.name(), tagged(o.words(), o.tag()) + ": " + o.off()));
        sequence.rules().forEach(r -> said.put(r.name(), r.words()));
        sequence.rules().forEach(r -> opposite.put(r.name(), not(r.words())));
        sequence.lamps().forEach(l -> said.put(l.name(), "lamp " + l.words() + " is lit"));
        sequence.lamps().forEach(l -> opposite.put(l.name(), "lamp " + l.words() + " is not lit"));
        if (sequence.lamps().stream().anyMatch(l -> l.name().equals("pump"))) {
            said.put("pump", "a producer runs");
            opposite.put("pump", "no producer runs");
        }
        sequence.buttons().forEach(b -> opposite.put("press_" + b.name(), b.words() + " is not pressed"));
        sequence.steps().forEach(s -> opposite.put("in_" + s.name(), "not in step " + spaced(s.name())));
        sequence.causes().forEach(c -> said.put(c.name(), c.message() + " stands"));
        sequence.steps().forEach(s -> said.put("in_" + s.name(), "in step " + spaced(s.name())));
        said.put("trip", "a fault is latched");
        opposite.put("trip", "no fault is latched");
        said.put("time_out", "its time is out");
        said.put("first_scan", "power has returned");
    }

    /** A part with its entries. */
    public record Part(String title, List<Entry> entries) {}

    /** One step, cause, signal or lamp: its name and what is to be said about it, a line each. */
    public record Entry(String title, List<String> lines) {}

    /** The parts in their order. */
    public static List<Part> of(Sequence sequence) {
        Narrative narrative = new Narrative(sequence, true);
        ReleasedBy released = ReleasedBy.of(sequence);
        return List.of(
                new Part("Steps", sequence.steps().stream().map(narrative::step).toList()),
                new Part(
                        "Causes",
                        sequence.causes().stream()
                                .map(c -> narrative.cause(c, released))
                                .toList()),
                new Part(
                        "Signals with a memory or a time",
                        sequence.rules().stream().map(narrative::rule).toList()),
                new Part("Lamps", sequence.lamps().stream().map(narrative::lamp).toList()));
    }

    private Entry step(Sequence.Step step) {
        List<String> lines = new ArrayList<>();
        List<String> sentences = new ArrayList<>(List.of(capital(step.words()) + "."));
        if (!step.on().isEmpty()) {
            sentences.add("Driven: " + driven(step.on()) + ".");
        }
        if (!step.keep().isEmpty()) {
            sentences.add("As before, never switched on here: " + names(step.keep()) + ".");
        }
        step.time().ifPresent(t -> sentences.add("Its time is " + Lists.time(sequence, t) + "."));
        lines.add(String.join(" ", sentences));
        step.exits().forEach(e -> lines.add("→ " + spaced(e.to()) + " when " + when(e.when()) + "."));
        return new Entry(capital(spaced(step.name())), lines);
    }

    private Entry cause(Sequence.Cause cause, ReleasedBy released) {
        String demands = cause.demands().entrySet().stream()
                .map(d -> tagged(sequence.output(d.getKey())) + ": " + d.getValue())
                .collect(Collectors.joining(", "));
        return new Entry(
                cause.message(),
                List.of(
                        "When " + when(cause.when()) + ". "
                                + (demands.isEmpty()
                                        ? "It demands nothing of the outputs. "
                                        : "It demands: " + demands + ". ")
                                + released.sentence(cause),
                        "If nobody acts: " + cause.consequence() + ". The operator: " + cause.response() + "."));
    }

    private String tagged(Sequence.Output output) {
        return tagged(output.words(), output.tag());
    }

    private String tagged(String words, String tag) {
        return tags ? words + " " + tag : words;
    }

    private Entry rule(Sequence.Rule rule) {
        List<String> lines = new ArrayList<>(List.of(capital(rule.words()) + "."));
        condition(rule).forEach(l -> lines.add(l + "."));
        return new Entry(capital(spaced(rule.name())), lines);
    }

    private List<String> condition(Sequence.Rule rule) {
        if (rule instanceof Sequence.Rule.Is is) {
            return List.of("When " + when(is.when()));
        }
        if (rule instanceof Sequence.Rule.After after) {
            return List.of(
                    "When for " + Lists.time(sequence, after.timer()) + " without a break " + when(after.when()));
        }
        if (rule instanceof Sequence.Rule.InAll sum) {
            return List.of(
                    "When for " + Lists.time(sequence, sum.timer()) + " in all " + when(sum.when())
                            + "; stands still meanwhile",
                    "Forgotten when " + when(sum.forget()));
        }
        if (rule instanceof Sequence.Rule.Times times) {
            return List.of(
                    "When it was so " + times.limit() + " times: " + when(times.event()),
                    "Forgotten when " + when(times.forget()));
        }
        Sequence.Rule.Latch latch = (Sequence.Rule.Latch) rule;
        return Stream.of(
                        "Set when " + when(latch.set()),
                        "Cleared when " + when(latch.reset()),
                        latch.keptWithoutPower() ? "Kept without power" : "",
                        latch.startsOn() ? "Set when power comes on" : "")
                .filter(l -> !l.isEmpty())
                .toList();
    }

    private Entry lamp(Sequence.Lamp lamp) {
        return new Entry(
                tagged(lamp.words(), lamp.tag()),
                List.of(capital(lamp.colour()) + (lamp.flashes() ? ", flashing" : "") + "; lit when "
                        + when(lamp.when()) + "."));
    }

    private String driven(List<String> outputs) {
        return outputs.stream()
                .map(o -> tagged(sequence.output(o)) + ": " + sequence.output(o).on())
                .collect(Collectors.joining(", "));
    }

    private String names(List<String> outputs) {
        return outputs.stream().map(o -> tagged(sequence.output(o))).collect(Collectors.joining(", "));
    }

    /** A condition in words, as it stands after "when", without tags. */
    public static String when(Sequence sequence, Expr condition) {
        return new Narrative(sequence, false).when(condition);
    }

    /** Two things are joined; more are listed. */
    private String when(Expr expr) {
        List<Expr> terms = expr.terms();
        if (terms.size() < 3) {
            return words(expr);
        }
        return (expr instanceof Expr.And ? "all of this is so: " : "any of this is so: ")
                + terms.stream().map(this::inner).collect(Collectors.joining("; "));
    }

    private String words(Expr expr) {
        if (expr instanceof Expr.Constant constant) {
            return constant.value() ? "always" : "never";
        }
        if (expr instanceof Expr.Name name) {
            return said.getOrDefault(name.name(), spaced(name.name()));
        }
        if (expr instanceof Expr.Not not) {
            return opposite(not.of());
        }
        String joint = expr instanceof Expr.And ? " and " : " or ";
        return expr.terms().stream().map(this::inner).collect(Collectors.joining(joint));
    }

    /** What is joined in itself stands in brackets. */
    private String inner(Expr term) {
        String words = words(term);
        return term.terms().isEmpty() && !JOINED.matcher(words).find() ? words : "(" + words + ")";
    }

    /** What a signal says, said of the opposite: "the bag is full", "the bag is not full". */
    static String not(String words) {
        Matcher verb = VERB.matcher(words);
        if (!verb.find()) {
            return "not: " + words;
        }
        return verb.group(2) == null
                ? words.substring(0, verb.end(1)) + " not" + words.substring(verb.end(1))
                : words.substring(0, verb.end(1)) + words.substring(verb.end(2));
    }

    private String opposite(Expr of) {
        if (of instanceof Expr.Name name) {
            return opposite.getOrDefault(name.name(), "not " + words(of));
        }
        return "not (" + words(of) + ")";
    }

    /** A name as it stands in a sentence; what it means is said once, under its own head. */
    static String spaced(String name) {
        return name.replace('_', ' ');
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
