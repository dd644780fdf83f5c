package dustwright.engine;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.State;
import java.util.List;

/**
 * What was found for one state.
 *
 * @param findings every checked requirement in this state, in a fixed order
 */
public record StateAnswer(State state, Outcome<DutyPoint> duty, List<Finding> findings) {
    public StateAnswer {
        findings = List.copyOf(findings);
    }

    /** True when the state was solved and every requirement holds. */
    public boolean holds() {
        return duty instanceof Outcome.Solved && findings.stream().allMatch(Finding::holds);
    }

    /** Smallest margin of all findings; positive infinity when nothing was checked. */
    double leastMargin() {
        return findings.stream().mapToDouble(Finding::margin).min().orElse(Double.POSITIVE_INFINITY);
    }
}
