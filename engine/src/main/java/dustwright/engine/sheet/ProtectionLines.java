package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.DustCard.Hygiene;
import dustwright.engine.hazard.Protection;
import dustwright.engine.hazard.Protection.Exhaust;
import dustwright.engine.hazard.Protection.Isolation;
import dustwright.engine.hazard.Protection.Method;
import dustwright.engine.hazard.Protection.Standing;
import dustwright.engine.plant.Station;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** How a receiver is kept from hurting people: its protection, what isolates it from hoses, valve and rooms, and where its air goes. */
final class ProtectionLines {
    private static final Source SEPARATOR =
            Source.fromMemory("NFPA 652/654, air-material separators; successor in NFPA 660");
    private static final Source ISOLATION = Source.fromMemory("NFPA 69; EN 15089, isolation systems");

    private final Station station;
    private final Protection stated;
    private final Collecting here;
    private final Writing writing;

    ProtectionLines(Station station, Collecting here, Writing writing) {
        this.station = station;
        this.stated = station.receiver().protection();
        this.here = here;
        this.writing = writing;
    }

    // ---- the vessel

    void method() {
        String name = "Protection of the receiver";
        if (stated.method().isEmpty()) {
            String why =
                    "Enter \"method\" and \"standing\" under \"explosion\" of the receiver: outdoors, or indoors only with a vent duct"
                            + " to the outside, flameless venting, suppression, or another listed way.";
            writing.unknown("protection", name, why);
            writing.notSaid(FindingCode.EXPLOSION_PROTECTION, Place.Kind.RECEIVER, SEPARATOR, why);
        } else {
            stated(name, stated.method().get());
        }
        if (stated.method()
                .filter(m -> m != Method.VENTING && m != Method.FLAMELESS_VENTING)
                .isEmpty()) {
            new VentLines(station, writing).write(here.burning());
        }
    }

    private void stated(String name, Method method) {
        boolean indoors = stated.standing().filter(s -> s == Standing.INDOORS).isPresent();
        boolean ducted = stated.vent().ducted();
        boolean ventsInside = method == Method.VENTING && indoors && !ducted;
        String place = stated.standing().map(s -> ", " + s.words()).orElse(", where it stands is not stated");
        writing.words(
                "protection",
                name,
                method.words() + place + (ventsInside ? ": it would vent into the room" : ""),
                List.of(),
                Source.entered());
        writing.words("protection-asks", "What " + word(method) + " asks for", asks(method), List.of(), clause(method));
        if (method == Method.VENTING && stated.standing().isEmpty() && !ducted) {
            writing.notSaid(
                    FindingCode.EXPLOSION_PROTECTION,
                    Place.Kind.RECEIVER,
                    SEPARATOR,
                    "Enter \"standing\" under \"explosion\" of the receiver: indoors a vent without a duct burns the room.");
            return;
        }
        writing.none(
                FindingCode.EXPLOSION_PROTECTION,
                Place.Kind.RECEIVER,
                "receivers without a way out for an explosion",
                method == Method.NONE || ventsInside ? 1 : 0,
                SEPARATOR);
    }

    private static String word(Method method) {
        return method == Method.NONE ? "a receiver without protection" : method.words();
    }

    private static String asks(Method method) {
        return switch (method) {
            case VENTING ->
                "panels tested for this duty, nobody and nothing that burns within the fireball, a frame that takes the recoil, a signal when"
                        + " a panel is open that stops producers and valve, no snow or load on the panels";
            case FLAMELESS_VENTING ->
                "a device listed for this dust, its Kst and this volume; its loss of efficiency counted into the vent area; room about it for"
                        + " hot gas and pressure, nobody before it; replaced or restored after each event";
            case SUPPRESSION ->
                "a system designed and tested by its maker for this dust, volume and vacuum; detectors, bottles and controller inspected by"
                        + " its maker's schedule; its detection stops producers and valve";
            case CONTAINMENT ->
                "vessel, tubing and valve up to each isolation device stand the full explosion pressure Pmax of every dust here; starting below"
                        + " the barometer lowers it, joined vessels can raise it far above (pressure piling)";
            case NONE ->
                "another place for this dust, or one of: venting outdoors, a duct to the outside, flameless venting, suppression, containment";
        };
    }

    private static Source clause(Method method) {
        return switch (method) {
            case VENTING -> Source.fromMemory("NFPA 68; EN 14491, EN 14797");
            case FLAMELESS_VENTING -> Source.fromMemory("NFPA 68, flameless devices; EN 16009");
            case SUPPRESSION -> Source.fromMemory("NFPA 69, suppression; EN 14373");
            case CONTAINMENT -> Source.fromMemory("NFPA 69, pressure containment; EN 14460");
            case NONE -> SEPARATOR;
        };
    }

    // ---- what keeps flame from travelling

    void beforePeople() {
        isolation(
                "isolation",
                "Isolation on the main",
                "inlet isolation",
                "without it flame runs back to people who hold hoses",
                FindingCode.INLET_ISOLATION,
                "mains without isolation",
                stated.isolation());
        if (stated.exhaust().filter(e -> e == Exhaust.INDOORS).isPresent()) {
            isolation(
                    "return-isolation",
                    "Isolation on the return air",
                    "return isolation",
                    "without it flame and smoke come into the room with the air",
                    FindingCode.RETURN_ISOLATION,
                    "return ducts without isolation",
                    stated.returnIsolation());
        }
        if (station.rotaryValve().isPresent()) {
            valve();
        }
    }

    private void isolation(
            String id,
            String name,
            String key,
            String without,
            FindingCode code,
            String counted,
            Optional<Isolation> fitted) {
        if (fitted.isEmpty()) {
            String why = "Enter \"" + key + "\" under \"explosion\" of the receiver: " + without + ".";
            writing.unknown(id, name, why);
            writing.notSaid(code, Place.Kind.RECEIVER, ISOLATION, why);
            return;
        }
        Isolation isolation = fitted.get();
        boolean none = isolation == Isolation.NONE;
        writing.words(
                id,
                name,
                none
                        ? "none: " + without
                        : isolation.words()
                                + ", as stated. It has to be tested for this dust's Kst and Pmax, to stand at its maker's distance and to"
                                + " stop the producers when it closes",
                List.of(),
                ISOLATION);
        writing.none(code, Place.Kind.RECEIVER, counted, none ? 1 : 0, ISOLATION);
    }

    private void valve() {
        String name = "Rotary valve as isolation";
        if (stated.valveIsolates().isEmpty()) {
            writing.unknown(
                    "valve-isolation",
                    name,
                    "Enter \"rotary valve isolates\" under \"explosion\" of the receiver. Meanwhile it does not count: what is below it is one"
                            + " vessel with the receiver for flame.");
            return;
        }
        writing.words(
                "valve-isolation",
                name,
                stated.valveIsolates().get()
                        ? "stated as tested for it; it has to stop when an explosion is detected, so that burning dust is not passed on: that goes before"
                                + " keeping it turning on high level"
                        : "does not count: what is below it is one vessel with the receiver for flame",
                List.of(),
                ISOLATION);
    }

    // ---- where the air goes

    /** Asked of every dust: what does not burn can still be breathed. */
    void airBack() {
        String name = "Exhaust air";
        if (stated.exhaust().isEmpty()) {
            String why = "Enter \"exhaust\" under \"explosion\" of the receiver: outdoors or returned indoors.";
            writing.unknown("exhaust", name, why);
            if (!here.burning().isEmpty() || here.dusts().stream().anyMatch(d -> toxic(d.card()))) {
                writing.notSaid(FindingCode.EXHAUST_INDOORS, Place.Kind.STATION, air(), why);
            }
        } else if (stated.exhaust().get() == Exhaust.OUTDOORS) {
            writing.words("exhaust", name, "outdoors", List.of(), Source.entered());
        } else {
            returned(name);
        }
        hygiene();
    }

    private void returned(String name) {
        writing.words(
                "exhaust",
                name,
                "returned indoors: only with an after-filter, a watch for broken elements, no toxic and no metal dust"
                        + (here.burning().isEmpty()
                                ? ""
                                : ", and something that keeps flame and smoke from coming back"),
                List.of(),
                air());
        List<Dust> not = here.dusts().stream()
                .filter(d -> toxic(d.card()) || burningMetal(d))
                .toList();
        if (!not.isEmpty()) {
            writing.words(
                    "exhaust-conflict",
                    "Air that must not come back",
                    not.stream().map(this::whyNot).collect(Collectors.joining("; ")),
                    List.of(),
                    air());
        }
        List<Dust> open =
                here.dusts().stream().filter(d -> d.card().toxic().isEmpty()).toList();
        boolean known =
                not.stream().anyMatch(d -> burningMetal(d) || d.card().toxic().isPresent());
        if (!known && !open.isEmpty()) {
            writing.notSaid(
                    FindingCode.EXHAUST_INDOORS,
                    Place.Kind.STATION,
                    air(),
                    "Enter \"toxic\" under \"explosion\" of "
                            + open.stream().map(Dust::name).collect(Collectors.joining("; "))
                            + ": meanwhile it counts as toxic.");
            return;
        }
        writing.none(
                FindingCode.EXHAUST_INDOORS,
                Place.Kind.STATION,
                "toxic or metal dusts whose air comes back indoors",
                not.size(),
                air());
    }

    private String whyNot(Dust dust) {
        return dust.name()
                + (burningMetal(dust)
                        ? ", a metal dust"
                        : dust.card().toxic().isPresent() ? ", toxic" : ", not stated whether toxic");
    }

    /** Not stated counts as toxic. */
    private static boolean toxic(DustCard card) {
        return card.toxic().orElse(true);
    }

    private boolean burningMetal(Dust dust) {
        return here.metals().contains(dust);
    }

    /** What the rules of returned air come from: of toxic dust alone it is practice. */
    private Source air() {
        return here.burning().isEmpty() ? Source.commonPractice() : SEPARATOR;
    }

    /** After-filter by dust class. */
    private void hygiene() {
        String fitted = station.safetyFilter().isEmpty()
                ? "no safety filter is stated"
                : station.safetyRating()
                        .efficiencyClass()
                        .map(c -> "the safety filter is of class " + c)
                        .orElse("a safety filter is stated, not its class");
        Optional<Hygiene> strictest =
                here.dusts().stream().flatMap(d -> d.card().hygiene().stream()).max(Comparator.naturalOrder());
        if (strictest.isEmpty()) {
            writing.unknown(
                    "after-filter",
                    "After-filter by dust class",
                    "Enter \"hygiene\" under \"explosion\" of the dust: L, M or H. Here " + fitted + ".");
            return;
        }
        writing.words(
                "after-filter",
                "After-filter by dust class " + strictest.get(),
                strictest.get().words() + "; here " + fitted,
                List.of(),
                Hygiene.SOURCE);
    }
}
