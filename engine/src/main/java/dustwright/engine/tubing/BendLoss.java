package dustwright.engine.tubing;

import dustwright.engine.quantity.Range;

/**
 * Loss of a smooth round bend (equation TUB-13), on the velocity of its own bore. Linear in the friction factor, so a run adds k1
 * to L/D and k0 to ΣK and stays exact at every Reynolds number. The wall friction along the bend is in it: the straight length of
 * a run is its corner-to-corner length less both {@link #tangent_m tangents}.
 *
 * <pre>
 * K = k0 + k1 f
 * k0 = 0.10 sin(α/2)
 * k1 = α r/D + 2.4 sin(α/2) + 6.6 [√sin(α/2) + sin(α/2)] / (r/D)^(4α/π)
 * </pre>
 *
 * @param constant k0 [-]
 * @param perFriction k1, multiplies the Darcy factor of the run [-]
 * @source Rennels and Hudson, Pipe Flow, 2012, chapter 15; spread between published methods 5 to 25 %
 */
public record BendLoss(double constant, double perFriction) {
    private static final Range ANGLE = new Range("the loss of a bend", "α", "rad", 0, Math.PI);
    private static final Range RADIUS = new Range("the loss of a bend", "r/D", "-", 0.5, 100);

    /** Loss of a bend by its angle [rad], 0 to π, and centre-line radius over bore [-], 0.5 to 100. */
    public static BendLoss rennels(double angle_rad, double radiusOverBore) {
        double half = Math.sin(ANGLE.check(angle_rad) / 2);
        double turning = Math.pow(RADIUS.check(radiusOverBore), -4 * angle_rad / Math.PI);
        return new BendLoss(
                0.10 * half, angle_rad * radiusOverBore + 2.4 * half + 6.6 * (Math.sqrt(half) + half) * turning);
    }

    /** K at a Darcy friction factor [-]. */
    public double k(double darcy) {
        return constant + perFriction * darcy;
    }

    /**
     * Length of straight tube that a bend replaces on each side of its corner [m] (equation TUB-14): {@code r tan(α/2)}.
     *
     * @param angle_rad change of direction [rad], below π
     */
    public static double tangent_m(double angle_rad, double radius_m) {
        return radius_m * Math.tan(angle_rad / 2);
    }
}
