package dustwright.engine.receiver;

import dustwright.engine.quantity.Range;

/**
 * How dust moves in a cone, from two angles of a shear cell: whether all of it moves, and how its stress compares with what an arch
 * bears. Closed forms in place of Jenike's charts; angles in radians.
 */
public final class HopperFlow {
    /** How much steeper than the limit a cone should be, so that a small change of wall or dust does not stop it [rad]. */
    public static final double STEEPER_BY_rad = Math.toRadians(3);

    private static final Range EFFECTIVE =
            new Range("mass flow in a cone", "δ", "rad", Math.toRadians(25), Math.toRadians(70));
    private static final Range HALF_ANGLE =
            new Range("the flow factor of a cone", "θ from vertical", "rad", Math.toRadians(5), Math.toRadians(60));

    private HopperFlow() {}

    /**
     * Widest half angle at which a cone still moves all its dust [rad] (equation RCV-17).
     *
     * <pre>
     * θ = 90° − ½ arccos[(1 − sin δ)/(2 sin δ)] − β,     β = ½ [φ_w + arcsin(sin φ_w / sin δ)]
     * </pre>
     *
     * @param effective_rad δ, effective angle of internal friction [rad], 25° to 70°
     * @param wall_rad φ_w, wall friction [rad], up to δ
     * @source bound of Jenike's radial stress field, as in Leung et al., J. Pharm. Sci. 108, 2019; his charts read 30.5° for the
     *     worked example of Rhodes (δ 30°, φ_w 19°)
     * @example massFlowHalfAngle_rad(0.523599, 0.331613) = 0.52685
     */
    public static double massFlowHalfAngle_rad(double effective_rad, double wall_rad) {
        double sine = Math.sin(EFFECTIVE.check(effective_rad));
        return Math.PI / 2 - Math.acos((1 - sine) / (2 * sine)) / 2 - wallTurn_rad(effective_rad, wall_rad);
    }

    /**
     * Flow factor of a cone [-] (equation RCV-18): consolidating stress over the stress in an arch at the outlet.
     *
     * <pre>
     * ff = H Y (1 + sin δ) / (2 (X − 1) sin θ),     H = (130° + θ)/65°
     * X = 2 sin δ/(1 − sin δ) [ sin(2β + θ)/sin θ + 1 ]
     * Y = { 2 [1 − cos(β + θ)] sin θ + sin β sin²(β + θ) } / { (1 − sin δ) sin³(β + θ) }
     * </pre>
     *
     * @param effective_rad δ [rad], 25° to 70°
     * @param wall_rad φ_w [rad], up to δ
     * @param halfAngle_rad θ of the cone from the vertical [rad], up to the limit of RCV-17
     * @source Arnold and McLean, Powder Technology 13, 1976; from memory. Jenike's chart reads 1.8 where it gives 1.93, and a greater
     *     flow factor asks for a wider outlet
     * @example flowFactor(0.523599, 0.331613, 0.479966) = 1.926
     */
    public static double flowFactor(double effective_rad, double wall_rad, double halfAngle_rad) {
        double theta = HALF_ANGLE.check(halfAngle_rad);
        new Range("mass flow in this cone", "θ from vertical", "rad", 0, massFlowHalfAngle_rad(effective_rad, wall_rad))
                .check(theta);
        double sine = Math.sin(effective_rad);
        double beta = wallTurn_rad(effective_rad, wall_rad);
        double both = Math.sin(beta + theta);
        double x = 2 * sine / (1 - sine) * (Math.sin(2 * beta + theta) / Math.sin(theta) + 1);
        double y = (2 * (1 - Math.cos(beta + theta)) * Math.sin(theta) + Math.sin(beta) * both * both)
                / ((1 - sine) * both * both * both);
        double h = (130 + Math.toDegrees(theta)) / 65;
        return h * y * (1 + sine) / (2 * (x - 1) * Math.sin(theta));
    }

    private static double wallTurn_rad(double effective_rad, double wall_rad) {
        double wall = new Range("mass flow in a cone", "φ_w", "rad", 0, effective_rad).check(wall_rad);
        double ratio = Math.min(1, Math.sin(wall) / Math.sin(effective_rad));
        return (wall + Math.asin(ratio)) / 2;
    }
}
