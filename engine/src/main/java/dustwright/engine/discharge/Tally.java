package dustwright.engine.discharge;

import dustwright.engine.discharge.DustFlow.Moment;
import java.util.ArrayList;
import java.util.List;

/** What is counted while the dust is followed. */
final class Tally {
    private double collected_kg;
    private double removed_kg;
    private double waitedForChange_s;
    private double waitedForLevel_s;
    private double vacuumed_s;
    private double longestWait_s;
    private double waitedBefore_s;
    private double highest_kg;
    private int highLevels;
    private int highDuringChange;
    private final List<Double> changes = new ArrayList<>();
    private final List<Moment> line = new ArrayList<>();

    /** Users who bring in less than they would wait the rest of the time. */
    void went(double in_kgPerS, double feed_kgPerS, double span_s, boolean forChange) {
        vacuumed_s += feed_kgPerS > 0 ? span_s * in_kgPerS / feed_kgPerS : 0;
        if (feed_kgPerS > in_kgPerS) {
            double waited_s = span_s * (1 - in_kgPerS / feed_kgPerS);
            if (forChange) {
                waitedForChange_s += waited_s;
            } else {
                waitedForLevel_s += waited_s;
            }
        }
    }

    /** A stretch of cleaning is over. */
    void cleaned() {
        double waited_s = waitedForChange_s + waitedForLevel_s;
        longestWait_s = Math.max(longestWait_s, waited_s - waitedBefore_s);
        waitedBefore_s = waited_s;
    }

    void came(double came_kg, double receiver_kg) {
        collected_kg += came_kg;
        highest_kg = Math.max(highest_kg, receiver_kg);
    }

    void highLevel(boolean changing) {
        highLevels++;
        highDuringChange += changing ? 1 : 0;
    }

    void change(double at_s, double full_kg, boolean high) {
        changes.add(at_s);
        removed_kg += full_kg;
        highDuringChange += high ? 1 : 0;
    }

    /** Moments at which nothing turns are left out. */
    void mark(Moment moment) {
        if (line.isEmpty() || !line.get(line.size() - 1).equals(moment)) {
            line.add(moment);
        }
    }

    DustFlow flow(int weeks, double asked_kg, double container_kg, double receiver_kg) {
        return new DustFlow(
                weeks,
                asked_kg,
                collected_kg,
                removed_kg,
                container_kg,
                receiver_kg,
                changes,
                waitedForChange_s,
                waitedForLevel_s,
                vacuumed_s,
                longestWait_s,
                highest_kg,
                highLevels,
                highDuringChange,
                line);
    }
}
