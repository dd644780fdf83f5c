package dustwright.engine.sheet;

import dustwright.engine.bagging.BulkBag;
import dustwright.engine.bagging.Container;
import dustwright.engine.electrical.Motor;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.Power;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A motor of the plant and what it turns.
 *
 * @param id of what it turns
 * @param power where its nameplate power comes from
 * @param factor where its service factor comes from
 * @param starting where the way it is started comes from
 * @param driven whether a variable-frequency drive turns it
 */
record MotorUse(String id, Place place, Motor motor, Source power, Source factor, Source starting, boolean driven) {
    static MotorUse of(VacuumProducer producer) {
        return new MotorUse(
                producer.id(),
                new Place(Place.Kind.PRODUCER, producer.id()),
                producer.motor(),
                producer.sourceOf("motor"),
                producer.sourceOf("service factor"),
                Source.entered(),
                producer.driven());
    }

    /** The gearmotor of a rotary valve: small, so it is started direct on line, as a fan's is. */
    private static MotorUse ofValve(Station station, Power nameplate) {
        return direct("valve/" + station.id(), new Place(Place.Kind.ROTARY_VALVE, station.id()), nameplate);
    }

    /** The fan that opens a bag before it fills. */
    private static MotorUse ofFan(Station station, Power nameplate) {
        return direct("fan/" + station.id(), new Place(Place.Kind.CONTAINER, station.id()), nameplate);
    }

    private static MotorUse direct(String id, Place place, Power nameplate) {
        return new MotorUse(
                id,
                place,
                new Motor(
                        nameplate,
                        1,
                        Optional.empty(),
                        Optional.of(Motor.Starting.DIRECT),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                Source.entered(),
                Source.commonPractice(),
                Source.commonPractice(),
                false);
    }

    /** Whether a producer is turned, whose motor can be described in full. */
    boolean turnsProducer() {
        return place.kind() == Place.Kind.PRODUCER;
    }

    /** Whether it turns the fan that opens a bag. */
    boolean blowsBagOpen() {
        return place.kind() == Place.Kind.CONTAINER;
    }

    /** What it turns, in words. */
    String turned() {
        if (turnsProducer()) {
            return id;
        }
        return (blowsBagOpen() ? "inflation fan " : "rotary valve ") + place.id();
    }

    /** Every motor of the plant, those that stand by included. */
    static List<MotorUse> all(Plant plant) {
        List<MotorUse> all = new ArrayList<>();
        for (Station station : plant.stations()) {
            station.producers().forEach(p -> all.add(of(p)));
            station.rotaryValve()
                    .flatMap(valve -> valve.build().motor())
                    .ifPresent(nameplate -> all.add(ofValve(station, nameplate)));
            station.container()
                    .flatMap(Container::bag)
                    .flatMap(BulkBag::fan)
                    .flatMap(BulkBag.Inflation::motor)
                    .ifPresent(nameplate -> all.add(ofFan(station, nameplate)));
        }
        return all;
    }

    /** Stations whose inflation fan has a motor nobody describes: what all motors take together is then not known. */
    static List<String> fansWithoutMotor(Plant plant) {
        return plant.stations().stream()
                .filter(station -> station.container()
                        .flatMap(Container::bag)
                        .flatMap(BulkBag::fan)
                        .filter(fan -> fan.motor().isEmpty())
                        .isPresent())
                .map(Station::id)
                .toList();
    }
}
