package dustwright.engine.conveying;

import dustwright.engine.air.Air;
import dustwright.engine.tubing.Friction;

/**
 * How fast the loss of the air alone grows with its velocity in one leg, as a rising leg needs it to find its least drop:
 *
 * <pre>
 * d/dv [ (f L/D + ΣK) ρ v²/2 ] = ρ v ( b (ρ v)^n + ΣK )
 * </pre>
 *
 * The friction factor follows a power of the flow through two points of its own law, which is convex in logarithms: between them the
 * power is 1 to 2 % high at most, and {@link #CARE} takes that back, so that drop never falls with flow where it is said to grow.
 *
 * @param frictionAtUnitFlux b, at a mass flux of 1 kg/(m² s) [-]
 * @param exponent n, 0 or a little less [-]
 * @param k ΣK, not below 0 [-]
 */
public record AirLoss(double frictionAtUnitFlux, double exponent, double k) {
    private static final double CARE = 0.97;
    /** Mass fluxes between which dust is conveyed [kg/(m² s)]. */
    private static final double LOW_FLUX = 5;

    private static final double HIGH_FLUX = 40;

    /** A leg with a stated friction factor. */
    public static AirLoss fixed(double darcy, double lengthOverBore, double k) {
        return new AirLoss(darcy * lengthOverBore, 0, Math.max(k, 0));
    }

    /** A leg with a rough wall. */
    public static AirLoss rough(double relativeRoughness, double bore_m, Air air, double lengthOverBore, double k) {
        double low = darcy(LOW_FLUX, relativeRoughness, bore_m, air);
        double high = darcy(HIGH_FLUX, relativeRoughness, bore_m, air);
        double exponent = Math.min(0, Math.log(high / low) / Math.log(HIGH_FLUX / LOW_FLUX));
        double atUnitFlux = low * Math.pow(LOW_FLUX, -exponent) * (1 + exponent / 2) * CARE;
        return new AirLoss(atUnitFlux * lengthOverBore, exponent, Math.max(k, 0));
    }

    private static double darcy(double massFlux, double relativeRoughness, double bore_m, Air air) {
        return Friction.darcy(
                Math.max(massFlux * bore_m / air.viscosity_PaS(), Friction.TURBULENT_FROM), relativeRoughness);
    }

    /** The growth [Pa s/m]. */
    double growth_PaSPerM(double v, double density_kgPerM3) {
        double massFlux = density_kgPerM3 * v;
        double friction = exponent == 0 ? frictionAtUnitFlux : frictionAtUnitFlux * Math.pow(massFlux, exponent);
        return massFlux * (friction + k);
    }

    /** How the growth changes with the velocity [Pa s²/m²]; times v/ρ it is how it changes with the density. */
    double growthSlope(double v, double density_kgPerM3) {
        double friction = frictionAtUnitFlux * Math.pow(density_kgPerM3 * v, exponent);
        return density_kgPerM3 * (friction * (1 + exponent) + k);
    }
}
