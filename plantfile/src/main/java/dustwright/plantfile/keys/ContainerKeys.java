package dustwright.plantfile.keys;

import static dustwright.plantfile.keys.Amounts.*;

import dustwright.engine.bagging.BagSupport;
import dustwright.engine.bagging.BulkBag;
import dustwright.engine.bagging.Container;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.BagType;
import dustwright.engine.hazard.BagType.LinerType;
import dustwright.engine.hazard.BagType.Vapour;
import dustwright.engine.hazard.ChargePath;
import dustwright.plantfile.keys.Shape.Keys;
import dustwright.plantfile.keys.Shape.Parts;
import dustwright.plantfile.keys.Shape.Word;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** The keys of a bulk bag or drum and of the stand that holds a bag. */
final class ContainerKeys {
    private static final Source PRACTICE = Source.commonPractice();

    private ContainerKeys() {}

    private static <T> Word words(T[] values, Function<T, String> word) {
        return new Word(Arrays.stream(values).map(word).toList());
    }

    private static List<Key> join(List<Key> first, List<Key> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }

    private static final List<Key> CONTAINER = List.of(
            Key.required(
                    "volume",
                    CONTAINER_VOLUME,
                    "Volume up to the level probe; of a bag at most what its `size` holds when it stands round."),
            Key.derived(
                    "safe working load",
                    CONTAINER_MASS,
                    "not checked",
                    Source.ownReading("without it nothing is said of the load of a full container"),
                    "Greatest mass of dust, as marked."),
            Key.otherwise(
                    "stop",
                    words(Container.Stop.values(), Container.Stop::words),
                    "level probe",
                    PRACTICE,
                    "What ends the filling; `scale` stops at the safe working load."),
            Key.otherwise(
                    "change time", CHANGE_TIME, "10 min", PRACTICE, "From the stop of the discharge to its start."),
            Key.otherwise(
                    "during a change",
                    new Word(List.of("vacuuming stops", "vacuuming goes on")),
                    "vacuuming stops",
                    PRACTICE,
                    "Whether users wait while a container is changed, or go on while the receiver holds the dust."),
            Key.optional("standing by", new Shape.Whole(0, 10_000), "Empty containers at hand."),
            Key.optional("vent sock", SOCK, "Area of cloth that passes the container's air."));

    private static final Group SPOUT_SEAL = new Group(
            "a neck seal",
            Place.Kind.CONTAINER,
            List.of(
                    Key.required("pressure", SEAL, "Pressure over the barometer when inflated; about 4 psi is usual."),
                    Key.optional("volume", SMALL_VOLUME, "Volume of air in it, for the compressed air it takes.")),
            List.of());

    private static final Group INFLATION = new Group(
            "inflation of a bag",
            Place.Kind.CONTAINER,
            List.of(
                    Key.required("flow", ACTUAL_FLOW, "Flow of fan or air supply into the bag, at the barometer."),
                    Key.optional("pressure", LOSS_PRESSURE, "Pressure it can make."),
                    Key.otherwise(
                            "by",
                            new Word(List.of("fan", "compressed air")),
                            "fan",
                            PRACTICE,
                            "What blows: a fan of its own, or the plant's compressed air."),
                    Key.optional(
                            "motor",
                            SMALL_MOTOR,
                            "Nameplate power of the fan's motor, for its circuit, the feeder and the energy.")),
            List.of());

    static final Group STAND = new Group(
            "a filling stand",
            Place.Kind.CONTAINER,
            List.of(
                    Key.otherwise(
                            "base",
                            words(BagSupport.Base.values(), BagSupport.Base::words),
                            "on floor or pallet",
                            PRACTICE,
                            "What carries the bag while it fills. The arms hold its corners open; they lift nothing."),
                    Key.optional("pallet", PALLET, "Height of what the bag stands on over the floor."),
                    Key.optional("arms", ARMS, "Mass that all four arms together are stated to hold."),
                    Key.optional("headroom", HEADROOM, "Clear height from the floor to the filling head."),
                    Key.optional(
                            "bay",
                            new Parts(List.of(HEADROOM, HEADROOM)),
                            "[width, depth] of clear floor for the truck that brings and takes the bag."),
                    Key.optional("neck seal", new Keys(SPOUT_SEAL), "Inflatable seal at the bag's neck."),
                    Key.optional("inflation", new Keys(INFLATION), "Fan or air supply that opens the bag first.")),
            List.of());

    static final Group BULK_BAG = new Group(
            "a bulk bag",
            Place.Kind.CONTAINER,
            join(
                    join(
                            List.of(Key.required("kind", new Word(List.of("bulk bag")), "What the dust falls into.")),
                            CONTAINER),
                    List.of(
                            Key.optional(
                                    "size",
                                    new Parts(List.of(BAG_SIDE, BAG_SIDE, BAG_SIDE)),
                                    "[width, depth, height] of the flat bag."),
                            Key.optional("spout", BAG_SIDE, "Length of the filling spout."),
                            Key.optional("loops", BAG_SIDE, "Length of the lifting loops."),
                            Key.optional(
                                    "liner", words(BulkBag.Liner.values(), BulkBag.Liner::words), "What lies inside."),
                            Key.optional(
                                    "type",
                                    words(BagType.values(), BagType::name),
                                    "Electrostatic type on its label, by IEC 61340-4-4."),
                            Key.optional(
                                    "liner type",
                                    words(LinerType.values(), LinerType::name),
                                    "Electrostatic type of the liner; `PLAIN` for ordinary film."),
                            Key.optional(
                                    "vapour",
                                    words(Vapour.values(), Vapour::words),
                                    "Flammable gas or vapour in zone 1 or 2 about the bag, or in what falls into it, by its group; `none` where"
                                            + " there is none."),
                            Key.optional("empty", EMPTY_BAG, "Mass of the empty bag with its liner."),
                            Key.optional(
                                    "use",
                                    words(BagSupport.Use.values(), BagSupport.Use::words),
                                    "How often it may be used."),
                            Key.optional(
                                    "fill without inflation",
                                    FILLED_SHARE,
                                    "Share of its volume that fills when nothing inflates it first."),
                            Key.optional("stand", new Keys(STAND), "What holds the bag."))),
            List.of());

    static final Group DRUM = new Group(
            "a drum",
            Place.Kind.CONTAINER,
            join(
                    join(
                            List.of(Key.required("kind", new Word(List.of("drum")), "What the dust falls into.")),
                            CONTAINER),
                    List.of(
                            Key.optional(
                                    "greatest vacuum",
                                    VACUUM,
                                    "Vacuum its maker says it bears; asked where no rotary valve keeps the receiver's vacuum off it."),
                            Key.optional(
                                    "material",
                                    words(ChargePath.Material.values(), ChargePath.Material::words),
                                    "Whether its material carries charge away; metal is conductive."),
                            Key.optional(
                                    "resistance", PART_RESISTANCE, "Resistance from its inside to its ground clip."),
                            Key.optional(
                                    "liner",
                                    words(ChargePath.DrumLiner.values(), ChargePath.DrumLiner::words),
                                    "What lies inside: none, or a liner of a material that carries charge away or not."),
                            Key.optional(
                                    "vapour",
                                    words(Vapour.values(), Vapour::words),
                                    "Flammable gas or vapour in zone 1 or 2 about the drum, or in what falls into it, by its group; `none` where"
                                            + " there is none."))),
            List.of());
}
