package dustwright.engine.producer;

import dustwright.engine.quantity.Range;
import dustwright.engine.quantity.Units;

/** V-belt drive between motor and producer. */
public final class BeltDrive {
    /** Greatest rim speed of ordinary cast-iron sheaves, 6500 ft/min; from memory [m/s]. */
    public static final double GREATEST_BELT_mPerS = 6500 * Units.FOOT_PER_MINUTE_mPerS;

    private static final Range SPEED = new Range("a belt drive", "n", "1/s", 0, 200);
    private static final Range DIAMETER = new Range("a belt drive", "d", "m", 0.03, 3);
    private static final Range SLIP = new Range("a belt drive", "slip", "-", 0, 0.05);

    private BeltDrive() {}

    /**
     * Speed of the producer [1/s] (equation PRD-20).
     *
     * <pre>
     * n = n_motor d_motor/d_machine (1 − slip)
     * </pre>
     *
     * @param motor_perS n_motor at full load [1/s]
     * @param motorSheave_m d_motor, pitch diameter [m]
     * @param machineSheave_m d_machine, pitch diameter [m]
     * @param slip of the belt [-], 0 to 0.05; V-belts about 0.01 (common practice, no source)
     * @source geometry
     * @example machine_perS(29.1667, 0.2, 0.19, 0.01) = 30.3947
     */
    public static double machine_perS(double motor_perS, double motorSheave_m, double machineSheave_m, double slip) {
        return SPEED.check(motor_perS)
                * DIAMETER.check(motorSheave_m)
                / DIAMETER.check(machineSheave_m)
                * (1 - SLIP.check(slip));
    }

    /**
     * Speed of the belt at a sheave's pitch circle [m/s] (equation PRD-21); cast-iron sheaves up to 33 m/s.
     *
     * <pre>
     * v = π d n
     * </pre>
     *
     * @param sheave_m d, pitch diameter [m]
     * @param speed_perS n [1/s]
     * @source geometry; limit of 6500 ft/min from memory
     * @example belt_mPerS(0.2, 29.1667) = 18.326
     */
    public static double belt_mPerS(double sheave_m, double speed_perS) {
        return Math.PI * DIAMETER.check(sheave_m) * SPEED.check(speed_perS);
    }
}
