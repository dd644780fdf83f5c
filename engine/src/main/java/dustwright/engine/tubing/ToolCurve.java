package dustwright.engine.tubing;

import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.MeasuredCurve;

/**
 * A tool known by measured flows at measured vacuums, ready to be asked by the solver (equation TUB-23): a monotone curve through the
 * origin and the points, beyond the last point by the square root, and odd: what is blown out is held back alike.
 *
 * <pre>
 * v ≤ v_last     w = curve(v)
 * above          w = w_last √(v / v_last)
 * </pre>
 */
public final class ToolCurve {
    private final MeasuredCurve curve;
    private final double last_Pa;
    private final double last_kgPerS;

    /**
     * @param law points with vacuum and flow rising together, both above zero
     */
    public ToolCurve(Tool.Law.Curve law) {
        int count = law.points().size();
        double[] vacuum_Pa = new double[count + 1];
        double[] flow_kgPerS = new double[count + 1];
        for (int n = 1; n <= count; n++) {
            Tool.CurvePoint point = law.points().get(n - 1);
            vacuum_Pa[n] = point.vacuum().pascals();
            flow_kgPerS[n] = point.flow().cubicMetresPerSecond() * FreeAirFlow.REFERENCE_DENSITY_kgPerM3;
            if (!(flow_kgPerS[n] > flow_kgPerS[n - 1])) {
                throw new IllegalArgumentException("a tool's flow must rise with its vacuum");
            }
        }
        curve = new MeasuredCurve(vacuum_Pa, flow_kgPerS);
        last_Pa = vacuum_Pa[count];
        last_kgPerS = flow_kgPerS[count];
    }

    /** Air it lets in [kg/s] at a vacuum in the hose end [Pa]. */
    public double massFlow_kgPerS(double vacuum_Pa) {
        double size_Pa = Math.abs(vacuum_Pa);
        double size_kgPerS = size_Pa <= last_Pa ? curve.at(size_Pa) : last_kgPerS * Math.sqrt(size_Pa / last_Pa);
        return Math.copySign(size_kgPerS, vacuum_Pa);
    }

    /** Further air per further vacuum [kg/(s Pa)]. */
    public double slope_kgPerSPa(double vacuum_Pa) {
        double size_Pa = Math.abs(vacuum_Pa);
        return size_Pa <= last_Pa ? curve.slopeAt(size_Pa) : last_kgPerS / (2 * Math.sqrt(size_Pa * last_Pa));
    }

    /** Whether a vacuum lies within the measured points. */
    public boolean covers(double vacuum_Pa) {
        return Math.abs(vacuum_Pa) <= last_Pa;
    }
}
