package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds steps that can follow each other for ever although no time is out, no button is pressed and no contact changes: a circle of exits whose
 * conditions can all be true under one and the same setting of the signals.
 */
public final class TimelessLoops {
    private final Sequence sequence;
    private final Set<String> still = new LinkedHashSet<>();

    private TimelessLoops(Sequence sequence) {
        this.sequence = sequence;
        still.add("time_out");
        still.add("first_scan");
        sequence.buttons().forEach(b -> still.add("press_" + b.name()));
        sequence.rules().stream()
                .filter(r -> r instanceof Sequence.Rule.After || r instanceof Sequence.Rule.InAll)
                .forEach(r -> still.add(r.name()));
    }

    /** Steps of such a circle in their order, or nothing. */
    public static Optional<List<String>> of(Sequence sequence) {
        TimelessLoops loops = new TimelessLoops(sequence);
        return sequence.steps().stream()
                .map(s -> loops.from(s.name(), s.name(), new ArrayList<>(), Expr.Constant.YES))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<List<String>> from(String first, String step, List<String> way, Expr together) {
        if (!way.isEmpty() && step.equals(first)) {
            return Optional.of(way);
        }
        if (way.contains(step)) {
            return Optional.empty();
        }
        List<Expr> earlier = new ArrayList<>();
        for (Sequence.Exit exit : sequence.step(step).exits()) {
            Expr quiet = quiet(exit.when());
            Expr all = Expr.and(List.of(together, quiet, Expr.or(earlier).not()));
            if (canBeTrue(all, new HashMap<>())) {
                List<String> longer = new ArrayList<>(way);
                longer.add(step);
                Optional<List<String>> found = from(first, exit.to(), longer, all);
                if (found.isPresent()) {
                    return found;
                }
            }
            earlier.add(quiet);
        }
        return Optional.empty();
    }

    /** The condition while nothing happens; which step it is may change along the way, so steps are left open as outputs are. */
    private Expr quiet(Expr when) {
        return when.replace(n -> still.contains(((Expr.Name) n).name()) ? Expr.Constant.NO : n);
    }

    /** Whether some setting of the names makes it true: tries one name after the other. */
    private static boolean canBeTrue(Expr expr, Map<String, Boolean> set) {
        Expr now = expr.replace(n -> {
            Boolean value = set.get(((Expr.Name) n).name());
            return value == null ? n : value ? Expr.Constant.YES : Expr.Constant.NO;
        });
        if (now instanceof Expr.Constant constant) {
            return constant.value();
        }
        String next = now.names().iterator().next();
        for (boolean value : new boolean[] {true, false}) {
            if (canBeTrue(now, Map.of(next, value))) {
                return true;
            }
        }
        return false;
    }
}
