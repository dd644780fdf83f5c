package dustwright.engine.sheet;

import dustwright.engine.network.DutyPoint;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** All sheets of a plant, in the order in which the dust meets what they are about. */
public final class Sheets {
    private Sheets() {}

    /**
     * Computes every sheet; stations side by side, as some look for the point where a cloth or a tool gives out.
     *
     * @param duties the solved states that sheets may look into for the governing one
     * @param weeks the dust's way over the week, by station
     * @param shut the state with all inlets shut, which equipment has to bear as well; absent where it has no answer
     * @param vented states with the vent valves open, which producers have to bear as well; empty where there are none
     */
    public static List<Sheet> of(
            Plant plant,
            List<DutyPoint> duties,
            DustWays ways,
            List<DustWeek> weeks,
            Optional<DutyPoint> shut,
            List<DutyPoint> vented) {
        List<Sheet> sheets = new ArrayList<>();
        plant.dusts().forEach(dust -> sheets.add(DustCardSheet.of(plant, dust)));
        sheets.addAll(plant.stations().parallelStream()
                .flatMap(station -> ofStation(plant, station, duties, ways, weeks, shut, vented).stream())
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
        RunningCostSheet.of(plant, duties, ways, weeks).ifPresent(sheets::add);
        return sheets;
    }

    private static List<Sheet> ofStation(
            Plant plant,
            Station station,
            List<DutyPoint> duties,
            DustWays ways,
            List<DustWeek> weeks,
            Optional<DutyPoint> shut,
            List<DutyPoint> vented) {
        List<Sheet> sheets = new ArrayList<>();
        Arrivals arrivals = Arrivals.of(plant, station, duties);
        sheets.add(ReceiverSheet.of(arrivals));
        sheets.add(FilterSheet.of(arrivals, ways.to(station)));
        SafetyFilterSheet.of(plant, station, duties).ifPresent(sheets::add);
        RotaryValveSheet.of(arrivals, shut.map(duty -> DustArrival.of(plant, duty, station.id())))
                .ifPresent(sheets::add);
        BaggingSheet.of(plant, station, ways, duties).ifPresent(sheets::add);
        sheets.add(DischargeSheet.of(plant, station, ways, weeks));
        sheets.add(AirUseSheet.of(plant, station, duties, ways, weeks));
        NoiseSheet.of(plant, station).ifPresent(sheets::add);
        List<DutyPoint> pauses = Stream.concat(shut.stream(), vented.stream()).toList();
        station.producers().forEach(p -> sheets.add(ProducerSheet.of(plant, p, duties, pauses)));
        return sheets;
    }
}
