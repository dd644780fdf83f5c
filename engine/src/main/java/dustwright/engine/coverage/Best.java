package dustwright.engine.coverage;

/** The least value offered so far, the first of equals, and the pair of counts and the place that made it. */
final class Best {
    boolean any;
    double value;
    int inside;
    int outside;
    double place;

    /** Least of what a state beyond an extreme might have, were the argument of order not to hold. */
    double bound = Double.MAX_VALUE;
    /** The same where tables are off besides: a pair far from the extreme may be off by more than the extreme without harm. */
    private double padded = Double.MAX_VALUE;
    /** How far the figures of the least value may be off, because tables stand for curves. */
    private double pad;
    /** Velocity foretold [m/s]. */
    double velocity_mPerS;

    boolean offer(double offered, int in, int out, double u, double off) {
        boolean better = !any || offered < value;
        if (better) {
            any = true;
            value = offered;
            inside = in;
            outside = out;
            place = u;
            pad = off;
        }
        return better;
    }

    /** Takes what states of one pair of counts may come to, if order fails, and if the tables are off as well. */
    void bounded(double byOrder, double byTables) {
        bound = Math.min(bound, byOrder);
        padded = Math.min(padded, byTables);
    }

    /** Share by which a least figure of any pair may be lower than the bound by order, both said as the figure less 1. */
    double padBelow() {
        double below = bound > -1 ? 1 - (1 + padded) / (1 + bound) : 1;
        return Math.max(pad, Math.min(1, below));
    }

    /** Share by which a greatest figure of any pair may be higher, both said as 1 less the figure. */
    double padAbove() {
        double above = bound < 1 ? (1 - padded) / (1 - bound) - 1 : 1;
        return Math.max(pad, Math.min(1, above));
    }

    /** Share by which a greatest load per air may be higher, both said with the sign turned. */
    double padHeavier() {
        return Math.max(pad, Math.min(1, 1 - bound / padded));
    }

    /** Whether some state may be worse than the least value offered, by more than a share that does not count. */
    boolean doubted(double same) {
        return any ? bound < value - same : bound < Double.MAX_VALUE;
    }

    /** Velocity that some state may have over that of the least value, for values that are velocity over need less 1. */
    double slowerThan(double same) {
        return doubted(same) ? (1 + bound) / (1 + value) : 1;
    }

    /** The same for values that are 1 less velocity over limit. */
    double fasterThan(double same) {
        return doubted(same) ? (1 - bound) / (1 - value) : 1;
    }
}
