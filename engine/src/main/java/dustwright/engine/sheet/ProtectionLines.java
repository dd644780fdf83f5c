package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.DustCard.Hygiene;
import dustwright.engine.hazard.DustFamily;
import dustwright.engine.hazard.Protection;
import dustwright.engine.hazard.Protection.Exhaust;
import dustwright.engine.hazard.Protection.Isolation;
import dustwright.engine.hazard.Protection.Method;
import dustwright.engine.hazard.Protection.Standing;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Ratio;
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
    private static final Source CLASSES = Source.published("EN 1822-1, ISO 29463-1, integral efficiency of a class");
    private static final Source ISOLATION = Source.fromMemory("NFPA 69; EN 15089, isolation systems");

    /** The classes are given to a hundred-millionth of a percent at most. */
    private static final double CLASS_DIGITS = 1e10;

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
            writing.notSaid(FindingCode.EXPLOSION_PROTECTION, Place.Kind.RECEIVER, separator(), why);
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
                    separator(),
                    "Enter \"standing\" under \"explosion\" of the receiver: indoors a vent without a duct burns the room.");
            return;
        }
        if (method == Method.CONTAINMENT && contained()) {
            return;
        }
        if (listed(method, ventsInside)) {
            return;
        }
        Optional<String> open = method == Method.NONE || ventsInside ? Optional.empty() : open(method);
        if (open.isPresent()) {
            writing.notSaid(FindingCode.EXPLOSION_PROTECTION, Place.Kind.RECEIVER, clause(method), open.get());
            return;
        }
        if (method == Method.SUPPRESSION) {
            suppressed();
            return;
        }
        writing.none(
                FindingCode.EXPLOSION_PROTECTION,
                Place.Kind.RECEIVER,
                "receivers without a way out for an explosion",
                method == Method.NONE || ventsInside ? 1 : 0,
                separator());
    }

    /** A device made and listed for a dust: whether it is known not to be for one here. */
    private boolean listed(Method method, boolean ventsInside) {
        if (ventsInside || (method != Method.FLAMELESS_VENTING && method != Method.SUPPRESSION)) {
            return false;
        }
        Fitness fitness = listing();
        writing.words(
                "protection-device", "The device for " + method.words(), fitness.words(), List.of(), clause(method));
        if (!fitness.against().isEmpty()) {
            writing.none(
                    FindingCode.EXPLOSION_PROTECTION,
                    Place.Kind.RECEIVER,
                    "reasons why its device does not do",
                    fitness.against(),
                    clause(method));
        }
        return !fitness.against().isEmpty();
    }

    private Fitness listing() {
        return new Fitness(stated.devices().protection(), "protection device", here.burning());
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
        if (!here.unnamed().isEmpty()) {
            return Optional.of(family());
        }
        List<Dust> unsaid =
                here.burning().stream().filter(d -> d.card().toxic().isEmpty()).toList();
        if (throwsOut && toxic.isEmpty() && !unsaid.isEmpty()) {
            return Optional.of("Enter \"toxic\" under \"explosion\" of " + names(unsaid) + ": a vent throws dust out.");
        }
        if (throwsOut && !toxic.isEmpty()) {
            return Optional.of(
                    "A vent throws dust out, and " + names(toxic)
                            + " is toxic: owner's hygienist and authority have to accept that, else suppression or containment.");
        }
        if (method == Method.FLAMELESS_VENTING || method == Method.SUPPRESSION) {
            return listing().open();
        }
        return Optional.empty();
    }

    /** A suppressed explosion still raises the pressure: the vessel's strength against what the maker says is left. */
    private void suppressed() {
        Optional<GaugePressure> left = stated.devices().protection().suppressed();
        left.ifPresent(p -> writing.given(
                "suppressed", "Pressure a suppressed explosion still comes to, as the device's maker states", p));
        stated.reduced()
                .ifPresent(
                        p -> writing.given("stands", "Pressure the vessel stands, beside full vacuum, as stated", p));
        if (stated.reduced().isEmpty() || left.isEmpty()) {
            writing.notSaid(
                    FindingCode.EXPLOSION_PROTECTION,
                    Place.Kind.RECEIVER,
                    clause(Method.SUPPRESSION),
                    "Enter \"reduced pressure\" under \"explosion\" of the receiver, the pressure the vessel stands, and \"suppressed"
                            + " pressure\" under \"protection device\", what its maker says a suppressed explosion of this dust still comes to"
                            + " in this vessel.");
            return;
        }
        GaugePressure stands = stated.reduced().get();
        writing.asked(
                FindingCode.EXPLOSION_PROTECTION,
                Place.Kind.RECEIVER,
                Sheet.ANY_SET,
                Side.AT_LEAST,
                stands,
                new Limit<>(left.get(), Source.entered()),
                List.of(Writing.stated("p", "pressure the vessel stands", stands, Source.entered())));
    }

    /** The vessel's strength against the greatest Pmax here, where that decides; whether it did. */
    private boolean contained() {
        GaugePressure greatest = here.burning().stream()
                .map(d -> d.card().greatestOrWorst())
                .max(Comparator.comparingDouble(GaugePressure::pascals))
                .orElseThrow();
        Limit<GaugePressure> limit = new Limit<>(greatest, clause(Method.CONTAINMENT));
        List<Dust> unknown = here.burning().stream()
                .filter(d -> d.card().greatest().isEmpty())
                .toList();
        if (stated.reduced().isEmpty()) {
            burstNotKnown(
                    limit,
                    "Enter \"reduced pressure\" under \"explosion\" of the receiver, the pressure the vessel stands: it is held"
                            + " against Pmax of every dust here.");
            return true;
        }
        GaugePressure stands = stated.reduced().get();
        boolean bursts = here.burning().stream()
                .flatMap(d -> d.card().greatest().stream())
                .anyMatch(pmax -> pmax.value().pascals() > stands.pascals());
        if (!bursts && stands.pascals() < greatest.pascals()) {
            burstNotKnown(
                    limit,
                    "Enter \"pmax\" under \"explosion\" of " + names(unknown)
                            + ": meanwhile 12 bar is taken, and the vessel stands less.");
            return true;
        }
        List<Dust> untested =
                here.burning().stream().filter(d -> !d.card().tested()).toList();
        if (!bursts && (!here.metals().isEmpty() || !here.unnamed().isEmpty())) {
            return false;
        }
        if (!bursts && !untested.isEmpty()) {
            burstNotKnown(
                    limit,
                    "Pmax of " + names(untested)
                            + " is of other samples, which differ by 10 to 20 %: a vessel that contains needs Pmax of the own dust, \"sample\" and"
                            + " \"report\".");
            return true;
        }
        writing.asked(
                FindingCode.EXPLOSION_PROTECTION,
                Place.Kind.RECEIVER,
                Sheet.ANY_SET,
                Side.AT_LEAST,
                stands,
                limit,
                List.of(Writing.stated("p", "pressure the vessel stands", stands, Source.entered())));
        return true;
    }

    private void burstNotKnown(Limit<GaugePressure> limit, String why) {
        writing.unjudged(FindingCode.EXPLOSION_PROTECTION, Place.Kind.RECEIVER, Side.AT_LEAST, limit, why);
    }

    private String family() {
        return "Enter \"family\" under \"explosion\" of " + names(here.unnamed())
                + ": it may be a metal, and a device for another dust does not do for one.";
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
                "panels tested for this duty, on the dirty side where no element or cage stands before them, nobody and nothing that burns within the"
                        + " distance kept clear, a frame that takes the recoil, a signal when"
                        + " a panel is open that stops producers and valve, no snow or load on the panels";
            case FLAMELESS_VENTING ->
                "a device listed for this dust, its Kst and this volume; its loss of efficiency counted into the vent area; room about it for"
                        + " hot gas and pressure, nobody before it; replaced or restored after each event";
            case SUPPRESSION ->
                "a system designed and tested by its maker for this dust, volume and vacuum; a vessel that stands the pressure still reached, the"
                        + " suppressed pressure its maker states; detectors, bottles and controller inspected by"
                        + " its maker's schedule; its detection stops producers and valve";
            case CONTAINMENT ->
                "vessel, tubing and valve up to each isolation device stand the full explosion pressure Pmax of every dust here; starting below"
                        + " the barometer lowers it, joined vessels can raise it far above (pressure piling)";
            case NONE ->
                "another place for this dust, or one of: venting outdoors, a duct to the outside, flameless venting, suppression, containment";
        };
    }

    /** Metals have a standard of their own. */
    private Source separator() {
        return here.metals().isEmpty() ? SEPARATOR : DustFamily.APART;
    }

    private Source clause(Method method) {
        return switch (method) {
            case VENTING -> Source.fromMemory("NFPA 68; EN 14491, EN 14797");
            case FLAMELESS_VENTING -> Source.fromMemory("NFPA 68, flameless devices; EN 16009");
            case SUPPRESSION -> Source.fromMemory("NFPA 69, suppression; EN 14373");
            case CONTAINMENT -> Source.fromMemory("NFPA 69, pressure containment; EN 14460");
            case NONE -> separator();
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
        if (stated.exhaust().isEmpty()) {
            writing.notSaid(
                    FindingCode.RETURN_ISOLATION,
                    Place.Kind.RECEIVER,
                    ISOLATION,
                    "Enter \"exhaust\" under \"explosion\" of the receiver: air returned indoors is isolated.");
        } else if (stated.exhaust().get() == Exhaust.INDOORS) {
            isolation(
                    "return-isolation",
                    "Isolation on the return air",
                    "return isolation",
                    "without it flame and smoke come into the room with the air",
                    FindingCode.RETURN_ISOLATION,
                    "return ducts without isolation",
                    stated.returnIsolation());
        }
        new ValveIsolation(station, here, writing).write();
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
        if (none) {
            writing.none(code, Place.Kind.RECEIVER, counted, 1, ISOLATION);
            return;
        }
        boolean back = code == FindingCode.RETURN_ISOLATION;
        Fitness fitness = new Fitness(
                        back ? stated.devices().back() : stated.devices().inlet(),
                        back ? "return device" : "inlet device",
                        here.burning())
                .inDuct(isolation == Isolation.FLOAT_VALVE);
        writing.words(
                id + "-device",
                back ? "Its device on the return air" : "Its device on each main",
                fitness.words(),
                List.of(),
                ISOLATION);
        if (back) {
            judged(code, counted, fitness, List.of());
        } else {
            mains(fitness);
        }
    }

    private void judged(FindingCode code, String counted, Fitness fitness, List<String> without) {
        if (!without.isEmpty()) {
            writing.none(code, Place.Kind.RECEIVER, counted, without, ISOLATION);
        } else if (fitness.against().isEmpty() && fitness.open().isPresent()) {
            writing.notSaid(code, Place.Kind.RECEIVER, ISOLATION, fitness.open().get());
        } else {
            writing.none(code, Place.Kind.RECEIVER, "reasons why its device does not do", fitness.against(), ISOLATION);
        }
    }

    /** A device stands on one main: every other one needs its own. */
    private void mains(Fitness fitness) {
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
        boolean fit = without.isEmpty() && fitness.against().isEmpty();
        if (fit && !here.metals().isEmpty()) {
            writing.notSaid(
                    FindingCode.INLET_ISOLATION,
                    Place.Kind.RECEIVER,
                    ISOLATION,
                    "Whether the device is fit for " + names(here.metals())
                            + ", a metal dust, is its maker's to state, by tests of this metal.");
            return;
        }
        if (fit && !here.unnamed().isEmpty()) {
            writing.notSaid(FindingCode.INLET_ISOLATION, Place.Kind.RECEIVER, ISOLATION, family());
            return;
        }
        judged(FindingCode.INLET_ISOLATION, "mains without isolation", fitness, without);
    }

    // ---- where the air goes

    /** Asked of every dust: what does not burn can still be breathed. */
    void airBack() {
        String name = "Exhaust air";
        if (stated.exhaust().isEmpty()) {
            String why = "Enter \"exhaust\" under \"explosion\" of the receiver: outdoors or returned indoors.";
            writing.unknown("exhaust", name, why);
            writing.notSaid(FindingCode.EXHAUST_INDOORS, Place.Kind.STATION, air(), why);
        } else if (stated.exhaust().get() == Exhaust.OUTDOORS) {
            writing.words("exhaust", name, "outdoors", List.of(), Source.entered());
        } else {
            returned(name);
        }
        hygiene();
        afterFilter();
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
        List<Dust> sensitizing = here.dusts().stream()
                .filter(d -> d.card().sensitizing().orElse(true))
                .toList();
        if (!sensitizing.isEmpty()) {
            open.add(
                    "The owner's hygienist has to accept air that carried " + names(sensitizing)
                            + ", sensitizing or carcinogenic or not stated to be neither, \"sensitizing\" under \"explosion\"; else lead it outdoors.");
        }
        if (!here.unnamed().isEmpty()) {
            open.add(family());
        }
        here.dusts().stream()
                .filter(d -> d.card().hygiene().filter(h -> h == Hygiene.H).isPresent()
                        && d.card().toxic().filter(poison -> !poison).isPresent())
                .forEach(d ->
                        open.add(d.name() + " is of dust class H and stated not to be toxic: one of both is wrong."));
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
                against,
                air());
    }

    /** What keeps dust out of the air: an after-filter that the dust's class allows, and a watch for broken elements. */
    private void cleaned(List<String> against, List<String> open) {
        Optional<Hygiene> strictest = strictest();
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
        return passing(filterClass).value() > dustClass.mostPassing()
                ? Optional.of("an after-filter of class " + filterClass + " lets through more than dust class "
                        + dustClass + " allows")
                : Optional.empty();
    }

    /** What a class may let through, to the digits its standard gives. */
    private static Ratio passing(String filterClass) {
        double passing = 1 - AfterFilter.ofClass(filterClass).integral();
        return new Ratio(Math.round(passing * CLASS_DIGITS) / CLASS_DIGITS);
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
        return here.burning().isEmpty() ? Source.commonPractice() : separator();
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

    /** Asked of air that people breathe: returned to a room, or of a dust that is toxic or may be, or while nobody says where it goes. */
    private void afterFilter() {
        boolean outdoors = stated.exhaust().filter(e -> e == Exhaust.OUTDOORS).isPresent();
        boolean indoors = stated.exhaust().filter(e -> e == Exhaust.INDOORS).isPresent();
        boolean poison = here.dusts().stream().anyMatch(d -> d.card().toxic().orElse(false));
        boolean unsaid = here.dusts().stream().anyMatch(d -> d.card().toxic().isEmpty());
        boolean asked = !outdoors || poison || unsaid;
        if (!asked) {
            return;
        }
        if (strictest().isEmpty()) {
            writing.notSaid(
                    FindingCode.AFTER_FILTER,
                    Place.Kind.STATION,
                    Hygiene.SOURCE,
                    "Enter \"hygiene\" under \"explosion\" of the dust: L, M or H decides the after-filter.");
            return;
        }
        Limit<Ratio> most = new Limit<>(new Ratio(strictest().get().mostPassing()), Hygiene.SOURCE);
        Optional<Ratio> passing = station.safetyFilter()
                .flatMap(filter -> station.safetyRating().efficiencyClass())
                .map(ProtectionLines::passing);
        if (passing.filter(p -> p.compareTo(most.value()) <= 0).isEmpty() && !indoors && !poison) {
            filterOpen(
                    most,
                    outdoors
                            ? "Enter \"toxic\" under \"explosion\" of every dust: of a toxic one the air outdoors too passes a filter of its class."
                            : "Enter \"exhaust\" under \"explosion\" of the receiver: where the air goes decides whether the after-filter does.");
        } else if (passing.isPresent()) {
            writing.asked(
                    FindingCode.AFTER_FILTER,
                    Place.Kind.STATION,
                    Sheet.ANY_SET,
                    Side.AT_MOST,
                    passing.get(),
                    most,
                    List.of(Writing.stated("1 − E", "share that its class lets through", passing.get(), CLASSES)));
        } else if (station.safetyFilter().isPresent()) {
            filterOpen(
                    most,
                    "Enter \"class\" of the safety filter, for dust class "
                            + strictest().get() + ".");
        } else {
            writing.none(
                    FindingCode.AFTER_FILTER,
                    Place.Kind.STATION,
                    "stations whose air passes no after-filter",
                    1,
                    Hygiene.SOURCE);
        }
    }

    private void filterOpen(Limit<Ratio> most, String why) {
        writing.unjudged(FindingCode.AFTER_FILTER, Place.Kind.STATION, Side.AT_MOST, most, why);
    }
}
