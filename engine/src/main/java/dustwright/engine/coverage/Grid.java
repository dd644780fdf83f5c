package dustwright.engine.coverage;

/**
 * Even places {@code u = √(1 − P/Pa²)} at which flows are tabulated, and the cubic between two of them. A curve is an array of values
 * and slopes in turn, slopes per interval; after them, by interval, how far the cubic may be from what it stands for (equation COV-10).
 */
final class Grid {
    final int intervals;
    final double step;
    final double ambientSquared;

    Grid(int intervals, double greatest, double ambientSquared) {
        this.intervals = intervals;
        this.step = greatest / intervals;
        this.ambientSquared = ambientSquared;
    }

    double[] curve() {
        return new double[3 * intervals + 2];
    }

    double place(int knot) {
        return knot * step;
    }

    double squared(double place) {
        return ambientSquared * (1 - place * place);
    }

    double placeOf(double squared) {
        return Math.sqrt(Math.max(0, 1 - squared / ambientSquared));
    }

    void put(double[] curve, int knot, double value, double slope) {
        curve[2 * knot] = value;
        curve[2 * knot + 1] = slope * step;
    }

    double at(double[] curve, int knot) {
        return curve[2 * knot];
    }

    double slopeAt(double[] curve, int knot) {
        return curve[2 * knot + 1] / step;
    }

    private int interval(double place) {
        return Math.max(0, Math.min((int) (place / step), intervals - 1));
    }

    double value(double[] curve, double place) {
        int i = interval(place);
        double t = place / step - i;
        int k = 2 * i;
        double rise = curve[k + 2] - curve[k];
        return curve[k]
                + t * t * (3 - 2 * t) * rise
                + t * (1 - t) * (1 - t) * curve[k + 1]
                + t * t * (t - 1) * curve[k + 3];
    }

    /** d value/du. */
    double slope(double[] curve, double place) {
        int i = interval(place);
        double t = place / step - i;
        int k = 2 * i;
        double rise = curve[k + 2] - curve[k];
        return (6 * t * (1 - t) * rise + (1 + t * (3 * t - 4)) * curve[k + 1] + t * (3 * t - 2) * curve[k + 3]) / step;
    }

    /** How far a curve may be from what it stands for in an interval [kg/s]: below it where it bounds from above, and so on. */
    double error(double[] curve, int interval) {
        return curve[2 * (intervals + 1) + interval];
    }

    void putError(double[] curve, int interval, double error) {
        curve[2 * (intervals + 1) + interval] = error;
    }

    /** Greatest error from one place to another, their intervals included. */
    double errorBetween(double[] curve, double from, double to) {
        double greatest = 0;
        for (int i = interval(Math.min(from, to)); i <= interval(Math.max(from, to)); i++) {
            greatest = Math.max(greatest, error(curve, i));
        }
        return greatest;
    }

    /** Greatest error at a place and in the intervals next to it. */
    double errorNear(double[] curve, double place) {
        return errorBetween(curve, place - step, place + step);
    }

    /** Error of a curve of which no more is known than that it rises, or falls. */
    double stepError(double[] curve, int interval) {
        int k = 2 * interval;
        double from = Math.min(Math.min(curve[k], curve[k + 2]), Math.min(bezier1(curve, k), bezier2(curve, k)));
        double to = Math.max(Math.max(curve[k], curve[k + 2]), Math.max(bezier1(curve, k), bezier2(curve, k)));
        return to - from;
    }

    private static double bezier1(double[] curve, int k) {
        return curve[k] + curve[k + 1] / 3;
    }

    private static double bezier2(double[] curve, int k) {
        return curve[k + 2] - curve[k + 3] / 3;
    }

    /** How far a cubic may be from a curve through the same knots with slopes between two bounds: both lie in one parallelogram. */
    double between(double[] curve, int interval, double leastSlope, double greatestSlope) {
        int k = 2 * interval;
        double rise = curve[k + 2] - curve[k];
        double middle = 3 * rise - curve[k + 1] - curve[k + 3];
        double low = Math.min(leastSlope * step, Math.min(middle, Math.min(curve[k + 1], curve[k + 3])));
        double high = Math.max(greatestSlope * step, Math.max(middle, Math.max(curve[k + 1], curve[k + 3])));
        return Secant.gap(rise, low, high);
    }

    /** Least slope of the cubics between two places [kg/s per u]. */
    double leastSlope(double[] curve, double from, double to) {
        double least = Double.MAX_VALUE;
        for (int i = interval(from); i <= interval(to); i++) {
            int k = 2 * i;
            double middle = 3 * (curve[k + 2] - curve[k]) - curve[k + 1] - curve[k + 3];
            least = Math.min(least, Math.min(middle, Math.min(curve[k + 1], curve[k + 3])));
        }
        return least / step;
    }

    /** Greatest slope of the cubics between two places [kg/s per u]. */
    double greatestSlope(double[] curve, double from, double to) {
        double greatest = -Double.MAX_VALUE;
        for (int i = interval(from); i <= interval(to); i++) {
            int k = 2 * i;
            double middle = 3 * (curve[k + 2] - curve[k]) - curve[k + 1] - curve[k + 3];
            greatest = Math.max(greatest, Math.max(middle, Math.max(curve[k + 1], curve[k + 3])));
        }
        return greatest / step;
    }

    /**
     * Raises the error of a curve that is the best of many at its knots: how far a candidate {@code one + sign·other} may pass it between
     * them, by the control points of both cubics, and what the candidate may be off itself.
     */
    void passed(double[] best, double[] one, double[] other, int sign, boolean greatest) {
        for (int i = 0; i < intervals; i++) {
            int k = 2 * i;
            double d1 = bezier1(one, k) + sign * bezier1(other, k) - bezier1(best, k);
            double d2 = bezier2(one, k) + sign * bezier2(other, k) - bezier2(best, k);
            double d0 = one[k] + sign * other[k] - best[k];
            double d3 = one[k + 2] + sign * other[k + 2] - best[k + 2];
            double beyond = greatest
                    ? Math.max(Math.max(d0, d3), Math.max(d1, d2))
                    : -Math.min(Math.min(d0, d3), Math.min(d1, d2));
            double error = beyond + error(one, i) + error(other, i);
            if (error > error(best, i)) {
                putError(best, i, error);
            }
        }
    }

    /**
     * At no vacuum nothing flows, and the true slope there holds within a sliver only that no grid resolves; the parabola through the
     * next knot is what the rest of the first interval looks like.
     */
    void putStart(double[] rising) {
        rising[0] = 0;
        rising[1] = 2 * rising[2] - rising[3];
    }

    /** Place where a rising curve meets a falling one. */
    double meeting(double[] rising, double[] falling) {
        int low = 0;
        int high = intervals;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (rising[2 * middle] < falling[2 * middle]) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double from = place(low);
        double to = place(high);
        double u = from + 0.5 * step;
        for (int n = 0; n < 60; n++) {
            double gap = value(rising, u) - value(falling, u);
            if (gap < 0) {
                from = u;
            } else {
                to = u;
            }
            double next = u - gap / (slope(rising, u) - slope(falling, u));
            next = next > from && next < to ? next : 0.5 * (from + to);
            double moved = Math.abs(next - u);
            u = next;
            if (moved <= 1e-16) {
                break;
            }
        }
        return u;
    }
}
