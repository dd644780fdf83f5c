package dustwright.engine.rotaryvalve;

import dustwright.engine.quantity.Range;

/** Screening of a rotary valve's gearmotor and pressure difference. */
public final class ValveDrive {
    /** Usual gearmotor of a receiver's valve, least [W]: common practice, no source. */
    public static final double USUAL_LEAST_W = 370;

    /** Usual gearmotor of a receiver's valve, greatest [W]: common practice, no source. */
    public static final double USUAL_GREATEST_W = 1500;

    /** Usual greatest pressure difference over a drop-through valve [Pa]: common practice, no source. */
    public static final double USUAL_GREATEST_DIFFERENCE_Pa = 100_000;

    private static final Range POWER = new Range("a gearmotor", "P", "W", 0, 100_000);
    private static final Range EFFICIENCY = new Range("a gearmotor", "η", "-", 0.1, 1);
    private static final Range SPEED = new Range("a gearmotor", "n", "1/s", 1e-4, 10);
    private static final Range TORQUE = new Range("a gearmotor", "T", "N·m", 0, 1e6);

    private ValveDrive() {}

    /**
     * Torque a gearmotor gives at the rotor [N·m] (equation RTV-17).
     *
     * <pre>
     * T = P η / (2 π n)
     * </pre>
     *
     * @param motor_W P of the motor [W]
     * @param gearEfficiency η of gear and chain [-]
     * @param speed_perS n of the rotor [1/s]
     * @source definition of power
     * @example torque_Nm(750, 0.85, 0.333333) = 304.38
     */
    public static double torque_Nm(double motor_W, double gearEfficiency, double speed_perS) {
        return POWER.check(motor_W) * EFFICIENCY.check(gearEfficiency) / (2 * Math.PI * SPEED.check(speed_perS));
    }

    /**
     * Motor power for a torque the rotor's maker states [W] (equation RTV-18): RTV-17 solved for P.
     *
     * <pre>
     * P = 2 π n T / η
     * </pre>
     *
     * @param torque_Nm T [N·m]
     * @param gearEfficiency η [-]
     * @param speed_perS n of the rotor [1/s]
     * @source definition of power
     * @example motor_W(304.384, 0.85, 0.333333) = 750
     */
    public static double motor_W(double torque_Nm, double gearEfficiency, double speed_perS) {
        return TORQUE.check(torque_Nm) * 2 * Math.PI * SPEED.check(speed_perS) / EFFICIENCY.check(gearEfficiency);
    }
}
