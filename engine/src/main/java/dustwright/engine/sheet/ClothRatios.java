package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.Particle;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Limit;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.receiver.AirToCloth;
import dustwright.engine.receiver.FilterService;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What published sizing gives for each dust of a filter; an upper guide for a vacuum receiver, which sees bursts of heavy load. */
final class ClothRatios {
    private static final String MANUAL =
            "EPA Air Pollution Control Cost Manual, 6th ed., EPA/452/B-02-001, Section 6 Chapter 1";
    private static final Source FACTORS =
            Source.fromMemory(MANUAL + ", factor method: constants reproduce its example");
    private static final Source TABLE = Source.fromMemory(MANUAL + ", Table 1.1");

    private final Writing writing;
    private final Arrivals arrivals;
    private final FilterService service;

    private ClothRatios(Writing writing, Arrivals arrivals) {
        this.writing = writing;
        this.arrivals = arrivals;
        this.service = arrivals.station().filter().service();
    }

    static void write(Writing writing, Arrivals arrivals) {
        ClothRatios ratios = new ClothRatios(writing, arrivals);
        List<Guide> guides = new ArrayList<>();
        for (Dust dust : arrivals.dusts()) {
            ratios.factors(dust).ifPresent(found -> guides.add(new Guide("factor method", dust, found)));
            ratios.table(dust).ifPresent(found -> guides.add(new Guide("table", dust, found)));
        }
        arrivals.fastest().ifPresent(fastest -> ratios.compare(guides, fastest));
    }

    /** What published sizing gives for one dust. */
    private record Guide(String by, Dust dust, Step step) {
        Velocity velocity() {
            return (Velocity) step.result().value();
        }

        String words() {
            return by + " for " + dust.name();
        }
    }

    /** The filtration velocity of the fastest state against all guides, and judged by the lowest where the plant asks for nothing itself. */
    private void compare(List<Guide> guides, DustArrival fastest) {
        Optional<Guide> lowest = guides.stream().min(Comparator.comparing(Guide::velocity));
        if (lowest.isEmpty()) {
            return;
        }
        Velocity velocity = FilterSheet.velocity(arrivals.station().filter(), fastest.station());
        List<Step> steps = writing.stepsTo(velocity);
        List<String> over = guides.stream()
                .filter(guide -> guide.velocity().compareTo(velocity) < 0)
                .map(Guide::words)
                .toList();
        Optional<Limit<Velocity>> own = arrivals.plant().requirements().airToCloth();
        writing.words(
                "guides",
                "Filtration velocity against published sizing, " + fastest.state(),
                over.isEmpty()
                        ? "not above any of it."
                        : "above the " + String.join(" and the ", over)
                                + (own.isPresent()
                                        ? ": the plant's own limit decides, ask the filter's maker to confirm it."
                                        : ": more cloth, or a limit the filter's maker confirms."),
                Writing.statedThen(lowest.get().step(), steps),
                lowest.get().step().source());
        if (own.filter(limit -> limit.source().equals(Source.entered())).isPresent() && over.size() == guides.size()) {
            writing.unjudged(
                    FindingCode.AIR_TO_CLOTH,
                    Place.Kind.FILTER,
                    fastest.state(),
                    Side.AT_MOST,
                    own.get(),
                    "It is above all published sizing (" + String.join(", ", over)
                            + "), and nobody is named for the limit: more cloth, or enter \"air to cloth: {value: ..., source: ...}\" with who"
                            + " confirms it.");
        }
        if (own.isEmpty()) {
            writing.asked(
                    FindingCode.AIR_TO_CLOTH,
                    Place.Kind.FILTER,
                    fastest.state(),
                    Side.AT_MOST,
                    velocity,
                    new Limit<>(lowest.get().velocity(), lowest.get().step().source()),
                    Writing.statedThen(lowest.get().step(), steps));
        }
    }

    private Optional<Step> factors(Dust dust) {
        String id = "factor-" + dust.id();
        String name = "By the factor method, " + dust.name();
        List<String> missing = new ArrayList<>();
        if (dust.onCloth().factorMaterial().isEmpty()) {
            missing.add("\"factor material\" under \"on cloth\"");
        }
        if (dust.particle().isEmpty()) {
            missing.add("\"particle size\" and \"particle density\"");
        }
        if (service.application().isEmpty()) {
            missing.add("\"application\" of the filter");
        }
        if (arrivals.dustiest().isEmpty()) {
            missing.add("\"feed\" of the inlets");
        }
        if (!missing.isEmpty()) {
            writing.unknown(id, name, "Enter " + String.join(", ", missing) + ".");
            return Optional.empty();
        }
        DustArrival dustiest = arrivals.dustiest().orElseThrow();
        return writing.tried(id, name, () -> List.of(factorMethod(dust, dustiest)))
                .map(found -> factorMethod(dust, dustiest));
    }

    private Step factorMethod(Dust dust, DustArrival arrival) {
        String material = dust.onCloth().factorMaterial().orElseThrow();
        String application = service.application().orElseThrow();
        double a = AirToCloth.materialFactor(material);
        double b = AirToCloth.applicationFactor(application);
        Temperature temperature = arrivals.station()
                .filter()
                .temperature(arrivals.plant().site().air().temperature());
        Particle particle = dust.particle().orElseThrow();
        Density load = new Density(
                arrival.total().kgPerSecond() / arrival.station().receiverFlow().cubicMetresPerSecond());
        AirToCloth.FactorMethod found = AirToCloth.pulseJet(
                a,
                b,
                temperature.kelvin(),
                load.kgPerCubicMetre(),
                particle.size().metres());
        return step(
                "FLT-10",
                "V = 2.878 A B T^−0.2335 L^−0.06021 (0.7471 + 0.0853 ln D) ft/min, T in °F, L in gr/ft³, D in µm",
                FACTORS,
                new Term("V", "filtration velocity, an upper guide", new Velocity(found.velocity_mPerS())),
                new Term("A", "material: " + material, new Ratio(a)),
                new Term("B", "application: " + application, new Ratio(b)),
                new Term(
                        "T", "temperature at the cloth" + atEnd(found.temperatureAtEnd(), "50 to 275 °F"), temperature),
                new Term(
                        "L",
                        "dust in the receiver's air, " + arrival.state()
                                + atEnd(found.loadAtEnd(), "0.05 to 100 gr/ft³"),
                        load),
                new Term("D", "mean size", particle.size()));
    }

    private static String atEnd(boolean atEnd, String range) {
        return atEnd ? ", outside " + range + ": its nearer end is taken" : "";
    }

    private Optional<Step> table(Dust dust) {
        String id = "ratio-" + dust.id();
        String name = "By the published table, " + dust.name();
        Optional<Step> tabulated = dust.onCloth()
                .ratioDust()
                .flatMap(like -> AirToCloth.tabulatedPulseJet_mPerS(like)
                        .map(ratio -> step(
                                "FLT-8",
                                "V of the table",
                                TABLE,
                                new Term(
                                        "V",
                                        "filtration velocity for " + like + ", an upper guide",
                                        new Velocity(ratio)))));
        tabulated.ifPresentOrElse(
                found -> writing.known(id, name, found.result().value(), List.of(found)),
                () -> writing.unknown(id, name, "Enter \"ratio dust\" under \"on cloth\"."));
        return tabulated;
    }
}
