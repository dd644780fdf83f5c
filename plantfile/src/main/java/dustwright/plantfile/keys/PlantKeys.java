package dustwright.plantfile.keys;

import static dustwright.plantfile.keys.Amounts.*;

import dustwright.engine.conveying.DustClass;
import dustwright.engine.conveying.LevelFriction;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.ChargePath;
import dustwright.plantfile.keys.Group.Choice;
import dustwright.plantfile.keys.Shape.ListOf;
import dustwright.plantfile.keys.Shape.Named;
import dustwright.plantfile.keys.Shape.Target;
import dustwright.plantfile.keys.Shape.Word;
import java.util.Arrays;
import java.util.List;

/** All keys of schema version 1, top down. */
public final class PlantKeys {
    /** The schema version this declaration describes. */
    public static final int VERSION = 1;

    private static final Source PRACTICE = Source.commonPractice();

    private PlantKeys() {}

    private static final Group PLANT = new Group(
            "the plant",
            Place.Kind.PLANT,
            List.of(
                    Key.required("name", TITLE, "What the plant is called in every document."),
                    Key.optional("note", NOTE, "Anything a reader should know first."),
                    Key.otherwise(
                            "units",
                            new Word(List.of("si", "us")),
                            "si",
                            Source.ownReading("SI unless the file says us"),
                            "Units of reports: `us` (inHg, scfm, ft) or `si` (kPa, m³/h, m). Any unit may be written in the file either way."),
                    Key.optional(
                            "catalogue",
                            NOTE,
                            "Folder of the catalogue its models come from, seen from this file; absent, the bundled demo catalogue of invented machines. The option `--catalogue` goes first."),
                    Key.otherwise(
                            "coordinates",
                            new Word(List.of("m", "mm", "ft", "in")),
                            "m",
                            Source.ownReading("metres unless the file says otherwise"),
                            "Unit of bare numbers in positions.")),
            List.of());

    private static final Group SITE = new Group(
            "the site",
            Place.Kind.SITE,
            List.of(
                    Key.optional(
                            "altitude",
                            ALTITUDE,
                            "Height above sea level; the barometer follows by the standard atmosphere."),
                    Key.optional("barometer", BAROMETER, "Absolute pressure of the site's air, where it is known."),
                    Key.otherwise(
                            "temperature",
                            AIR_TEMPERATURE,
                            "20 degC",
                            PRACTICE,
                            "Temperature of the air in rooms and tubing."),
                    Key.otherwise("humidity", SHARE, "50 %", PRACTICE, "Relative humidity."),
                    Key.optional(
                            "walls",
                            new Named("wall", new ListOf(new Shape.Coordinates(), 2)),
                            "Walls of the building by name, each straight from corner to corner at the height of its floor; for the drawings only.")),
            List.of(Choice.one(List.of(List.of("altitude"), List.of("barometer")))));

    private static final Group DUST = new Group(
            "a dust",
            Place.Kind.DUST,
            List.of(
                    Key.required("name", TITLE, "What it is."),
                    Key.optional(
                            "class",
                            new Word(Arrays.stream(DustClass.values())
                                    .map(DustClass::words)
                                    .toList()),
                            "Class that gives the least transport velocity."),
                    Key.optional("minimum velocity", VELOCITY, "Least transport velocity, instead of a class."),
                    Key.optional("bulk density", BULK_DENSITY, "Loose bulk density, at its lightest where it varies."),
                    Key.optional(
                            "heaviest bulk density",
                            BULK_DENSITY,
                            "Loose bulk density at its heaviest, where it varies: decides what a full container weighs; `bulk density`"
                                    + " decides volumes, levels and changes."),
                    Key.optional("tapped density", BULK_DENSITY, "Bulk density after settling."),
                    Key.optional(
                            "particle size",
                            PARTICLE_SIZE,
                            "Median size by mass; with `particle density` it gives what it costs to carry the dust."),
                    Key.optional(
                            "particle density",
                            PARTICLE_DENSITY,
                            "Density of the particles themselves, not of the heap."),
                    Key.optional(
                            "level speed",
                            LEVEL_SPEED,
                            "Velocity of its particles in level tubes over that of the air, measured, instead of CON-30; asked for where that law"
                                    + " does not reach, as of steel shot above about 1 mm."),
                    Key.optional(
                            "carrying velocity",
                            VELOCITY,
                            "Least velocity that keeps it from settling and from choking a riser, measured in the widest tube at the greatest"
                                    + " rate meant. A `saltation factor` then multiplies it instead of what published laws give."),
                    Key.derived(
                            "level friction",
                            new Word(Arrays.stream(LevelFriction.values())
                                    .map(LevelFriction::words)
                                    .toList()),
                            "hinkle from 0.5 mm particle size on, yang below",
                            Source.ownReading("Hinkle's form overstates the friction of fine dust many times over"),
                            "Published form of what the dust loses at the wall of level tubes."),
                    Key.optional(
                            "combustible",
                            new Shape.YesNo(),
                            "Whether it is combustible, by a test of this dust; absent, it is treated as combustible."),
                    Key.optional(
                            "explosion",
                            new Shape.Keys(DustKeys.EXPLOSION),
                            "How it ignites and explodes; what is left out is treated as the worst case and listed."),
                    Key.optional("on cloth", new Shape.Keys(DustKeys.ON_CLOTH), "What it is like on filter cloth."),
                    Key.optional("in hopper", new Shape.Keys(DustKeys.IN_HOPPER), "What it is like in a hopper.")),
            List.of(Choice.one(List.of(List.of("class"), List.of("minimum velocity")))));

    private static final List<Choice> WALL =
            List.of(Choice.atMostOne(List.of(List.of("roughness"), List.of("friction"), List.of("corrugation"))));

    private static final Key CHARGE_MATERIAL = Key.optional(
            "material",
            new Word(Arrays.stream(ChargePath.Material.values())
                    .map(ChargePath.Material::words)
                    .toList()),
            "Whether its material carries charge away; metal is conductive.");

    private static final Group TUBE = new Group(
            "a tube",
            Place.Kind.TUBE,
            List.of(
                    Key.optional("outside", BORE, "Outside diameter."),
                    Key.optional("wall", THICKNESS, "Wall thickness."),
                    Key.optional("bore", BORE, "Inside diameter, instead of outside and wall."),
                    Key.otherwise(
                            "roughness",
                            ROUGHNESS,
                            "0.03 mm",
                            PRACTICE,
                            "Roughness of the inside, for friction by Colebrook."),
                    Key.optional(
                            "friction",
                            FRICTION,
                            "Stated Darcy friction factor (four times Fanning's), instead of a roughness."),
                    Key.optional("corrugation", PITCH, "Pitch of annular corrugations, instead of a roughness."),
                    CHARGE_MATERIAL,
                    Key.optional(
                            "resistance",
                            PART_RESISTANCE,
                            "Greatest resistance from any point of it to ground, bridged at every coupling as it is to be built.")),
            List.of(Choice.one(List.of(List.of("outside", "wall"), List.of("bore"))), WALL.get(0)));

    private static final Group HOSE = new Group(
            "a hose",
            Place.Kind.HOSE,
            List.of(
                    Key.required("bore", BORE, "Inside diameter."),
                    Key.required("length", HOSE_LENGTH, "Length it is used at."),
                    Key.otherwise(
                            "roughness",
                            ROUGHNESS,
                            "0.1 mm",
                            Source.commonPractice(),
                            "Roughness of the inside: 0.1 mm for a smooth bore, about 1 mm for a convoluted one (common practice, no source)."),
                    Key.optional(
                            "friction",
                            FRICTION,
                            "Stated Darcy friction factor (four times Fanning's), instead of a roughness."),
                    Key.optional("corrugation", PITCH, "Pitch of annular corrugations, instead of a roughness."),
                    Key.optional(
                            "resistance",
                            HOSE_RESISTANCE,
                            "Electric resistance of the hose as used, measured from cuff to cuff.")),
            WALL);

    private static final Group TOOL = new Group(
            "a tool",
            Place.Kind.TOOL,
            List.of(
                    Key.otherwise(
                            "k",
                            LOSS,
                            "6",
                            PRACTICE,
                            "Loss in velocity heads of the hose, without the head the air gains on leaving still air; tools range from 1.5 to 40."),
                    Key.optional("opening", OPENING, "Effective opening, an isentropic nozzle, instead of k."),
                    Key.otherwise(
                            "discharge coefficient",
                            COEFFICIENT,
                            "0.62",
                            PRACTICE,
                            "Discharge coefficient of the opening."),
                    Key.optional(
                            "curve",
                            new ListOf(new Shape.Parts(List.of(VACUUM, FREE_AIR)), 1),
                            "Measured points [vacuum, free air], both rising, instead of k."),
                    CHARGE_MATERIAL,
                    Key.optional("resistance", PART_RESISTANCE, "Resistance from its tip to the hose's cuff.")),
            List.of(Choice.atMostOne(List.of(List.of("k"), List.of("opening"), List.of("curve")))));

    private static final Group INLET = new Group(
            "an inlet",
            Place.Kind.INLET,
            List.of(
                    Key.optional(
                            "at",
                            new Shape.Coordinates(),
                            "Place of the valve; not needed where runs are given by measured length."),
                    Key.required("hose", new Shape.Id(Target.HOSE), "Hose used here."),
                    Key.required("tool", new Shape.Id(Target.TOOL), "Tool used here."),
                    Key.optional(
                            "zone",
                            new Shape.Id(Target.ZONE),
                            "Area of the plant it belongs to, one of `usage.zones`."),
                    Key.optional(
                            "dust",
                            new Shape.Id(Target.DUST),
                            "Dust picked up here. Absent, the air is counted clean, and where dust burns or harms it may be any dust of the plant."),
                    Key.otherwise(
                            "feed",
                            FEED,
                            "0 kg/h",
                            Source.ownReading("no pick-up rate stated, so no dust load is counted"),
                            "Dust picked up per time while open; asked only where `dust` is given."),
                    Key.otherwise(
                            "leak",
                            LEAK,
                            "3e-9 kg/(s.Pa)",
                            PRACTICE,
                            "C in w = C·√(pa² − p²), the air a closed valve lets in."),
                    Key.otherwise("valve k", LOSS, "0.5", PRACTICE, "Loss of the open valve on the hose velocity.")),
            List.of());

    private static final Group FITTING = new Group(
            "a fitting",
            Place.Kind.RUN,
            List.of(
                    Key.required("name", TITLE, "What it is."),
                    Key.required("k", LOSS, "Loss coefficient of one on the run's own velocity."),
                    Key.otherwise(
                            "count",
                            new Shape.Whole(1, 1000),
                            "1",
                            Source.ownReading("one, unless a count is given"),
                            "How many.")),
            List.of());

    private static final Group RUN = new Group(
            "a run",
            Place.Kind.RUN,
            List.of(
                    Key.required(
                            "from",
                            new Shape.Id(Target.START),
                            "Upstream end; `air` is the still air of the site: one velocity head of the run's own is then added to its `k`, which must not hold it."),
                    Key.required("to", new Shape.Id(Target.NODE), "Downstream end, toward the receiver."),
                    Key.required("tube", new Shape.Id(Target.TUBE), "Size of tubing."),
                    Key.optional(
                            "via",
                            new ListOf(new Shape.Coordinates(), 1),
                            "Corners on the way; lengths, bends and their angles follow from them."),
                    Key.derived(
                            "bend radius",
                            BEND_RADIUS,
                            "3 bores of its tube",
                            PRACTICE,
                            "Centre-line radius of the run's bends."),
                    Key.optional("length", RUN_LENGTH, "Measured length, instead of a route in space."),
                    Key.otherwise(
                            "k",
                            SIGNED_LOSS,
                            "0",
                            Source.ownReading("no summed loss coefficient stated beside the measured length"),
                            "Summed loss coefficient of a measured run on its own velocity."),
                    Key.derived(
                            "rise",
                            RISE_HEIGHT,
                            "0 m where dust is carried",
                            Source.ownReading("no height stated, so no lift of dust counted"),
                            "Height by which a measured run rises, in upright tube; below zero where it falls."),
                    Key.optional(
                            "wye",
                            WYE,
                            "Angle at which this run enters the run it joins at its downstream end; absent on the straight-through run. Without it there is no junction loss."),
                    Key.optional(
                            "fittings",
                            new ListOf(new Shape.Keys(FITTING), 0),
                            "Fittings with their loss coefficients."),
                    Key.otherwise(
                            "dust",
                            new Shape.YesNo(),
                            "yes",
                            Source.ownReading("every run may carry dust unless it says `dust: no`"),
                            "`no` where only clean air passes; refused where an inlet with a dust leads through it, and dust that comes to it another way is judged all the same.")),
            List.of(
                    Choice.atMostOne(List.of(List.of("via"), List.of("length"))),
                    Choice.atMostOne(List.of(List.of("bend radius"), List.of("length"))),
                    Choice.atMostOne(List.of(List.of("via"), List.of("k"))),
                    Choice.atMostOne(List.of(List.of("bend radius"), List.of("k"))),
                    Choice.atMostOne(List.of(List.of("via"), List.of("rise")))));

    private static final Group BLEED = new Group(
            "a far-end bleed",
            Place.Kind.BLEED,
            List.of(
                    Key.required("at", new Shape.Id(Target.NODE), "Point it sits at."),
                    Key.optional("diameter", SMALL_DIAMETER, "Diameter of its opening."),
                    Key.optional("area", OPENING, "Area of its opening, instead of a diameter."),
                    Key.otherwise(
                            "discharge coefficient",
                            COEFFICIENT,
                            "0.6",
                            PRACTICE,
                            "Discharge coefficient of the opening."),
                    Key.otherwise(
                            "open",
                            new Shape.YesNo(),
                            "no",
                            Source.ownReading("shut unless it says open"),
                            "Whether it stands open in ordinary service.")),
            List.of(Choice.one(List.of(List.of("diameter"), List.of("area")))));

    private static final Group HELD = new Group(
            "a held point",
            Place.Kind.POINT,
            List.of(
                    Key.optional("pressure", ABSOLUTE, "Absolute pressure kept there."),
                    Key.optional("vacuum", CURVE_VACUUM, "Vacuum kept there, counted from the site's barometer."),
                    Key.optional("supply", AIR_FLOW, "Air that enters the network there, as mass flow or free air."),
                    Key.optional("draw", AIR_FLOW, "Air that leaves the network there.")),
            List.of(Choice.one(List.of(List.of("pressure"), List.of("vacuum"), List.of("supply"), List.of("draw")))));

    private static final Group ZONE = new Group(
            "a zone",
            Place.Kind.USAGE,
            List.of(
                    Key.required("name", TITLE, "What the area is called."),
                    Key.optional("users", new Shape.Whole(1, 500), "How many may vacuum there at once.")),
            List.of());

    private static final Group USAGE = new Group(
            "the usage",
            Place.Kind.USAGE,
            List.of(
                    Key.required(
                            "simultaneous users",
                            new Shape.Whole(1, 500),
                            "How many vacuum at once: asked, never inferred from the number of inlets."),
                    Key.optional("zones", new Named("zone", new Shape.Keys(ZONE)), "Areas of the plant."),
                    Key.optional("shifts", new Shape.Keys(OperationKeys.SHIFTS), "Shifts and what is cleaned in each."),
                    Key.optional(
                            "design sets",
                            new Named("design set", new ListOf(new Shape.Id(Target.INLET), 1), true),
                            "Inlets agreed to be open together.")),
            List.of());

    /** What holds a bulk bag; where nothing of it is written, its defaults still count. */
    public static final Group STAND = ContainerKeys.STAND;

    public static final Group REQUIREMENTS = new Group(
            "the requirements",
            Place.Kind.REQUIREMENTS,
            List.of(
                    Key.optional("tool flow", new Shape.Sourced(FREE_AIR), "Least free air at every open tool."),
                    Key.optional("inlet vacuum", new Shape.Sourced(VACUUM), "Least vacuum at every open inlet."),
                    Key.otherwise(
                            "transport factor",
                            new Shape.Sourced(FACTOR),
                            "1",
                            Source.ownReading("the dust class's velocity as it is, no margin on top"),
                            "Times the dust's minimum velocity."),
                    Key.optional(
                            "saltation factor",
                            new Shape.Sourced(SALTATION_FACTOR),
                            "Times the greatest published saltation or choking velocity that is inside its range; 1.5 is a textbook's margin. Where no"
                                    + " law may be asked of a dust it is not known, until the dust's `carrying velocity` is stated."),
                    Key.optional(
                            "loading ratio",
                            new Shape.Sourced(LOADING),
                            "Greatest mass of dust per mass of air in any piece."),
                    Key.optional(
                            "wear velocity",
                            new Shape.Sourced(VELOCITY),
                            "Greatest velocity in tubing that carries dust."),
                    Key.optional(
                            "air to cloth",
                            new Shape.Sourced(SLOW_VELOCITY),
                            "Greatest filtration velocity at the actual flow in the receiver."),
                    Key.optional(
                            "can velocity",
                            new Shape.Sourced(SLOW_VELOCITY),
                            "Greatest upward velocity between the filter elements."),
                    Key.optional(
                            "cleaning interval",
                            new Shape.Sourced(RUNNING_TIME),
                            "Least running time for which the cloth lasts from one off-line cleaning to the next, while the tools keep `tool flow` and `inlet"
                                    + " vacuum` and the filter's drop stays below 10 inH2O (2.491 kPa), where the default sequence holds. That sequence cleans"
                                    + " sooner of its own accord, by its clock and by the drop: the filter's sheet says when."),
                    Key.optional(
                            "hold-up",
                            new Shape.Sourced(RUNNING_TIME),
                            "Least time until dust reaches the receiver's level probe when discharge stops."),
                    Key.otherwise(
                            "valve capacity",
                            new Shape.Sourced(MARGIN),
                            "1.5",
                            PRACTICE,
                            "What a rotary valve discharges over the largest rate of dust; asked where there is a rotary valve."),
                    Key.optional(
                            "container life",
                            new Shape.Sourced(CONTAINER_LIFE),
                            "Least mean time from one change of bag or drum to the next, by the calendar."),
                    Key.optional(
                            "sock velocity",
                            new Shape.Sourced(SLOW_VELOCITY),
                            "Greatest velocity through the cloth of a container's vent sock."),
                    Key.optional(
                            "sound at 1 m",
                            new Shape.Sourced(SOUND_LEVEL),
                            "Greatest sound level at 1 m from all producers of a station together."),
                    Key.optional(
                            "daily exposure",
                            new Shape.Sourced(SOUND_LEVEL),
                            "Greatest noise exposure of the operator over a day, levelled to 8 h at 3 dB.")),
            List.of());

    private static final Group OVERRIDE = new Group(
            "an override",
            Place.Kind.PLANT,
            List.of(
                    Key.required(
                            "set", new Shape.Text(200), "Path of the value it replaces, for example `runs.M1.length`."),
                    Key.required(
                            "to", new Shape.Anything(), "The value that holds instead, written as at its own place."),
                    Key.required("reason", NOTE, "Why."),
                    Key.required("by", TITLE, "Who says so.")),
            List.of());

    /** The whole file. */
    public static final Group TOP = new Group(
            "a plant file",
            Place.Kind.PLANT,
            List.of(
                    Key.required("dustwright", new Shape.Whole(VERSION, VERSION), "Schema version of the file."),
                    Key.required("plant", new Shape.Keys(PLANT), "The plant as a whole."),
                    Key.required("site", new Shape.Keys(SITE), "Where it stands."),
                    Key.optional("dusts", new Named("dust", new Shape.Keys(DUST)), "Dusts picked up."),
                    Key.optional("tubes", new Named("tube", new Shape.Keys(TUBE)), "Sizes of tubing."),
                    Key.optional("hoses", new Named("hose", new Shape.Keys(HOSE)), "Hoses in use."),
                    Key.optional("tools", new Named("tool", new Shape.Keys(TOOL)), "Tools at the hose ends."),
                    Key.optional(
                            "points",
                            new Named("point", new Shape.CoordinatesOrNothing()),
                            "Places where tubing meets or ends: three coordinates, or `{}` where the place is not known."),
                    Key.optional(
                            "inlets", new Named("inlet", new Shape.Keys(INLET)), "Inlet valves with hose and tool."),
                    Key.optional("runs", new Named("run", new Shape.Keys(RUN)), "Tubing of one size between two ends."),
                    Key.optional("bleeds", new Named("bleed", new Shape.Keys(BLEED)), "Far-end bleed valves."),
                    Key.optional(
                            "held",
                            new Named("held point", new Shape.Keys(HELD)),
                            "Points with given pressure or supply, by point id: readings, textbook boundaries."),
                    Key.optional(
                            "stations",
                            new Named("station", new Shape.Keys(StationKeys.STATION)),
                            "Receivers with filter, valves and vacuum producers; the id is the point where tubing enters."),
                    Key.optional(
                            "usage", new Shape.Keys(USAGE), "How the plant is used; required where there are inlets."),
                    Key.optional(
                            "supply",
                            new Shape.Keys(ElectricalKeys.SUPPLY),
                            "Electrical supply at the panel; absent, circuits stay unknown."),
                    Key.optional(
                            "panel", new Shape.Keys(ElectricalKeys.PANEL), "The control panel and where it stands."),
                    Key.optional(
                            "requirements",
                            new Shape.Keys(REQUIREMENTS),
                            "What is asked; an absent limit is not checked. Each value may be `{value: ..., source: ...}`."),
                    Key.optional("costs", new Shape.Keys(OperationKeys.COSTS), "What the owner pays, in one currency."),
                    Key.optional(
                            "sizing",
                            new Shape.Keys(SizingKeys.SIZING),
                            "What `size` may choose, with prices; absent, nothing is open."),
                    Key.optional(
                            "compressed air",
                            new Named("station", new Shape.Keys(OperationKeys.AIR)),
                            "Compressed air that filters take, by station id."),
                    Key.optional(
                            "sound",
                            new Named("station", new Shape.Keys(OperationKeys.SOUND)),
                            "Sound of the machines, by station id."),
                    Key.optional(
                            "overrides",
                            new ListOf(new Shape.Keys(OVERRIDE), 0),
                            "Values replaced for a reason; listed in every report.")),
            List.of());

    /** The long form of a value: with where it comes from. */
    public static Group sourced(Shape value) {
        return new Group(
                "a value with its source",
                Place.Kind.REQUIREMENTS,
                List.of(
                        Key.required("value", value, "The value."),
                        Key.required("source", NOTE, "Where it comes from.")),
                List.of());
    }

    /** Whether a machine of this kind makes vacuum by speed² and inlet density. */
    public static boolean isDynamic(String kind) {
        return ProducerKeys.DYNAMIC.contains(kind);
    }
}
