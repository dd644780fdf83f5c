package dustwright.engine.sheet;

import dustwright.engine.air.Air;
import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.hazard.DustFamily;
import dustwright.engine.hazard.SurfaceLimit;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.Count;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.TemperatureRise;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * The hottest that a surface may get which the combustible dusts of a place touch: the lowest of what the published rules leave, as far as the
 * ignition temperatures of the dusts are known.
 *
 * @param limit lowest limit that is known, with its rule
 * @param steps to it
 * @param open what to enter where a dust may ask for less; empty where every dust is known
 */
public record DustHeat(Optional<Limit<Temperature>> limit, List<Step> steps, String open) {
    /** Rules that decide where no temperature is known. */
    static final Source SOURCE = SurfaceLimit.IEC;

    public DustHeat {
        steps = List.copyOf(steps);
    }

    /** For all combustible dusts that come to a station. */
    public static DustHeat at(Plant plant, Station station) {
        return Collecting.all(plant).stream()
                .filter(here -> here.station().equals(Optional.of(station)))
                .findFirst()
                .map(DustHeat::of)
                .orElseThrow();
    }

    /** For all combustible dusts that come to a place; what comes in unnamed may ask for less. */
    static DustHeat of(Collecting here) {
        DustHeat named = of(here.burning());
        return here.dusts().isEmpty() || here.undusted().isEmpty()
                ? named
                : new DustHeat(
                        named.limit(),
                        named.steps(),
                        (named.open() + " Enter \"dust\" of "
                                        + here.undusted().stream()
                                                .map(Inlet::id)
                                                .collect(Collectors.joining(", "))
                                        + ": which dust comes in there is not stated.")
                                .strip());
    }

    /** For dusts that all burn. */
    static DustHeat of(List<Dust> burning) {
        List<Step> all = burning.stream().flatMap(dust -> steps(dust).stream()).toList();
        Optional<Step> lowest = all.stream()
                .min(Comparator.comparingDouble(s -> s.result().value().si()));
        List<Dust> unknown = burning.stream()
                .filter(d -> d.card().cloud().isEmpty() || d.card().layer().isEmpty())
                .toList();
        return new DustHeat(
                lowest.map(s -> new Limit<>((Temperature) s.result().value(), s.source())),
                lowest.map(List::of).orElse(List.of()),
                open(unknown));
    }

    /** What is entered and does not count is not asked for again: its sheet says why. */
    private static String open(List<Dust> unknown) {
        String missing = names(unknown, dust -> !entered(dust));
        String uncounted = names(unknown, DustHeat::entered);
        String ask = missing.isEmpty()
                ? ""
                : "Enter \"mit\" and \"lit\" under \"explosion\" of " + missing
                        + ": ignition temperatures of cloud and 5 mm layer.";
        String see = uncounted.isEmpty()
                ? ""
                : "\"mit\" and \"lit\" of " + uncounted
                        + " are entered and do not count: the sheet of the dust says why.";
        return (ask + " " + see).strip();
    }

    private static String names(List<Dust> dusts, Predicate<Dust> which) {
        return dusts.stream().filter(which).map(Dust::name).collect(Collectors.joining("; "));
    }

    private static boolean entered(Dust dust) {
        return dust.enteredCard().cloud().isPresent()
                && dust.enteredCard().layer().isPresent();
    }

    private static List<Step> steps(Dust dust) {
        List<Step> steps = new ArrayList<>();
        dust.card().cloud().ifPresent(cloud -> steps.add(byCloud(cloud.value(), dust)));
        dust.card().layer().ifPresent(layer -> steps.add(byLayer(layer.value(), dust)));
        if (steps.size() == 2) {
            Temperature cloud = dust.card().cloud().orElseThrow().value();
            Temperature layer = dust.card().layer().orElseThrow().value();
            Temperature least = cloud.kelvin() < layer.kelvin() ? cloud : layer;
            Term lower = new Term("T_ignition", "lower of cloud and layer, " + dust.name(), least);
            steps.add(byFireCode(least, lower));
            if (dust.card().family().filter(f -> f == DustFamily.ORGANIC).isPresent()) {
                steps.add(byOrganic(least, lower));
            }
        }
        return steps;
    }

    static Step byCloud(Temperature cloud, Dust dust) {
        return Writing.step(
                "HAZ-11",
                "T = 2/3 MIT, both in °C",
                SurfaceLimit.IEC,
                new Term(
                        "T_cloud",
                        "greatest surface by the cloud",
                        new Temperature(SurfaceLimit.byCloud_K(cloud.kelvin()))),
                new Term("MIT", "ignition temperature of a cloud, " + dust.name(), cloud));
    }

    static Step byLayer(Temperature layer, Dust dust) {
        return Writing.step(
                "HAZ-12",
                "T = LIT − 75 K",
                SurfaceLimit.IEC,
                new Term(
                        "T_layer",
                        "greatest surface by a 5 mm layer",
                        new Temperature(SurfaceLimit.byLayer_K(layer.kelvin()))),
                new Term("LIT", "ignition temperature of a layer, " + dust.name(), layer));
    }

    static Step byFireCode(Temperature least, Term lower) {
        return Writing.step(
                "HAZ-23",
                "T = 80 % of T_ignition, both in °C",
                SurfaceLimit.FIRE_CODE,
                new Term("T", "below", new Temperature(SurfaceLimit.fireCode_K(least.kelvin()))),
                lower);
    }

    static Step byOrganic(Temperature least, Term lower) {
        return Writing.step(
                "HAZ-13",
                "T = min(T_ignition, 165 °C)",
                SurfaceLimit.NEC,
                new Term("T", "not above", new Temperature(SurfaceLimit.organic_K(least.kelvin()))),
                lower);
    }

    /**
     * What leaves a producer, held against the dusts that come to its station; nothing where none of them burns.
     *
     * @param leaving temperature of the air that leaves it
     * @param before steps to that temperature
     */
    public Optional<Finding> leaving(String producer, String state, Temperature leaving, List<Step> before) {
        if (limit.isEmpty()) {
            return open.isEmpty() ? Optional.empty() : Optional.of(notKnown(producer, state));
        }
        boolean hotter = leaving.compareTo(limit.get().value()) > 0;
        if (!hotter && !open.isEmpty()) {
            return Optional.of(Finding.unjudged(
                    FindingCode.HOT_SURFACE,
                    new Place(Place.Kind.PRODUCER, producer),
                    state,
                    Side.AT_MOST,
                    limit.get().value(),
                    limit.get().source(),
                    open));
        }
        List<Step> all = new ArrayList<>(before);
        all.addAll(steps);
        return Optional.of(Finding.of(
                FindingCode.HOT_SURFACE,
                new Place(Place.Kind.PRODUCER, producer),
                state,
                Side.AT_MOST,
                leaving,
                limit.get().value(),
                new Derivation(all, limit.get().source())));
    }

    /**
     * The same of a producer that passes too little air for a temperature to be told: the air that would leave it no hotter than the dusts
     * allow.
     */
    Optional<Finding> starved(VacuumProducer producer, String state, ProducerResult result, Air site) {
        if (limit.isEmpty()) {
            return open.isEmpty() ? Optional.empty() : Optional.of(notKnown(producer.id(), state));
        }
        TemperatureRise most = new TemperatureRise(
                limit.get().value().kelvin() - site.temperature().kelvin());
        if (most.kelvin() <= 0) {
            return leaving(producer.id(), state, site.temperature(), List.of());
        }
        List<Step> all = new ArrayList<>(steps);
        all.addAll(ProducerSteps.airForRise(producer, site, result, most));
        return Optional.of(Finding.of(
                FindingCode.HOT_SURFACE,
                new Place(Place.Kind.PRODUCER, producer.id()),
                state,
                Side.AT_LEAST,
                FreeAirFlow.of(result.flow()),
                ProducerSteps.airForRise(result, most),
                new Derivation(all, limit.get().source())));
    }

    private Finding notKnown(String producer, String state) {
        return Finding.unjudged(
                FindingCode.HOT_SURFACE,
                new Place(Place.Kind.PRODUCER, producer),
                state,
                Side.AT_MOST,
                new Count(0),
                SOURCE,
                open);
    }
}
