package dustwright.engine.receiver;

import dustwright.engine.quantity.Stress;
import java.util.List;

/**
 * Measured strength of a powder: what it takes to break it after it was consolidated by a stress.
 *
 * @param points at least two, both stresses above zero, consolidation rising
 */
public record FlowFunction(List<Point> points) {
    public FlowFunction {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a flow function needs at least two measured points");
        }
    }

    /** One point of a shear-cell test. */
    public record Point(Stress consolidation, Stress strength) {}

    /**
     * The straight line through the points on double logarithmic paper.
     *
     * @param coefficient k in σ_y = k σ_c^n, stresses in kPa
     * @param exponent n [-]
     */
    public record Power(double coefficient, double exponent) {}

    /**
     * The power law that lies nearest to the points (equation RCV-19): least squares of the logarithms.
     *
     * <pre>
     * ln σ_y = ln k + n ln σ_c
     * </pre>
     *
     * @source least squares; σ_y = k σ_c^n is the usual form, as in Rhodes, Introduction to Particle Technology
     */
    public Power power() {
        double sumX = 0;
        double sumY = 0;
        double sumXX = 0;
        double sumXY = 0;
        for (Point point : points) {
            double x = Math.log(point.consolidation().pascals() / 1000);
            double y = Math.log(point.strength().pascals() / 1000);
            sumX += x;
            sumY += y;
            sumXX += x * x;
            sumXY += x * y;
        }
        int n = points.size();
        double exponent = (n * sumXY - sumX * sumY) / (n * sumXX - sumX * sumX);
        return new Power(Math.exp((sumY - exponent * sumX) / n), exponent);
    }

    /** Whether a consolidation lies between the first and the last measured one. */
    public boolean covers(double consolidation_Pa) {
        return consolidation_Pa >= points.get(0).consolidation().pascals()
                && consolidation_Pa
                        <= points.get(points.size() - 1).consolidation().pascals();
    }
}
