package dustwright.engine.coverage;

import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Side;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Margins that no set falls below, place by place: they may lie below those of the worst sets found, for tables stand for curves (equation
 * COV-10), and of some velocities only a wider bound is known (equation COV-6).
 */
final class Widening {
    private final Map<String, Double> bounds;
    /** Bound where none is named; infinite: that of the worst set found. */
    private final double otherwise;
    /** Why some sets stand open; empty where none does. */
    private final String open;

    private Widening(Map<String, Double> bounds, double otherwise, String open) {
        this.bounds = bounds;
        this.otherwise = otherwise;
        this.open = open;
    }

    /** Every margin is that of the worst set found. */
    static Widening none() {
        return of(Map.of());
    }

    /** What an earlier run showed. */
    static Widening of(Map<String, Double> bounds) {
        return new Widening(new TreeMap<>(bounds), Double.POSITIVE_INFINITY, "");
    }

    /** Nothing is known of sets that were not solved. */
    static Widening unknown() {
        return new Widening(new TreeMap<>(), Double.NEGATIVE_INFINITY, "");
    }

    /** The same, and the verdict is open for a reason. */
    Widening leaving(String why) {
        return new Widening(bounds, otherwise, why);
    }

    /** By the extremes of one sweep. */
    static Widening of(List<Worst> worst, List<Extreme> extremes, int users) {
        Widening widening = none();
        for (Worst one : worst) {
            Finding finding = one.finding();
            double least = finding.margin();
            for (Extreme extreme : extremes) {
                if (extreme.users() == users && extreme.speaksOf(finding)) {
                    least = Math.min(least, least(finding, extreme));
                }
            }
            if (finding.code() == FindingCode.PRODUCER_SPEED) {
                least = Math.max(
                        least, Math.min(0, finding.margin())); // a drive does not leave its range, whoever draws
            }
            widening.bounds.put(one.key(), least);
        }
        return widening;
    }

    /** Of both boxes together: the lower bound counts. */
    void add(Widening other) {
        other.bounds.forEach((key, bound) -> bounds.merge(key, bound, Math::min));
    }

    /** Of two arguments about the same sets: the higher bound counts. */
    Widening narrowedBy(Widening other) {
        Map<String, Double> higher = new TreeMap<>(bounds);
        other.bounds.forEach((key, bound) -> higher.merge(key, bound, Math::max));
        return new Widening(higher, otherwise, open);
    }

    /** The worst sets with these bounds. */
    List<Worst> of(List<Worst> worst) {
        return worst.stream()
                .map(w -> w.boundedBy(bounds.getOrDefault(w.key(), otherwise)))
                .toList();
    }

    /** Why the verdict is open where every set found holds; empty where it is not. */
    String doubt(List<Worst> worst) {
        return open.isEmpty()
                ? of(worst).stream()
                        .filter(Worst::undecided)
                        .findFirst()
                        .map(Widening::doubt)
                        .orElse("")
                : open;
    }

    /** That the worst set found holds while the bound does not. */
    static String doubt(Worst worst) {
        return "the bound of " + worst.finding().code() + " at "
                + worst.finding().where() + " is "
                + (Double.isInfinite(worst.bound()) ? "not known" : "a margin of " + (float) worst.bound())
                + ", the worst set found has " + (float) worst.finding().margin();
    }

    private static double least(Finding finding, Extreme extreme) {
        boolean atLeast = finding.side() == Side.AT_LEAST;
        double pad = extreme.pad() * (1 + Math.abs(finding.margin()));
        return pad == 0 && extreme.beyond() == 1
                ? finding.margin()
                : (atLeast
                                ? (1 + finding.margin()) * extreme.beyond() - 1
                                : 1 - (1 - finding.margin()) * extreme.beyond())
                        - pad;
    }
}
