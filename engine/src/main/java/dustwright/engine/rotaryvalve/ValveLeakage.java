package dustwright.engine.rotaryvalve;

import dustwright.engine.quantity.Range;
import dustwright.engine.tubing.Nozzle;

/**
 * Air a rotary valve lets up into a receiver under vacuum: with its empty pockets and through its clearances. Three published ways to
 * count the clearances differ by a factor of two, and no general measured curve is public: a maker's leak chart of the empty valve
 * overrules them all. Dust in the valve reduces the leak.
 */
public final class ValveLeakage {
    /** Widest tip clearance quoted for high pressure and for explosion isolation [m]; above it the valve is worn. */
    public static final double WIDEST_CLEARANCE_m = 0.0002;

    private static final Range SWEPT = new Range("valve leakage", "V_rev", "m³", 1e-6, 5);
    private static final Range SPEED = new Range("valve leakage", "n", "1/s", 0, 4);
    private static final Range DENSITY = new Range("valve leakage", "ρ", "kg/m³", 0.05, 10);
    private static final Range PRESSURE = new Range("valve leakage", "p", "Pa absolute", 1000, 1e6);
    private static final Range RT = new Range("valve leakage", "R T", "J/kg", 50_000, 150_000);
    private static final Range AREA = new Range("valve leakage", "A", "m²", 0, 0.1);
    private static final Range DISCHARGE = new Range("valve leakage", "Cd", "-", 0.3, 1);
    private static final Range TIPS = new Range("the labyrinth", "tips", "-", 1, 12);
    private static final Range LENGTH = new Range("clearance area", "L", "m", 0.01, 3);
    private static final Range CLEARANCE = new Range("clearance area", "gap", "m", 0, 0.005);

    private ValveLeakage() {}

    /**
     * Air carried up by the returning pockets [kg/s] (equation RTV-10): each full of air from below.
     *
     * <pre>
     * w = V_rev n ρ_below
     * </pre>
     *
     * @param swept_m3 V_rev [m³]
     * @param speed_perS n [1/s]
     * @param densityBelow_kgPerM3 ρ_below, air on the high-pressure side: of the room, not of the receiver [kg/m³]
     * @source Mills, Pneumatic Conveying Design Guide: returning pocket leakage
     * @example pockets_kgPerS(0.0113, 0.333333, 1.20412) = 0.0045355
     */
    public static double pockets_kgPerS(double swept_m3, double speed_perS, double densityBelow_kgPerM3) {
        return SWEPT.check(swept_m3) * SPEED.check(speed_perS) * DENSITY.check(densityBelow_kgPerM3);
    }

    /**
     * The same air as the receiver sees it [m³/s] (equation RTV-11): it has expanded to the receiver's pressure.
     *
     * <pre>
     * Q = w R T / p
     * </pre>
     *
     * @param leak_kgPerS w [kg/s]
     * @param receiver_Pa p, absolute [Pa]
     * @param rt_JPerKg R T of the air [J/kg]
     * @source ideal gas
     * @example inReceiver_m3PerS(0.00453551, 60688.3, 84148.7) = 0.0062888
     */
    public static double inReceiver_m3PerS(double leak_kgPerS, double receiver_Pa, double rt_JPerKg) {
        return new Range("valve leakage", "w", "kg/s", 0, 100).check(leak_kgPerS)
                * RT.check(rt_JPerKg)
                / PRESSURE.check(receiver_Pa);
    }

    /**
     * Clearance area along the blade tips [m²] (equation RTV-12). Side clearances come on top.
     *
     * <pre>
     * A = 2 L s
     * </pre>
     *
     * @param length_m L of the rotor [m]
     * @param gap_m s at the tips [m]; 0.1 to 0.2 mm new, more with wear
     * @source geometry
     * @example tipArea_m2(0.25, 0.00015) = 7.5e-5
     */
    public static double tipArea_m2(double length_m, double gap_m) {
        return 2 * LENGTH.check(length_m) * CLEARANCE.check(gap_m);
    }

    /**
     * Leak through clearances as an incompressible orifice [kg/s] (equation RTV-13). It does not know choking and tells too much: 30 %
     * at 12 inHg. For small differences only.
     *
     * <pre>
     * w = Cd A √(2 ρ Δp)
     * </pre>
     *
     * @param discharge Cd [-], about 0.6
     * @param area_m2 A [m²]
     * @param density_kgPerM3 ρ upstream [kg/m³]
     * @param difference_Pa Δp [Pa]
     * @source orifice equation
     * @example orifice_kgPerS(0.6, 1.5e-4, 1.2, 40637) = 0.028107
     */
    public static double orifice_kgPerS(
            double discharge, double area_m2, double density_kgPerM3, double difference_Pa) {
        new Range("valve leakage", "Δp", "Pa", 0, 1e5).check(difference_Pa);
        return DISCHARGE.check(discharge)
                * AREA.check(area_m2)
                * Math.sqrt(2 * DENSITY.check(density_kgPerM3) * difference_Pa);
    }

    /**
     * Leak through clearances as an isentropic nozzle that can choke [kg/s] (equation RTV-14), as the network takes it.
     *
     * <pre>
     * as TUB-21; chokes at p_receiver/p_below = 0.528282
     * </pre>
     *
     * @param discharge Cd [-], about 0.6
     * @param area_m2 A [m²]
     * @param below_Pa pressure below the valve, absolute [Pa]
     * @param receiver_Pa pressure in the receiver, absolute [Pa]
     * @param rt_JPerKg R T of the air below [J/kg]
     * @source Perry's Chemical Engineers' Handbook, flow through nozzles
     * @example nozzle_kgPerS(0.6, 1.5e-4, 101325, 60688, 84148.7) = 0.021287
     */
    public static double nozzle_kgPerS(
            double discharge, double area_m2, double below_Pa, double receiver_Pa, double rt_JPerKg) {
        return Nozzle.massFlow_kgPerS(
                DISCHARGE.check(discharge) * AREA.check(area_m2),
                PRESSURE.check(below_Pa),
                receiverUpTo(below_Pa, receiver_Pa),
                RT.check(rt_JPerKg));
    }

    /**
     * Leak through several tips in series [kg/s] (equation RTV-15), the best physics of the three. The last tip chokes: below the
     * pressure ratio at which the formula is greatest, the leak stays at that greatest value.
     *
     * <pre>
     * w = Cd A p1/√(R T) √( (1 − r²)/(n + ln(1/r)) ),     r = p2/p1
     * </pre>
     *
     * @param discharge Cd [-], about 0.6
     * @param area_m2 A of one tip gap [m²]
     * @param tips n in series between below and receiver
     * @param below_Pa p1, absolute [Pa]
     * @param receiver_Pa p2, absolute [Pa]
     * @param rt_JPerKg R T of the air below [J/kg]
     * @source Martin, Engineering (London), 1908, labyrinth packings; from memory
     * @example labyrinth_kgPerS(0.6, 1.5e-4, 3, 101325, 60688, 84148.7) = 0.013432
     */
    public static double labyrinth_kgPerS(
            double discharge, double area_m2, int tips, double below_Pa, double receiver_Pa, double rt_JPerKg) {
        TIPS.check(tips);
        double ratio =
                Math.max(receiverUpTo(below_Pa, receiver_Pa) / PRESSURE.check(below_Pa), labyrinthChokeRatio(tips));
        return DISCHARGE.check(discharge)
                * AREA.check(area_m2)
                * below_Pa
                / Math.sqrt(RT.check(rt_JPerKg))
                * Math.sqrt((1 - ratio * ratio) / (tips - Math.log(ratio)));
    }

    /**
     * Pressure ratio at which Martin's labyrinth passes most [-]: there {@code 2 r² (n + ln 1/r) = 1 − r²}, found by halving between 0
     * and 1, where the difference of both sides changes sign once.
     */
    static double labyrinthChokeRatio(int tips) {
        double low = 1e-6;
        double high = 1;
        for (int n = 0; n < 60; n++) {
            double r = (low + high) / 2;
            if (2 * r * r * (tips - Math.log(r)) < 1 - r * r) {
                low = r;
            } else {
                high = r;
            }
        }
        return (low + high) / 2;
    }

    /**
     * Vacuum in the receiver at which a single clearance chokes [Pa] (equation RTV-16).
     *
     * <pre>
     * vacuum = p_a (1 − 0.528282)
     * </pre>
     *
     * @param ambient_Pa p_a, the site's barometer [Pa]
     * @source isentropic flow, γ = 1.4
     * @example chokingVacuum_Pa(101325) = 47797
     */
    public static double chokingVacuum_Pa(double ambient_Pa) {
        return PRESSURE.check(ambient_Pa) * (1 - Nozzle.CRITICAL_RATIO);
    }

    private static double receiverUpTo(double below_Pa, double receiver_Pa) {
        return new Range("leakage into a receiver", "p_receiver", "Pa absolute", 1000, below_Pa).check(receiver_Pa);
    }
}
