package dustwright.engine.coverage;

import dustwright.engine.network.LegLaw;
import dustwright.engine.network.TubingTree.Draw;

/** Where two curves meet, and how far what is read there may be off (equation COV-7). */
final class Meetings {
    private static final int HALVINGS = 60;

    private final Grid grid;

    Meetings(Grid grid) {
        this.grid = grid;
    }

    /** Where a curve of the tubing meets the station's own, kinks and all. */
    double withStation(double[] rising, Draw draw) {
        double low = 0;
        double high = draw.greatest();
        for (int n = 0; n < HALVINGS; n++) {
            double middle = 0.5 * (low + high);
            if (grid.value(rising, middle) < draw.flow_kgPerS(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /**
     * How far flow, vacuum, pressure or a velocity may be off where two curves meet, as a share: their errors move the meeting by no more
     * than they are in flow, and by that over both slopes in place.
     */
    double pad(double[] rising, double[] falling, double u) {
        double error = grid.errorNear(rising, u) + grid.errorNear(falling, u);
        double apart = apart(rising, u, grid.greatestSlope(falling, u - grid.step, u + grid.step));
        double flow = grid.value(rising, u);
        if (!(apart > 0) || !(flow > error)) {
            return 1;
        }
        double moved = error / apart;
        return Math.min(1, Extreme.ROUNDING + 2 * error / (flow - error) + shift(u, moved));
    }

    /** Share by which a vacuum or a pressure changes where its place moves. */
    private static double shift(double u, double moved) {
        return 2 * moved / u + 2 * moved * u / (1 - u * u);
    }

    private double apart(double[] rising, double u, double greatestFalling) {
        return grid.leastSlope(rising, u - grid.step, u + grid.step) - greatestFalling;
    }

    /** How far the meeting with the station's own curve, which is no table, may be from the place found; infinite where that is not known. */
    double movedAtStation(double[] rising, Draw draw, double u) {
        double apart = apart(rising, u, draw.slopes(u - grid.step, u + grid.step)[1]);
        return apart > 0 ? grid.errorNear(rising, u) / apart : Double.MAX_VALUE;
    }

    /** Share by which any figure of a station may change where its receiver stands at a bound instead of the place found. */
    double padOnDraw(Draw draw, double u, double bound) {
        if (!(bound > 0 && bound < draw.greatest())) {
            return 1;
        }
        double flow = draw.flow_kgPerS(u);
        double other = Math.abs(draw.flow_kgPerS(bound) - flow);
        boolean known = flow > other;
        return known ? Math.min(1, Extreme.ROUNDING + 2 * other / (flow - other) + shift(u, Math.abs(bound - u))) : 1;
    }

    /** Mach number at the end of a leg over that at which a pipe chokes [-]. */
    double sonicShare(LegLaw law, double u, double flow) {
        double kinetic = law.c() * flow * flow;
        return Math.sqrt(kinetic / Math.max(grid.squared(u), kinetic));
    }

    /** Greatest volume flow drawn from a place down to a deeper one, over that at the place: 1 where it does not fall as pressure rises. */
    double overshoot(double[] drawn, double u, double deepest) {
        double here = volume(grid.value(drawn, u), u);
        double most = here;
        for (int knot = (int) Math.ceil(u / grid.step); knot <= deepest / grid.step; knot++) {
            most = Math.max(most, volume(grid.at(drawn, knot), grid.place(knot)));
        }
        return most / here;
    }

    /** Least volume flow drawn from a place up to a shallower one, over that at the place: 1 where it does not fall as pressure rises. */
    double undershoot(double[] drawn, double u, double shallowest) {
        double here = volume(grid.value(drawn, u), u);
        double least = here;
        for (int knot = (int) Math.ceil(shallowest / grid.step); knot <= u / grid.step; knot++) {
            least = Math.min(least, volume(grid.at(drawn, knot), grid.place(knot)));
        }
        return least / here;
    }

    private static double volume(double flow, double u) {
        return flow / Math.sqrt(1 - u * u);
    }
}
