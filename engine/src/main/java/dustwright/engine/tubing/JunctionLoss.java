package dustwright.engine.tubing;

import dustwright.engine.quantity.Range;

/**
 * Loss where a branch joins a run of the common bore (equation TUB-16). Total-pressure coefficients on the <em>common</em>
 * velocity, for the mass-flow ratio q = branch/common. Both may be negative: at small q the main sucks the branch, at large q a
 * slanted branch drives the run.
 *
 * <pre>
 * K_branch = C [1 + (q/a)² − 2 (1 − q)² − F q²/a]      a = A_branch / A_common
 * K_run    = 1 − (1 − q)² − F q²/a                     at 90°: 1.55 q − q²
 * F        = 1.74 / 1.41 / 1.00 / 0 at 30 / 45 / 60 / 90°
 * C        = 1 for a ≤ 0.35; else 0.9 (1 − q) up to q = 0.4 and 0.55 above
 * </pre>
 *
 * Between the tabulated angles both coefficients are taken linear in the angle (so is F); and as the printed C jumps from 0.54 to
 * 0.55 at q = 0.4, it is drawn as a straight line from there to q = 0.42, so that a solver finds no step. Both are our reading.
 *
 * @source Crane TP-410, 2009 with errata, converging wyes; the same structure in Idelchik, Handbook of Hydraulic Resistance
 */
public final class JunctionLoss {
    /**
     * From this share of the common stream in the lesser one on, the loss is charged in full; below it fades to nothing [-]. A stream in
     * a loop may turn: without the fading it would meet a step there and could have no answer.
     */
    public static final double FULL_FROM = 1e-3;

    private static final Range ANGLE =
            new Range("the loss of a converging wye", "angle", "rad", Math.toRadians(30), Math.PI / 2);
    private static final Range AREA_RATIO = new Range("the loss of a converging wye", "a", "-", 1e-3, 1);
    private static final double[] TABLE_DEGREES = {30, 45, 60, 90};
    private static final double[] TABLE_FACTOR = {1.74, 1.41, 1.00, 0};

    private final double angleFactor;
    private final double areaRatio;
    private final double runSlope;

    private JunctionLoss(double angleFactor, double areaRatio, double runSlope) {
        this.angleFactor = angleFactor;
        this.areaRatio = areaRatio;
        this.runSlope = runSlope;
    }

    /**
     * The two coefficients of one junction as functions of the flow split.
     *
     * @param angle_rad angle at which the branch enters, measured from the run's direction, 30 to 90°
     * @param areaRatio a, branch over common bore area [-], up to 1
     */
    public static JunctionLoss crane(double angle_rad, double areaRatio) {
        double degrees = Math.toDegrees(ANGLE.check(angle_rad));
        AREA_RATIO.check(areaRatio);
        int n = degrees < 45 ? 0 : degrees < 60 ? 1 : 2;
        double share = (degrees - TABLE_DEGREES[n]) / (TABLE_DEGREES[n + 1] - TABLE_DEGREES[n]);
        double factor = TABLE_FACTOR[n] + share * (TABLE_FACTOR[n + 1] - TABLE_FACTOR[n]);
        // 1 − (1 − q)² = 2q − q²; at 90° the printed run coefficient has 1.55 q in the place of 2 q
        double runSlope = n == 2 ? 2 - 0.45 * share : 2;
        return new JunctionLoss(factor, areaRatio, runSlope);
    }

    /** K of the branch on the common velocity [-], for the mass-flow ratio q, 0 to 1. */
    public double branch(double q) {
        double rest = 1 - q;
        double ratio = q / areaRatio;
        return correction(q) * (1 + ratio * ratio - 2 * rest * rest - angleFactor * q * ratio);
    }

    /** K of the run on the common velocity [-], for the mass-flow ratio q of the <em>branch</em>, 0 to 1. */
    public double run(double q) {
        return q * (runSlope - q - angleFactor * q / areaRatio);
    }

    /** F, by the angle of the branch [-]. */
    public double angleFactor() {
        return angleFactor;
    }

    /** What stands before q in the coefficient of the run: 2, at 90° 1.55 [-]. */
    public double runSlope() {
        return runSlope;
    }

    /** C, for the mass-flow ratio q [-]. */
    public double correction(double q) {
        if (areaRatio <= 0.35) {
            return 1;
        }
        if (q <= 0.4) {
            return 0.9 * (1 - q);
        }
        return q >= 0.42 ? 0.55 : 0.54 + 0.5 * (q - 0.4);
    }

    /**
     * K of the branch by the plain momentum balance, no correction and the true angle (equation TUB-15), on the common velocity.
     *
     * @source momentum along the run with equal static pressure in both entering legs
     */
    public static double momentumBranch(double angle_rad, double areaRatio, double q) {
        double ratio = q / areaRatio;
        return 1 + ratio * ratio - 2 * (1 - q) * (1 - q) - 2 * Math.cos(angle_rad) * q * ratio;
    }

    /** K of the run by the plain momentum balance (equation TUB-15), on the common velocity. */
    public static double momentumRun(double angle_rad, double areaRatio, double q) {
        return 1 - (1 - q) * (1 - q) - 2 * Math.cos(angle_rad) * q * q / areaRatio;
    }
}
