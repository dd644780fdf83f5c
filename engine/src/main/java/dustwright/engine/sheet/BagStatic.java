package dustwright.engine.sheet;

import dustwright.engine.bagging.BulkBag;
import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.hazard.BagType;
import dustwright.engine.hazard.BagType.LinerType;
import dustwright.engine.hazard.BagType.Surroundings;
import dustwright.engine.hazard.MieStep;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Electrostatic type of a bulk bag and its liner against the dusts that fall into it. */
final class BagStatic {
    private final BulkBag bag;
    private final Writing writing;

    BagStatic(BulkBag bag, Writing writing) {
        this.bag = bag;
        this.writing = writing;
    }

    void write(List<Dust> burning) {
        Set<BagType> permitted = Stream.of(BagType.values())
                .filter(type -> permitted(type) && burning.stream().allMatch(dust -> permits(type, dust)))
                .collect(Collectors.toCollection(TreeSet::new));
        String name = "Bag types that all combustible dusts here permit, " + aroundWords(burning);
        Optional<String> open = open(burning);
        if (!permitted.isEmpty() && open.isPresent()) {
            writing.unknown("bag-permitted", name, open.get());
        } else {
            writing.words(
                    "bag-permitted",
                    name,
                    permitted.isEmpty()
                            ? "none of A, B, C, D: ask a specialist"
                            : permitted.stream().map(BagType::name).collect(Collectors.joining(", "))
                                    + "; for charging currents up to 3 µA; the bag's label and the measured ignition energy decide",
                    List.of(),
                    BagType.SOURCE);
        }
        bag.type().ifPresentOrElse(type -> type(type, burning), this::noType);
    }

    private boolean permits(BagType type, Dust dust) {
        return !dust.card().lightMetal()
                && BagType.permitted(dust.card().ignitionOrWorst().joules(), around())
                        .contains(type);
    }

    /** Whether this type is not permitted here for any dust that burns. */
    private boolean never(BagType type) {
        return !BagType.permitted(Double.POSITIVE_INFINITY, around()).contains(type);
    }

    /** Whether what is around the bag permits it, whatever falls into it. */
    private boolean permitted(BagType type) {
        return bag.statedVapour().isEmpty()
                || BagType.permitted(Double.POSITIVE_INFINITY, around()).contains(type);
    }

    /** As the table names it for the most easily ignited dust here. */
    private String aroundWords(List<Dust> burning) {
        boolean sensitive = burning.stream()
                .anyMatch(d -> MieStep.of(d.card().ignitionOrWorst().joules()).contains(MieStep.NO_TYPE_B));
        return (sensitive && around() == Surroundings.DUST_ZONE ? Surroundings.GAS_OR_SENSITIVE_DUST : around())
                .words();
    }

    private Surroundings around() {
        return bag.vapour().orElse(BagType.Vapour.NONE).around();
    }

    private void type(BagType type, List<Dust> burning) {
        writing.words(
                "bag-type",
                "Electrostatic type of the bag",
                "type " + type + ", " + type.words(),
                List.of(),
                BagType.SOURCE);
        List<Dust> not = burning.stream()
                .filter(dust -> !dust.card().lightMetal() && !permits(type, dust))
                .filter(dust -> dust.card().ignition().isPresent() || never(type))
                .toList();
        if (!not.isEmpty()) {
            writing.words(
                    "bag-conflict",
                    "The bag does not suit",
                    not.stream().map(Dust::name).collect(Collectors.joining("; ")) + ": type " + type
                            + " is not permitted for this ignition energy (" + energies(not) + ") in: "
                            + aroundWords(burning),
                    List.of(),
                    BagType.SOURCE);
        }
        judged(type, burning, not);
        if (type == BagType.C) {
            writing.words(
                    "bag-ground",
                    "Ground of the bag",
                    "every time before filling, interlocked with the filling where it can be; each point to its tab 100 MΩ or less by the"
                            + " edition of 2018, 10 MΩ by that of 2012 and by stricter local rules",
                    List.of(),
                    BagType.SOURCE);
        }
        liner(type);
    }

    private void judged(BagType type, List<Dust> burning, List<Dust> not) {
        String metals =
                names(burning.stream().filter(d -> d.card().lightMetal()).toList());
        if (!not.isEmpty() || !permitted(type)) {
            writing.none(
                    FindingCode.BAG_STATIC,
                    Place.Kind.CONTAINER,
                    "what this bag must not meet",
                    not.isEmpty()
                            ? List.of("type " + type + " with " + around().words())
                            : not.stream()
                                    .map(dust -> dust.name() + ", " + energies(List.of(dust)) + ", with type " + type)
                                    .toList(),
                    BagType.SOURCE);
        } else if (bag.vapour().isEmpty()) {
            notSaid(
                    "Enter \"vapour\" of the bag: none, or the group of flammable gas or vapour about it, where only some types are permitted.");
        } else if (!metals.isEmpty()) {
            notSaid("No bag without a special review for light metal, whatever its ignition energy: " + metals + ".");
        } else if (open(burning).isPresent()) {
            notSaid(open(burning).get());
        } else {
            writing.none(
                    FindingCode.BAG_STATIC, Place.Kind.CONTAINER, "dusts this bag must not take", 0, BagType.SOURCE);
        }
    }

    /** What has to be entered of dusts that burn before any type can be named for them. */
    static Optional<String> open(List<Dust> burning) {
        String unnamed =
                names(burning.stream().filter(d -> d.card().family().isEmpty()).toList());
        String untested = names(
                burning.stream().filter(d -> d.card().ignition().isEmpty()).toList());
        if (!unnamed.isEmpty()) {
            return Optional.of("Enter \"family\" under \"explosion\" of " + unnamed
                    + ": no bag does for a light metal without a special review.");
        }
        return untested.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Enter \"mie\" under \"explosion\" of " + untested
                                + ": below 0.14 mJ the table permits no type, and no value that counts says that it lies above.");
    }

    private void notSaid(String why) {
        writing.notSaid(FindingCode.BAG_STATIC, Place.Kind.CONTAINER, BagType.SOURCE, why);
    }

    /** Whether it has a liner, or nobody has said that it has none. */
    private boolean lined() {
        return bag.linerType().isPresent()
                || bag.liner().map(liner -> liner != BulkBag.Liner.NONE).orElse(true);
    }

    private static String names(List<Dust> dusts) {
        return dusts.stream().map(Dust::name).collect(Collectors.joining("; "));
    }

    private void noType() {
        String why = "Enter \"type\" of the bag, A, B, C or D, as its label says; without a label it is a type A.";
        writing.unknown("bag-type", "Electrostatic type of the bag", why);
        writing.notSaid(FindingCode.BAG_STATIC, Place.Kind.CONTAINER, BagType.SOURCE, why);
        if (lined()) {
            writing.notSaid(
                    FindingCode.LINER_STATIC,
                    Place.Kind.CONTAINER,
                    LinerType.SOURCE,
                    "Which liners a bag may have goes by its type: enter \"type\" of the bag.");
        }
    }

    private static String energies(List<Dust> dusts) {
        return dusts.stream()
                .map(d -> d.card()
                        .ignition()
                        .map(mie -> java.math.BigDecimal.valueOf(mie.value().joules() * 1000)
                                        .round(new java.math.MathContext(3))
                                        .stripTrailingZeros()
                                        .toPlainString()
                                + " mJ")
                        .orElse("not tested, 1 mJ and less taken"))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private void liner(BagType type) {
        String suits = type.liners().isEmpty()
                ? "none"
                : type.liners().stream().map(LinerType::name).collect(Collectors.joining(", "));
        if (!lined()) {
            return;
        }
        if (bag.linerType().isEmpty()) {
            String why = (bag.liner().isPresent()
                            ? "A liner is stated, not its type"
                            : "Nobody has said whether it has a liner, \"liner\", and of which type")
                    + ": enter \"liner type\"; a plain liner cancels the rating of the bag. Type "
                    + type + " takes: " + suits + ".";
            writing.unknown("liner-type", "Electrostatic type of the liner", why);
            writing.notSaid(FindingCode.LINER_STATIC, Place.Kind.CONTAINER, LinerType.SOURCE, why);
            return;
        }
        LinerType liner = bag.linerType().get();
        writing.words(
                "liner-type",
                "Electrostatic type of the liner",
                liner + ", " + liner.words(),
                List.of(),
                LinerType.SOURCE);
        writing.none(
                FindingCode.LINER_STATIC,
                Place.Kind.CONTAINER,
                "liners that cancel the bag's rating",
                type.liners().contains(liner) ? 0 : 1,
                LinerType.SOURCE);
    }
}
