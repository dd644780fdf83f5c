package dustwright.documents.control;

import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.interlock.WayBack;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What makes a message go and, where it ended vacuuming, what brings vacuuming back: of what demands something as it was tried on the model ({@link WayBack}), of what only tells by the latches its condition stands on. */
final class ReleasedBy {
    private static final String BY_ITSELF = "by itself";

    private final Sequence sequence;
    private final Map<String, WayBack> ways;

    private ReleasedBy(Sequence sequence) {
        this.sequence = sequence;
        ways = WayBack.of(sequence);
    }

    static ReleasedBy of(Sequence sequence) {
        return new ReleasedBy(sequence);
    }

    /** For a cell of a table. */
    String words(Sequence.Cause cause) {
        if (cause.latched()) {
            return "RESET, then START";
        }
        return way(cause)
                .map(w -> w.returnsByItself()
                        ? w.interrupts() ? "by itself; vacuuming returns by itself" : BY_ITSELF
                        : ends(w) + (returns(w).isEmpty() ? "" : "; vacuuming returns with " + returns(w)))
                .orElseGet(() -> buttons(cause));
    }

    /** For a sentence. */
    String sentence(Sequence.Cause cause) {
        if (cause.latched()) {
            return "Latched until RESET is pressed while it is absent; vacuuming returns with START after that.";
        }
        return way(cause)
                .map(w -> {
                    if (w.returnsByItself()) {
                        return w.interrupts()
                                ? "It goes with its cause, and vacuuming returns by itself."
                                : "It goes with its cause.";
                    }
                    return (w.goesByItself()
                                    ? "It goes with its cause"
                                    : "It stays until " + ends(w) + (forgotten(cause) ? ", or a trip" : ""))
                            + "; vacuuming returns only with "
                            + (returns(w).isEmpty() ? pressed(w) : returns(w)) + ".";
                })
                .orElseGet(() -> buttons(cause).equals(BY_ITSELF)
                        ? "It goes with its cause."
                        : "It stays until " + buttons(cause) + " is pressed.");
    }

    private Optional<WayBack> way(Sequence.Cause cause) {
        return Optional.ofNullable(ways.get(cause.name()));
    }

    private static String pressed(WayBack way) {
        return String.join(", then ", way.presses());
    }

    /** What makes the message go. */
    private static String ends(WayBack way) {
        if (way.goesByItself()) {
            return BY_ITSELF;
        }
        return String.join(", then ", way.presses().subList(0, way.untilPress()))
                + way.endOf()
                        .map(s -> ", and the end of step " + Narrative.spaced(s))
                        .orElse("");
    }

    /** Whether what it remembers is gone after a trip. */
    private boolean forgotten(Sequence.Cause cause) {
        return sequence.rules().stream()
                .filter(r -> cause.when().names().contains(r.name()))
                .anyMatch(r -> r instanceof Sequence.Rule.Latch latch
                        && latch.reset().names().contains("in_tripped"));
    }

    /** What is pressed after that to bring vacuuming back; empty where that did. */
    private static String returns(WayBack way) {
        return String.join(
                ", then ", way.presses().subList(way.untilPress(), way.presses().size()));
    }

    /** The buttons that reset the latches its condition stands on; "by itself" where there are none. */
    private String buttons(Sequence.Cause cause) {
        Latches latches = new Latches();
        latches.stands(cause.when());
        return latches.buttons.isEmpty() ? BY_ITSELF : String.join(", then ", latches.buttons);
    }

    /** Latches behind a condition and the buttons that reset them. */
    private final class Latches {
        private final Set<String> passed = new LinkedHashSet<>();
        private final Set<String> buttons = new LinkedHashSet<>();

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
}
