package dustwright.engine.coverage;

import java.util.List;

/**
 * The worst of one measure at one place over all sets of so many users.
 *
 * @param place id of the run or the inlet; of the station for what it draws
 * @param measure what is measured
 * @param users open inlets in all
 * @param value by the envelopes: air through a tool or hose [kg/s], velocity [m/s], or 1 less the Mach number at
 *     which pipes choke [-]; 0 for a receiver
 * @param open numbers of the open inlets of the worst set
 */
record Extreme(String place, Measure measure, int users, double value, List<Integer> open) {
    /** What is measured. */
    enum Measure {
        /** Least air at a tool: flow, vacuum behind the valve, velocity in its hose. */
        WEAKEST_TOOL,
        /** Fastest air in a hose. */
        FASTEST_HOSE,
        /** Slowest air where dust runs. */
        SLOWEST_RUN,
        /** Fastest air where dust runs. */
        FASTEST_DUSTY_RUN,
        /** Fastest air in a run, dusty or not: traced only where it nears choking. */
        FASTEST_RUN,
        /** Least air into the receiver: deepest vacuum. */
        LEAST_DRAWN,
        /** Most air into the receiver. */
        MOST_DRAWN
    }

    Extreme {
        open = List.copyOf(open);
    }
}
