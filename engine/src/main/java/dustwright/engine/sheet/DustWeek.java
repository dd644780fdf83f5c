package dustwright.engine.sheet;

import dustwright.engine.bagging.Container;
import dustwright.engine.discharge.Discharge;
import dustwright.engine.discharge.DischargeLine;
import dustwright.engine.discharge.DustFlow;
import dustwright.engine.discharge.WorkWeek;
import dustwright.engine.plant.DesignSet;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Shifts;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Volume;
import dustwright.engine.rotaryvalve.RotaryValve;
import dustwright.engine.rotaryvalve.ValveCapacity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A year of ordinary weeks at one station, from inlets to bags.
 *
 * @param governing set with the largest rate of dust, which is picked up while anybody cleans
 * @param largest rate of dust in that set
 * @param loose bulk density of the dusts as they come together
 * @param holdUp volume of the receiver up to its high level; absent where not known, and then users wait while a container is changed
 * @param flow of all working weeks of a year, the course of the first one kept
 */
public record DustWeek(
        String station,
        DesignSet governing,
        MassFlow largest,
        Density loose,
        Optional<Volume> holdUp,
        DischargeLine line,
        WorkWeek week,
        DustFlow flow) {
    /** Name of the set with the largest rate. */
    public String set() {
        return governing.name();
    }

    /** Changes a week worked [1/week], by the dust of all weeks and what a container takes of it, not by whole changes (equation DIS-6). */
    double changesPerWeek() {
        return flow.collected_kg() / (flow.weeks() * line.container_kg());
    }

    /** Whether waiting leaves dust on the floor that was to be picked up: more than rounding. */
    public boolean leaves() {
        return flow.asked_kg() - flow.collected_kg() > 1e-9 * flow.asked_kg();
    }

    /** Absent where shifts, dust, its density or the container are not stated, or nobody knows what its rotary valve discharges. */
    public static Optional<DustWeek> of(Plant plant, Station station, DustWays ways) {
        StationDust load = ways.to(station);
        Optional<Double> loose_kgPerM3 = load.loose_kgPerM3(plant);
        Optional<Shifts> shifts = plant.operation().shifts();
        if (shifts.isEmpty()
                || load.cleaning_s().isEmpty()
                || loose_kgPerM3.isEmpty()
                || station.container().isEmpty()
                || !station.rotaryValve().stream().allMatch(RotaryValve::fillKnown)) {
            return Optional.empty();
        }
        DischargeLine line = line(station, station.container().get(), loose_kgPerM3.get());
        WorkWeek week = week(shifts.get(), load);
        return Optional.of(new DustWeek(
                station.id(),
                load.governing().orElseThrow(),
                new MassFlow(load.rate_kgPerS()),
                new Density(loose_kgPerM3.get()),
                holdUp(station),
                line,
                week,
                Discharge.over(line, week, shifts.get().weeksPerYear(), 1)));
    }

    /** The week of one station among those of a plant. */
    static Optional<DustWeek> at(Station station, List<DustWeek> weeks) {
        return weeks.stream().filter(w -> w.station().equals(station.id())).findFirst();
    }

    private static DischargeLine line(Station station, Container container, double loose_kgPerM3) {
        Optional<Volume> holdUp = holdUp(station);
        OptionalDouble valve_kgPerS = station.rotaryValve()
                .map(valve -> OptionalDouble.of(valve_kgPerS(valve, loose_kgPerM3)))
                .orElse(OptionalDouble.empty());
        return new DischargeLine(
                valve_kgPerS,
                holdUp.map(volume -> volume.cubicMetres() * loose_kgPerM3).orElse(0.0),
                BaggingSheet.taken_kg(container, loose_kgPerM3),
                container.changing().time().seconds(),
                container.changing().vacuumingGoesOn() && holdUp.isPresent() && valve_kgPerS.isPresent());
    }

    /** What a rotary valve discharges under a full hopper [kg/s] (equation RTV-1). */
    static double valve_kgPerS(RotaryValve valve, double loose_kgPerM3) {
        return ValveCapacity.capacity_kgPerS(
                valve.swept().cubicMetres(), valve.speed().revolutionsPerSecond(), valve.fill(), loose_kgPerM3);
    }

    private static WorkWeek week(Shifts shifts, StationDust load) {
        double shift_s = shifts.length().seconds();
        if (shifts.cleaning() instanceof Shifts.Cleaning.PickedUp) {
            return WorkWeek.ofPickUps(
                    shifts.daysPerWeek(), shifts.perDay(), shift_s, load.mixed(), load.cleaningRate_kgPerS());
        }
        return WorkWeek.ofShifts(
                shifts.daysPerWeek(),
                shifts.perDay(),
                shift_s,
                Math.min(shift_s, load.cleaning_s().orElseThrow()),
                load.rate_kgPerS());
    }

    /** Volume of the receiver from its outlet to its high level. */
    static Optional<Volume> holdUp(Station station) {
        return station.receiver().workingVolume();
    }
}
