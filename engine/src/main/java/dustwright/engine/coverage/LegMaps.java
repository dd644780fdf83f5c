package dustwright.engine.coverage;

import dustwright.engine.network.LegDust;
import dustwright.engine.network.LegLaw;
import java.util.BitSet;

/**
 * Carries curves of flow over pressure from one end of a leg to the other (equations COV-2 and COV-3). Both maps keep order: a
 * pointwise greater curve at one end gives a pointwise greater one at the other. A choked end stands at the sonic pressure, as
 * everywhere in the engine. Mutable; each thread has its own.
 */
final class LegMaps {
    private static final int STEP_LIMIT = 100;
    /** Newton is quadratic: after a step this small in u the last digits are right. */
    private static final double FOUND = 1e-8;

    private final Grid grid;
    private final double ambientSquared;

    /** What the last map found: flow, its slope by the place asked, and the place at the other end. */
    double flow;

    double slope;
    double otherPlace;

    /** What the law of a leg found: what is left of the drop [Pa²], and how it changes. */
    private double spare;

    private double kinetic;
    private boolean choked;
    private double byFlow;
    private double byInlet;
    private double byOutlet;
    private boolean ordered;
    private double perFlow;
    private double logarithmPerFlow;
    private double dustPerFlow;
    private boolean turbulent;
    private final Secant secant;
    private final BitSet disordered = new BitSet();

    LegMaps(Grid grid) {
        this.grid = grid;
        ambientSquared = grid.ambientSquared;
        secant = new Secant(grid);
    }

    /** Maps what flows in at the far end of a leg, as a whole curve, to what leaves its near end. */
    double[] outward(LegLaw law, LegDust dust, double[] in) {
        double[] out = grid.curve();
        otherPlace = 0;
        double last = 0;
        for (int knot = 1; knot <= grid.intervals; knot++) {
            double start = otherPlace + (otherPlace - last);
            last = otherPlace;
            outward(law, dust, in, grid.place(knot), start);
            grid.put(out, knot, flow, slope);
            note(knot);
            keep(secant.next(true), grid.place(knot), byOutlet, byInlet);
            if (knot > 1) {
                secant.bound(out, knot - 1, in, dust.adds());
            }
        }
        grid.putStart(out);
        grid.putError(out, 0, grid.stepError(out, 0) + grid.errorBetween(in, 0, grid.step));
        return out;
    }

    private void outward(LegLaw law, LegDust dust, double[] in, double u, double start) {
        double outlet = grid.squared(u);
        double low = 0;
        double high = u;
        double y = start > 0 && start < u ? start : 0.9 * u;
        double s = 0;
        for (int n = 0; n < STEP_LIMIT; n++) {
            flow = grid.value(in, y);
            s = grid.slope(in, y);
            law(law, dust, grid.squared(y), outlet, flow);
            if (spare > 0 && kinetic < grid.squared(y)) {
                low = y;
            } else {
                high = y;
            }
            double next = y + spare / (2 * ambientSquared * y * byInlet + byFlow * s);
            next = next >= low && next <= high ? next : 0.5 * (low + high);
            double moved = Math.abs(next - y);
            y = next;
            if (moved <= FOUND) {
                break;
            }
        }
        otherPlace = y;
        flow = grid.value(in, y);
        slope = choked ? 0 : s * u * byOutlet / (y * byInlet + byFlow * s / (2 * ambientSquared));
    }

    /** Maps what is drawn at the near end of a leg, as a whole curve, to what is drawn at its far end. */
    double[] inward(LegLaw law, LegDust dust, double[] drawn) {
        double[] far = grid.curve();
        otherPlace = grid.place(grid.intervals);
        double last = otherPlace;
        for (int knot = grid.intervals; knot >= 0; knot--) {
            double start = otherPlace + (otherPlace - last);
            last = otherPlace;
            inward(law, dust, drawn, grid.place(knot), start);
            grid.put(far, knot, flow, slope);
            note(knot);
            keep(secant.next(false), grid.place(knot), byInlet, byOutlet);
            if (knot < grid.intervals) {
                secant.bound(far, knot, drawn, dust.adds());
            }
        }
        return far;
    }

    private void inward(LegLaw law, LegDust dust, double[] drawn, double u, double start) {
        flow = grid.value(drawn, u);
        slope = grid.slope(drawn, u);
        otherPlace = u;
        if (flow <= 0) {
            ordered = true;
            perFlow = 0;
            return; // the rest of the plant gives air here: nothing meets it, any curve that keeps order will do
        }
        double upstream = grid.squared(u);
        double low = u;
        double high = grid.place(grid.intervals);
        double x = start > low && start < high ? start : 0.5 * (low + high);
        double s = 0;
        for (int n = 0; n < STEP_LIMIT; n++) {
            double w = Math.min(grid.value(drawn, x), law.most_kgPerS() / 2);
            s = grid.slope(drawn, x);
            law(law, dust, upstream, grid.squared(x), Math.max(0, w));
            if (spare > 0) {
                high = x;
            } else {
                low = x;
            }
            double next = x - spare / ((choked ? 0 : 2 * ambientSquared * x * byOutlet) - byFlow * s);
            next = next >= low && next <= high ? next : 0.5 * (low + high);
            double moved = Math.abs(next - x);
            x = next;
            if (moved <= FOUND) {
                break;
            }
        }
        otherPlace = x;
        flow = grid.value(drawn, x);
        double far = u * byInlet;
        slope = choked
                ? -2 * ambientSquared * far / byFlow
                : s * far / (x * byOutlet - byFlow * s / (2 * ambientSquared));
    }

    /** Curve of an open hose that starts in still air, seen from the valve. */
    double[] fromStillAir(LegLaw law, LegDust dust) {
        double[] out = grid.curve();
        double w = 0;
        for (int knot = 1; knot <= grid.intervals; knot++) {
            double outlet = grid.squared(grid.place(knot));
            double low = w;
            double high = law.most_kgPerS();
            w = Math.max(w, 1e-6);
            for (int n = 0; n < STEP_LIMIT; n++) {
                law(law, dust, ambientSquared, outlet, w);
                if (spare > 0) {
                    low = w;
                } else {
                    high = w;
                }
                double next = w + spare / byFlow;
                next = next >= low && next <= high ? next : Math.min(2 * w, 0.5 * (low + high));
                double moved = Math.abs(next - w);
                w = next;
                if (moved <= FOUND * w) {
                    break;
                }
            }
            grid.put(out, knot, w, choked ? 0 : 2 * ambientSquared * grid.place(knot) * byOutlet / byFlow);
            note(knot);
            flow = w;
            otherPlace = 0;
            keep(secant.next(true), grid.place(knot), byOutlet, 0);
            if (knot > 1) {
                secant.bound(out, knot - 1, dust.adds());
            }
        }
        grid.putStart(out);
        grid.putError(out, 0, grid.stepError(out, 0));
        return out;
    }

    /**
     * What is left of the drop between two pressures at a flow, and how it falls with flow and outlet and rises with the inlet. Where a
     * derivative has not the sign that order asks for, the law does not keep order here.
     */
    private void law(LegLaw law, LegDust dust, double inlet, double outlet, double w) {
        kinetic = law.c() * w * w;
        choked = kinetic > outlet;
        double end = choked ? kinetic : outlet;
        double logarithm = LegLaw.logarithm(inlet, end);
        spare = inlet - end - law.loss_Pa2(w) - kinetic * logarithm;
        double lossSlope = law.lossSlope(w);
        byFlow = lossSlope + 2 * law.c() * w * logarithm;
        perFlow = w > 0 ? lossSlope / w : 0;
        logarithmPerFlow = 2 * law.c() * logarithm;
        dustPerFlow = 0;
        turbulent = law.turbulent(w);
        byInlet = 1 - kinetic / inlet;
        byOutlet = 1 - kinetic / end;
        if (dust.adds()) {
            double inlet_Pa = Math.sqrt(inlet);
            double end_Pa = Math.sqrt(end);
            dust.evaluate(w, (inlet_Pa + end_Pa) / 2);
            spare -= dust.extra_Pa2;
            dustPerFlow = w > 0 ? dust.byFlow / w : 0;
            byFlow += dust.byFlow + (choked ? dust.byMean / 2 * Math.sqrt(law.c()) : 0);
            byInlet -= dust.byMean / (4 * inlet_Pa);
            byOutlet += choked ? 0 : dust.byMean / (4 * end_Pa);
            ordered = byFlow > 0 && byInlet > 0 && byOutlet >= 0;
        } else {
            ordered = true;
        }
    }

    private void keep(Secant.Knot knot, double u, double own, double far) {
        knot.u = u;
        knot.other = otherPlace;
        knot.flow = flow;
        knot.own = own;
        knot.far = far;
        knot.lossPerFlow = perFlow;
        knot.logarithm = logarithmPerFlow;
        knot.dustPerFlow = dustPerFlow;
        knot.turbulent = turbulent;
        knot.usable = !choked && flow > 0 && perFlow > 0;
    }

    private void note(int knot) {
        if (!ordered) {
            disordered.set(knot);
        }
    }

    /** Knots at which a law did not keep order. */
    BitSet disordered() {
        return disordered;
    }

    /** P at the far end of a leg that carries a flow into a pressure. */
    double upstream(LegLaw law, LegDust dust, double squared, double flow_kgPerS) {
        double p = Math.max(squared, law.c() * flow_kgPerS * flow_kgPerS) + law.loss_Pa2(flow_kgPerS);
        for (int n = 0; n < STEP_LIMIT; n++) {
            law(law, dust, p, squared, flow_kgPerS);
            double moved = spare / byInlet;
            p -= moved;
            if (!(Math.abs(moved) > 1e-14 * ambientSquared)) {
                break;
            }
        }
        return p;
    }

    /** P at the near end of a leg that takes a flow from a pressure. */
    double downstream(LegLaw law, LegDust dust, double squared, double flow_kgPerS) {
        double least = law.c() * flow_kgPerS * flow_kgPerS;
        double p = Math.max(squared - law.loss_Pa2(flow_kgPerS), least);
        for (int n = 0; n < STEP_LIMIT; n++) {
            law(law, dust, squared, p, flow_kgPerS);
            double moved = spare / byOutlet;
            p = Math.max(p + moved, 0.5 * (p + least));
            if (!(Math.abs(moved) > 1e-14 * ambientSquared)) {
                break;
            }
        }
        return p;
    }
}
