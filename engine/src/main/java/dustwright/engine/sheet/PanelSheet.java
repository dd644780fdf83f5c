package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.electrical.ControlSupply;
import dustwright.engine.electrical.ControlSupply.Load;
import dustwright.engine.electrical.Enclosure;
import dustwright.engine.electrical.Enclosure.AreaClass;
import dustwright.engine.electrical.Instrument.Signal;
import dustwright.engine.electrical.Panel;
import dustwright.engine.electrical.Supply;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.ElectricCurrent;
import dustwright.engine.quantity.ElectricPower;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The panel: signals, control supply, enclosure by area class, heat. A starting point; the owner classifies, a licensed person designs. */
final class PanelSheet {
    private static final double SPARE = 0.25;

    private final Plant plant;
    private final Panel panel;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private PanelSheet(Plant plant, Panel panel) {
        this.plant = plant;
        this.panel = panel;
    }

    static Sheet of(Plant plant) {
        return plant.electrical()
                .panel()
                .map(panel -> new PanelSheet(plant, panel).sheet())
                .orElseGet(
                        () -> sheet(
                                List.of(
                                        Entry.unknown(
                                                "enclosure",
                                                "Enclosure",
                                                "No panel is described: enter \"panel: {area class: ..., classified by: ...}\"; the owner classifies."))));
    }

    private static Sheet sheet(List<Entry> entries) {
        return new Sheet("panel", "Panel", new Place(Place.Kind.PANEL, ""), entries, List.of());
    }

    private Sheet sheet() {
        ratings();
        enclosure();
        Sheet heat = PanelCooling.of(plant, panel, control());
        entries.addAll(heat.entries());
        findings.addAll(heat.findings());
        return new Sheet("panel", "Panel", new Place(Place.Kind.PANEL, ""), entries, findings);
    }

    private void ratings() {
        Optional<Supply> supply = plant.electrical().supply();
        String name = "Short-circuit rating asked of the panel";
        entries.add(supply.flatMap(Supply::faultCurrent)
                .map(fault -> Entry.given("short-circuit-rating", name, fault, Source.entered()))
                .orElseGet(() -> Entry.unknown(
                        "short-circuit-rating",
                        name,
                        "At least the available fault current at its terminals: ask whoever feeds it and enter"
                                + " \"fault current\" of the supply.")));
    }

    private void enclosure() {
        String id = "enclosure";
        String name = "Enclosure";
        if (panel.area().isEmpty()) {
            notClassified("The owner classifies the area: enter \"area class\" and \"classified by\" of the panel.");
            return;
        }
        AreaClass area = panel.area().get();
        if (panel.classifiedBy().isEmpty()) {
            notClassified("\"" + area.words()
                    + "\" is stated, but not who classified the area: enter \"classified by\"; an unclassified area too is"
                    + " somebody's decision.");
            return;
        }
        Enclosure.Route route = Enclosure.forArea(area);
        entries.add(Entry.words(
                "area", "Area class, by " + panel.classifiedBy().get(), area.words(), List.of(), Source.entered()));
        entries.add(Entry.words(id, name + " for the area", route.acceptable(), List.of(), route.source()));
        entries.add(Entry.words(
                "not-enclosure", "Does not do for the area", route.notAcceptable(), List.of(), route.source()));
        panel.enclosure()
                .ifPresentOrElse(
                        type -> offered(type, area),
                        () -> notSaid(
                                FindingCode.PANEL_AREA,
                                "Which type is fitted or offered is not stated: enter \"enclosure\" of the panel."));
        panel.exposure().ifPresentOrElse(this::exposure, this::exposureNotStated);
        purge(area);
    }

    /** An area nobody classified leaves open which type does there; what reaches the panel is judged all the same. */
    private void notClassified(String why) {
        entries.add(Entry.unknown("enclosure", "Enclosure", why));
        notSaid(FindingCode.PANEL_AREA, why);
        panel.exposure().ifPresent(this::exposure);
    }

    private void exposureNotStated() {
        String why = "Enter \"exposure\": dust, rain, hose water, corrosion. The area class says nothing of water.";
        entries.add(Entry.unknown("enclosure-type", "Usual type for what reaches it", why));
        notSaid(FindingCode.PANEL_EXPOSURE, why);
    }

    private void notSaid(FindingCode code, String why) {
        Writing judged = new Writing("");
        judged.notSaid(code, Place.Kind.PANEL, Enclosure.typeSource(), why);
        findings.addAll(judged.sheet("panel", "Panel", Place.Kind.PANEL).findings());
    }

    /** What is fitted or offered, against the area. */
    private void offered(String type, AreaClass area) {
        Source source = Enclosure.forArea(area).source();
        String name = "Enclosure offered";
        String said = type.equals(Enclosure.PURGED) ? "purged" : "NEMA " + type;
        Optional<Boolean> suits = Enclosure.suits(type, area);
        Writing judged = new Writing("");
        if (suits.isEmpty()) {
            String why = said + ": " + inZone(type, area);
            entries.add(Entry.unknown("enclosure-offered", name, why));
            judged.notSaid(FindingCode.PANEL_AREA, Place.Kind.PANEL, source, why);
            findings.addAll(judged.sheet("panel", "Panel", Place.Kind.PANEL).findings());
            return;
        }
        if (suits.get()
                && metalOutOf(area)
                && !Enclosure.suits(type, AreaClass.CLASS_II_GROUP_E).orElse(false)) {
            String why = said + ": hazardous quantities of a metal dust are Division 1 and Group E, and " + area.words()
                    + " is stated for a plant that collects " + metals()
                    + ". Ask who classified the area, and state \"family\" of every dust.";
            entries.add(Entry.unknown("enclosure-offered", name, why));
            judged.notSaid(FindingCode.PANEL_AREA, Place.Kind.PANEL, source, why);
            findings.addAll(judged.sheet("panel", "Panel", Place.Kind.PANEL).findings());
            return;
        }
        entries.add(Entry.words(
                "enclosure-offered",
                name,
                said + (suits.get() ? "" : ": not for " + area.words() + ", see what does"),
                List.of(),
                source));
        judged.none(
                FindingCode.PANEL_AREA,
                Place.Kind.PANEL,
                "panels whose type does not do here",
                suits.get() ? List.of() : List.of(said + " in " + area.words()),
                source);
        findings.addAll(judged.sheet("panel", "Panel", Place.Kind.PANEL).findings());
    }

    /** Class II without the group of metals, stated where a dust is a metal or may be one. */
    private boolean metalOutOf(AreaClass area) {
        return (area == AreaClass.CLASS_II_DIVISION_1 || area == AreaClass.CLASS_II_DIVISION_2) && !metals().isEmpty();
    }

    private String metals() {
        return plant.dusts().stream()
                .filter(d -> d.burns() && d.card().mayBeMetal())
                .map(d -> d.name() + (d.card().metal() ? ", a metal" : ", of no stated family"))
                .collect(Collectors.joining("; "));
    }

    private static String inZone(String type, AreaClass area) {
        return type.equals(Enclosure.PURGED)
                ? "nobody has said by which type of protection; ask for a certificate of "
                        + (area == AreaClass.ZONE_21 ? "pxb or pyb" : "pxb, pyb or pzc") + " for " + area.words() + "."
                : "a NEMA type says nothing in " + area.words()
                        + "; ask for a certificate of category or EPL and group.";
    }

    private void exposure(Enclosure.Exposure exposure) {
        Enclosure type = Enclosure.forUnclassified(exposure);
        entries.add(Entry.words(
                "enclosure-type",
                "Usual type for " + exposure.words(),
                "NEMA " + type.type() + ", at least " + type.leastIp() + ": " + type.protectsAgainst(),
                List.of(),
                Enclosure.typeSource()));
        panel.area().filter(area -> panel.classifiedBy().isPresent()).ifPresent(area -> forBoth(area, exposure));
        panel.enclosure()
                .ifPresentOrElse(
                        offered -> withstands(offered, exposure),
                        () -> notSaid(
                                FindingCode.PANEL_EXPOSURE,
                                "Which type is fitted or offered is not stated: enter \"enclosure\" of the panel."));
    }

    /** The types that do for the area and keep out what reaches the panel. */
    private void forBoth(AreaClass area, Enclosure.Exposure exposure) {
        List<String> types = Enclosure.offered().stream()
                .filter(type -> Enclosure.suits(type, area).orElse(false))
                .filter(type -> Enclosure.withstands(type, exposure).orElse(false))
                .map(type -> type.equals(Enclosure.PURGED) ? type : "NEMA " + type)
                .toList();
        if (!types.isEmpty()) {
            entries.add(Entry.words(
                    "enclosure-both",
                    "Does for the area and for " + exposure.words(),
                    String.join(", ", types),
                    List.of(),
                    Enclosure.typeSource()));
        }
    }

    /** What is fitted or offered, against what reaches it. */
    private void withstands(String offered, Enclosure.Exposure exposure) {
        Optional<Boolean> keeps = Enclosure.withstands(offered, exposure);
        Writing judged = new Writing("");
        String id = "enclosure-exposure";
        String name = "Enclosure offered, against " + exposure.bringing();
        if (keeps.isEmpty()) {
            String why = "A purge keeps dust out and says nothing of " + exposure.bringing()
                    + ": enter the NEMA type of the enclosure itself as \"enclosure\".";
            entries.add(Entry.unknown(id, name, why));
            judged.notSaid(FindingCode.PANEL_EXPOSURE, Place.Kind.PANEL, Enclosure.typeSource(), why);
        } else {
            String said = madeFor(offered) + (keeps.get() ? "" : ": does not keep it out");
            entries.add(Entry.words(id, name, said, List.of(), Enclosure.typeSource()));
            judged.none(
                    FindingCode.PANEL_EXPOSURE,
                    Place.Kind.PANEL,
                    "panels that do not keep out " + exposure.bringing() + ", as offered: " + madeFor(offered),
                    keeps.get() ? 0 : 1,
                    Enclosure.typeSource());
        }
        findings.addAll(judged.sheet("panel", "Panel", Place.Kind.PANEL).findings());
    }

    private static String madeFor(String offered) {
        return offered.equals(Enclosure.PURGED)
                ? "purged, against dust"
                : "NEMA " + offered + ", " + Enclosure.ofType(offered).protectsAgainst();
    }

    /** The division an area counts as; empty where it is unclassified. */
    static Optional<Integer> division(AreaClass area) {
        return switch (area) {
            case CLASS_II_DIVISION_1, CLASS_II_GROUP_E, ZONE_20, ZONE_21 -> Optional.of(1);
            case CLASS_II_DIVISION_2, ZONE_22_IIIC, ZONE_22_IIIA_IIIB -> Optional.of(2);
            case UNCLASSIFIED_DUSTY_INDOOR, UNCLASSIFIED_OUTDOOR -> Optional.empty();
        };
    }

    private void purge(AreaClass area) {
        if (area == AreaClass.ZONE_20) {
            entries.add(Entry.words(
                    "purge",
                    "Alternative: purged enclosure",
                    "none: pressurization is no type of protection for Zone 20; move the panel out",
                    List.of(),
                    Source.fromMemory("IEC 60079-2: pxb and pyb for Zone 21, pzc for Zone 22")));
            return;
        }
        division(area).ifPresent(d -> {
            Enclosure.Purge purge = Enclosure.Purge.of(d, false);
            entries.add(Entry.words(
                    "purge",
                    "Alternative: purged enclosure",
                    "type " + purge + ", at least " + leastPressure(purge) + "; on loss of"
                            + " pressure: " + purge.onLossOfPressure()
                            + ". For dust: clean the inside first, no flow purge",
                    List.of(),
                    Enclosure.Purge.source()));
        });
    }

    /** By the heaviest particles that come here; where nobody says how dense they are, both figures. */
    private String leastPressure(Enclosure.Purge purge) {
        String light = Math.round(purge.leastPressure_Pa(false)) + " Pa inside";
        String heavy = Math.round(purge.leastPressure_Pa(true)) + " Pa inside";
        List<Dust> dusts = plant.dusts();
        if (dusts.stream().anyMatch(PanelSheet::heavy)) {
            return heavy
                    + " for dust whose particles weigh more than 130 lb/ft³ (from memory: ask for the purge maker's figure)";
        }
        boolean known = dusts.stream().allMatch(dust -> dust.particle().isPresent());
        return known
                ? light
                : light + ", " + heavy
                        + " if particles weigh more than 130 lb/ft³ (from memory): enter \"particle density\" of every dust";
    }

    private static boolean heavy(Dust dust) {
        return dust.particle()
                .filter(p -> p.density().kgPerCubicMetre() > Enclosure.Purge.HEAVY_DUST_kgPerM3)
                .isPresent();
    }

    private record Count(Load load, int number) {}

    /** What hangs on the control supply: the signals of all stations, and the controller. */
    private static List<Count> counts(List<Instruments.Tagged> instruments) {
        return Arrays.stream(Load.values())
                .map(load -> new Count(
                        load,
                        load == Load.CONTROLLER
                                ? 1
                                : (int) instruments.stream()
                                        .filter(i ->
                                                i.load().filter(load::equals).isPresent())
                                        .count()))
                .toList();
    }

    private static long number(List<Instruments.Tagged> instruments, Signal signal) {
        return instruments.stream().filter(i -> i.signal() == signal).count();
    }

    private ElectricPower control() {
        List<Instruments.Tagged> instruments = Instruments.of(plant);
        List<Count> counts = counts(instruments);
        entries.add(Entry.words(
                "signals",
                "Signals of all stations, as their lists of instruments",
                number(instruments, Signal.DIGITAL_INPUT) + " digital in, "
                        + number(instruments, Signal.ANALOGUE_INPUT) + " analogue in, "
                        + number(instruments, Signal.DIGITAL_OUTPUT) + " digital out; spare not counted",
                List.of(),
                Source.commonPractice()));
        List<Term> terms = counts.stream()
                .map(c -> new Term(
                        "P(" + c.load().words() + ")",
                        c.number() + " at "
                                + String.format(Locale.ROOT, "%.1f", c.load().each_W()) + " W",
                        new ElectricPower(c.number() * c.load().each_W())))
                .toList();
        ElectricPower load = new ElectricPower(
                terms.stream().mapToDouble(t -> t.value().si()).sum());
        Step sum = new Step("ELE-23", "P = Σ P", terms, new Term("P", "control load", load), ControlSupply.source());
        ElectricCurrent current = new ElectricCurrent(
                ControlSupply.current_A(load.watts(), SPARE, panel.control().volts()));
        Step step = new Step(
                "ELE-23",
                "I = P (1 + spare) / U",
                List.of(
                        new Term("P", "control load", load),
                        new Term("spare", "kept free", new Ratio(SPARE)),
                        new Term(
                                "U",
                                "control voltage",
                                new Voltage(panel.control().volts()))),
                new Term("I", "control supply, least", current),
                ControlSupply.source());
        entries.add(Entry.known("control-load", "Control load, everything on", load, List.of(sum)));
        entries.add(Entry.known(
                "control-supply",
                "Control supply, " + panel.control().words() + ", least",
                current,
                List.of(sum, step)));
        return load;
    }
}
