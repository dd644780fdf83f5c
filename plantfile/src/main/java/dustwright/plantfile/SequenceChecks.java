package dustwright.plantfile;

import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.Reserved;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.interlock.TimelessLoops;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What only the whole file can tell: names that nothing declares, steps nobody reaches, outputs that contradict, loops without time.
 */
final class SequenceChecks {
    private static final Set<String> WORDS_OF_CONDITIONS =
            Set.of("and", "or", "not", "yes", "no", "trip", "time_out", "first_scan");

    /** Demands that forbid nothing at once; what they mean the steps do. */
    private static final List<String> WEAKER = List.of("limit", "run-on", "turns");

    private final Sequence sequence;
    private final SourceMap lines;
    private final Faults faults;
    private final Set<String> signals;
    private final Set<String> timers;
    private final Set<String> outputs;
    private final Set<String> steps;

    SequenceChecks(Sequence sequence, SourceMap lines, Faults faults) {
        this.sequence = sequence;
        this.lines = lines;
        this.faults = faults;
        signals = sequence.names().collect(Collectors.toCollection(LinkedHashSet::new));
        timers = sequence.timers().stream().map(Sequence.Timer::name).collect(Collectors.toSet());
        outputs = sequence.outputs().stream().map(Sequence.Output::name).collect(Collectors.toSet());
        steps = sequence.steps().stream().map(Sequence.Step::name).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    void check() {
        eachNameOnce();
        eachTagOnce();
        eachMessageOnce();
        whatTheProofKnowsByName();
        eachSignOnce();
        order();
        signs();
        sequence.buttons().forEach(this::button);
        sequence.inputs()
                .forEach(i -> i.filter().ifPresent(t -> known(t, timers, "time", "inputs." + i.name() + ".filter")));
        sequence.outputs().forEach(this::output);
        sequence.rules().forEach(this::rule);
        sequence.causes().forEach(this::cause);
        sequence.steps().forEach(this::step);
        sequence.lamps().forEach(l -> condition(l.when(), signals, "lamps." + l.name() + ".when"));
        if (faults.none()) {
            reach();
            loops();
        }
    }

    /** The plant that is searched turns, pulls and is vented by these names; without them nothing could be said about it. */
    private void whatTheProofKnowsByName() {
        needed(
                outputs.contains("vent_shut"),
                "outputs",
                "no output \"vent_shut\"",
                "\"vent_shut\" for what shuts the vent valve: search and rehearsal know it by this name");
        needed(
                signals.contains("pump"),
                "outputs",
                "no \"pump\"",
                "\"pump\" for the producer's contactor, or a lamp \"pump\" that is lit while any of several runs");
        needed(
                signals.contains("estop_ok"),
                "inputs",
                "no input \"estop_ok\"",
                "\"estop_ok\", the copy of the emergency stop chain: nothing is proven of a station without one");
        needed(
                sequence.causes().stream().noneMatch(Sequence.Cause::latched) || signals.contains("press_reset"),
                "buttons",
                "no button \"reset\", though causes are latched",
                "a button \"reset\", which clears them");
        needed(
                outputs.contains("valve") || !signals.contains("motion"),
                "outputs",
                "no output \"valve\", though a motion switch watches it",
                "\"valve\" for what drives rotary valve or gates: search and rehearsal know it by this name");
    }

    private void needed(boolean there, String section, String message, String expected) {
        if (!there) {
            keyFault(section, message, expected);
        }
    }

    /** Names of all sections stand in conditions, so no two may be the same. */
    private void eachNameOnce() {
        Map<String, String> first = new HashMap<>();
        sequence.inputs().forEach(i -> once(first, i.name(), "inputs"));
        sequence.buttons().forEach(b -> once(first, b.name(), "buttons"));
        sequence.outputs().forEach(o -> once(first, o.name(), "outputs"));
        sequence.rules().forEach(r -> once(first, r.name(), "rules"));
        sequence.causes().forEach(c -> once(first, c.name(), "causes"));
        sequence.lamps().forEach(l -> once(first, l.name(), "lamps"));
        sequence.steps().forEach(s -> once(first, "in_" + s.name(), "steps"));
    }

    private void once(Map<String, String> first, String name, String section) {
        String path = section + "." + (section.equals("steps") ? name.substring(3) : name);
        String earlier = first.putIfAbsent(name, section);
        if (earlier != null) {
            keyFault(path, "\"" + name + "\" is already the name of one of the " + earlier, "another name");
        }
        if (!name.matches("[a-z][a-z0-9_]*") || WORDS_OF_CONDITIONS.contains(name)) {
            keyFault(
                    path,
                    "\"" + name + "\" cannot stand in a condition",
                    "small letters, digits and _, and no word that conditions use");
        }
        Reserved.in(section.equals("steps") ? name.substring(3) : name)
                .filter(taken -> !(section.equals("steps") && taken.startsWith("_")))
                .ifPresent(taken -> keyFault(
                        path,
                        "\"" + name + "\" is or holds \"" + taken
                                + "\", of which the scan, the search and the exported block make names of their own",
                        "another name"));
    }

    private void eachTagOnce() {
        Map<String, String> first = new HashMap<>();
        sequence.inputs().forEach(i -> tag(first, i.tag(), "inputs." + i.name()));
        sequence.buttons().forEach(b -> tag(first, b.tag(), "buttons." + b.name()));
        sequence.outputs().forEach(o -> tag(first, o.tag(), "outputs." + o.name()));
        sequence.lamps().forEach(l -> tag(first, l.tag(), "lamps." + l.name()));
    }

    private void tag(Map<String, String> first, String tag, String path) {
        String earlier = first.putIfAbsent(tag, path);
        if (earlier != null) {
            valueFault(
                    path + ".tag",
                    "\"" + Names.shortened(tag) + "\" is already the tag of " + earlier,
                    "a tag of its own");
        }
    }

    /** Two causes with one message: nobody learns which. */
    private void eachMessageOnce() {
        Map<String, String> first = new HashMap<>();
        for (Sequence.Cause cause : sequence.causes()) {
            String path = "causes." + cause.name();
            String earlier = first.putIfAbsent(cause.message(), cause.name());
            if (earlier != null) {
                valueFault(
                        path + ".message",
                        "cause \"" + earlier + "\" already has this message, so nobody learns which of the two it is",
                        "a message of its own");
            }
            if (cause.latched() && cause.priority() == Sequence.Priority.STATUS) {
                valueFault(
                        path + ".priority",
                        "a latched cause waits for RESET, so somebody has to act on it",
                        "high, medium or low");
            }
        }
    }

    /** Two lamps with one sign: nobody learns which. */
    private void eachSignOnce() {
        Map<String, String> first = new HashMap<>();
        for (Sequence.Lamp lamp : sequence.lamps()) {
            String earlier = first.putIfAbsent(lamp.words(), lamp.name());
            if (earlier != null) {
                valueFault(
                        "lamps." + lamp.name() + ".shows",
                        "lamp \"" + earlier + "\" already has this sign, so nobody learns which of the two it is",
                        "a sign of its own");
            }
        }
    }

    /** Of two buttons in one scan the upper acts, of two messages the upper is read first. */
    private void order() {
        List<String> buttons =
                sequence.buttons().stream().map(Sequence.Button::name).toList();
        if (buttons.indexOf("stop") > 0) {
            keyFault(
                    "buttons.stop",
                    "STOP stands below \"" + buttons.get(0)
                            + "\": of two buttons pressed in one scan the upper acts and the other is dropped",
                    "\"stop\" as the first of the buttons");
        }
        sequence.causes().stream()
                .map(Sequence.Cause::name)
                .takeWhile(c -> !c.equals("fire"))
                .filter(c -> signals.contains("fire")
                        && !Set.of("estop", "isolation").contains(c))
                .findFirst()
                .ifPresent(c -> keyFault(
                        "causes.fire",
                        "the fire signal stands below \"" + c + "\": of several messages the upper is read first",
                        "it right below the emergency stop"));
    }

    /** A button with the sign of another, and a fault that is not red as IEC 60204-1 has it: who reads the panel does the wrong thing. */
    private void signs() {
        List<String> known = List.of("stop", "start", "reset");
        for (Sequence.Button button : sequence.buttons()) {
            known.stream()
                    .filter(other -> known.contains(button.name()) && !other.equals(button.name()))
                    .filter(other -> button.words().toLowerCase(Locale.ROOT).matches(".*\\b" + other + "\\b.*"))
                    .findFirst()
                    .ifPresent(other -> valueFault(
                            "buttons." + button.name() + ".what",
                            "button \"" + button.name() + "\" bears the sign of \"" + other + "\"",
                            "a sign that says what it does"));
        }
        sequence.lamps().stream()
                .filter(l -> l.name().equals("lamp_fault") && !l.colour().equals("red"))
                .forEach(l -> valueFault(
                        "lamps.lamp_fault.colour", "a fault that is " + l.colour() + " does not look like one", "red"));
    }

    /** IEC 60204-1 stops by taking power away, so that a broken wire stops too. */
    private void button(Sequence.Button button) {
        if (button.name().equals("stop") && !button.opensWhenPressed()) {
            valueFault(
                    "buttons.stop.contact", "a STOP that closes is a dead button when its wire is broken", "\"opens\"");
        }
        if (!button.name().equals("stop") && button.opensWhenPressed()) {
            valueFault(
                    "buttons." + button.name() + ".contact",
                    "a broken wire would press " + button.words() + " by itself",
                    "\"closes\": only STOP opens");
        }
    }

    private void output(Sequence.Output output) {
        String path = "outputs." + output.name();
        condition(output.offWhen(), signals, path + ".off when");
        output.neverWith().forEach(o -> known(o, outputs, "output", path + ".never with"));
    }

    private void rule(Sequence.Rule rule) {
        String path = "rules." + rule.name();
        if (rule instanceof Sequence.Rule.Is is) {
            condition(is.when(), signals, path + ".when");
        } else if (rule instanceof Sequence.Rule.After after) {
            condition(after.when(), signals, path + ".when");
            known(after.timer(), timers, "time", path + ".after");
        } else if (rule instanceof Sequence.Rule.InAll sum) {
            condition(sum.when(), signals, path + ".when");
            condition(sum.forget(), signals, path + ".forget when");
            known(sum.timer(), timers, "time", path + ".in all");
        } else if (rule instanceof Sequence.Rule.Times times) {
            condition(times.event(), signals, path + ".when");
            condition(times.forget(), signals, path + ".forget when");
        } else if (rule instanceof Sequence.Rule.Latch latch) {
            condition(latch.set(), signals, path + ".set when");
            condition(latch.reset(), signals, path + ".reset when");
        }
    }

    private void cause(Sequence.Cause cause) {
        String path = "causes." + cause.name();
        condition(cause.when(), signals, path + ".when");
        cause.demands().forEach((o, word) -> {
            known(o, outputs, "output", path + ".demands." + o);
            if (outputs.contains(o)) {
                demand(sequence.output(o), word, path + ".demands." + o);
            }
        });
    }

    /** A word that is not the output's stop word forbids nothing, so it must be one that is known to be weaker. */
    private void demand(Sequence.Output output, String word, String path) {
        if (!word.equals(output.stop()) && !WEAKER.contains(word)) {
            valueFault(
                    path,
                    "\"" + Names.shortened(word) + "\" is no demand on \"" + output.name() + "\"",
                    "\"" + output.stop() + "\", its stop word, or one of " + String.join(", ", WEAKER));
        }
    }

    private void step(Sequence.Step step) {
        String path = "steps." + step.name();
        step.on().forEach(o -> known(o, outputs, "output", path + ".on"));
        step.keep().forEach(o -> known(o, outputs, "output", path + ".keep"));
        step.time().ifPresent(t -> known(t, timers, "time", path + ".time"));
        Set<String> here = new LinkedHashSet<>(signals);
        step.time().ifPresent(t -> here.add("time_out"));
        for (int i = 0; i < step.exits().size(); i++) {
            Sequence.Exit exit = step.exits().get(i);
            known(exit.to(), steps, "step", path + ".exits[" + i + "].to");
            condition(exit.when(), here, path + ".exits[" + i + "].when");
        }
        contradictions(step, path);
    }

    private void contradictions(Sequence.Step step, String path) {
        for (String output : step.on()) {
            if (step.keep().contains(output)) {
                valueFault(
                        path + ".keep",
                        "\"" + output + "\" is both switched on and kept in this step",
                        "it in one of the two lists");
            }
            sequence.outputs().stream()
                    .filter(o -> o.name().equals(output))
                    .flatMap(o -> o.neverWith().stream())
                    .filter(o -> step.on().contains(o) || step.keep().contains(o))
                    .forEach(other -> valueFault(
                            path + ".on",
                            "\"" + output + "\" is on in this step together with \"" + other
                                    + "\", which it may never be",
                            "one of the two"));
        }
    }

    private void condition(Expr condition, Set<String> allowed, String path) {
        condition.names().forEach(n -> known(n, allowed, "device or signal", path));
    }

    private void known(String name, Collection<String> names, String kind, String path) {
        if (names.contains(name)) {
            return;
        }
        Span span = lines.value(path).orElseThrow();
        faults.add(new Fault(
                span.line(),
                span.column(),
                path,
                "there is no " + kind + " \"" + Names.shortened(name) + "\"",
                "a name that this file declares",
                Names.nearest(name, names).map(n -> "\"" + n + "\"")));
    }

    /** Every step must be led to from the first. */
    private void reach() {
        Set<String> reached = new HashSet<>();
        List<String> open = new ArrayList<>(List.of(sequence.steps().get(0).name()));
        while (!open.isEmpty()) {
            String step = open.remove(open.size() - 1);
            if (reached.add(step)) {
                sequence.step(step).exits().stream()
                        .filter(e -> !e.when().equals(Expr.Constant.NO))
                        .forEach(e -> open.add(e.to()));
            }
        }
        steps.stream()
                .filter(s -> !reached.contains(s))
                .forEach(s ->
                        keyFault("steps." + s, "no way leads to step \"" + s + "\"", "an exit to it in some step"));
    }

    private void loops() {
        TimelessLoops.of(sequence)
                .ifPresent(loop -> keyFault(
                        "steps." + loop.get(0),
                        "the steps " + String.join(", ", loop)
                                + " can follow each other for ever without time passing or anything happening",
                        "a time or a changing condition in one of their exits"));
    }

    private void keyFault(String path, String message, String expected) {
        faults.add(lines.key(path).orElseThrow(), path, message, expected);
    }

    private void valueFault(String path, String message, String expected) {
        faults.add(lines.value(path).orElseThrow(), path, message, expected);
    }
}
