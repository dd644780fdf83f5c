package dustwright.engine.network;

/**
 * Fills one-port tables from the leg laws, each from the tables of what hangs further in: what opens to still air first, then leaf to
 * root.
 */
final class PortBuilder {
    private static final int STEP_LIMIT = 100;
    /** Newton is quadratic: after a step of this in u the last digits are right. */
    private static final double FOUND = 1e-9;
    /** Square of the isothermal Mach number, here about 100 m/s, up to which a table follows the bend before choking. */
    private static final double FAR_FROM_CHOKED = 0.14;
    /** Intervals nearest to no vacuum in which open inlets are not trusted to a table. */
    private static final int LEAST_STEPS = 4;

    private final double ambientSquared;
    private final LegLaws laws;
    private final PortTables singles;
    private final PortTables pairs;
    private final PortTables.Sum single;
    private final PortTables.Sum pair;

    private Hanging hanging = new Hanging(0);
    // what flows into the inner node at the place last asked
    private double inflow;
    private double inflowSlope;

    PortBuilder(Network network, PortTables singles, PortTables pairs) {
        this.ambientSquared = network.ambientSquared;
        this.laws = new LegLaws(network, 1);
        this.singles = singles;
        this.pairs = pairs;
        this.single = singles.new Sum();
        this.pair = pairs.new Sum();
    }

    /** Table of a leg that draws from still air, seen from the node at its end: a hose with its tool, an opening, a tool's curve. */
    void fromStillAir(int table, int leg, LegLaw law) {
        double flow = 0;
        double soundFrom = Double.MAX_VALUE;
        double slope = 0;
        double soundTo = 0;
        for (int knot = 1; knot <= singles.intervals(); knot++) {
            double u = knot * singles.step();
            flow = flowFromStillAir(leg, ambientSquared * (1 - u * u), flow + slope * singles.step());
            slope = 2 * ambientSquared * u * laws.slopeTo / laws.slopeFlow;
            boolean far = law.c() * flow * flow < FAR_FROM_CHOKED * ambientSquared * (1 - u * u);
            if (!laws.choked && far && soundTo == (knot - 1) * singles.step()) {
                soundTo = u;
            }
            if (knot >= LEAST_STEPS && law.turbulent(flow)) {
                soundFrom = Math.min(u, soundFrom);
            }
            singles.put(table, knot, flow, slope, 0, 0);
            singles.putFar(table, knot, flow, slope);
        }
        singles.putStart(table);
        singles.setSound(table, soundFrom, soundTo);
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

    /** Table of a leg with everything that hangs on its inner end, seen from its outer end. */
    void through(int table, LegLaw law, Hanging hanging) {
        fill(singles, table, law, hanging);
    }

    /** The same with two inlets open further in. */
    void throughWithTwoOpen(int table, LegLaw law, Hanging hanging) {
        fill(pairs, table, law, hanging);
    }

    private void fill(PortTables tables, int table, LegLaw law, Hanging hanging) {
        this.hanging = hanging;
        double soundInsideFrom = soundInsideFrom();
        double soundInsideTo = soundInsideTo();
        double inner = 0;
        double innerSlope = 0;
        double slopeBefore = 0;
        // closed inlets hold down to no vacuum at all, as well as anyone will ask
        double soundFrom = soundInsideFrom > 0 ? Double.MAX_VALUE : 0;
        double soundTo = 0;
        for (int knot = 1; knot <= tables.intervals(); knot++) {
            double u = knot * tables.step();
            double outlet = ambientSquared * (1 - u * u);
            double next = inner + (knot > 2 ? 1.5 * innerSlope - 0.5 * slopeBefore : innerSlope) * tables.step();
            slopeBefore = innerSlope;
            inner = innerPlace(law, u, outlet, next);
            double inlet = ambientSquared * (1 - inner * inner);
            double kinetic = law.c() * inflow * inflow;
            innerSlope = 0;
            if (kinetic < outlet) {
                double b = law.lossSlope(inflow) + 2 * law.c() * inflow * LegLaw.logarithm(inlet, outlet);
                innerSlope = u
                        * (1 - kinetic / outlet)
                        / (inner * (1 - kinetic / inlet) + b * inflowSlope / (2 * ambientSquared));
                if (inner >= soundInsideFrom && law.turbulent(inflow)) {
                    soundFrom = Math.min(u, soundFrom);
                }
                if (inner <= soundInsideTo && kinetic < FAR_FROM_CHOKED * outlet) {
                    soundTo = u;
                }
            }
            tables.put(table, knot, inflow, inflowSlope * innerSlope, inner, innerSlope);
            putFar(tables, table, knot, inner, innerSlope);
        }
        tables.putStart(table);
        tables.setSound(table, soundFrom, soundTo);
    }

    private void putFar(PortTables tables, int table, int knot, double inner, double innerSlope) {
        if (hanging.open != Network.NONE) {
            tables.putFar(
                    table, knot, singles.far(hanging.open, inner), singles.farSlope(hanging.open, inner) * innerSlope);
        } else if (hanging.pair() != Network.NONE) {
            tables.putFar(
                    table, knot, pairs.far(hanging.pair(), inner), pairs.farSlope(hanging.pair(), inner) * innerSlope);
        } else {
            tables.putFar(table, knot, inner, innerSlope);
        }
    }

    private double soundInsideFrom() {
        double most = hanging.pair() == Network.NONE ? 0 : pairs.soundFrom(hanging.pair());
        for (int n = 0; n < hanging.count; n++) {
            most = Math.max(most, singles.soundFrom(hanging.ports[n]));
        }
        return most;
    }

    private double soundInsideTo() {
        double least = hanging.pair() == Network.NONE ? Double.MAX_VALUE : pairs.soundTo(hanging.pair());
        for (int n = 0; n < hanging.count; n++) {
            least = Math.min(least, singles.soundTo(hanging.ports[n]));
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
        single.of(hanging.ports, 0, hanging.count, u);
        inflow = hanging.leakPerU * u + single.flow();
        inflowSlope = hanging.leakPerU + single.slope();
        if (hanging.pair() != Network.NONE) {
            pair.of(hanging.pairs, 0, 1, u);
            inflow += pair.flow();
            inflowSlope += pair.slope();
        }
    }
}
