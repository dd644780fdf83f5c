package dustwright.engine.coverage;

import java.util.BitSet;

/**
 * What the ordering arguments take for granted and the sweep looks after while it goes (equation COV-6): junctions keep order, and the
 * volume flow drawn does not fall as pressure rises. A knot of the grid is marked where an assumption fails; only what lies between the
 * places that solved states can have matters.
 */
final class Check {
    private static final double ROUNDING = 1e-9;

    private final Grid grid;
    private final BitSet disordered = new BitSet();
    private final BitSet unsettled = new BitSet();
    private final BitSet fallingVolume = new BitSet();

    Check(Grid grid) {
        this.grid = grid;
    }

    void wye(WyeMaps maps, int knot) {
        if (!maps.settled) {
            unsettled.set(knot);
        } else if (!maps.ordered) {
            disordered.set(knot);
        }
    }

    /** Looks along a curve of what is drawn: volume flow must not fall where pressure rises. */
    void drawn(double[] curve) {
        for (int knot = 1; knot <= grid.intervals; knot++) {
            double u = grid.place(knot);
            double w = grid.at(curve, knot);
            if (w > 0 && grid.slopeAt(curve, knot) + w * u / (1 - u * u) > ROUNDING * w) {
                fallingVolume.set(knot);
            }
        }
    }

    /** Takes over what another part of the sweep found. */
    synchronized void add(Check other) {
        disordered.or(other.disordered);
        unsettled.or(other.unsettled);
        fallingVolume.or(other.fallingVolume);
    }

    /** Why an answer between two places may not be relied on; empty when it may. */
    String objection(double from, double to) {
        if (marked(disordered, from, to)) {
            return "more air from one stream does not always mean more in all at some junction";
        }
        if (marked(fallingVolume, from, to)) {
            return "somewhere the volume drawn falls while the pressure rises";
        }
        return marked(unsettled, from, to) ? "the loss of some junction did not settle" : "";
    }

    private boolean marked(BitSet knots, double from, double to) {
        int first = knots.nextSetBit(Math.max(0, (int) (from / grid.step)));
        return first >= 0 && first <= Math.ceil(to / grid.step);
    }
}
