package dustwright.engine;

import dustwright.engine.air.Air;
import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.Finding;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.StationResult;
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

/** Vacuum and velocity along the path of one open inlet, from the tool to the producer. */
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
     */
    public record Stretch(
            String piece,
            Length length,
            PressureDifference vacuumFrom,
            PressureDifference vacuumTo,
            Optional<Velocity> velocityFrom,
            Optional<Velocity> velocityTo,
            Optional<Velocity> least) {}

    /** The profile of the inlet on whose path the state's smallest margin lies. */
    static List<PressureProfile> of(Plant plant, StateAnswer answer) {
        return answer.duty()
                .match(
                        duty -> duty.state().open().stream()
                                .min(Comparator.comparingDouble(inlet -> leastMarginOnPath(answer, duty, inlet)))
                                .map(inlet -> List.of(of(plant, duty, inlet)))
                                .orElse(List.of()),
                        why -> List.of());
    }

    private static double leastMarginOnPath(StateAnswer answer, DutyPoint duty, String inlet) {
        List<String> path =
                FlowPath.downstream(duty, inlet).stream().map(LegResult::id).toList();
        return answer.findings().stream()
                .filter(f ->
                        f.where().id().equals(inlet) || path.contains(f.where().id()))
                .mapToDouble(Finding::margin)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** The profile of one open inlet in a solved state. */
    static PressureProfile of(Plant plant, DutyPoint duty, String inlet) {
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
        List<LegResult> path = FlowPath.downstream(duty, inlet);
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
        return new Stretch(
                name,
                length,
                ambient.above(up),
                ambient.above(down),
                Optional.of(forward ? leg.velocityFrom() : leg.velocityTo()),
                Optional.of(forward ? leg.velocityTo() : leg.velocityFrom()),
                dusts.mostDemanding(leg)
                        .map(Dust::minimumVelocity)
                        .map(v -> new Velocity(v.metresPerSecond() * factor)));
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
                Optional.empty());
    }
}
