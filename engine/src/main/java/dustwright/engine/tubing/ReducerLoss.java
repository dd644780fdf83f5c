package dustwright.engine.tubing;

import dustwright.engine.quantity.Range;

/**
 * Loss where the bore changes (equations TUB-18 to TUB-20), by β = small over large bore. Every coefficient is on the velocity of
 * the <em>small</em> tube; {@link #onLargeTube} carries it to the large one.
 */
public final class ReducerLoss {
    private static final Range BETA = new Range("the loss of a reducer", "β", "-", 0, 1);
    private static final Range HALF_OR_MORE =
            new Range("the conical expansion of Rennels beyond 20°", "β", "-", 0.5, 1);
    private static final Range CONE = new Range("the loss of a conical reducer", "θ", "rad", 1e-3, Math.PI);
    private static final double STEEP_rad = Math.toRadians(45) - 1e-12;

    private ReducerLoss() {}

    /** The same loss on the velocity of the large tube: {@code K / β⁴}. */
    public static double onLargeTube(double kOnSmallTube, double beta) {
        return kOnSmallTube / Math.pow(beta, 4);
    }

    /**
     * Sudden expansion (equation TUB-19): {@code K = (1 − β²)²}.
     *
     * @source Borda and Carnot: momentum balance
     */
    public static double suddenExpansion(double beta) {
        double step = 1 - BETA.check(beta) * beta;
        return step * step;
    }

    /**
     * Rise of static pressure over a sudden expansion [Pa] for a velocity head q in the small tube (equation TUB-19): the air slows
     * down and part of its head comes back. The network does not count on it.
     *
     * <pre>
     * Δp = q (1 − β⁴) − q (1 − β²)²
     * </pre>
     */
    public static double suddenExpansionRise_Pa(double velocityHead_Pa, double beta) {
        return velocityHead_Pa * (1 - Math.pow(beta, 4) - suddenExpansion(beta));
    }

    /**
     * Sudden contraction (equation TUB-18).
     *
     * <pre>
     * K = 0.0696 (1 − β⁵) λ² + (λ − 1)²,   λ = 1 + 0.622 (1 − 0.215 β² − 0.785 β⁵)
     * </pre>
     *
     * @source Rennels and Hudson, Pipe Flow, 2012
     */
    public static double suddenContractionRennels(double beta) {
        return contractionRennels(BETA.check(beta), 1, 1);
    }

    /**
     * Sudden contraction (equation TUB-18): {@code K = 0.5 (1 − β²)}.
     *
     * @source Crane TP-410
     */
    public static double suddenContractionCrane(double beta) {
        return 0.5 * (1 - BETA.check(beta) * beta);
    }

    /**
     * Conical contraction of an included angle θ [rad] (equation TUB-20), with a Darcy factor for the cone's wall.
     *
     * <pre>
     * K = f (1 − β⁴)/(8 sin(θ/2)) + 0.0696 sin(θ/2) (1 − β⁵) λ² + (λ − 1)²
     * λ = 1 + 0.622 (θ/π)^0.8 (1 − 0.215 β² − 0.785 β⁵)
     * </pre>
     *
     * @source Rennels and Hudson, Pipe Flow, 2012
     */
    public static double conicalContractionRennels(double included_rad, double beta, double darcy) {
        double half = Math.sin(CONE.check(included_rad) / 2);
        double wall = darcy * (1 - Math.pow(BETA.check(beta), 4)) / (8 * half);
        return wall + contractionRennels(beta, Math.pow(included_rad / Math.PI, 0.8), half);
    }

    private static double contractionRennels(double beta, double jetShare, double lossShare) {
        double square = beta * beta;
        double fifth = square * square * beta;
        double jet = 1 + 0.622 * jetShare * (1 - 0.215 * square - 0.785 * fifth);
        return 0.0696 * lossShare * (1 - fifth) * jet * jet + (jet - 1) * (jet - 1);
    }

    /**
     * Conical contraction of an included angle θ [rad] (equation TUB-20).
     *
     * <pre>
     * θ below 45°:  K = 0.8 sin(θ/2) (1 − β²)          else:  K = 0.5 √sin(θ/2) (1 − β²)
     * </pre>
     *
     * @source Crane TP-410
     */
    public static double conicalContractionCrane(double included_rad, double beta) {
        double half = Math.sin(CONE.check(included_rad) / 2);
        double step = 1 - BETA.check(beta) * beta;
        return included_rad < STEEP_rad ? 0.8 * half * step : 0.5 * Math.sqrt(half) * step;
    }

    /**
     * Conical expansion of an included angle θ [rad] (equation TUB-20).
     *
     * <pre>
     * θ below 45°:  K = 2.6 sin(θ/2) (1 − β²)²         else:  K = (1 − β²)²
     * </pre>
     *
     * @source Crane TP-410
     */
    public static double conicalExpansionCrane(double included_rad, double beta) {
        double sudden = suddenExpansion(beta);
        return CONE.check(included_rad) < STEEP_rad ? 2.6 * Math.sin(included_rad / 2) * sudden : sudden;
    }

    /**
     * Conical expansion of an included angle θ [rad] (equation TUB-20), with a Darcy factor for the cone's wall; beyond 20° for β
     * from 0.5.
     *
     * <pre>
     * θ ≤ 20°:   K = 8.30 tan(θ/2)^1.75 (1 − β²)² + f (1 − β⁴)/(8 sin(θ/2))
     * θ ≤ 60°:   K = [1.366 √sin(2π (θ° − 15)/180) − 0.170] (1 − β²)² + f (1 − β⁴)/(8 sin(θ/2))
     * θ ≤ 180°:  K = [1.205 − 0.20 √((θ° − 60)/120)] (1 − β²)²
     * </pre>
     *
     * @source Rennels and Hudson, Pipe Flow, 2012
     */
    public static double conicalExpansionRennels(double included_rad, double beta, double darcy) {
        double sudden = suddenExpansion(beta);
        double degrees = Math.min(Math.toDegrees(CONE.check(included_rad)), 180);
        double wall = darcy * (1 - Math.pow(beta, 4)) / (8 * Math.sin(included_rad / 2));
        if (degrees <= 20) {
            return 8.30 * Math.pow(Math.tan(included_rad / 2), 1.75) * sudden + wall;
        }
        HALF_OR_MORE.check(beta);
        if (degrees <= 60) {
            return (1.366 * Math.sqrt(Math.sin(Math.toRadians(2 * (degrees - 15)))) - 0.170) * sudden + wall;
        }
        return (1.205 - 0.20 * Math.sqrt((degrees - 60) / 120)) * sudden;
    }
}
