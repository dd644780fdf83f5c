package dustwright.engine;

import dustwright.engine.air.Air;
import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Place;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.RunGeometry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Vacuum and velocity along the path of one open inlet, from the tool to the producer. In a loop main an inlet has more than one path. */
public record PressureProfile(String state, String inlet, List<Stretch> stretches) {
    public PressureProfile {
        stretches = List.copyOf(stretches);
    }

    /**
     * One piece of the path.
     *
     * @param piece id of the run, or words such as "tool and hose", "filter"
     * @param length developed length; zero for a device
     * @param velocityFrom absent for devices
     * @param least velocity the dust needs here; absent where none is asked
     * @param most velocity above which this run wears; absent where none is asked
     */
    public record Stretch(
            String piece,
            Length length,
            PressureDifference vacuumFrom,
            PressureDifference vacuumTo,
            Optional<Velocity> velocityFrom,
            Optional<Velocity> velocityTo,
            Optional<Velocity> least,
            Optional<Velocity> most) {}

    /** The way of the air from an open inlet. */
    private record Way(String inlet, List<LegResult> path) {
        boolean passes(Place place) {
            return switch (place.kind()) {
                case INLET -> place.id().equals(inlet);
                case HOSE -> place.id().equals(TubeChecks.hose(inlet).id());
                case RUN -> path.stream().anyMatch(leg -> leg.id().equals(place.id()));
                default -> false;
            };
        }
    }

    /** The profile over the piece where the state's smallest margin lies. */
    public static List<PressureProfile> of(Plant plant, StateAnswer answer) {
        return answer.duty()
                .match(
                        duty -> ways(answer, duty)
                                .min(Comparator.comparingDouble(way -> leastMarginOn(answer, way)))
                                .map(way -> List.of(of(plant, duty, way)))
                                .orElse(List.of()),
                        why -> List.of());
    }

    /** The profile of the way through a place that has the smallest margin; that of the whole state where no air goes through the place. */
    public static List<PressureProfile> through(Plant plant, StateAnswer answer, Place place) {
        return answer.duty()
                .match(
                        duty -> duty.state().open().stream()
                                .flatMap(inlet -> ways(duty, inlet, run(duty, place.id())))
                                .filter(way -> way.passes(place))
                                .min(Comparator.comparingDouble(way -> leastMarginOn(answer, way)))
                                .map(way -> List.of(of(plant, duty, way)))
                                .orElseGet(() -> of(plant, answer)),
                        why -> List.of());
    }

    /** From every open inlet along the largest flow, and by way of the run with the smallest margin where some of its air goes there. */
    private static Stream<Way> ways(StateAnswer answer, DutyPoint duty) {
        Optional<LegResult> worst = answer.findings().stream()
                .filter(f -> f.where().kind() == Place.Kind.RUN)
                .min(Comparator.comparingDouble(Finding::margin))
                .flatMap(f -> run(duty, f.where().id()));
        return duty.state().open().stream().flatMap(inlet -> ways(duty, inlet, worst));
    }

    private static Stream<Way> ways(DutyPoint duty, String inlet, Optional<LegResult> by) {
        return Stream.concat(
                        Stream.of(FlowPath.downstream(duty, inlet)),
                        by.stream().map(run -> FlowPath.through(duty, inlet, run)))
                .map(path -> new Way(inlet, path));
    }

    private static Optional<LegResult> run(DutyPoint duty, String id) {
        return duty.legs().stream()
                .filter(l -> l.kind() == LegResult.Kind.RUN && l.id().equals(id))
                .findFirst();
    }

    private static double leastMarginOn(StateAnswer answer, Way way) {
        return answer.findings().stream()
                .filter(f -> way.passes(f.where()))
                .mapToDouble(Finding::margin)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static PressureProfile of(Plant plant, DutyPoint duty, Way way) {
        String inlet = way.inlet();
        Air air = plant.site().air();
        DustPaths dusts = DustPaths.of(plant, duty);
        List<Stretch> stretches = new ArrayList<>();
        duty.legs().stream()
                .filter(l -> l.kind() == LegResult.Kind.HOSE && l.id().equals(inlet))
                .findFirst()
                .ifPresent(hose -> stretches.add(stretch(
                        plant,
                        dusts,
                        hose,
                        "tool and hose",
                        plant.hose(plant.inlet(inlet).hose()).length())));
        List<LegResult> path = way.path();
        for (LegResult leg : path) {
            Run run = plant.run(leg.id());
            stretches.add(stretch(
                    plant,
                    dusts,
                    leg,
                    leg.id(),
                    RunGeometry.of(run, plant.tube(run.tube())).developed()));
        }
        if (!path.isEmpty()) {
            String end = FlowPath.end(path);
            duty.stations().stream().filter(s -> s.id().equals(end)).forEach(s -> machineEnd(air, s, stretches));
        }
        return new PressureProfile(duty.state().name(), inlet, stretches);
    }

    private static Stretch stretch(Plant plant, DustPaths dusts, LegResult leg, String name, Length length) {
        boolean forward = leg.flow().kgPerSecond() >= 0;
        AbsolutePressure up = forward ? leg.pressureFrom() : leg.pressureTo();
        AbsolutePressure down = forward ? leg.pressureTo() : leg.pressureFrom();
        AbsolutePressure ambient = plant.site().air().ambient();
        double factor = plant.requirements().transportFactor().value().value();
        boolean run = leg.kind() == LegResult.Kind.RUN;
        Optional<Dust> dust = dusts.mostDemanding(leg);
        return new Stretch(
                name,
                length,
                ambient.above(up),
                ambient.above(down),
                Optional.of(forward ? leg.velocityFrom() : leg.velocityTo()),
                Optional.of(forward ? leg.velocityTo() : leg.velocityFrom()),
                dust.map(Dust::minimumVelocity).map(v -> new Velocity(v.metresPerSecond() * factor)),
                plant.requirements()
                        .wearVelocity()
                        .filter(limit -> run && dust.isPresent())
                        .map(Limit::value));
    }

    private static void machineEnd(Air air, StationResult station, List<Stretch> stretches) {
        double receiver_Pa = air.ambient().above(station.receiver()).pascals();
        double afterFilter_Pa = receiver_Pa + station.filterLoss().pascals();
        stretches.add(device("filter", receiver_Pa, afterFilter_Pa));
        if (station.safetyFilterLoss().pascals() != 0) {
            stretches.add(device(
                    "safety filter",
                    afterFilter_Pa,
                    afterFilter_Pa + station.safetyFilterLoss().pascals()));
        }
    }

    private static Stretch device(String name, double from_Pa, double to_Pa) {
        return new Stretch(
                name,
                new Length(0),
                new PressureDifference(from_Pa),
                new PressureDifference(to_Pa),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
