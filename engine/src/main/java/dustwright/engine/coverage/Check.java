package dustwright.engine.coverage;

import java.util.BitSet;

/**
 * What the ordering arguments take for granted at one place of the tree, and the sweep looks after while it goes (equation COV-6). A knot
 * of the grid is marked where an assumption fails; only what lies between the pressures that states can have there matters.
 */
final class Check {
    private final Grid grid;
    private final BitSet disordered = new BitSet();
    private final BitSet unsettled = new BitSet();
    private final BitSet laws = new BitSet();

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

    /** Why an answer may not be relied on; empty when it may. */
    String objection(Span span, String where) {
        if (marked(disordered, span)) {
            return "more air from one stream does not always mean more in all at " + where;
        }
        if (marked(laws, span)) {
            return "with its dust " + where + " does not always need more pressure for more air";
        }
        return marked(unsettled, span) ? "the loss of the junction at " + where + " did not settle" : "";
    }

    private boolean marked(BitSet knots, Span span) {
        int first = knots.nextSetBit(Math.max(0, (int) (span.from / grid.step) - 1));
        return first >= 0 && first <= Math.ceil(span.to / grid.step) + 1;
    }

    /** Places at which states may stand. */
    static final class Span {
        private double from = Double.MAX_VALUE;
        private double to = -1;

        void see(double u) {
            from = Math.min(from, u);
            to = Math.max(to, u);
        }
    }
}
