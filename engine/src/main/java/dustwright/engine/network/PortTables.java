package dustwright.engine.network;

/**
 * One-ports as tables (equation NET-9). A part of the tubing whose inlets are all in a given condition draws a flow that depends on
 * one pressure only, that of the node it hangs on. In {@code u = √(1 − P/Pa²)} this flow is nearly a straight line, the square root of
 * leaks and tools at no vacuum included, so that cubics over even intervals with exact slopes hold it to eleven digits.
 *
 * <p>All tables share one grid: finding the place in it is done once per node, whatever hangs there. A table has three columns, each
 * with its slope: the flow; u one node further in, so that pressures inside a folded part are read, not solved; and what stands at the
 * far end of it, the answer most often asked for: with one inlet open the flow of that inlet, with two open u of the node where their
 * paths meet. The last lies apart, since it is read once per state only.
 */
final class PortTables {
    /** Flow and its slope, inner u and its slope. */
    private static final int ROW = 4;
    /** Far end and its slope. */
    private static final int FAR_ROW = 2;

    private final double step;
    private final double perStep;
    private final int knots;
    private final double[] rows;
    private final double[] fars;
    private final double[] soundFrom;
    private final double[] soundTo;

    /**
     * @param greatest the grid runs from u = 0 to this
     */
    PortTables(double greatest, int intervals, int tables) {
        step = greatest / intervals;
        perStep = 1 / step;
        knots = intervals + 1;
        rows = new double[Math.multiplyExact(tables, ROW * knots)];
        fars = new double[tables * FAR_ROW * knots];
        soundFrom = new double[tables];
        soundTo = new double[tables];
    }

    int intervals() {
        return knots - 1;
    }

    double step() {
        return step;
    }

    /** States the range of u in which a table holds: above next to no vacuum, and nothing inside choked. */
    void setSound(int table, double from, double to) {
        soundFrom[table] = from;
        soundTo[table] = to;
    }

    double soundFrom(int table) {
        return soundFrom[table];
    }

    double soundTo(int table) {
        return soundTo[table];
    }

    /**
     * Enters one row.
     *
     * @param flow [kg/s]
     * @param flowSlope d flow/du
     * @param inner u of the node one leg further in
     * @param innerSlope d inner/du
     */
    void put(int table, int knot, double flow, double flowSlope, double inner, double innerSlope) {
        int i = ROW * (table * knots + knot);
        rows[i] = flow;
        rows[i + 1] = flowSlope * step;
        rows[i + 2] = inner;
        rows[i + 3] = innerSlope * step;
    }

    /** Enters what stands at the far end: the flow of the one open inlet [kg/s] or u where two paths meet, and its slope. */
    void putFar(int table, int knot, double far, double slope) {
        int i = FAR_ROW * (table * knots + knot);
        fars[i] = far;
        fars[i + 1] = slope * step;
    }

    /**
     * Fills the first row, where nothing flows. The true slope there is often zero, but only within a sliver of vacuum that no grid
     * resolves; the parabola through the next row is what the rest of the interval looks like.
     */
    void putStart(int table) {
        int i = ROW * table * knots;
        rows[i + 1] = 2 * rows[i + ROW] - rows[i + ROW + 1];
        rows[i + 3] = 2 * rows[i + ROW + 2] - rows[i + ROW + 3];
        int far = FAR_ROW * table * knots;
        fars[far + 1] = 2 * fars[far + FAR_ROW] - fars[far + FAR_ROW + 1];
    }

    /** Flow drawn by a table at a place [kg/s]. */
    double flow(int table, double u) {
        double x = u * perStep;
        int interval = interval(x);
        int i = ROW * (table * knots + interval);
        return cubic(x - interval, rows[i], rows[i + 1], rows[i + ROW], rows[i + ROW + 1]);
    }

    /** u of the node one leg further in. */
    double inner(int table, double u) {
        double x = u * perStep;
        int interval = interval(x);
        int i = ROW * (table * knots + interval) + 2;
        return cubic(x - interval, rows[i], rows[i + 1], rows[i + ROW], rows[i + ROW + 1]);
    }

    /** What stands at the far end. */
    double far(int table, double u) {
        double x = u * perStep;
        int interval = interval(x);
        int i = FAR_ROW * (table * knots + interval);
        return cubic(x - interval, fars[i], fars[i + 1], fars[i + FAR_ROW], fars[i + FAR_ROW + 1]);
    }

    /** d far/du. */
    double farSlope(int table, double u) {
        double x = u * perStep;
        int interval = interval(x);
        int i = FAR_ROW * (table * knots + interval);
        return perStep * cubicSlope(x - interval, fars[i], fars[i + 1], fars[i + FAR_ROW], fars[i + FAR_ROW + 1]);
    }

    private int interval(double x) {
        return Math.min((int) x, knots - 2);
    }

    /** The cubic over 0 to 1 with these values and slopes at its ends. */
    static double cubic(double t, double start, double slopeAtStart, double end, double slopeAtEnd) {
        double rise = end - start;
        double third = slopeAtStart + slopeAtEnd - 2 * rise;
        double second = rise - slopeAtStart - third;
        return start + t * (slopeAtStart + t * (second + t * third));
    }

    /** Its slope. */
    static double cubicSlope(double t, double start, double slopeAtStart, double end, double slopeAtEnd) {
        double rise = end - start;
        double third = slopeAtStart + slopeAtEnd - 2 * rise;
        double second = rise - slopeAtStart - third;
        return slopeAtStart + t * (2 * second + 3 * t * third);
    }

    /** Flows of some tables added up. It changes; each thread has its own. */
    final class Sum {
        private double flow;
        private double slope;

        /** Adds up rows first, then takes one cubic for the sum. */
        void of(int[] tables, int from, int to, double u) {
            double x = u * perStep;
            int interval = interval(x);
            double start = 0;
            double slopeAtStart = 0;
            double end = 0;
            double slopeAtEnd = 0;
            for (int n = from; n < to; n++) {
                int i = ROW * (tables[n] * knots + interval);
                start += rows[i];
                slopeAtStart += rows[i + 1];
                end += rows[i + ROW];
                slopeAtEnd += rows[i + ROW + 1];
            }
            double t = x - interval;
            flow = cubic(t, start, slopeAtStart, end, slopeAtEnd);
            slope = perStep * cubicSlope(t, start, slopeAtStart, end, slopeAtEnd);
        }

        /** [kg/s]. */
        double flow() {
            return flow;
        }

        /** d flow/du [kg/s]. */
        double slope() {
            return slope;
        }
    }
}
