package dustwright.engine.network;

/**
 * One-ports as tables (equation NET-9). A part of the tubing whose inlets are all in a given condition draws a flow that depends on
 * one pressure only, that of the node it hangs on. In {@code u = √(1 − P/Pa²)} this flow is nearly a straight line, the square root of
 * leaks and tools at no vacuum included, so that cubics over even intervals with exact slopes hold it to eleven digits.
 *
 * <p>All tables share one grid: finding the place in it is done once per node, whatever hangs there. A row holds the flow and its
 * slope, and u one node further in and its slope, so that pressures inside a folded part are read, not solved. A table is named by the place of its first row.
 */
final class PortTables {
    private static final int ROW = 4;

    private final int intervals;
    private final double step;
    private final double[] rows;

    /**
     * @param greatest the grid runs from u = 0 to this
     */
    PortTables(double greatest, int intervals, int tables) {
        this.intervals = intervals;
        this.step = greatest / intervals;
        this.rows = new double[Math.multiplyExact(tables, ROW * (intervals + 1) + 1)];
    }

    /** Distance from one table to the next: its rows, and one place for how far it holds. */
    int size() {
        return ROW * (intervals + 1) + 1;
    }

    int intervals() {
        return intervals;
    }

    double step() {
        return step;
    }

    /** Greatest u up to which nothing inside a table chokes. */
    double unchokedUpTo(int table) {
        return rows[table + ROW * (intervals + 1)];
    }

    void setUnchokedUpTo(int table, double u) {
        rows[table + ROW * (intervals + 1)] = u;
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
        int i = table + knot * ROW;
        rows[i] = flow;
        rows[i + 1] = flowSlope * step;
        rows[i + 2] = inner;
        rows[i + 3] = innerSlope * step;
    }

    /**
     * Fills the first row, where nothing flows. The true slope there is often zero, but only within a sliver of vacuum that no grid
     * resolves; the parabola through the next row is what the rest of the interval looks like.
     */
    void putStart(int table) {
        rows[table + 1] = 2 * rows[table + ROW] - rows[table + ROW + 1];
        rows[table + 3] = 2 * rows[table + ROW + 2] - rows[table + ROW + 3];
    }

    /** A place in the grid at which tables are read. It changes; each thread has its own. */
    final class Cursor {
        private final double perStep = 1 / step;
        private int row;
        private double part;
        private double end;
        private double startSlope;
        private double endSlope;
        private double flow;
        private double flowSlope;

        void moveTo(double u) {
            double x = u * perStep;
            int interval = Math.min((int) x, intervals - 1);
            double t = x - interval;
            row = ROW * interval;
            part = t;
            end = t * t * (3 - 2 * t);
            startSlope = t * (1 - t) * (1 - t);
            endSlope = t * t * (t - 1);
        }

        /** Flow drawn by a table [kg/s]. */
        double flow(int table) {
            return value(table + row);
        }

        /** u of the node one leg further in. */
        double inner(int table) {
            return value(table + row + 2);
        }

        private double value(int i) {
            return rows[i] + end * (rows[i + ROW] - rows[i]) + startSlope * rows[i + 1] + endSlope * rows[i + ROW + 1];
        }

        /** Adds up the flows drawn by some tables and their slopes: rows first, then one cubic for the sum. */
        void sum(int[] ports, int from, int to) {
            double start = 0;
            double slopeAtStart = 0;
            double rise = 0;
            double slopeAtEnd = 0;
            for (int n = from; n < to; n++) {
                int i = ports[n] + row;
                start += rows[i];
                slopeAtStart += rows[i + 1];
                rise += rows[i + ROW] - rows[i];
                slopeAtEnd += rows[i + ROW + 1];
            }
            double t = part;
            flow = start + end * rise + startSlope * slopeAtStart + endSlope * slopeAtEnd;
            flowSlope = perStep
                    * (6 * t * (1 - t) * rise + (1 + t * (3 * t - 4)) * slopeAtStart + t * (3 * t - 2) * slopeAtEnd);
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
