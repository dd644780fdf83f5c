package dustwright.engine.conveying;

import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Range;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.quantity.Viscosity;

/**
 * One dust carried by air at one place of a tube: all that the published velocity laws ask for.
 *
 * @param solids dust passing
 * @param airDensity local density, at the pressure of that place
 * @param terminal velocity at which a single particle falls through this air
 */
public record Conveyed(
        MassFlow solids, Particle particle, Density airDensity, Viscosity viscosity, Length bore, Velocity terminal) {
    private static final Range SOLIDS = new Range("conveying", "m_s", "kg/s", 0, 1000);
    private static final Range AIR = new Range("conveying", "ρ", "kg/m³", 1e-3, 200);
    private static final Range VISCOSITY = new Range("conveying", "μ", "Pa s", 1e-6, 1e-4);
    private static final Range BORE = new Range("conveying", "D", "m", 1e-3, 2);

    public Conveyed {
        SOLIDS.check(solids.kgPerSecond());
        AIR.check(airDensity.kgPerCubicMetre());
        VISCOSITY.check(viscosity.pascalSeconds());
        BORE.check(bore.metres());
    }

    /** With the terminal velocity of a sphere. */
    public static Conveyed of(
            MassFlow solids, Particle particle, Density airDensity, Viscosity viscosity, Length bore) {
        Velocity terminal =
                TerminalVelocity.ofSphere(particle, airDensity.kgPerCubicMetre(), viscosity.pascalSeconds());
        return new Conveyed(solids, particle, airDensity, viscosity, bore, terminal);
    }

    /** Dust per cross-section G [kg/(m² s)] (equation CON-2). */
    public double flux_kgPerM2S() {
        return solids.kgPerSecond() / bore.circle().squareMetres();
    }

    /**
     * Loading ratio at a gas velocity [kg dust/kg air] (equation CON-2): {@code μ = G/(ρ U)}; nothing where there is no dust.
     *
     * @param velocity_mPerS superficial gas velocity U, above 0 where there is dust
     */
    public double loading(double velocity_mPerS) {
        return solids.kgPerSecond() == 0 ? 0 : flux_kgPerM2S() / (airDensity.kgPerCubicMetre() * velocity_mPerS);
    }
}
