package dustwright.engine.discharge;

import java.util.List;

/**
 * Where the dust went in a number of weeks.
 *
 * @param weeks that were gone through
 * @param asked_kg dust that would have been picked up without waiting [kg]
 * @param collected_kg dust that came into the receiver [kg]
 * @param removed_kg dust in the containers that were taken away [kg]
 * @param container_kg dust in the container at the end [kg]
 * @param receiver_kg dust in the receiver at the end [kg]
 * @param changes start of each change [s]
 * @param waitedForChange_s time in which users waited because a container was changed [s]
 * @param waitedForLevel_s time in which users waited because the receiver stood at its high level [s]
 * @param vacuumed_s time in which users vacuumed, as if at their full rate [s]
 * @param longestWait_s most time users waited in one stretch of cleaning [s]
 * @param highest_kg most dust in the receiver [kg]
 * @param highLevels how many times it reached its high level
 * @param highDuringChange how many changes saw it there
 * @param line course of the first weeks, to be drawn
 */
public record DustFlow(
        int weeks,
        double asked_kg,
        double collected_kg,
        double removed_kg,
        double container_kg,
        double receiver_kg,
        List<Double> changes,
        double waitedForChange_s,
        double waitedForLevel_s,
        double vacuumed_s,
        double longestWait_s,
        double highest_kg,
        int highLevels,
        int highDuringChange,
        List<Moment> line) {
    public DustFlow {
        changes = List.copyOf(changes);
        line = List.copyOf(line);
    }

    /**
     * Corner of the course: between two of them everything runs straight. A container that is taken away makes two moments at one time.
     *
     * @param at_s from the start [s]
     * @param receiver_kg dust in the receiver [kg]
     * @param container_kg dust in the container [kg]
     * @param collecting true when dust comes in after this moment
     * @param changing true when a container is changed after this moment
     */
    public record Moment(double at_s, double receiver_kg, double container_kg, boolean collecting, boolean changing) {}

    /** What came in less what is there or was taken away [kg]: rounding only. */
    public double imbalance_kg() {
        return collected_kg - removed_kg - container_kg - receiver_kg;
    }

    /** Time users waited [s] in all weeks. */
    public double waited_s() {
        return waitedForChange_s + waitedForLevel_s;
    }
}
