package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.BagType;
import dustwright.engine.hazard.DustFamily;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What combustible dust asks of a station, or of the point where tubing leaves the plant file: what is collected there, area classes,
 * protection, isolation, bonding, bag, exhaust. Conflicts are findings; what nobody has stated is unknown. It never says that a plant is safe.
 */
final class HazardSheet {
    private static final Set<FindingCode> BY_DUST_ALONE = EnumSet.of(
            FindingCode.VENT_AREA,
            FindingCode.EXPLOSION_PROTECTION,
            FindingCode.INLET_ISOLATION,
            FindingCode.RETURN_ISOLATION,
            FindingCode.VALVE_ISOLATION,
            FindingCode.CONE_DISCHARGE,
            FindingCode.FILTER_STATIC);

    private static final Set<FindingCode> BY_DUST = EnumSet.range(FindingCode.DUSTS_TOGETHER, FindingCode.LINER_STATIC);

    private static final Source PRACTICE = Source.commonPractice();
    private static final Source SEPARATOR =
            Source.fromMemory("NFPA 652/654, air-material separators; successor in NFPA 660");
    private static final Source CENTRAL =
            Source.fromMemory("NFPA 654 (2013, 2017), centralized vacuum systems; successor in NFPA 660");

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
        boolean unnamed = !here.undusted().isEmpty() && !plant.dusts().isEmpty();
        return here.dusts().isEmpty() && !unnamed
                ? Optional.empty()
                : Optional.of(new HazardSheet(plant, here).sheet());
    }

    private Sheet sheet() {
        collected();
        notNamed();
        if (!burning.isEmpty()) {
            together();
            new AreaLines(here, writing).write();
            if (!here.metals().isEmpty()) {
                metal();
            }
            dry();
            here.station().ifPresentOrElse(this::station, this::nothingDrawn);
            new CloudLines(plant, here, writing).write();
            users();
            new ChargeLines(here, writing).write();
            new BondingPoints(plant, here, writing).write();
            new PartCharge(plant, here, writing).write();
            hotWork();
            vapour();
        } else {
            here.station().ifPresent(s -> {
                new ProtectionLines(s, here, writing).airBack();
                s.container()
                        .flatMap(c -> c.bag())
                        .filter(bag -> !bag.vapour().equals(Optional.of(BagType.Vapour.NONE)))
                        .ifPresent(bag -> new BagStatic(bag, writing).write(List.of()));
            });
        }
        here.station().ifPresent(s -> new FoodLines(s, here.dusts(), writing).write());
        unsettled();
        caution();
        return writing.sheet(
                "hazard",
                "Combustible dust at " + here.place().kind().words(),
                here.place().kind());
    }

    /** With vapour in the cloud, or where nobody has said that there is none, what was found by figures of the dust alone does not hold it. */
    private void vapour() {
        here.station()
                .flatMap(s -> s.container())
                .filter(c -> !c.vapour().equals(Optional.of(BagType.Vapour.NONE)))
                .ifPresent(c -> writing.unsettled(
                        BY_DUST_ALONE,
                        c.vapour()
                                .map(vapour -> "Flammable gas or vapour, " + vapour.words()
                                        + ", is stated about the " + c.kind().words()
                                        + ": MIE, Kst and Pmax of the dust alone do"
                                        + " not hold with it. Have the mixture tested and a specialist judge it, or keep the vapour away and"
                                        + " enter \"vapour\": none.")
                                .orElseGet(() -> "Enter \"vapour\" of the "
                                        + c.kind().words()
                                        + ": none, or the group of flammable gas or vapour about it; MIE, Kst and Pmax of the dust alone do"
                                        + " not hold with one.")));
    }

    /** What comes in where nobody has named it may be any dust: nothing that was found by the named ones alone holds it. */
    private void unsettled() {
        if (!here.undusted().isEmpty()) {
            writing.unsettled(
                    BY_DUST,
                    "Enter \"dust\" of " + undusted()
                            + ": what comes in there may be any dust, and this was found by the named ones alone.");
        }
    }

    private String undusted() {
        return here.undusted().stream().map(i -> i.id()).collect(Collectors.joining(", "));
    }

    private void collected() {
        here.where()
                .forEach((dust, inlets) -> writing.words(
                        "collects-" + dust.id().replace(' ', '-'),
                        "Collects " + dust.name(),
                        "from " + String.join(", ", inlets),
                        List.of(),
                        Source.entered()));
        if (burning.isEmpty()) {
            writing.words(
                    "burning",
                    "Combustible dusts",
                    here.dusts().isEmpty()
                            ? "no inlet names its dust"
                            : "none is stated: what that rests on stands on the sheet of each dust",
                    List.of(),
                    Source.entered());
        }
    }

    private void notNamed() {
        if (here.undusted().isEmpty()) {
            return;
        }
        String why = "Enter \"dust\" of " + undusted()
                + ": which dust comes in there is not stated, and nobody knows whether it burns.";
        writing.unknown("not-named", "Dust at every inlet", why);
        writing.notSaid(FindingCode.DUST_NOT_NAMED, here.place().kind(), Source.entered(), why);
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
        Optional<String> open = open(without);
        if (clashes.isEmpty() && open.isPresent()) {
            writing.notSaid(FindingCode.DUSTS_TOGETHER, here.place().kind(), DustFamily.APART, open.get());
        } else {
            writing.none(
                    FindingCode.DUSTS_TOGETHER,
                    here.place().kind(),
                    "pairs of dusts that must not meet",
                    clashes.stream().map(this::met).toList(),
                    DustFamily.APART);
        }
    }

    private String met(Collecting.Clash clash) {
        return clash.one().name() + " from " + inlets(clash.one()) + " with "
                + clash.other().name() + " from " + inlets(clash.other()) + ", " + clash.why();
    }

    /** Why nobody can say that nothing meets that must not. */
    private Optional<String> open(List<Dust> without) {
        if (here.dusts().size() > 1 && !without.isEmpty()) {
            return Optional.of("Enter \"family\" under \"explosion\" of "
                    + without.stream().map(Dust::name).collect(Collectors.joining("; ")) + ".");
        }
        List<Dust> untested = here.lightMetals().isEmpty()
                ? List.of()
                : here.dusts().stream()
                        .filter(d -> !d.burns() && !d.card().tested())
                        .toList();
        if (!untested.isEmpty()) {
            return Optional.of("That "
                    + untested.stream().map(Dust::name).collect(Collectors.joining("; "))
                    + " holds no rust and nothing else that light metal takes oxygen from is shown by no test: enter \"sample\": own dust,"
                    + " tested, and its \"report\" under \"explosion\".");
        }
        return here.otherMetals().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        here.otherMetals().stream().map(Dust::name).collect(Collectors.joining(" and "))
                                + " are other metals: each family of metals has its own collection, and whether they are of one is not stated.");
    }

    private String inlets(Dust dust) {
        return String.join(", ", here.where().getOrDefault(dust, List.of()));
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
    }

    /** A dust of which nobody has said what it is made of may be a light metal. */
    private void dry() {
        List<Dust> unnamed =
                burning.stream().filter(d -> d.card().family().isEmpty()).toList();
        if (here.station().isEmpty() || (here.metals().isEmpty() && unnamed.isEmpty())) {
            return;
        }
        if (here.lightMetals().isEmpty() && !unnamed.isEmpty()) {
            writing.notSaid(
                    FindingCode.METAL_DRY,
                    Place.Kind.RECEIVER,
                    DustFamily.APART,
                    "Enter \"family\" under \"explosion\" of "
                            + unnamed.stream().map(Dust::name).collect(Collectors.joining("; ")) + ".");
            return;
        }
        writing.none(
                FindingCode.METAL_DRY,
                Place.Kind.RECEIVER,
                "light-metal dusts that come to this dry receiver",
                here.lightMetals().stream()
                        .map(dust -> dust.name() + " from " + inlets(dust))
                        .toList(),
                DustFamily.APART);
    }

    private void nothingDrawn() {
        String why =
                "The plant file ends here: what stands behind, its protection and isolation, is not described and not judged.";
        writing.unknown("collector", "Collector", why);
        writing.notSaid(FindingCode.EXPLOSION_PROTECTION, Place.Kind.POINT, separator(), why);
        writing.notSaid(FindingCode.INLET_ISOLATION, Place.Kind.POINT, separator(), why);
        if (!here.lightMetals().isEmpty() || !here.unnamed().isEmpty()) {
            writing.notSaid(FindingCode.METAL_DRY, Place.Kind.POINT, DustFamily.APART, why);
        }
        words(
                "isolation-asked",
                "Isolation on the main",
                "asked for: flame must not run back to people who hold hoses, whatever collector stands behind",
                separator());
    }

    // ---- the station

    private void station(Station station) {
        ProtectionLines protection = new ProtectionLines(station, here, writing);
        protection.method();
        protection.beforePeople();
        protection.airBack();
        words(
                "container",
                "Collected dust",
                "in the smallest container that does, emptied often, kept covered",
                separator());
        station.container().flatMap(c -> c.bag()).ifPresent(bag -> new BagStatic(bag, writing).write(burning));
    }

    // ---- people

    private void users() {
        words(
                "velocity-always",
                "Velocity that carries",
                "is to be kept with one user alone as with all: whether it is, the checks of every set and of every single user say",
                central());
        words(
                "hoses",
                "Hoses and tools",
                "tools of metal or dissipative, hose and cuffs conductive or dissipative, all bonded and grounded; tubing of metal, bridged at"
                        + " every coupling that insulates",
                central());
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

    /** Metals have a standard of their own. */
    private Source separator() {
        return here.metals().isEmpty() ? SEPARATOR : DustFamily.APART;
    }

    private Source central() {
        return here.metals().isEmpty() ? CENTRAL : DustFamily.APART;
    }

    private void words(String what, String name, String text, Source source) {
        writing.words(what, name, text, List.of(), source);
    }
}
