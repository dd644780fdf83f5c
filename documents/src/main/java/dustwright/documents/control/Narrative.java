package dustwright.documents.control;

import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.Sequence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The sequence of operations in sentences, made from the same fields as the program. */
public final class Narrative {
    private final Sequence sequence;
    private final Map<String, String> said = new LinkedHashMap<>();

    private Narrative(Sequence sequence) {
        this.sequence = sequence;
        sequence.inputs().forEach(i -> said.put(i.name(), i.words() + " " + i.good()));
        sequence.buttons().forEach(b -> said.put("press_" + b.name(), b.words() + " is pressed"));
        sequence.outputs().forEach(o -> said.put(o.name(), o.words() + " " + o.on()));
        sequence.rules().forEach(r -> said.put(r.name(), r.words()));
        sequence.causes().forEach(c -> said.put(c.name(), c.message() + " stands"));
        sequence.steps().forEach(s -> said.put("in_" + s.name(), "step " + s.name()));
        said.put("trip", "a fault is latched");
        said.put("time_out", "its time is out");
    }

    /** A part with its paragraphs. */
    public record Part(String title, List<String> paragraphs) {}

    /** The parts in their order. */
    public static List<Part> of(Sequence sequence) {
        Narrative narrative = new Narrative(sequence);
        return List.of(
                new Part("Steps", sequence.steps().stream().map(narrative::step).toList()),
                new Part(
                        "Causes",
                        sequence.causes().stream().map(narrative::cause).toList()),
                new Part(
                        "Signals with a memory or a time",
                        sequence.rules().stream().map(narrative::rule).toList()),
                new Part("Lamps", sequence.lamps().stream().map(narrative::lamp).toList()));
    }

    private String step(Sequence.Step step) {
        List<String> sentences = new ArrayList<>();
        sentences.add(capital(step.name().replace('_', ' ')) + ": " + step.words() + ".");
        if (!step.on().isEmpty()) {
            sentences.add("On: " + names(step.on()) + ".");
        }
        if (!step.keep().isEmpty()) {
            sentences.add("Stays as it was: " + names(step.keep()) + ".");
        }
        step.time().ifPresent(t -> sentences.add("Its time is " + Lists.time(sequence, t) + "."));
        step.exits().forEach(e -> sentences.add("To " + e.to().replace('_', ' ') + " when " + words(e.when()) + "."));
        return String.join(" ", sentences);
    }

    private String cause(Sequence.Cause cause) {
        String demands = cause.demands().entrySet().stream()
                .map(d -> sequence.output(d.getKey()).words() + " " + d.getValue())
                .collect(Collectors.joining(", "));
        return cause.message() + ": when " + words(cause.when()) + ". "
                + (demands.isEmpty() ? "It demands nothing of the outputs. " : "It demands: " + demands + ". ")
                + (cause.latched() ? "Latched until RESET is pressed while it is absent. " : "It goes with its cause. ")
                + "The operator: " + cause.response() + ".";
    }

    private String rule(Sequence.Rule rule) {
        return capital(rule.words()) + " (" + rule.name() + "): " + condition(rule) + ".";
    }

    private String condition(Sequence.Rule rule) {
        if (rule instanceof Sequence.Rule.Is is) {
            return "when " + words(is.when());
        }
        if (rule instanceof Sequence.Rule.After after) {
            return "when for " + Lists.time(sequence, after.timer()) + " without a break " + words(after.when());
        }
        if (rule instanceof Sequence.Rule.InAll sum) {
            return "when for " + Lists.time(sequence, sum.timer()) + " in all " + words(sum.when())
                    + "; forgotten when " + words(sum.forget());
        }
        if (rule instanceof Sequence.Rule.Times times) {
            return "when " + times.limit() + " times " + words(times.event()) + "; forgotten when "
                    + words(times.forget());
        }
        Sequence.Rule.Latch latch = (Sequence.Rule.Latch) rule;
        return "set when " + words(latch.set()) + "; cleared when " + words(latch.reset())
                + (latch.keptWithoutPower() ? "; kept without power" : "")
                + (latch.startsOn() ? "; set when power comes on" : "");
    }

    private String lamp(Sequence.Lamp lamp) {
        return capital(lamp.colour()) + (lamp.flashes() ? ", flashing" : "") + ", " + lamp.words() + ": lit when "
                + words(lamp.when()) + ".";
    }

    private String names(List<String> outputs) {
        return outputs.stream().map(o -> sequence.output(o).words()).collect(Collectors.joining(", "));
    }

    private String words(Expr expr) {
        if (expr instanceof Expr.Constant constant) {
            return constant.value() ? "always" : "never";
        }
        if (expr instanceof Expr.Name name) {
            return said.getOrDefault(name.name(), name.name().replace('_', ' '));
        }
        if (expr instanceof Expr.Not not) {
            return opposite(not.of());
        }
        String joint = expr instanceof Expr.And ? " and " : " or ";
        return expr.terms().stream()
                .map(t -> t.terms().isEmpty() ? words(t) : "(" + words(t) + ")")
                .collect(Collectors.joining(joint));
    }

    private String opposite(Expr of) {
        if (of instanceof Expr.Name name) {
            Optional<Sequence.Input> input = sequence.inputs().stream()
                    .filter(i -> i.name().equals(name.name()))
                    .findFirst();
            if (input.isPresent()) {
                return input.get().words() + " " + input.get().bad();
            }
            return "not \"" + words(of) + "\"";
        }
        return "not (" + words(of) + ")";
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
