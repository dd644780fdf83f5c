package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.air.Air;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.ProducerLaw;
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.RotationalSpeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How deep a station's producers draw it when no air comes through tubing, leaks and rotary valve (equation RCV-26): to where its relief
 * valve passes what they take together, and without a relief valve to where they take nothing any more. Drives turn as fast as they
 * can, as one that has lost its signal does; those that stand by rest.
 */
final class BlockedVacuum {
    static final Source READING = Source.ownReading(
            "tubing blocked, nothing leaks in, every producer that does not stand by at its greatest speed");

    private static final int HALVINGS = 60;

    private final Air air;
    private final Optional<ReliefValve> relief;
    private final List<Running> running;
    private final PressureDifference vacuum;

    private record Running(VacuumProducer producer, ProducerLaw law, RotationalSpeed speed) {
        double flow_kgPerS(double inlet_Pa) {
            return law.massFlow_kgPerS(inlet_Pa, speed.revolutionsPerSecond());
        }

        /** Behind its shut check valve a machine stands where it takes no air any more, less deep than the others draw. */
        boolean measured(double inlet_Pa, double ambient_Pa) {
            double turns_perS = speed.revolutionsPerSecond();
            double flow_kgPerS = flow_kgPerS(inlet_Pa);
            double at_Pa = flow_kgPerS > 0
                    ? inlet_Pa
                    : ambient_Pa - law.vacuumWithoutFlow_Pa(turns_perS, ambient_Pa - inlet_Pa);
            return law.covers(at_Pa, flow_kgPerS, turns_perS);
        }
    }

    private BlockedVacuum(Station station, Air air, Optional<ReliefValve> relief) {
        this.air = air;
        this.relief = relief;
        this.running = station.producers().stream()
                .filter(producer -> !producer.standby())
                .map(producer -> new Running(producer, new ProducerLaw(producer, air), greatest(producer)))
                .toList();
        this.vacuum = new PressureDifference(balanced_Pa());
    }

    /** With its relief valve at work, where it has one. */
    static BlockedVacuum relieved(Station station, Air air) {
        return new BlockedVacuum(station, air, station.relief());
    }

    /** With its relief valve stuck shut. */
    static BlockedVacuum stuck(Station station, Air air) {
        return new BlockedVacuum(station, air, Optional.empty());
    }

    private static RotationalSpeed greatest(VacuumProducer producer) {
        return producer.drive() instanceof Drive.Holding holding
                ? holding.greatest()
                : ((Drive.Fixed) producer.drive()).speed();
    }

    /** No vacuum where nothing runs. */
    PressureDifference vacuum() {
        return vacuum;
    }

    /** Why its figure rests on no measurement: curves that end before this vacuum, and how they go on nobody knows. Empty where all reach. */
    Optional<String> notMeasured() {
        double inlet_Pa = air.ambient().pascals() - vacuum.pascals();
        List<String> beyond = running.stream()
                .filter(unit -> !unit.measured(inlet_Pa, air.ambient().pascals()))
                .map(unit -> unit.producer().id())
                .toList();
        return beyond.isEmpty()
                ? Optional.empty()
                : Optional.of("With the tubing blocked " + String.join(" and ", beyond)
                        + (beyond.size() == 1
                                ? " runs beyond the points of its curve"
                                : " run beyond the points of their curves")
                        + ": how deep that draws is not measured. Enter points of the curve up to there, or a relief valve that opens"
                        + " before.");
    }

    /** Holds by a figure of no measured point: not known. */
    static void judge(Writing writing, Optional<String> notMeasured, FindingCode code, Place.Kind part, Judged judged) {
        boolean holds = judged.side() == Side.AT_MOST
                ? judged.value().si() <= judged.limit().value().si()
                : judged.value().si() >= judged.limit().value().si();
        if (notMeasured.isPresent() && holds) {
            writing.unjudged(code, part, judged.side(), judged.limit(), notMeasured.get());
        } else {
            writing.asked(code, part, Sheet.ANY_SET, judged.side(), judged.value(), judged.limit(), judged.steps());
        }
    }

    /** What is compared with what. */
    record Judged(Side side, Quantity value, Limit<? extends Quantity> limit, List<Step> steps) {}

    /** What the producers take falls with the vacuum and what the relief valve passes rises, so the balance lies between halves. */
    private double balanced_Pa() {
        double drawn_Pa = 0;
        double held_Pa = air.ambient().pascals();
        for (int n = 0; n < HALVINGS; n++) {
            double middle_Pa = (drawn_Pa + held_Pa) / 2;
            if (taken_kgPerS(middle_Pa) > passed_kgPerS(middle_Pa)) {
                drawn_Pa = middle_Pa;
            } else {
                held_Pa = middle_Pa;
            }
        }
        return drawn_Pa;
    }

    private double taken_kgPerS(double vacuum_Pa) {
        double inlet_Pa = air.ambient().pascals() - vacuum_Pa;
        return running.stream().mapToDouble(unit -> unit.flow_kgPerS(inlet_Pa)).sum();
    }

    private double passed_kgPerS(double vacuum_Pa) {
        return relief.map(
                        valve -> valve.massFlow_kgPerS(vacuum_Pa, air.ambient().pascals()))
                .orElse(0.0);
    }

    List<Step> steps() {
        Term found = new Term("v", "vacuum with the tubing blocked", vacuum);
        AbsolutePressure inlet = new AbsolutePressure(air.ambient().pascals() - vacuum.pascals());
        Term passed = new Term("w", "air the relief valve passes", new MassFlow(passed_kgPerS(vacuum.pascals())));
        List<Step> steps = new ArrayList<>();
        relief.ifPresent(valve -> steps.add(step(
                "VLV-1",
                "w = w_rated (v − set)/acc up to set + acc, above it w_rated w_nozzle(v)/w_nozzle(set + acc) by TUB-21",
                Source.commonPractice(),
                passed,
                new Term("w_rated", "its rated flow", valve.rated().mass()),
                new Term("set", "vacuum at which it opens", valve.set()),
                new Term("acc", "further vacuum to rated flow", valve.accumulation()),
                new Term("p_a", "barometer, of which air chokes at 0.528282 behind the opening", air.ambient()),
                found)));
        List<Term> inputs = new ArrayList<>();
        relief.ifPresent(valve -> inputs.add(passed));
        inputs.add(new Term("p_in", "pressure at the producers' inlet", inlet));
        for (Running unit : running) {
            String id = unit.producer().id();
            inputs.add(new Term(
                    "w_" + id,
                    "air " + id + " takes then"
                            + (unit.measured(inlet.pascals(), air.ambient().pascals())
                                    ? ""
                                    : ", its curve carried on straight beyond its points: not measured"),
                    new MassFlow(unit.flow_kgPerS(inlet.pascals()))));
            inputs.add(new Term("n_" + id, "speed of " + id, unit.speed()));
        }
        steps.add(step(
                "RCV-26",
                relief.isPresent()
                        ? "v so that the relief valve passes what the producers take: w(v) = Σ w_i(p_a − v)"
                        : "v so that the producers take nothing any more: Σ w_i(p_a − v) = 0",
                READING,
                found,
                inputs.toArray(Term[]::new)));
        return steps;
    }
}
