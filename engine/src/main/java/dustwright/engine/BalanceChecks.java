package dustwright.engine;

import dustwright.engine.audit.Audit;
import dustwright.engine.audit.Discrepancy;
import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;

/** The independent audit of a solved state, said as findings: only what does not agree is reported, once per place. */
final class BalanceChecks {
    private static final Source ROUNDING = Source.ownReading("what rounding alone may explain");

    private BalanceChecks() {}

    static List<Finding> of(Plant plant, DutyPoint duty) {
        List<Finding> findings = new ArrayList<>();
        for (Discrepancy found : Audit.of(plant, duty)) {
            boolean known = findings.stream().anyMatch(f -> f.where().equals(found.where()));
            if (!known) {
                findings.add(finding(found, duty.state().name()));
            }
        }
        return List.copyOf(findings);
    }

    private static Finding finding(Discrepancy found, String state) {
        Quantity size = found.off() instanceof MassFlow flow
                ? new MassFlow(Math.abs(flow.kgPerSecond()))
                : new Ratio(Math.abs(found.off().si()));
        Step step = new Step(
                "NET-8",
                found.what() + " from the results, checked apart from the solver",
                List.of(),
                new Term("Δ", found.what(), size),
                ROUNDING);
        return Finding.of(
                FindingCode.BALANCE,
                found.where(),
                state,
                Side.AT_MOST,
                size,
                found.allowed(),
                new Derivation(List.of(step), ROUNDING));
    }
}
