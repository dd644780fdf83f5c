package dustwright.engine.coverage;

import java.util.BitSet;

/**
 * What the ordering arguments take for granted and the sweep looks after while it goes (equation COV-6): junctions keep order, and the
 * volume flow drawn is nowhere beyond an extreme greater (or less) than at it. A knot of the grid is marked where an assumption fails; only what lies between the
 * places that solved states can have matters.
 */
final class Check {
    private final Grid grid;
    private final BitSet disordered = new BitSet();
    private final BitSet unsettled = new BitSet();
    private final BitSet laws = new BitSet();
    private String volume = "";

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

    /** Notes where the law of a leg did not keep order. */
    void legs(LegMaps maps) {
        laws.or(maps.disordered());
    }

    /** Notes that velocities cannot be put in order at a leg. */
    synchronized void volumeFalls(String where) {
        if (where.compareTo(volume) < 0 || volume.isEmpty()) {
            volume = where;
        }
    }

    /** Takes over what another part of the sweep found. */
    synchronized void add(Check other) {
        disordered.or(other.disordered);
        unsettled.or(other.unsettled);
        laws.or(other.laws);
    }

    /** Why an answer between two places may not be relied on; empty when it may. */
    String objection(double from, double to) {
        if (marked(disordered, from, to)) {
            return "more air from one stream does not always mean more in all at some junction";
        }
        if (marked(laws, from, to)) {
            return "with its dust some piece does not need more pressure for more air";
        }
        if (!volume.isEmpty()) {
            return "it is not sure that the least air is also the slowest, against what is asked, in " + volume;
        }
        return marked(unsettled, from, to) ? "the loss of some junction did not settle" : "";
    }

    private boolean marked(BitSet knots, double from, double to) {
        int first = knots.nextSetBit(Math.max(0, (int) (from / grid.step)));
        return first >= 0 && first <= Math.ceil(to / grid.step);
    }
}
