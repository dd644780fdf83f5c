package dustwright.engine.coverage;

/**
 * What a map through a leg found at two neighbouring knots, and how far the cubic between them may be from the true map of the curve that
 * went in (equation COV-10). Nothing is taken for smooth: the slope of the true map is bounded by what its terms can be between the knots, and a
 * curve through both knots with a slope between two bounds lies in a parallelogram.
 */
final class Secant {
    private final Grid grid;
    private final double doubleAmbientSquared;
    private Knot shallow = new Knot();
    private Knot deep = new Knot();

    /** What was found at a knot; whether a bound of the slope can be built on it. */
    static final class Knot {
        double u;
        double other;
        double flow;
        /** Terms of the slope: that of the end asked, that of the other end. */
        double own;

        double far;
        /** d loss/dw over w, 2 c ln(P1/P2), and what dust adds, over w. */
        double lossPerFlow;

        double logarithm;
        double dustPerFlow;
        boolean turbulent;
        boolean usable;
    }

    Secant(Grid grid) {
        this.grid = grid;
        doubleAmbientSquared = 2 * grid.ambientSquared;
    }

    /** The knot to be filled next; the last one becomes its neighbour. */
    Knot next(boolean towardDeep) {
        Knot old = towardDeep ? shallow : deep;
        if (towardDeep) {
            shallow = deep;
            deep = old;
        } else {
            deep = shallow;
            shallow = old;
        }
        return old;
    }

    /** Notes the error of the interval between the last two knots, for a map of a curve. */
    void bound(double[] out, int interval, double[] in, boolean dusty) {
        double carried = grid.errorBetween(in, shallow.other, deep.other);
        if (!shallow.usable || !deep.usable) {
            grid.putError(out, interval, carried + grid.stepError(out, interval));
            return;
        }
        double slopes = grid.leastSlope(in, shallow.other, deep.other);
        double slopesMost = grid.greatestSlope(in, shallow.other, deep.other);
        double low = Math.min(Math.abs(slopes), Math.abs(slopesMost));
        double high = Math.max(Math.abs(slopes), Math.abs(slopesMost));
        if (slopes * slopesMost <= 0) {
            low = 0;
        }
        grid.putError(out, interval, carried + own(out, interval, low, high, true, dusty));
    }

    /** The same for a piece that starts in still air: its curve is its own law. */
    void bound(double[] out, int interval, boolean dusty) {
        boolean usable = shallow.usable && deep.usable;
        grid.putError(out, interval, usable ? own(out, interval, 1, 1, false, dusty) : grid.stepError(out, interval));
    }

    private double own(double[] out, int interval, double low, double high, boolean through, boolean dusty) {
        double width = deep.u - shallow.u;
        double widen = dusty ? 1 : 0;
        double ownLow = hullLow(shallow.own, deep.own, widen);
        double ownHigh = hullHigh(shallow.own, deep.own, widen);
        double farLow = hullLow(shallow.far, deep.far, widen);
        double farHigh = hullHigh(shallow.far, deep.far, widen);
        double free = shallow.turbulent && deep.turbulent ? 1 : 2;
        double perFlowLow = Math.min(shallow.lossPerFlow, deep.lossPerFlow) / free
                + Math.min(shallow.logarithm, deep.logarithm)
                + hullLow(shallow.dustPerFlow, deep.dustPerFlow, widen);
        double perFlowHigh = Math.max(shallow.lossPerFlow, deep.lossPerFlow) * free
                + Math.max(shallow.logarithm, deep.logarithm)
                + hullHigh(shallow.dustPerFlow, deep.dustPerFlow, widen);
        double ratioLow = through ? Math.min(shallow.other, deep.other) / deep.u : 0;
        double ratioHigh = through ? Math.max(shallow.other, deep.other) / shallow.u : 0;
        double flowLow = Math.min(shallow.flow, deep.flow) / deep.u;
        double flowHigh = Math.max(shallow.flow, deep.flow) / shallow.u;
        double least = 0;
        double most = 0;
        for (int pass = 0; pass < 2; pass++) {
            double hinder = ratioHigh * farHigh;
            double help = ratioLow * farLow;
            least = low == 0 ? 0 : low * ownLow / (hinder + perFlowHigh * flowHigh * low / doubleAmbientSquared);
            most = high * ownHigh / (help + perFlowLow * flowLow * high / doubleAmbientSquared);
            if (!(help + perFlowLow * flowLow > 0) || !(ownLow > 0) || low == 0) {
                return grid.stepError(out, interval);
            }
            double flowSlack = gap(Math.abs(deep.flow - shallow.flow) / width, least, most) * width / shallow.u;
            double a = shallow.flow / shallow.u;
            double b = deep.flow / deep.u;
            flowLow = Math.min(a, b) - flowSlack;
            flowHigh = Math.max(a, b) + flowSlack;
            if (through) {
                double slack =
                        gap(Math.abs(deep.other - shallow.other) / width, least / high, most / low) * width / shallow.u;
                double c = shallow.other / shallow.u;
                double d = deep.other / deep.u;
                ratioLow = Math.min(c, d) - slack;
                ratioHigh = Math.max(c, d) + slack;
            }
        }
        boolean falls = deep.flow < shallow.flow;
        return grid.between(out, interval, falls ? -most : least, falls ? -least : most);
    }

    private static double hullLow(double a, double b, double widen) {
        return Math.min(a, b) - widen * Math.abs(a - b);
    }

    private static double hullHigh(double a, double b, double widen) {
        return Math.max(a, b) + widen * Math.abs(a - b);
    }

    /** Greatest height of a parallelogram over its diagonal, per width: a curve with slopes from low to high, whose chord has slope mean. */
    static double gap(double mean, double low, double high) {
        double from = Math.min(low, mean);
        double to = Math.max(high, mean);
        return to > from ? (to - mean) * (mean - from) / (to - from) : 0;
    }
}
