package dustwright.engine.finding;

import java.util.List;

/** The chain of steps by which a value was found, first step first, and where its limit comes from. */
public record Derivation(List<Step> steps, Source limitSource) {
    public Derivation {
        steps = List.copyOf(steps);
    }
}
