package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whether a slip in a sequence changes anything anybody can see: both sequences, each with a plant of its own, are searched side by side under the same events and bad contacts, and in every
 * state that can be reached all steps, outputs, lamps, messages, trips and what is counted are the same. One network holds both, so nothing is left out that one alone could do.
 */
final class Alike {
    private static final String OTHER = "other/";
    private static final String SAME = "same";

    private Alike() {}

    /** One event and one bad contact in a scan, then any two bad contacts, which takes longer. */
    static boolean of(Sequence whole, Sequence slipped) {
        return of(whole, slipped, 1) && of(whole, slipped, 2);
    }

    private static boolean of(Sequence whole, Sequence slipped, int mostBad) {
        World one = World.of(whole, Optional.empty());
        World other = World.of(slipped, Optional.empty());
        List<String> choices =
                Stream.concat(one.events().stream(), one.contacts().stream()).toList();
        if (!one.events().equals(other.events()) || !one.contacts().equals(other.contacts())) {
            return false;
        }
        Set<String> seen = seen(whole, one);
        Set<String> named = new LinkedHashSet<>();
        other.lines().forEach(l -> named.add(l.name()));
        if (!named.containsAll(seen)) {
            return false;
        }
        List<Statement.Assign> both = new ArrayList<>(one.lines());
        other.lines()
                .forEach(l -> both.add(new Statement.Assign(
                        OTHER + l.name(), l.value().replace(n -> {
                            String name = ((Expr.Name) n).name();
                            return named.contains(name) ? Expr.name(OTHER + name) : n;
                        }))));
        both.add(new Statement.Assign(
                SAME,
                Expr.and(seen.stream()
                        .map(n -> same(Expr.name(n), Expr.name(OTHER + n)))
                        .toList())));
        Set<String> startOn = new LinkedHashSet<>(one.startOn());
        other.startOn().forEach(n -> startOn.add(OTHER + n));
        Circuit circuit = Circuit.of(both, choices, startOn, List.of(SAME));
        return Search.run(circuit, one.moves(circuit, 1, mostBad), true).holds(0);
    }

    private static Expr same(Expr a, Expr b) {
        return a.and(b).or(a.not().and(b.not()));
    }

    /** Steps, outputs, lamps, messages, what is counted and what forgets a count; trips with the same demands are one latch in both. */
    private static Set<String> seen(Sequence sequence, World world) {
        Map<String, Boolean> causes = new LinkedHashMap<>();
        world.lines()
                .forEach(l -> causes.put(
                        l.name(),
                        sequence.causes().stream()
                                .anyMatch(c ->
                                        l.name().equals(c.name()) || l.name().startsWith(c.name() + "_"))));
        Set<String> seen = new LinkedHashSet<>(Set.of("trip"));
        sequence.outputs().forEach(o -> seen.add(o.name()));
        sequence.lamps().forEach(l -> seen.add(l.name()));
        sequence.steps().forEach(s -> seen.add("in_" + s.name()));
        causes.forEach((name, is) -> {
            if (is || name.startsWith("event_") || name.startsWith("forget_")) {
                seen.add(name);
            }
        });
        return seen;
    }
}
