package dustwright.engine.receiver;

import dustwright.engine.quantity.Range;
import dustwright.engine.quantity.Units;

/**
 * Pressure drop over filter cloth and how it grows as dust collects on it. Velocities are filtration velocities: actual flow at the
 * filter over net cloth area.
 */
public final class FilterDrop {
    private static final Range VELOCITY = new Range("filter pressure drop", "V", "m/s", 0, 0.2);
    private static final Range DRAG = new Range("filter pressure drop", "S_e", "Pa·s/m", 0, 1e7);
    private static final Range CAKE = new Range("filter pressure drop", "K_2", "1/s", 0, 1e7);
    private static final Range LOAD = new Range("filter pressure drop", "W", "kg/m²", 0, 50);
    private static final Range CONCENTRATION = new Range("dust collected on cloth", "C", "kg/m³", 0, 100);
    private static final Range TIME = new Range("dust collected on cloth", "t", "s", 0, 1e9);
    private static final Range PULSE =
            new Range("the pulse-jet residual", "Pj", "Pa gauge", 59.9 * Units.PSI_Pa, 100.1 * Units.PSI_Pa);
    private static final Range POSITIVE = new Range("the cleaning interval", "value", "SI", Double.MIN_NORMAL, 1e12);

    private FilterDrop() {}

    /**
     * Pressure drop of conditioned cloth with a dust cake [Pa] (equation FLT-2).
     *
     * <pre>
     * Δp = S_e V + K_2 W V
     * </pre>
     *
     * @param velocity_mPerS V, filtration velocity [m/s], 0 to 0.2
     * @param drag_PaSPerM S_e, effective residual drag of the cleaned cloth [Pa·s/m]
     * @param cake_perS K_2, specific resistance of the cake [1/s], that is Pa/((m/s)(kg/m²)); 5e4 to 2e5 is a common span, from memory
     * @param load_kgPerM2 W, dust on the cloth [kg/m²]
     * @source EPA Air Pollution Control Cost Manual, 6th ed., EPA/452/B-02-001, Section 6 Chapter 1
     * @example drop_Pa(0.02032, 14710, 100428, 0.24412) = 797.1
     */
    public static double drop_Pa(double velocity_mPerS, double drag_PaSPerM, double cake_perS, double load_kgPerM2) {
        return resistance_PaSPerM(drag_PaSPerM, cake_perS, load_kgPerM2) * VELOCITY.check(velocity_mPerS);
    }

    /**
     * Resistance of conditioned cloth with a dust cake [Pa·s/m] (equation FLT-2).
     *
     * <pre>
     * S = S_e + K_2 W
     * </pre>
     *
     * @param drag_PaSPerM S_e [Pa·s/m]
     * @param cake_perS K_2 [1/s]
     * @param load_kgPerM2 W [kg/m²], 0 to 50
     * @source as {@link #drop_Pa}, over the velocity
     * @example resistance_PaSPerM(14710, 100428, 0.24412) = 39226.5
     */
    public static double resistance_PaSPerM(double drag_PaSPerM, double cake_perS, double load_kgPerM2) {
        return DRAG.check(drag_PaSPerM) + CAKE.check(cake_perS) * LOAD.check(load_kgPerM2);
    }

    /**
     * Dust collected on each square metre of cloth [kg/m²] (equation FLT-3).
     *
     * <pre>
     * W = C V t
     * </pre>
     *
     * @param concentration_kgPerM3 C, dust per actual volume of air at the filter [kg/m³]
     * @param velocity_mPerS V [m/s], 0 to 0.2
     * @param time_s t since the cloth was cleaned [s]
     * @source EPA Cost Manual, as FLT-2
     * @example load_kgPerM2(0.00915, 0.0254, 600) = 0.13945
     */
    public static double load_kgPerM2(double concentration_kgPerM3, double velocity_mPerS, double time_s) {
        return CONCENTRATION.check(concentration_kgPerM3) * VELOCITY.check(velocity_mPerS) * TIME.check(time_s);
    }

    /**
     * Pressure drop that stays after each pulse [Pa] (equation FLT-4), fitted for fly ash on polyester felt: other dusts differ.
     *
     * <pre>
     * (PE)dw = 6.08 V Pj^−0.65     inH2O, with V in ft/min and Pj in psi gauge
     * </pre>
     *
     * @param velocity_mPerS V [m/s], 0 to 0.2
     * @param pulse_Pa Pj, pulse pressure [Pa gauge], 60 to 100 psi. Inside a receiver under vacuum the difference to the receiver counts
     * @source EPA Cost Manual, as FLT-2; reproduces 3.3137 inH2O of its worked example together with FLT-5
     * @example residual_Pa(0.0254, 413685) = 529.0
     */
    public static double residual_Pa(double velocity_mPerS, double pulse_Pa) {
        double feetPerMinute = VELOCITY.check(velocity_mPerS) / Units.FOOT_PER_MINUTE_mPerS;
        double psi = PULSE.check(pulse_Pa) / Units.PSI_Pa;
        return 6.08 * feetPerMinute * Math.pow(psi, -0.65) * Units.INCH_OF_WATER_Pa;
    }

    /**
     * Pressure drop of a pulse-jet filter with the dust of one cleaning cycle [Pa] (equation FLT-5).
     *
     * <pre>
     * Δp = (PE)dw + K_2 W V
     * </pre>
     *
     * @param velocity_mPerS V [m/s], 0 to 0.2
     * @param pulse_Pa Pj [Pa gauge], 60 to 100 psi
     * @param cake_perS K_2 [1/s]
     * @param load_kgPerM2 W of one cycle [kg/m²]
     * @source EPA Cost Manual, as FLT-2
     * @example pulseJet_Pa(0.0254, 413685, 150642, 0.1395) = 1062.8
     */
    public static double pulseJet_Pa(double velocity_mPerS, double pulse_Pa, double cake_perS, double load_kgPerM2) {
        return residual_Pa(velocity_mPerS, pulse_Pa) + drop_Pa(velocity_mPerS, 0, cake_perS, load_kgPerM2);
    }

    /**
     * Dust the cloth may carry before its pressure drop reaches a limit [kg/m²] (equation FLT-6); zero where cleaned cloth alone
     * reaches it.
     *
     * <pre>
     * W = (Δp_limit / V − S_e) / K_2
     * </pre>
     *
     * @param limit_Pa Δp_limit: what the producer can spare while the tools keep their vacuum [Pa], above 0
     * @param velocity_mPerS V [m/s], above 0
     * @param drag_PaSPerM S_e [Pa·s/m]
     * @param cake_perS K_2 [1/s], above 0
     * @source FLT-2 solved for W
     * @example loadAt_kgPerM2(1500, 0.02, 15000, 100000) = 0.6
     */
    public static double loadAt_kgPerM2(double limit_Pa, double velocity_mPerS, double drag_PaSPerM, double cake_perS) {
        double spare_PaSPerM =
                POSITIVE.check(limit_Pa) / VELOCITY.check(POSITIVE.check(velocity_mPerS)) - DRAG.check(drag_PaSPerM);
        return Math.max(0, spare_PaSPerM / CAKE.check(POSITIVE.check(cake_perS)));
    }

    /**
     * Running time between off-line cleanings [s] (equation FLT-7): until the dust that reaches the cloth has brought the load of FLT-6.
     *
     * <pre>
     * t = W A / (ṁ (1 − η_pre))
     * </pre>
     *
     * @param load_kgPerM2 W allowed [kg/m²]
     * @param cloth_m2 A, net cloth area [m²], above 0
     * @param dust_kgPerS ṁ, dust into the receiver while it runs [kg/s], above 0
     * @param separatedBefore η_pre, share that falls out before the cloth [-], 0 to below 1; 0 where nothing is known
     * @source mass balance over the cloth
     * @example interval_s(0.6, 9, 0.01, 0) = 540
     */
    public static double interval_s(double load_kgPerM2, double cloth_m2, double dust_kgPerS, double separatedBefore) {
        double reaching = 1 - new Range("the cleaning interval", "η_pre", "-", 0, 0.999).check(separatedBefore);
        return LOAD.check(load_kgPerM2) * POSITIVE.check(cloth_m2) / (POSITIVE.check(dust_kgPerS) * reaching);
    }
}
