package dustwright.engine.sheet;

import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.Network;
import dustwright.engine.network.State;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.FilterResistance;
import java.util.HashMap;
import java.util.Map;

/**
 * One set of open inlets with the cloth of one station at any resistance: a loaded cloth lets less air through, and so its own drop grows
 * less than its resistance. What was solved is kept, as several questions are asked of one set.
 */
record LoadedCloth(Plant plant, Station station, State set, Map<FilterResistance, Outcome<DutyPoint>> solved) {
    LoadedCloth(Plant plant, Station station, State set) {
        this(plant, station, set, new HashMap<>());
    }

    Outcome<DutyPoint> at(FilterResistance resistance) {
        return solved.computeIfAbsent(resistance, this::solve);
    }

    private Outcome<DutyPoint> solve(FilterResistance resistance) {
        Station loaded = station.withFilter(station.filter().withResistance(resistance));
        try {
            return new DutyPointSolver(Network.compile(plant.withStation(loaded))).solve(set);
        } catch (IllegalArgumentException outsideFormula) {
            return new Outcome.NotSolved<>(String.valueOf(outsideFormula.getMessage()));
        }
    }

    /** What this station does then. */
    StationResult here(DutyPoint duty) {
        return duty.stations().stream()
                .filter(result -> result.id().equals(station.id()))
                .findFirst()
                .orElseThrow();
    }
}
