package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.electrical.Enclosure;
import dustwright.engine.electrical.Enclosure.AreaClass;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.BagType;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.DustZone;
import dustwright.engine.hazard.DustZone.At;
import dustwright.engine.plant.Station;
import java.util.List;

/** Suggestions for the owner's classification drawing: zone, class and division of every place about a station, and what stands in them. */
final class AreaLines {
    private final Collecting here;
    private final Writing writing;
    private final List<DustCard> burning;

    AreaLines(Collecting here, Writing writing) {
        this.here = here;
        this.writing = writing;
        this.burning = here.burning().stream().map(Dust::card).toList();
    }

    private boolean groupE() {
        return burning.stream().anyMatch(DustCard::mayBeMetal);
    }

    private boolean fibres() {
        return burning.stream().anyMatch(DustCard::flyings);
    }

    void write() {
        area("area-inside", At.DIRTY_SIDE);
        here.station().ifPresent(this::station);
        writing.words(
                "area-room",
                "Rooms where people vacuum",
                "by what lies there: a layer over the hazard depth of the dust's own sheet makes the room Zone 22, "
                        + DustZone.ZONE_22.american(burning)
                        + "; this system is there to keep it from becoming one",
                List.of(),
                DustZone.SOURCE);
        writing.words(
                "area-owner",
                "Who classifies",
                "the owner, by a drawing that a competent person makes; these are suggestions for it. Zones and divisions are not one to one"
                        + (groupE() ? "; hazardous quantities of a metal dust are Division 1" : ""),
                List.of(),
                DustZone.SOURCE);
        here.station()
                .flatMap(s -> s.container())
                .flatMap(c -> c.vapour())
                .filter(vapour -> vapour != BagType.Vapour.NONE)
                .ifPresent(vapour -> writing.words(
                        "area-gas",
                        "Flammable gas or vapour, " + vapour.words(),
                        "the place about bag or drum is a gas zone too, 1 or 2, Class I: equipment is marked for both. With vapour in it a cloud"
                                + " lights more easily and burns harder than the dust alone: MIE, Kst and Pmax of the dust alone then do not"
                                + " hold, have the mixture tested",
                        List.of(),
                        Source.fromMemory("IEC 60079-10-1; NEC 500, 505; hybrid mixtures in NFPA 68 and EN 14491")));
        if (fibres()) {
            writing.words(
                    "area-fibres",
                    "Class of fibres and flyings",
                    "Class III: Division 1 where they are handled or in the air, Division 2 where they lie stored; fine dust that comes with"
                            + " the fibres is Class II, and a test of what lies in the filter says whether there is any",
                    List.of(),
                    DustZone.FIBRES);
        }
    }

    private void station(Station station) {
        area("area-around", At.AROUND_RECEIVER);
        if (station.rotaryValve().isPresent()) {
            area("area-valve", At.VALVE);
        }
        if (station.container().isPresent()) {
            area("area-bag", At.FILLING);
            area("area-around-bag", At.AROUND_FILLING);
        }
        area("area-clean", At.CLEAN_SIDE);
        new ProducerPlace(station, here, writing).write();
        enclosures();
    }

    private void area(String what, At place) {
        DustZone zone = place.zone();
        writing.words(
                what,
                place.words(),
                zone.written() + ", equipment of category " + zone.equipment() + "; " + zone.american(burning),
                List.of(),
                place.source());
    }

    /** What a panel or a device must be in these areas, by the electrical tables. */
    private void enclosures() {
        if (burning.stream().allMatch(DustCard::flyings)) {
            writing.unknown(
                    "enclosures",
                    "Panel and devices in " + DustZone.ZONE_22.american(burning) + " about the station",
                    "The table of enclosures held here knows Class II and zones, not Class III: ask for equipment listed for Class III, or"
                            + " state the \"area class\" of the panel as a zone of group IIIA. Better outside.");
            return;
        }
        AreaClass division = groupE() ? AreaClass.CLASS_II_GROUP_E : AreaClass.CLASS_II_DIVISION_2;
        Enclosure.Route route = Enclosure.forArea(division);
        writing.words(
                "enclosures",
                "Panel and devices in " + division.words() + " about the station",
                route.acceptable() + "; not: " + route.notAcceptable()
                        + ". Better outside. A panel that the plant file describes is held against its area on its own sheet",
                List.of(),
                route.source());
        AreaClass zone = burning.stream()
                        .anyMatch(card -> card.mayBeMetal() || card.conductive().orElse(true))
                ? AreaClass.ZONE_22_IIIC
                : AreaClass.ZONE_22_IIIA_IIIB;
        Enclosure.Route iec = Enclosure.forArea(zone);
        writing.words(
                "enclosures-iec",
                "The same where zones are used, " + zone.words(),
                iec.acceptable() + "; not: " + iec.notAcceptable(),
                List.of(),
                iec.source());
    }
}
