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
import dustwright.engine.receiver.AfterFilter;
import java.util.ArrayList;
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
        Optional<String> open = method == Method.NONE || ventsInside ? Optional.empty() : open(method);
        if (open.isPresent()) {
            writing.notSaid(FindingCode.EXPLOSION_PROTECTION, Place.Kind.RECEIVER, clause(method), open.get());
            return;
        }
        writing.none(
                FindingCode.EXPLOSION_PROTECTION,
                Place.Kind.RECEIVER,
                "receivers without a way out for an explosion",
                method == Method.NONE || ventsInside || bursts(method) ? 1 : 0,
                SEPARATOR);
    }

    /** Why nobody can say that this method does for the dusts here. */
    private Optional<String> open(Method method) {
        boolean throwsOut = method == Method.VENTING || method == Method.FLAMELESS_VENTING;
        List<Dust> toxic = here.burning().stream()
                .filter(d -> d.card().toxic().orElse(false))
                .toList();
        if (!here.metals().isEmpty()) {
            return Optional.of("Whether " + method.words() + " is fit for " + names(here.metals())
                    + ", a metal dust, is its maker's to state, by tests of this metal; a specialist chooses.");
        }
        if (throwsOut && !toxic.isEmpty()) {
            return Optional.of(
                    "A vent throws dust out, and " + names(toxic)
                            + " is toxic: owner's hygienist and authority have to accept that, else suppression or containment.");
        }
        return method == Method.CONTAINMENT && stated.reduced().isEmpty()
                ? Optional.of(
                        "Enter \"reduced pressure\" under \"explosion\" of the receiver, the pressure the vessel stands: it is held"
                                + " against Pmax of every dust here.")
                : Optional.empty();
    }

    /** A vessel that is to contain an explosion and does not stand its pressure. */
    private boolean bursts(Method method) {
        return method == Method.CONTAINMENT
                && here.burning().stream()
                        .anyMatch(d -> d.card().greatestOrWorst().pascals()
                                > stated.reduced().orElseThrow().pascals());
    }

    private static String names(List<Dust> dusts) {
        return dusts.stream().map(Dust::name).collect(Collectors.joining("; "));
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
        new ValveIsolation(station, writing).write();
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
        if (!none && code == FindingCode.INLET_ISOLATION) {
            mains();
            return;
        }
        writing.none(code, Place.Kind.RECEIVER, counted, none ? 1 : 0, ISOLATION);
    }

    /** A device stands on one main: every other one needs its own. */
    private void mains() {
        List<String> all = here.mains();
        List<String> without = all.size() == 1
                ? List.of()
                : all.stream().filter(m -> !stated.mains().contains(m)).toList();
        if (!without.isEmpty() && stated.mains().isEmpty()) {
            String why = "Enter \"isolated mains\" under \"explosion\" of the receiver: " + all.size()
                    + " mains end here, " + String.join(", ", all)
                    + ", and through one without isolation flame runs back to people who hold hoses.";
            writing.unknown("isolated-mains", "Mains that are isolated", why);
            writing.notSaid(FindingCode.INLET_ISOLATION, Place.Kind.RECEIVER, ISOLATION, why);
            return;
        }
        writing.words(
                "isolated-mains",
                "Mains that are isolated",
                without.isEmpty()
                        ? "each that ends here, as stated: " + String.join(", ", all)
                        : "not " + String.join(", ", without),
                List.of(),
                Source.entered());
        if (without.isEmpty() && !here.metals().isEmpty()) {
            writing.notSaid(
                    FindingCode.INLET_ISOLATION,
                    Place.Kind.RECEIVER,
                    ISOLATION,
                    "Whether the device is fit for " + names(here.metals())
                            + ", a metal dust, is its maker's to state, by tests of this metal.");
            return;
        }
        writing.none(
                FindingCode.INLET_ISOLATION, Place.Kind.RECEIVER, "mains without isolation", without.size(), ISOLATION);
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
        List<String> against = new ArrayList<>();
        List<String> open = new ArrayList<>();
        not.stream()
                .filter(d -> burningMetal(d) || d.card().toxic().isPresent())
                .forEach(d -> against.add(whyNot(d)));
        cleaned(against, open);
        List<Dust> unsaid =
                here.dusts().stream().filter(d -> d.card().toxic().isEmpty()).toList();
        if (!unsaid.isEmpty()) {
            open.add("Enter \"toxic\" under \"explosion\" of " + names(unsaid) + ": meanwhile it counts as toxic.");
        }
        if (!against.isEmpty()) {
            writing.words(
                    "exhaust-conflict", "Air that must not come back", String.join("; ", against), List.of(), air());
        }
        if (against.isEmpty() && !open.isEmpty()) {
            writing.notSaid(FindingCode.EXHAUST_INDOORS, Place.Kind.STATION, air(), String.join(" ", open));
            return;
        }
        writing.none(
                FindingCode.EXHAUST_INDOORS,
                Place.Kind.STATION,
                "reasons why this air must not come back indoors",
                against.size(),
                air());
    }

    /** What keeps dust out of the air: an after-filter that the dust's class allows, and a watch for broken elements. */
    private void cleaned(List<String> against, List<String> open) {
        Optional<Hygiene> strictest = strictest();
        if (here.burning().isEmpty() && strictest.isEmpty()) {
            return;
        }
        if (station.safetyFilter().isEmpty()) {
            against.add("no after-filter is stated");
        } else if (strictest.isPresent()) {
            station.safetyRating()
                    .efficiencyClass()
                    .ifPresentOrElse(
                            c -> passes(c, strictest.get()).ifPresent(against::add),
                            () -> open.add(
                                    "Enter \"class\" of the safety filter, for dust class " + strictest.get() + "."));
        } else {
            open.add("Enter \"hygiene\" under \"explosion\" of the dust: L, M or H decides the after-filter.");
        }
        stated.watched()
                .ifPresentOrElse(
                        watched -> {
                            if (!watched) {
                                against.add("nothing tells a broken filter element");
                            }
                        },
                        () -> open.add(
                                "Enter \"exhaust watched\" under \"explosion\" of the receiver: whether something tells dust in"
                                        + " the air when a filter element breaks."));
    }

    private static Optional<String> passes(String filterClass, Hygiene dustClass) {
        double passes = 1 - AfterFilter.ofClass(filterClass).integral();
        return passes > dustClass.mostPassing() * (1 + 1e-6)
                ? Optional.of("an after-filter of class " + filterClass + " lets through more than dust class "
                        + dustClass + " allows")
                : Optional.empty();
    }

    private Optional<Hygiene> strictest() {
        return here.dusts().stream().flatMap(d -> d.card().hygiene().stream()).max(Comparator.naturalOrder());
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
        Optional<Hygiene> strictest = strictest();
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
