package dustwright.engine.rotaryvalve;

import dustwright.engine.quantity.Range;

/** What a rotary valve discharges, the speed it needs, and how its pockets fill. Speeds in turns per second. */
public final class ValveCapacity {
    /** Fill of the pockets at low tip speed: default, common practice, no source [-]. */
    public static final double USUAL_FILL = 0.75;

    /** Tip speed up to which the pockets fill as usual: default, common practice, no source [m/s]. */
    public static final double FULL_FILL_TIP_mPerS = 0.3;

    /** Highest tip speed of the default fill line: common practice, no source [m/s]. */
    public static final double GREATEST_TIP_mPerS = 0.8;

    /** Fill of the pockets at the highest tip speed: default, common practice, no source [-]. */
    public static final double LEAST_FILL = 0.4;

    /** How many times the largest collection rate a valve should discharge: common practice, no source [-]. */
    public static final double USUAL_MARGIN = 1.5;

    private static final double FILL_SLOPE_sPerM =
            (USUAL_FILL - LEAST_FILL) / (GREATEST_TIP_mPerS - FULL_FILL_TIP_mPerS);

    private static final Range SWEPT = new Range("a rotary valve", "V_rev", "m³", 1e-6, 5);
    private static final Range SPEED = new Range("a rotary valve", "n", "1/s", 0, 4);
    private static final Range FILL = new Range("a rotary valve", "fill", "-", 0.01, 1);
    private static final Range DENSITY = new Range("a rotary valve", "ρ_B", "kg/m³", 5, 12_000);
    private static final Range RATE = new Range("a rotary valve", "ṁ", "kg/s", 0, 1e3);
    private static final Range DIAMETER = new Range("a rotary valve", "D", "m", 0.02, 3);
    private static final Range BLADES = new Range("a rotary valve", "blades", "-", 4, 24);
    private static final Range TIP_SPEED = new Range("the default fill line", "v_tip", "m/s", 0, GREATEST_TIP_mPerS);

    private ValveCapacity() {}

    /**
     * Dust discharged [kg/s] (equation RTV-1).
     *
     * <pre>
     * ṁ = V_rev n fill ρ_B
     * </pre>
     *
     * @param swept_m3 V_rev, all pockets in one turn [m³]
     * @param speed_perS n [1/s]
     * @param fill share of the pockets that fills [-]; 0.6 to 0.85 is quoted
     * @param bulkDensity_kgPerM3 ρ_B, loose [kg/m³]
     * @source geometry; as in public sizing articles
     * @example capacity_kgPerS(0.0113, 0.333333, 0.75, 600) = 1.695
     */
    public static double capacity_kgPerS(double swept_m3, double speed_perS, double fill, double bulkDensity_kgPerM3) {
        return SWEPT.check(swept_m3) * SPEED.check(speed_perS) * FILL.check(fill) * DENSITY.check(bulkDensity_kgPerM3);
    }

    /**
     * Speed needed to discharge a rate at a stated fill [1/s] (equation RTV-2): RTV-1 solved for n.
     *
     * <pre>
     * n = ṁ / (V_rev fill ρ_B)
     * </pre>
     *
     * @param rate_kgPerS ṁ [kg/s]
     * @param swept_m3 V_rev [m³]
     * @param fill [-]
     * @param bulkDensity_kgPerM3 ρ_B [kg/m³]
     * @source RTV-1
     * @example speed_perS(0.277778, 0.0113, 0.75, 600) = 0.0546269
     */
    public static double speed_perS(double rate_kgPerS, double swept_m3, double fill, double bulkDensity_kgPerM3) {
        return RATE.check(rate_kgPerS)
                / (SWEPT.check(swept_m3) * FILL.check(fill) * DENSITY.check(bulkDensity_kgPerM3));
    }

    /**
     * Speed of the blade tips [m/s] (equation RTV-3).
     *
     * <pre>
     * v_tip = π D n
     * </pre>
     *
     * @param rotor_m D [m]
     * @param speed_perS n [1/s]
     * @source geometry
     * @example tipSpeed_mPerS(0.25, 0.333333) = 0.261799
     */
    public static double tipSpeed_mPerS(double rotor_m, double speed_perS) {
        return Math.PI * DIAMETER.check(rotor_m) * SPEED.check(speed_perS);
    }

    /**
     * Default fill of the pockets by tip speed [-] (equation RTV-4): editable, never a measured value.
     *
     * <pre>
     * fill = 0.75 up to 0.3 m/s, then falling in a straight line to 0.4 at 0.8 m/s
     * </pre>
     *
     * @param tipSpeed_mPerS v_tip [m/s], 0 to 0.8
     * @source common practice, no source; the shape follows suppliers' curves
     * @example usualFill(0.55) = 0.575
     */
    public static double usualFill(double tipSpeed_mPerS) {
        double beyond = TIP_SPEED.check(tipSpeed_mPerS) - FULL_FILL_TIP_mPerS;
        return USUAL_FILL - FILL_SLOPE_sPerM * Math.max(0, beyond);
    }

    /**
     * Tip speed at which the default fill discharges most [m/s] (equation RTV-5): faster brings less.
     *
     * <pre>
     * v = (fill_0 + a v_0) / (2 a)       with fill = fill_0 − a (v − v_0) beyond v_0
     * </pre>
     *
     * @source maximum of v · fill(v) of RTV-4
     * @example bestTipSpeed_mPerS() = 0.685714
     */
    public static double bestTipSpeed_mPerS() {
        return (USUAL_FILL + FILL_SLOPE_sPerM * FULL_FILL_TIP_mPerS) / (2 * FILL_SLOPE_sPerM);
    }

    /**
     * Speed needed to discharge a rate when the fill falls with tip speed as in RTV-4 [1/s] (equation RTV-6); refused above the most the
     * valve can do, as turning faster does not help then.
     *
     * <pre>
     * n fill(π D n) = ṁ / (V_rev ρ_B),    the smaller root
     * </pre>
     *
     * @param rate_kgPerS ṁ [kg/s]
     * @param swept_m3 V_rev [m³]
     * @param rotor_m D [m]
     * @param bulkDensity_kgPerM3 ρ_B [kg/m³]
     * @source RTV-1 and RTV-4
     * @example speedAtUsualFill_perS(0.277778, 0.0113, 0.25, 600) = 0.0546269
     */
    public static double speedAtUsualFill_perS(
            double rate_kgPerS, double swept_m3, double rotor_m, double bulkDensity_kgPerM3) {
        double simple_perS = speed_perS(rate_kgPerS, swept_m3, USUAL_FILL, bulkDensity_kgPerM3);
        double around_m = Math.PI * DIAMETER.check(rotor_m);
        if (simple_perS * around_m <= FULL_FILL_TIP_mPerS) {
            return simple_perS;
        }
        double asked_mPerS = simple_perS * USUAL_FILL * around_m;
        double sum = USUAL_FILL + FILL_SLOPE_sPerM * FULL_FILL_TIP_mPerS;
        new Range("the default fill line", "v_tip · fill", "m/s", 0, sum * sum / (4 * FILL_SLOPE_sPerM))
                .check(asked_mPerS);
        double root = Math.sqrt(Math.max(0, sum * sum - 4 * FILL_SLOPE_sPerM * asked_mPerS));
        return (sum - root) / (2 * FILL_SLOPE_sPerM) / around_m;
    }

    /**
     * Capacity a valve should have [kg/s] (equation RTV-7): after a high-level trip it must clear the hopper while dust still arrives.
     *
     * <pre>
     * ṁ_valve = 1.5 ṁ_collected
     * </pre>
     *
     * @param collected_kgPerS largest collection rate [kg/s]
     * @source common practice, no source
     * @example capacityAsked_kgPerS(0.2) = 0.3
     */
    public static double capacityAsked_kgPerS(double collected_kgPerS) {
        return USUAL_MARGIN * RATE.check(collected_kgPerS);
    }

    /**
     * Volume swept in one turn, from a drawing [m³] (equation RTV-8).
     *
     * <pre>
     * V_rev = L [ π (D² − d²)/4 − z s (D − d)/2 ]
     * </pre>
     *
     * @param rotor_m D [m]
     * @param shaft_m d [m], below D
     * @param length_m L of the rotor [m]
     * @param blades z
     * @param blade_m s, blade thickness [m]
     * @source geometry: annulus less blades
     * @example swept_m3(0.25, 0.06, 0.25, 8, 0.006) = 0.010425
     */
    public static double swept_m3(double rotor_m, double shaft_m, double length_m, int blades, double blade_m) {
        double rotor = DIAMETER.check(rotor_m);
        double shaft = new Range("a rotary valve", "d", "m", 0, rotor).check(shaft_m);
        double annulus_m2 = Math.PI / 4 * (rotor * rotor - shaft * shaft);
        double steel_m2 = BLADES.check(blades)
                * new Range("a rotary valve", "s", "m", 0, 0.1).check(blade_m)
                * (rotor - shaft)
                / 2;
        double free_m2 = new Range("a rotary valve", "free section", "m²", 0, annulus_m2).check(annulus_m2 - steel_m2);
        return free_m2 * DIAMETER.check(length_m);
    }

    /**
     * Time in which one pocket passes the outlet [s] (equation RTV-9).
     *
     * <pre>
     * t = 1 / (z n)
     * </pre>
     *
     * @param blades z
     * @param speed_perS n [1/s], above 0
     * @source Mills, Pneumatic Conveying Design Guide, rotary valve section: 0.375 s for 8 blades at 20 rpm
     * @example pocketTime_s(8, 0.333333) = 0.375
     */
    public static double pocketTime_s(int blades, double speed_perS) {
        new Range("the pocket time", "n", "1/s", 1e-6, 4).check(speed_perS);
        return 1 / (BLADES.check(blades) * speed_perS);
    }
}
