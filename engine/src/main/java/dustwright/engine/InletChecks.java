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
import dustwright.engine.quantity.PressureDifference;
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
        if (path.isEmpty()) {
            return;
        }
        List<Term> terms = new ArrayList<>();
        String end = FlowPath.end(path);
        Optional<StationResult> station =
                duty.stations().stream().filter(s -> s.id().equals(end)).findFirst();
        if (station.isPresent()) {
            StationResult at = station.get();
            terms.add(new Term("vac(suction)", "vacuum at the producers' inlet", vacuum(at.suction())));
            terms.add(new Term("Δp(safety filter)", "safety filter", at.safetyFilterLoss()));
            terms.add(new Term("Δp(filter)", "filter", at.filterLoss()));
        } else {
            terms.add(new Term("vac(" + end + ")", "vacuum at point " + end, vacuum(duty.pressureAt(end))));
        }
        for (int n = path.size() - 1; n >= 0; n--) {
            charge(path.get(n), terms);
        }
        workings.add(
                "NET-21",
                "vac(inlet) = " + terms.get(0).symbol() + " − ΣΔp − ΣΔpj",
                terms,
                new Term("vac(inlet)", "vacuum behind inlet valve " + inlet.id(), inlet.vacuumAtValve()),
                Workings.ISOTHERMAL);
    }

    private PressureDifference vacuum(AbsolutePressure pressure) {
        return plant.site().air().ambient().above(pressure);
    }

    /** What a run takes between its ends, and what is lost between its end and the point there: at a junction, or behind a choked end. */
    private void charge(LegResult leg, List<Term> terms) {
        terms.add(new Term("Δp(" + leg.id() + ")", "run " + leg.id(), Workings.drop(leg)));
        String point = FlowPath.downstreamEnd(leg);
        AbsolutePressure end = leg.flow().kgPerSecond() > 0 ? leg.pressureTo() : leg.pressureFrom();
        PressureDifference lost = end.above(duty.pressureAt(point));
        if (lost.pascals() != 0) {
            String where = leg.choked() ? "behind the choked end of " : "at the junction ";
            terms.add(new Term(
                    "Δpj(" + leg.id() + ")", where + (leg.choked() ? leg.id() : point + " that it enters"), lost));
        }
    }

    private Optional<LegResult> hose(InletResult inlet) {
        return duty.legs().stream()
                .filter(l -> l.kind() == LegResult.Kind.HOSE && l.id().equals(inlet.id()))
                .findFirst();
    }
}
