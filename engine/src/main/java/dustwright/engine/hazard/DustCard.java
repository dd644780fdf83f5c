package dustwright.engine.hazard;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.ExplosionConstant;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.SparkEnergy;
import dustwright.engine.quantity.Temperature;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How a dust ignites and explodes. What is absent is not known. Published values are of other people's samples: they show whether a
 * figure is plausible, and only a test of the customer's own dust counts. A card as entered holds what the plant file says; what may be
 * relied on of it says {@link #relied}.
 *
 * @param kst dust explosion constant
 * @param greatest explosion pressure Pmax
 * @param ignition least ignition energy of a cloud, MIE
 * @param cloud least ignition temperature of a cloud, MIT
 * @param layer least ignition temperature of a 5 mm layer, LIT
 * @param explosible least explosible concentration, MEC
 * @param conductive whether its resistivity is 1 kΩ m or less
 * @param food whether it goes into food again or touches it
 * @param toxic whether it is toxic
 * @param sensitizing whether it is sensitizing to lungs or skin, or carcinogenic
 * @param hygiene dust class of what is picked up
 * @param sampleSize median size of the sample the values are of
 * @param moisture of that sample, by mass
 * @param severity published dust that stands in where Kst, Pmax or MEC is not tested
 * @param sensitivity published dust that stands in where MIE, MIT, LIT or MEC is not tested
 * @param because why these published dusts stand for it, and who says so
 * @param report test report: laboratory, number, date
 * @param insulating whether its resistivity is above 10 GΩ m, by a test: its heap then keeps its charge
 * @param heap who has judged the heap against cone discharges, with which measures; absent where nobody has
 * @param doubts why something that is entered is not relied on; none on a card as entered
 */
public record DustCard(
        Optional<DustFamily> family,
        Optional<Stated<ExplosionConstant>> kst,
        Optional<Stated<GaugePressure>> greatest,
        Optional<Stated<SparkEnergy>> ignition,
        Optional<Stated<Temperature>> cloud,
        Optional<Stated<Temperature>> layer,
        Optional<Stated<Density>> explosible,
        Optional<Boolean> conductive,
        Optional<Boolean> food,
        Optional<Boolean> toxic,
        Optional<Boolean> sensitizing,
        Optional<Hygiene> hygiene,
        Optional<Length> sampleSize,
        Optional<Ratio> moisture,
        Sample sample,
        Optional<PublishedDust> severity,
        Optional<PublishedDust> sensitivity,
        Optional<String> because,
        Optional<String> report,
        Optional<Boolean> insulating,
        Optional<String> heap,
        List<Missing> doubts) {
    public DustCard {
        doubts = List.copyOf(doubts);
    }

    /** Nothing known. */
    public static final DustCard UNKNOWN = new DustCard(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Sample.PUBLISHED,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of());

    /** A value with where it comes from. */
    public record Stated<T extends Quantity>(T value, Source source) {}

    /** Whose dust the values belong to. */
    public enum Sample {
        OWN("own dust, tested"),
        PUBLISHED("published, other samples");

        private final String words;

        Sample(String words) {
            this.words = words;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }
    }

    /** Class of a dust by what it does to lungs, and of the filter that air returned to a room has passed. */
    public enum Hygiene {
        L("light: filters that let through less than 1 %", 0.01),
        M("medium: filters that let through less than 0.1 %", 0.001),
        H("high: filters that let through less than 0.005 %, and changing of bags and filters without dust", 0.00005);

        /** Where the classes come from. */
        public static final Source SOURCE = Source.fromMemory("EN IEC 60335-2-69, Annex AA, dust classes");

        private final String words;

        private final double mostPassing;

        Hygiene(String words, double mostPassing) {
            this.words = words;
            this.mostPassing = mostPassing;
        }

        /** Share that its filters may let through [-]. */
        public double mostPassing() {
            return mostPassing;
        }

        /** What the class asks for. */
        public String words() {
            return words;
        }
    }

    // ---- what may be relied on

    /**
     * The card with nothing on it that is better than it should be: values of a sample that is coarser or damper than what lies in the
     * filter, or of which nobody has said how fine and dry it is, are taken off; published dusts stand in only where they are of its kind
     * and somebody says why; a family that contradicts them is none, unless it is a light metal, the worst there is.
     *
     * @param particle median size of the dust itself; absent where not known
     */
    public DustCard relied(Optional<Length> particle) {
        List<Missing> doubts = new ArrayList<>();
        boolean own = ofFineDrySample(particle, doubts);
        boolean likeIt = standsFor(doubts);
        Optional<PublishedDust> blast = likeIt
                ? asFine("explodes like", severity.filter(d -> lacksItsBlast()), particle, doubts)
                : Optional.empty();
        Optional<PublishedDust> lights = likeIt
                ? asFine("ignites like", sensitivity.filter(d -> lacksHowItLights()), particle, doubts)
                : Optional.empty();
        return new DustCard(
                family.filter(f -> f.lightMetal() || published().allMatch(d -> d.isOfKind(f))),
                kst.filter(v -> own).or(() -> kst.isPresent() ? Optional.empty() : blast.flatMap(PublishedDust::kst)),
                greatest.filter(v -> own)
                        .or(() -> greatest.isPresent() ? Optional.empty() : blast.flatMap(PublishedDust::greatest)),
                ignition.filter(v -> own)
                        .or(() -> ignition.isPresent() ? Optional.empty() : lights.flatMap(PublishedDust::ignition)),
                cloud.filter(v -> own)
                        .or(() -> cloud.isPresent() ? Optional.empty() : lights.flatMap(PublishedDust::cloud)),
                layer.filter(v -> own)
                        .or(() -> layer.isPresent() ? Optional.empty() : lights.flatMap(PublishedDust::layer)),
                explosible.filter(v -> own).or(() -> explosible.isPresent() ? Optional.empty() : lowest(blast, lights)),
                conductive,
                food,
                toxic,
                sensitizing,
                hygiene,
                sampleSize,
                moisture,
                sample,
                severity,
                sensitivity,
                because,
                report,
                insulating,
                heap,
                doubts);
    }

    private Stream<PublishedDust> published() {
        return Stream.concat(severity.stream(), sensitivity.stream());
    }

    /** Of two published least explosible concentrations the lower one. */
    private static Optional<Stated<Density>> lowest(Optional<PublishedDust> blast, Optional<PublishedDust> lights) {
        return Stream.concat(blast.stream(), lights.stream())
                .flatMap(d -> d.explosible().stream())
                .min(Comparator.comparingDouble(mec -> mec.value().kgPerCubicMetre()));
    }

    /** Whether one of its figures is stated. */
    public boolean statesValues() {
        return Stream.of(kst, greatest, ignition, cloud, layer, explosible).anyMatch(Optional::isPresent);
    }

    /** Whether values are typed of which neither a source nor a report is named. */
    public boolean fromNowhere() {
        return report.isEmpty()
                && Stream.of(kst, greatest, ignition, cloud, layer, explosible)
                        .flatMap(Optional::stream)
                        .anyMatch(value -> value.source().equals(Source.entered()));
    }

    private boolean ofFineDrySample(Optional<Length> particle, List<Missing> doubts) {
        if (!statesValues()) {
            return true;
        }
        int before = doubts.size();
        String size = "sample size";
        if (sampleSize.isEmpty()) {
            doubts.add(new Missing(size, "how fine the sample was that the values are of", DOES_NOT_COUNT));
        } else if (sampleSize.get().metres() > COARSE_m) {
            doubts.add(new Missing(
                    size,
                    "a sample as fine as what lies in the filter",
                    "values of one coarser than 0.5 mm, too good: " + DOES_NOT_COUNT));
        } else {
            coarser(sampleSize.get(), particle)
                    .ifPresent(worst -> doubts.add(new Missing(size, "a sample as fine as the dust", worst)));
        }
        if (moisture.isEmpty()) {
            doubts.add(new Missing("sample moisture", "how dry the sample was that the values are of", DOES_NOT_COUNT));
        } else if (moisture.get().value() > DAMP) {
            doubts.add(new Missing(
                    "sample moisture", "a dry sample", "values of one damper than 5 %, too good: " + DOES_NOT_COUNT));
        }
        return doubts.size() == before;
    }

    private static Optional<String> coarser(Length sample, Optional<Length> particle) {
        if (particle.isEmpty()) {
            return Optional.of(
                    "\"particle size\" and \"particle density\" of the dust are not both stated, so nobody can compare: "
                            + DOES_NOT_COUNT);
        }
        return sample.metres() > COARSER * particle.get().metres()
                ? Optional.of(
                        "values of one more than twice as coarse as its \"particle size\", too good: " + DOES_NOT_COUNT)
                : Optional.empty();
    }

    /** Whether the published dusts that are named are of its kind, and somebody says why they stand for it. */
    private boolean standsFor(List<Missing> doubts) {
        List<PublishedDust> named = published().toList();
        if (named.isEmpty()) {
            return false;
        }
        int before = doubts.size();
        if (family.isEmpty()) {
            doubts.add(new Missing(
                    "family",
                    "what it is made of, and so whether what stands in is of its kind",
                    "nothing is taken from that, and it counts as a conductive metal"));
        } else {
            named.stream()
                    .filter(d -> !d.isOfKind(family.get()))
                    .forEach(d -> doubts.add(new Missing(
                            "family",
                            "whether it is " + family.get().words() + ", as stated, or like " + d.name() + " of Group "
                                    + d.necGroup() + ", as stated too",
                            "nothing is taken from that, and it counts as a conductive metal")));
        }
        boolean needed = (severity.isPresent() && lacksItsBlast()) || (sensitivity.isPresent() && lacksHowItLights());
        if (needed && because.isEmpty()) {
            doubts.add(new Missing(
                    "like because",
                    "why " + named.stream().map(PublishedDust::name).distinct().collect(Collectors.joining(" and "))
                            + " may stand for it, and who says so",
                    "nothing is taken from that"));
        }
        return doubts.size() == before;
    }

    private boolean lacksItsBlast() {
        return kst.isEmpty() || greatest.isEmpty() || explosible.isEmpty();
    }

    private boolean lacksHowItLights() {
        return ignition.isEmpty() || cloud.isEmpty() || layer.isEmpty() || explosible.isEmpty();
    }

    /** What stands in for a value that is missing, where its sample was as fine as the dust. */
    private static Optional<PublishedDust> asFine(
            String key, Optional<PublishedDust> standsIn, Optional<Length> particle, List<Missing> doubts) {
        Optional<Missing> coarse = standsIn.flatMap(PublishedDust::size)
                .flatMap(size -> coarser(size, particle))
                .map(worst -> new Missing(key, "a stand-in as fine as the dust", worst));
        coarse.ifPresent(doubts::add);
        return standsIn.filter(d -> coarse.isEmpty());
    }

    /** What is not known of a combustible dust, each with what stands in for it meanwhile; empty where the card is whole. */
    public List<Missing> missing() {
        List<Missing> missing = new ArrayList<>(doubts);
        if (doubts.stream().noneMatch(d -> d.key().equals("family"))) {
            ask(missing, family, "family", "family", "a conductive metal, Group E and IIIC");
        }
        ask(missing, kst, "kst", "Kst", "800 bar m/s, the greatest that the vent equations are for");
        ask(missing, greatest, "pmax", "Pmax", "12 bar, the greatest that the vent equations are for");
        ask(missing, ignition, "mie", "MIE", "1 mJ and less, like a gas");
        ask(missing, cloud, "mit", "MIT", "no surface is named that it may touch");
        ask(missing, layer, "lit", "LIT", "no surface is named that it may lie on");
        ask(missing, explosible, "mec", "MEC", "any concentration in tubing and receiver may explode");
        ask(missing, conductive, "conductive", "resistivity", "it conducts, Group IIIC");
        ask(missing, toxic, "toxic", "toxicity", "toxic wherever its air or a vent leads it");
        ask(
                missing,
                sensitizing,
                "sensitizing",
                "whether it sensitizes or is carcinogenic",
                "it does wherever somebody breathes it");
        ask(missing, hygiene, "hygiene", "dust class L, M or H", "no after-filter is said to do");
        toxic.filter(poison -> !poison && hygiene.filter(h -> h == Hygiene.H).isPresent())
                .ifPresent(no -> missing.add(new Missing(
                        "toxic", "whether a dust of class H is not toxic, as stated", "one of both is wrong")));
        if (sample == Sample.OWN) {
            ask(
                    missing,
                    report,
                    "report",
                    "report of the test",
                    "nobody can look at the test: values count as those of another sample");
        } else if (fromNowhere()) {
            ask(
                    missing,
                    report,
                    "report",
                    "where the typed values come from, a report or a source of each",
                    "nobody can look them up: values count as those of another sample");
        }
        return missing;
    }

    private static void ask(List<Missing> missing, Optional<?> value, String key, String name, String worst) {
        if (value.isEmpty()) {
            missing.add(new Missing(key, name, worst));
        }
    }

    /**
     * A value that nobody has stated.
     *
     * @param key as the plant file calls it
     * @param name as people call it
     * @param worst what is taken meanwhile
     */
    public record Missing(String key, String name, String worst) {}

    /** Above this size a sample is no dust by the newer texts of NFPA [m]. */
    private static final double COARSE_m = 500e-6;
    /** Own choice: a sample coarser than this many times the dust is another dust. */
    private static final double COARSER = 2;

    private static final String DOES_NOT_COUNT = "no value counts, and the worst case is taken for each";
    /** Moisture to which samples are dried for a test, ASTM E1226 from memory. */
    private static final double DAMP = 0.05;

    /** Greatest explosion constant either vent equation is published for: stands in while none is known. */
    public static final ExplosionConstant WORST_KST = new ExplosionConstant(800e5);
    /** Greatest explosion pressure either vent equation is published for: stands in while none is known. */
    public static final GaugePressure WORST_PRESSURE = new GaugePressure(12e5);
    /** Stands in while no least ignition energy is known: the most easily ignited step of the guidance. */
    public static final SparkEnergy WORST_IGNITION = new SparkEnergy(1e-3);

    /** Whether its values are of a test of the own dust whose report is named. */
    public boolean tested() {
        return sample == Sample.OWN && report.isPresent();
    }

    /** What is stated of it and says that it burns. A dust that nothing lights has no ignition energy and no ignition temperature. */
    public List<String> saysThatItBurns() {
        List<String> says = new ArrayList<>();
        family.filter(DustFamily::metal).ifPresent(f -> says.add("its family, " + f.words()));
        published().forEach(d -> says.add("that it burns like " + d.name()));
        kst.filter(k -> k.value().si() > 0).ifPresent(k -> says.add("Kst"));
        greatest.filter(p -> p.value().si() > 0).ifPresent(p -> says.add("Pmax"));
        ignition.ifPresent(e -> says.add("MIE"));
        cloud.ifPresent(t -> says.add("MIT"));
        layer.ifPresent(t -> says.add("LIT"));
        explosible.ifPresent(e -> says.add("MEC"));
        return says;
    }

    /** Whether "not combustible" stands: by the report of a test of the own dust or a family that can not burn, and nothing against it. */
    public boolean shownInert() {
        return saysThatItBurns().isEmpty() && (family.filter(DustFamily::inert).isPresent() || tested());
    }

    /** Whether it is stated to be a metal. */
    public boolean metal() {
        return family.filter(DustFamily::metal).isPresent();
    }

    /** Whether it is a metal, or may be one while nobody has said what it is made of. */
    public boolean mayBeMetal() {
        return family.map(DustFamily::metal).orElse(true);
    }

    /** Whether it is stated to be a light metal. */
    public boolean lightMetal() {
        return family.filter(DustFamily::lightMetal).isPresent();
    }

    /** Whether it is stated to be fibres and flyings. */
    public boolean flyings() {
        return family.filter(f -> f == DustFamily.FLYINGS).isPresent();
    }

    /** Explosion constant, or the worst case while none is known. */
    public ExplosionConstant kstOrWorst() {
        return kst.map(Stated::value).orElse(WORST_KST);
    }

    /** Explosion pressure, or the worst case while none is known. */
    public GaugePressure greatestOrWorst() {
        return greatest.map(Stated::value).orElse(WORST_PRESSURE);
    }

    /** Least ignition energy, or the worst case while none is known. */
    public SparkEnergy ignitionOrWorst() {
        return ignition.map(Stated::value).orElse(WORST_IGNITION);
    }
}
