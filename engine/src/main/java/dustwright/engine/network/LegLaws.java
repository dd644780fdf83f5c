package dustwright.engine.network;

import dustwright.engine.air.Air;
import dustwright.engine.conveying.SolidsLoss.Found;
import dustwright.engine.tubing.Friction;
import dustwright.engine.tubing.Nozzle;
import dustwright.engine.tubing.ToolCurve;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The law of every leg with its slopes (equations NET-1 to NET-4), evaluated into fields so that the solver's inner loop allocates
 * nothing; with what dust adds to them (equation NET-12). After {@link #evaluate}: the leg's law reads {@code residual = 0}, and near by
 *
 * <pre>
 * residual + slopeFrom·dP1 − slopeTo·dP2 − slopeFlow·dw = 0,   slopeFrom, slopeTo ≥ 0,   slopeFlow > 0 but for a negative K
 * </pre>
 */
final class LegLaws {
    private static final double LN10_HALF = Math.log(10) / 2;
    /** Least resistance slope as a share of P_ambient per flow scale: keeps a lossless leg at rest solvable. */
    private static final double LEAST_SLOPE = 1e-9;

    double residual;
    double slopeFrom;
    double slopeTo;
    double slopeFlow;
    boolean choked;
    /** Darcy factor; 0 for legs without bore. */
    double friction;

    private final Network net;
    private final @Nullable DustLoad dust;
    private final Found solids = new Found();
    private final double curveScale;
    private final double leastSlope;
    private double frictionSlope;

    /** The laws of air alone. */
    LegLaws(Network net, double flowScale_kgPerS) {
        this(net, flowScale_kgPerS, null);
    }

    /** The laws of air with the dust it carries, if any. */
    LegLaws(Network net, double flowScale_kgPerS, @Nullable DustLoad dust) {
        this.net = net;
        this.dust = dust;
        this.curveScale = net.ambientSquared / flowScale_kgPerS;
        this.leastSlope = LEAST_SLOPE * curveScale;
    }

    /**
     * Evaluates the law of one leg.
     *
     * @param w flow from node 1 to node 2
     * @param from P1
     * @param to P2
     * @param linear coefficient of w
     * @param junction a, loss of the junction at node 2 in pressure squared
     */
    void evaluate(int leg, double w, double from, double to, double linear, double junction) {
        choked = false;
        friction = 0;
        switch (net.legKind[leg]) {
            case RUN, HOSE -> tube(leg, w, from, to + junction);
            case NOZZLE -> nozzle(leg, w, to);
            case TOOL_CURVE -> toolCurve(leg, w, to);
            case LEAK, FILTER, SAFETY_FILTER -> stated(linear, net.quadratic[leg], w, from - to);
        }
        boolean falling = net.k[leg] < 0 && slopeFlow < 0; // a negative K may let the law fall with the flow
        slopeFlow = falling ? Math.min(slopeFlow, -leastSlope) : Math.max(slopeFlow, leastSlope);
    }

    /** P1 − P2 = linear·w + quadratic·w|w|. */
    private void stated(double linear, double quadratic, double w, double drop) {
        residual = drop - linear * w - quadratic * w * Math.abs(w);
        slopeFrom = 1;
        slopeTo = 1;
        slopeFlow = linear + squareSlope(quadratic, w, linear);
    }

    /**
     * Slope of q·w|w|. Near rest the tangent vanishes while the secant to the solution, √(q·residual), does not: taking the larger
     * lets Newton leave rest in one step.
     */
    private double squareSlope(double quadratic, double w, double otherSlope) {
        double tangent = 2 * quadratic * Math.abs(w);
        return otherSlope > 0 ? tangent : Math.max(tangent, Math.sqrt(quadratic * Math.abs(residual)));
    }

    private void tube(int leg, double w, double from, double to) {
        double c = net.c[leg];
        double size = Math.abs(w);
        boolean forward = w >= 0;
        double up = forward ? from : to;
        double kinetic = c * size * size;
        choked = kinetic > (forward ? to : from);
        double out = choked ? kinetic : forward ? to : from;
        double frictionLoss = net.lengthOverBore[leg] * frictionTimesSquare(leg, size);
        // Where K is not negative a solution never flows uphill; an iterate may, and then the logarithm is left out so
        // that the law stays monotone.
        boolean downhill = up > out;
        boolean withLogarithm = downhill || (net.k[leg] < 0 && !choked);
        double lossPerKinetic = net.k[leg] + (withLogarithm ? Math.log(up / out) : 0);
        double left = up - out - c * frictionLoss - kinetic * lossPerKinetic;
        double inSlope = withLogarithm ? 1 - kinetic / up : 1;
        double outSlope = choked ? 0 : withLogarithm ? 1 - kinetic / out : 1;
        residual = forward ? left : -left;
        slopeFrom = forward ? inSlope : outSlope;
        slopeTo = forward ? outSlope : inSlope;
        if (choked && !downhill) {
            lossPerKinetic += 1;
        }
        double frictional = c * net.lengthOverBore[leg] * frictionSlope;
        slopeFlow = frictional
                + (frictional > 0
                        ? 2 * c * size * lossPerKinetic
                        : Math.max(
                                2 * c * size * lossPerKinetic,
                                Math.sqrt(c * Math.max(net.k[leg], 0) * Math.abs(residual))));
        if (dust != null) {
            double dust_kgPerS = dust.carried_kgPerS(leg, forward, size);
            if (dust_kgPerS > 0) {
                addDust(dust, leg, w, up, out, dust_kgPerS);
            }
        }
    }

    /**
     * What dust adds, at the mean of both end pressures: {@code (p1 + p2) Δp_s(w, (p1 + p2)/(2 R T))} in pressure squared, with its slopes
     * by both pressures and the flow.
     */
    private void addDust(DustLoad load, int leg, double w, double up, double out, double dust_kgPerS) {
        double up_Pa = Math.sqrt(up);
        double out_Pa = Math.sqrt(out);
        double mean_Pa = (up_Pa + out_Pa) / 2;
        double density_kgPerM3 = mean_Pa / net.rt_JPerKg;
        boolean forward = w >= 0;
        load.evaluate(leg, forward, Math.abs(w), density_kgPerM3, dust_kgPerS, solids);
        double extra = 2 * mean_Pa * solids.drop_Pa;
        double byMean = 2 * (solids.drop_Pa + density_kgPerM3 * solids.perDensity_PaM3PerKg);
        double byUp = byMean / (4 * up_Pa);
        double byOut = choked ? 0 : byMean / (4 * out_Pa);
        residual -= forward ? extra : -extra;
        slopeFrom = Math.max(forward ? slopeFrom - byUp : slopeFrom + byOut, 0);
        slopeTo = Math.max(forward ? slopeTo + byOut : slopeTo - byUp, 0);
        slopeFlow += 2 * mean_Pa * solids.perFlow_PaSPerKg;
        if (choked) {
            slopeFlow += byMean / 2 * Math.sqrt(net.c[leg]); // the sonic end's pressure is √c·w
        }
    }

    /** f·w², its slope left in {@link #frictionSlope}; finite at rest, where f alone is not. */
    private double frictionTimesSquare(int leg, double w) {
        double fixed = net.fixedFriction[leg];
        if (fixed >= 0) {
            friction = fixed;
            frictionSlope = 2 * fixed * w;
            return fixed * w * w;
        }
        double reynolds = net.reynoldsPerFlow[leg] * w;
        if (reynolds <= Friction.LAMINAR_UP_TO) {
            friction = reynolds > 0 ? 64 / reynolds : 0;
            frictionSlope = 64 / net.reynoldsPerFlow[leg];
            return frictionSlope * w;
        }
        friction = Friction.darcy(reynolds, net.relativeRoughness[leg]);
        double byReynolds = darcySlope(reynolds, friction, net.relativeRoughness[leg]);
        frictionSlope = w * (2 * friction + byReynolds * reynolds);
        return friction * w * w;
    }

    /** df/dRe of {@link Friction#darcy} above laminar flow. */
    private static double darcySlope(double reynolds, double darcy, double roughness) {
        if (reynolds >= Friction.TURBULENT_FROM) {
            return colebrookSlope(reynolds, darcy, roughness);
        }
        double x = (reynolds - Friction.LAMINAR_UP_TO) / (Friction.TURBULENT_FROM - Friction.LAMINAR_UP_TO);
        double share = x * x * (3 - 2 * x);
        double shareSlope = 6 * x * (1 - x) / (Friction.TURBULENT_FROM - Friction.LAMINAR_UP_TO);
        double laminar = 64 / reynolds;
        // Just above laminar flow the turbulent part cannot be told from the blend, but weighs nothing either.
        double turbulent = share > 1e-6 ? (darcy - (1 - share) * laminar) / share : laminar;
        return shareSlope * (turbulent - laminar)
                - (1 - share) * laminar / reynolds
                + share * colebrookSlope(reynolds, turbulent, roughness);
    }

    /** From Colebrook's equation by implicit differentiation in x = 1/√f. */
    private static double colebrookSlope(double reynolds, double darcy, double roughness) {
        double x = 1 / Math.sqrt(darcy);
        double viscous = 2.51 / reynolds;
        double weight = viscous / ((roughness / 3.7 + viscous * x) * LN10_HALF);
        return -2 * darcy * weight / ((1 + weight) * reynolds);
    }

    /** N(P) = (R T/(Cd A)²)·w|w|, with w the flow of the short opening from still air. */
    private void nozzle(int leg, double w, double to) {
        double effective_m2 = net.effectiveArea_m2[leg];
        double quadratic = net.rt_JPerKg / (effective_m2 * effective_m2);
        double into_Pa = Math.sqrt(to);
        double flow = Nozzle.massFlow_kgPerS(effective_m2, net.ambient_Pa, into_Pa, net.rt_JPerKg);
        residual = quadratic * (flow * Math.abs(flow) - w * Math.abs(w));
        choked = Nozzle.choked(net.ambient_Pa, into_Pa);
        slopeFrom = 0;
        slopeTo = nozzleSlope(to);
        slopeFlow = squareSlope(quadratic, w, 0);
    }

    /** −dN/dP2 with N = ±p_up²·2γ/(γ−1)·(r^(2/γ) − r^((γ+1)/γ)). */
    private double nozzleSlope(double to) {
        double gamma = Air.GAMMA;
        double factor = 2 * gamma / (gamma - 1);
        double a = 2 / gamma;
        double b = (gamma + 1) / gamma;
        double ratio = Math.sqrt(Math.min(to, net.ambientSquared) / Math.max(to, net.ambientSquared));
        boolean inward = to <= net.ambientSquared;
        if (inward && choked) {
            return 0;
        }
        double r = Math.max(ratio, Nozzle.CRITICAL_RATIO);
        double shape = Math.pow(r, a) - Math.pow(r, b);
        double shapeSlope = a * Math.pow(r, a - 1) - b * Math.pow(r, b - 1);
        if (inward) {
            return -factor * shapeSlope / (2 * r);
        }
        return factor * (choked ? shape : shape - shapeSlope * r / 2);
    }

    /** (Pa²/flow scale)·(W(v) − w) with W the measured flow at the vacuum behind the tool. */
    private void toolCurve(int leg, double w, double to) {
        ToolCurve curve = Objects.requireNonNull(net.toolCurve[leg]);
        double into_Pa = Math.sqrt(to);
        double vacuum_Pa = net.ambient_Pa - into_Pa;
        residual = curveScale * (curve.massFlow_kgPerS(vacuum_Pa) - w);
        slopeFrom = 0;
        slopeTo = curveScale * curve.slope_kgPerSPa(vacuum_Pa) / (2 * into_Pa);
        slopeFlow = curveScale;
    }
}
