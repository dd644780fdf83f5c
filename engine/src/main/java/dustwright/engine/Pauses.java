package dustwright.engine;

import dustwright.engine.electrical.MotorRating;
import dustwright.engine.finding.Derivation;
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
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.ProducerSteps;
import dustwright.engine.sheet.Sheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Pauses: every user has shut his inlet, or the tubing is blocked, and the producers turn on. Only what leaks in, the rotary valve and the
 * relief valve bring them air, or the open vent valve more than they ever get from users. That is no set of users, and it comes every
 * day. What is asked of a producer in a set is asked of it there.
 */
final class Pauses {
    /** All inlets shut, and what is asked then. */
    private static final Kind SHUT = new Kind(
            "all inlets shut",
            "shut",
            "shut-inlets/",
            "All inlets shut",
            Set.of(
                    FindingCode.PRODUCER_VACUUM,
                    FindingCode.PRODUCER_POWER,
                    FindingCode.PRODUCER_TORQUE,
                    FindingCode.PRODUCER_TEMPERATURE,
                    FindingCode.PRODUCER_SHUT,
                    FindingCode.CURVE_DEEP_END),
            Source.ownReading(
                    "all inlets shut, vent valve shut, every producer that does not stand by runs; leaks, rotary valve, bleeds and relief"
                            + " valve bring its air"));

    /** The vent valve open, as at every start, and what is asked then: dynamic machines take most power where they pass most air. */
    private static final Kind VENTED = new Kind(
            "vent valve open",
            "vented",
            "vent-open/",
            "Vent valve open",
            Set.of(FindingCode.PRODUCER_POWER, FindingCode.PRODUCER_TORQUE),
            Source.ownReading(
                    "vent valves open, all inlets shut or those of a set or of one user open, clean filters, no dust; every producer"
                            + " that does not stand by runs"));

    /** Share of the vacuum of a set that an open vent valve may leave: flow goes by its root, so users keep less than 58 % of their air [-]. */
    private static final double PULL_LEFT = 1.0 / 3;

    private static final Source PULL = Source.ownReading(
            "an open vent valve leaves a trickle, 0.3 to 1 inHg by common practice; above a third of a set's vacuum users still vacuum");

    /**
     * A pause.
     *
     * @param state its name
     * @param id how its figures begin
     */
    private record Kind(String state, String id, String sheet, String title, Set<FindingCode> asked, Source reading) {}

    private static final String NO_VENT =
            "No vent valve is described: nobody knows what stops the pull while a container is changed or the cloth is"
                    + " cleaned off line. Enter \"vent valve\" of the station.";

    private final Plant plant;
    private final List<DutyPoint> duties;
    private final Kind kind;

    private Pauses(Plant plant, List<DutyPoint> duties, Kind kind) {
        this.plant = plant;
        this.duties = duties;
        this.kind = kind;
    }

    /** One sheet for each station whose producers run, of the state with all inlets shut. */
    static List<Sheet> shut(Plant plant, Outcome<DutyPoint> solved) {
        Outcome<List<DutyPoint>> one =
                solved.match(duty -> new Outcome.Solved<>(List.of(duty)), Outcome.NotSolved::new);
        return sheets(plant, running(plant), one, SHUT);
    }

    /** One sheet for each such station that has a vent valve, of the states in which it is open, or that lacks the one it needs. */
    static List<Sheet> vented(Plant plant, Outcome<List<DutyPoint>> solved, List<DutyPoint> sets) {
        List<Station> stations =
                running(plant).stream().filter(s -> s.vent().isPresent()).toList();
        List<Sheet> sheets = sheets(plant, stations, solved, VENTED);
        List<Sheet> all = new ArrayList<>(solved.match(
                duties -> IntStream.range(0, sheets.size())
                        .mapToObj(n -> new Pauses(plant, duties, VENTED).withPull(sheets.get(n), stations.get(n), sets))
                        .toList(),
                why -> sheets));
        running(plant).stream()
                .filter(station -> ventMissing(plant, station))
                .map(Pauses::withoutVent)
                .forEach(all::add);
        return all;
    }

    /** Whether something needs the pull to stop and no vent valve is stated. */
    private static boolean ventMissing(Plant plant, Station station) {
        boolean stopsForChange =
                station.container().filter(c -> !c.changing().vacuumingGoesOn()).isPresent();
        return station.vent().isEmpty()
                && (stopsForChange
                        || plant.requirements().receiver().cleaningInterval().isPresent());
    }

    /** What is left out is no pass: a vent valve too small would fail. */
    private static Sheet withoutVent(Station station) {
        return sheet(
                station,
                VENTED,
                List.of(Entry.unknown(
                        VENTED.id() + "-vacuum/" + station.id(),
                        "Vacuum at the producers, " + VENTED.state(),
                        NO_VENT)),
                List.of(Finding.unjudged(
                        FindingCode.VENT_PULL,
                        new Place(Place.Kind.VENT_VALVE, station.id()),
                        VENTED.state(),
                        Side.AT_MOST,
                        new Ratio(PULL_LEFT),
                        PULL,
                        NO_VENT)));
    }

    /** Whether the open vent valve takes the vacuum off the users, as changes of containers and cleaning off line take for granted. */
    private Sheet withPull(Sheet sheet, Station station, List<DutyPoint> sets) {
        AbsolutePressure ambient = plant.site().air().ambient();
        Optional<DutyPoint> shallowest = sets.stream()
                .filter(set -> !set.state().open().isEmpty()
                        && set.state().ventedStations().isEmpty())
                .filter(set -> ambient.pascals() > suction(set, station).pascals())
                .max(Comparator.comparing(set -> suction(set, station)));
        if (shallowest.isEmpty()) {
            return sheet;
        }
        PressureDifference service = ambient.above(suction(shallowest.get(), station));
        PressureDifference most = new PressureDifference(service.pascals() * PULL_LEFT);
        PressureDifference left = ambient.above(suction(duties.get(0), station));
        Step step = new Step(
                "VLV-4",
                "v_most = v_set / 3",
                List.of(new Term(
                        "v_set",
                        "vacuum at the producers, set "
                                + shallowest.get().state().name(),
                        service)),
                new Term("v_most", "most that the open vent valve may leave", most),
                PULL);
        Workings workings = new Workings(plant);
        workings.addAll(List.of(step));
        workings.vacuum(suction(duties.get(0), station), "at the producers, " + kind.state());
        List<Finding> findings = new ArrayList<>(sheet.findings());
        findings.add(Finding.of(
                FindingCode.VENT_PULL,
                new Place(Place.Kind.VENT_VALVE, station.id()),
                kind.state(),
                Side.AT_MOST,
                left,
                most,
                new Derivation(workings.steps(), PULL)));
        return new Sheet(sheet.id(), sheet.title(), sheet.about(), sheet.entries(), findings);
    }

    private static AbsolutePressure suction(DutyPoint duty, Station station) {
        return duty.stations().stream()
                .filter(r -> r.id().equals(station.id()))
                .findFirst()
                .orElseThrow()
                .suction();
    }

    private static List<Station> running(Plant plant) {
        return plant.stations().stream()
                .filter(station -> !station.producers().stream().allMatch(VacuumProducer::standby))
                .toList();
    }

    private static List<Sheet> sheets(Plant plant, List<Station> stations, Outcome<List<DutyPoint>> solved, Kind kind) {
        return solved.match(
                duties -> stations.stream()
                        .map(new Pauses(plant, duties, kind)::sheet)
                        .toList(),
                why -> stations.stream()
                        .map(station -> notSolved(station, why, kind))
                        .toList());
    }

    /** The state with all inlets shut; not solved where no station has a producer that runs. */
    static Outcome<DutyPoint> solvedShut(Plant plant) {
        return solved(plant, List.of(paused(plant, SHUT.state(), List.of(), Set.of())))
                .match(duties -> new Outcome.Solved<>(duties.get(0)), Outcome.NotSolved::new);
    }

    /**
     * Every vent valve open: with all inlets shut first, then with the inlets of each set and of each single user, who need not shut them.
     * Not solved where no producer runs or there is no vent valve.
     */
    static Outcome<List<DutyPoint>> solvedVented(Plant plant) {
        Set<String> vented = plant.stations().stream()
                .filter(station -> station.vent().isPresent())
                .map(Station::id)
                .collect(Collectors.toSet());
        if (vented.isEmpty()) {
            return new Outcome.NotSolved<>("no vent valve");
        }
        List<State> states = new ArrayList<>();
        states.add(paused(plant, VENTED.state(), List.of(), vented));
        plant.usage()
                .designSets()
                .forEach(set -> states.add(
                        paused(plant, VENTED.state() + ", inlets of " + set.name() + " open", set.open(), vented)));
        plant.inlets()
                .forEach(inlet -> states.add(paused(
                        plant, VENTED.state() + ", inlet " + inlet.id() + " open", List.of(inlet.id()), vented)));
        return solved(plant, states);
    }

    private static State paused(Plant plant, String name, List<String> open, Set<String> vented) {
        State state = States.open(plant, open, FilterCondition.CLEAN);
        return new State(name, open, state.filter(), state.openBleeds(), vented, state.runningProducers());
    }

    private static Outcome<List<DutyPoint>> solved(Plant plant, List<State> states) {
        if (running(plant).isEmpty()) {
            return new Outcome.NotSolved<>("no producer runs");
        }
        List<DutyPoint> duties = new ArrayList<>();
        try {
            DutyPointSolver solver = new DutyPointSolver(Network.compile(plant));
            for (State state : states) {
                Outcome<DutyPoint> solved = solver.solve(state);
                if (solved instanceof Outcome.NotSolved<DutyPoint> open) {
                    return new Outcome.NotSolved<>(state.name() + ": " + open.why());
                }
                solved.match(duties::add, why -> false);
            }
        } catch (IllegalArgumentException outsideFormula) {
            return new Outcome.NotSolved<>(String.valueOf(outsideFormula.getMessage()));
        }
        return new Outcome.Solved<>(duties);
    }

    private static Sheet sheet(Station station, Kind kind, List<Entry> entries, List<Finding> findings) {
        return new Sheet(
                kind.sheet() + station.id(),
                kind.title(),
                new Place(Place.Kind.STATION, station.id()),
                entries,
                findings);
    }

    private static Sheet notSolved(Station station, String why, Kind kind) {
        List<Finding> findings = station.producers().stream()
                .filter(producer -> !producer.standby())
                .map(producer -> Finding.unjudged(
                        FindingCode.PRODUCER_POWER,
                        new Place(Place.Kind.PRODUCER, producer.id()),
                        kind.state(),
                        Side.AT_MOST,
                        producer.nameplate(),
                        kind.reading(),
                        "This state has no solution: " + why))
                .toList();
        return sheet(
                station,
                kind,
                List.of(Entry.unknown(
                        kind.id() + "-vacuum/" + station.id(), "Vacuum at the producers, " + kind.state(), why)),
                findings);
    }

    private Sheet sheet(Station station) {
        StationResult result = at(station, duties.get(0));
        List<Entry> entries = new ArrayList<>();
        Workings vacuum = new Workings(plant);
        vacuum.vacuum(
                result.suction(), "at the producers, " + duties.get(0).state().name());
        entries.add(Entry.known(
                kind.id() + "-vacuum/" + station.id(),
                "Vacuum at the producers, " + words(),
                vacuum.steps().get(vacuum.steps().size() - 1).result().value(),
                vacuum.steps()));
        if (kind.equals(SHUT)) {
            station.relief().ifPresent(valve -> entries.add(relieved(station, valve, result)));
        }
        station.producers().stream().filter(p -> !p.standby()).forEach(p -> entries.add(load(station, p)));
        List<Finding> findings = new ArrayList<>(findings(station));
        if (kind.equals(SHUT)) {
            result.producers().stream()
                    .filter(ProducerResult::checkValveShut)
                    .forEach(p -> entries.add(behindShutValve(p, findings)));
        }
        return sheet(station, kind, entries, findings);
    }

    private String words() {
        return kind.equals(SHUT) ? kind.state() : kind.state() + ", all inlets shut";
    }

    private static StationResult at(Station station, DutyPoint duty) {
        return duty.stations().stream()
                .filter(r -> r.id().equals(station.id()))
                .findFirst()
                .orElseThrow();
    }

    /** What is asked of each producer, in the state with its smallest margin. */
    private List<Finding> findings(Station station) {
        Set<String> producers =
                station.producers().stream().map(VacuumProducer::id).collect(Collectors.toSet());
        Map<String, Finding> worst = new LinkedHashMap<>();
        for (DutyPoint duty : duties) {
            StationChecks.of(plant, duty).stream()
                    .filter(f -> f.where().kind() == Place.Kind.PRODUCER
                            && producers.contains(f.where().id()))
                    .filter(f -> kind.asked().contains(f.code()))
                    .map(f -> ofMeasured(f, at(station, duty)))
                    .forEach(f -> worst.merge(
                            f.code() + "/" + f.where(),
                            f,
                            (one, other) -> other.margin() < one.margin() ? other : one));
        }
        return List.copyOf(worst.values());
    }

    /** Told by name: it turns all through the pause and moves no air. */
    private Entry behindShutValve(ProducerResult result, List<Finding> findings) {
        Finding shut = findings.stream()
                .filter(f ->
                        f.code() == FindingCode.PRODUCER_SHUT && f.where().id().equals(result.id()))
                .findFirst()
                .orElseThrow();
        return Entry.known(
                "shut-check/" + result.id(),
                "Vacuum that " + result.id() + " reaches behind its shut check valve",
                shut.limit(),
                shut.derivation().steps());
    }

    /** A motor that holds by a power its machine's curve was not measured at: not known. */
    private Finding ofMeasured(Finding finding, StationResult result) {
        boolean beyond = kind.equals(VENTED)
                && result.producers().stream()
                        .anyMatch(p -> p.id().equals(finding.where().id()) && p.beyondPoints());
        return !beyond || !finding.holds()
                ? finding
                : Finding.unjudged(
                        finding.code(),
                        finding.where(),
                        finding.state(),
                        finding.side(),
                        finding.limit(),
                        kind.reading(),
                        "With the vent valve open it runs before the first point of its curve, so its power there is not measured: enter points of"
                                + " the curve down to that vacuum.");
    }

    private Entry relieved(Station station, ReliefValve valve, StationResult result) {
        FreeAirFlow passed = FreeAirFlow.of(result.relief());
        Step step = new Step(
                "VLV-1",
                "Q = Q_rated (v − set)/acc up to set + acc, above it Q_rated w_nozzle(v)/w_nozzle(set + acc) by TUB-21",
                List.of(
                        new Term("Q_rated", "its rated flow", valve.rated()),
                        new Term("set", "vacuum at which it opens", valve.set()),
                        new Term("acc", "further vacuum to rated flow", valve.accumulation()),
                        new Term(
                                "p_a",
                                "barometer, of which air chokes at 0.528282 behind the opening",
                                plant.site().air().ambient()),
                        new Term(
                                "v",
                                "vacuum at the producers, " + kind.state(),
                                plant.site().air().ambient().above(result.suction()))),
                new Term("Q", "free air through the relief valve", passed),
                Source.commonPractice());
        return Entry.known("shut-relief/" + station.id(), "Air through the relief valve", passed, List.of(step));
    }

    /** In the state in which it takes most power. */
    private Entry load(Station station, VacuumProducer producer) {
        DutyPoint worst = duties.stream()
                .max(Comparator.comparing(
                        duty -> result(station, producer, duty).shaftPower()))
                .orElseThrow();
        ProducerResult result = result(station, producer, worst);
        Ratio load = new Ratio(MotorRating.load(
                result.shaftPower().watts(), producer.nameplate().watts()));
        List<Step> steps =
                new ArrayList<>(ProducerSteps.power(producer, plant.site().air(), result));
        steps.add(new Step(
                "ELE-2",
                "load = P_shaft / P_nameplate",
                List.of(
                        new Term("P_shaft", "shaft power, " + worst.state().name(), result.shaftPower()),
                        new Term("P_nameplate", "nameplate", producer.nameplate())),
                new Term("load", "load of the motor", load),
                Source.published("definition")));
        String most = kind.equals(SHUT) ? "Motor load of " : "Greatest motor load of ";
        return Entry.known(kind.id() + "-load/" + producer.id(), most + producer.id(), load, steps);
    }

    private static ProducerResult result(Station station, VacuumProducer producer, DutyPoint duty) {
        return at(station, duty).producers().stream()
                .filter(p -> p.id().equals(producer.id()))
                .findFirst()
                .orElseThrow();
    }
}
