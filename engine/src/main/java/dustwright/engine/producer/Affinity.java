package dustwright.engine.producer;

import dustwright.engine.quantity.Range;

/**
 * Affinity laws of dynamic machines (centrifugal, side-channel): the same point of the curve at another speed or inlet density. They do
 * not apply to displacement machines, where the system sets the pressure difference.
 */
public final class Affinity {
    private static final Range SPEED = new Range("the affinity laws", "n/n_1", "-", 0.2, 1.5);
    private static final Range DENSITY = new Range("the affinity laws", "ρ/ρ_1", "-", 0.1, 2);
    private static final Range VALUE = new Range("the affinity laws", "value", "SI", 0, 1e9);

    private Affinity() {}

    /**
     * Inlet volume flow at another speed, in the unit given (equation PRD-12).
     *
     * <pre>
     * Q = Q_1 (n/n_1)
     * </pre>
     *
     * @param flow Q_1
     * @param speedRatio n/n_1 [-], 0.2 to 1.5
     * @source ASHRAE Handbook, Fans; AMCA 201
     * @example flow(1000, 0.84507) = 845.07
     */
    public static double flow(double flow, double speedRatio) {
        return VALUE.check(flow) * SPEED.check(speedRatio);
    }

    /**
     * Pressure rise at another speed and density at the machine's <em>own</em> inlet, in the unit given (equation PRD-13). A deep system
     * vacuum or a high site lowers it. At small pressure ratio.
     *
     * <pre>
     * Δp = Δp_1 (ρ/ρ_1) (n/n_1)²
     * </pre>
     *
     * @param rise Δp_1
     * @param speedRatio n/n_1 [-], 0.2 to 1.5
     * @param densityRatio ρ/ρ_1 [-], 0.1 to 2
     * @source ASHRAE Handbook, Fans; AMCA 201
     * @example rise(80, 0.84507, 1) = 57.1315
     */
    public static double rise(double rise, double speedRatio, double densityRatio) {
        double speed = SPEED.check(speedRatio);
        return VALUE.check(rise) * DENSITY.check(densityRatio) * speed * speed;
    }

    /**
     * Shaft power at another speed and inlet density, in the unit given (equation PRD-14).
     *
     * <pre>
     * P = P_1 (ρ/ρ_1) (n/n_1)³
     * </pre>
     *
     * @param power P_1
     * @param speedRatio n/n_1 [-], 0.2 to 1.5
     * @param densityRatio ρ/ρ_1 [-], 0.1 to 2
     * @source ASHRAE Handbook, Fans; AMCA 201
     * @example power(30, 0.84507, 1) = 18.1051
     */
    public static double power(double power, double speedRatio, double densityRatio) {
        double speed = SPEED.check(speedRatio);
        return VALUE.check(power) * DENSITY.check(densityRatio) * speed * speed * speed;
    }
}
