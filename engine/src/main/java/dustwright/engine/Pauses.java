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
import dustwright.engine.network.ProducerResult;
import dustwright.engine.network.State;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.DesignSet;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.ProducerSteps;
import dustwright.engine.sheet.Sheet;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

    /**
     * A pause.
     *
     * @param state its name
     * @param id how its figures begin
     */
    private record Kind(String state, String id, String sheet, String title, Set<FindingCode> asked, Source reading) {}

    private final Plant plant;
    private final Kind kind;
    private final List<StateAnswer> answers;
    private final List<DutyPoint> duties;

    private Pauses(Plant plant, Kind kind, List<StateAnswer> answers) {
        this.plant = plant;
        this.kind = kind;
        this.answers = answers;
        this.duties = solved(answers);
    }

    /** The states that have an answer. */
    static List<DutyPoint> solved(List<StateAnswer> answers) {
        return answers.stream()
                .flatMap(answer -> answer.duty().match(Stream::of, why -> Stream.<DutyPoint>empty()))
                .toList();
    }

    // ---- the states

    /** All inlets shut; none where no producer runs. */
    static List<State> shutStates(Plant plant) {
        return running(plant).isEmpty() ? List.of() : List.of(paused(plant, SHUT.state(), List.of(), Set.of()));
    }

    /**
     * Every vent valve open: with all inlets shut first, then with the inlets of each set and of each single user, who need not shut them.
     * None where no producer runs or there is no vent valve.
     */
    static List<State> ventedStates(Plant plant) {
        Set<String> vented = plant.stations().stream()
                .filter(station -> station.vent().isPresent())
                .map(Station::id)
                .collect(Collectors.toSet());
        if (vented.isEmpty() || running(plant).isEmpty()) {
            return List.of();
        }
        Map<Set<String>, State> states = new LinkedHashMap<>();
        states.put(Set.of(), paused(plant, VENTED.state(), List.of(), vented));
        for (DesignSet set : plant.usage().designSets()) {
            states.putIfAbsent(
                    Set.copyOf(set.open()),
                    paused(plant, VENTED.state() + ", inlets of " + set.name() + " open", set.open(), vented));
        }
        for (Inlet inlet : plant.inlets()) {
            states.putIfAbsent(
                    Set.of(inlet.id()),
                    paused(plant, VENTED.state() + ", inlet " + inlet.id() + " open", List.of(inlet.id()), vented));
        }
        return List.copyOf(states.values());
    }

    private static State paused(Plant plant, String name, List<String> open, Set<String> vented) {
        State state = States.open(plant, open, FilterCondition.CLEAN);
        return new State(name, open, state.filter(), state.openBleeds(), vented, state.runningProducers());
    }

    private static List<Station> running(Plant plant) {
        return plant.stations().stream()
                .filter(station -> !station.producers().stream().allMatch(VacuumProducer::standby))
                .toList();
    }

    // ---- their sheets

    /** One sheet for each station whose producers run, of the state with all inlets shut. */
    static List<Sheet> shut(Plant plant, List<StateAnswer> answers) {
        return running(plant).stream()
                .map(new Pauses(plant, SHUT, answers)::sheet)
                .toList();
    }

    /**
     * One sheet for each such station that has a vent valve, of the states in which it is open, or that lacks the one it needs.
     *
     * @param sets what was solved of open inlets
     */
    static List<Sheet> vented(Plant plant, List<StateAnswer> answers, List<DutyPoint> sets) {
        Pauses pauses = new Pauses(plant, VENTED, answers);
        VentPull pull = new VentPull(plant, sets);
        List<Sheet> sheets = new ArrayList<>();
        for (Station station : running(plant)) {
            if (station.vent().isPresent()) {
                sheets.add(with(pauses.sheet(station), pull.of(station, answers.get(0))));
            } else if (pull.asked(station)) {
                sheets.add(with(pauses.withoutValve(station), pull.withoutValve(station, VENTED.state())));
            }
        }
        return sheets;
    }

    private static Sheet with(Sheet sheet, Finding more) {
        List<Finding> findings = new ArrayList<>(sheet.findings());
        findings.add(more);
        return new Sheet(sheet.id(), sheet.title(), sheet.about(), sheet.entries(), findings);
    }

    private Sheet withoutValve(Station station) {
        return sheet(station, List.of(unknownVacuum(station, VentPull.NO_VALVE)), List.of());
    }

    private Entry unknownVacuum(Station station, String why) {
        return Entry.unknown(kind.id() + "-vacuum/" + station.id(), "Vacuum at the producers, " + words(), why);
    }

    private Sheet sheet(Station station, List<Entry> entries, List<Finding> findings) {
        return new Sheet(
                kind.sheet() + station.id(),
                kind.title(),
                new Place(Place.Kind.STATION, station.id()),
                entries,
                findings);
    }

    private Sheet sheet(Station station) {
        List<Entry> entries = new ArrayList<>();
        Outcome<DutyPoint> atRest = answers.get(0).duty();
        entries.add(atRest.match(duty -> vacuum(station, duty), why -> unknownVacuum(station, why)));
        Optional<StationResult> shut = kind.equals(SHUT)
                ? atRest.match(duty -> Optional.of(at(station, duty)), why -> Optional.empty())
                : Optional.empty();
        shut.ifPresent(result -> station.relief().ifPresent(valve -> entries.add(relieved(station, valve, result))));
        if (!duties.isEmpty()) {
            station.producers().stream().filter(p -> !p.standby()).forEach(p -> entries.add(load(station, p)));
        }
        List<Finding> findings = findings(station);
        shut.ifPresent(result -> result.producers().stream()
                .filter(ProducerResult::checkValveShut)
                .forEach(p -> entries.add(behindShutValve(p, findings))));
        return sheet(station, entries, findings);
    }

    private Entry vacuum(Station station, DutyPoint duty) {
        Workings vacuum = new Workings(plant);
        vacuum.vacuum(at(station, duty).suction(), "at the producers, " + kind.state());
        return Entry.known(
                kind.id() + "-vacuum/" + station.id(),
                "Vacuum at the producers, " + words(),
                vacuum.steps().get(vacuum.steps().size() - 1).result().value(),
                vacuum.steps());
    }

    private String words() {
        return kind.equals(SHUT) ? kind.state() : kind.state() + ", all inlets shut";
    }

    static StationResult at(Station station, DutyPoint duty) {
        return duty.stations().stream()
                .filter(r -> r.id().equals(station.id()))
                .findFirst()
                .orElseThrow();
    }

    /** What is asked of each producer, in the state with its smallest margin; a state without an answer leaves its motor open. */
    private List<Finding> findings(Station station) {
        Map<String, Finding> worst = new LinkedHashMap<>();
        for (StateAnswer answer : answers) {
            answer.duty()
                    .match(
                            duty -> judged(station, answer, at(station, duty)),
                            why -> open(station, answer.state(), why))
                    .forEach(f -> worst.merge(
                            f.code() + "/" + f.where(),
                            f,
                            (one, other) -> other.margin() < one.margin() ? other : one));
        }
        return List.copyOf(worst.values());
    }

    private Stream<Finding> judged(Station station, StateAnswer answer, StationResult result) {
        Set<String> producers =
                station.producers().stream().map(VacuumProducer::id).collect(Collectors.toSet());
        return answer.findings().stream()
                .filter(f -> f.where().kind() == Place.Kind.PRODUCER
                        && producers.contains(f.where().id()))
                .filter(f -> kind.asked().contains(f.code()))
                .map(f -> ofMeasured(f, result));
    }

    private Stream<Finding> open(Station station, State state, String why) {
        return station.producers().stream()
                .filter(producer -> !producer.standby())
                .map(producer -> Finding.unjudged(
                        FindingCode.PRODUCER_POWER,
                        new Place(Place.Kind.PRODUCER, producer.id()),
                        state.name(),
                        Side.AT_MOST,
                        producer.nameplate(),
                        kind.reading(),
                        "This state has no solution: " + why));
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
