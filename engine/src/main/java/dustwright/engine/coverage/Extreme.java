package dustwright.engine.coverage;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import java.util.List;

/**
 * The worst of one measure at one place over all sets of so many users.
 *
 * @param place id of the run or the inlet; of the station for what it draws, of the producer for what it takes
 * @param measure what is measured
 * @param users open inlets in all
 * @param value by the envelopes: air through a tool or hose [kg/s], 1 less the Mach number over that at which
 *     pipes choke, velocity over what is asked less 1, or dust per air with the sign turned [-]; 0 for a receiver
 * @param open numbers of the open inlets of the worst set
 * @param beyond velocity that some state may have, over that of the worst set, where the order of velocities is not sure; else 1 [-]
 * @param pad how far any figure of some state may be beyond that of the worst set, because tables stand for curves (equation COV-10) [-]
 * @param velocity_mPerS velocity foretold, of a slowest run; else 0
 */
record Extreme(
        String place,
        Measure measure,
        int users,
        double value,
        List<Integer> open,
        double beyond,
        double pad,
        double velocity_mPerS) {
    /** Share by which rounding alone may move a figure [-]. */
    static final double ROUNDING = 1e-10;

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
        MOST_DRAWN,
        /** Shaft power of a producer, where it is greatest between both ends of what is drawn. */
        MOST_POWER,
        /** The same of the torque at its shaft. */
        MOST_TORQUE,
        /** The same of its temperature rise. */
        MOST_RISE,
        /** The same of the least difference its curve was measured at, over the difference over the machine. */
        FREE_END,
        /** The same of the difference over the greatest its curve was measured at. */
        DEEP_END
    }

    /** Whether this is the worst state of what is asked there. */
    boolean speaksOf(Finding finding) {
        Place where = finding.where();
        return switch (measure) {
            case SLOWEST_RUN -> isRun(finding, FindingCode.TRANSPORT_VELOCITY);
            case LEAST_CARRIED_RUN -> isRun(finding, FindingCode.CARRYING_VELOCITY);
            case NEAREST_CHOKING_RUN -> isRun(finding, FindingCode.NEAR_CHOKING);
            case FASTEST_DUSTY_RUN -> isRun(finding, FindingCode.WEAR_VELOCITY);
            case HEAVIEST_RUN -> isRun(finding, FindingCode.LOADING_RATIO);
            case WEAKEST_TOOL ->
                (where.kind() == Place.Kind.INLET && where.id().equals(place))
                        || (where.kind() == Place.Kind.HOSE && where.id().equals("at " + place));
            case LEAST_DRAWN, MOST_DRAWN ->
                where.kind() != Place.Kind.INLET && where.kind() != Place.Kind.HOSE && where.kind() != Place.Kind.RUN;
            case MOST_POWER -> isProducer(finding, FindingCode.PRODUCER_POWER);
            case MOST_TORQUE -> isProducer(finding, FindingCode.PRODUCER_TORQUE);
            case MOST_RISE -> isProducer(finding, FindingCode.PRODUCER_TEMPERATURE);
            case FREE_END -> isProducer(finding, FindingCode.CURVE_FREE_END);
            case DEEP_END -> isProducer(finding, FindingCode.CURVE_DEEP_END);
            case FASTEST_HOSE, FASTEST_RUN -> false;
        };
    }

    /** Whether this is a greatest velocity or flow, so that more drawn outside makes it worse. */
    boolean greatest() {
        return measure == Measure.FASTEST_HOSE
                || measure == Measure.FASTEST_RUN
                || measure == Measure.FASTEST_DUSTY_RUN
                || measure == Measure.MOST_DRAWN;
    }

    /** What rises with the air drawn outside: flow, or velocity over what is asked or allowed; with all that it may be off. */
    double bound() {
        return switch (measure) {
            case WEAKEST_TOOL -> value * (1 - pad);
            case FASTEST_HOSE -> (1 - value) * (1 + pad);
            case HEAVIEST_RUN -> -(1 - pad) / value;
            case SLOWEST_RUN, LEAST_CARRIED_RUN, NEAREST_CHOKING_RUN -> share() * beyond * (1 - pad);
            case FASTEST_RUN, FASTEST_DUSTY_RUN -> share() * beyond * (1 + pad);
            case LEAST_DRAWN, MOST_DRAWN, MOST_POWER, MOST_TORQUE, MOST_RISE, FREE_END, DEEP_END -> 0;
        };
    }

    private double share() {
        return greatest() ? 1 - value : 1 + value;
    }

    /** The same with as much of a pad as another bound leaves. */
    Extreme boundedBy(double bound) {
        double own = withPad(0).bound();
        double left = greatest() ? bound / own - 1 : 1 - bound / own;
        return withPad(Math.max(ROUNDING, Math.min(pad, left)));
    }

    private Extreme withPad(double other) {
        return new Extreme(place, measure, users, value, open, beyond, other, velocity_mPerS);
    }

    private boolean isProducer(Finding finding, FindingCode code) {
        return finding.code() == code
                && finding.where().kind() == Place.Kind.PRODUCER
                && finding.where().id().equals(place);
    }

    private boolean isRun(Finding finding, FindingCode code) {
        return finding.code() == code
                && finding.where().kind() == Place.Kind.RUN
                && finding.where().id().equals(place);
    }

    Extreme {
        open = open.stream().sorted().toList();
    }
}
