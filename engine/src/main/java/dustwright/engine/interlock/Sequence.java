package dustwright.engine.interlock;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A control sequence as a sequence file says it: devices, times, rules, causes with what each demands, steps and lamps. The meaning of
 * every part, scan by scan, is made in {@link ScanProgram}.
 *
 * @param title what it is for
 * @param options choices it was made for, by name
 * @param scan_s usual time from scan to scan [s]
 * @param safety safety functions, by what risk each is asked for and how it is built; the search does not read them
 */
public record Sequence(
        String title,
        Map<String, String> options,
        double scan_s,
        List<Input> inputs,
        List<Button> buttons,
        List<Output> outputs,
        List<Timer> timers,
        List<Rule> rules,
        List<Cause> causes,
        List<Step> steps,
        List<Lamp> lamps,
        List<SafetyFunction> safety) {
    public Sequence {
        options = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(options));
        inputs = List.copyOf(inputs);
        buttons = List.copyOf(buttons);
        outputs = List.copyOf(outputs);
        timers = List.copyOf(timers);
        rules = List.copyOf(rules);
        causes = List.copyOf(causes);
        steps = List.copyOf(steps);
        lamps = List.copyOf(lamps);
        safety = List.copyOf(safety);
    }

    /** A sequence that states no safety functions. */
    public Sequence(
            String title,
            Map<String, String> options,
            double scan_s,
            List<Input> inputs,
            List<Button> buttons,
            List<Output> outputs,
            List<Timer> timers,
            List<Rule> rules,
            List<Cause> causes,
            List<Step> steps,
            List<Lamp> lamps) {
        this(title, options, scan_s, inputs, buttons, outputs, timers, rules, causes, steps, lamps, List.of());
    }

    /**
     * A contact that is closed, or a signal that is there, when all is well: a broken wire reads as the bad word.
     *
     * @param good the word for 1
     * @param bad the word for 0
     * @param filter time for which it must have been bad before it is taken as bad; good counts at once
     */
    public record Input(String name, String tag, String words, String good, String bad, Optional<String> filter) {}

    /** A push button; it acts once, when it is pressed. Order is rank: of two pressed in one scan the first acts, the other is dropped. */
    public record Button(String name, String tag, String words, boolean opensWhenPressed) {}

    /**
     * Something the controller drives; without power it is off.
     *
     * @param stop the word a cause uses to forbid it at once
     * @param offWhen further condition that keeps it off
     * @param neverWith outputs that may not be on in the same step
     */
    public record Output(
            String name,
            String tag,
            String words,
            String on,
            String off,
            String stop,
            Expr offWhen,
            List<String> neverWith) {}

    /** A time with the range it may be set in. */
    public record Timer(String name, double time_s, double least_s, double greatest_s, String words) {}

    /** A signal with a memory or a name of its own. */
    public sealed interface Rule {
        /** Name of the signal. */
        String name();

        /** What it says. */
        String words();

        /** True when the condition is. */
        record Is(String name, Expr when, String words) implements Rule {}

        /** True when the condition has been true for the time without a break. */
        record After(String name, Expr when, String timer, String words) implements Rule {}

        /** True when the condition has been true for the time in all, since it was last forgotten. */
        record InAll(String name, Expr when, String timer, Expr forget, String words) implements Rule {}

        /** Set by one condition, else cleared by another, else as it was; kept over a loss of power if so said. */
        record Latch(String name, Expr set, Expr reset, boolean keptWithoutPower, boolean startsOn, String words)
                implements Rule {}

        /** True once the condition has been true so often, until it is forgotten. */
        record Times(String name, Expr event, int limit, Expr forget, String words) implements Rule {}
    }

    /** How soon a person must act. */
    public enum Priority {
        /** At once. */
        HIGH,
        /** Within minutes. */
        MEDIUM,
        /** Within the shift. */
        LOW,
        /** Nothing to do: not an alarm. */
        STATUS
    }

    /**
     * Something that demands something of the outputs.
     *
     * @param demands word by output; the output's own stop word forbids it at once, other words say what the steps do
     * @param latched kept until RESET is pressed while it is absent
     * @param message what the operator reads
     * @param consequence what happens if nobody acts
     * @param response what the operator does
     */
    public record Cause(
            String name,
            Expr when,
            Map<String, String> demands,
            boolean latched,
            Priority priority,
            String message,
            String consequence,
            String response) {
        public Cause {
            demands = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(demands));
        }
    }

    /**
     * A step.
     *
     * @param on outputs switched on in it
     * @param keep outputs that stay on if they were on
     * @param time time after which {@code time_out} is true in its exits
     */
    public record Step(
            String name, String words, List<String> on, List<String> keep, Optional<String> time, List<Exit> exits) {
        public Step {
            on = List.copyOf(on);
            keep = List.copyOf(keep);
            exits = List.copyOf(exits);
        }
    }

    /** A way out of a step; the first whose condition is true is taken. */
    public record Exit(String to, Expr when) {}

    /** A lamp. */
    public record Lamp(String name, String tag, String colour, boolean flashes, String words, Expr when) {}

    /** The time of this name. */
    public Timer timer(String name) {
        return timers.stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }

    /** The output of this name. */
    public Output output(String name) {
        return outputs.stream().filter(o -> o.name().equals(name)).findFirst().orElseThrow();
    }

    /** The step of this name. */
    public Step step(String name) {
        return steps.stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
    }

    /** The same with other rules. */
    Sequence withRules(List<Rule> others) {
        return new Sequence(
                title, options, scan_s, inputs, buttons, outputs, timers, others, causes, steps, lamps, safety);
    }

    /** The contacts that bring a cause about: by being bad, or, where they only show what the plant does, by showing it. */
    public List<Input> broughtAboutBy(Cause cause) {
        Set<String> names = new Bringing(this).contacts(cause.when());
        return inputs.stream().filter(i -> names.contains(i.name())).toList();
    }

    /** The contacts a condition comes from, itself or by way of the rules that set what it names. */
    List<Input> contactsBehind(Expr condition) {
        Set<String> names = namesBehind(condition);
        return inputs.stream().filter(i -> names.contains(i.name())).toList();
    }

    /** What a condition names, and what is named by the rules that set it. */
    Set<String> namesBehind(Expr condition) {
        Set<String> names = new LinkedHashSet<>(condition.names());
        for (List<String> open = List.copyOf(names); !open.isEmpty(); ) {
            Set<String> further = new LinkedHashSet<>();
            for (Rule rule : rules) {
                if (open.contains(rule.name())) {
                    further.addAll(Rules.conditions(rule).get(0).names());
                }
            }
            further.removeAll(names);
            names.addAll(further);
            open = List.copyOf(further);
        }
        return names;
    }

    /** Every name a condition may use, with what it means where it comes from. */
    public Stream<String> names() {
        return Stream.of(
                        Stream.of("first_scan", "trip"),
                        inputs.stream().map(Input::name),
                        buttons.stream().map(b -> "press_" + b.name()),
                        buttons.stream().filter(Button::opensWhenPressed).map(b -> ScanProgram.down(b.name())),
                        rules.stream().map(Rule::name),
                        causes.stream().map(Cause::name),
                        outputs.stream().map(Output::name),
                        outputs.stream().map(o -> "stops_" + o.name()),
                        lamps.stream().map(Lamp::name),
                        steps.stream().map(s -> "in_" + s.name()))
                .flatMap(s -> s);
    }
}
