package dustwright.engine.plant;

import dustwright.engine.conveying.Dust;
import dustwright.engine.electrical.Electrical;
import dustwright.engine.finding.Assumption;
import dustwright.engine.finding.Place;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.tubing.Bleed;
import dustwright.engine.tubing.Hose;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.Tool;
import dustwright.engine.tubing.Tube;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Set;

/**
 * One plant as one immutable value; everything else is computed from it. The plant file reader guarantees that every name used
 * resolves.
 */
public record Plant(
        String name,
        String note,
        Site site,
        List<Dust> dusts,
        List<Tube> tubes,
        List<Hose> hoses,
        List<Tool> tools,
        List<Point> points,
        List<Run> runs,
        List<Inlet> inlets,
        List<Bleed> bleeds,
        List<Held> held,
        List<Station> stations,
        Usage usage,
        Requirements requirements,
        Electrical electrical,
        Operation operation,
        List<ReasonedOverride> overrides,
        List<Assumption> assumptions) {
    public Plant {
        dusts = List.copyOf(dusts);
        tubes = List.copyOf(tubes);
        hoses = List.copyOf(hoses);
        tools = List.copyOf(tools);
        points = List.copyOf(points);
        runs = List.copyOf(runs);
        inlets = List.copyOf(inlets);
        bleeds = List.copyOf(bleeds);
        held = List.copyOf(held);
        stations = List.copyOf(stations);
        overrides = List.copyOf(overrides);
        assumptions = List.copyOf(assumptions);
    }

    /** A plant of whose electrical supply, panel and running nothing is said. */
    public Plant(
            String name,
            String note,
            Site site,
            List<Dust> dusts,
            List<Tube> tubes,
            List<Hose> hoses,
            List<Tool> tools,
            List<Point> points,
            List<Run> runs,
            List<Inlet> inlets,
            List<Bleed> bleeds,
            List<Held> held,
            List<Station> stations,
            Usage usage,
            Requirements requirements,
            List<ReasonedOverride> overrides,
            List<Assumption> assumptions) {
        this(
                name,
                note,
                site,
                dusts,
                tubes,
                hoses,
                tools,
                points,
                runs,
                inlets,
                bleeds,
                held,
                stations,
                usage,
                requirements,
                Electrical.UNKNOWN,
                Operation.UNKNOWN,
                overrides,
                assumptions);
    }

    public Inlet inlet(String id) {
        for (Inlet inlet : inlets) {
            if (inlet.id().equals(id)) {
                return inlet;
            }
        }
        throw new NoSuchElementException("inlet " + id);
    }

    public Tube tube(String id) {
        return tubes.stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
    }

    public Hose hose(String id) {
        return hoses.stream().filter(h -> h.id().equals(id)).findFirst().orElseThrow();
    }

    public Tool tool(String id) {
        return tools.stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
    }

    public Dust dust(String id) {
        return dusts.stream().filter(d -> d.id().equals(id)).findFirst().orElseThrow();
    }

    /** Whether an inlet feeds a dust of which nobody knows what it costs to carry. */
    public boolean feedsUnknownLoss(Inlet inlet) {
        return inlet.feed().kgPerSecond() > 0
                && inlet.dust().filter(id -> !dust(id).lossKnown()).isPresent();
    }

    public Run run(String id) {
        for (Run run : runs) {
            if (run.id().equals(id)) {
                return run;
            }
        }
        throw new NoSuchElementException("run " + id);
    }

    public Station station(String id) {
        return stations.stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
    }

    /** The same plant with other runs, inlets and stations. */
    public Plant with(List<Run> otherRuns, List<Inlet> otherInlets, List<Station> otherStations) {
        return new Plant(
                name,
                note,
                site,
                dusts,
                tubes,
                hoses,
                tools,
                points,
                otherRuns,
                otherInlets,
                bleeds,
                held,
                otherStations,
                usage,
                requirements,
                electrical,
                operation,
                overrides,
                assumptions);
    }

    /** The same plant with the producers of these ids in service and all others standing by: as asked, so nothing is taken of it from a file that is silent. */
    public Plant withInService(Set<String> producerIds) {
        List<Station> asked = new ArrayList<>();
        List<ReasonedOverride> others = new ArrayList<>(overrides);
        for (Station station : stations) {
            List<VacuumProducer> producers = station.producers().stream()
                    .map(p -> p.standingBy(!producerIds.contains(p.id())))
                    .toList();
            asked.add(station.withProducers(producers, station.relief()));
            producers.forEach(p -> others.add(ReasonedOverride.asked(
                    new Place(Place.Kind.PRODUCER, p.id()), p.standby() ? "standing by" : "in service")));
        }
        return new Plant(
                name,
                note,
                site,
                dusts,
                tubes,
                hoses,
                tools,
                points,
                runs,
                inlets,
                bleeds,
                held,
                asked,
                usage,
                requirements,
                electrical,
                operation,
                others,
                assumptions.stream().filter(a -> !ofStandby(a)).toList());
    }

    private static boolean ofStandby(Assumption assumption) {
        return assumption.place().kind() == Place.Kind.PRODUCER
                && assumption.what().startsWith("standby ");
    }

    /** The same plant with one station in place of the one of the same id. */
    public Plant withStation(Station other) {
        List<Station> replaced = stations.stream()
                .map(s -> s.id().equals(other.id()) ? other : s)
                .toList();
        return with(runs, inlets, replaced);
    }

    /** A piece of the plant by itself, its points among those of the whole. */
    public Plant piece(
            List<Run> itsRuns,
            List<Inlet> itsInlets,
            List<Bleed> itsBleeds,
            List<Held> itsHeld,
            List<Station> itsStations,
            Usage itsUsage) {
        return new Plant(
                name,
                note,
                site,
                dusts,
                tubes,
                hoses,
                tools,
                points,
                itsRuns,
                itsInlets,
                itsBleeds,
                itsHeld,
                itsStations,
                itsUsage,
                requirements,
                electrical,
                operation,
                overrides,
                assumptions);
    }

    /** The same plant with other runs and bleed valves. */
    public Plant withTubing(List<Run> otherRuns, List<Bleed> otherBleeds) {
        return piece(otherRuns, inlets, otherBleeds, held, stations, usage);
    }

    /** The same plant with other points and runs. */
    public Plant withPoints(List<Point> otherPoints, List<Run> otherRuns) {
        return new Plant(
                name,
                note,
                site,
                dusts,
                tubes,
                hoses,
                tools,
                otherPoints,
                otherRuns,
                inlets,
                bleeds,
                held,
                stations,
                usage,
                requirements,
                electrical,
                operation,
                overrides,
                assumptions);
    }

    /** The same plant with another electrical supply and panel. */
    public Plant withElectrical(Electrical other) {
        return new Plant(
                name,
                note,
                site,
                dusts,
                tubes,
                hoses,
                tools,
                points,
                runs,
                inlets,
                bleeds,
                held,
                stations,
                usage,
                requirements,
                other,
                operation,
                overrides,
                assumptions);
    }

    /** A station by itself on this site, with air supplied where the tubing would enter. */
    public Plant stationAlone(Station station, MassFlow supplied) {
        return new Plant(
                name,
                note,
                site,
                dusts,
                tubes,
                hoses,
                tools,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(new Held.Supply(station.id(), supplied)),
                List.of(station),
                usage,
                requirements,
                electrical,
                operation,
                overrides,
                assumptions);
    }
}
