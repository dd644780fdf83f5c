package dustwright.engine;

import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.State;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Volume;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What the plant needs and what the producers give at one station, in one state.
 *
 * @param system free air drawn through the filter against vacuum at the producers' inlet, the other stations at rest as in the state
 * @param producer free air the running producers pass against the same vacuum, less what the relief valve admits
 * @param operating where they meet
 */
public record OperatingChart(
        String station, String state, List<ChartPoint> system, List<ChartPoint> producer, ChartPoint operating) {
    private static final int POINTS = 16;
    /** The probe that draws the system curve runs from this share of the duty's suction volume ... */
    private static final double LEAST_SHARE = 0.05;
    /** ... to this share [-]. */
    private static final double GREATEST_SHARE = 1.6;

    public OperatingChart {
        system = List.copyOf(system);
        producer = List.copyOf(producer);
    }

    /** One point of a curve. */
    public record ChartPoint(FreeAirFlow flow, PressureDifference vacuum) {}

    /** The chart of a station, where it moves air in a solved state. */
    static Optional<OperatingChart> of(Plant plant, StateAnswer answer, String station) {
        return answer.duty()
                .match(
                        duty -> duty.stations().stream()
                                .filter(s -> s.id().equals(station))
                                .filter(s -> s.producers().stream()
                                        .anyMatch(p -> p.flow().kgPerSecond() > 0))
                                .map(s -> of(plant, duty, s))
                                .findFirst(),
                        why -> Optional.empty());
    }

    private static OperatingChart of(Plant plant, DutyPoint duty, StationResult at) {
        Station station = plant.station(at.id());
        double drawn_m3PerS = at.producers().stream()
                .mapToDouble(p -> p.inletFlow().cubicMetresPerSecond())
                .sum();
        List<ChartPoint> system = IntStream.rangeClosed(0, POINTS)
                .mapToDouble(n -> LEAST_SHARE + (GREATEST_SHARE - LEAST_SHARE) * n / POINTS)
                .mapToObj(share -> probe(plant, duty.state(), station, share * drawn_m3PerS))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparing(p -> p.flow()))
                .toList();
        return new OperatingChart(
                at.id(),
                duty.state().name(),
                system,
                producerCurve(plant, duty.state(), station, at),
                point(plant, at));
    }

    /** A point of the system curve: the station's producers replaced by an ideal pump of a given suction volume, relief valve shut. */
    private static Optional<ChartPoint> probe(Plant plant, State state, Station station, double suction_m3PerS) {
        VacuumProducer ideal = ideal(station.producers().get(0), suction_m3PerS);
        Plant probed = plant.withStation(station.withProducers(List.of(ideal), Optional.empty()));
        Set<String> running = new HashSet<>(state.runningProducers());
        station.producers().forEach(p -> running.remove(p.id()));
        running.add(ideal.id());
        return solved(probed, state.withRunning(running), station.id());
    }

    private static VacuumProducer ideal(VacuumProducer like, double suction_m3PerS) {
        RotationalSpeed oneTurnPerSecond = new RotationalSpeed(1);
        return new VacuumProducer(
                like.id(),
                new Machine.LobePump(new Volume(suction_m3PerS), new RotationalSpeed(0), 1, new Power(0)),
                new Drive.Fixed(oneTurnPerSecond),
                like.motor(),
                like.deepestVacuum(),
                like.greatestRise(),
                oneTurnPerSecond,
                oneTurnPerSecond,
                Optional.empty(),
                false);
    }

    /** Points of the producers' curve: the station alone, fed with a given flow where the tubing would enter. */
    private static List<ChartPoint> producerCurve(Plant plant, State state, Station station, StationResult at) {
        Set<String> own = new HashSet<>(state.runningProducers());
        own.retainAll(station.producers().stream().map(VacuumProducer::id).toList());
        State alone = state.withRunning(own)
                .withOpen(List.of())
                .withFeeding(Set.of())
                .withOpenBleeds(Set.of())
                .withVented(Set.of());
        List<ChartPoint> points = new ArrayList<>();
        for (int n = 0; n <= POINTS; n++) {
            double share = GREATEST_SHARE * n / POINTS;
            MassFlow fed = new MassFlow(share * at.throughFilter().kgPerSecond());
            solved(plant.stationAlone(station.withoutRotaryValve(), fed), alone, station.id())
                    .filter(p -> p.vacuum().pascals() >= 0)
                    .ifPresent(points::add);
        }
        return points;
    }

    private static Optional<ChartPoint> solved(Plant plant, State state, String station) {
        return DutyPointSolver.solve(plant, state)
                .match(d -> Optional.of(point(plant, d, station)), why -> Optional.empty());
    }

    private static ChartPoint point(Plant plant, DutyPoint duty, String station) {
        StationResult at = duty.stations().stream()
                .filter(s -> s.id().equals(station))
                .findFirst()
                .orElseThrow();
        return point(plant, at);
    }

    private static ChartPoint point(Plant plant, StationResult at) {
        return new ChartPoint(
                FreeAirFlow.of(at.throughFilter()), plant.site().air().ambient().above(at.suction()));
    }
}
