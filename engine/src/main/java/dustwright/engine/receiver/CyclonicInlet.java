package dustwright.engine.receiver;

import dustwright.engine.quantity.Range;

/**
 * Coarse separation in a tangential inlet, by the laws of a Lapple cyclone. A receiver is no Lapple cyclone (large body, no vortex
 * finder): an estimate of the coarse cut only.
 */
public final class CyclonicInlet {
    /** Velocity heads per K H W/De², after Shepherd and Lapple [-]. */
    public static final double SHEPHERD_LAPPLE_K = 16;

    /** Turns that cyclones make at most, 5 to 10 being usual [-]; EPA course material, from memory. A vessel of more is no cyclone. */
    public static final double MOST_TURNS = 10;

    private static final Range VISCOSITY = new Range("the cyclone cut size", "μ", "Pa·s", 1e-6, 1e-4);
    private static final Range LENGTH = new Range("a cyclone", "W, H, L, De", "m", 1e-3, 20);
    private static final Range TURNS = new Range("the cyclone cut size", "Ne", "-", 1, MOST_TURNS);
    private static final Range VELOCITY = new Range("the cyclone cut size", "v", "m/s", 5, 40);
    private static final Range DENSITY = new Range("the cyclone cut size", "ρ_p − ρ_g", "kg/m³", 10, 20_000);
    private static final Range DIAMETER = new Range("cyclone grade efficiency", "d", "m", 1e-9, 0.1);

    /** Turns of the gas in a cyclone of Lapple proportions (body and cone two diameters long, inlet half a diameter high) [-]. */
    public static final double LAPPLE_TURNS = turns(0.5, 2, 2);

    private CyclonicInlet() {}

    /**
     * Turns of the gas in a cyclone [-] (equation FLT-16).
     *
     * <pre>
     * Ne = (Lb + Lc/2) / H
     * </pre>
     *
     * @param inletHeight H, in any unit
     * @param bodyLength Lb, same unit
     * @param coneLength Lc, same unit
     * @source Lapple's standard cyclone, as in EPA course material; from memory
     * @example turns(0.5, 2, 2) = 6
     */
    public static double turns(double inletHeight, double bodyLength, double coneLength) {
        return (LENGTH.check(bodyLength) + LENGTH.check(coneLength) / 2) / LENGTH.check(inletHeight);
    }

    /**
     * Particle size of which half is separated [m] (equation FLT-17).
     *
     * <pre>
     * d50 = √( 9 μ W / (2 π Ne v (ρ_p − ρ_g)) )
     * </pre>
     *
     * @param viscosity_PaS μ of the air [Pa·s]
     * @param inletWidth_m W [m]
     * @param turns Ne [-], 1 to 10
     * @param velocity_mPerS v in the inlet [m/s]; 15 to 30 m/s is usual (Tan 2014)
     * @param particleDensity_kgPerM3 ρ_p [kg/m³]
     * @param gasDensity_kgPerM3 ρ_g [kg/m³]
     * @source Lapple, as in EPA course material; from memory
     * @example cutSize_m(2.08e-5, 0.15, 8, 20, 1000, 0) = 5.285e-6
     */
    public static double cutSize_m(
            double viscosity_PaS,
            double inletWidth_m,
            double turns,
            double velocity_mPerS,
            double particleDensity_kgPerM3,
            double gasDensity_kgPerM3) {
        return Math.sqrt(9
                * VISCOSITY.check(viscosity_PaS)
                * LENGTH.check(inletWidth_m)
                / (2
                        * Math.PI
                        * TURNS.check(turns)
                        * VELOCITY.check(velocity_mPerS)
                        * DENSITY.check(particleDensity_kgPerM3 - gasDensity_kgPerM3)));
    }

    /**
     * Share of particles of one size that is separated [-] (equation FLT-18).
     *
     * <pre>
     * η = 1 / (1 + (d50/d)²)
     * </pre>
     *
     * @param cutSize_m d50 [m]
     * @param diameter_m d [m]
     * @source Theodore and De Paola's fit to Lapple's curve; from memory
     * @example gradeEfficiency(5.285e-6, 1e-5) = 0.78167
     */
    public static double gradeEfficiency(double cutSize_m, double diameter_m) {
        double ratio = DIAMETER.check(cutSize_m) / DIAMETER.check(diameter_m);
        return 1 / (1 + ratio * ratio);
    }

    /**
     * Inlet velocity heads a cyclone takes [-] (equation FLT-19).
     *
     * <pre>
     * N_H = K H W / De²
     * </pre>
     *
     * @param k K [-], 16 after Shepherd and Lapple
     * @param inletHeight_m H [m]
     * @param inletWidth_m W [m]
     * @param outletDiameter_m De [m]
     * @source Shepherd and Lapple; from memory
     * @example velocityHeads(16, 0.5, 0.25, 0.5) = 8
     */
    public static double velocityHeads(double k, double inletHeight_m, double inletWidth_m, double outletDiameter_m) {
        double outlet_m = LENGTH.check(outletDiameter_m);
        return new Range("cyclone pressure drop", "K", "-", 7, 20).check(k)
                * LENGTH.check(inletHeight_m)
                * LENGTH.check(inletWidth_m)
                / (outlet_m * outlet_m);
    }

    /**
     * Pressure drop of a cyclone [Pa] (equation FLT-20).
     *
     * <pre>
     * Δp = N_H ρ v² / 2
     * </pre>
     *
     * @param velocityHeads N_H [-]
     * @param gasDensity_kgPerM3 ρ at the inlet [kg/m³]
     * @param velocity_mPerS v in the inlet [m/s]
     * @source definition of N_H
     * @example drop_Pa(8, 1.01, 20) = 1616
     */
    public static double drop_Pa(double velocityHeads, double gasDensity_kgPerM3, double velocity_mPerS) {
        double velocity = VELOCITY.check(velocity_mPerS);
        return new Range("cyclone pressure drop", "N_H", "-", 0, 100).check(velocityHeads)
                * new Range("cyclone pressure drop", "ρ", "kg/m³", 0.05, 10).check(gasDensity_kgPerM3)
                * velocity
                * velocity
                / 2;
    }
}
