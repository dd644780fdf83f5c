package dustwright.plantfile;

import dustwright.engine.plant.Station;
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.producer.StatedLoss;
import dustwright.engine.producer.VentValve;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.FilterResistance;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Volume;
import dustwright.engine.receiver.Filter;
import dustwright.engine.receiver.Receiver;
import dustwright.engine.rotaryvalve.RotaryValve;
import java.util.Optional;

/** Makes stations: receiver, filter, valves and producers. */
final class StationBinder {
    private StationBinder() {}

    static Station station(Section s, TubingBinder tubing) {
        return new Station(
                s.id(),
                tubing.place(s.id()),
                s.section("receiver")
                        .map(StationBinder::receiver)
                        .orElse(new Receiver(Optional.empty(), Optional.empty())),
                filter(s.section("filter").orElseThrow()),
                s.section("safety filter").map(StationBinder::statedLoss),
                s.section("relief valve").map(StationBinder::relief),
                s.section("vent valve")
                        .map(v -> new VentValve(TubingBinder.opening(v), v.number("discharge coefficient"))),
                s.section("rotary valve").map(StationBinder::rotaryValve),
                s.section("container").map(ContainerBinder::container),
                s.namedSections("producers").stream()
                        .map(ProducerBinder::producer)
                        .toList());
    }

    private static Receiver receiver(Section receiver) {
        return new Receiver(receiver.find("diameter", Length.class), receiver.find("free area", Area.class));
    }

    private static Filter filter(Section filter) {
        Area cloth = filter.get("cloth", Area.class);
        Optional<Section> resistance = filter.section("resistance");
        if (resistance.isPresent()) {
            Section r = resistance.get();
            return new Filter(
                    cloth,
                    r.get("clean", FilterResistance.class),
                    r.get("normal", FilterResistance.class),
                    r.get("dirty", FilterResistance.class));
        }
        Section drop = filter.section("pressure drop").orElseThrow();
        double velocity_mPerS = drop.get("at", ActualVolumeFlow.class).cubicMetresPerSecond() / cloth.squareMetres();
        return new Filter(
                cloth,
                over(drop.get("clean", PressureDifference.class), velocity_mPerS),
                over(drop.get("normal", PressureDifference.class), velocity_mPerS),
                over(drop.get("dirty", PressureDifference.class), velocity_mPerS));
    }

    private static FilterResistance over(PressureDifference drop, double velocity_mPerS) {
        return new FilterResistance(drop.pascals() / velocity_mPerS);
    }

    static StatedLoss statedLoss(Section loss) {
        return new StatedLoss(loss.get("loss", PressureDifference.class), loss.get("at", FreeAirFlow.class));
    }

    private static ReliefValve relief(Section relief) {
        PressureDifference set = relief.get("set", PressureDifference.class);
        PressureDifference full = relief.get("full", PressureDifference.class);
        return new ReliefValve(
                set, new PressureDifference(full.pascals() - set.pascals()), relief.get("rated", FreeAirFlow.class));
    }

    private static RotaryValve rotaryValve(Section valve) {
        return new RotaryValve(
                valve.get("swept", Volume.class),
                valve.get("speed", RotationalSpeed.class),
                valve.number("fill"),
                valve.get("clearance", Area.class),
                valve.number("discharge coefficient"));
    }
}
