package dustwright.plantfile;

import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.plant.Held;
import dustwright.engine.plant.Point;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.Units;
import dustwright.engine.tubing.Bleed;
import dustwright.engine.tubing.Hose;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.Tool;
import dustwright.engine.tubing.Tube;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What the network equations (NET-1, NET-5) leave out or read in one way only, put on record where a plant is touched by it. No entry of
 * the file changes these; they stand among the assumptions so that nobody takes them for computed.
 */
final class Simplifications {
    private static final Source EQUATIONS = Source.ownReading("restriction of the network equations, NET-1");
    private static final Source JUNCTIONS = Source.ownReading(
            "the law NET-5 has one branch at an angle and one straight run that join into one; state another loss as K of a run");

    private static final Source OPENING = Source.ownReading(
            "equation TUB-23: an opening of one loss coefficient; not measured there. State points over all the vacuum"
                    + " the tool sees");

    private final List<Run> runs;
    private final Map<String, List<Run>> to;
    private final Map<String, List<Run>> from;
    private final List<Inlet> inlets;
    private final List<Tube> tubes;
    private final Taken taken;

    private Simplifications(List<Run> runs, List<Inlet> inlets, List<Tube> tubes, Taken taken) {
        this.runs = runs;
        this.to = runs.stream().collect(Collectors.groupingBy(Run::to));
        this.from = runs.stream().collect(Collectors.groupingBy(Run::from));
        this.tubes = tubes;
        this.inlets = inlets;
        this.taken = taken;
    }

    static void record(TubingBinder tubing, List<Run> runs, List<Held> held, Taken taken) {
        Simplifications all = new Simplifications(runs, tubing.inlets(), tubing.tubes(), taken);
        all.everywhere();
        all.stillAir(tubing.tools());
        tubing.tools().forEach(all::measured);
        all.wideOpenings(tubing);
        Set<String> fed = new LinkedHashSet<>();
        tubing.bleeds().stream().map(Bleed::point).forEach(fed::add);
        held.stream().map(Held::point).forEach(fed::add);
        tubing.points().stream().map(Point::id).forEach(point -> all.junction(point, false, fed.contains(point)));
        all.inlets.stream().map(Inlet::id).forEach(inlet -> all.junction(inlet, true, fed.contains(inlet)));
    }

    /** What the curve of a displacement machine was taken against, and with. */
    static void curves(Station station, Taken taken) {
        for (VacuumProducer producer : station.producers()) {
            if (producer.machine() instanceof Machine.CurveMachine curve && !curve.dynamic()) {
                Place place = new Place(Place.Kind.PRODUCER, producer.id());
                taken.record(
                        place,
                        "its curve was measured against a barometer of 101 325 Pa, and holds at the site's at the same pressure ratio"
                                + " (PRD-35)",
                        Source.published("the pressure ratio stays: Machine Design, Vacuum pumps"));
                if (curve.sealWaterTakesTheHeat()) {
                    taken.record(
                            place,
                            "its curve was measured with seal water at 15 °C; less flow by warmer water is not counted (PRD-36)",
                            Source.commonPractice());
                }
            }
        }
    }

    /** A tool's curve is run on beyond its points. */
    private void measured(Tool tool) {
        if (tool.law() instanceof Tool.Law.Curve curve) {
            double first_Pa = curve.points().get(0).vacuum().pascals();
            double last_Pa =
                    curve.points().get(curve.points().size() - 1).vacuum().pascals();
            taken.record(
                    new Place(Place.Kind.TOOL, tool.id()),
                    String.format(
                            Locale.ROOT,
                            "its air measured from %.2f to %.2f kPa (%.2f to %.2f inHg) of vacuum; deeper it grows with the square root of"
                                    + " the vacuum from the last point on, shallower it falls to none",
                            first_Pa / 1000,
                            last_Pa / 1000,
                            first_Pa / Units.INCH_OF_MERCURY_Pa,
                            last_Pa / Units.INCH_OF_MERCURY_Pa),
                    OPENING);
        }
    }

    /** A tool as wide as its hose: the air must gain the hose's velocity too. */
    private void wideOpenings(TubingBinder tubing) {
        for (Inlet inlet : inlets) {
            Hose hose = tubing.hoses().stream()
                    .filter(h -> h.id().equals(inlet.hose()))
                    .findFirst()
                    .orElseThrow();
            tubing.tools().stream()
                    .filter(t -> t.id().equals(inlet.tool()))
                    .map(Tool::law)
                    .filter(Tool.Law.Opening.class::isInstance)
                    .map(Tool.Law.Opening.class::cast)
                    .filter(o -> o.effective_m2(hose) < o.area().squareMetres() * o.dischargeCoefficient())
                    .forEach(o -> taken.record(
                            new Place(Place.Kind.INLET, inlet.id()),
                            "opening of its tool " + inlet.tool() + " counted no wider than the bore of hose "
                                    + hose.id(),
                            Source.ownReading("no opening lets in more than its hose's bore without loss, TUB-27")));
        }
    }

    private void everywhere() {
        Place site = new Place(Place.Kind.SITE, "");
        taken.record(
                site,
                "air stays at the site's temperature from the inlets to the vacuum producers (isothermal flow)",
                EQUATIONS);
        taken.record(
                site,
                "the weight of the air in rising and falling tubes is left out: tens of pascals that nearly cancel",
                EQUATIONS);
        if (runs.stream().anyMatch(run -> run.wye().isPresent())) {
            taken.record(
                    new Place(Place.Kind.PLANT, ""),
                    "a wye has its junction loss in states in which exactly its two streams flow as drawn into one; in others, as"
                            + " when a stream turns, none. Speeding up into the common bore is charged, nothing is recovered",
                    JUNCTIONS);
        }
    }

    private void stillAir(List<Tool> tools) {
        Source rest = Source.ownReading("the air is at rest before it enters; the K entered does not hold this head");
        runs.stream()
                .filter(run -> run.from().equals(Run.STILL_AIR))
                .forEach(run -> taken.record(
                        new Place(Place.Kind.RUN, run.id()),
                        "one velocity head is added to its k, as it starts in still air",
                        rest));
        tools.stream()
                .filter(tool -> tool.law() instanceof Tool.Law.VelocityHeads)
                .filter(tool -> inlets.stream().anyMatch(inlet -> inlet.tool().equals(tool.id())))
                .forEach(tool -> taken.record(
                        new Place(Place.Kind.TOOL, tool.id()),
                        "one velocity head of the hose is added to its k, as the air starts at rest",
                        rest));
    }

    /** Where streams join or part and the law of a wye does not hold, there is no loss, and that is said. */
    private void junction(String node, boolean inlet, boolean fed) {
        List<Run> in = to.getOrDefault(node, List.of());
        int out = from.getOrDefault(node, List.of()).size();
        long angled = in.stream().filter(run -> run.wye().isPresent()).count();
        int streams = in.size() + (inlet ? 1 : 0);
        Place place = new Place(inlet ? Place.Kind.INLET : Place.Kind.POINT, node);
        if (streams + out < 3) {
            return;
        }
        if (fed) {
            taken.record(place, "no junction loss, as air is let in, fed, drawn or held there too", JUNCTIONS);
        } else if (out != 1 || streams < 2) {
            taken.record(place, "no loss where streams are drawn as parting", JUNCTIONS);
        } else if (angled == 0) {
            taken.record(
                    place,
                    "no junction loss where " + joined(in, inlet ? "its hose" : "") + " join, as none states a wye",
                    JUNCTIONS);
        } else if (angled == streams) {
            taken.record(
                    place,
                    "no junction loss where " + joined(in, "") + " join, as all of them enter at an angle",
                    JUNCTIONS);
        } else if (wider(in, node)) {
            taken.record(
                    place,
                    "no junction loss where " + joined(in, inlet ? "its hose" : "")
                            + " join, as the one at an angle is wider than the tube both go on in",
                    JUNCTIONS);
        } else if (streams > 2) {
            taken.record(
                    place,
                    "junction loss only while no more than two of its streams flow, one of them a wye: "
                            + joined(in, inlet ? "its hose" : ""),
                    JUNCTIONS);
        }
    }

    private boolean wider(List<Run> in, String node) {
        double common_m = bore_m(from.getOrDefault(node, List.of()).get(0));
        return in.stream().anyMatch(run -> run.wye().isPresent() && bore_m(run) > common_m * (1 + 1e-9));
    }

    private double bore_m(Run run) {
        return tubes.stream()
                .filter(tube -> tube.id().equals(run.tube()))
                .findFirst()
                .orElseThrow()
                .bore()
                .metres();
    }

    private static String joined(List<Run> in, String hose) {
        List<String> names = new ArrayList<>(in.stream().map(Run::id).toList());
        if (!hose.isEmpty()) {
            names.add(hose);
        }
        return String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }
}
