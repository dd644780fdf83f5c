package dustwright.engine.sheet;

import dustwright.engine.network.DutyPoint;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** All sheets of a plant, in the order in which the dust meets what they are about. */
public final class Sheets {
    /** Beginnings of the ids and titles of sheets that look into solved states; all others come from the plant file and the week's dust. */
    private static final Set<String> OF_STATES = Set.of(
            "receiver",
            "filter",
            "safety-filter",
            "safety filter",
            "rotary-valve",
            "rotary valve",
            "bagging",
            "bulk bag",
            "drum",
            "container",
            "compressed-air",
            "compressed air",
            "producer",
            "vacuum producer",
            "running-cost",
            "running cost",
            "shut-inlets",
            "all inlets shut",
            "vent-open",
            "vent valve open");

    private Sheets() {}

    /**
     * What was solved for sheets to look into.
     *
     * @param duties the states in which sheets find the governing one
     * @param shut the state with all inlets shut, which equipment has to bear as well; absent where it has no answer
     * @param vented states with the vent valves open, which producers have to bear as well; empty where there are none
     * @param pausesKnown whether every state shut or vented has an answer
     */
    public record Solved(
            List<DutyPoint> duties, Optional<DutyPoint> shut, List<DutyPoint> vented, boolean pausesKnown) {
        /** States of open inlets alone. */
        public static Solved of(List<DutyPoint> duties) {
            return new Solved(duties, Optional.empty(), List.of(), true);
        }
    }

    /** Whether sheets whose id or title begins so look into solved states. */
    public static boolean ofStates(String beginning) {
        return OF_STATES.stream().anyMatch(name -> name.startsWith(beginning) || beginning.startsWith(name));
    }

    /**
     * Computes every sheet; stations side by side, as some look for the point where a cloth or a tool gives out.
     *
     * @param weeks the dust's way over the week, by station
     */
    public static List<Sheet> of(Plant plant, Solved solved, DustWays ways, List<DustWeek> weeks) {
        return of(plant, Optional.of(solved), ways, weeks);
    }

    /** Computes those that look into no solved state, the very same figures. */
    public static List<Sheet> withoutStates(Plant plant, DustWays ways, List<DustWeek> weeks) {
        return of(plant, Optional.empty(), ways, weeks);
    }

    private static List<Sheet> of(Plant plant, Optional<Solved> solved, DustWays ways, List<DustWeek> weeks) {
        List<Sheet> sheets = new ArrayList<>();
        plant.dusts().forEach(dust -> sheets.add(DustCardSheet.of(plant, dust)));
        sheets.addAll(plant.stations().parallelStream()
                .flatMap(station -> ofStation(plant, station, solved, ways, weeks).stream())
                .toList());
        Collecting.all(plant).forEach(here -> HazardSheet.of(plant, here).ifPresent(sheets::add));
        MotorUse.all(plant).forEach(use -> sheets.add(MotorSheet.of(plant, use)));
        if (!plant.stations().isEmpty()) {
            sheets.add(SupplySheet.of(plant));
            sheets.add(PanelSheet.of(plant));
        }
        for (int n = 0; n < plant.stations().size(); n++) {
            sheets.add(InstrumentSheet.of(plant, n));
        }
        solved.flatMap(states -> RunningCostSheet.of(plant, states.duties(), ways, weeks))
                .ifPresent(sheets::add);
        return sheets;
    }

    private static List<Sheet> ofStation(
            Plant plant, Station station, Optional<Solved> solved, DustWays ways, List<DustWeek> weeks) {
        List<Sheet> sheets = new ArrayList<>();
        solved.ifPresent(states -> sheets.addAll(ofEquipment(plant, station, states, ways)));
        sheets.add(DischargeSheet.of(plant, station, ways, weeks));
        solved.ifPresent(states -> sheets.add(AirUseSheet.of(plant, station, states.duties(), ways, weeks)));
        NoiseSheet.of(plant, station).ifPresent(sheets::add);
        solved.ifPresent(states -> station.producers().forEach(p -> sheets.add(ProducerSheet.of(plant, p, states))));
        return sheets;
    }

    private static List<Sheet> ofEquipment(Plant plant, Station station, Solved solved, DustWays ways) {
        List<Sheet> sheets = new ArrayList<>();
        Arrivals arrivals = Arrivals.of(plant, station, solved.duties());
        sheets.add(ReceiverSheet.of(arrivals));
        sheets.add(FilterSheet.of(arrivals, ways.to(station)));
        SafetyFilterSheet.of(plant, station, solved.duties()).ifPresent(sheets::add);
        RotaryValveSheet.of(arrivals, solved.shut().map(duty -> DustArrival.of(plant, duty, station.id())))
                .ifPresent(sheets::add);
        BaggingSheet.of(plant, station, ways, solved.duties()).ifPresent(sheets::add);
        return sheets;
    }
}
