package dustwright.engine.interlock;

import java.util.List;

/** What is the same for all rules. */
final class Rules {
    private Rules() {}

    /** Conditions of a rule, in the order a file writes them. */
    static List<Expr> conditions(Sequence.Rule rule) {
        if (rule instanceof Sequence.Rule.Is is) {
            return List.of(is.when());
        }
        if (rule instanceof Sequence.Rule.After after) {
            return List.of(after.when());
        }
        if (rule instanceof Sequence.Rule.InAll sum) {
            return List.of(sum.when(), sum.forget());
        }
        if (rule instanceof Sequence.Rule.Times times) {
            return List.of(times.event(), times.forget());
        }
        Sequence.Rule.Latch latch = (Sequence.Rule.Latch) rule;
        return List.of(latch.set(), latch.reset());
    }
}
