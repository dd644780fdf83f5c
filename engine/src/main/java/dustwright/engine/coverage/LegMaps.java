package dustwright.engine.coverage;

import dustwright.engine.network.LegLaw;

/**
 * Carries curves of flow over pressure from one end of a leg to the other (equations COV-2 and COV-3). Both maps keep order: a
 * pointwise greater curve at one end gives a pointwise greater one at the other. A choked end stands at the sonic pressure, as
 * everywhere in the engine. Mutable; each thread has its own.
 */
final class LegMaps {
    private static final int STEP_LIMIT = 100;
    private static final double FOUND = 2e-16;

    private final Grid grid;
    private final double ambientSquared;

    /** What the last map found: flow, its slope by the place asked, and the place at the other end. */
    double flow;

    double slope;
    double otherPlace;

    LegMaps(Grid grid) {
        this.grid = grid;
        ambientSquared = grid.ambientSquared;
    }

    /** Maps what flows in at the far end of a leg, as a whole curve, to what leaves its near end. */
    double[] outward(LegLaw law, double[] in) {
        double[] out = grid.curve();
        otherPlace = 0;
        double last = 0;
        for (int knot = 1; knot <= grid.intervals; knot++) {
            double start = otherPlace + (otherPlace - last);
            last = otherPlace;
            outward(law, in, grid.place(knot), start);
            grid.put(out, knot, flow, slope);
        }
        grid.putStart(out);
        return out;
    }

    private void outward(LegLaw law, double[] in, double u, double start) {
        double outlet = grid.squared(u);
        double low = 0;
        double high = u;
        double y = start > 0 && start < u ? start : 0.9 * u;
        for (int n = 0; n < STEP_LIMIT; n++) {
            double w = grid.value(in, y);
            double s = grid.slope(in, y);
            double inlet = grid.squared(y);
            double kinetic = law.c() * w * w;
            double end = Math.max(outlet, kinetic);
            double logarithm = LegLaw.logarithm(inlet, end);
            double spare = inlet - end - law.loss_Pa2(w) - kinetic * logarithm;
            if (spare > 0 && kinetic < inlet) {
                low = y;
            } else {
                high = y;
            }
            double b = law.lossSlope(w) + 2 * law.c() * Math.abs(w) * logarithm;
            double next = y + spare / (2 * ambientSquared * y * (1 - kinetic / inlet) + b * s);
            next = next >= low && next <= high ? next : 0.5 * (low + high);
            double moved = Math.abs(next - y);
            y = next;
            if (moved <= FOUND) {
                break;
            }
        }
        otherPlace = y;
        flow = grid.value(in, y);
        double s = grid.slope(in, y);
        double inlet = grid.squared(y);
        double kinetic = law.c() * flow * flow;
        slope = 0;
        if (kinetic < outlet) {
            double b = law.lossSlope(flow) + 2 * law.c() * flow * LegLaw.logarithm(inlet, outlet);
            slope = s * u * (1 - kinetic / outlet) / (y * (1 - kinetic / inlet) + b * s / (2 * ambientSquared));
        }
    }

    /** Maps what is drawn at the near end of a leg, as a whole curve, to what is drawn at its far end. */
    double[] inward(LegLaw law, double[] drawn) {
        double[] far = grid.curve();
        otherPlace = grid.place(grid.intervals);
        for (int knot = grid.intervals; knot >= 0; knot--) {
            inward(law, drawn, grid.place(knot), otherPlace);
            grid.put(far, knot, flow, slope);
        }
        return far;
    }

    private void inward(LegLaw law, double[] drawn, double u, double start) {
        flow = grid.value(drawn, u);
        slope = grid.slope(drawn, u);
        otherPlace = u;
        if (flow <= 0) {
            return; // the rest of the plant gives air here: nothing meets it, any curve that keeps order will do
        }
        double upstream = grid.squared(u);
        double low = u;
        double high = grid.place(grid.intervals);
        double x = start > low && start < high ? start : 0.5 * (low + high);
        boolean choked = false;
        double b = 0;
        double kinetic = 0;
        for (int n = 0; n < STEP_LIMIT; n++) {
            double w = Math.min(grid.value(drawn, x), law.most_kgPerS() / 2);
            double s = grid.slope(drawn, x);
            double outlet = grid.squared(x);
            double spare;
            double rise;
            if (w <= 0) {
                spare = upstream - outlet;
                rise = 2 * ambientSquared * x;
                b = law.lossSlope(0);
                choked = false;
            } else {
                kinetic = law.c() * w * w;
                choked = kinetic >= outlet;
                double end = choked ? kinetic : outlet;
                double logarithm = LegLaw.logarithm(upstream, end);
                spare = upstream - end - law.loss_Pa2(w) - kinetic * logarithm;
                b = law.lossSlope(w) + 2 * law.c() * w * logarithm;
                rise = (choked ? 0 : 2 * ambientSquared * x * (1 - kinetic / outlet)) - b * s;
            }
            if (spare > 0) {
                high = x;
            } else {
                low = x;
            }
            double next = x - spare / rise;
            next = next >= low && next <= high ? next : 0.5 * (low + high);
            double moved = Math.abs(next - x);
            x = next;
            if (moved <= FOUND) {
                break;
            }
        }
        otherPlace = x;
        flow = grid.value(drawn, x);
        double s = grid.slope(drawn, x);
        double far = u * (1 - kinetic / upstream);
        slope = choked
                ? -2 * ambientSquared * far / b
                : s * far / (x * (1 - kinetic / grid.squared(x)) - b * s / (2 * ambientSquared));
    }

    /** Curve of an open hose that starts in still air, seen from the valve. */
    double[] fromStillAir(LegLaw law) {
        double[] out = grid.curve();
        double w = 0;
        for (int knot = 1; knot <= grid.intervals; knot++) {
            double outlet = grid.squared(grid.place(knot));
            w = Math.max(w, 1e-6);
            double b = 0;
            double end = outlet;
            for (int n = 0; n < STEP_LIMIT; n++) {
                double kinetic = law.c() * w * w;
                end = Math.max(outlet, kinetic);
                double logarithm = LegLaw.logarithm(ambientSquared, end);
                double spare = ambientSquared - end - law.loss_Pa2(w) - kinetic * logarithm;
                b = law.lossSlope(w) + 2 * law.c() * w * logarithm;
                double moved = spare / b;
                w = Math.max(w + moved, 0.5 * w);
                if (Math.abs(moved) <= 1e-15 * w) {
                    break;
                }
            }
            double kinetic = law.c() * w * w;
            double slopeBySquare = kinetic < outlet ? (1 - kinetic / outlet) / b : 0;
            grid.put(out, knot, w, 2 * ambientSquared * grid.place(knot) * slopeBySquare);
        }
        grid.putStart(out);
        return out;
    }

    /** P at the far end of a leg that carries a flow into a pressure. */
    double upstream(LegLaw law, double squared, double flow_kgPerS) {
        double kinetic = law.c() * flow_kgPerS * flow_kgPerS;
        double end = Math.max(squared, kinetic);
        double loss = law.loss_Pa2(flow_kgPerS);
        double p = end + loss;
        for (int n = 0; n < STEP_LIMIT; n++) {
            double off = p - end - loss - kinetic * LegLaw.logarithm(p, end);
            double moved = off / (1 - kinetic / p);
            p -= moved;
            if (!(Math.abs(moved) > 1e-15 * ambientSquared)) {
                break;
            }
        }
        return p;
    }

    /** P at the near end of a leg that takes a flow from a pressure. */
    double downstream(LegLaw law, double squared, double flow_kgPerS) {
        double kinetic = law.c() * flow_kgPerS * flow_kgPerS;
        double loss = law.loss_Pa2(flow_kgPerS);
        double p = Math.max(squared - loss, kinetic);
        for (int n = 0; n < STEP_LIMIT; n++) {
            double off = squared - p - loss - kinetic * LegLaw.logarithm(squared, p);
            double moved = off / (1 - kinetic / p);
            p = Math.max(p + moved, 0.5 * (p + kinetic));
            if (!(Math.abs(moved) > 1e-15 * ambientSquared)) {
                break;
            }
        }
        return p;
    }
}
