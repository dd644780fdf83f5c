package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Term;
import dustwright.engine.hazard.Bonding;
import dustwright.engine.hazard.CloudLaws;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.MieStep;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.Capacitance;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.ElectricResistance;
import dustwright.engine.quantity.SparkEnergy;
import dustwright.engine.quantity.Voltage;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Charge: what an object that is not bonded can store against what ignites the dust, how fast a bonded one loses it, filter elements. */
final class ChargeLines {
    /** Objects that are charged where they are not bonded. */
    private enum Loose {
        TOOL("tool or wand", 20, 15),
        DRUM("metal drum, hopper flange or filter cage", 100, 10),
        PERSON("person", 200, 10);

        private final String words;
        private final Capacitance capacitance;
        private final Voltage voltage;

        Loose(String words, double capacitance_pF, double voltage_kV) {
            this.words = words;
            this.capacitance = new Capacitance(capacitance_pF * PICO);
            this.voltage = new Voltage(voltage_kV * 1e3);
        }

        double stored_J() {
            return CloudLaws.spark_J(capacitance.farads(), voltage.volts());
        }
    }

    private static final Source TYPICAL =
            Source.fromMemory("IEC TS 60079-32-1; NFPA 77: typical capacitances and voltages");
    private static final Source CONE =
            Source.fromMemory("IEC TS 60079-32-1, cone discharges; limit of 10 mJ from memory");
    private static final double CONE_J = 10e-3;
    /** Own choice: the limit is for powders; grains coarser than this discharge with more. */
    private static final double COARSE_m = 1e-3;

    private static final double PICO = 1e-12;
    private static final Capacitance BONDED = new Capacitance(100 * PICO);

    private final Collecting here;
    private final Writing writing;

    ChargeLines(Collecting here, Writing writing) {
        this.here = here;
        this.writing = writing;
    }

    void write() {
        SparkEnergy least = here.burning().stream()
                .map(d -> d.card().ignitionOrWorst())
                .min(Comparator.comparingDouble(SparkEnergy::joules))
                .orElseThrow();
        for (Loose loose : Loose.values()) {
            stored(loose, least);
        }
        relaxation();
        filling();
        here.station().ifPresent(station -> {
            cone();
            elements(station, least);
        });
    }

    private void stored(Loose loose, SparkEnergy least) {
        SparkEnergy stored = new SparkEnergy(loose.stored_J());
        String against = stored.joules() >= least.joules()
                ? "it can ignite what is collected here"
                : "below the ignition energy taken here"
                        + (here.burning().stream().allMatch(d -> d.card().tested())
                                ? ""
                                : ", which is of another sample: finer dust or flake lights more easily")
                        + "; still to be bonded";
        writing.known(
                "spark-" + loose.name().toLowerCase(Locale.ROOT),
                "Spark from a " + loose.words + " that is not bonded: " + against,
                stored,
                List.of(step(
                        "HAZ-16",
                        "W = C U²/2, held against MIE",
                        TYPICAL,
                        new Term("W", "energy stored", stored),
                        new Term("C", "its capacitance to ground, typical", loose.capacitance),
                        new Term("U", "its voltage, typical", loose.voltage),
                        new Term("MIE", "least ignition energy here, or its worst case", least))));
    }

    private void relaxation() {
        ElectricResistance limit = new ElectricResistance(Bonding.METAL_PART.limit_ohm());
        Duration time = new Duration(CloudLaws.relaxation_s(limit.ohms(), BONDED.farads()));
        writing.words(
                "relaxation",
                "Time in which a part bonded within its limit loses its charge to 37 %",
                String.format(Locale.ROOT, "%.1f ms: faster than anybody can charge it", time.si() * 1000),
                List.of(step(
                        "HAZ-17",
                        "τ = R C",
                        TYPICAL,
                        new Term("τ", "time", time),
                        new Term("R", "greatest resistance of a conductive part to ground", limit),
                        new Term("C", "capacitance of a drum, typical", BONDED))),
                TYPICAL);
    }

    private void filling() {
        writing.words(
                "charge-filling",
                "Charge on filling",
                "dust that falls into bag or drum carries charge with it: the heap of an insulating dust keeps it for minutes and can discharge"
                        + " over its surface (cone discharge) whatever bag it is in; at 10 mJ and less a specialist is asked before filling",
                List.of(),
                CONE);
    }

    /** A heap of the own dust, tested, whose charge flows off through it. */
    private static boolean leavesTheHeap(Dust dust) {
        return dust.card().tested() && !dust.card().insulating().orElse(true);
    }

    private void judgedHeaps() {
        here.burning().stream()
                .filter(d -> leavesTheHeap(d) || d.card().heap().isPresent())
                .forEach(d -> writing.words(
                        "heap-" + d.id(),
                        "Heap of " + d.name(),
                        d.card()
                                .heap()
                                .map(who -> "judged, as stated: " + who)
                                .orElse(
                                        "resistivity of 10 GΩ m or less by the report of the own dust: its charge flows off"),
                        List.of(),
                        Source.entered()));
    }

    /** Receiver, bag or drum: an insulating heap keeps its charge in any of them. */
    private void cone() {
        Place.Kind part =
                here.station().orElseThrow().container().isPresent() ? Place.Kind.CONTAINER : Place.Kind.RECEIVER;
        List<Dust> heaps = here.burning().stream()
                .filter(d -> d.card().metal() || !d.card().conductive().orElse(false))
                .filter(d -> !leavesTheHeap(d) && d.card().heap().isEmpty())
                .toList();
        judgedHeaps();
        List<Dust> untested =
                heaps.stream().filter(d -> d.card().ignition().isEmpty()).toList();
        Optional<SparkEnergy> least = heaps.stream()
                .flatMap(d -> d.card().ignition().stream())
                .map(DustCard.Stated::value)
                .min(Comparator.comparingDouble(SparkEnergy::joules));
        Limit<SparkEnergy> limit = new Limit<>(new SparkEnergy(CONE_J), CONE);
        List<Dust> coarse = heaps.stream()
                .filter(d ->
                        d.particle().filter(p -> p.size().metres() > COARSE_m).isPresent())
                .toList();
        if (least.filter(mie -> mie.joules() <= CONE_J).isPresent()) {
            writing.unjudged(
                    FindingCode.CONE_DISCHARGE,
                    part,
                    Side.AT_LEAST,
                    limit,
                    heaps.stream()
                                    .filter(d -> d.card()
                                            .ignition()
                                            .filter(mie -> mie.value().joules() <= CONE_J)
                                            .isPresent())
                                    .map(Dust::name)
                                    .collect(Collectors.joining("; "))
                            + ": lit by 10 mJ or less. Enter \"insulating\": no, where a test of the own dust shows a resistivity of 10 GΩ m or"
                            + " less, or \"heap judged\": who has judged this heap, by which report and with which measures, such as a"
                            + " narrower container, slower filling or a grounded rod in the heap.");
        } else if (!coarse.isEmpty()) {
            writing.unjudged(
                    FindingCode.CONE_DISCHARGE,
                    part,
                    Side.AT_LEAST,
                    limit,
                    coarse.stream().map(Dust::name).collect(Collectors.joining("; "))
                            + ": a heap of grains coarser than 1 mm can discharge with more than the 10 mJ that powders are held against, and"
                            + " fines among them are lit. Enter \"insulating\": no, by a test of the own dust, or \"heap judged\": who has"
                            + " judged this heap, by which report and with which measures.");
        } else if (!untested.isEmpty()) {
            writing.unjudged(
                    FindingCode.CONE_DISCHARGE,
                    part,
                    Side.AT_LEAST,
                    limit,
                    "Enter \"mie\" under \"explosion\" of "
                            + untested.stream().map(Dust::name).collect(Collectors.joining("; ")) + ".");
        } else if (least.isPresent()) {
            writing.asked(
                    FindingCode.CONE_DISCHARGE,
                    part,
                    Sheet.ANY_SET,
                    Side.AT_LEAST,
                    least.get(),
                    limit,
                    List.of(Writing.stated(
                            "MIE", "least ignition energy of a heap here", least.get(), Source.entered())));
        } else {
            writing.none(
                    FindingCode.CONE_DISCHARGE,
                    part,
                    "heaps here that keep their charge and nobody has judged",
                    0,
                    CONE);
        }
    }

    private void elements(Station station, SparkEnergy least) {
        boolean asked = MieStep.of(least.joules()).contains(MieStep.PLASTICS)
                || !here.metals().isEmpty()
                || !here.unnamed().isEmpty();
        String name = "Filter elements";
        String why = asked
                ? ": asked for by the ignition energy, or by a metal or a dust of no stated family here"
                : ": good practice for this ignition energy";
        String bonded = "; every cage and clamp bonded to the tube sheet, and that to ground";
        if (station.filter().service().dissipative().isEmpty()) {
            String enter = "Enter \"dissipative\" of the filter, a make that carries charge away" + why + bonded + ".";
            writing.unknown("filter-static", name, enter);
            if (asked) {
                writing.notSaid(FindingCode.FILTER_STATIC, Place.Kind.FILTER, MieStep.PLASTICS.source(), enter);
            }
            return;
        }
        boolean dissipative = station.filter().service().dissipative().get();
        writing.words(
                "filter-static",
                name,
                (dissipative ? "static-dissipative" : "not dissipative") + why + bonded,
                List.of(),
                MieStep.PLASTICS.source());
        boolean certain = MieStep.of(least.joules()).contains(MieStep.PLASTICS)
                || !here.metals().isEmpty();
        if (!dissipative && asked && !certain) {
            writing.notSaid(
                    FindingCode.FILTER_STATIC,
                    Place.Kind.FILTER,
                    MieStep.PLASTICS.source(),
                    "Enter \"family\" under \"explosion\" of "
                            + here.unnamed().stream().map(Dust::name).collect(Collectors.joining("; "))
                            + ": for a metal these elements do not do.");
            return;
        }
        writing.none(
                FindingCode.FILTER_STATIC,
                Place.Kind.FILTER,
                "filters that hold charge where dust is easily ignited",
                asked && !dissipative ? 1 : 0,
                MieStep.PLASTICS.source());
    }
}
