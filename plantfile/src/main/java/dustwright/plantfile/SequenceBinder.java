package dustwright.plantfile;

import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.ExprText;
import dustwright.engine.interlock.PerformanceLevel.Avoidance;
import dustwright.engine.interlock.PerformanceLevel.Category;
import dustwright.engine.interlock.PerformanceLevel.Exposure;
import dustwright.engine.interlock.PerformanceLevel.Severity;
import dustwright.engine.interlock.SafetyFunction;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.Frequency;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Units;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Makes a {@link Sequence} of checked keys; conditions are read here, each fault at its own place in the line. */
final class SequenceBinder {
    /** Categories as the standard writes them. */
    static final Map<Category, String> CATEGORIES = new EnumMap<>(
            Map.of(Category.B, "B", Category.ONE, "1", Category.TWO, "2", Category.THREE, "3", Category.FOUR, "4"));

    private final Section top;
    private final SourceMap lines;
    private final Faults faults;

    SequenceBinder(Section top, SourceMap lines, Faults faults) {
        this.top = top;
        this.lines = lines;
        this.faults = faults;
    }

    Sequence sequence() {
        if (top.namedSections("steps").isEmpty()) {
            fault("steps", "a sequence without a step", "at least one step");
        }
        return new Sequence(
                text(top, "title"),
                words(top.named("options")),
                top.get("scan", Duration.class).si(),
                top.namedSections("inputs").stream().map(this::input).toList(),
                top.namedSections("buttons").stream().map(this::button).toList(),
                top.namedSections("outputs").stream().map(this::output).toList(),
                top.namedSections("times").stream().map(this::timer).toList(),
                top.namedSections("rules").stream().map(this::rule).toList(),
                top.namedSections("causes").stream().map(this::cause).toList(),
                top.namedSections("steps").stream().map(this::step).toList(),
                top.namedSections("lamps").stream().map(this::lamp).toList(),
                top.namedSections("safety").stream().map(this::safety).toList());
    }

    private SafetyFunction safety(Section s) {
        Optional<Category> category = s.find("category", String.class)
                .flatMap(written -> CATEGORIES.entrySet().stream()
                        .filter(c -> c.getValue().equals(written))
                        .map(Map.Entry::getKey)
                        .findFirst());
        List<Section> channels = s.sections("channels");
        if (category.isPresent() && !channels.isEmpty() && channels.size() != SafetyFunction.channels(category.get())) {
            fault(
                    s.path() + ".channels",
                    channels.size() + (channels.size() == 1 ? " channel" : " channels") + " in category "
                            + text(s, "category"),
                    "one channel in categories B, 1 and 2 (the test channel is not stated), two in 3 and 4");
        }
        Optional<Integer> points = s.find("common cause", Integer.class);
        return new SafetyFunction(
                s.id(),
                text(s, "what"),
                Severity.valueOf(text(s, "severity")),
                Exposure.valueOf(text(s, "exposure")),
                Avoidance.valueOf(text(s, "avoidance")),
                category,
                points.isPresent() ? OptionalInt.of(points.get()) : OptionalInt.empty(),
                channels.stream()
                        .map(c -> c.sections("parts").stream().map(this::part).toList())
                        .toList());
    }

    private SafetyFunction.Part part(Section s) {
        if (s.has("B10d") != s.has("operated")) {
            fault(
                    s.path(),
                    "B10d and operated go together",
                    "how many operations it bears and how often it is operated, or its MTTFd");
        }
        if (s.has("B10d") && s.has("MTTFd")) {
            fault(s.path() + ".MTTFd", "MTTFd beside B10d: one follows from the other", "one of the two");
        }
        return new SafetyFunction.Part(
                text(s, "what"),
                given(s.find("B10d", Ratio.class).map(Ratio::value)),
                given(s.find("operated", Frequency.class).map(f -> f.si() * Units.YEAR_s)),
                given(s.find("MTTFd", Duration.class).map(d -> d.si() / Units.YEAR_s)),
                given(s.find("coverage", Ratio.class).map(Ratio::value)));
    }

    private static OptionalDouble given(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    private Sequence.Input input(Section s) {
        return new Sequence.Input(
                s.id(),
                text(s, "tag"),
                text(s, "what"),
                text(s, "good"),
                text(s, "bad"),
                s.find("filter", String.class));
    }

    private Sequence.Button button(Section s) {
        return new Sequence.Button(
                s.id(), text(s, "tag"), text(s, "what"), text(s, "contact").equals("opens"));
    }

    private Sequence.Output output(Section s) {
        return new Sequence.Output(
                s.id(),
                text(s, "tag"),
                text(s, "what"),
                text(s, "on"),
                text(s, "off"),
                text(s, "stop"),
                condition(s, "off when").orElse(Expr.Constant.NO),
                names(s, "never with"));
    }

    private Sequence.Timer timer(Section s) {
        double time_s = s.get("time", Duration.class).si();
        double least_s = s.get("from", Duration.class).si();
        double greatest_s = s.get("to", Duration.class).si();
        if (time_s == 0 || least_s == 0) {
            fault(s.path() + (time_s == 0 ? ".time" : ".from"), "a time of zero", "a time longer than one scan");
        } else if (!(least_s <= time_s && time_s <= greatest_s)) {
            fault(s.path() + ".time", "the time is outside its own range", "a time between \"from\" and \"to\"");
        }
        return new Sequence.Timer(s.id(), time_s, least_s, greatest_s, text(s, "what"));
    }

    private Sequence.Rule rule(Section s) {
        String what = text(s, "what");
        Optional<Expr> set = condition(s, "set when");
        Optional<Expr> when = condition(s, "when");
        long ways = List.of("after", "in all", "times").stream().filter(s::has).count() + (set.isPresent() ? 1 : 0);
        if (set.isPresent() == when.isPresent() || ways > 1 || s.has("reset when") != set.isPresent()) {
            fault(
                    s.path(),
                    "a rule that is neither one kind nor another",
                    "when; when with after, in all or times; or set when with reset when");
        }
        boolean counts = s.has("in all") || s.has("times");
        if (counts != s.has("forget when")) {
            fault(
                    s.path(),
                    counts ? "it counts but is never told to forget" : "it forgets but counts nothing",
                    "\"forget when\" together with \"in all\" or \"times\"");
        }
        Expr forget = condition(s, "forget when").orElse(Expr.Constant.NO);
        Expr is = when.orElse(Expr.Constant.NO);
        if (s.has("after")) {
            return new Sequence.Rule.After(s.id(), is, text(s, "after"), what);
        }
        if (s.has("in all")) {
            return new Sequence.Rule.InAll(s.id(), is, text(s, "in all"), forget, what);
        }
        if (s.has("times")) {
            return new Sequence.Rule.Times(s.id(), is, s.get("times", Integer.class), forget, what);
        }
        return set.<Sequence.Rule>map(e -> new Sequence.Rule.Latch(
                        s.id(),
                        e,
                        condition(s, "reset when").orElse(Expr.Constant.NO),
                        s.find("kept without power", Boolean.class).orElse(false),
                        s.find("starts", String.class).orElse("off").equals("on"),
                        what))
                .orElseGet(() -> new Sequence.Rule.Is(s.id(), is, what));
    }

    private Sequence.Cause cause(Section s) {
        return new Sequence.Cause(
                s.id(),
                condition(s, "when").orElse(Expr.Constant.NO),
                words(s.named("demands")),
                s.find("latched", Boolean.class).orElse(false),
                Sequence.Priority.valueOf(text(s, "priority").toUpperCase(Locale.ROOT)),
                text(s, "message"),
                text(s, "consequence"),
                text(s, "response"));
    }

    private Sequence.Step step(Section s) {
        return new Sequence.Step(
                s.id(),
                text(s, "what"),
                names(s, "on"),
                names(s, "keep"),
                s.find("time", String.class),
                s.sections("exits").stream()
                        .map(e -> new Sequence.Exit(
                                text(e, "to"), condition(e, "when").orElse(Expr.Constant.NO)))
                        .toList());
    }

    private Sequence.Lamp lamp(Section s) {
        return new Sequence.Lamp(
                s.id(),
                text(s, "tag"),
                text(s, "colour"),
                s.find("flashes", Boolean.class).orElse(false),
                text(s, "shows"),
                condition(s, "when").orElse(Expr.Constant.NO));
    }

    private Optional<Expr> condition(Section s, String key) {
        return s.find(key, String.class).map(text -> {
            try {
                return ExprText.read(text);
            } catch (ExprText.Bad bad) {
                String path = s.path() + "." + key;
                Span span = lines.value(path).orElse(s.span());
                faults.add(new Fault(
                        span.line(),
                        span.column() + (text.contains("\n") ? 0 : bad.column),
                        path,
                        String.valueOf(bad.getMessage()),
                        "names joined by and, or, not and brackets",
                        Optional.empty()));
                return Expr.Constant.NO;
            }
        });
    }

    private String text(Section s, String key) {
        String text = s.get(key, String.class);
        if (text.isBlank()) {
            fault(s.path().isEmpty() ? key : s.path() + "." + key, "nothing is written here", "words that people read");
        }
        return text;
    }

    private static List<String> names(Section s, String key) {
        return s.items(key).stream().map(String::valueOf).toList();
    }

    private static Map<String, String> words(Map<?, ?> named) {
        Map<String, String> words = new LinkedHashMap<>();
        named.forEach((k, v) -> words.put(String.valueOf(k), String.valueOf(v)));
        return words;
    }

    private void fault(String path, String message, String expected) {
        faults.add(lines.value(path).orElse(top.span()), path, message, expected);
    }
}
