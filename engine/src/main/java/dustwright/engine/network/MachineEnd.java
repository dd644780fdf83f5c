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
    /** Places by which an interval is looked up. */
    private static final int SHELVES = 4096;
    /** Greatest departure from the curve, as a share of the greatest flow. */
    private static final double TOLERANCE = 1e-12;

    private static final double LEAST_WIDTH = 1e-11;

    private final double greatest;
    private final double shelfPerPlace;
    private final int[] firstOfShelf = new int[SHELVES];
    private double[] u = new double[4 * CELLS];
    private double[] flow = new double[4 * CELLS];
    private double[] slope = new double[4 * CELLS];
    private int knots;

    /** Flow of a place and its slope. */
    private record Knot(double u, double flow, double slope) {}

    MachineEnd(StationDraw draw) {
        greatest = draw.greatestPlace();
        shelfPerPlace = SHELVES / greatest;
        Knot from = knot(draw, 0);
        double tolerance_kgPerS = TOLERANCE * from.flow;
        add(from);
        for (int cell = 0; cell < CELLS; cell++) {
            Knot to = knot(draw, greatest * (cell + 1) / CELLS);
            refine(draw, from, to, tolerance_kgPerS);
            from = to;
        }
        int interval = 0;
        for (int shelf = 0; shelf < SHELVES; shelf++) {
            while (interval < knots - 2 && u[interval + 1] * shelfPerPlace <= shelf) {
                interval++;
            }
            firstOfShelf[shelf] = interval;
        }
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
            add(to);
        }
    }

    private void add(Knot knot) {
        if (knots == u.length) {
            u = Arrays.copyOf(u, 2 * knots);
            flow = Arrays.copyOf(flow, 2 * knots);
            slope = Arrays.copyOf(slope, 2 * knots);
        }
        u[knots] = knot.u;
        flow[knots] = knot.flow;
        slope[knots] = knot.slope;
        knots++;
    }

    /** Greatest u there is: where the station draws nothing any more. */
    double greatest() {
        return greatest;
    }

    int knots() {
        return knots;
    }

    /** u of a knot. */
    double place(int knot) {
        return u[knot];
    }

    /** Flow drawn at a knot [kg/s]. */
    double flow_kgPerS(int knot) {
        return flow[knot];
    }

    /** d flow/du at a knot [kg/s]. */
    double slope(int knot) {
        return slope[knot];
    }

    /** Number of the interval between two knots in which a place lies. */
    int interval(double place) {
        int i = firstOfShelf[Math.min((int) (place * shelfPerPlace), SHELVES - 1)];
        while (i < knots - 2 && place >= u[i + 1]) {
            i++;
        }
        return i;
    }
}
