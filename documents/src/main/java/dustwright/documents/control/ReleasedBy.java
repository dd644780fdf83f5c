package dustwright.documents.control;

import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.Sequence;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which buttons make a cause go, in their order: its own RESET, or those that reset the latches its condition stands on. */
final class ReleasedBy {
    private final Sequence sequence;
    private final Set<String> passed = new LinkedHashSet<>();
    private final Set<String> buttons = new LinkedHashSet<>();

    private ReleasedBy(Sequence sequence) {
        this.sequence = sequence;
    }

    /** The buttons, joined by "then"; "by itself" when there are none. */
    static String words(Sequence sequence, Sequence.Cause cause) {
        if (cause.latched()) {
            return "RESET";
        }
        ReleasedBy released = new ReleasedBy(sequence);
        released.stands(cause.when());
        return released.buttons.isEmpty() ? "by itself" : String.join(", then ", released.buttons);
    }

    /** The latches a condition stands on, also through signals that only give them another name; not those it must not be. */
    private void stands(Expr condition) {
        if (condition instanceof Expr.Name name) {
            latch(name.name());
            sequence.rules().stream()
                    .filter(r -> r.name().equals(name.name()) && r instanceof Sequence.Rule.Is)
                    .forEach(r -> stands(((Sequence.Rule.Is) r).when()));
        } else if (!(condition instanceof Expr.Not)) {
            condition.terms().forEach(this::stands);
        }
    }

    /** What sets a latch that has to be set before stands before the button itself. */
    private void latch(String name) {
        Optional<Sequence.Rule.Latch> latch = sequence.rules().stream()
                .filter(r -> r.name().equals(name) && r instanceof Sequence.Rule.Latch)
                .map(Sequence.Rule.Latch.class::cast)
                .findFirst();
        if (latch.isEmpty() || !passed.add(name)) {
            return;
        }
        List<String> reset = List.copyOf(latch.get().reset().names());
        for (String other : reset) {
            sequence.rules().stream()
                    .filter(r -> r.name().equals(other) && r instanceof Sequence.Rule.Latch)
                    .forEach(r -> pressed(((Sequence.Rule.Latch) r).set()));
        }
        pressed(latch.get().reset());
    }

    private void pressed(Expr condition) {
        for (String name : condition.names()) {
            sequence.buttons().stream()
                    .filter(b -> name.equals("press_" + b.name()))
                    .forEach(b -> buttons.add(b.words()));
        }
    }
}
