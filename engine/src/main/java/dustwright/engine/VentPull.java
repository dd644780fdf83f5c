package dustwright.engine;

import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Whether an open vent valve takes the vacuum off the users, as changes of containers and cleaning off line take for granted. */
final class VentPull {
    /** Share of the vacuum of a set that an open vent valve may leave: flow goes by its root, so users keep less than 58 % of their air [-]. */
    private static final double PULL_LEFT = 1.0 / 3;

    private static final Source PULL = Source.ownReading(
            "an open vent valve leaves a trickle, 0.3 to 1 inHg by common practice; above a third of a set's vacuum users still vacuum");

    static final String NO_VALVE =
            "No vent valve is described: nobody knows what stops the pull while a container is changed or the cloth is"
                    + " cleaned off line. Enter \"vent valve\" of the station.";

    private final Plant plant;
    private final List<DutyPoint> sets;
    private final AbsolutePressure ambient;

    /** @param sets what was solved of open inlets */
    VentPull(Plant plant, List<DutyPoint> sets) {
        this.plant = plant;
        this.sets = sets;
        this.ambient = plant.site().air().ambient();
    }

    /** Whether something needs the pull to stop. */
    boolean asked(Station station) {
        boolean stopsForChange =
                station.container().filter(c -> !c.changing().vacuumingGoesOn()).isPresent();
        return stopsForChange
                || plant.requirements().receiver().cleaningInterval().isPresent();
    }

    /** What is left out is no pass: a vent valve too small would fail. */
    Finding withoutValve(Station station, String state) {
        return open(station, state, NO_VALVE);
    }

    /** @param vented its valve open and all inlets shut */
    Finding of(Station station, StateAnswer vented) {
        String state = vented.state().name();
        return vented.duty()
                .match(
                        duty -> shallowest(station)
                                .map(set -> judged(station, state, duty, set))
                                .orElseGet(
                                        () -> open(
                                                station,
                                                state,
                                                "No set of open inlets was solved, so nobody knows what vacuum its users have.")),
                        why -> open(station, state, "This state has no solution: " + why));
    }

    private Finding open(Station station, String state, String why) {
        return Finding.unjudged(
                FindingCode.VENT_PULL,
                new Place(Place.Kind.VENT_VALVE, station.id()),
                state,
                Side.AT_MOST,
                new Ratio(PULL_LEFT),
                PULL,
                why);
    }

    /** The set whose users have the least vacuum. */
    private Optional<DutyPoint> shallowest(Station station) {
        return sets.stream()
                .filter(set -> !set.state().open().isEmpty())
                .filter(set -> ambient.pascals() > suction(set, station).pascals())
                .max(Comparator.comparing(set -> suction(set, station)));
    }

    private Finding judged(Station station, String state, DutyPoint vented, DutyPoint set) {
        PressureDifference service = ambient.above(suction(set, station));
        PressureDifference most = new PressureDifference(service.pascals() * PULL_LEFT);
        Workings workings = new Workings(plant);
        workings.add(
                "VLV-4",
                "v_most = v_set / 3",
                List.of(new Term(
                        "v_set", "vacuum at the producers, set " + set.state().name(), service)),
                new Term("v_most", "most that the open vent valve may leave", most),
                PULL);
        workings.vacuum(suction(vented, station), "at the producers, " + state);
        return Finding.of(
                FindingCode.VENT_PULL,
                new Place(Place.Kind.VENT_VALVE, station.id()),
                state,
                Side.AT_MOST,
                ambient.above(suction(vented, station)),
                most,
                new Derivation(workings.steps(), PULL));
    }

    private static AbsolutePressure suction(DutyPoint duty, Station station) {
        return Pauses.at(station, duty).suction();
    }
}
