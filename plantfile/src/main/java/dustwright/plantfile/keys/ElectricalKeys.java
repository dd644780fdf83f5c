package dustwright.plantfile.keys;

import static dustwright.plantfile.keys.Amounts.*;

import dustwright.engine.electrical.DustMarking;
import dustwright.engine.electrical.Enclosure;
import dustwright.engine.electrical.Panel;
import dustwright.engine.electrical.Supply;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.plantfile.keys.Shape.Word;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** The keys of the electrical supply and of the panel. */
final class ElectricalKeys {
    private static final Source PRACTICE = Source.commonPractice();

    private ElectricalKeys() {}

    static final Group SUPPLY = new Group(
            "the electrical supply",
            Place.Kind.PANEL,
            List.of(
                    Key.required("volts", VOLTS, "Voltage between lines of the system: `480 V`, `400 V`."),
                    Key.required("hertz", HERTZ, "Frequency: it says whose rules and whose motor ratings hold."),
                    Key.otherwise("phases", new Shape.Whole(1, 3), "3", PRACTICE, "Phases, 3 or 1."),
                    Key.derived(
                            "basis",
                            words(Supply.Basis.values(), Supply.Basis::name),
                            "`NEC` at 60 Hz, `IEC` at 50 Hz",
                            Source.ownReading("by the frequency of the supply"),
                            "Rules that size the circuits: one for the whole plant."),
                    Key.optional(
                            "fault current",
                            FAULT_CURRENT,
                            "Available short-circuit current at the panel's terminals, from whoever feeds it.")),
            List.of());

    static final Group PANEL = new Group(
            "the panel",
            Place.Kind.PANEL,
            List.of(
                    Key.optional("at", new Shape.Coordinates(), "Place of the panel, for the drawings only."),
                    Key.optional(
                            "area class",
                            words(Enclosure.AreaClass.values(), Enclosure.AreaClass::words),
                            "Class of the area where the panel stands, from the owner's classification drawing."),
                    Key.optional(
                            "enclosure",
                            new Word(Enclosure.offered()),
                            "NEMA type or IP code of the panel as fitted or offered, or `purged`."),
                    Key.optional(
                            "marking",
                            new Word(DustMarking.all().stream()
                                    .map(DustMarking::words)
                                    .toList()),
                            "Dust group and protection level (EPL) that its certificate marks, for zones."),
                    Key.optional("classified by", TITLE, "Who classified the area: person or document."),
                    Key.optional(
                            "exposure",
                            words(Enclosure.Exposure.values(), Enclosure.Exposure::words),
                            "Dust, water and corrosion the panel must bear, beside what its area asks."),
                    Key.otherwise(
                            "control",
                            words(Panel.Control.values(), Panel.Control::words),
                            "24 V DC",
                            PRACTICE,
                            "Voltage of the control circuits."),
                    Key.optional("ambient", AIR_TEMPERATURE, "Hottest air around the panel."),
                    Key.otherwise("inside", PANEL_INSIDE, "50 degC", PRACTICE, "Hottest air its parts may stand in."),
                    Key.optional("surface", PANEL_SURFACE, "Area of its walls that stand free."),
                    Key.otherwise(
                            "drives inside",
                            new Shape.YesNo(),
                            "yes",
                            PRACTICE,
                            "Whether variable-frequency drives sit in the panel."),
                    Key.optional(
                            "power path heat",
                            PANEL_HEAT,
                            "Heat of contactors, overloads, fuses and transformers inside, drives and control load apart, by their makers'"
                                    + " sheets."),
                    Key.optional(
                            "cooler",
                            PANEL_HEAT,
                            "Heat that the closed cooler fitted or offered carries off at `inside` and `ambient`, by its maker's sheet."),
                    Key.optional(
                            "cooling air",
                            PANEL_AIR,
                            "Flow of a fan that leads air of the room through the panel; counts for nothing in a classified area.")),
            List.of());

    private static <T> Word words(T[] values, Function<T, String> words) {
        return new Word(Arrays.stream(values).map(words).toList());
    }
}
