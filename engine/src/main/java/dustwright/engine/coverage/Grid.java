package dustwright.engine.coverage;

/**
 * Even places {@code u = √(1 − P/Pa²)} at which flows are tabulated, and the cubic between two of them. A curve is an array of values
 * and slopes in turn, slopes per interval.
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
        return new double[2 * (intervals + 1)];
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
