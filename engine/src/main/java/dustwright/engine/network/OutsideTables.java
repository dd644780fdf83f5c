package dustwright.engine.network;

/**
 * What lies outside a branch, seen from the node it hangs on (equation NET-13): the station with all tubing toward it, inlets out there
 * closed but for one at most. It fixes two things as functions of {@code s}, which is u in the receiver: the pressure squared at the
 * node, and the flow drawn from it. Unlike u at the node, s keeps the kinks of the station at the same places in all tables, so they
 * share the uneven grid of {@link MachineEnd}.
 */
final class OutsideTables {
    private static final int ROW = 4;

    private final MachineEnd machine;
    private final double[] perWidth;
    private final double[] rows;
    private final double[] soundFrom;
    private final double[] soundTo;

    OutsideTables(MachineEnd machine, int tables) {
        this.machine = machine;
        perWidth = new double[machine.knots() - 1];
        for (int i = 0; i < perWidth.length; i++) {
            perWidth[i] = 1 / (machine.place(i + 1) - machine.place(i));
        }
        rows = new double[Math.multiplyExact(tables, ROW * machine.knots())];
        soundFrom = new double[tables];
        soundTo = new double[tables];
    }

    MachineEnd machine() {
        return machine;
    }

    /**
     * Enters one row.
     *
     * @param squared P at the node [Pa²]
     * @param flow drawn from the node [kg/s]
     */
    void put(int table, int knot, double squared, double squaredSlope, double flow, double flowSlope) {
        int i = ROW * (table * machine.knots() + knot);
        rows[i] = squared;
        rows[i + 1] = squaredSlope;
        rows[i + 2] = flow;
        rows[i + 3] = flowSlope;
    }

    /** States the range of s in which nothing outside chokes, the node stays below ambient and air flows from it. */
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

    /** A place in the grid at which tables are read. It changes; each thread has its own. */
    final class Cursor {
        private int interval;
        private double width;
        private double scale;
        private double part;
        private double squared;
        private double squaredSlope;
        private double flow;
        private double flowSlope;

        void moveTo(double s) {
            interval = machine.interval(s);
            scale = perWidth[interval];
            width = machine.place(interval + 1) - machine.place(interval);
            part = (s - machine.place(interval)) * scale;
        }

        /** Number of the interval, changed when a kink may have been crossed. */
        int interval() {
            return interval;
        }

        void read(int table) {
            int i = ROW * (table * machine.knots() + interval);
            double slopeAtStart = rows[i + 1] * width;
            double slopeAtEnd = rows[i + ROW + 1] * width;
            squared = PortTables.cubic(part, rows[i], slopeAtStart, rows[i + ROW], slopeAtEnd);
            squaredSlope = scale * PortTables.cubicSlope(part, rows[i], slopeAtStart, rows[i + ROW], slopeAtEnd);
            double flowAtStart = rows[i + 2];
            double flowAtEnd = rows[i + ROW + 2];
            slopeAtStart = rows[i + 3] * width;
            slopeAtEnd = rows[i + ROW + 3] * width;
            flow = PortTables.cubic(part, flowAtStart, slopeAtStart, flowAtEnd, slopeAtEnd);
            flowSlope = scale * PortTables.cubicSlope(part, flowAtStart, slopeAtStart, flowAtEnd, slopeAtEnd);
        }

        /** P at the node [Pa²]. */
        double squared() {
            return squared;
        }

        /** dP/ds. */
        double squaredSlope() {
            return squaredSlope;
        }

        /** Flow drawn from the node [kg/s]. */
        double flow() {
            return flow;
        }

        /** d flow/ds. */
        double flowSlope() {
            return flowSlope;
        }
    }
}
