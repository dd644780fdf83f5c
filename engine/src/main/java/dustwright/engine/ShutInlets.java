package dustwright.engine;

import dustwright.engine.electrical.MotorRating;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
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
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.sheet.DustHeat;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.ProducerSteps;
import dustwright.engine.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Every user has shut his inlet, or the tubing is blocked, and the producers turn on: only what leaks in, the rotary valve and the relief
 * valve bring them air. That is no set of users, and it comes every day. What is asked of a producer in a set is asked of it there.
 */
final class ShutInlets {
    /** Name of the state. */
    static final String STATE = "all inlets shut";

    private static final Set<FindingCode> ASKED = Set.of(
            FindingCode.PRODUCER_VACUUM,
            FindingCode.PRODUCER_POWER,
            FindingCode.PRODUCER_TORQUE,
            FindingCode.PRODUCER_TEMPERATURE,
            FindingCode.CURVE_DEEP_END);

    private static final Source READING = Source.ownReading(
            "all inlets shut, vent valve shut, every producer that does not stand by runs; leaks, rotary valve, bleeds and relief valve"
                    + " bring its air");

    private final Plant plant;
    private final DutyPoint duty;

    private ShutInlets(Plant plant, DutyPoint duty) {
        this.plant = plant;
        this.duty = duty;
    }

    /** One sheet for each station whose producers run. */
    static List<Sheet> of(Plant plant, Outcome<DutyPoint> solved) {
        List<Station> running = plant.stations().stream()
                .filter(station -> !station.producers().stream().allMatch(VacuumProducer::standby))
                .toList();
        if (running.isEmpty()) {
            return List.of();
        }
        return solved.match(
                duty -> running.stream().map(new ShutInlets(plant, duty)::sheet).toList(),
                why -> running.stream().map(station -> notSolved(station, why)).toList());
    }

    /** The state itself; not solved where no station has a producer that runs. */
    static Outcome<DutyPoint> solved(Plant plant) {
        if (plant.stations().stream()
                .flatMap(station -> station.producers().stream())
                .allMatch(VacuumProducer::standby)) {
            return new Outcome.NotSolved<>("no producer runs");
        }
        State shut = States.open(plant, List.of(), FilterCondition.CLEAN);
        State named = new State(
                STATE, List.of(), shut.filter(), shut.openBleeds(), shut.ventedStations(), shut.runningProducers());
        try {
            return new DutyPointSolver(Network.compile(plant)).solve(named);
        } catch (IllegalArgumentException outsideFormula) {
            return new Outcome.NotSolved<>(String.valueOf(outsideFormula.getMessage()));
        }
    }

    private static Sheet sheet(Station station, List<Entry> entries, List<Finding> findings) {
        return new Sheet(
                "shut-inlets/" + station.id(),
                "All inlets shut",
                new Place(Place.Kind.STATION, station.id()),
                entries,
                findings);
    }

    private static Sheet notSolved(Station station, String why) {
        List<Finding> findings = station.producers().stream()
                .filter(producer -> !producer.standby())
                .map(producer -> Finding.unjudged(
                        FindingCode.PRODUCER_POWER,
                        new Place(Place.Kind.PRODUCER, producer.id()),
                        STATE,
                        Side.AT_MOST,
                        producer.nameplate(),
                        READING,
                        "This state has no solution: " + why))
                .toList();
        return sheet(
                station,
                List.of(Entry.unknown("shut-vacuum/" + station.id(), "Vacuum at the producers, all inlets shut", why)),
                findings);
    }

    private Sheet sheet(Station station) {
        StationResult result = duty.stations().stream()
                .filter(r -> r.id().equals(station.id()))
                .findFirst()
                .orElseThrow();
        List<Entry> entries = new ArrayList<>();
        Workings vacuum = new Workings(plant);
        vacuum.vacuum(result.suction(), "at the producers, " + STATE);
        entries.add(Entry.known(
                "shut-vacuum/" + station.id(),
                "Vacuum at the producers, all inlets shut",
                vacuum.steps().get(vacuum.steps().size() - 1).result().value(),
                vacuum.steps()));
        station.relief().ifPresent(valve -> entries.add(relieved(station, valve, result)));
        Set<String> producers =
                station.producers().stream().map(VacuumProducer::id).collect(Collectors.toSet());
        result.producers().stream().filter(ProducerResult::running).forEach(p -> entries.add(load(station, p)));
        List<Finding> findings = StationChecks.of(plant, duty).stream()
                .filter(f -> f.where().kind() == Place.Kind.PRODUCER
                        && producers.contains(f.where().id()))
                .filter(f -> ASKED.contains(f.code()))
                .toList();
        DustHeat heat = DustHeat.at(plant, station);
        List<Finding> all = new ArrayList<>(findings);
        result.producers().stream()
                .filter(p -> p.running() && !p.checkValveShut() && !takesTheHeat(station, p))
                .flatMap(p -> leaving(heat, p).stream())
                .forEach(all::add);
        return sheet(station, entries, all);
    }

    private static boolean takesTheHeat(Station station, ProducerResult result) {
        return station.producers().stream()
                .anyMatch(p -> p.id().equals(result.id()) && p.machine().sealWaterTakesTheHeat());
    }

    private Optional<Finding> leaving(DustHeat heat, ProducerResult result) {
        Temperature site = plant.site().air().temperature();
        Temperature leaving = new Temperature(site.kelvin() + result.rise().kelvin());
        return heat.leaving(
                result.id(),
                STATE,
                leaving,
                List.of(new Step(
                        "PRD-23",
                        "T_out = T + ΔT",
                        List.of(
                                new Term("T", "air of the site", site),
                                new Term("ΔT", "rise, " + STATE, result.rise())),
                        new Term("T_out", "air leaving the producer", leaving),
                        Source.published("first law: the work done on the air stays in it"))));
    }

    private Entry relieved(Station station, ReliefValve valve, StationResult result) {
        FreeAirFlow passed = FreeAirFlow.of(result.relief());
        Step step = new Step(
                "VLV-1",
                "Q = Q_rated (v − set)/acc up to set + acc, above it Q_rated √(v/(set + acc))",
                List.of(
                        new Term("Q_rated", "its rated flow", valve.rated()),
                        new Term("set", "vacuum at which it opens", valve.set()),
                        new Term("acc", "further vacuum to rated flow", valve.accumulation()),
                        new Term(
                                "v",
                                "vacuum at the producers, " + STATE,
                                plant.site().air().ambient().above(result.suction()))),
                new Term("Q", "free air through the relief valve", passed),
                Source.commonPractice());
        return Entry.known("shut-relief/" + station.id(), "Air through the relief valve", passed, List.of(step));
    }

    private Entry load(Station station, ProducerResult result) {
        VacuumProducer producer = station.producers().stream()
                .filter(p -> p.id().equals(result.id()))
                .findFirst()
                .orElseThrow();
        Ratio load = new Ratio(MotorRating.load(
                result.shaftPower().watts(), producer.nameplate().watts()));
        List<Step> steps =
                new ArrayList<>(ProducerSteps.power(producer, plant.site().air(), result));
        steps.add(new Step(
                "ELE-2",
                "load = P_shaft / P_nameplate",
                List.of(
                        new Term("P_shaft", "shaft power, " + STATE, result.shaftPower()),
                        new Term("P_nameplate", "nameplate", producer.nameplate())),
                new Term("load", "load of the motor", load),
                Source.published("definition")));
        return Entry.known("shut-load/" + producer.id(), "Motor load of " + producer.id(), load, steps);
    }
}
