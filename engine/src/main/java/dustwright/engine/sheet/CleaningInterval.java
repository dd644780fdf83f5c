package dustwright.engine.sheet;

import dustwright.engine.finding.Side;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.InletResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.FilterResistance;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.tubing.Inlet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * How far a filter's resistance may grow before a tool gets less than asked, or the filter's drop reaches a set point: the network is solved
 * with the cloth ever more loaded until it does (equation FLT-21).
 */
final class CleaningInterval {
    /** Resistance beyond which nothing passes that would interest anybody [Pa·s/m]. */
    private static final double GREATEST_PaSPerM = 1e8;
    /** How near to the end the search goes [-]. */
    private static final double CLOSE = 1e-9;

    private static final int STEP_LIMIT = 200;

    private final LoadedCloth cloth;
    private final Function<DutyPoint, Optional<Tightest>> look;

    private CleaningInterval(LoadedCloth cloth, Function<DutyPoint, Optional<Tightest>> look) {
        this.cloth = cloth;
        this.look = look;
    }

    /** To the first tool of a set that gets less than asked. */
    static CleaningInterval ofTools(LoadedCloth cloth, List<Inlet> inlets) {
        return new CleaningInterval(cloth, duty -> tightest(cloth.plant(), inlets, duty));
    }

    /** To a drop over the filter. */
    static CleaningInterval ofDrop(LoadedCloth cloth, PressureDifference setPoint) {
        return new CleaningInterval(cloth, duty -> {
            PressureDifference drop = cloth.here(duty).filterLoss();
            return Optional.of(
                    new Tightest("", drop, setPoint, Side.AT_MOST.margin(drop.pascals(), setPoint.pascals())));
        });
    }

    /**
     * The tool that comes nearest to its limit, or the filter's drop and its set point.
     *
     * @param inlet empty for the filter's drop
     * @param margin towards the good side [-]
     */
    record Tightest(String inlet, Quantity value, Quantity limit, double margin) {}

    /**
     * Where the first tool falls below its limit, or the drop reaches its set point.
     *
     * @param start resistance after a cleaning
     * @param end resistance at which it happens; that of the start where it has happened already
     */
    record Found(FilterResistance start, FilterResistance end, Tightest tool) {
        /** Whether it has happened already on the cleaned cloth, before any dust lies on it. */
        boolean already() {
            return tool.margin() < 0;
        }
    }

    /** Whether a limit is stated that a tool could fall below. */
    static boolean limited(Plant plant) {
        return plant.requirements().toolFlow().isPresent()
                || plant.requirements().inletVacuum().isPresent();
    }

    /** Searches; absent where a state has no solution or no resistance brings it so far, as less and less air passes. */
    Optional<Found> find() {
        double start = cloth.station().filter().normal().pascalSecondsPerMetre();
        Optional<Tightest> clean = at(start);
        if (clean.isEmpty()) {
            return Optional.empty();
        }
        if (clean.get().margin() < 0) {
            return Optional.of(new Found(new FilterResistance(start), new FilterResistance(start), clean.get()));
        }
        double fails = Math.max(2 * start, 1000);
        double failing = margin(fails);
        double holds = start;
        double holding = clean.get().margin();
        while (failing >= 0) {
            holds = fails;
            holding = failing;
            fails *= 2;
            if (fails > GREATEST_PaSPerM) {
                return Optional.empty();
            }
            failing = margin(fails);
        }
        double end = between(holds, holding, fails, failing);
        return at(end).map(tool -> new Found(new FilterResistance(start), new FilterResistance(end), tool));
    }

    /**
     * The last resistance that holds, by the straight line between both ends; the value of an end that stays twice is halved, so that
     * both move (Illinois form of the false position).
     */
    private double between(double holds, double holding, double fails, double failing) {
        double low = holds;
        double atLow = holding;
        double high = fails;
        double atHigh = failing;
        boolean held = false;
        boolean failed = false;
        for (int n = 0; n < STEP_LIMIT && high - low > CLOSE * high; n++) {
            double inner = CLOSE / 2 * high;
            double line = low + (high - low) * atLow / (atLow - atHigh);
            double middle = Math.min(high - inner, Math.max(low + inner, line));
            double margin = margin(middle);
            if (margin >= 0) {
                low = middle;
                atLow = margin;
                atHigh = held ? atHigh / 2 : atHigh;
            } else {
                high = middle;
                atHigh = margin;
                atLow = failed ? atLow / 2 : atLow;
            }
            held = margin >= 0;
            failed = !held;
        }
        return low;
    }

    /** Margin of the tightest tool; a state without a solution fails. */
    private double margin(double resistance_PaSPerM) {
        return at(resistance_PaSPerM).map(Tightest::margin).orElse(-1.0);
    }

    private Optional<Tightest> at(double resistance_PaSPerM) {
        return cloth.at(new FilterResistance(resistance_PaSPerM)).match(look, why -> Optional.empty());
    }

    private static Optional<Tightest> tightest(Plant plant, List<Inlet> inlets, DutyPoint duty) {
        return duty.inlets().stream()
                .filter(inlet -> inlets.stream().anyMatch(i -> i.id().equals(inlet.id())))
                .flatMap(inlet -> Stream.concat(
                        plant
                                .requirements()
                                .toolFlow()
                                .map(limit -> compared(inlet, FreeAirFlow.of(inlet.flow()), limit.value()))
                                .stream(),
                        plant
                                .requirements()
                                .inletVacuum()
                                .map(limit -> compared(inlet, inlet.vacuumAtValve(), limit.value()))
                                .stream()))
                .min(Comparator.comparingDouble(Tightest::margin));
    }

    private static Tightest compared(InletResult inlet, Quantity value, Quantity limit) {
        return new Tightest(inlet.id(), value, limit, Side.AT_LEAST.margin(value.si(), limit.si()));
    }
}
