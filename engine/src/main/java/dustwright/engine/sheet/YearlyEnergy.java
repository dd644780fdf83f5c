package dustwright.engine.sheet;

import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Step;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.plant.Costs;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.ElectricalEnergy;
import java.util.List;
import java.util.Optional;

/** Electrical energy of all producers and inflation fans over a year, as the running-cost sheet has it. */
public final class YearlyEnergy {
    private YearlyEnergy() {}

    /** Of all stations; empty where the plant file does not say what is needed. */
    public static Optional<ElectricalEnergy> of(Plant plant, DustWays ways, List<DutyPoint> duties) {
        Optional<Costs> costs = plant.operation().costs();
        if (costs.isEmpty()) {
            return Optional.empty();
        }
        List<DustWeek> weeks = plant.stations().stream()
                .flatMap(station -> DustWeek.of(plant, station, ways).stream())
                .toList();
        double total_J = 0;
        for (Station station : plant.stations()) {
            if (!(new StationEnergy(plant, station, ways, costs.get(), weeks).ofYear(duties)
                    instanceof Outcome.Solved<List<Step>> steps)) {
                return Optional.empty();
            }
            List<Step> last = steps.value();
            total_J += last.get(last.size() - 1).result().value().si();
            total_J += FanEnergy.ofYear(station, weeks)
                    .map(fan -> fan.match(step -> step.result().value().si(), why -> 0.0))
                    .orElse(0.0);
        }
        return Optional.of(new ElectricalEnergy(total_J));
    }
}
