package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.DustFamily;
import dustwright.engine.hazard.Protection;
import dustwright.engine.hazard.Protection.Exhaust;
import dustwright.engine.hazard.Protection.Isolation;
import dustwright.engine.hazard.Protection.Method;
import dustwright.engine.hazard.Protection.Standing;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What combustible dust asks of a station, or of the point where tubing leaves the plant file: what is collected there, area classes,
 * protection, isolation, bonding, bag, exhaust. Conflicts are findings; what nobody has stated is unknown. It never says that a plant is safe.
 */
final class HazardSheet {
    private static final Source PRACTICE = Source.commonPractice();
    private static final Source ZONES =
            Source.published("IEC 60079-10-2, zones as defined there; typical places by a trade article");
    private static final Source SEPARATOR =
            Source.fromMemory("NFPA 652/654, air-material separators; successor in NFPA 660");
    private static final Source CENTRAL =
            Source.fromMemory("NFPA 654 (2013, 2017), centralized vacuum systems; successor in NFPA 660");
    private static final Source PORTABLE =
            Source.published("NFPA 652 (2016) 8.4.2.2, portable cleaners, as a guide, read in summaries");

    private final Plant plant;
    private final Collecting here;
    private final List<Dust> burning;
    private final Writing writing;

    private HazardSheet(Plant plant, Collecting here) {
        this.plant = plant;
        this.here = here;
        this.burning = here.burning();
        this.writing = new Writing(here.place().id());
    }

    /** The sheet of a place where dust is collected; nothing where no inlet picks up a dust that is named. */
    static Optional<Sheet> of(Plant plant, Collecting here) {
        return here.dusts().isEmpty() ? Optional.empty() : Optional.of(new HazardSheet(plant, here).sheet());
    }

    private Sheet sheet() {
        collected();
        if (!burning.isEmpty()) {
            together();
            areas();
            if (!here.metals().isEmpty()) {
                metal();
            }
            here.station().ifPresentOrElse(this::station, this::nothingDrawn);
            users();
            new BondingPoints(plant, here, writing).write();
            hotWork();
        }
        caution();
        return writing.sheet(
                "hazard",
                "Combustible dust at " + here.place().id(),
                here.place().kind());
    }

    private void collected() {
        here.where()
                .forEach((dust, inlets) -> writing.words(
                        "collects-" + dust.id(),
                        "Collects " + dust.name(),
                        "from " + String.join(", ", inlets),
                        List.of(),
                        Source.entered()));
        if (burning.isEmpty()) {
            writing.words(
                    "burning",
                    "Combustible dusts",
                    "none is stated: whoever found that, and by which test, stands on the sheet of each dust",
                    List.of(),
                    Source.entered());
        }
    }

    // ---- what meets here

    private void together() {
        List<Dust> without =
                here.dusts().stream().filter(d -> d.card().family().isEmpty()).toList();
        if (here.dusts().size() > 1 && !without.isEmpty()) {
            writing.unknown(
                    "together",
                    "Dusts that must not meet",
                    "Enter \"family\" under \"explosion\" of "
                            + without.stream().map(Dust::name).collect(Collectors.joining("; ")) + ".");
        }
        List<Collecting.Clash> clashes = here.clashes();
        for (Collecting.Clash clash : clashes) {
            writing.words(
                    "clash-" + clash.one().id() + "-" + clash.other().id(),
                    clash.one().name() + " and " + clash.other().name(),
                    clash.why() + "; they meet from " + inlets(clash.one()) + " and " + inlets(clash.other()),
                    List.of(),
                    DustFamily.APART);
        }
        if (without.isEmpty() || !clashes.isEmpty()) {
            writing.none(
                    FindingCode.DUSTS_TOGETHER,
                    here.place().kind(),
                    "pairs of dusts that must not meet",
                    clashes.size(),
                    DustFamily.APART);
        }
    }

    private String inlets(Dust dust) {
        return String.join(", ", here.where().getOrDefault(dust, List.of()));
    }

    private void areas() {
        boolean metal = burning.stream()
                .anyMatch(d -> d.card().family().map(DustFamily::metal).orElse(true));
        String division2 = metal
                ? "; Class II Division 1 wherever there is a hazardous quantity of Group E, or while the family is not stated"
                : "; Class II Division 2";
        area(
                "area-inside",
                "Inside of receiver, dirty side, and tubing",
                "many designers call it Zone 20; Class II Division 1");
        area(
                "area-clean",
                "Clean side, producer and exhaust",
                "Zone 22, equipment of category 3D (EPL Dc)" + division2);
        if (here.station().flatMap(Station::rotaryValve).isPresent()) {
            area(
                    "area-valve",
                    "Inside of the rotary valve",
                    "Zone 21, equipment of category 2D (EPL Db); Class II Division 1");
        }
        if (here.station().flatMap(Station::container).isPresent()) {
            area(
                    "area-bag",
                    "Inside of the bag or drum being filled",
                    "Zone 21, equipment of category 2D (EPL Db); Class II Division 1");
            area("area-around-bag", "Around it, 3 m", "Zone 22, equipment of category 3D (EPL Dc)" + division2);
        }
        writing.words(
                "area-owner",
                "Who classifies",
                "the owner, by a drawing that a competent person makes; these are suggestions for it. Zones and divisions are not one to one",
                List.of(),
                ZONES);
    }

    private void area(String what, String name, String text) {
        writing.words(what, name, text, List.of(), ZONES);
    }

    // ---- metal

    private void metal() {
        String names = here.metals().stream().map(Dust::name).collect(Collectors.joining("; "));
        words(
                "metal-apart",
                "Metal dust: " + names,
                "a system of its own for this family of metal, which no other dust enters; steel, rust and sparks are kept out",
                DustFamily.APART);
        words(
                "metal-isolation",
                "Isolation of metal dust",
                "every main into the collector is isolated; whether a device is fit for this metal is its maker's to state, by tests",
                DustFamily.APART);
        words("metal-return", "Exhaust air of metal dust", "not returned indoors", DustFamily.APART);
        if (!here.lightMetals().isEmpty()) {
            words(
                    "metal-wet",
                    "Collector for light metal",
                    "wet, hydrogen vented, sludge taken out daily; or dry outdoors after a special review. Bag and rotary valve are questionable",
                    DustFamily.APART);
        }
        here.station()
                .ifPresent(s -> writing.none(
                        FindingCode.METAL_DRY,
                        Place.Kind.RECEIVER,
                        "light-metal dusts that come to this dry receiver",
                        here.lightMetals().size(),
                        DustFamily.APART));
    }

    private void nothingDrawn() {
        writing.unknown(
                "collector",
                "Collector",
                "The plant file ends here: what stands behind, its protection and isolation, is not described and not judged.");
        words(
                "isolation-asked",
                "Isolation on the main",
                "asked for: flame must not run back to people who hold hoses, whatever collector stands behind",
                SEPARATOR);
    }

    // ---- the station

    private void station(Station station) {
        Protection stated = station.receiver().protection();
        method(stated);
        if (stated.method()
                .filter(m -> m != Method.VENTING && m != Method.FLAMELESS_VENTING)
                .isEmpty()) {
            new VentLines(station.receiver(), writing).write(burning);
        }
        isolation(stated);
        station.rotaryValve().ifPresent(valve -> valve(stated));
        exhaust(stated);
        words(
                "filter-static",
                "Filter elements",
                "a static-dissipative make where the dust asks for it, and every cage bonded to ground; the producer stands on the clean side",
                PORTABLE);
        words(
                "container",
                "Collected dust",
                "in the smallest container that does, emptied often, kept covered",
                SEPARATOR);
        station.container().flatMap(c -> c.bag()).ifPresent(bag -> new BagStatic(bag, writing).write(burning));
    }

    private void method(Protection stated) {
        String name = "Protection of the receiver";
        if (stated.method().isEmpty()) {
            writing.unknown(
                    "protection",
                    name,
                    "Enter \"method\" and \"standing\" under \"explosion\" of the receiver: outdoors, or indoors only with a vent duct to"
                            + " the outside, flameless venting, suppression, or another listed way.");
            return;
        }
        Method method = stated.method().get();
        boolean indoors = stated.standing().filter(s -> s == Standing.INDOORS).isPresent();
        boolean ventsInside =
                method == Method.VENTING && indoors && stated.duct().isEmpty();
        boolean failing = method == Method.NONE || ventsInside;
        writing.words(
                "protection",
                name,
                method.words()
                        + stated.standing().map(s -> ", " + s.words()).orElse(", where it stands is not stated")
                        + (ventsInside ? ": it would vent into the room" : ""),
                List.of(),
                Source.entered());
        writing.none(
                FindingCode.EXPLOSION_PROTECTION,
                Place.Kind.RECEIVER,
                "receivers without a way out for an explosion",
                failing ? 1 : 0,
                SEPARATOR);
    }

    private void isolation(Protection stated) {
        if (stated.isolation().isEmpty()) {
            writing.unknown(
                    "isolation",
                    "Isolation on the main",
                    "Enter \"inlet isolation\" under \"explosion\" of the receiver: without it flame runs back to people who hold hoses.");
            return;
        }
        Isolation isolation = stated.isolation().get();
        writing.words(
                "isolation",
                "Isolation on the main",
                isolation == Isolation.NONE
                        ? "none: flame runs back to people who hold hoses"
                        : isolation.words()
                                + ", tested for this dust's Kst and Pmax and placed at its maker's distance; closed, it stops the"
                                + " producers",
                List.of(),
                SEPARATOR);
        writing.none(
                FindingCode.INLET_ISOLATION,
                Place.Kind.RECEIVER,
                "mains without isolation",
                isolation == Isolation.NONE ? 1 : 0,
                SEPARATOR);
    }

    private void valve(Protection stated) {
        String name = "Rotary valve as isolation";
        if (stated.valveIsolates().isEmpty()) {
            writing.unknown(
                    "valve-isolation",
                    name,
                    "Enter \"rotary valve isolates\" under \"explosion\" of the receiver: it counts only where it was built and tested for it.");
            return;
        }
        words(
                "valve-isolation",
                name,
                stated.valveIsolates().get()
                        ? "as its test says; it stops when an explosion is detected, so that burning dust is not passed on: that goes before"
                                + " keeping it turning on high level"
                        : "does not count: what is below it is one vessel with the receiver for flame",
                Source.fromMemory("NFPA 69; EN 15089"));
    }

    private void exhaust(Protection stated) {
        String name = "Exhaust air";
        if (stated.exhaust().isEmpty()) {
            writing.unknown(
                    "exhaust",
                    name,
                    "Enter \"exhaust\" under \"explosion\" of the receiver: outdoors or returned indoors.");
            return;
        }
        boolean indoors = stated.exhaust().get() == Exhaust.INDOORS;
        List<Dust> not = burning.stream()
                .filter(d -> d.card().toxic().orElse(false)
                        || d.card().family().filter(DustFamily::metal).isPresent())
                .toList();
        words(
                "exhaust",
                name,
                indoors
                        ? "returned indoors: only with an after-filter, a watch for broken elements, no toxic and no metal dust, and something"
                                + " that keeps flame and smoke from coming back"
                        : "outdoors",
                indoors ? SEPARATOR : Source.entered());
        if (indoors) {
            writing.none(
                    FindingCode.EXHAUST_INDOORS,
                    Place.Kind.STATION,
                    "toxic or metal dusts whose air comes back indoors",
                    not.size(),
                    SEPARATOR);
        }
    }

    // ---- people

    private void users() {
        words(
                "velocity-always",
                "Velocity that carries",
                "held with one user alone as with all: the checks of every set and of every single user say where it is not",
                CENTRAL);
        words(
                "hoses",
                "Hoses and tools",
                "tools of metal or dissipative, hose conductive or dissipative, all bonded and grounded",
                CENTRAL);
    }

    private void hotWork() {
        words(
                "hot-work",
                "Hot work and burning material",
                "no embers, hot ash or weld spatter is picked up; before hot work the system is stopped, emptied, cleaned, and watched after;"
                        + " smouldering dust in the receiver is not stirred by air or by a pulse",
                PRACTICE);
    }

    private void caution() {
        words(
                "hazard-caution",
                "What this sheet is",
                "what was checked, on which basis, and what remains open: a prompt for a dust hazard analysis that a qualified person does and"
                        + " signs. Authority having jurisdiction, insurer and local code decide; clauses belong to their edition and are to be"
                        + " read there",
                PRACTICE);
    }

    private void words(String what, String name, String text, Source source) {
        writing.words(what, name, text, List.of(), source);
    }
}
