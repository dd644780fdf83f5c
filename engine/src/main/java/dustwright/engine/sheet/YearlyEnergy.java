package dustwright.engine.sheet;

import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.plant.Costs;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.ElectricalEnergy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Electrical energy of all producers, inflation fans and rotary valves over a year, as the running-cost sheet has it. */
public final class YearlyEnergy {
    private YearlyEnergy() {}

    /**
     * What takes energy.
     *
     * @param id of its entry
     * @param symbol of its energy in the sum
     * @param steps to its energy, or why it is not known
     */
    record Part(String id, String name, String symbol, Outcome<List<Step>> steps) {
        /** Its energy in the sum; empty where it is not known. */
        Optional<Term> term() {
            return steps.match(
                    done -> Optional.of(new Term(
                            symbol, name, done.get(done.size() - 1).result().value())),
                    why -> Optional.empty());
        }
    }

    /** Of all stations; empty where the plant file leaves the energy of any part open. */
    public static Optional<ElectricalEnergy> of(Plant plant, DustWays ways, List<DutyPoint> duties) {
        Optional<Costs> costs = plant.operation().costs();
        if (costs.isEmpty()) {
            return Optional.empty();
        }
        List<DustWeek> weeks = plant.stations().stream()
                .flatMap(station -> DustWeek.of(plant, station, ways).stream())
                .toList();
        List<Part> parts = parts(plant, costs.get(), duties, ways, weeks);
        List<Term> known = parts.stream().flatMap(part -> part.term().stream()).toList();
        return known.size() == parts.size() ? Optional.of(sum(known)) : Optional.empty();
    }

    static ElectricalEnergy sum(List<Term> parts) {
        return new ElectricalEnergy(
                parts.stream().mapToDouble(part -> part.value().si()).sum());
    }

    /** Every part, station by station. */
    static List<Part> parts(Plant plant, Costs costs, List<DutyPoint> duties, DustWays ways, List<DustWeek> weeks) {
        List<Part> parts = new ArrayList<>();
        for (Station station : plant.stations()) {
            String id = station.id();
            String ofYear =
                    StationEnergy.waitingLeftOut(plant, station, weeks) ? ", a year, without waiting" : ", a year";
            parts.add(new Part(
                    "energy-" + id,
                    "Energy of " + id + ofYear,
                    "E(" + id + ")",
                    new StationEnergy(plant, station, ways, costs, weeks).ofYear(duties)));
            FanEnergy.ofYear(station, weeks)
                    .ifPresent(steps -> parts.add(new Part(
                            "fan-energy-" + id, "Inflation fan of " + id + ", a year", "E(fan " + id + ")", steps)));
            ValveEnergy.ofYear(plant, station, ways, weeks)
                    .ifPresent(steps -> parts.add(new Part(
                            "valve-energy-" + id, "Rotary valve of " + id + ofYear, "E(valve " + id + ")", steps)));
        }
        return parts;
    }
}
