package dustwright.engine.coverage;

import dustwright.engine.coverage.Extreme.Measure;
import dustwright.engine.network.TubingTree.Draw;
import dustwright.engine.network.Working;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/**
 * What producers take between both ends of what a station draws. Most figures of a station are worst at one end or the other; shaft power,
 * torque and temperature rise need not be: a drive that holds its vacuum takes most power where it reaches full speed, a fan may where its
 * curve bulges. They are looked at between the ends, at even places and beside every kink (equation COV-6).
 */
final class Between {
    private static final int LOOKS = 64;
    /** Kinks are slivers of the station's table; this is clear of them. */
    private static final double NUDGE = 1e-8;
    /** Within this a figure between is no greater than at an end. */
    private static final double SAME = 1e-9;

    private static final List<Figure> FIGURES = List.of(
            new Figure(Measure.MOST_POWER, Working::power_W),
            new Figure(Measure.MOST_TORQUE, Working::torque_Nm),
            new Figure(Measure.MOST_RISE, Working::rise_K),
            new Figure(Measure.FREE_END, Working::aboveFirstPoint),
            new Figure(Measure.DEEP_END, Working::belowLastPoint));

    /** A figure of a producer, the worse the greater; one that is held against a lower limit is turned over. */
    private record Figure(Measure measure, ToDoubleFunction<Working> value) {
        double of(Working working) {
            return value.applyAsDouble(working);
        }

        /** How many times as great what is held against the limit is. */
        double times(double ratio) {
            return measure == Measure.FREE_END ? 1 / ratio : ratio;
        }

        double worse(double one, double other) {
            return measure == Measure.FREE_END ? Math.min(one, other) : Math.max(one, other);
        }
    }

    private Between() {}

    /** How many times as great as at its worse end a figure of a producer is between, where that is worse still. */
    static Map<Measure, Map<String, Double>> of(Draw draw, double from, double to) {
        List<Double> places = new ArrayList<>();
        for (int n = 1; n < LOOKS; n++) {
            places.add(from + (to - from) * n / LOOKS);
        }
        for (double kink : draw.kinks(from, to)) {
            places.add(Math.max(from, kink - NUDGE));
            places.add(Math.min(to, kink + NUDGE));
        }
        Map<Measure, Map<String, Double>> beyond = new EnumMap<>(Measure.class);
        List<Working> first = draw.working(from);
        List<Working> last = draw.working(to);
        for (double place : places) {
            List<Working> here = draw.working(place);
            for (int producer = 0; producer < here.size(); producer++) {
                for (Figure figure : FIGURES) {
                    double ends = Math.max(figure.of(first.get(producer)), figure.of(last.get(producer)));
                    double value = figure.of(here.get(producer));
                    if (value > ends * (1 + SAME) && ends > 0) {
                        beyond.computeIfAbsent(figure.measure(), m -> new TreeMap<>())
                                .merge(draw.producers().get(producer), figure.times(value / ends), figure::worse);
                    }
                }
            }
        }
        return beyond;
    }
}
