package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * Sequences with one small slip each: a condition left out, a time that runs when it should not, a demand or a latch forgotten. Properties that
 * are worth something notice every one of them.
 */
final class Mutants {
    private final Sequence whole;
    private final Map<String, Sequence> mutants = new LinkedHashMap<>();

    Mutants(Sequence whole) {
        this.whole = whole;
    }

    /** Mutants by what was done to the sequence. */
    static Map<String, Sequence> of(Sequence whole) {
        Mutants mutants = new Mutants(whole);
        mutants.permissives();
        mutants.times();
        mutants.causes();
        mutants.latches();
        mutants.leftOut();
        mutants.counts();
        mutants.crosswise();
        mutants.litTooWidely();
        return mutants.mutants;
    }

    /** Every condition of every exit left out, one at a time. */
    private void permissives() {
        for (Sequence.Step step : whole.steps()) {
            for (int e = 0; e < step.exits().size(); e++) {
                int exit = e;
                weakened(step.exits().get(e).when())
                        .forEach((dropped, when) -> put(
                                "exit from " + step.name() + " to "
                                        + step.exits().get(exit).to() + " without " + dropped,
                                withStep(withExit(step, exit, when))));
            }
        }
    }

    /** Every time that runs while its condition is false instead of true. */
    private void times() {
        for (Sequence.Rule rule : whole.rules()) {
            if (rule instanceof Sequence.Rule.After after) {
                put(
                        "time inverted: " + rule.name(),
                        withRule(new Sequence.Rule.After(
                                after.name(), after.when().not(), after.timer(), after.words())));
            } else if (rule instanceof Sequence.Rule.InAll sum) {
                put(
                        "time inverted: " + rule.name(),
                        withRule(new Sequence.Rule.InAll(
                                sum.name(), sum.when().not(), sum.timer(), sum.forget(), sum.words())));
                put(
                        "forgotten too early: " + rule.name(),
                        withRule(new Sequence.Rule.InAll(
                                sum.name(),
                                sum.when(),
                                sum.timer(),
                                sum.forget().or(sum.when().not()),
                                sum.words())));
                put(
                        "never forgotten: " + rule.name(),
                        withRule(new Sequence.Rule.InAll(
                                sum.name(), sum.when(), sum.timer(), Expr.Constant.NO, sum.words())));
            }
        }
        for (Sequence.Step step : whole.steps()) {
            if (step.time().isPresent()) {
                put(
                        "time inverted: " + step.name(),
                        withStep(new Sequence.Step(
                                step.name(),
                                step.words(),
                                step.on(),
                                step.keep(),
                                step.time(),
                                step.exits().stream()
                                        .map(x -> new Sequence.Exit(
                                                x.to(),
                                                x.when().replace(n -> n.equals(Expr.name("time_out")) ? n.not() : n)))
                                        .toList())));
            }
        }
    }

    private void causes() {
        for (Sequence.Cause cause : whole.causes()) {
            weakened(cause.when())
                    .forEach((dropped, when) -> put(
                            "cause " + cause.name() + " without " + dropped,
                            withCause(new Sequence.Cause(
                                    cause.name(),
                                    when,
                                    cause.demands(),
                                    cause.latched(),
                                    cause.priority(),
                                    cause.message(),
                                    cause.consequence(),
                                    cause.response()))));
            if (cause.latched()) {
                put(
                        "not latched: " + cause.name(),
                        withCause(new Sequence.Cause(
                                cause.name(),
                                cause.when(),
                                cause.demands(),
                                false,
                                cause.priority(),
                                cause.message(),
                                cause.consequence(),
                                cause.response())));
            }
        }
    }

    private void latches() {
        for (Sequence.Rule rule : whole.rules()) {
            if (rule instanceof Sequence.Rule.Latch latch) {
                weakened(latch.set())
                        .forEach((dropped, set) -> put(
                                "set of " + rule.name() + " without " + dropped,
                                withRule(new Sequence.Rule.Latch(
                                        latch.name(),
                                        set,
                                        latch.reset(),
                                        latch.keptWithoutPower(),
                                        latch.startsOn(),
                                        latch.words()))));
                weakened(latch.reset())
                        .forEach((dropped, reset) -> put(
                                "reset of " + rule.name() + " without " + dropped,
                                withRule(new Sequence.Rule.Latch(
                                        latch.name(),
                                        latch.set(),
                                        reset,
                                        latch.keptWithoutPower(),
                                        latch.startsOn(),
                                        latch.words()))));
            } else if (rule instanceof Sequence.Rule.Is is) {
                weakened(is.when())
                        .forEach((dropped, when) -> put(
                                "rule " + rule.name() + " without " + dropped,
                                withRule(new Sequence.Rule.Is(is.name(), when, is.words()))));
            }
        }
    }

    /** Counts that never go up, that go up all the time, that are never forgotten or at once. */
    private void counts() {
        for (Sequence.Rule rule : whole.rules()) {
            if (rule instanceof Sequence.Rule.Times times) {
                put("never counted: " + rule.name(), withRule(count(times, Expr.Constant.NO, times.forget())));
                put("always counted: " + rule.name(), withRule(count(times, Expr.Constant.YES, times.forget())));
                put("never forgotten: " + rule.name(), withRule(count(times, times.event(), Expr.Constant.NO)));
                put("forgotten at once: " + rule.name(), withRule(count(times, times.event(), Expr.Constant.YES)));
            }
        }
    }

    private static Sequence.Rule count(Sequence.Rule.Times times, Expr event, Expr forget) {
        return new Sequence.Rule.Times(times.name(), event, times.limit(), forget, times.words());
    }

    /** Messages of two causes that follow each other and are latched or not alike, told crosswise. */
    private void crosswise() {
        for (int c = 1; c < whole.causes().size(); c++) {
            Sequence.Cause first = whole.causes().get(c - 1);
            Sequence.Cause second = whole.causes().get(c);
            if (first.latched() == second.latched() && first.demands().equals(second.demands())) {
                Map<String, Sequence.Cause> swapped =
                        Map.of(first.name(), when(first, second.when()), second.name(), when(second, first.when()));
                put(
                        "crosswise: " + first.name() + " and " + second.name(),
                        withCauses(
                                whole,
                                whole.causes().stream()
                                        .map(x -> swapped.getOrDefault(x.name(), x))
                                        .toList()));
            }
        }
    }

    private static Sequence.Cause when(Sequence.Cause cause, Expr when) {
        return new Sequence.Cause(
                cause.name(),
                when,
                cause.demands(),
                cause.latched(),
                cause.priority(),
                cause.message(),
                cause.consequence(),
                cause.response());
    }

    /** Lamps that are lit in one step more. */
    private void litTooWidely() {
        for (Sequence.Lamp lamp : whole.lamps()) {
            for (String step : List.of("standing", "vacuuming", "holding")) {
                Expr wider = lamp.when().or(Expr.name("in_" + step));
                put(
                        "lamp " + lamp.name() + " lit in " + step + " too",
                        new Sequence(
                                whole.title(),
                                whole.options(),
                                whole.scan_s(),
                                whole.inputs(),
                                whole.buttons(),
                                whole.outputs(),
                                whole.timers(),
                                whole.rules(),
                                whole.causes(),
                                whole.steps(),
                                whole.lamps().stream()
                                        .map(l -> l.equals(lamp)
                                                ? new Sequence.Lamp(
                                                        l.name(), l.tag(), l.colour(), l.flashes(), l.words(), wider)
                                                : l)
                                        .toList()));
            }
        }
    }

    /** A time left out with everything that stands on it. */
    private void leftOut() {
        for (Sequence.Rule rule : whole.rules()) {
            if (rule instanceof Sequence.Rule.After || rule instanceof Sequence.Rule.InAll) {
                put("left out: " + rule.name(), without(whole, rule.name()));
            }
        }
    }

    /** A sequence without a rule: where its name stood, it is never so. */
    static Sequence without(Sequence whole, String rule) {
        UnaryOperator<Expr> never = e -> e.replace(n -> n.equals(Expr.name(rule)) ? Expr.Constant.NO : n);
        return new Sequence(
                whole.title(),
                whole.options(),
                whole.scan_s(),
                whole.inputs(),
                whole.buttons(),
                whole.outputs().stream()
                        .map(o -> new Sequence.Output(
                                o.name(),
                                o.tag(),
                                o.words(),
                                o.on(),
                                o.off(),
                                o.stop(),
                                never.apply(o.offWhen()),
                                o.neverWith()))
                        .toList(),
                whole.timers(),
                whole.rules().stream()
                        .filter(r -> !r.name().equals(rule))
                        .map(r -> without(r, never))
                        .toList(),
                whole.causes().stream()
                        .map(c -> new Sequence.Cause(
                                c.name(),
                                never.apply(c.when()),
                                c.demands(),
                                c.latched(),
                                c.priority(),
                                c.message(),
                                c.consequence(),
                                c.response()))
                        .toList(),
                whole.steps().stream()
                        .map(s -> new Sequence.Step(
                                s.name(),
                                s.words(),
                                s.on(),
                                s.keep(),
                                s.time(),
                                s.exits().stream()
                                        .map(x -> new Sequence.Exit(x.to(), never.apply(x.when())))
                                        .toList()))
                        .toList(),
                whole.lamps().stream()
                        .map(l -> new Sequence.Lamp(
                                l.name(), l.tag(), l.colour(), l.flashes(), l.words(), never.apply(l.when())))
                        .toList());
    }

    static Sequence.Rule without(Sequence.Rule rule, UnaryOperator<Expr> never) {
        if (rule instanceof Sequence.Rule.Is is) {
            return new Sequence.Rule.Is(is.name(), never.apply(is.when()), is.words());
        }
        if (rule instanceof Sequence.Rule.After after) {
            return new Sequence.Rule.After(after.name(), never.apply(after.when()), after.timer(), after.words());
        }
        if (rule instanceof Sequence.Rule.InAll sum) {
            return new Sequence.Rule.InAll(
                    sum.name(), never.apply(sum.when()), sum.timer(), never.apply(sum.forget()), sum.words());
        }
        if (rule instanceof Sequence.Rule.Times times) {
            return new Sequence.Rule.Times(
                    times.name(),
                    never.apply(times.event()),
                    times.limit(),
                    never.apply(times.forget()),
                    times.words());
        }
        Sequence.Rule.Latch latch = (Sequence.Rule.Latch) rule;
        return new Sequence.Rule.Latch(
                latch.name(),
                never.apply(latch.set()),
                never.apply(latch.reset()),
                latch.keptWithoutPower(),
                latch.startsOn(),
                latch.words());
    }

    private void put(String words, Sequence mutant) {
        mutants.put(words, mutant);
    }

    /** The condition with one of its parts left out, by that part; a single condition left out of an exit never lets it happen. */
    private static Map<String, Expr> weakened(Expr expr) {
        Map<String, Expr> weaker = new LinkedHashMap<>();
        List<Expr> terms = expr.terms();
        if (terms.isEmpty()) {
            weaker.put(expr.text(), Expr.Constant.NO);
            return weaker;
        }
        boolean all = expr instanceof Expr.And;
        for (int i = 0; i < terms.size(); i++) {
            int dropped = i;
            weaker.put(
                    terms.get(i).text(),
                    join(
                            all,
                            IntStream.range(0, terms.size())
                                    .filter(k -> k != dropped)
                                    .mapToObj(terms::get)
                                    .toList()));
            if (!terms.get(i).terms().isEmpty()) {
                weakened(terms.get(i)).forEach((part, inner) -> {
                    List<Expr> changed = new ArrayList<>(terms);
                    changed.set(dropped, inner);
                    weaker.put(part, join(all, changed));
                });
            }
        }
        return weaker;
    }

    private static Expr join(boolean all, List<Expr> terms) {
        return all ? Expr.and(terms) : Expr.or(terms);
    }

    private static Sequence.Step withExit(Sequence.Step step, int at, Expr when) {
        List<Sequence.Exit> exits = new ArrayList<>(step.exits());
        exits.set(at, new Sequence.Exit(exits.get(at).to(), when));
        return new Sequence.Step(step.name(), step.words(), step.on(), step.keep(), step.time(), exits);
    }

    private Sequence withStep(Sequence.Step changed) {
        return withSteps(
                whole,
                whole.steps().stream()
                        .map(s -> s.name().equals(changed.name()) ? changed : s)
                        .toList());
    }

    private Sequence withCause(Sequence.Cause changed) {
        return withCauses(
                whole,
                whole.causes().stream()
                        .map(c -> c.name().equals(changed.name()) ? changed : c)
                        .toList());
    }

    Sequence withRule(Sequence.Rule changed) {
        return new Sequence(
                whole.title(),
                whole.options(),
                whole.scan_s(),
                whole.inputs(),
                whole.buttons(),
                whole.outputs(),
                whole.timers(),
                whole.rules().stream()
                        .map(r -> r.name().equals(changed.name()) ? changed : r)
                        .toList(),
                whole.causes(),
                whole.steps(),
                whole.lamps());
    }

    static Sequence withRules(Sequence whole, List<Sequence.Rule> rules) {
        return whole.withRules(rules);
    }

    static Sequence withLamps(Sequence whole, List<Sequence.Lamp> lamps) {
        return new Sequence(
                whole.title(),
                whole.options(),
                whole.scan_s(),
                whole.inputs(),
                whole.buttons(),
                whole.outputs(),
                whole.timers(),
                whole.rules(),
                whole.causes(),
                whole.steps(),
                lamps);
    }

    static Sequence withSteps(Sequence whole, List<Sequence.Step> steps) {
        return new Sequence(
                whole.title(),
                whole.options(),
                whole.scan_s(),
                whole.inputs(),
                whole.buttons(),
                whole.outputs(),
                whole.timers(),
                whole.rules(),
                whole.causes(),
                steps,
                whole.lamps());
    }

    static Sequence withCauses(Sequence whole, List<Sequence.Cause> causes) {
        return new Sequence(
                whole.title(),
                whole.options(),
                whole.scan_s(),
                whole.inputs(),
                whole.buttons(),
                whole.outputs(),
                whole.timers(),
                whole.rules(),
                causes,
                whole.steps(),
                whole.lamps());
    }
}
