package dustwright.engine.coverage;

import java.util.List;

/**
 * Envelopes of one part of the plant, by count: for every count the greatest and the least flow, place by place, that any set of open
 * inlets with this count brings about.
 * Where there is but one set, both are the very same curve.
 */
final class Family {
    private final List<int[]> counts;
    private final double[][] most;
    private final double[][] least;

    Family(List<int[]> counts, double[][] most, double[][] least) {
        this.counts = counts;
        this.most = most;
        this.least = least;
    }

    /** All counts, in a fixed order. */
    List<int[]> counts() {
        return counts;
    }

    double[] most(int count) {
        return most[count];
    }

    double[] least(int count) {
        return least[count];
    }

    double[] curve(int count, boolean greatest) {
        return greatest ? most[count] : least[count];
    }

    /** Whether but one set has this count. */
    boolean single(int count) {
        return most[count] == least[count];
    }

    int size() {
        return counts.size();
    }
}
