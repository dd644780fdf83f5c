package dustwright.engine.coverage;

import dustwright.engine.finding.FindingCode;
import java.util.List;
import java.util.Optional;

/**
 * The worst of one measure at one place over all sets of so many users.
 *
 * @param place id of the run or the inlet; of the station for what it draws
 * @param measure what is measured
 * @param users open inlets in all
 * @param value by the envelopes: air through a tool or hose [kg/s], velocity [m/s], 1 less the Mach number at
 *     which pipes choke, or margin or dust per air with the sign turned [-]; 0 for a receiver
 * @param open numbers of the open inlets of the worst set
 * @param beyond velocity that some state may have, over that of the worst set, where the order of velocities is not sure; else 1 [-]
 */
record Extreme(String place, Measure measure, int users, double value, List<Integer> open, double beyond) {
    /** What is measured. */
    enum Measure {
        /** Least air at a tool: flow, vacuum behind the valve, velocity in its hose. */
        WEAKEST_TOOL,
        /** Fastest air in a hose. */
        FASTEST_HOSE,
        /** Slowest air where dust runs. */
        SLOWEST_RUN,
        /** Most dust per air, by what the inlets feed. */
        HEAVIEST_RUN,
        /** Slowest air against what the published laws ask for the load. */
        LEAST_CARRIED_RUN,
        /** Slowest air against the velocity of least drop of what is lifted. */
        NEAREST_CHOKING_RUN,
        /** Fastest air where dust runs. */
        FASTEST_DUSTY_RUN,
        /** Fastest air in a run, dusty or not: traced only where it nears choking. */
        FASTEST_RUN,
        /** Least air into the receiver: deepest vacuum. */
        LEAST_DRAWN,
        /** Most air into the receiver. */
        MOST_DRAWN
    }

    /** The requirement on a run whose worst state this is; empty for others. */
    Optional<FindingCode> requirement() {
        return switch (measure) {
            case SLOWEST_RUN -> Optional.of(FindingCode.TRANSPORT_VELOCITY);
            case LEAST_CARRIED_RUN -> Optional.of(FindingCode.CARRYING_VELOCITY);
            case NEAREST_CHOKING_RUN -> Optional.of(FindingCode.NEAR_CHOKING);
            case FASTEST_DUSTY_RUN -> Optional.of(FindingCode.WEAR_VELOCITY);
            case HEAVIEST_RUN, WEAKEST_TOOL, FASTEST_HOSE, FASTEST_RUN, LEAST_DRAWN, MOST_DRAWN -> Optional.empty();
        };
    }

    Extreme {
        open = open.stream().sorted().toList();
    }
}
