package dustwright.engine.conveying;

/**
 * What dust loses at the wall, by published correlations in Fanning's form: four times smaller than Darcy's. Dust flux is
 * {@code G = (1 − e) ρ_p c}, with e the voidage and c the particle velocity.
 */
public final class SolidsFriction {
    private static final double G = Gravity.G_mPerS2;
    private static final double MOST_LAG = 0.75;

    private SolidsFriction() {}

    /**
     * By how much particles lag behind the air in a level tube, as a share of the gas velocity (equation CON-30):
     * {@code c = v (1 − lag)}. The same at every velocity.
     *
     * <pre>
     * lag = 0.0638 d^0.3 ρ_p^0.5          d [m], ρ_p [kg/m³]
     * </pre>
     *
     * As measured where a particle's velocity in level tubes is stated. Beyond 0.75, steel shot above about 1 mm, 0.75 is taken and
     * {@link #known} says that nobody knows; the limit is our own reading.
     *
     * @return lag [-]
     * @source Hinkle, modified by the Institute of Gas Technology 1978, as in Rhodes, Introduction to Particle Technology
     */
    public static double lag(Particle particle) {
        return particle.levelSpeed()
                .map(speed -> 1 - speed.value())
                .orElseGet(() -> Math.min(byLaw(particle), MOST_LAG));
    }

    /** Whether its velocity in level tubes is measured, or CON-30 holds for it. */
    public static boolean known(Particle particle) {
        return particle.levelSpeed().isPresent() || byLaw(particle) <= MOST_LAG;
    }

    private static double byLaw(Particle particle) {
        return 0.0638
                * Math.pow(particle.size().metres(), 0.3)
                * Math.sqrt(particle.density().kgPerCubicMetre());
    }

    /**
     * Fanning factor of solids in level tubes (equation CON-33): the drag on lagging particles. An upper estimate for fine dust in
     * wide tubes, because the lag of CON-30 then asks for far more drag than the wall can cause.
     *
     * <pre>
     * f_p = 3/8 (ρ/ρ_p) (D/d) C_D ((v − c)/c)²,   Δp = 2 f_p G c L/D
     * </pre>
     *
     * @param drag C_D at the Reynolds number of the lag [-]
     * @param lag (v − c)/v [-]
     * @source Hinkle 1953, as in Rhodes, Introduction to Particle Technology
     */
    public static double hinkle(
            double airDensity_kgPerM3, double particleDensity_kgPerM3, double boreOverSize, double drag, double lag) {
        double ratio = lag / (1 - lag);
        return 0.375 * airDensity_kgPerM3 / particleDensity_kgPerM3 * boreOverSize * drag * ratio * ratio;
    }

    /**
     * Drop by solids friction along upright tubes [Pa] (equation CON-34), at every velocity the same.
     *
     * <pre>
     * Δp = 0.057 G L √(g/D)
     * </pre>
     *
     * @param flux_kgPerM2S G, dust per cross-section
     * @source Konno and Saito, J. Chem. Eng. Japan 2, 1969, 211-217, as in Rhodes, Introduction to Particle Technology
     */
    public static double konnoSaito_Pa(double flux_kgPerM2S, double length_m, double bore_m) {
        return 0.057 * flux_kgPerM2S * length_m * Math.sqrt(G / bore_m);
    }

    /**
     * Fanning factor of solids in level tubes (equation CON-35), {@code Δp = 2 f_p G c L/D}.
     *
     * <pre>
     * 4 f_p = 0.117 (1 − e)/e³ · [(1 − e) v/√(g D)]^−1.15
     * </pre>
     *
     * @param dustShare 1 − e, share of the tube that is dust [-], above 0
     * @source Yang, AIChE Journal 20, 1974, 605-607; from memory, re-read before relying on it
     */
    public static double yangLevel(double dustShare, double velocity_mPerS, double bore_m) {
        double voidage = 1 - dustShare;
        return 0.117
                / 4
                * dustShare
                / (voidage * voidage * voidage)
                * Math.pow(dustShare * velocity_mPerS / Math.sqrt(G * bore_m), -1.15);
    }
}
