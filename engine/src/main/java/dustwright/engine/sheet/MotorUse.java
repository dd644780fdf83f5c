package dustwright.engine.sheet;

import dustwright.engine.electrical.Motor;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.VacuumProducer;
import java.util.ArrayList;
import java.util.List;

/**
 * A motor of the plant and what it turns.
 *
 * @param id of what it turns
 * @param power where its nameplate power comes from
 * @param factor where its service factor comes from
 * @param driven whether a variable-frequency drive turns it
 */
record MotorUse(String id, Place place, Motor motor, Source power, Source factor, boolean driven) {
    static MotorUse of(VacuumProducer producer) {
        boolean driven = producer.drive() instanceof Drive.Holding
                || producer.motor()
                        .starting()
                        .filter(Motor.Starting.DRIVE::equals)
                        .isPresent();
        return new MotorUse(
                producer.id(),
                new Place(Place.Kind.PRODUCER, producer.id()),
                producer.motor(),
                producer.sourceOf("motor"),
                producer.sourceOf("service factor"),
                driven);
    }

    /** Every motor of the plant, those that stand by included. */
    static List<MotorUse> all(Plant plant) {
        List<MotorUse> all = new ArrayList<>();
        for (Station station : plant.stations()) {
            station.producers().forEach(p -> all.add(of(p)));
        }
        return all;
    }
}
