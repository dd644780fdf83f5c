package dustwright.engine.coverage;

import dustwright.engine.coverage.Extreme.Measure;
import dustwright.engine.network.TubingTree.Draw;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What producers take between both ends of what a station draws. Most figures of a station are worst at one end or the other; shaft power
 * and temperature rise need not be: a drive that holds its vacuum takes most power where it reaches full speed, a fan may where its curve
 * bulges. They are looked at between the ends, at even places and beside every kink (equation COV-6).
 */
final class Between {
    private static final int LOOKS = 64;
    /** Kinks are slivers of the station's table; this is clear of them. */
    private static final double NUDGE = 1e-8;
    /** Within this a figure between is no greater than at an end. */
    private static final double SAME = 1e-9;

    private Between() {}

    /** How many times as great as at the greater end a figure of a producer is between, where it is. */
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
        List<double[]> first = draw.heat(from);
        List<double[]> last = draw.heat(to);
        for (double place : places) {
            List<double[]> here = draw.heat(place);
            for (int producer = 0; producer < here.size(); producer++) {
                for (int figure = 0; figure < 2; figure++) {
                    double ends = Math.max(first.get(producer)[figure], last.get(producer)[figure]);
                    double value = here.get(producer)[figure];
                    if (value > ends * (1 + SAME) && ends > 0) {
                        beyond.computeIfAbsent(
                                        figure == 0 ? Measure.MOST_POWER : Measure.MOST_RISE, m -> new TreeMap<>())
                                .merge(draw.producers().get(producer), value / ends, Math::max);
                    }
                }
            }
        }
        return beyond;
    }
}
