package dustwright.engine.conveying;

/**
 * Velocity and free air by the constants of the pneumatic conveying trade (equation CON-41): continuity and the gas law with round
 * numbers, for checking a hand calculation. The engine itself goes by {@code v = w R T/(p A)}, 0.13 % higher.
 *
 * <pre>
 * C  = 0.365 w T / (D² p)        p [kPa abs]
 * V0 = 2.23 p D² C / T           free air at 101.3 kPa, 15 °C
 * </pre>
 *
 * @source Mills, Pneumatic Conveying Design Guide; constants from memory, equal to 4 R/π and π/4 · 288/101.3
 */
public final class MillsVelocity {
    private MillsVelocity() {}

    /** Velocity C [m/s] of w [kg/s] of air at T [K] and p [Pa absolute] in a bore D [m]. */
    public static double velocity_mPerS(double air_kgPerS, double temperature_K, double bore_m, double pressure_Pa) {
        return 0.365 * air_kgPerS * temperature_K / (bore_m * bore_m * pressure_Pa / 1000);
    }

    /** Free air V0 [m³/s at 101.3 kPa, 15 °C] that gives a velocity C [m/s]. */
    public static double freeAir_m3PerS(
            double velocity_mPerS, double temperature_K, double bore_m, double pressure_Pa) {
        return 2.23 * pressure_Pa / 1000 * bore_m * bore_m * velocity_mPerS / temperature_K;
    }
}
