package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.air.Air;
import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.Network;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.network.State;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Power;
import dustwright.engine.receiver.FilterCondition;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Shaft power of a station's producers while nobody vacuums and they turn on: all inlets shut, its vent valve open where it has one. */
final class UnloadedPower {
    private static final Source DEFINITION = Source.published("definition");

    private final Station station;
    private final Air air;

    private UnloadedPower(Plant plant, Station station) {
        this.station = station;
        this.air = plant.site().air();
    }

    /** Steps to the power, the last one gives it; or why it is not known. */
    static Outcome<List<Step>> of(Plant plant, Station station) {
        UnloadedPower unloaded = new UnloadedPower(plant, station);
        try {
            return new DutyPointSolver(Network.compile(plant))
                    .solve(unloaded.state())
                    .match(unloaded::of, Outcome.NotSolved::new);
        } catch (IllegalArgumentException outsideFormula) {
            return new Outcome.NotSolved<>(String.valueOf(outsideFormula.getMessage()));
        }
    }

    private State state() {
        Set<String> vented = station.vent().isPresent() ? Set.of(station.id()) : Set.of();
        Set<String> running = station.producers().stream()
                .filter(producer -> !producer.standby())
                .map(VacuumProducer::id)
                .collect(Collectors.toSet());
        return new State("unloaded", List.of(), FilterCondition.NORMAL, Set.of(), vented, running);
    }

    private Outcome<List<Step>> of(DutyPoint duty) {
        StationResult result = duty.stations().stream()
                .filter(s -> s.id().equals(station.id()))
                .findFirst()
                .orElseThrow();
        List<Step> steps = new ArrayList<>();
        steps.add(vacuum(result.suction()));
        List<Term> powers = new ArrayList<>();
        for (VacuumProducer producer : station.producers()) {
            for (ProducerResult unit : result.producers()) {
                if (unit.id().equals(producer.id()) && unit.running()) {
                    if (unit.shaftPower().compareTo(producer.powerLimit(air)) > 0) {
                        return new Outcome.NotSolved<>(tooMuch(producer));
                    }
                    steps.addAll(ProducerSteps.power(producer, air, unit));
                    powers.add(new Term("P_" + producer.id(), "shaft power of " + producer.id(), unit.shaftPower()));
                }
            }
        }
        Power sum = new Power(powers.stream().mapToDouble(p -> p.value().si()).sum());
        steps.add(new Step(
                "CST-11",
                "P = Σ P",
                powers,
                new Term("P", "shaft power of the running producers, " + words(), sum),
                DEFINITION));
        return new Outcome.Solved<>(steps);
    }

    private Step vacuum(AbsolutePressure suction) {
        return step(
                "AIR-3",
                "v = p_a − p",
                DEFINITION,
                new Term(
                        "v",
                        "vacuum at the producers, " + words(),
                        air.ambient().above(suction)),
                new Term("p_a", "site barometer", air.ambient()),
                new Term("p", "pressure at the producers, solved for this state", suction));
    }

    /** The state in words. */
    private String words() {
        return station.vent().isPresent()
                ? "all inlets shut, vent valve open, filter normal"
                : "all inlets shut, no vent valve, filter normal";
    }

    private String tooMuch(VacuumProducer producer) {
        return producer.id() + " would take more than its motor may give, " + words() + ": nobody can run it so. "
                + (station.vent().isPresent()
                        ? "See the sheet \"Vent valve open\"; enter a larger motor."
                        : "See the sheet \"All inlets shut\"; enter a vent valve, a greater relief valve or a larger motor.");
    }
}
