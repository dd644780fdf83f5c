package dustwright.engine.conveying;

/**
 * Gas velocity below which dust starts to settle in a horizontal tube, by published correlations, each solved for the superficial
 * velocity U. They are bare formulas: {@link VelocityLaw} knows where each holds. For fine dust they differ by factors of 2 to 4.
 *
 * <pre>
 * μ = m_s / (ρ U A),   Fr = U / √(g D),   Fr_p = U_T / √(g d)
 * </pre>
 *
 * Every formula takes SI units: solids flow m_s [kg/s], particle size d [m] and density ρ_p [kg/m³], air density ρ [kg/m³] (the
 * <em>local</em> one, not that of free air), bore D [m], terminal velocity U_T [m/s], viscosity [Pa s].
 */
public final class Saltation {
    private static final double G = Gravity.G_mPerS2;

    private static final double WEBER_SLOW_UP_TO_mPerS = 3;
    private static final double GELDART_LING_LIGHT_UP_TO = 47_000;

    private Saltation() {}

    /**
     * Saltation velocity by Rizk (equation CON-10). The exponents take the particle size in metres; in millimetres they are absurd.
     *
     * <pre>
     * μ = 10^−(1440 d + 1.96) · Fr^(1100 d + 2.5)
     * </pre>
     *
     * @source Rizk, Pneumotransport 3, paper D4, 1973; as in Rhodes, Introduction to Particle Technology (one set of lecture notes
     *     prints 1.95, which moves U by 0.7 %)
     * @example rizk_mPerS(0.25, 100e-6, 1.2, 0.078) = 9.8833092829
     */
    public static double rizk_mPerS(double solids_kgPerS, double size_m, double airDensity_kgPerM3, double bore_m) {
        double froudePower = 1100 * size_m + 2.5;
        double suspension_mPerS = suspension_mPerS(solids_kgPerS, airDensity_kgPerM3, bore_m);
        double scale = Math.pow(10, 1440 * size_m + 1.96) * Math.pow(G * bore_m, froudePower / 2);
        return Math.pow(suspension_mPerS * scale, 1 / (1 + froudePower));
    }

    /**
     * Saltation velocity by Matsumoto and others 1974 (equation CON-11).
     *
     * <pre>
     * μ = 0.448 (ρ_p/ρ)^0.50 (Fr_p/10)^−1.75 (Fr/10)^3
     * </pre>
     *
     * @source Matsumoto, Kara, Saito and Maeda, J. Chem. Eng. Japan 7(6), 1974, 425-430; as given with python3-fluids 1.0.22
     */
    public static double matsumoto1974_mPerS(
            double solids_kgPerS,
            double particleDensity_kgPerM3,
            double size_m,
            double airDensity_kgPerM3,
            double bore_m,
            double terminal_mPerS) {
        double factor = 0.448
                * Math.sqrt(particleDensity_kgPerM3 / airDensity_kgPerM3)
                * Math.pow(particleFroude(terminal_mPerS, size_m) / 10, -1.75);
        return byFroudePower(suspension_mPerS(solids_kgPerS, airDensity_kgPerM3, bore_m), factor, 3, bore_m);
    }

    /**
     * Saltation velocity by Matsumoto and others 1975 (equation CON-12).
     *
     * <pre>
     * μ = 1.11 (ρ_p/ρ)^0.55 (Fr_p/10)^−2.3 (Fr/10)^3
     * </pre>
     *
     * @source Matsumoto, Harada, Saito and Maeda, J. Chem. Eng. Japan 8(4), 1975, 331-333; as given with python3-fluids 1.0.22
     */
    public static double matsumoto1975_mPerS(
            double solids_kgPerS,
            double particleDensity_kgPerM3,
            double size_m,
            double airDensity_kgPerM3,
            double bore_m,
            double terminal_mPerS) {
        double factor = 1.11
                * Math.pow(particleDensity_kgPerM3 / airDensity_kgPerM3, 0.55)
                * Math.pow(particleFroude(terminal_mPerS, size_m) / 10, -2.3);
        return byFroudePower(suspension_mPerS(solids_kgPerS, airDensity_kgPerM3, bore_m), factor, 3, bore_m);
    }

    /**
     * Saltation velocity by Matsumoto and others 1977 (equation CON-13): one formula for fine and one for coarse particles, parted at
     * the size d*. U jumps there, by a third and more.
     *
     * <pre>
     * d* = 1.39 D (ρ_p/ρ)^−0.74
     * μ  = 5560 (d/D)^1.43 (Fr/10)^4                               d ≤ d*
     * μ  = 0.373 (ρ_p/ρ)^1.06 (Fr_p/10)^−3.7 (Fr/10)^3.61          d > d*
     * </pre>
     *
     * @source Matsumoto, Kikuta and Maeda, J. Chem. Eng. Japan 10(4), 1977, 273-279; as given with python3-fluids 1.0.22
     */
    public static double matsumoto1977_mPerS(
            double solids_kgPerS,
            double particleDensity_kgPerM3,
            double size_m,
            double airDensity_kgPerM3,
            double bore_m,
            double terminal_mPerS) {
        double densityRatio = particleDensity_kgPerM3 / airDensity_kgPerM3;
        double suspension_mPerS = suspension_mPerS(solids_kgPerS, airDensity_kgPerM3, bore_m);
        if (size_m <= 1.39 * bore_m * Math.pow(densityRatio, -0.74)) {
            return byFroudePower(suspension_mPerS, 5560 * Math.pow(size_m / bore_m, 1.43), 4, bore_m);
        }
        double factor =
                0.373 * Math.pow(densityRatio, 1.06) * Math.pow(particleFroude(terminal_mPerS, size_m) / 10, -3.7);
        return byFroudePower(suspension_mPerS, factor, 3.61, bore_m);
    }

    /**
     * Saltation velocity by Schade (equation CON-14).
     *
     * <pre>
     * Fr = μ^0.11 (D/d)^0.025 (ρ_p/ρ)^0.34
     * </pre>
     *
     * @source Schade, dissertation, Karlsruhe, 1987; as given with python3-fluids 1.0.22
     */
    public static double schade_mPerS(
            double solids_kgPerS,
            double particleDensity_kgPerM3,
            double size_m,
            double airDensity_kgPerM3,
            double bore_m) {
        double suspension_mPerS = suspension_mPerS(solids_kgPerS, airDensity_kgPerM3, bore_m);
        double factor = Math.pow(bore_m / size_m, 0.025)
                * Math.pow(particleDensity_kgPerM3 / airDensity_kgPerM3, 0.34)
                * Math.sqrt(G * bore_m);
        return Math.pow(Math.pow(suspension_mPerS, 0.11) * factor, 1 / 1.11);
    }

    /**
     * Saltation velocity by Weber (equation CON-15).
     *
     * <pre>
     * Fr = (7 + 8/3 U_T) μ^0.25 (d/D)^0.1     U_T ≤ 3 m/s
     * Fr = 15 μ^0.25 (d/D)^0.1                U_T > 3 m/s
     * </pre>
     *
     * @source Weber, Bulk Solids Handling 1, 1981, 57-63; as given with python3-fluids 1.0.22
     */
    public static double weber_mPerS(
            double solids_kgPerS, double size_m, double airDensity_kgPerM3, double bore_m, double terminal_mPerS) {
        double suspension_mPerS = suspension_mPerS(solids_kgPerS, airDensity_kgPerM3, bore_m);
        double settling = terminal_mPerS <= WEBER_SLOW_UP_TO_mPerS ? 7 + 8.0 / 3 * terminal_mPerS : 15;
        double factor = settling * Math.pow(size_m / bore_m, 0.1) * Math.sqrt(G * bore_m);
        return Math.pow(factor * Math.sqrt(Math.sqrt(suspension_mPerS)), 1 / 1.25);
    }

    /**
     * Saltation velocity by Geldart and Ling (equation CON-16), for fine coal at high pressure; G = m_s/A [kg/(m² s)], all in SI.
     *
     * <pre>
     * U = 1.5 G^0.465 D^−0.01 μ_g^0.055 ρ^−0.42      G/D ≤ 47 000
     * U = 8.7 G^0.302 D^0.153 μ_g^0.055 ρ^−0.42      above
     * </pre>
     *
     * @source Geldart and Ling, Powder Technology 62(3), 1990, 243-252; as given with python3-fluids 1.0.22
     */
    public static double geldartLing_mPerS(
            double solids_kgPerS, double airDensity_kgPerM3, double bore_m, double viscosity_PaS) {
        double flux = solids_kgPerS / area_m2(bore_m);
        double air = Math.pow(viscosity_PaS, 0.055) * Math.pow(airDensity_kgPerM3, -0.42);
        return flux / bore_m <= GELDART_LING_LIGHT_UP_TO
                ? 1.5 * Math.pow(flux, 0.465) * Math.pow(bore_m, -0.01) * air
                : 8.7 * Math.pow(flux, 0.302) * Math.pow(bore_m, 0.153) * air;
    }

    /** U from {@code μ = factor · (Fr/10)^power}, with μ = suspension/U. */
    private static double byFroudePower(double suspension_mPerS, double factor, double power, double bore_m) {
        double perVelocity = factor * Math.pow(10 * Math.sqrt(G * bore_m), -power);
        return Math.pow(suspension_mPerS / perVelocity, 1 / (1 + power));
    }

    /** m_s/(ρ A): loading times velocity [m/s]. */
    private static double suspension_mPerS(double solids_kgPerS, double airDensity_kgPerM3, double bore_m) {
        return solids_kgPerS / (airDensity_kgPerM3 * area_m2(bore_m));
    }

    private static double particleFroude(double terminal_mPerS, double size_m) {
        return terminal_mPerS / Math.sqrt(G * size_m);
    }

    private static double area_m2(double bore_m) {
        return Math.PI / 4 * bore_m * bore_m;
    }
}
