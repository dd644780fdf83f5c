package dustwright.engine;

import dustwright.engine.cost.LifeCycle;
import dustwright.engine.coverage.Judging;
import dustwright.engine.coverage.Question;
import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.State;
import dustwright.engine.plant.Costs;
import dustwright.engine.plant.DesignSet;
import dustwright.engine.plant.Plant;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.quantity.ElectricalEnergy;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.sheet.YearlyEnergy;
import dustwright.engine.sizing.Rules;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Sizes are held to what {@code verify} and {@code cover} ask: every requirement of a state, whichever so many inlets are open. Running
 * cost is the producers' energy of the design sets in present value (equation CST-21), where the costs say enough.
 *
 * @param users numbers of inlets open at once
 * @param atMost users by zone
 * @param filters conditions of the filter
 */
public record SizingRules(List<Integer> users, Map<String, Integer> atMost, List<FilterCondition> filters)
        implements Rules {
    private static final double JOULES_PER_KWH = 3.6e6;

    public SizingRules {
        users = List.copyOf(users);
        atMost = Map.copyOf(atMost);
        filters = List.copyOf(filters);
    }

    @Override
    public Judging judging(Plant plant) {
        return duty -> Study.judge(plant, duty);
    }

    @Override
    public Question question(Plant plant) {
        return new Question(users, atMost, States.conditions(plant, filters));
    }

    @Override
    public OptionalDouble running(Plant plant) {
        Optional<Costs> costs = plant.operation().costs();
        if (costs.isEmpty()
                || costs.get().electricity().isEmpty()
                || costs.get().interest().isEmpty()
                || costs.get().years().isEmpty()) {
            return OptionalDouble.empty();
        }
        Optional<ElectricalEnergy> energy = YearlyEnergy.of(plant, Study.ways(plant), duties(plant));
        if (energy.isEmpty()) {
            return OptionalDouble.empty();
        }
        double perYear = energy.get().joules()
                / JOULES_PER_KWH
                * costs.get().electricity().get().si()
                * JOULES_PER_KWH;
        return OptionalDouble.of(perYear
                * LifeCycle.growing(
                        costs.get().interest().get().value(),
                        costs.get().growth().value(),
                        costs.get().years().get()));
    }

    /** The design sets, as the running-cost sheet counts them. */
    private static List<DutyPoint> duties(Plant plant) {
        Set<List<String>> sets =
                plant.usage().designSets().stream().map(DesignSet::open).collect(Collectors.toSet());
        List<DutyPoint> duties = new ArrayList<>();
        for (State state : States.usual(plant)) {
            if ((sets.isEmpty() || sets.contains(state.open()))
                    && DutyPointSolver.solve(plant, state) instanceof Outcome.Solved<DutyPoint> solved) {
                duties.add(solved.value());
            }
        }
        return duties;
    }

    /** Lobe pumps at one speed move one volume: the deeper the vacuum, the more power. */
    @Override
    public boolean widestRunsCheapest(Plant plant) {
        return plant.stations().stream()
                .flatMap(s -> s.producers().stream())
                .allMatch(p -> p.machine() instanceof Machine.LobePump && p.drive() instanceof Drive.Fixed);
    }
}
