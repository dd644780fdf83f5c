package dustwright.engine.interlock;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which contacts bring a condition about. One that only has to be good besides is not among them, nor one that always sets, together with what is asked for, what must not be: a bag that is full is held and high in the same scan, so its
 * probe never brings about what asks for a hold without high.
 */
final class Bringing {
    private final Sequence sequence;
    private final Set<String> contacts = new LinkedHashSet<>();
    private final Set<String> passed = new LinkedHashSet<>();

    Bringing(Sequence sequence) {
        this.sequence = sequence;
    }

    Set<String> contacts(Expr when) {
        from(when, false, Set.of());
        return contacts;
    }

    /** The same contacts, and the rules by way of which they do. */
    Set<String> withRules(Expr when) {
        contacts(when);
        sequence.rules().stream()
                .map(Sequence.Rule::name)
                .filter(passed::contains)
                .forEach(contacts::add);
        return contacts;
    }

    private void from(Expr when, boolean inverted, Set<Expr> excluded) {
        if (excluded.contains(when)) {
            return;
        }
        if (when instanceof Expr.Not not) {
            from(not.of(), !inverted, excluded);
        } else if (when instanceof Expr.Name name) {
            named(name.name(), inverted, excluded);
        } else {
            Set<Expr> without = new LinkedHashSet<>(excluded);
            if (when instanceof Expr.And && !inverted) {
                without.addAll(setsWhatMustNotBe(when.terms()));
            }
            when.terms().forEach(t -> from(t, inverted, without));
        }
    }

    private void named(String name, boolean inverted, Set<Expr> excluded) {
        boolean contact = sequence.inputs().stream().anyMatch(i -> i.name().equals(name));
        if (contact && (inverted || Witnesses.first(name).isPresent())) {
            contacts.add(name);
        }
        if (passed.add((inverted ? "not " : "") + name)) {
            sequence.rules().stream()
                    .filter(r -> r.name().equals(name) && (!inverted || r instanceof Sequence.Rule.Is))
                    .forEach(r -> from(Rules.conditions(r).get(0), inverted, excluded));
        }
    }

    /** What sets a latch that must not be set. */
    private Set<Expr> setsWhatMustNotBe(List<Expr> terms) {
        return terms.stream()
                .flatMap(t -> t instanceof Expr.Not not ? latch(not.of()).stream() : Stream.empty())
                .flatMap(l -> l.set() instanceof Expr.Or or ? or.terms().stream() : Stream.of(l.set()))
                .collect(Collectors.toSet());
    }

    private Optional<Sequence.Rule.Latch> latch(Expr of) {
        return sequence.rules().stream()
                .filter(r -> of.equals(Expr.name(r.name())) && r instanceof Sequence.Rule.Latch)
                .map(Sequence.Rule.Latch.class::cast)
                .findFirst();
    }
}
