package dustwright.engine.network;

import java.util.Arrays;

/**
 * What a station draws from the tubing as a function of the pressure in its receiver (equation NET-10): producers, silencers, relief and
 * vent valve, filters and rotary valve in one curve over {@code u = √(1 − P/Pa²)}.
 *
 * <p>The curve has kinks: where the relief valve opens and where it is full open, where a check valve shuts, where a drive reaches its
 * bound. Intervals are halved until a cubic holds the curve, so kinks end up at the edge of a sliver of an interval wherever they are.
 */
final class MachineEnd {
    private static final int CELLS = 256;
    /** Greatest departure from the curve, as a share of the greatest flow. */
    private static final double TOLERANCE = 1e-12;

    private static final double LEAST_WIDTH = 1e-11;

    private final double greatest;
    private final int[] firstOfCell = new int[CELLS + 1];
    private double[] start = new double[4 * CELLS];
    private double[] cubic = new double[16 * CELLS];
    private int intervals;

    /** Flow of a place and its slope. */
    private record Knot(double u, double flow, double slope) {}

    MachineEnd(StationDraw draw) {
        greatest = draw.greatestPlace();
        double tolerance_kgPerS = TOLERANCE * knot(draw, 0).flow;
        Knot from = knot(draw, 0);
        for (int cell = 0; cell < CELLS; cell++) {
            firstOfCell[cell] = intervals;
            Knot to = knot(draw, greatest * (cell + 1) / CELLS);
            refine(draw, from, to, tolerance_kgPerS);
            from = to;
        }
        firstOfCell[CELLS] = intervals;
    }

    /** Greatest u there is: where the station draws nothing any more. */
    double greatest() {
        return greatest;
    }

    private static Knot knot(StationDraw draw, double u) {
        draw.moveTo(u);
        return new Knot(u, draw.flow_kgPerS(), draw.slope());
    }

    private void refine(StationDraw draw, Knot from, Knot to, double tolerance_kgPerS) {
        double width = to.u - from.u;
        Knot middle = knot(draw, from.u + width / 2);
        double guess = (from.flow + to.flow) / 2 + width * (from.slope - to.slope) / 8;
        if (Math.abs(guess - middle.flow) > tolerance_kgPerS && width > LEAST_WIDTH) {
            refine(draw, from, middle, tolerance_kgPerS);
            refine(draw, middle, to, tolerance_kgPerS);
        } else {
            add(from, middle);
            add(middle, to);
        }
    }

    private void add(Knot from, Knot to) {
        if (intervals == start.length) {
            start = Arrays.copyOf(start, 2 * intervals);
            cubic = Arrays.copyOf(cubic, 8 * intervals);
        }
        double width = to.u - from.u;
        double mean = (to.flow - from.flow) / width;
        start[intervals] = from.u;
        cubic[4 * intervals] = from.flow;
        cubic[4 * intervals + 1] = from.slope;
        cubic[4 * intervals + 2] = (3 * mean - 2 * from.slope - to.slope) / width;
        cubic[4 * intervals + 3] = (from.slope + to.slope - 2 * mean) / (width * width);
        intervals++;
    }

    /** A place on the curve. It changes; each thread has its own. */
    final class Cursor {
        private final double cellPerPlace = CELLS / greatest;
        private int interval;
        private double flow;
        private double slope;

        void moveTo(double u) {
            int cell = Math.min((int) (u * cellPerPlace), CELLS - 1);
            int i = firstOfCell[cell];
            int last = firstOfCell[cell + 1] - 1;
            while (i < last && u >= start[i + 1]) {
                i++;
            }
            double t = u - start[i];
            double c1 = cubic[4 * i + 1];
            double c2 = cubic[4 * i + 2];
            double c3 = cubic[4 * i + 3];
            interval = i;
            flow = cubic[4 * i] + t * (c1 + t * (c2 + t * c3));
            slope = c1 + t * (2 * c2 + 3 * t * c3);
        }

        /** Number of the interval, changed when a kink may have been crossed. */
        int interval() {
            return interval;
        }

        /** Flow drawn [kg/s]. */
        double flow() {
            return flow;
        }

        /** d flow/du [kg/s]. */
        double slope() {
            return slope;
        }
    }
}
