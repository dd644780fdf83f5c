package dustwright.engine.conveying;

import dustwright.engine.quantity.Range;
import dustwright.engine.quantity.Velocity;
import java.util.function.DoubleUnaryOperator;

/**
 * Velocity at which a single sphere falls through still air: where drag carries its weight.
 *
 * <pre>
 * C_D Re² = 4/3 · d³ ρ (ρ_p − ρ) g / μ²,   U_T = Re μ / (ρ d)
 * </pre>
 */
public final class TerminalVelocity {
    private static final Range CREEPING = new Range("Stokes' terminal velocity", "Re", "-", 0, 0.3);
    private static final int ITERATION_LIMIT = 60;

    private TerminalVelocity() {}

    /**
     * Terminal velocity of a sphere by {@link SphereDrag#barati} (equation CON-4).
     *
     * @param airDensity_kgPerM3 ρ, local density of the air
     * @param viscosity_PaS μ, dynamic viscosity of the air
     * @throws dustwright.engine.quantity.OutOfRangeException when the sphere would fall faster than Re 2e5
     * @source balance of weight, buoyancy and drag
     */
    public static Velocity ofSphere(Particle particle, double airDensity_kgPerM3, double viscosity_PaS) {
        return new Velocity(solve_mPerS(particle, airDensity_kgPerM3, viscosity_PaS, SphereDrag::barati));
    }

    /** Terminal velocity of a sphere by {@link SphereDrag#schillerNaumann} (equation CON-5), to see how far methods part. */
    public static Velocity bySchillerNaumann(Particle particle, double airDensity_kgPerM3, double viscosity_PaS) {
        return new Velocity(solve_mPerS(particle, airDensity_kgPerM3, viscosity_PaS, SphereDrag::schillerNaumann));
    }

    /**
     * Terminal velocity in creeping flow, refused above Re 0.3 (equation CON-3): for sand of 0.1 mm in air (Re 3.8) it would be
     * 38 % high, for sand of 0.5 mm five times too high.
     *
     * <pre>
     * U_T = g d² (ρ_p − ρ) / (18 μ)
     * </pre>
     *
     * @source Stokes 1851
     */
    public static Velocity byStokes(Particle particle, double airDensity_kgPerM3, double viscosity_PaS) {
        double d_m = particle.size().metres();
        double velocity_mPerS =
                Gravity.G_mPerS2 * d_m * d_m * excess_kgPerM3(particle, airDensity_kgPerM3) / (18 * viscosity_PaS);
        CREEPING.check(airDensity_kgPerM3 * velocity_mPerS * d_m / viscosity_PaS);
        return new Velocity(velocity_mPerS);
    }

    /**
     * Secant steps on ln Re, in which ln(C_D Re²) is nearly straight: its slope is 1 in creeping flow and 2 where C_D is constant,
     * so steps never run away.
     */
    private static double solve_mPerS(
            Particle particle, double airDensity_kgPerM3, double viscosity_PaS, DoubleUnaryOperator drag) {
        double d_m = particle.size().metres();
        double weight = 4.0
                / 3
                * d_m
                * d_m
                * d_m
                * airDensity_kgPerM3
                * excess_kgPerM3(particle, airDensity_kgPerM3)
                * Gravity.G_mPerS2
                / (viscosity_PaS * viscosity_PaS);
        double lnWeight = Math.log(weight);
        double x = Math.log(weight / (24 + 0.6 * Math.sqrt(weight)));
        double surplus = surplus(drag, x, lnWeight);
        double slope = 1.5;
        for (int n = 0; n < ITERATION_LIMIT && Math.abs(surplus) > 1e-14; n++) {
            double before = x;
            double surplusBefore = surplus;
            x -= surplus / slope;
            surplus = surplus(drag, x, lnWeight);
            double secant = (surplus - surplusBefore) / (x - before);
            slope = secant >= 0.9 && secant <= 2.1 ? secant : 1.5;
        }
        return Math.exp(x) * viscosity_PaS / (airDensity_kgPerM3 * d_m);
    }

    private static double surplus(DoubleUnaryOperator drag, double lnRe, double lnWeight) {
        return Math.log(drag.applyAsDouble(Math.exp(lnRe))) + 2 * lnRe - lnWeight;
    }

    private static double excess_kgPerM3(Particle particle, double airDensity_kgPerM3) {
        return particle.density().kgPerCubicMetre() - airDensity_kgPerM3;
    }
}
