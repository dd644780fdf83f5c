package dustwright.engine.tubing;

import dustwright.engine.quantity.Range;

/**
 * Darcy friction factor f of a round tube: four times Fanning's. The network calls {@link #darcy}; the formulas of single authors
 * keep their own range and refuse the rest.
 */
public final class Friction {
    /** Up to here the network takes laminar flow [-]. */
    public static final double LAMINAR_UP_TO = 2000;

    /** From here on the network takes Colebrook's factor [-]. */
    public static final double TURBULENT_FROM = 4000;

    private static final double TWO_OVER_LN10 = 2 / Math.log(10);
    private static final Range LAMINAR = new Range("laminar friction", "Re", "-", Double.MIN_NORMAL, 2300);
    private static final Range TURBULENT = new Range("turbulent friction", "Re", "-", 2300, 1e9);
    private static final Range ANY_FLOW = new Range("Churchill's friction", "Re", "-", Double.MIN_NORMAL, 1e9);
    private static final Range ROUGHNESS = new Range("tube friction", "ε/D", "-", 0, 0.1);

    private Friction() {}

    /**
     * Reynolds number from mass flow, the same all along an isothermal leg (equation TUB-1).
     *
     * <pre>
     * Re = 4 |w| / (π D μ)
     * </pre>
     */
    public static double reynolds(double massFlow_kgPerS, double bore_m, double viscosity_PaS) {
        return 4 * Math.abs(massFlow_kgPerS) / (Math.PI * bore_m * viscosity_PaS);
    }

    /**
     * Darcy factor at every Reynolds number above zero, as the network takes it (equation TUB-4): laminar up to 2000, Colebrook
     * from 4000, between them a smooth blend of both. Not range-checked and free of allocation: it is called in the solver's inner
     * loop. At rest f has no value, but {@code f·Re} tends to 64.
     *
     * <pre>
     * f = (1 − s) · 64/Re + s · f_Colebrook(Re),   s = x² (3 − 2x),   x = (Re − 2000)/2000
     * </pre>
     *
     * @param reynolds Re [-], above 0
     * @param relativeRoughness ε/D, wall roughness over bore [-]
     * @source Hagen and Poiseuille; Colebrook 1939; the blend between is our reading
     */
    public static double darcy(double reynolds, double relativeRoughness) {
        if (reynolds <= LAMINAR_UP_TO) {
            return 64 / reynolds;
        }
        double turbulent = solveColebrook(reynolds, relativeRoughness);
        if (reynolds >= TURBULENT_FROM) {
            return turbulent;
        }
        double x = (reynolds - LAMINAR_UP_TO) / (TURBULENT_FROM - LAMINAR_UP_TO);
        double share = x * x * (3 - 2 * x);
        return (1 - share) * 64 / reynolds + share * turbulent;
    }

    /**
     * Darcy factor of laminar flow, Re up to 2300 (equation TUB-3).
     *
     * <pre>
     * f = 64 / Re
     * </pre>
     *
     * @source Hagen 1839, Poiseuille 1841
     * @example laminar(1500) = 0.0426666667
     */
    public static double laminar(double reynolds) {
        return 64 / LAMINAR.check(reynolds);
    }

    /**
     * Darcy factor of turbulent flow (equation TUB-2), solved to the last digits by Newton steps on 1/√f.
     *
     * <pre>
     * 1/√f = −2 · log10[ (ε/D)/3.7 + 2.51/(Re √f) ]
     * </pre>
     *
     * @param reynolds Re [-], 2300 to 1e9
     * @param relativeRoughness ε/D [-], 0 to 0.1
     * @source Colebrook, J. Inst. Civ. Eng. 11(4), 1939, 133-156
     * @example colebrook(1e5, 1e-3) = 0.022174536
     */
    public static double colebrook(double reynolds, double relativeRoughness) {
        TURBULENT.check(reynolds);
        ROUGHNESS.check(relativeRoughness);
        return solveColebrook(reynolds, relativeRoughness);
    }

    /**
     * Colebrook's equation in x = 1/√f. One direct substitution from x = 7 lands within 0.6 of the root, then Newton's error falls
     * as 0.02 · error²: a step below 1e-7 leaves nothing to correct in double precision.
     */
    private static double solveColebrook(double reynolds, double relativeRoughness) {
        double wall = relativeRoughness / 3.7;
        double viscous = 2.51 / reynolds;
        double x = -TWO_OVER_LN10 * Math.log(wall + 7 * viscous);
        for (int n = 0; n < 8; n++) {
            double argument = wall + viscous * x;
            double step = (x + TWO_OVER_LN10 * Math.log(argument)) / (1 + TWO_OVER_LN10 * viscous / argument);
            x -= step;
            if (Math.abs(step) < 1e-7) {
                break;
            }
        }
        return 1 / (x * x);
    }

    /**
     * Darcy factor of turbulent flow, explicit (equation TUB-10); within 1.5 % of Colebrook from Re 4000.
     *
     * <pre>
     * 1/√f = −1.8 · log10[ ((ε/D)/3.7)^1.11 + 6.9/Re ]
     * </pre>
     *
     * @param reynolds Re [-], 2300 to 1e9
     * @param relativeRoughness ε/D [-], 0 to 0.1
     * @source Haaland, J. Fluids Eng. 105(1), 1983, 89-90
     * @example haaland(1e5, 1e-4) = 0.018265053
     */
    public static double haaland(double reynolds, double relativeRoughness) {
        TURBULENT.check(reynolds);
        ROUGHNESS.check(relativeRoughness);
        double inverseRoot = -1.8 * Math.log10(Math.pow(relativeRoughness / 3.7, 1.11) + 6.9 / reynolds);
        return 1 / (inverseRoot * inverseRoot);
    }

    /**
     * Darcy factor of any flow, laminar to fully rough, explicit (equation TUB-11); within 3.1 % of Colebrook from Re 4000.
     *
     * <pre>
     * f = 8 [ (8/Re)^12 + (A + B)^−1.5 ]^(1/12),  A = [2.457 ln 1/((7/Re)^0.9 + 0.27 ε/D)]^16,  B = (37530/Re)^16
     * </pre>
     *
     * @param reynolds Re [-], above 0 to 1e9
     * @param relativeRoughness ε/D [-], 0 to 0.1
     * @source Churchill, Chem. Eng. 84(24), 1977, 91-92
     */
    public static double churchill(double reynolds, double relativeRoughness) {
        ANY_FLOW.check(reynolds);
        ROUGHNESS.check(relativeRoughness);
        double a = Math.pow(-2.457 * Math.log(Math.pow(7 / reynolds, 0.9) + 0.27 * relativeRoughness), 16);
        double b = Math.pow(37_530 / reynolds, 16);
        return 8 * Math.pow(Math.pow(8 / reynolds, 12) + Math.pow(a + b, -1.5), 1.0 / 12);
    }

    /**
     * Darcy factor of turbulent flow, explicit (equation TUB-12); within 3.4 % of Colebrook from Re 4000.
     *
     * <pre>
     * f = 0.25 / [ log10( (ε/D)/3.7 + 5.74/Re^0.9 ) ]²
     * </pre>
     *
     * @param reynolds Re [-], 2300 to 1e9
     * @param relativeRoughness ε/D [-], 0 to 0.1
     * @source Swamee and Jain, J. Hydraul. Div. ASCE 102(5), 1976, 657-664
     */
    public static double swameeJain(double reynolds, double relativeRoughness) {
        TURBULENT.check(reynolds);
        ROUGHNESS.check(relativeRoughness);
        double log = Math.log10(relativeRoughness / 3.7 + 5.74 / Math.pow(reynolds, 0.9));
        return 0.25 / (log * log);
    }
}
