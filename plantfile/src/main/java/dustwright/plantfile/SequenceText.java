package dustwright.plantfile;

import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.SafetyFunction;
import dustwright.engine.interlock.Sequence;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Writes a sequence as the text of a sequence file, with a line of explanation over each section. */
public final class SequenceText {
    private final StringBuilder text = new StringBuilder();

    private SequenceText() {}

    /** The file's text; reading it gives the same sequence. */
    public static String of(Sequence sequence) {
        SequenceText writer = new SequenceText();
        writer.write(sequence);
        return writer.text.toString();
    }

    private void write(Sequence s) {
        text.append(
                "sequence: 1    # a design aid: local code, the authority having jurisdiction and a licensed engineer decide\n");
        text.append("title: ").append(Scalars.written(s.title())).append('\n');
        text.append("scan: ").append(time(s.scan_s())).append('\n');
        section("options", "what it was made for; a note, nothing reads it");
        s.options()
                .forEach((k, v) -> text.append("  ")
                        .append(k)
                        .append(": ")
                        .append(Scalars.written(v))
                        .append('\n'));
        section("inputs", "contacts; 1 is good, 0 is bad, and a broken wire reads 0");
        s.inputs().forEach(this::input);
        section("buttons", "in order of rank: of two pressed in one scan the upper acts, the other is dropped");
        s.buttons()
                .forEach(b -> line(
                        b.name(),
                        "tag",
                        b.tag(),
                        "what",
                        b.words(),
                        "contact",
                        b.opensWhenPressed() ? "opens" : "closes"));
        section("outputs", "1 is energised; stop is the word with which a cause forbids it");
        s.outputs().forEach(this::output);
        section("times", "with the range each may be set in");
        s.timers()
                .forEach(t -> line(
                        t.name(),
                        "time",
                        time(t.time_s()),
                        "from",
                        time(t.least_s()),
                        "to",
                        time(t.greatest_s()),
                        "what",
                        t.words()));
        section("rules", "from top to bottom in every scan; what stands further down is still that of the scan before");
        s.rules().forEach(this::rule);
        section("causes", "every output takes the strictest demand of all causes that are present");
        s.causes().forEach(this::cause);
        section("steps", "the first exit whose condition is true is taken; outputs not named are off");
        s.steps().forEach(this::step);
        section("lamps", "after everything else");
        s.lamps()
                .forEach(l -> line(
                        l.name(),
                        "tag",
                        l.tag(),
                        "colour",
                        l.colour(),
                        "flashes",
                        l.flashes() ? "yes" : "",
                        "shows",
                        l.words(),
                        "when",
                        l.when().text()));
        if (!s.safety().isEmpty()) {
            section(
                    "safety",
                    "for the screening of their level; the risk assessment sets severity, exposure and avoidance, parts and category are yours to enter");
            s.safety().forEach(this::safety);
        }
    }

    private void safety(SafetyFunction f) {
        line(
                f.id(),
                "what",
                f.words(),
                "severity",
                f.severity().name(),
                "exposure",
                f.exposure().name(),
                "avoidance",
                f.avoidance().name(),
                "category",
                f.category().map(SequenceBinder.CATEGORIES::get).orElse(""),
                "common cause",
                f.points().isPresent() ? String.valueOf(f.points().getAsInt()) : "");
        if (!f.channels().isEmpty()) {
            text.append("    channels:\n");
        }
        for (List<SafetyFunction.Part> channel : f.channels()) {
            text.append("      - parts:\n");
            channel.forEach(this::part);
        }
    }

    private void part(SafetyFunction.Part part) {
        text.append("          - {what: ").append(flow(part.words()));
        part.b10d().ifPresent(b -> text.append(", B10d: ").append(plain(b)));
        part.operations_perYear()
                .ifPresent(n -> text.append(", operated: ").append(plain(n)).append(" /year"));
        part.mttfd_years()
                .ifPresent(y -> text.append(", MTTFd: ").append(plain(y)).append(" years"));
        part.coverage()
                .ifPresent(
                        c -> text.append(", coverage: ").append(plain(100 * c)).append(" %"));
        text.append("}\n");
    }

    /** To twelve digits, so that what is read back is written alike. */
    private static String plain(double value) {
        return new BigDecimal(value)
                .round(new MathContext(12))
                .stripTrailingZeros()
                .toPlainString();
    }

    private void section(String name, String explanation) {
        text.append('\n').append(name).append(":  # ").append(explanation).append('\n');
    }

    private void input(Sequence.Input i) {
        line(
                i.name(),
                "tag",
                i.tag(),
                "what",
                i.words(),
                "good",
                i.good(),
                "bad",
                i.bad(),
                "filter",
                i.filter().orElse(""));
    }

    private void output(Sequence.Output o) {
        line(
                o.name(),
                "tag",
                o.tag(),
                "what",
                o.words(),
                "on",
                o.on(),
                "off",
                o.off(),
                "stop",
                o.stop(),
                "off when",
                o.offWhen().equals(Expr.Constant.NO) ? "" : o.offWhen().text(),
                "never with",
                list(o.neverWith()));
    }

    private void rule(Sequence.Rule rule) {
        if (rule instanceof Sequence.Rule.Is is) {
            line(is.name(), "when", is.when().text(), "what", is.words());
        } else if (rule instanceof Sequence.Rule.After after) {
            line(after.name(), "when", after.when().text(), "after", after.timer(), "what", after.words());
        } else if (rule instanceof Sequence.Rule.InAll sum) {
            line(
                    sum.name(),
                    "when",
                    sum.when().text(),
                    "in all",
                    sum.timer(),
                    "forget when",
                    sum.forget().text(),
                    "what",
                    sum.words());
        } else if (rule instanceof Sequence.Rule.Times times) {
            line(
                    times.name(),
                    "when",
                    times.event().text(),
                    "times",
                    String.valueOf(times.limit()),
                    "forget when",
                    times.forget().text(),
                    "what",
                    times.words());
        } else if (rule instanceof Sequence.Rule.Latch latch) {
            line(
                    latch.name(),
                    "set when",
                    latch.set().text(),
                    "reset when",
                    latch.reset().text(),
                    "kept without power",
                    latch.keptWithoutPower() ? "yes" : "",
                    "starts",
                    latch.startsOn() ? "on" : "",
                    "what",
                    latch.words());
        }
    }

    private void cause(Sequence.Cause c) {
        StringBuilder demands = new StringBuilder();
        for (Map.Entry<String, String> demand : c.demands().entrySet()) {
            demands.append(demands.isEmpty() ? "{" : ", ")
                    .append(demand.getKey())
                    .append(": ")
                    .append(demand.getValue());
        }
        line(
                c.name(),
                "when",
                c.when().text(),
                "demands",
                demands.isEmpty() ? "" : demands + "}",
                "latched",
                c.latched() ? "yes" : "",
                "priority",
                c.priority().name().toLowerCase(Locale.ROOT),
                "message",
                c.message(),
                "consequence",
                c.consequence(),
                "response",
                c.response());
    }

    private void step(Sequence.Step step) {
        line(
                step.name(),
                "what",
                step.words(),
                "on",
                list(step.on()),
                "keep",
                list(step.keep()),
                "time",
                step.time().orElse(""));
        text.append("    exits:\n");
        step.exits()
                .forEach(e -> text.append("      - {to: ")
                        .append(e.to())
                        .append(", when: ")
                        .append(flow(e.when().text()))
                        .append("}\n"));
    }

    /** A name with its keys below it; keys without a value are left out. */
    private void line(String name, String... keysAndValues) {
        text.append("  ").append(name).append(":\n");
        for (int i = 0; i < keysAndValues.length; i += 2) {
            String value = keysAndValues[i + 1];
            if (!value.isEmpty()) {
                boolean collection = value.startsWith("{") || value.startsWith("[");
                text.append("    ")
                        .append(keysAndValues[i])
                        .append(": ")
                        .append(collection ? value : Scalars.written(value))
                        .append('\n');
            }
        }
    }

    private static String list(List<String> names) {
        return names.isEmpty() ? "" : "[" + String.join(", ", names) + "]";
    }

    private static String flow(String condition) {
        return Scalars.written(condition);
    }

    private static String time(double time_s) {
        return time_s == Math.rint(time_s) ? (long) time_s + " s" : time_s + " s";
    }
}
