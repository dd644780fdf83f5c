package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.hazard.BagType;
import dustwright.engine.hazard.BagType.Surroundings;
import dustwright.engine.hazard.CloudLaws;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.DustCard.Sample;
import dustwright.engine.hazard.DustCard.Stated;
import dustwright.engine.hazard.DustFamily;
import dustwright.engine.hazard.MieStep;
import dustwright.engine.hazard.PublishedDust;
import dustwright.engine.hazard.StClass;
import dustwright.engine.hazard.SurfaceLimit;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Temperature;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** How one dust ignites and explodes, from which sample, and what follows wherever it is. A screening: only a test of the own dust counts. */
final class DustCardSheet {
    private static final Source PRACTICE = Source.commonPractice();
    private static final Source GROUPS = Source.published("NEC 500.6(B); IEC 60079-0");

    private final Dust dust;
    private final DustCard card;
    private final Writing writing;

    private DustCardSheet(Dust dust) {
        this.dust = dust;
        this.card = dust.card();
        this.writing = new Writing(dust.id());
    }

    static Sheet of(Plant plant, Dust dust) {
        return new DustCardSheet(dust).sheet(new CarryingLines(plant, dust));
    }

    private Sheet sheet(CarryingLines carrying) {
        burns();
        if (dust.burns()) {
            published();
            values();
            group();
            ignition();
            surfaces();
            layer();
            if (card.metal()) {
                metalWords();
            }
        }
        hygiene();
        carrying.write(writing);
        writing.words(
                "dust-caution",
                "Before anybody relies on this",
                "a list of questions for a dust hazard analysis, not the analysis: a qualified person signs it, test data of the own dust"
                        + " go before any table, the authority having jurisdiction, insurer and local code decide",
                List.of(),
                PRACTICE);
        return writing.sheet("dust-card", "Dust: " + dust.name() + ",", Place.Kind.DUST);
    }

    private void burns() {
        String name = "Combustible";
        if (dust.combustible().isEmpty()) {
            writing.unknown(
                    "combustible",
                    name,
                    "Nobody has said: treated as combustible until somebody with a name finds otherwise; enter \"combustible\" and the"
                            + " \"report\" of the test.");
        } else if (!dust.burns() && card.report().isEmpty()) {
            writing.words(
                    "combustible",
                    name,
                    "no, as stated, and by no test that is named: a family that can not burn is taken at that word, anything mixed with it"
                            + " is not",
                    List.of(),
                    Source.entered());
        } else if (!dust.combustible().get() && dust.burns()) {
            writing.unknown("combustible", name, notShown());
        } else {
            writing.words("combustible", name, dust.combustible().get() ? "yes" : "no", List.of(), Source.entered());
        }
        writing.words("sample", "Values belong to", sample(), List.of(), Source.entered());
    }

    /** Why a "no" is not taken. */
    private String notShown() {
        List<String> against = dust.enteredCard().saysThatItBurns();
        if (!against.isEmpty()) {
            return "\"no\" is stated, and against it " + String.join(", ", against)
                    + ": treated as combustible until one of them is taken back.";
        }
        return "\"no\" is stated, but not by which test of this dust: enter the \"report\" and \"sample\": own dust, tested, under"
                + " \"explosion\". A data sheet that does not classify a product does not say that its dust can not burn."
                + " Meanwhile it is treated as combustible.";
    }

    /** What stands in for missing tests, and whether what is stated is plausible beside it. */
    private void published() {
        List<String> names = new ArrayList<>();
        card.severity().ifPresent(d -> names.add("explodes like " + d.name() + size(d)));
        card.sensitivity().ifPresent(d -> names.add("ignites like " + d.name()));
        if (names.isEmpty()) {
            return;
        }
        writing.words(
                "published",
                "Published dusts that stand in",
                String.join("; ", names) + ": " + PublishedDust.WARNING
                        + card.because()
                                .map(why -> ". Why they stand for it, as stated: " + why)
                                .orElse(""),
                List.of(),
                Source.entered());
        card.severity().ifPresent(d -> {
            beside("kst", "Kst", card.kst(), d.kst());
            beside("pmax", "Pmax", card.greatest(), d.greatest());
        });
        card.sensitivity().ifPresent(d -> beside("mie", "MIE", card.ignition(), d.ignition()));
    }

    private static String size(PublishedDust dust) {
        return dust.size_um().isEmpty() ? "" : ", median " + dust.size_um() + " µm";
    }

    private <T extends Quantity> void beside(
            String what, String name, Optional<Stated<T>> stated, Optional<Stated<T>> published) {
        if (stated.isEmpty() || published.isEmpty() || stated.equals(published)) {
            return;
        }
        double ratio = stated.get().value().si() / published.get().value().si();
        boolean near = Math.abs(ratio - 1) <= PublishedDust.BAND;
        writing.words(
                "plausible-" + what,
                name + " beside the published one",
                near
                        ? "within 20 %: plausible"
                        : "off by more than 20 %: samples of one dust differ by more; look once at unit, size, moisture and purity",
                List.of(),
                published.get().source());
    }

    private String sample() {
        if (card.sample() == Sample.OWN) {
            return card.sample().words() + card.report().map(r -> ": " + r).orElse(", but no test report is stated");
        }
        if (card.severity().isEmpty() && card.sensitivity().isEmpty()) {
            return !card.statesValues()
                    ? "no value counts"
                    : card.fromNowhere()
                            ? "nobody says to which sample: values are typed, and neither a source nor a report is named"
                            : "of other samples, as far as is stated: "
                                    + card.report().map(r -> "report " + r).orElse("the source of each")
                                    + "; \"sample\" says no test of this dust";
        }
        return card.sample().words() + ": they show what is plausible and are no property of this dust; have it tested";
    }

    private void values() {
        value("kst", "Explosion constant Kst", card.kst());
        StClass st = StClass.of(card.kstOrWorst().pascalMetresPerSecond());
        String ranked = st.written() + ", " + st.words();
        if (card.kst().isPresent()) {
            writing.words(
                    "st-class",
                    "Explosion class",
                    ranked + "; a ranking word, dusts of St 1 have killed",
                    List.of(),
                    StClass.SOURCE);
        } else {
            writing.unknown("st-class", "Explosion class", "It goes by Kst. Meanwhile the worst case: " + ranked + ".");
        }
        value(
                "pmax",
                "Greatest explosion pressure Pmax" + inTableUnits(card.greatest(), 1e-5, " bar over the barometer"),
                card.greatest());
        value("mie", "Least ignition energy MIE", card.ignition());
        value("mit", "Ignition temperature of a cloud MIT", card.cloud());
        value("lit", "Ignition temperature of a 5 mm layer LIT", card.layer());
        value(
                "mec",
                "Least explosible concentration MEC" + inTableUnits(card.explosible(), 1000, " g/m³"),
                card.explosible());
        if (card.sampleSize().isEmpty()
                && card.severity().filter(d -> !d.size_um().isEmpty()).isPresent()) {
            writing.words(
                    "sample-size",
                    "Median size of the sample",
                    card.severity().get().size_um()
                            + " µm, of the published one that Kst is of; what settles in the filter may be finer",
                    List.of(),
                    card.severity().get().kst().map(Stated::source).orElse(PRACTICE));
        } else {
            ofSample("sample-size", "Median size of the sample", "sample size", card.sampleSize());
        }
        ofSample("sample-moisture", "Moisture of the sample", "sample moisture", card.moisture());
        missing();
    }

    private <T extends Quantity> void value(String what, String name, Optional<Stated<T>> value) {
        value.ifPresentOrElse(
                v -> writing.given(what, name, v.value(), v.source()),
                () -> writing.unknown(
                        what,
                        name,
                        card.doubts().isEmpty()
                                ? "Not tested. Meanwhile the worst case: " + worst(what) + ". Enter \"" + what
                                        + "\" under \"explosion\"."
                                : "What is entered does not count, see \"Values of a combustible dust\". Meanwhile the worst case: "
                                        + worst(what) + "."));
    }

    /** The figure once more as tables and test reports print it, whatever units the reader chose. */
    private static String inTableUnits(
            Optional<? extends Stated<? extends Quantity>> value, double perSi, String unit) {
        return value.map(v -> ", "
                        + BigDecimal.valueOf(v.value().si() * perSi)
                                .round(new MathContext(3))
                                .stripTrailingZeros()
                                .toPlainString()
                        + unit)
                .orElse("");
    }

    private String worst(String key) {
        return card.missing().stream()
                .filter(m -> m.key().equals(key))
                .map(DustCard.Missing::worst)
                .findFirst()
                .orElseThrow();
    }

    /** Fine and dry dust burns worst: values of a coarse or damp sample are no values of what lies in the filter. */
    private void ofSample(String what, String name, String key, Optional<? extends Quantity> value) {
        value.ifPresentOrElse(
                v -> writing.given(what, name, v),
                () -> writing.unknown(
                        what,
                        name,
                        "Enter \"" + key
                                + "\" under \"explosion\": fine and dry dust burns worst, and what settles in the filter is finer"
                                + " than what lies on the floor."));
    }

    /** One finding for all that is not known: each with what stands in for it. */
    private void missing() {
        List<String> all = new ArrayList<>();
        if (dust.combustible().isEmpty()) {
            all.add("whether it is combustible: meanwhile it is");
        } else if (!dust.combustible().get()) {
            all.add("whether it is combustible: " + notShown().replaceFirst("\\.$", ""));
        }
        card.missing().forEach(m -> all.add(m.name() + ": meanwhile " + m.worst()));
        if (all.isEmpty()) {
            writing.none(FindingCode.DUST_CARD, Place.Kind.DUST, "values missing", 0, Source.entered());
        } else {
            writing.notSaid(FindingCode.DUST_CARD, Place.Kind.DUST, PRACTICE, String.join("; ", all) + ".");
        }
    }

    private void group() {
        if (card.family().isEmpty()) {
            writing.unknown(
                    "group",
                    "Group",
                    "Enter \"family\" under \"explosion\". Meanwhile the worst case: a conductive metal, Group E and IIIC.");
            return;
        }
        DustFamily family = card.family().get();
        String nec = family.necGroup().orElse("no group of Class II goes with this family");
        String group = family.iecGroup(card.conductive().orElse(true));
        String iec = group
                + (group.equals("IIIC") ? ", conductive" : group.equals("IIIB") ? ", not conductive" : ", fibres");
        String taken = card.metal() || card.conductive().isPresent() || group.equals("IIIA")
                ? ""
                : " (resistivity not stated: the worse is taken)";
        writing.words("group", "Group", nec + "; " + iec + taken, List.of(), GROUPS);
    }

    private void ignition() {
        double mie_J = card.ignitionOrWorst().joules();
        for (MieStep step : MieStep.of(mie_J)) {
            writing.words(
                    "static-" + step.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    step.from() + (card.ignition().isPresent() ? "" : ", while not tested"),
                    step.words(),
                    List.of(),
                    step.source());
        }
        if (card.lightMetal()) {
            writing.words(
                    "bag-types",
                    "Bulk bags it may be filled into",
                    "none without a special review of the collector, whatever its ignition energy",
                    List.of(),
                    DustFamily.APART);
            return;
        }
        String name = "Bulk bags it may be filled into, dust zone around the bag";
        Optional<String> open = BagStatic.open(List.of(dust));
        if (open.isPresent()) {
            writing.unknown("bag-types", name, open.get());
            return;
        }
        Set<BagType> types = BagType.permitted(mie_J, Surroundings.DUST_ZONE);
        writing.words(
                "bag-types",
                name,
                types.isEmpty()
                        ? "none: below the scope of the table"
                        : "type " + types.stream().map(BagType::name).collect(Collectors.joining(", ")),
                List.of(),
                BagType.SOURCE);
    }

    private void surfaces() {
        List<Step> steps = new ArrayList<>();
        card.cloud().ifPresent(cloud -> steps.add(DustHeat.byCloud(cloud.value(), dust)));
        card.layer().ifPresent(layer -> steps.add(DustHeat.byLayer(layer.value(), dust)));
        if (steps.size() < 2) {
            writing.unknown(
                    "surface",
                    "Hottest surface it may touch, IEC",
                    "The lower of two limits, by cloud and by layer: enter \"mit\" and \"lit\".");
            return;
        }
        Step lower = steps.get(0).result().value().si()
                        <= steps.get(1).result().value().si()
                ? steps.get(0)
                : steps.get(1);
        writing.known(
                "surface", "Hottest surface it may touch, IEC", lower.result().value(), List.of(lower));
        lowerOf(card.cloud().orElseThrow().value(), card.layer().orElseThrow().value());
    }

    /** The American rules start from the lower of both temperatures. */
    private void lowerOf(Temperature cloud, Temperature layer) {
        Temperature least = cloud.kelvin() < layer.kelvin() ? cloud : layer;
        Term lower = new Term("T_ignition", "lower of cloud and layer", least);
        Step byCode = DustHeat.byFireCode(least, lower);
        writing.known(
                "surface-fire-code",
                "Hottest outer surface, US model fire code",
                byCode.result().value(),
                List.of(byCode));
        if (card.family().filter(f -> f == DustFamily.ORGANIC).isPresent()) {
            Step limit = DustHeat.byOrganic(least, lower);
            writing.known(
                    "surface-nec",
                    "Highest temperature marking, NEC, organic dust that may dry out or char",
                    limit.result().value(),
                    List.of(limit));
            writing.words(
                    "surface-code",
                    "Temperature code for that marking",
                    SurfaceLimit.temperatureCode(limit.result().value().si())
                            .map(code -> code + " or a cooler one")
                            .orElse("none of the codes is cool enough"),
                    List.of(),
                    SurfaceLimit.CODES_SOURCE);
        }
    }

    private void layer() {
        if (card.metal()) {
            writing.words(
                    "layer",
                    "Settled dust that makes a room a hazard area",
                    "for metals by another rule than for other dusts: where the colour of the surface below can no longer be made out",
                    List.of(),
                    DustFamily.APART);
            return;
        }
        if (card.family().isEmpty()) {
            writing.unknown(
                    "layer",
                    "Settled dust that makes a room a hazard area",
                    "Enter \"family\" under \"explosion\": of a metal it is any layer under which the colour of the surface is lost, of other"
                            + " dusts a depth.");
            return;
        }
        dust.heaviest().ifPresent(bulk -> {
            Length depth = new Length(CloudLaws.layerDepth_m(bulk.kgPerCubicMetre()));
            writing.known(
                    "layer",
                    "Settled dust that makes a room a hazard area",
                    depth,
                    List.of(step(
                            "HAZ-15",
                            "d = 1/32 in × 75 lb/ft³ / ρ_B",
                            CloudLaws.LAYER,
                            new Term("d", "depth, over more than 5 % of the floor", depth),
                            new Term("ρ_B", "loose bulk density", bulk))));
        });
        if (card.family().filter(f -> f == DustFamily.ORGANIC).isPresent()) {
            writing.given(
                    "layer-grain",
                    "The same in grain handling, US, priority areas",
                    new Length(CloudLaws.GRAIN_LAYER_m),
                    CloudLaws.GRAIN);
        }
    }

    private void metalWords() {
        boolean light = card.lightMetal();
        writing.words(
                "metal-system",
                "Metal dust",
                "its own collection, apart from other metals, from rust and from other combustible dust",
                List.of(),
                DustFamily.APART);
        if (light) {
            writing.words(
                    "metal-collection",
                    "Light metal",
                    "wet collection, hydrogen vented and sludge taken out daily, or a dry collector outdoors after a special review; this"
                            + " program chooses no equipment for it",
                    List.of(),
                    DustFamily.APART);
        }
        writing.words(
                "metal-fire",
                "Metal fire",
                "no water on burning metal; the extinguishing agent is chosen for the metal and stands beside the collector",
                List.of(),
                DustFamily.APART);
        writing.words(
                "metal-tools",
                "Tools for metal dust",
                "conductive and non-sparking, bonded through hose and valve",
                List.of(),
                DustFamily.APART);
    }

    private void hygiene() {
        yesNo(
                "toxic",
                "Toxic",
                card.toxic(),
                "no air back into rooms without the owner's hygienist; an after-filter of H13 or better, and changing of bags and filters"
                        + " without dust",
                "stated not to be");
        yesNo(
                "sensitizing",
                "Sensitizing to lungs or skin, or carcinogenic",
                card.sensitizing(),
                "breathing protection and covered skin when bags, drums and filter elements are changed; no dry sweeping and no compressed air"
                        + " after a spill; air back into rooms only where the owner's hygienist accepts it",
                "stated not to be");
        yesNo(
                "food",
                "Food contact",
                card.food(),
                "materials for food contact where dust is used again; what a central system picks up from floors is waste",
                "stated not to touch food");
    }

    private void yesNo(String what, String name, Optional<Boolean> said, String yes, String no) {
        said.ifPresentOrElse(
                is -> writing.words(what, name, is ? yes : no, List.of(), is ? PRACTICE : Source.entered()),
                () -> writing.unknown(what, name, "Not stated: enter \"" + what + "\" under \"explosion\"."));
    }
}
