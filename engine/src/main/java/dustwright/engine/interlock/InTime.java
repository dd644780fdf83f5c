package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The lines of a searched scan in which times end in their order: the search lets every time end in any scan, a person at the panel has a clock. A time is not out while a shorter one
 * is still running, and a contact is not bad for its filter while a time shorter than the filter is running. That is narrower than the truth (a long time may have begun long ago), so what
 * is possible here can be done. Counts are never full, so nobody waits until they are forgotten.
 */
final class InTime {
    private static final String MOVED = "pending_moved";

    /** A running time, by the name of its signal. */
    private record Clock(String name, Expr run, String timer, double time_s) {
        boolean ofStep() {
            return name.startsWith("time_in_");
        }

        boolean startsAndEndsWith(Clock other) {
            return run.equals(other.run) && timer.equals(other.timer);
        }
    }

    private final Map<String, Clock> clocks = new LinkedHashMap<>();
    private final Map<String, Double> filters = new LinkedHashMap<>();
    private final Set<String> counts = new LinkedHashSet<>();

    private InTime(Sequence sequence) {
        for (Statement statement : ScanProgram.of(sequence).decide()) {
            if (statement instanceof Statement.Delay delay) {
                clock(sequence, delay.name(), delay.run(), delay.timer());
            } else if (statement instanceof Statement.Sum sum) {
                clock(sequence, sum.name(), sum.run(), sum.timer());
            } else if (statement instanceof Statement.Count count) {
                counts.add("out_" + count.name());
                count.forget().names().forEach(n -> counts.add("out_" + n));
            }
        }
        clocks.keySet().removeIf(c -> counts.contains("out_" + c));
        sequence.inputs()
                .forEach(i -> i.filter()
                        .ifPresent(f ->
                                filters.put("bad_" + i.name(), sequence.timer(f).time_s())));
    }

    private void clock(Sequence sequence, String name, Expr run, String timer) {
        clocks.put(name, new Clock(name, run, timer, sequence.timer(timer).time_s()));
    }

    static List<Statement.Assign> of(Sequence sequence, List<Statement.Assign> lines) {
        InTime inTime = new InTime(sequence);
        List<Statement.Assign> ordered = new ArrayList<>();
        lines.forEach(l -> ordered.add(new Statement.Assign(l.name(), l.value().replace(inTime::onlyInTime))));
        inTime.clocks
                .values()
                .forEach(c -> ordered.add(new Statement.Assign(
                        pending(c.name()), c.run().and(Expr.name(c.name()).not()))));
        ordered.add(new Statement.Assign(
                MOVED,
                Expr.or(sequence.steps().stream()
                        .map(s -> Expr.name("in_" + s.name())
                                .and(Expr.name("was_in_" + s.name()).not()))
                        .toList())));
        return ordered;
    }

    private Expr onlyInTime(Expr named) {
        String name = ((Expr.Name) named).name();
        if (counts.contains(name)) {
            return Expr.Constant.NO;
        }
        Double filter_s = filters.get(name);
        if (filter_s != null) {
            return named.and(anyPending(c -> c.time_s() <= filter_s).not());
        }
        Clock clock = name.startsWith("out_") ? clocks.get(name.substring(4)) : null;
        return clock == null
                ? named
                : Expr.name("out_" + leader(clock).name())
                        .and(anyPending(c -> endsBefore(c, clock)).not());
    }

    /** Clocks that start and end together are out in the same scan. */
    private Clock leader(Clock clock) {
        return clocks.values().stream()
                .filter(c -> c.startsAndEndsWith(clock))
                .reduce((first, second) -> second)
                .orElse(clock);
    }

    /** Of two equal times nobody knows which began first, unless they have the timer in common: then that of the step is out first. */
    private static boolean endsBefore(Clock other, Clock clock) {
        if (other.startsAndEndsWith(clock)) {
            return false;
        }
        return other.time_s() < clock.time_s()
                || (other.time_s() == clock.time_s()
                        && !(clock.ofStep() && other.timer().equals(clock.timer())));
    }

    /** Nobody can wait in a step that has not yet shown that it stays. */
    private Expr anyPending(Predicate<Clock> which) {
        return Expr.or(clocks.values().stream()
                        .filter(which)
                        .map(c -> Expr.name(pending(c.name())))
                        .toList())
                .or(Expr.name(MOVED));
    }

    private static String pending(String time) {
        return "pending_" + time;
    }
}
