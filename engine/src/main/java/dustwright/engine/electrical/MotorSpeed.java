package dustwright.engine.electrical;

import dustwright.engine.quantity.Range;

/** Speed of an induction motor on a supply. */
public final class MotorSpeed {
    /** Slip of motors of 3 to 100 hp at full load: 1 to 3 %, small motors more; common practice, no source [-]. */
    public static final double USUAL_SLIP = 0.02;

    private static final Range FREQUENCY = new Range("motor speed", "f", "Hz", 1, 400);
    private static final Range SLIP = new Range("motor speed", "slip", "-", 0, 0.1);
    private static final Range SPEED = new Range("motor speed", "n", "1/s", 0.1, 1000);

    private MotorSpeed() {}

    /**
     * Speed of the rotating field [1/s] (equation ELE-27).
     *
     * <pre>
     * n_s = 2 f / p
     * </pre>
     *
     * @param frequency_Hz f of the supply [Hz]
     * @param poles p, even, 2 to 12
     * @source definition: one turn of the field for each pair of poles and period
     * @example synchronous_perS(60, 4) = 30
     */
    public static double synchronous_perS(double frequency_Hz, int poles) {
        if (poles < 2 || poles > 12 || poles % 2 != 0) {
            throw new IllegalArgumentException("a motor has 2, 4, 6, 8, 10 or 12 poles, not " + poles);
        }
        return 2 * FREQUENCY.check(frequency_Hz) / poles;
    }

    /**
     * Speed of the shaft at full load [1/s] (equation ELE-28).
     *
     * <pre>
     * n = n_s (1 − s)
     * </pre>
     *
     * @param synchronous_perS n_s [1/s]
     * @param slip s at full load [-], 0 to 0.1
     * @source definition of slip
     * @example fullLoad_perS(25, 0.02) = 24.5
     */
    public static double fullLoad_perS(double synchronous_perS, double slip) {
        return SPEED.check(synchronous_perS) * (1 - SLIP.check(slip));
    }

    /**
     * Nameplate speed carried to another frequency at the same slip [1/s] (equation ELE-29). Torque and heat there are the maker's word:
     * voltage must follow frequency.
     *
     * <pre>
     * n = n_0 f / f_0
     * </pre>
     *
     * @param nameplate_perS n_0 at full load [1/s]
     * @param nameplate_Hz f_0 on the nameplate [Hz]
     * @param supply_Hz f of the supply [Hz]
     * @source ELE-27 and ELE-28 at one slip
     * @example atFrequency_perS(29.1666666667, 60, 50) = 24.3055555556
     */
    public static double atFrequency_perS(double nameplate_perS, double nameplate_Hz, double supply_Hz) {
        return SPEED.check(nameplate_perS) * FREQUENCY.check(supply_Hz) / FREQUENCY.check(nameplate_Hz);
    }

    /**
     * Frequency a drive must give for a speed of the machine [Hz] (equation ELE-30).
     *
     * <pre>
     * f_drive = f n / n_f
     * </pre>
     *
     * @param machine_perS n asked of the machine [1/s]
     * @param onSupply_perS n_f, its speed at the frequency f [1/s]
     * @param supply_Hz f of the supply [Hz]
     * @source ELE-27 and ELE-28 at one slip
     * @example drive_Hz(15, 30, 60) = 30
     */
    public static double drive_Hz(double machine_perS, double onSupply_perS, double supply_Hz) {
        return FREQUENCY.check(supply_Hz) * SPEED.check(machine_perS) / SPEED.check(onSupply_perS);
    }
}
