package dustwright.engine.network;

/**
 * Fills one-port tables from the leg laws, each from the tables of what hangs further in: what opens to still air first, then leaf to
 * root.
 */
final class PortBuilder {
    private static final int STEP_LIMIT = 100;
    /** Relative to the whole range of the unknown: the last digits. */
    private static final double FOUND = 2e-16;

    private final double ambientSquared;
    private final LegLaws laws;
    private final PortTables tables;
    private final PortTables.Cursor cursor;

    // what hangs on the inner node of the table under work
    private double leakPerU;
    private int[] ports = new int[0];
    private int portCount;
    // and what flows into that node at the place last asked
    private double inflow;
    private double inflowSlope;

    PortBuilder(Network network, PortTables tables) {
        this.ambientSquared = network.ambientSquared;
        this.laws = new LegLaws(network, 1);
        this.tables = tables;
        this.cursor = tables.new Cursor();
    }

    /** Table of a leg that draws from still air, seen from the node at its end: a hose with its tool, an opening, a tool's curve. */
    void fromStillAir(int table, int leg) {
        double flow = 0;
        double slope = 0;
        double unchoked = 0;
        for (int knot = 1; knot <= tables.intervals(); knot++) {
            double u = knot * tables.step();
            flow = flowFromStillAir(leg, ambientSquared * (1 - u * u), flow + slope * tables.step());
            slope = 2 * ambientSquared * u * laws.slopeTo / laws.slopeFlow;
            if (!laws.choked && unchoked == (knot - 1) * tables.step()) {
                unchoked = u;
            }
            tables.put(table, knot, flow, slope, 0, 0);
        }
        tables.putStart(table);
        tables.setUnchokedUpTo(table, unchoked);
    }

    /** Newton from outside: leg laws bend one way only in w, so no bracket is needed. */
    private double flowFromStillAir(int leg, double outlet, double start) {
        double flow = start;
        for (int n = 0; n < STEP_LIMIT; n++) {
            laws.evaluate(leg, flow, ambientSquared, outlet, 0, 0);
            double moved = laws.residual / laws.slopeFlow;
            flow += moved;
            if (Math.abs(moved) <= 1e-15 * Math.abs(flow)) {
                break;
            }
        }
        laws.evaluate(leg, flow, ambientSquared, outlet, 0, 0);
        return flow;
    }

    /**
     * Table of a leg with everything that hangs on its inner end, seen from its outer end.
     *
     * @param leakPerU leak of a closed inlet at the inner node, proportional to u [kg/s]
     * @param ports tables that hang on the inner node
     */
    void through(int table, LegLaw law, double leakPerU, int[] ports, int portCount) {
        this.leakPerU = leakPerU;
        this.ports = ports;
        this.portCount = portCount;
        double unchokedInside = unchokedInside();
        double inner = 0;
        double innerSlope = 0;
        double unchoked = 0;
        for (int knot = 1; knot <= tables.intervals(); knot++) {
            double u = knot * tables.step();
            double outlet = ambientSquared * (1 - u * u);
            inner = innerPlace(law, u, outlet, inner + innerSlope * tables.step());
            double inlet = ambientSquared * (1 - inner * inner);
            double kinetic = law.c() * inflow * inflow;
            innerSlope = 0;
            if (kinetic < outlet) {
                double b = law.lossSlope(inflow) + 2 * law.c() * inflow * LegLaw.logarithm(inlet, outlet);
                innerSlope = u
                        * (1 - kinetic / outlet)
                        / (inner * (1 - kinetic / inlet) + b * inflowSlope / (2 * ambientSquared));
                if (inner <= unchokedInside) {
                    unchoked = u;
                }
            }
            tables.put(table, knot, inflow, inflowSlope * innerSlope, inner, innerSlope);
        }
        tables.putStart(table);
        tables.setUnchokedUpTo(table, unchoked);
    }

    private double unchokedInside() {
        double least = Double.MAX_VALUE;
        for (int n = 0; n < portCount; n++) {
            least = Math.min(least, tables.unchokedUpTo(ports[n]));
        }
        return least;
    }

    /** u at the inner end of a leg whose outer end stands at u; leaves the inflow there. */
    private double innerPlace(LegLaw law, double u, double outlet, double start) {
        double low = 0;
        double high = u;
        double s = start > 0 && start < u ? start : u;
        for (int n = 0; n < STEP_LIMIT; n++) {
            flowInto(s);
            double inlet = ambientSquared * (1 - s * s);
            double kinetic = law.c() * inflow * inflow;
            double end = Math.max(outlet, kinetic);
            double logarithm = LegLaw.logarithm(inlet, end);
            double spare = inlet - end - law.loss_Pa2(inflow) - kinetic * logarithm;
            if (spare > 0 && kinetic < inlet) {
                low = s;
            } else {
                high = s;
            }
            double b = law.lossSlope(inflow) + 2 * law.c() * inflow * logarithm;
            double next = s + spare / (2 * ambientSquared * s * (1 - kinetic / inlet) + b * inflowSlope);
            next = next >= low && next <= high ? next : (low + high) / 2;
            double moved = Math.abs(next - s);
            s = next;
            if (moved <= FOUND) {
                break;
            }
        }
        flowInto(s);
        return s;
    }

    private void flowInto(double u) {
        cursor.moveTo(u);
        cursor.sum(ports, 0, portCount);
        inflow = leakPerU * u + cursor.flow();
        inflowSlope = leakPerU + cursor.flowSlope();
    }
}
