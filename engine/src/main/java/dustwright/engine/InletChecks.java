package dustwright.engine;

import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.FreeAirFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is asked at every open inlet in one solved state: air at the tool, vacuum behind the valve. */
final class InletChecks {
    private final Plant plant;
    private final DutyPoint duty;

    private InletChecks(Plant plant, DutyPoint duty) {
        this.plant = plant;
        this.duty = duty;
    }

    static List<Finding> of(Plant plant, DutyPoint duty) {
        InletChecks checks = new InletChecks(plant, duty);
        List<Finding> findings = new ArrayList<>();
        for (InletResult inlet : duty.inlets()) {
            if (inlet.open()) {
                checks.toolFlow(inlet).ifPresent(findings::add);
                checks.vacuum(inlet).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private Optional<Finding> toolFlow(InletResult inlet) {
        return plant.requirements()
                .toolFlow()
                .map(limit -> Finding.of(
                        FindingCode.TOOL_FLOW,
                        new Place(Place.Kind.INLET, inlet.id()),
                        duty.state().name(),
                        Side.AT_LEAST,
                        FreeAirFlow.of(inlet.flow()),
                        limit.value(),
                        new Derivation(() -> toolFlowSteps(inlet), limit.source())));
    }

    private List<Step> toolFlowSteps(InletResult inlet) {
        Workings workings = new Workings(plant);
        hose(inlet).ifPresent(leg -> workings.legLaw(duty, leg));
        workings.freeAir(inlet.flow(), "air through the tool");
        return workings.steps();
    }

    private Optional<Finding> vacuum(InletResult inlet) {
        return plant.requirements()
                .inletVacuum()
                .map(limit -> Finding.of(
                        FindingCode.INLET_VACUUM,
                        new Place(Place.Kind.INLET, inlet.id()),
                        duty.state().name(),
                        Side.AT_LEAST,
                        inlet.vacuumAtValve(),
                        limit.value(),
                        new Derivation(() -> vacuumSteps(inlet), limit.source())));
    }

    private List<Step> vacuumSteps(InletResult inlet) {
        Workings workings = new Workings(plant);
        budget(inlet, workings);
        AbsolutePressure behind = plant.site().air().ambient().minus(inlet.vacuumAtValve());
        workings.vacuum(behind, "behind inlet valve " + inlet.id());
        return workings.steps();
    }

    /** The pressure budget from the producer back to the inlet: what each piece on the way takes. */
    private void budget(InletResult inlet, Workings workings) {
        List<LegResult> path = FlowPath.downstream(duty, inlet.id());
        List<Term> terms = new ArrayList<>();
        Optional<StationResult> station = path.isEmpty()
                ? Optional.empty()
                : duty.stations().stream()
                        .filter(s -> s.id().equals(FlowPath.end(path)))
                        .findFirst();
        station.ifPresent(s -> {
            terms.add(new Term(
                    "vac(suction)",
                    "vacuum at the producers' inlet",
                    plant.site().air().ambient().above(s.suction())));
            terms.add(new Term("Δp(safety filter)", "safety filter", s.safetyFilterLoss()));
            terms.add(new Term("Δp(filter)", "filter", s.filterLoss()));
        });
        for (int n = path.size() - 1; n >= 0; n--) {
            LegResult leg = path.get(n);
            terms.add(new Term("Δp(" + leg.id() + ")", "run " + leg.id(), Workings.drop(leg)));
        }
        if (station.isPresent()) {
            workings.add(
                    "NET-21",
                    "vac(inlet) = vac(suction) − ΣΔp",
                    terms,
                    new Term("vac(inlet)", "vacuum behind inlet valve " + inlet.id(), inlet.vacuumAtValve()),
                    Workings.ISOTHERMAL);
        }
    }

    private Optional<LegResult> hose(InletResult inlet) {
        return duty.legs().stream()
                .filter(l -> l.kind() == LegResult.Kind.HOSE && l.id().equals(inlet.id()))
                .findFirst();
    }
}
