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
    /** How far figures may be beyond, because tables stand for curves; the greatest of all pairs of counts. */
    double pad;
    /** Velocity foretold [m/s]. */
    double velocity_mPerS;

    boolean offer(double offered, int in, int out, double u) {
        boolean better = !any || offered < value;
        if (better) {
            any = true;
            value = offered;
            inside = in;
            outside = out;
            place = u;
        }
        return better;
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
