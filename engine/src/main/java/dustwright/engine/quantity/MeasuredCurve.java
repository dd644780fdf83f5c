package dustwright.engine.quantity;

/**
 * A smooth curve through measured points that rises or falls wherever the points do and overshoots none of them (equation PRD-5):
 * piecewise cubic with the slopes of Fritsch and Butland. Beyond its ends it runs on straight; {@link #covers} tells whether a place
 * lies between measured points. Reading it allocates nothing.
 *
 * @source Fritsch and Carlson, SIAM J. Numer. Anal. 17(2), 1980, 238-246; Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5(2), 1984
 */
public final class MeasuredCurve {
    private final double[] x;
    private final double[] y;
    private final double[] slope;

    /**
     * @param x rising strictly, two points or more
     * @param y measured at each x
     */
    public MeasuredCurve(double[] x, double[] y) {
        if (x.length < 2 || x.length != y.length) {
            throw new IllegalArgumentException("a measured curve needs two points or more");
        }
        for (int n = 1; n < x.length; n++) {
            if (!(x[n] > x[n - 1])) {
                throw new IllegalArgumentException("a measured curve's points do not rise: " + x[n - 1] + ", " + x[n]);
            }
        }
        this.x = x.clone();
        this.y = y.clone();
        this.slope = slopes(this.x, this.y);
    }

    /** Where the first measured point is. */
    public double first() {
        return x[0];
    }

    /** Where the last measured point is. */
    public double last() {
        return x[x.length - 1];
    }

    /** Whether a place lies within the measured points. */
    public boolean covers(double at) {
        return at >= first() && at <= last();
    }

    /** The curve's value. */
    public double at(double place) {
        int n = interval(place);
        double d = place - x[n];
        if (d <= 0) {
            return y[n] + slope[n] * d;
        }
        double h = x[n + 1] - x[n];
        if (d >= h) {
            return y[n + 1] + slope[n + 1] * (d - h);
        }
        double t = d / h;
        double end = t * t * (3 - 2 * t);
        double startSlope = t * (1 - t) * (1 - t);
        double endSlope = t * t * (t - 1);
        return y[n] + end * (y[n + 1] - y[n]) + h * (startSlope * slope[n] + endSlope * slope[n + 1]);
    }

    /** The curve's slope. */
    public double slopeAt(double place) {
        int n = interval(place);
        double h = x[n + 1] - x[n];
        double t = Math.max(0, Math.min(1, (place - x[n]) / h));
        return 6 * t * (1 - t) * (y[n + 1] - y[n]) / h
                + (1 + t * (3 * t - 4)) * slope[n]
                + t * (3 * t - 2) * slope[n + 1];
    }

    /**
     * Two neighbouring points and the slopes in them: between the points the curve is the cubic through both, beyond the first or the
     * last a straight line.
     */
    public record Piece(double x0, double y0, double slope0, double x1, double y1, double slope1) {}

    /** The piece a place lies on; beyond an end the nearest. */
    public Piece piece(double place) {
        int n = interval(place);
        return new Piece(x[n], y[n], slope[n], x[n + 1], y[n + 1], slope[n + 1]);
    }

    private int interval(double place) {
        int n = 0;
        while (n < x.length - 2 && place > x[n + 1]) {
            n++;
        }
        return n;
    }

    private static double[] slopes(double[] x, double[] y) {
        int last = x.length - 1;
        double[] chord = new double[last];
        for (int n = 0; n < last; n++) {
            chord[n] = (y[n + 1] - y[n]) / (x[n + 1] - x[n]);
        }
        double[] slope = new double[x.length];
        slope[0] = chord[0];
        slope[last] = chord[last - 1];
        for (int n = 1; n < last; n++) {
            if (chord[n - 1] * chord[n] > 0) {
                double before = x[n] - x[n - 1];
                double after = x[n + 1] - x[n];
                double weightBefore = 2 * after + before;
                double weightAfter = after + 2 * before;
                slope[n] = (weightBefore + weightAfter) / (weightBefore / chord[n - 1] + weightAfter / chord[n]);
            }
        }
        return slope;
    }
}
