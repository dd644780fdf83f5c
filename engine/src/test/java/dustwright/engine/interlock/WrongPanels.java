package dustwright.engine.interlock;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Panels as a builder may get them wrong: what each does not do. */
final class WrongPanels {
    private final Sequence right;

    private WrongPanels(Sequence right) {
        this.right = right;
    }

    static Map<String, Sequence> of(Sequence right) {
        WrongPanels panels = new WrongPanels(right);
        Map<String, Sequence> wrong = new LinkedHashMap<>();
        wrong.put("a rotor that stops is not seen after it was proved", panels.never("motion_lost"));
        wrong.put(
                "a full container stops nothing",
                panels.only(Set.of("rule container_hold", "demands container"), "container_full"));
        wrong.put(
                "receiver high is ignored while users vacuum",
                panels.only(Set.of("step vacuuming", "demands receiver"), "receiver_high"));
        wrong.put(
                "receiver high is ignored while filters are pulsed",
                panels.only(Set.of("step pulsing"), "receiver_high"));
        wrong.put(
                "heat, filter drop and vacuum stop nothing",
                panels.only(Set.of("all", "demands cooling", "demands filter_blind", "demands too_deep"), "soft_hold"));
        wrong.put(
                "air that is too low stops nothing",
                panels.only(Set.of("steps", "demands air_stop"), "not air_enough"));
        wrong.put("low air bars no pulses", panels.only(Set.of("steps", "demands air_warning"), "not air_good"));
        wrong.put(
                "a filter drop that asks never cleans",
                panels.only(Set.of("rule cleaning_due", "rule drop_cleaning"), "not filter_clean"));
        wrong.put("a hold has no limit", panels.never("unloaded_out"));
        wrong.put("the producer runs on after a rotor fault", panels.never("trip_pump_limit"));
        wrong.put("the valve runs on for ever after a trip", panels.never("trip_run_on_out"));
        wrong.put(
                "no vacuum, a vent that leaks, a thin filter are not told",
                panels.never("no_suction", "vent_not_shut", "filter_thin"));
        wrong.put("START is accepted before the producer has rested", panels.asIf("step standing", "rested"));
        wrong.put("START is accepted with the vent not proved", panels.asIf("step standing", "vent_proved"));
        wrong.put(
                "START is accepted while the container is held",
                panels.only(Set.of("step standing"), "container_hold"));
        wrong.put(
                "START ends a hold while the container is held", panels.only(Set.of("step holding"), "container_hold"));
        wrong.put(
                "vacuum comes back by itself after the container",
                panels.only(Set.of("step holding to vacuuming"), "waits"));
        wrong.put("the limit switch alone proves the vent", panels.asIf("rule vent_proved", "no_vacuum"));
        wrong.put("the vacuum switch alone proves the vent", panels.asIf("rule vent_proved", "vent_open_limit"));
        return wrong;
    }

    /** Signals that never come, wherever they stand. */
    private Sequence never(String... names) {
        return only(Set.of("all"), names);
    }

    /** A condition that is taken as met in one place. */
    private Sequence asIf(String where, String name) {
        return changed(Set.of(where), n -> n.equals(Expr.name(name)) ? Expr.Constant.YES : n);
    }

    /** Conditions that are taken as never met in some places; "not x" is never met where x is always. */
    private Sequence only(Set<String> where, String... conditions) {
        return changed(
                where,
                n -> Arrays.stream(conditions)
                        .filter(c -> n.equals(Expr.name(c.replace("not ", ""))))
                        .<Expr>map(c -> c.startsWith("not ") ? Expr.Constant.YES : Expr.Constant.NO)
                        .findFirst()
                        .orElse(n));
    }

    private Sequence changed(Set<String> where, UnaryOperator<Expr> as) {
        boolean all = where.contains("all");
        List<Sequence.Rule> rules = right.rules().stream()
                .map(r -> all || where.contains("rule " + r.name()) ? Mutants.without(r, e -> e.replace(as)) : r)
                .toList();
        List<Sequence.Step> steps = right.steps().stream()
                .map(s -> new Sequence.Step(
                        s.name(),
                        s.words(),
                        s.on(),
                        s.keep(),
                        s.time(),
                        s.exits().stream()
                                .map(x -> all
                                                || where.contains("steps")
                                                || where.contains("step " + s.name())
                                                || where.contains("step " + s.name() + " to " + x.to())
                                        ? new Sequence.Exit(x.to(), x.when().replace(as))
                                        : x)
                                .toList()))
                .toList();
        List<Sequence.Cause> causes = right.causes().stream()
                .map(c -> new Sequence.Cause(
                        c.name(),
                        all ? c.when().replace(as) : c.when(),
                        where.contains("demands " + c.name()) ? Map.of() : c.demands(),
                        c.latched(),
                        c.priority(),
                        c.message(),
                        c.consequence(),
                        c.response()))
                .toList();
        List<Sequence.Output> outputs = right.outputs().stream()
                .map(o -> new Sequence.Output(
                        o.name(),
                        o.tag(),
                        o.words(),
                        o.on(),
                        o.off(),
                        o.stop(),
                        all ? o.offWhen().replace(as) : o.offWhen(),
                        o.neverWith()))
                .toList();
        return new Sequence(
                right.title(),
                right.options(),
                right.scan_s(),
                right.inputs(),
                right.buttons(),
                outputs,
                right.timers(),
                rules,
                causes,
                steps,
                right.lamps());
    }
}
