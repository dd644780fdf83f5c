package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What a rotary valve's leak costs at the tools: the same state solved again with its flange blanked. */
final class ToolCost {
    private static final Source TWICE =
            Source.ownReading("the same state solved with the valve and with its flange blanked");

    private ToolCost() {}

    static void write(Writing writing, Arrivals arrivals) {
        arrivals.all().stream()
                .flatMap(arrival -> weakest(arrival).stream())
                .min(Comparator.comparing(weakest -> weakest.tool().flow()))
                .ifPresent(weakest -> write(writing, arrivals.plant(), arrivals.station(), weakest));
    }

    /** The open inlet of a state whose tool gets least air. */
    private record Weakest(DutyPoint duty, InletResult tool) {}

    private static Optional<Weakest> weakest(DustArrival arrival) {
        return arrival.duty().inlets().stream()
                .filter(inlet -> arrival.inlets().stream().anyMatch(r -> r.id().equals(inlet.id())))
                .min(Comparator.comparing(InletResult::flow))
                .map(tool -> new Weakest(arrival.duty(), tool));
    }

    private static void write(Writing writing, Plant plant, Station station, Weakest weakest) {
        Outcome<DutyPoint> blanked = DutyPointSolver.solve(
                plant.withStation(station.withoutRotaryValve()), weakest.duty().state());
        String at = "at " + weakest.tool().id() + ", " + weakest.duty().state().name();
        Optional<DutyPoint> shut = blanked.match(Optional::of, why -> Optional.empty());
        if (shut.isEmpty()) {
            writing.unknown(
                    "cost",
                    "Air it costs the tool " + at,
                    "The state has no solution with the valve's flange blanked.");
            return;
        }
        InletResult without = shut.get().inlets().stream()
                .filter(inlet -> inlet.id().equals(weakest.tool().id()))
                .findFirst()
                .orElseThrow();
        FreeAirFlow with = FreeAirFlow.of(weakest.tool().flow());
        FreeAirFlow free = FreeAirFlow.of(without.flow());
        FreeAirFlow lost = new FreeAirFlow(free.cubicMetresPerSecond() - with.cubicMetresPerSecond());
        StationResult open = result(weakest.duty(), station);
        List<Step> steps = new ArrayList<>(
                ValveAir.of(station.rotaryValve().orElseThrow(), plant.site().air(), open)
                        .all());
        AbsolutePressure barometer = plant.site().air().ambient();
        steps.add(vacuum(barometer, open.receiver(), "with the valve"));
        steps.add(vacuum(barometer, result(shut.get(), station).receiver(), "flange blanked"));
        steps.add(ValveAir.freeAir(
                "air through the tool, with the valve",
                "w",
                "through the tool, with the valve, by the network's solution",
                weakest.tool().flow()));
        steps.add(ValveAir.freeAir(
                "air through the tool, flange blanked",
                "w",
                "through the tool, flange blanked, by the network's solution",
                without.flow()));
        steps.add(air(lost, free, with));
        writing.known("cost", "Air it costs the tool " + at, lost, steps);
        PressureDifference vacuum = weakest.tool().vacuumAtValve();
        PressureDifference better = without.vacuumAtValve();
        PressureDifference shallower = new PressureDifference(better.pascals() - vacuum.pascals());
        writing.known(
                "cost-vacuum",
                "Vacuum it costs there",
                shallower,
                List.of(step(
                        "RTV-19",
                        "cost = without − with",
                        TWICE,
                        new Term("cost", "vacuum lost", shallower),
                        new Term("without", "vacuum behind the valve, flange blanked", better),
                        new Term("with", "vacuum behind the valve", vacuum))));
    }

    private static StationResult result(DutyPoint duty, Station station) {
        return duty.stations().stream()
                .filter(s -> s.id().equals(station.id()))
                .findFirst()
                .orElseThrow();
    }

    private static Step vacuum(AbsolutePressure barometer, AbsolutePressure receiver, String when) {
        return step(
                "AIR-3",
                "v = p_a − p",
                Source.published("definition"),
                new Term("v", "vacuum in the receiver, " + when, barometer.above(receiver)),
                new Term("p_a", "site barometer", barometer),
                new Term("p", "static pressure in the receiver, " + when + ", by the network's solution", receiver));
    }

    private static Step air(FreeAirFlow lost, FreeAirFlow free, FreeAirFlow with) {
        return step(
                "RTV-19",
                "cost = without − with",
                TWICE,
                new Term("cost", "air lost at the tool", lost),
                new Term("without", "air through the tool, flange blanked", free),
                new Term("with", "air through the tool", with));
    }
}
