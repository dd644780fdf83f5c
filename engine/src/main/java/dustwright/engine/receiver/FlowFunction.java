package dustwright.engine.receiver;

import dustwright.engine.quantity.Stress;
import java.util.List;
import java.util.OptionalDouble;

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

    /**
     * Strength of an arch by the straight line of the two lowest points, carried on below them (equation RCV-19): where σ_y = a + b σ_c meets
     * σ_c = ff σ_y, and below the lowest point more than the power law, which runs through zero.
     *
     * @param flowFactor of the hopper [-]
     * @return in Pa; empty where the line runs through zero or below it, or meets nothing
     */
    public OptionalDouble lineStrength_Pa(double flowFactor) {
        Point low = points.get(0);
        Point next = points.get(1);
        double slope = (next.strength().pascals() - low.strength().pascals())
                / (next.consolidation().pascals() - low.consolidation().pascals());
        double start_Pa = low.strength().pascals() - slope * low.consolidation().pascals();
        return start_Pa > 0 && slope * flowFactor < 1
                ? OptionalDouble.of(start_Pa / (1 - slope * flowFactor))
                : OptionalDouble.empty();
    }

    /** Whether a consolidation lies below the first measured one. */
    public boolean startsAbove(double consolidation_Pa) {
        return consolidation_Pa < points.get(0).consolidation().pascals();
    }

    /** Whether a consolidation lies between the first and the last measured one. */
    public boolean covers(double consolidation_Pa) {
        return consolidation_Pa >= points.get(0).consolidation().pascals()
                && consolidation_Pa
                        <= points.get(points.size() - 1).consolidation().pascals();
    }
}
