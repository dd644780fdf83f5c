package dustwright.engine.sizing;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.VacuumProducer;
import java.util.HashSet;
import java.util.Set;

/**
 * A requirement, a place and a set of users in which some design was found to fail. Every design has to hold in it, so it is tried on
 * others first.
 *
 * @param number its own
 * @param state the set and the condition; who runs is taken from the design at hand
 */
record Counterexample(int number, FindingCode code, Place where, State state) {
    /** Whether it speaks of the same requirement, place and set. */
    boolean sameAs(Counterexample other) {
        return code == other.code && where.equals(other.where) && state.equals(other.state);
    }

    /** The state in a plant: its own producers run. */
    State in(Plant plant) {
        Set<String> running = new HashSet<>();
        for (Station station : plant.stations()) {
            station.producers().stream()
                    .filter(p -> !p.standby())
                    .map(VacuumProducer::id)
                    .forEach(running::add);
        }
        return state.withRunning(running);
    }

    boolean isAbout(Finding finding) {
        return finding.code() == code && (finding.where().equals(where) || ofProducers());
    }

    /** Whether the place is a producer: another design has another one in its place. */
    boolean ofProducers() {
        return where.kind() == Place.Kind.PRODUCER;
    }
}
