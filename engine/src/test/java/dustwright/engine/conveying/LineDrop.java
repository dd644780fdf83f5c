package dustwright.engine.conveying;

import dustwright.engine.quantity.Range;
import java.util.OptionalDouble;

/**
 * Pressure drop of a whole conveying line at one gas density by the textbook method (equation CON-40), with every intermediate value.
 * It stands beside {@link SolidsLoss}, which the network uses, as the method a reader can follow in print; factors are Fanning's.
 *
 * <pre>
 * level:   1/2 e ρ v² + G c + 2 f_g ρ U² L/D + 2 f_p G c L/D
 * rising:  2 f_g ρ U² L/D + 0.057 G L √(g/D) + (1 − e) ρ_p g L + e ρ g L
 * bends:   each the friction of 7.5 m of rising tube
 * </pre>
 *
 * Dust is accelerated once, from rest, by the full momentum {@code G c}. The textbook writes half of it (which is no momentum
 * balance): {@link #halfSolidsAcceleration_Pa()} keeps that figure for comparison.
 *
 * @param particleVelocityLevel_mPerS c in level tubes
 * @param voidageLevel e in level tubes [-]
 * @param gasVelocityLevel_mPerS v = U/e
 * @param slipReynolds of the lag in level tubes [-]
 * @param drag C_D of the lag [-]
 * @param solidsFanning f_p of Hinkle [-]
 * @param gasFanning f_g [-]
 * @param particleVelocityRising_mPerS U/e − U_T
 * @param voidageRising e in rising tubes [-]
 * @source Rhodes, Introduction to Particle Technology, pneumatic transport
 */
public record LineDrop(
        double particleVelocityLevel_mPerS,
        double voidageLevel,
        double gasVelocityLevel_mPerS,
        double slipReynolds,
        double drag,
        double solidsFanning,
        double gasFanning,
        double particleVelocityRising_mPerS,
        double voidageRising,
        double gasAcceleration_Pa,
        double solidsAcceleration_Pa,
        double gasFrictionLevel_Pa,
        double solidsFrictionLevel_Pa,
        double gasFrictionRising_Pa,
        double solidsFrictionRising_Pa,
        double solidsWeight_Pa,
        double gasWeight_Pa,
        double bends_Pa) {
    /** Rising tube that one bend is taken for [m]. */
    public static final double BEND_AS_TUBE_m = 7.5;

    private static final double G = Gravity.G_mPerS2;
    private static final Range VELOCITY = new Range("the line drop", "U", "m/s", 1e-3, 300);
    private static final Range RISE = new Range("dust that rises", "U − U_T", "m/s", 1e-6, 300);
    private static final Range DUST_SHARE = new Range("the line drop", "1 − e", "-", 0, Choking.MOST_DUST);

    /**
     * The line to compute.
     *
     * @param level_m length of level tube
     * @param rising_m length of rising tube
     * @param gasFanning factor of the gas alone [-]; absent: Blasius' {@code 0.079 Re^−0.25} for a smooth tube
     */
    public record Line(double level_m, double rising_m, int bends, OptionalDouble gasFanning) {}

    /**
     * Drop of a line.
     *
     * @param conveyed the stream; its density is that of the whole line: long vacuum lines are to be split
     * @param velocity_mPerS superficial gas velocity U
     * @throws dustwright.engine.quantity.OutOfRangeException where dust does not rise, or fills more than 40 % of the tube
     */
    public static LineDrop of(Line line, Conveyed conveyed, double velocity_mPerS) {
        VELOCITY.check(velocity_mPerS);
        double density = conveyed.airDensity().kgPerCubicMetre();
        double viscosity_PaS = conveyed.viscosity().pascalSeconds();
        double bore_m = conveyed.bore().metres();
        double size_m = conveyed.particle().size().metres();
        double heavy = conveyed.particle().density().kgPerCubicMetre();
        double flux = conveyed.flux_kgPerM2S();
        double reynolds = density * velocity_mPerS * bore_m / viscosity_PaS;
        double gasFanning = line.gasFanning().orElse(0.079 * Math.pow(reynolds, -0.25));
        double gasPerMetre = 2 * gasFanning * density * velocity_mPerS * velocity_mPerS / bore_m;

        double c = velocity_mPerS * (1 - SolidsFriction.lag(conveyed.particle()));
        double voidage = 1 - DUST_SHARE.check(flux / (heavy * c));
        double v = velocity_mPerS / voidage;
        double slipReynolds = density * (v - c) * size_m / viscosity_PaS;
        double drag = SphereDrag.threePieces(slipReynolds);
        double solidsFanning = SolidsFriction.hinkle(density, heavy, bore_m / size_m, drag, (v - c) / v);

        double voidageRising = voidageRising(velocity_mPerS, conveyed);
        double solidsRisingPerMetre = SolidsFriction.konnoSaito_Pa(flux, 1, bore_m);
        return new LineDrop(
                c,
                voidage,
                v,
                slipReynolds,
                drag,
                solidsFanning,
                gasFanning,
                velocity_mPerS / voidageRising - conveyed.terminal().metresPerSecond(),
                voidageRising,
                0.5 * voidage * density * v * v,
                flux * c,
                gasPerMetre * line.level_m(),
                2 * solidsFanning * flux * c * line.level_m() / bore_m,
                gasPerMetre * line.rising_m(),
                solidsRisingPerMetre * line.rising_m(),
                (1 - voidageRising) * heavy * G * line.rising_m(),
                voidageRising * density * G * line.rising_m(),
                line.bends() * BEND_AS_TUBE_m * (gasPerMetre + solidsRisingPerMetre));
    }

    /**
     * Voidage of steady rise, {@code G/ρ_p = (1 − e)(U/e − U_T)}. In y = 1 − e:
     * {@code U_T y² + (U − U_T + G/ρ_p) y − G/ρ_p = 0}, whose positive root is the dilute stream.
     */
    private static double voidageRising(double velocity_mPerS, Conveyed conveyed) {
        double terminal_mPerS = conveyed.terminal().metresPerSecond();
        double solids_mPerS =
                conveyed.flux_kgPerM2S() / conveyed.particle().density().kgPerCubicMetre();
        double b = RISE.check(velocity_mPerS - terminal_mPerS) + solids_mPerS;
        double y = 2 * solids_mPerS / (b + Math.sqrt(b * b + 4 * terminal_mPerS * solids_mPerS));
        return 1 - DUST_SHARE.check(y);
    }

    /** Half the momentum of the dust, as the textbook prints it [Pa]. */
    public double halfSolidsAcceleration_Pa() {
        return solidsAcceleration_Pa / 2;
    }

    /** Level part with the acceleration of gas and dust [Pa]. */
    public double level_Pa() {
        return gasAcceleration_Pa + solidsAcceleration_Pa + gasFrictionLevel_Pa + solidsFrictionLevel_Pa;
    }

    /** Rising part [Pa]. */
    public double rising_Pa() {
        return gasFrictionRising_Pa + solidsFrictionRising_Pa + solidsWeight_Pa + gasWeight_Pa;
    }

    /** Whole line [Pa]. */
    public double total_Pa() {
        return level_Pa() + rising_Pa() + bends_Pa;
    }
}
