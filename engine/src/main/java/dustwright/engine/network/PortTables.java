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

    private final int intervals;
    private final double step;
    private final int knots;
    private final double[] rows;
    private final double[] fars;
    private final double[] unchokedUpTo;

    /**
     * @param greatest the grid runs from u = 0 to this
     */
    PortTables(double greatest, int intervals, int tables) {
        this.intervals = intervals;
        step = greatest / intervals;
        knots = intervals + 1;
        rows = new double[Math.multiplyExact(tables, ROW * knots)];
        fars = new double[tables * FAR_ROW * knots];
        unchokedUpTo = new double[tables];
    }

    int intervals() {
        return intervals;
    }

    double step() {
        return step;
    }

    /** Greatest u up to which nothing inside a table chokes. */
    double unchokedUpTo(int table) {
        return unchokedUpTo[table];
    }

    void setUnchokedUpTo(int table, double u) {
        unchokedUpTo[table] = u;
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

    /** A place in the grid at which tables are read. It changes; each thread has its own. */
    final class Cursor {
        private final double perStep = 1 / step;
        private int interval;
        private double part;
        private double end;
        private double startSlope;
        private double endSlope;
        private double flow;
        private double flowSlope;

        void moveTo(double u) {
            double x = u * perStep;
            interval = Math.min((int) x, intervals - 1);
            double t = x - interval;
            part = t;
            end = t * t * (3 - 2 * t);
            startSlope = t * (1 - t) * (1 - t);
            endSlope = t * t * (t - 1);
        }

        /** Flow drawn by a table [kg/s]. */
        double flow(int table) {
            int i = ROW * (table * knots + interval);
            return value(rows[i], rows[i + 1], rows[i + ROW], rows[i + ROW + 1]);
        }

        /** u of the node one leg further in. */
        double inner(int table) {
            int i = ROW * (table * knots + interval) + 2;
            return value(rows[i], rows[i + 1], rows[i + ROW], rows[i + ROW + 1]);
        }

        /** What stands at the far end. */
        double far(int table) {
            int i = FAR_ROW * (table * knots + interval);
            return value(fars[i], fars[i + 1], fars[i + FAR_ROW], fars[i + FAR_ROW + 1]);
        }

        double farSlope(int table) {
            int i = FAR_ROW * (table * knots + interval);
            return slope(fars[i + FAR_ROW] - fars[i], fars[i + 1], fars[i + FAR_ROW + 1]);
        }

        private double value(double atStart, double slopeAtStart, double atEnd, double slopeAtEnd) {
            return atStart + end * (atEnd - atStart) + startSlope * slopeAtStart + endSlope * slopeAtEnd;
        }

        private double slope(double rise, double slopeAtStart, double slopeAtEnd) {
            double t = part;
            return perStep
                    * (6 * t * (1 - t) * rise + (1 + t * (3 * t - 4)) * slopeAtStart + t * (3 * t - 2) * slopeAtEnd);
        }

        /** Adds up the flows drawn by some tables and their slopes: rows first, then one cubic for the sum. */
        void sum(int[] ports, int from, int to) {
            double start = 0;
            double slopeAtStart = 0;
            double rise = 0;
            double slopeAtEnd = 0;
            for (int n = from; n < to; n++) {
                int i = ROW * (ports[n] * knots + interval);
                start += rows[i];
                slopeAtStart += rows[i + 1];
                rise += rows[i + ROW] - rows[i];
                slopeAtEnd += rows[i + ROW + 1];
            }
            flow = start + end * rise + startSlope * slopeAtStart + endSlope * slopeAtEnd;
            flowSlope = slope(rise, slopeAtStart, slopeAtEnd);
        }

        /** The same of one table. */
        void sum(int port) {
            int i = ROW * (port * knots + interval);
            double rise = rows[i + ROW] - rows[i];
            flow = rows[i] + end * rise + startSlope * rows[i + 1] + endSlope * rows[i + ROW + 1];
            flowSlope = slope(rise, rows[i + 1], rows[i + ROW + 1]);
        }

        /** The sum of flows [kg/s]. */
        double flow() {
            return flow;
        }

        /** d sum/du [kg/s]. */
        double flowSlope() {
            return flowSlope;
        }
    }
}
