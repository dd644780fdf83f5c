package dustwright.engine.conveying;

import java.util.Optional;

/**
 * Where a rising stream of dust collapses: gas velocity and voidage at choking. Slip is taken as the terminal velocity of a single
 * particle, so that the dust flux and the voidage e belong together:
 *
 * <pre>
 * U/e − U_T = G / (ρ_p (1 − e))
 * </pre>
 *
 * @param velocity_mPerS superficial gas velocity U at choking
 * @param voidage e, share of the tube that is air [-]
 */
public record Choking(double velocity_mPerS, double voidage) {
    /** Largest share of dust in the tube that still counts as a stream of air with dust in it [-]. */
    public static final double MOST_DUST = 0.4;

    private static final double HINDERED = 4.7;
    private static final int ITERATION_LIMIT = 50;

    /**
     * Choking by Punwani and others (equation CON-20), ρ and D in SI.
     *
     * <pre>
     * ρ^0.77 = 2250 D (e^−4.7 − 1) / (U/e − U_T)²
     * </pre>
     *
     * @param flux_kgPerM2S G, dust per cross-section
     * @return nothing where so much dust would fill more than {@link #MOST_DUST} of the tube
     * @source Punwani, Modi and Tarman, 1976, as in Rhodes, Introduction to Particle Technology
     */
    public static Optional<Choking> punwani(
            double flux_kgPerM2S,
            double particleDensity_kgPerM3,
            double airDensity_kgPerM3,
            double bore_m,
            double terminal_mPerS) {
        double scale_m2PerS2 = 2250 * bore_m / Math.pow(airDensity_kgPerM3, 0.77);
        return solve(flux_kgPerM2S / particleDensity_kgPerM3, scale_m2PerS2, terminal_mPerS);
    }

    /**
     * Choking by Yang (equation CON-21): Punwani's form without the air density, which falls together with it at 1.2 kg/m³.
     *
     * <pre>
     * 2 g D (e^−4.7 − 1) / (U/e − U_T)² = 0.01
     * </pre>
     *
     * @return nothing where so much dust would fill more than {@link #MOST_DUST} of the tube
     * @source Yang, AIChE Journal 21(5), 1975, 1013-1015; form and constant from memory, re-read before relying on it
     */
    public static Optional<Choking> yang(
            double flux_kgPerM2S, double particleDensity_kgPerM3, double bore_m, double terminal_mPerS) {
        return solve(flux_kgPerM2S / particleDensity_kgPerM3, 2 * Gravity.G_mPerS2 * bore_m / 0.01, terminal_mPerS);
    }

    /**
     * Choking velocity by Leung and others (equation CON-22) [m/s]: about 40 % of Punwani's for fine dust.
     *
     * <pre>
     * U = 0.97 U_T + 32.3 G/ρ_p          (voidage 0.97)
     * </pre>
     *
     * @source Leung, Wiles and Nicklin, 1971; from memory, re-read before relying on it
     */
    public static double leung_mPerS(double flux_kgPerM2S, double particleDensity_kgPerM3, double terminal_mPerS) {
        return 0.97 * terminal_mPerS + 32.3 * flux_kgPerM2S / particleDensity_kgPerM3;
    }

    /**
     * Solves {@code scale · (e^−4.7 − 1) (1 − e)² = (G/ρ_p)²} for the dust's share y = 1 − e. Both factors grow with y, and in
     * logarithms the left side is nearly straight with slope 3: Newton's steps need no bracket.
     */
    private static Optional<Choking> solve(double solids_mPerS, double scale_m2PerS2, double terminal_mPerS) {
        if (solids_mPerS == 0) {
            return Optional.of(new Choking(terminal_mPerS, 1));
        }
        double target = 2 * Math.log(solids_mPerS) - Math.log(scale_m2PerS2);
        double lnMost = Math.log(MOST_DUST);
        if (target > Math.log(hindrance(MOST_DUST)) + 2 * lnMost) {
            return Optional.empty();
        }
        double lnY = Math.min((target - Math.log(HINDERED)) / 3, lnMost);
        for (int n = 0; n < ITERATION_LIMIT; n++) {
            double y = Math.exp(lnY);
            double hindrance = hindrance(y);
            double slope = 2 + HINDERED * y * (1 + hindrance) / ((1 - y) * hindrance);
            double step = (Math.log(hindrance) + 2 * lnY - target) / slope;
            lnY = Math.min(lnY - step, lnMost);
            if (Math.abs(step) < 1e-13) {
                break;
            }
        }
        double y = Math.exp(lnY);
        double voidage = 1 - y;
        return Optional.of(new Choking(voidage * (solids_mPerS / y + terminal_mPerS), voidage));
    }

    /** e^−4.7 − 1 for the dust's share y = 1 − e, exact for thin streams. */
    private static double hindrance(double y) {
        return Math.expm1(-HINDERED * Math.log1p(-y));
    }
}
