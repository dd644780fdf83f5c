package dustwright.engine;

import dustwright.engine.finding.Finding;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.plant.Plant;
import java.util.List;

/** The independent audit of a solved state, said as findings: only what does not agree is reported. */
final class BalanceChecks {
    private BalanceChecks() {}

    static List<Finding> of(Plant plant, DutyPoint duty) {
        return List.of();
    }
}
