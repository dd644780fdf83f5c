package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.Particle;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.receiver.AirToCloth;
import dustwright.engine.receiver.FilterService;
import java.util.ArrayList;
import java.util.List;

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
        for (Dust dust : arrivals.dusts()) {
            ratios.factors(dust);
            ratios.table(dust);
        }
    }

    private void factors(Dust dust) {
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
        if (missing.isEmpty()) {
            writing.tried(
                    id,
                    name,
                    () -> List.of(factorMethod(dust, arrivals.dustiest().orElseThrow())));
        } else {
            writing.unknown(id, name, "Enter " + String.join(", ", missing) + ".");
        }
    }

    private Step factorMethod(Dust dust, DustArrival arrival) {
        String material = dust.onCloth().factorMaterial().orElseThrow();
        String application = service.application().orElseThrow();
        double a = AirToCloth.materialFactor(material);
        double b = AirToCloth.applicationFactor(application);
        Temperature temperature =
                service.continuous().orElse(arrivals.plant().site().air().temperature());
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

    private void table(Dust dust) {
        String id = "ratio-" + dust.id();
        String name = "By the published table, " + dust.name();
        dust.onCloth()
                .ratioDust()
                .flatMap(like -> AirToCloth.tabulatedPulseJet_mPerS(like)
                        .map(ratio -> step(
                                "FLT-8",
                                "V of the table",
                                TABLE,
                                new Term(
                                        "V",
                                        "filtration velocity for " + like + ", an upper guide",
                                        new Velocity(ratio)))))
                .ifPresentOrElse(
                        found -> writing.known(id, name, found.result().value(), List.of(found)),
                        () -> writing.unknown(id, name, "Enter \"ratio dust\" under \"on cloth\"."));
    }
}
