package dustwright.engine.coverage;

import dustwright.engine.finding.Finding;
import dustwright.engine.network.DutyPoint;
import java.util.List;

/** What is asked of one solved state: the very requirements, limits and margins of a single study. */
@FunctionalInterface
public interface Judging {
    /** Every checked requirement in this state. */
    List<Finding> of(DutyPoint duty);
}
