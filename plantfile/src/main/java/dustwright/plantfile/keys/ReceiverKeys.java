package dustwright.plantfile.keys;

import static dustwright.plantfile.keys.Amounts.*;

import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.Listing;
import dustwright.engine.hazard.Protection;
import dustwright.engine.hazard.VentMethod;
import dustwright.engine.receiver.AfterFilter;
import dustwright.engine.receiver.AirToCloth;
import dustwright.engine.receiver.FilterMedium;
import dustwright.engine.receiver.ShellMaterial;
import dustwright.engine.receiver.SidePlace;
import dustwright.plantfile.keys.Group.Choice;
import dustwright.plantfile.keys.Shape.Keys;
import dustwright.plantfile.keys.Shape.ListOf;
import dustwright.plantfile.keys.Shape.Target;
import dustwright.plantfile.keys.Shape.Word;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** The keys of a receiver, its filters and its rotary valve. */
public final class ReceiverKeys {
    private static final Source PRACTICE = Source.commonPractice();

    private ReceiverKeys() {}

    private static final Group SHELL = new Group(
            "a shell",
            Place.Kind.RECEIVER,
            List.of(
                    Key.required("thickness", SHEET, "Thickness of the cylinder's wall."),
                    Key.otherwise(
                            "material",
                            new Word(words(ShellMaterial.values(), ShellMaterial::words)),
                            "carbon steel",
                            PRACTICE,
                            "What it is made of."),
                    Key.otherwise(
                            "rings",
                            new Shape.Whole(0, 50),
                            "0",
                            Source.ownReading("no ring stated, so none is counted"),
                            "Stiffening rings, evenly spaced over the straight side."),
                    Key.otherwise(
                            "factor",
                            MARGIN,
                            "3",
                            Source.fromMemory("margin of the external-pressure charts of ASME VIII-1"),
                            "Margin between collapse and the vacuum allowed.")),
            List.of());

    private static final Group HOPPER = new Group(
            "a hopper",
            Place.Kind.RECEIVER,
            List.of(
                    Key.required("half angle", HALF_ANGLE, "Angle of the cone's wall from the vertical."),
                    Key.required("outlet", OUTLET, "Diameter of its lower end.")),
            List.of());

    private static final Word SIDE = new Word(words(SidePlace.values(), SidePlace::words));

    private static final Group RECEIVER_INLET = new Group(
            "a receiver's inlet",
            Place.Kind.RECEIVER,
            List.of(
                    Key.optional(
                            "place",
                            SIDE,
                            "Place around the shell, seen standing at the access door; the three are 90 deg apart."),
                    Key.optional(
                            "low edge",
                            HEIGHT,
                            "Height of its lower edge above the hopper's outlet; the level probe belongs below it."),
                    Key.optional(
                            "width", SLOT, "Width of a tangential inlet; with `height`, a coarse cut is estimated."),
                    Key.optional("height", SLOT, "Height of a tangential inlet.")),
            List.of(Choice.atMostOne(List.of(List.of("width", "height")))));

    private static final Group LEVEL_PROBE = new Group(
            "a level probe",
            Place.Kind.RECEIVER,
            List.of(
                    Key.derived(
                            "place",
                            SIDE,
                            "rear, or right where the inlet has taken the rear",
                            PRACTICE,
                            "Place around the shell; never that of the inlet."),
                    Key.optional(
                            "height", HEIGHT, "Height above the hopper's outlet, within hopper and `straight side`.")),
            List.of());

    private static final List<Key> TESTED_FOR = List.of(
            Key.optional("kst", KST, "Greatest Kst it was tested for, by its certificate."),
            Key.optional("pmax", EXPLOSION_PRESSURE, "Greatest Pmax it was tested for, by its certificate."));

    private static final Group LISTED = new Group("a listed device", Place.Kind.RECEIVER, TESTED_FOR, List.of());

    private static final Group PROTECTION_DEVICE = new Group(
            "a protection device",
            Place.Kind.RECEIVER,
            Stream.concat(
                            TESTED_FOR.stream(),
                            Stream.of(Key.optional(
                                    "suppressed pressure",
                                    VENT_PRESSURE,
                                    "Pressure that a suppressed explosion of these dusts still comes to in this vessel, as its maker"
                                            + " states.")))
                    .toList(),
            List.of());

    private static final Group DUCT_DEVICE = new Group(
            "an isolation device",
            Place.Kind.RECEIVER,
            Stream.concat(
                            TESTED_FOR.stream(),
                            Stream.of(
                                    Key.optional(
                                            "nearest",
                                            DEVICE_DISTANCE,
                                            "Least distance from the receiver that its maker allows."),
                                    Key.optional(
                                            "furthest",
                                            DEVICE_DISTANCE,
                                            "Greatest distance from the receiver that its maker allows."),
                                    Key.optional(
                                            "stands at",
                                            DEVICE_DISTANCE,
                                            "Distance from the receiver along the tubing; of several devices the one that fits worst."),
                                    Key.optional(
                                            "stops",
                                            new Word(words(Listing.Flame.values(), Listing.Flame::words)),
                                            "Which flame it stops as it is fitted."),
                                    Key.optional(
                                            "dust laden",
                                            new Shape.YesNo(),
                                            "Whether its maker allows air that carries as much dust as here; asked of a float valve.")))
                    .toList(),
            List.of());

    /** Protection of a receiver against a dust explosion. */
    public static final Group EXPLOSION = new Group(
            "a receiver's explosion protection",
            Place.Kind.RECEIVER,
            List.of(
                    Key.optional(
                            "method",
                            new Word(words(Protection.Method.values(), Protection.Method::words)),
                            "What keeps an explosion in it from hurting people."),
                    Key.optional(
                            "standing",
                            new Word(words(Protection.Standing.values(), Protection.Standing::words)),
                            "Where the receiver stands."),
                    Key.optional(
                            "volume",
                            VESSEL_VOLUME,
                            "Volume the flame may fill; absent, cylinder and hopper where they are known."),
                    Key.optional(
                            "length to diameter",
                            SLENDERNESS,
                            "L/D for the vent; absent, the whole height over the diameter, which is prudent."),
                    Key.optional("reduced pressure", VENT_PRESSURE, "Pressure it stands while it vents, Pred."),
                    Key.optional("opens", VENT_PRESSURE, "Pressure at which the vent opens, Pstat."),
                    Key.optional(
                            "vent area",
                            VENT,
                            "Area of all vents that are fitted or offered; they must fit into head and cylinder."),
                    Key.otherwise(
                            "vents",
                            new Shape.Whole(1, 20),
                            "1",
                            Source.ownReading("no number stated: one vent reaches furthest"),
                            "Number of vents."),
                    Key.optional("vent duct", DUCT, "Length of the duct behind the vent."),
                    Key.optional(
                            "air in vessel",
                            VESSEL_AIR,
                            "Greater of the axial and the tangential velocity of the air in the vessel: above 20 m/s the vent grows."),
                    Key.optional(
                            "panel", PANEL_MASS, "Mass of the vent's panel over its area: a heavy one opens late."),
                    Key.optional("hinged", new Shape.YesNo(), "Whether the panel swings on a hinge."),
                    Key.optional(
                            "cloud share",
                            CLOUD_SHARE,
                            "Share of the volume that can hold dust enough to explode, where a specialist justifies less than all."),
                    Key.optional(
                            "vent standard",
                            new Word(words(VentMethod.values(), VentMethod::words)),
                            "Standard that governs the vents of the site, as its owner or authority says; absent, the vent is held against"
                                    + " both."),
                    Key.optional(
                            "vent efficiency",
                            CLOUD_SHARE,
                            "Share of its area that the vent counts for, as the listing of the device states; asked of flameless ones."),
                    Key.optional(
                            "inlet isolation",
                            new Word(words(Protection.Isolation.values(), Protection.Isolation::words)),
                            "What keeps flame out of the mains that enter it."),
                    Key.optional(
                            "isolated mains",
                            new ListOf(new Shape.Id(Target.RUN), 1),
                            "Runs that end at the receiver and carry such a device each; not asked where only one ends there."),
                    Key.optional(
                            "return isolation",
                            new Word(words(Protection.Isolation.values(), Protection.Isolation::words)),
                            "What keeps flame out of the room that its air is returned to."),
                    Key.optional(
                            "exhaust",
                            new Word(words(Protection.Exhaust.values(), Protection.Exhaust::words)),
                            "Where the producers' air goes."),
                    Key.optional(
                            "exhaust watched",
                            new Shape.YesNo(),
                            "Whether something tells dust in the exhaust air when a filter element breaks."),
                    Key.optional(
                            "rotary valve isolates",
                            new Shape.YesNo(),
                            "Whether the rotary valve was tested as an isolation device and stops on an explosion; `vanes` and `tip gap`"
                                    + " are held against it."),
                    Key.optional(
                            "container stands",
                            VENT_PRESSURE,
                            "Pressure that a drum below the receiver and its clamp stand, where nothing isolates them."),
                    Key.optional(
                            "producers in area",
                            new Shape.YesNo(),
                            "Whether the station's producers stand in an area that the owner has classified for dust."),
                    Key.optional(
                            "producers marked",
                            new Shape.YesNo(),
                            "Whether producers and motors are marked for that area and the group of the dust."),
                    Key.optional(
                            "producers surface",
                            MACHINE_SURFACE,
                            "Hottest that producers and their motors get outside, as marked or as their maker states."),
                    Key.optional(
                            "protection device",
                            new Keys(PROTECTION_DEVICE),
                            "What flameless vents or suppression were tested for."),
                    Key.optional(
                            "inlet device",
                            new Keys(DUCT_DEVICE),
                            "What the isolation on the mains was tested for, and how it is fitted."),
                    Key.optional(
                            "return device",
                            new Keys(DUCT_DEVICE),
                            "What the isolation on the return air was tested for, and how it is fitted."),
                    Key.optional(
                            "valve device",
                            new Keys(LISTED),
                            "What the rotary valve was tested for as an isolation device.")),
            List.of());

    /** The vessel itself: a station without it has one of which nothing is stated. */
    public static final Group RECEIVER = new Group(
            "a receiver",
            Place.Kind.RECEIVER,
            List.of(
                    Key.optional("diameter", VESSEL, "Diameter of the shell."),
                    Key.optional(
                            "free area",
                            CLOTH,
                            "Cross-section left between the filter elements, for the can velocity; less than that of the shell."),
                    Key.optional(
                            "elements down to",
                            HEIGHT,
                            "Height above the hopper's outlet down to which the filter elements hang; the level probe belongs below them."),
                    Key.optional("straight side", HEIGHT, "Height of the cylinder between hopper and head."),
                    Key.optional("shell", new Keys(SHELL), "Wall against vacuum."),
                    Key.optional("hopper", new Keys(HOPPER), "Cone below the cylinder."),
                    Key.optional("inlet", new Keys(RECEIVER_INLET), "Where and how tubing enters."),
                    Key.optional("level probe", new Keys(LEVEL_PROBE), "Probe that tells a full receiver."),
                    Key.optional("explosion", new Keys(EXPLOSION), "Protection against a dust explosion."),
                    Key.otherwise(
                            "pre-separation",
                            SEPARATED,
                            "0 %",
                            Source.ownReading("prudent: all dust is counted to reach the cloth"),
                            "Share of the dust that falls out before it reaches the cloth.")),
            List.of());

    private static final Group PRESSURE_DROP = new Group(
            "a filter's pressure drop",
            Place.Kind.FILTER,
            List.of(
                    Key.required("at", ACTUAL_FLOW, "Actual flow at which the pressure drops hold."),
                    Key.required("clean", LOSS_PRESSURE, "Pressure drop of the new filter."),
                    Key.required("normal", LOSS_PRESSURE, "Pressure drop in ordinary service."),
                    Key.required("dirty", LOSS_PRESSURE, "Pressure drop at which it is serviced.")),
            List.of());

    private static final Group RESISTANCE = new Group(
            "a filter's resistance",
            Place.Kind.FILTER,
            List.of(
                    Key.required("clean", FILTER_RESISTANCE, "Resistance of the new filter."),
                    Key.required("normal", FILTER_RESISTANCE, "Resistance in ordinary service."),
                    Key.required("dirty", FILTER_RESISTANCE, "Resistance at which it is serviced.")),
            List.of());

    static final Group FILTER = new Group(
            "a filter",
            Place.Kind.FILTER,
            List.of(
                    Key.required("cloth", CLOTH, "Area of cloth."),
                    Key.optional("pressure drop", new Keys(PRESSURE_DROP), "Pressure drops at one actual flow."),
                    Key.optional(
                            "resistance", new Keys(RESISTANCE), "Pressure drop over filtration velocity, instead."),
                    Key.optional(
                            "temperature",
                            DUST_TEMPERATURE,
                            "Temperature of the air at the cloth in continuous service, also for its actual flow and pressure drop; absent,"
                                    + " that of the site, as tubing and producers have."),
                    Key.optional("surge temperature", DUST_TEMPERATURE, "Highest temperature in short surges."),
                    Key.optional(
                            "fibre",
                            new Word(FilterMedium.all().stream()
                                    .map(FilterMedium::fibre)
                                    .toList()),
                            "Fibre of the elements fitted or offered."),
                    Key.otherwise(
                            "hot and moist",
                            new Shape.YesNo(),
                            "no",
                            Source.ownReading("not hot and moist unless it says so"),
                            "Whether the air is warm and damp, which polyester and natural fibres do not bear."),
                    Key.optional(
                            "application",
                            new Word(AirToCloth.applications()),
                            "Application in the pulse-jet factor method's list."),
                    Key.optional(
                            "dissipative",
                            new Shape.YesNo(),
                            "Whether the elements are of a static-dissipative make, bonded to the tube sheet."),
                    Key.optional(
                            "food contact",
                            new Shape.YesNo(),
                            "Whether elements, and hoses, tools, seals and container before them, are declared for contact with food."),
                    Key.optional(
                            "greatest difference",
                            ACROSS_CLOTH,
                            "Pressure difference that elements and cages bear, as their maker states it; the default sequence holds at"
                                    + " 10 inH2O (2.491 kPa).")),
            List.of(Choice.one(List.of(List.of("pressure drop"), List.of("resistance")))));

    static final Group SAFETY_FILTER = new Group(
            "a safety filter",
            Place.Kind.SAFETY_FILTER,
            List.of(
                    ProducerKeys.STATED_LOSS.get(0),
                    ProducerKeys.STATED_LOSS.get(1),
                    ProducerKeys.STATED_LOSS.get(2),
                    Key.optional("class", new Word(AfterFilter.names()), "Class of EN 1822-1 or ISO 29463-1."),
                    Key.optional("greatest", FREE_AIR, "Greatest free air its maker allows.")),
            List.of());

    static final Group ROTARY_VALVE = new Group(
            "a rotary valve",
            Place.Kind.ROTARY_VALVE,
            List.of(
                    Key.required("swept", POCKETS, "Volume of all pockets per turn."),
                    Key.required("speed", SLOW_ROTATION, "Speed of the rotor."),
                    Key.otherwise(
                            "fill",
                            FILL,
                            "30 %",
                            PRACTICE,
                            "Share of the pockets that dust fills when the hopper above is full."),
                    Key.required("clearance", OPENING, "Leaking gap area."),
                    Key.otherwise(
                            "discharge coefficient",
                            COEFFICIENT,
                            "0.6",
                            PRACTICE,
                            "Discharge coefficient of the gaps."),
                    Key.optional("rotor", OUTLET, "Diameter over the blade tips."),
                    Key.optional("vanes", new Shape.Whole(4, 24), "Number of blades."),
                    Key.optional("throat", OUTLET, "Smallest width of its inlet opening, at most `rotor`."),
                    Key.optional("tip gap", GAP, "Gap between blade tips and housing."),
                    Key.optional("motor", MOTOR, "Nameplate power of its gearmotor."),
                    Key.otherwise(
                            "gear efficiency",
                            EFFICIENCY,
                            "0.85",
                            PRACTICE,
                            "Efficiency of gear and chain; asked only where `motor` is given."),
                    Key.optional("torque", TORQUE, "Torque the full rotor needs, as its maker states it."),
                    Key.optional("greatest difference", ACROSS, "Pressure difference its maker allows across it.")),
            List.of());

    private static <T> List<String> words(T[] values, Function<T, String> words) {
        return Stream.of(values).map(words).toList();
    }
}
