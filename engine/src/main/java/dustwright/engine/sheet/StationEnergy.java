package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.cost.Energy;
import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.plant.Costs;
import dustwright.engine.plant.DesignSet;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Shifts;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Coupling;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.ElectricalEnergy;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.WorkingTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Electrical energy of a station's producers over a year, from the solved sets and the shifts. */
final class StationEnergy {
    private static final Source BALANCE = Source.published("energy balance");
    private static final Source MEAN =
            Source.ownReading("mean of the design sets that were solved, each filter condition alike");
    private static final double HOUR_s = 3600;
    static final String NO_HOURS = "Enter \"shifts\" of the usage, and \"feed\" of the inlets.";

    private final Plant plant;
    private final Station station;
    private final DustWays ways;
    private final Costs costs;
    private final Optional<DustWeek> week;

    StationEnergy(Plant plant, Station station, DustWays ways, Costs costs, List<DustWeek> weeks) {
        this.week = DustWeek.at(station, weeks);
        this.plant = plant;
        this.station = station;
        this.ways = ways;
        this.costs = costs;
    }

    /** Steps to the energy of a year, or why it is not known. */
    Outcome<List<Step>> ofYear(List<DutyPoint> duties) {
        Optional<Shifts> shifts = plant.operation().shifts();
        Optional<CleaningHours> hours = CleaningHours.ofWeek(plant, ways.to(station), week);
        Optional<Ratio> efficiency = motorEfficiency();
        List<Term> powers = powers(duties);
        if (shifts.isEmpty() || hours.isEmpty()) {
            return new Outcome.NotSolved<>(NO_HOURS);
        }
        if (efficiency.isEmpty()) {
            return new Outcome.NotSolved<>("Enter \"motor efficiency\" of the costs, or the motors' own.");
        }
        if (powers.isEmpty()) {
            return new Outcome.NotSolved<>("No design set was solved.");
        }
        int weeks = shifts.get().weeksPerYear();
        double loaded_h = weeks * hours.get().vacuuming_s() / HOUR_s;
        List<Step> steps = new ArrayList<>();
        Power mean = new Power(
                powers.stream().mapToDouble(term -> term.value().si()).average().orElseThrow());
        steps.add(new Step(
                "CST-11",
                "P = mean of the solved design sets",
                powers,
                new Term("P", "shaft power of the running producers", mean),
                MEAN));
        steps.add(step(
                "CST-11",
                "h = n t",
                BALANCE,
                new Term("h", "hours of a year while users vacuum", new WorkingTime(loaded_h * HOUR_s)),
                new Term("n", "weeks worked in a year", new Ratio(weeks)),
                new Term(
                        "t",
                        "vacuuming in a week, without waiting",
                        new WorkingTime(hours.get().vacuuming_s()))));
        steps.add(energy("while users vacuum", mean, loaded_h, efficiency.get()));
        double unloaded_h = unloaded_h(shifts.get(), hours.get());
        if (shifts.get().producersRunOn() || unloaded_h > 0) {
            return UnloadedPower.of(plant, station)
                    .match(
                            unloaded -> {
                                addUnloaded(steps, unloaded, unloaded_h, efficiency.get());
                                return new Outcome.Solved<>(steps);
                            },
                            why -> new Outcome.NotSolved<>("Power while unloaded: " + why));
        }
        return new Outcome.Solved<>(steps);
    }

    private void addUnloaded(List<Step> steps, List<Step> unloaded, double hours, Ratio efficiency) {
        Step loaded = steps.get(steps.size() - 1);
        steps.addAll(unloaded);
        Power power = (Power) unloaded.get(unloaded.size() - 1).result().value();
        Step energy = energy("while unloaded", power, hours, efficiency);
        steps.add(energy);
        steps.add(sum(loaded, energy));
    }

    /** Hours of a year in which producers turn and nobody vacuums: users wait, or the shift is not over. */
    private static double unloaded_h(Shifts shifts, CleaningHours hours) {
        double shifts_s = shifts.perWeek() * shifts.length().seconds();
        double unloaded_s = shifts.producersRunOn() ? Math.max(0, shifts_s - hours.vacuuming_s()) : hours.waiting_s();
        return shifts.weeksPerYear() * unloaded_s / HOUR_s;
    }

    /** How long the producers of a station turn in a year, loaded or not; empty where nobody says how long users vacuum. */
    static Optional<WorkingTime> turning(Plant plant, Station station, DustWays ways, List<DustWeek> weeks) {
        return plant.operation()
                .shifts()
                .flatMap(shifts -> CleaningHours.ofWeek(plant, ways.to(station), DustWeek.at(station, weeks))
                        .map(hours -> new WorkingTime(
                                shifts.weeksPerYear() * hours.vacuuming_s() + unloaded_h(shifts, hours) * HOUR_s)));
    }

    /** Whether producers turn on while users wait, and nobody knows how long that is: then the hours leave it out. */
    static boolean waitingLeftOut(Plant plant, Station station, List<DustWeek> weeks) {
        return plant.operation()
                        .shifts()
                        .filter(shifts -> !shifts.producersRunOn())
                        .isPresent()
                && DustWeek.at(station, weeks).isEmpty();
    }

    private Step energy(String when, Power power, double hours, Ratio efficiency) {
        Ratio drive = driveEfficiency();
        double energy_kWh = Energy.annual_kWh(power.watts(), efficiency.value(), drive.value(), hours);
        return step(
                "CST-11",
                "E = P h / (η_motor η_drive)",
                BALANCE,
                new Term("E", "electrical energy of a year " + when, new ElectricalEnergy(energy_kWh * 3.6e6)),
                new Term("P", "shaft power " + when, power),
                new Term("h", "hours of a year " + when, new WorkingTime(hours * HOUR_s)),
                new Term("η_motor", "efficiency of the motors", efficiency),
                new Term("η_drive", driveWords(), drive));
    }

    /** Mean of the running producers, weighted alike: 1 of one that its motor turns directly, without a frequency drive. */
    private Ratio driveEfficiency() {
        return new Ratio(running().stream()
                .mapToDouble(p -> turnsDirectly(p) ? 1 : costs.driveEfficiency().value())
                .average()
                .orElse(costs.driveEfficiency().value()));
    }

    private String driveWords() {
        long direct = running().stream().filter(StationEnergy::turnsDirectly).count();
        if (direct == 0) {
            return "efficiency of belts and drive";
        }
        return direct == running().size()
                ? "directly coupled, no frequency drive: nothing is lost in either"
                : "efficiency of belts and drive, mean of the machines; 1 where directly coupled without a frequency drive";
    }

    private static boolean turnsDirectly(VacuumProducer producer) {
        return !producer.driven()
                && producer.coupling().filter(Coupling.Direct.class::isInstance).isPresent();
    }

    private static Step sum(Step loaded, Step unloaded) {
        double energy_J =
                loaded.result().value().si() + unloaded.result().value().si();
        return step(
                "CST-11",
                "E = E_loaded + E_unloaded",
                BALANCE,
                new Term("E", "electrical energy of a year", new ElectricalEnergy(energy_J)),
                loaded.result(),
                unloaded.result());
    }

    /** Of the motors themselves where all say it, weighted alike; else the stated one. */
    private Optional<Ratio> motorEfficiency() {
        List<Double> own = running().stream()
                .flatMap(producer -> producer.motor().efficiency().stream())
                .toList();
        return own.size() == running().size() && !own.isEmpty()
                ? Optional.of(new Ratio(
                        own.stream().mapToDouble(Double::doubleValue).average().orElseThrow()))
                : costs.motorEfficiency();
    }

    private List<VacuumProducer> running() {
        return station.producers().stream().filter(p -> !p.standby()).toList();
    }

    /** Shaft power of the running producers in each solved design set. */
    private List<Term> powers(List<DutyPoint> duties) {
        Set<List<String>> sets =
                plant.usage().designSets().stream().map(DesignSet::open).collect(Collectors.toSet());
        return duties.stream()
                .filter(duty -> sets.isEmpty() || sets.contains(duty.state().open()))
                .map(duty -> new Term("P", "set " + duty.state().name(), new Power(power_W(duty))))
                .toList();
    }

    private double power_W(DutyPoint duty) {
        return duty.stations().stream()
                .filter(result -> result.id().equals(station.id()))
                .flatMap(result -> result.producers().stream())
                .filter(ProducerResult::running)
                .mapToDouble(producer -> producer.shaftPower().watts())
                .sum();
    }
}
