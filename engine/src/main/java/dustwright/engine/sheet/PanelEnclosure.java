package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.electrical.DustMarking;
import dustwright.engine.electrical.DustMarking.Group;
import dustwright.engine.electrical.Enclosure;
import dustwright.engine.electrical.Enclosure.AreaClass;
import dustwright.engine.electrical.Enclosure.Exposure;
import dustwright.engine.electrical.Panel;
import dustwright.engine.electrical.Supply;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.tubing.Inlet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The panel's enclosure against the area its owner classified and against what reaches it. */
final class PanelEnclosure {
    private final Plant plant;
    private final Panel panel;
    private final Writing writing = new Writing("");

    PanelEnclosure(Plant plant, Panel panel) {
        this.plant = plant;
        this.panel = panel;
    }

    /** Where dust burns, a panel nobody describes is a question left open; elsewhere nothing is asked of it. */
    static Sheet notDescribed(Plant plant) {
        String why =
                "No panel is described: enter \"panel: {area class: ..., classified by: ..., enclosure: ...}\"; the owner classifies.";
        Writing writing = new Writing("");
        writing.unknown("enclosure", "Enclosure", why);
        if (!plant.stations().isEmpty() && plant.dusts().stream().anyMatch(Dust::burns)) {
            writing.notSaid(FindingCode.PANEL_AREA, Place.Kind.PANEL, Enclosure.typeSource(), why);
        }
        return writing.sheet("panel", "Panel", Place.Kind.PANEL);
    }

    Sheet sheet() {
        if (panel.area().isEmpty()) {
            notClassified("The owner classifies the area: enter \"area class\" and \"classified by\" of the panel.");
        } else if (panel.classifiedBy().isEmpty()) {
            notClassified("\"" + panel.area().get().words()
                    + "\" is stated, but not who classified the area: enter \"classified by\"; an unclassified area too is"
                    + " somebody's decision.");
        } else {
            classified(panel.area().get(), panel.classifiedBy().get());
        }
        return writing.sheet("panel", "Panel", Place.Kind.PANEL);
    }

    /** An area nobody classified leaves open which type does there; what reaches the panel is judged all the same. */
    private void notClassified(String why) {
        writing.unknown("enclosure", "Enclosure", why);
        notSaid(FindingCode.PANEL_AREA, Enclosure.typeSource(), why);
        panel.exposure().ifPresent(this::exposure);
    }

    private void classified(AreaClass area, String by) {
        writing.words("area", "Area class, by " + by, area.words(), List.of(), Source.entered());
        Enclosure.Route route = Enclosure.forArea(
                area == AreaClass.ZONE_22_IIIA_IIIB && worstGroup(area) == Group.IIIC ? groupOut(area) : area);
        writing.words("enclosure", "Enclosure for the area", route.acceptable(), List.of(), route.source());
        writing.words("not-enclosure", "Does not do for the area", route.notAcceptable(), List.of(), route.source());
        inArea(area);
        panel.exposure().ifPresentOrElse(this::exposure, this::exposureNotStated);
        purge(area);
    }

    /** Classified for less than what comes here, or may come: what does for the worst is told, and who classified is to be asked. */
    private AreaClass groupOut(AreaClass area) {
        boolean known = leastGroup(area) == Group.IIIC;
        writing.words(
                "area-group",
                "Group of the dust that comes here",
                known
                        ? "IIIC, and the area is classified for IIIB and IIIA: ask who classified it. What follows is for IIIC."
                        : "IIIC until \"family\" and \"conductive\" of every dust say otherwise, and the area is classified for IIIB and IIIA."
                                + " What follows is for IIIC.",
                List.of(),
                DustMarking.SOURCE);
        return AreaClass.ZONE_22_IIIC;
    }

    private void exposureNotStated() {
        String why = "Enter \"exposure\": dust, rain, hose water, corrosion. The area class says nothing of water.";
        writing.unknown("enclosure-type", "Usual type for what reaches it", why);
        notSaid(FindingCode.PANEL_EXPOSURE, Enclosure.typeSource(), why);
    }

    private void notSaid(FindingCode code, Source source, String why) {
        writing.notSaid(code, Place.Kind.PANEL, source, why);
    }

    // ---- the area

    /** What is fitted or offered, against the area: in a zone a marking speaks where the enclosure alone does not. */
    private void inArea(AreaClass area) {
        Optional<String> loose = panel.enclosure().filter(e -> !Enclosure.tightEnough(e, area, leastGroup(area)));
        Optional<Boolean> suits = loose.isPresent()
                ? Optional.of(false)
                : panel.enclosure().flatMap(offered -> Enclosure.suits(offered, area));
        Optional<DustMarking> marking = panel.marking().filter(m -> area.isZone());
        if (suits.isPresent()) {
            offered(panel.enclosure().orElseThrow(), area, suits.get());
        } else if (marking.isPresent()) {
            marked(marking.get(), area);
        } else {
            open(Enclosure.forArea(area).source(), notEnough(area));
        }
    }

    private void offered(String offered, AreaClass area, boolean suits) {
        Source source = Enclosure.forArea(area).source();
        String said = Enclosure.written(offered);
        if (suits
                && metalOutOf(area)
                && !Enclosure.suits(offered, AreaClass.CLASS_II_GROUP_E).orElse(false)) {
            open(
                    source,
                    said + ": hazardous quantities of a metal dust are Division 1 and Group E, and " + area.words()
                            + " is stated for a plant that collects " + metals()
                            + ". Ask who classified the area, and state \"family\" of every dust.");
            return;
        }
        judged(area, said, suits ? "" : "not for " + area.words() + ", see what does", source);
        if (suits && PanelEnclosure.division(area).isPresent()) {
            writing.words(
                    "enclosure-plate",
                    "To be read on its plate",
                    "class, group and temperature: a listing for " + area.words()
                            + ", the group of the dust here and a temperature no higher than the sheet of each dust allows",
                    List.of(),
                    source);
        }
    }

    private void judged(AreaClass area, String said, String against, Source source) {
        writing.words(
                "enclosure-offered",
                "Enclosure offered",
                said + (against.isEmpty() ? "" : ": " + against),
                List.of(),
                source);
        List<String> unnamed = plant.dusts().isEmpty()
                ? List.of()
                : plant.inlets().stream()
                        .filter(i -> i.dust().isEmpty())
                        .map(Inlet::id)
                        .toList();
        if (against.isEmpty() && !unnamed.isEmpty()) {
            notSaid(
                    FindingCode.PANEL_AREA,
                    source,
                    "Enter \"dust\" of " + String.join(", ", unnamed)
                            + ": what comes in there may be any dust, and the enclosure was found to do for the named ones alone.");
            return;
        }
        writing.none(
                FindingCode.PANEL_AREA,
                Place.Kind.PANEL,
                "panels whose enclosure does not do here",
                against.isEmpty() ? List.of() : List.of(said + " in " + area.words()),
                source);
    }

    private void open(Source source, String why) {
        writing.unknown("enclosure-offered", "Enclosure offered", why);
        notSaid(FindingCode.PANEL_AREA, source, why);
    }

    /** Group and level of a certificate; a dust nobody has tested may conduct. */
    private void marked(DustMarking marking, AreaClass area) {
        String said = panel.enclosure().map(e -> Enclosure.written(e) + ", ").orElse("") + "marked " + marking.words();
        if (!marking.levelFor(area)) {
            judged(area, said, "its level is not for " + area.words(), DustMarking.SOURCE);
        } else if (!marking.groupFor(leastGroup(area))) {
            judged(area, said, "dust of group " + leastGroup(area) + " comes here", DustMarking.SOURCE);
        } else if (!marking.groupFor(worstGroup(area))
                || panel.enclosure()
                        .filter(e -> !Enclosure.tightEnough(e, area, worstGroup(area)))
                        .isPresent()) {
            open(
                    DustMarking.SOURCE,
                    said
                            + ": enter \"family\" and \"conductive\" of every dust; until then dust of group IIIC may come here.");
        } else {
            judged(area, said, "", DustMarking.SOURCE);
        }
    }

    /** Group of the dust that is known to come here. */
    private Group leastGroup(AreaClass area) {
        if (area == AreaClass.ZONE_22_IIIC
                || burning()
                        .anyMatch(d -> d.card().metal() || d.card().conductive().orElse(false))) {
            return Group.IIIC;
        }
        return burning().anyMatch(d -> !d.card().mayBeMetal() && !d.card().flyings()) ? Group.IIIB : Group.IIIA;
    }

    /** Group of the worst dust that may come here, as far as anybody has said. */
    private Group worstGroup(AreaClass area) {
        if (burning().findAny().isEmpty()) {
            return area == AreaClass.ZONE_22_IIIA_IIIB ? Group.IIIB : Group.IIIC;
        }
        if (area == AreaClass.ZONE_22_IIIC
                || burning()
                        .anyMatch(d ->
                                d.card().mayBeMetal() || d.card().conductive().orElse(true))) {
            return Group.IIIC;
        }
        return burning().allMatch(d -> d.card().flyings()) ? Group.IIIA : Group.IIIB;
    }

    private Stream<Dust> burning() {
        return plant.dusts().stream().filter(Dust::burns);
    }

    /** Class II without the group of metals, stated where a dust is a metal or may be one. */
    private boolean metalOutOf(AreaClass area) {
        return (area == AreaClass.CLASS_II_DIVISION_1 || area == AreaClass.CLASS_II_DIVISION_2) && !metals().isEmpty();
    }

    private String metals() {
        return burning()
                .filter(d -> d.card().mayBeMetal())
                .map(d -> d.name() + (d.card().metal() ? ", a metal" : ", of no stated family"))
                .collect(Collectors.joining("; "));
    }

    /** Why nobody can say, and what to enter. */
    private String notEnough(AreaClass area) {
        if (panel.enclosure().isEmpty()) {
            return area.isZone()
                    ? "Which marking its certificate carries is not stated: enter \"marking\" of the panel, dust group and protection level."
                    : "Which type is fitted or offered is not stated: enter \"enclosure\" of the panel.";
        }
        String offered = panel.enclosure().get();
        String said = Enclosure.written(offered) + ": ";
        if (!area.isZone() && Enclosure.isPurged(offered)) {
            return said + "in " + area.words()
                    + " type X cuts power by itself when the pressure is lost, whatever is inside; type Y"
                    + " asks that all inside suits Division 2, which whoever lists it must say. Enter \"purged X\" where that is the type.";
        }
        if (!area.isZone()) {
            return said + "an IP code is no listing for " + area.words()
                    + ": enter the NEMA type that is fitted or offered.";
        }
        return Enclosure.isPurged(offered)
                ? said + "nobody has said by which type of protection; ask for a certificate of "
                        + (area == AreaClass.ZONE_21 ? "pxb or pyb" : "pxb, pyb or pzc") + " for " + area.words()
                        + " and enter its \"marking\"."
                : said + "says nothing in " + area.words()
                        + "; ask for a certificate of category or EPL and group, and enter its \"marking\".";
    }

    // ---- what reaches it

    private void exposure(Exposure exposure) {
        Enclosure type = Enclosure.forUnclassified(exposure);
        writing.words(
                "enclosure-type",
                "Usual type for " + exposure.words(),
                "NEMA " + type.type() + ", at least " + type.leastIp() + ": " + type.protectsAgainst(),
                List.of(),
                Enclosure.typeSource());
        panel.area().filter(area -> panel.classifiedBy().isPresent()).ifPresent(area -> forBoth(area, exposure));
        panel.enclosure()
                .ifPresentOrElse(
                        offered -> withstands(offered, exposure),
                        () -> notSaid(
                                FindingCode.PANEL_EXPOSURE,
                                Enclosure.typeSource(),
                                "Which type is fitted or offered is not stated: enter \"enclosure\" of the panel."));
    }

    /** What does for the area and keeps out what reaches the panel, of the kind that goes with the supply. */
    private void forBoth(AreaClass area, Exposure exposure) {
        Optional<Supply.Basis> basis = plant.electrical().supply().map(Supply::basis);
        List<String> all = Enclosure.offered().stream()
                .filter(type -> Enclosure.suits(type, area).orElse(false))
                .filter(type -> Enclosure.withstands(type, exposure).orElse(false))
                .toList();
        List<String> both = all.stream()
                .filter(type -> Enclosure.isPurged(type)
                        ? type.equals(Enclosure.PURGED) || !all.contains(Enclosure.PURGED)
                        : division(area).isPresent()
                                || basis.map(b -> Enclosure.isCode(type) == (b == Supply.Basis.IEC))
                                        .orElse(true))
                .map(Enclosure::written)
                .toList();
        if (!both.isEmpty()) {
            writing.words(
                    "enclosure-both",
                    "Does for the area and for " + exposure.words(),
                    String.join(", ", both),
                    List.of(),
                    Enclosure.typeSource());
        }
    }

    /** What is fitted or offered, against what reaches it. */
    private void withstands(String offered, Exposure exposure) {
        Optional<Boolean> keeps = Enclosure.withstands(offered, exposure);
        Source source = Enclosure.source(offered);
        String id = "enclosure-exposure";
        String name = "Enclosure offered, against " + exposure.bringing();
        if (keeps.isEmpty()) {
            String why = (Enclosure.isPurged(offered)
                            ? "A purge keeps dust out and says nothing of " + exposure.bringing()
                            : Enclosure.madeFor(offered) + ", says nothing of oil and corrosion")
                    + ": enter the NEMA type of the enclosure itself as \"enclosure\".";
            writing.unknown(id, name, why);
            notSaid(FindingCode.PANEL_EXPOSURE, source, why);
            return;
        }
        writing.words(
                id,
                name,
                Enclosure.madeFor(offered) + (keeps.get() ? "" : ": does not keep it out"),
                List.of(),
                source);
        writing.none(
                FindingCode.PANEL_EXPOSURE,
                Place.Kind.PANEL,
                "panels that do not keep out " + exposure.bringing() + ", as offered: " + Enclosure.madeFor(offered),
                keeps.get() ? 0 : 1,
                source);
    }

    // ---- the purge

    /** The division an area counts as; empty where it is unclassified. */
    static Optional<Integer> division(AreaClass area) {
        return switch (area) {
            case CLASS_II_DIVISION_1, CLASS_II_GROUP_E, ZONE_20, ZONE_21 -> Optional.of(1);
            case CLASS_II_DIVISION_2, ZONE_22_IIIC, ZONE_22_IIIA_IIIB -> Optional.of(2);
            case UNCLASSIFIED_DUSTY_INDOOR, UNCLASSIFIED_OUTDOOR -> Optional.empty();
        };
    }

    private void purge(AreaClass area) {
        if (area.isZone()) {
            writing.words(
                    "purge",
                    "Alternative: purged enclosure",
                    pressurized(area),
                    List.of(),
                    Source.fromMemory("IEC 60079-2: pxb and pyb for Zone 21, pzc for Zone 22"));
            return;
        }
        division(area).ifPresent(d -> {
            Enclosure.Purge purge = Enclosure.Purge.of(d, false);
            writing.words(
                    "purge",
                    "Alternative: purged enclosure",
                    "type " + purge + ", at least " + leastPressure(purge) + "; on loss of"
                            + " pressure: " + purge.onLossOfPressure()
                            + ". For dust: clean the inside first, no flow purge",
                    List.of(),
                    Enclosure.Purge.source());
        });
    }

    private static String pressurized(AreaClass zone) {
        String asks = ". Its certificate decides. For dust: clean the inside first, no flow purge";
        return switch (zone) {
            case ZONE_20 -> "none: pressurization is no type of protection for Zone 20; move the panel out";
            case ZONE_21 ->
                "Ex pxb or pyb, EPL Db: " + inside(50)
                        + " at least; pxb cuts power by itself on loss of pressure, pyb needs equipment inside that suits Zone 22"
                        + asks;
            default -> "Ex pzc, EPL Dc: " + inside(25) + " at least; an alarm on loss of pressure" + asks;
        };
    }

    /** By the heaviest particles that come here; where nobody says how dense they are, both figures. */
    private String leastPressure(Enclosure.Purge purge) {
        String light = inside(purge.leastPressure_Pa(false));
        String heavy = inside(purge.leastPressure_Pa(true));
        List<Dust> dusts = plant.dusts();
        if (dusts.stream().anyMatch(PanelEnclosure::heavy)) {
            return heavy
                    + " for dust whose particles weigh more than 130 lb/ft³, 2080 kg/m³ (from memory: ask for the purge maker's figure)";
        }
        boolean known = dusts.stream().allMatch(dust -> dust.particle().isPresent());
        return known
                ? light
                : light + ", " + heavy
                        + " if particles weigh more than 130 lb/ft³, 2080 kg/m³ (from memory): enter \"particle density\" of every dust";
    }

    private static String inside(double pressure_Pa) {
        return String.format(
                Locale.ROOT,
                "%.0f Pa (%.1f inH2O) inside",
                pressure_Pa,
                new PressureDifference(pressure_Pa).inchesOfWater());
    }

    private static boolean heavy(Dust dust) {
        return dust.particle()
                .filter(p -> p.density().kgPerCubicMetre() > Enclosure.Purge.HEAVY_DUST_kgPerM3)
                .isPresent();
    }
}
