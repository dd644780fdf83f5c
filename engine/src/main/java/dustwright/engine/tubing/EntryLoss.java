package dustwright.engine.tubing;

import dustwright.engine.quantity.Range;

/**
 * Loss where air enters a tube from a room or a vessel (equation TUB-17), on the velocity of the tube. The velocity head the air
 * gains besides is not in it: static pressure falls by {@code (1 + K) ρ v²/2}.
 */
public final class EntryLoss {
    /** Sharp edge flush with a wall: Crane TP-410, Idelchik. */
    public static final double SHARP_CRANE = 0.5;

    /** Sharp edge flush with a wall, the newer fit: Rennels and Hudson 2012. */
    public static final double SHARP_RENNELS = 0.57;

    /** Tube reaching into the room: Crane TP-410. */
    public static final double REENTRANT_CRANE = 0.78;

    /** Leaving a tube into a large vessel: the whole velocity head is lost. */
    public static final double EXIT = 1;

    private static final Range WALL = new Range("the loss of a re-entrant tube", "t/D", "-", 0, 0.05);
    private static final Range ROUNDING = new Range("the loss of a rounded entry", "r/D", "-", 0, 1);
    private static final Range AXIS =
            new Range("the loss of a slanted entry", "angle", "rad", Math.toRadians(20), Math.PI / 2);
    private static final Range BEVEL_ANGLE = new Range("the loss of a bevelled entry", "angle", "rad", 0, Math.PI);
    private static final Range BEVEL_LENGTH = new Range("the loss of a bevelled entry", "l/D", "-", 0.025, 0.6);

    private static final double[] IDELCHIK_WALL = {0, 0.004, 0.008, 0.012, 0.016, 0.02, 0.024, 0.03, 0.04, 0.05};
    private static final double[] IDELCHIK_REENTRANT = {1, 0.94, 0.88, 0.83, 0.77, 0.72, 0.68, 0.61, 0.54, 0.5};
    private static final double[] CRANE_ROUNDING = {0, 0.02, 0.04, 0.06, 0.1, 0.15};
    private static final double[] CRANE_ROUNDED = {0.5, 0.28, 0.24, 0.15, 0.09, 0.04};
    private static final double[] BEVEL_LENGTHS = {0.025, 0.05, 0.075, 0.1, 0.15, 0.6};
    private static final double[] BEVEL_DEGREES = {0, 10, 20, 30, 40, 60, 100, 140, 180};
    private static final double[][] BEVELLED = {
        {0.5, 0.47, 0.45, 0.43, 0.41, 0.4, 0.42, 0.45, 0.5},
        {0.5, 0.45, 0.41, 0.36, 0.33, 0.3, 0.35, 0.42, 0.5},
        {0.5, 0.42, 0.35, 0.3, 0.26, 0.23, 0.3, 0.4, 0.5},
        {0.5, 0.39, 0.32, 0.25, 0.22, 0.18, 0.27, 0.38, 0.5},
        {0.5, 0.37, 0.27, 0.2, 0.16, 0.15, 0.25, 0.37, 0.5},
        {0.5, 0.27, 0.18, 0.13, 0.11, 0.12, 0.23, 0.36, 0.5}
    };

    private EntryLoss() {}

    /**
     * Tube reaching into the room by half a bore or more, by wall thickness over bore [-], 0 to 0.05; linear between table values.
     *
     * @source Idelchik, Handbook of Hydraulic Resistance, entry into a straight tube at a distance from the wall
     */
    public static double reentrantIdelchik(double wallOverBore) {
        return between(IDELCHIK_WALL, IDELCHIK_REENTRANT, WALL.check(wallOverBore));
    }

    /**
     * Tube reaching into the room, by wall thickness over bore [-], 0 to 0.05.
     *
     * <pre>
     * K = 1.12 − 22 t/D + 216 (t/D)² + 80 (t/D)³
     * </pre>
     *
     * @source Rennels and Hudson, Pipe Flow, 2012
     */
    public static double reentrantRennels(double wallOverBore) {
        double t = WALL.check(wallOverBore);
        return 1.12 + t * (-22 + t * (216 + t * 80));
    }

    /**
     * Rounded entry flush with a wall, by radius of the rounding over bore [-], 0 to 1.
     *
     * <pre>
     * K = 0.0696 (1 − 0.569 r/D) λ² + (λ − 1)²,   λ = 1 + 0.622 (1 − 0.30 √(r/D) − 0.70 r/D)⁴
     * </pre>
     *
     * @source Rennels and Hudson, Pipe Flow, 2012
     * @example roundedRennels(0.15) = 0.14849219
     */
    public static double roundedRennels(double radiusOverBore) {
        double r = ROUNDING.check(radiusOverBore);
        double sharpness = 1 - 0.30 * Math.sqrt(r) - 0.70 * r;
        double jet = 1 + 0.622 * sharpness * sharpness * sharpness * sharpness;
        return 0.0696 * (1 - 0.569 * r) * jet * jet + (jet - 1) * (jet - 1);
    }

    /**
     * Rounded entry flush with a wall, by radius of the rounding over bore [-]; linear between table values, level from 0.15.
     *
     * @source Crane TP-410
     */
    public static double roundedCrane(double radiusOverBore) {
        double r = Math.min(ROUNDING.check(radiusOverBore), CRANE_ROUNDING[CRANE_ROUNDING.length - 1]);
        return between(CRANE_ROUNDING, CRANE_ROUNDED, r);
    }

    /**
     * Sharp entry of a tube that meets the wall at a slant, by the angle between its axis and the wall [rad], 20 to 90°. At 90° it
     * gives 0.57, not 0.5.
     *
     * <pre>
     * K = 0.57 + 0.30 cos t + 0.20 cos² t
     * </pre>
     *
     * @source Idelchik, Handbook of Hydraulic Resistance
     */
    public static double slantedIdelchik(double axisToWall_rad) {
        double cosine = Math.cos(AXIS.check(axisToWall_rad));
        return 0.57 + cosine * (0.30 + cosine * 0.20);
    }

    /**
     * Bevelled entry flush with a wall; linear between table values both ways.
     *
     * @param included_rad full angle of the bevel's cone [rad], 0 to 180°; twice the angle from the axis
     * @param lengthOverBore length of the bevel along the axis over bore [-], 0.025 to 0.6
     * @source Idelchik, Handbook of Hydraulic Resistance, conical entry flush with a wall
     */
    public static double bevelledIdelchik(double included_rad, double lengthOverBore) {
        double degrees = Math.min(Math.toDegrees(BEVEL_ANGLE.check(included_rad)), 180);
        int row = interval(BEVEL_LENGTHS, BEVEL_LENGTH.check(lengthOverBore));
        double shorter = between(BEVEL_DEGREES, BEVELLED[row], degrees);
        double longer = between(BEVEL_DEGREES, BEVELLED[row + 1], degrees);
        double share = (lengthOverBore - BEVEL_LENGTHS[row]) / (BEVEL_LENGTHS[row + 1] - BEVEL_LENGTHS[row]);
        return shorter + share * (longer - shorter);
    }

    private static double between(double[] x, double[] y, double place) {
        int n = interval(x, place);
        return y[n] + (place - x[n]) / (x[n + 1] - x[n]) * (y[n + 1] - y[n]);
    }

    private static int interval(double[] x, double place) {
        int n = 0;
        while (n < x.length - 2 && place > x[n + 1]) {
            n++;
        }
        return n;
    }
}
