package dustwright.plantfile;

import dustwright.engine.bagging.BagSupport;
import dustwright.engine.bagging.BulkBag;
import dustwright.engine.bagging.Container;
import dustwright.engine.hazard.BagType;
import dustwright.engine.hazard.BagType.LinerType;
import dustwright.engine.hazard.BagType.Vapour;
import dustwright.engine.hazard.ChargePath;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Mass;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Volume;
import dustwright.plantfile.keys.PlantKeys;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Makes bulk bags and drums, and the stand that holds a bag. */
final class ContainerBinder {
    private ContainerBinder() {}

    static Container container(Section c) {
        boolean drum = c.get("kind", String.class).equals(Container.Kind.DRUM.words());
        Optional<Mass> load = c.find("safe working load", Mass.class);
        if (load.isEmpty()) {
            c.derive("safe working load", "not stated: the load of a full container is not checked");
        }
        return new Container(
                drum ? Container.Kind.DRUM : Container.Kind.BULK_BAG,
                c.get("volume", Volume.class),
                load,
                word(Container.Stop.values(), Container.Stop::words, c.get("stop", String.class)),
                new Container.Changing(
                        c.get("change time", Duration.class),
                        c.get("during a change", String.class).equals("vacuuming goes on"),
                        c.find("standing by", Integer.class)),
                c.find("vent sock", Area.class),
                drum ? Optional.empty() : Optional.of(bag(c)),
                c.find("greatest vacuum", PressureDifference.class),
                drum ? HazardBinder.charge(c) : ChargePath.UNKNOWN,
                drum
                        ? c.find("liner", String.class)
                                .map(said -> word(ChargePath.DrumLiner.values(), ChargePath.DrumLiner::words, said))
                        : Optional.empty(),
                drum ? vapour(c) : Optional.empty());
    }

    private static Optional<Vapour> vapour(Section container) {
        return container.find("vapour", String.class).map(said -> word(Vapour.values(), Vapour::words, said));
    }

    private static BulkBag bag(Section bag) {
        Section stand = bag.section("stand")
                .orElseGet(() -> new Section(
                        PlantKeys.STAND, bag.id(), bag.path() + ".stand", bag.span(), Map.of(), bag.taken()));
        return new BulkBag(
                size(bag.items("size")),
                bag.find("spout", Length.class),
                bag.find("loops", Length.class),
                bag.find("liner", String.class).map(said -> word(BulkBag.Liner.values(), BulkBag.Liner::words, said)),
                bag.find("type", String.class).map(BagType::valueOf),
                bag.find("liner type", String.class).map(LinerType::valueOf),
                vapour(bag),
                bag.find("empty", Mass.class),
                bag.find("use", String.class).map(said -> word(BagSupport.Use.values(), BagSupport.Use::words, said)),
                bag.find("fill without inflation", Ratio.class),
                stand(stand));
    }

    private static Optional<BulkBag.Size> size(List<?> sides) {
        return sides.size() == 3
                ? Optional.of(new BulkBag.Size((Length) sides.get(0), (Length) sides.get(1), (Length) sides.get(2)))
                : Optional.empty();
    }

    private static BulkBag.Stand stand(Section stand) {
        List<?> bay = stand.items("bay");
        return new BulkBag.Stand(
                word(BagSupport.Base.values(), BagSupport.Base::words, stand.get("base", String.class)),
                stand.find("pallet", Length.class),
                stand.find("arms", Mass.class),
                stand.find("headroom", Length.class),
                bay.size() == 2
                        ? Optional.of(new BulkBag.Bay((Length) bay.get(0), (Length) bay.get(1)))
                        : Optional.empty(),
                stand.section("neck seal")
                        .map(seal -> new BulkBag.NeckSeal(
                                seal.get("pressure", GaugePressure.class), seal.find("volume", Volume.class))),
                stand.section("inflation")
                        .map(fan -> new BulkBag.Inflation(
                                fan.get("flow", ActualVolumeFlow.class),
                                fan.find("pressure", PressureDifference.class),
                                fan.get("by", String.class).equals("compressed air"),
                                fan.find("motor", Power.class))));
    }

    private static <T> T word(T[] values, Function<T, String> words, String said) {
        return Arrays.stream(values)
                .filter(value -> words.apply(value).equals(said))
                .findFirst()
                .orElseThrow();
    }
}
