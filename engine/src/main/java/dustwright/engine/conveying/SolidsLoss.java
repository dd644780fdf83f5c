package dustwright.engine.conveying;

import dustwright.engine.air.Air;
import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Range;
import dustwright.engine.quantity.Velocity;
import java.util.Optional;

/**
 * Extra pressure drop of one leg because it carries one dust (equation CON-39), at the leg's mean density ρ. Made once per leg, then
 * asked by a solver without allocation; {@link #at} gives the same figures as a sheet.
 *
 * <pre>
 * Δp = G c start + friction + G g Δz / c_r + G Σ c slowing        G = m_s/A,  v = w/(ρ A)
 * level:   c   = v (1 − lag),   friction 2 f_p G c L/D  (Hinkle, or Yang)
 * rising:  c_r = v − U_T,       friction 0.057 G L √(g/D)  (Konno and Saito, or Yang)
 * </pre>
 *
 * <p>Every part grows with the feed. With the air's velocity every part grows or stays, except lift, which falls: so a rising leg has
 * a velocity of least drop, air friction included (equation CON-42), below which one drop would have two flows. There the parts are
 * held at their values of that velocity, so that drop grows with flow everywhere; a state found there is {@link SolidsDrop#held()} and
 * no operating state. Below {@link #STANDSTILL_mPerS} everything is led straight to nothing, so that a solver passes through rest.
 *
 * <p>The share of the tube that is dust is neglected against 1 (below 1 % up to 5 kg/kg in this service). Flows are not negative: for a
 * leg flowing against its drawn direction make the path of the other way.
 */
public final class SolidsLoss {
    /** Gas velocity below which nothing is carried; a continuation for solvers, no physics [m/s]. */
    public static final double STANDSTILL_mPerS = 1;

    /** Published form of the wall friction of dust. */
    public enum Friction {
        /** Hinkle level, Konno and Saito upright: an upper estimate for fine dust in level tubes. */
        HINKLE_KONNO_SAITO(Source.published(
                "Hinkle 1953 and Konno and Saito 1969, as in Rhodes, Introduction to Particle" + " Technology")),
        /** Yang, both ways. */
        YANG(Source.fromMemory("Yang, AIChE Journal 20, 1974, 605-607 and 24, 1978, 548-552"));

        private final Source source;

        Friction(Source source) {
            this.source = source;
        }

        public Source source() {
            return source;
        }
    }

    private static final Range AIR_LOSS =
            new Range("the loss of the air in a rising leg", "f L/D + ΣK", "-", 1e-6, 1e9);
    private static final double G = Gravity.G_mPerS2;

    /** Where 24/Re meets 18.5 Re^−0.6: the drag of CON-33 without its step at Re 1. */
    private static final double CREEPING_UP_TO = Math.pow(24 / 18.5, 2.5);

    private static final double COARSE_DRAG = 0.44;
    private static final double YANG_LEVEL_POWER = 0.85;
    private static final double YANG_UPRIGHT_POWER = 0.979;
    private static final int HALVINGS = 60;

    private final SolidsPath path;
    private final Friction friction;
    private final boolean rises;
    private final double area_m2;
    private final double airLoss;
    private final double lag;
    /** Momentum given to the dust in starting and in bends, per flux and gas velocity [-]. */
    private final double startsAndBends;
    /** Reynolds number of the lag per mass flux ρ u. */
    private final double slipReynoldsPerMassFlux;
    /** What the friction law makes of the level stretch, with everything that does not change. */
    private final double levelFactor;
    /** The same for a metre of upright tube. */
    private final double uprightFactor;

    private final double terminalAtUnitDensity_mPerS;
    private final double terminalExponent;

    /**
     * Prepares a leg.
     *
     * @param air of the site; made for densities from half the site's to all of it
     * @param airLoss f L/D + ΣK of the leg's air in velocity heads, above 0, by which a rising leg finds its least drop; not read
     *     elsewhere
     * @throws dustwright.engine.quantity.OutOfRangeException when particles are too coarse and heavy for CON-30
     */
    public SolidsLoss(SolidsPath path, Length bore, Particle particle, Air air, double airLoss, Friction friction) {
        double size_m = particle.size().metres();
        double heavy = particle.density().kgPerCubicMetre();
        double bore_m = bore.metres();
        this.path = path;
        this.friction = friction;
        rises = path.lift_m() > 0;
        area_m2 = bore.circle().squareMetres();
        this.airLoss = rises ? AIR_LOSS.check(airLoss) : 0;
        lag = SolidsFriction.lag(size_m, heavy);
        startsAndBends = (path.startLevel() + path.bendsLevel()) * (1 - lag) + path.startRising() + path.bendsRising();
        slipReynoldsPerMassFlux = lag * size_m / air.viscosity_PaS();
        if (friction == Friction.YANG) {
            levelFactor = 2
                    * 0.117
                    / 4
                    / heavy
                    * Math.pow(heavy * (1 - lag) * Math.sqrt(G * bore_m), 1.15)
                    * path.level_m()
                    / bore_m;
            uprightFactor = 2 * 0.00315 * Math.pow(heavy, YANG_UPRIGHT_POWER - 1) / bore_m;
        } else {
            levelFactor = 0.75 * lag * lag / (1 - lag) / (heavy * size_m) * path.level_m();
            uprightFactor = SolidsFriction.konnoSaito_Pa(1, 1, bore_m);
        }
        double site = air.density_kgPerM3(air.ambient().pascals());
        double atSite_mPerS =
                TerminalVelocity.ofSphere(particle, site, air.viscosity_PaS()).metresPerSecond();
        double atHalf_mPerS = TerminalVelocity.ofSphere(particle, site / 2, air.viscosity_PaS())
                .metresPerSecond();
        terminalExponent = Math.log(atHalf_mPerS / atSite_mPerS) / Math.log(0.5);
        terminalAtUnitDensity_mPerS = atSite_mPerS * Math.pow(site, -terminalExponent);
    }

    /** Extra drop [Pa] for w ≥ 0 of air and m_s ≥ 0 of dust at the leg's mean density. */
    public double total_Pa(double air_kgPerS, double density_kgPerM3, double solids_kgPerS) {
        if (solids_kgPerS == 0) {
            return 0;
        }
        double flux = solids_kgPerS / area_m2;
        double terminal_mPerS = terminal_mPerS(density_kgPerM3);
        double v = air_kgPerS / (density_kgPerM3 * area_m2);
        double u = dilute_mPerS(v, density_kgPerM3, flux, terminal_mPerS);
        return sum_Pa(u, density_kgPerM3, flux, terminal_mPerS) * fade(v);
    }

    /** How the extra drop changes with the air flow, d(Δp)/dw [Pa s/kg], at constant density and feed; negative where lift rules. */
    public double slope_PaSPerKg(double air_kgPerS, double density_kgPerM3, double solids_kgPerS) {
        if (solids_kgPerS == 0) {
            return 0;
        }
        double flux = solids_kgPerS / area_m2;
        double terminal_mPerS = terminal_mPerS(density_kgPerM3);
        double perFlow = 1 / (density_kgPerM3 * area_m2);
        double v = air_kgPerS * perFlow;
        double u = dilute_mPerS(v, density_kgPerM3, flux, terminal_mPerS);
        double slope = u > v
                ? 0
                : growth_PaSPerM(u, density_kgPerM3, flux, terminal_mPerS) - liftFall_PaSPerM(u, flux, terminal_mPerS);
        if (v < STANDSTILL_mPerS) {
            double sum_Pa = sum_Pa(u, density_kgPerM3, flux, terminal_mPerS);
            slope = slope * fade(v) + sum_Pa / STANDSTILL_mPerS;
        }
        return slope * perFlow;
    }

    /**
     * Gas velocity at which the leg, air and dust together, loses least [m/s] (equation CON-42): below it one drop has two flows.
     *
     * <pre>
     * d/dv [ (f L/D + ΣK) ρ v²/2 + Δp(v) ] = 0
     * </pre>
     *
     * @return 0 where the leg lifts no dust
     */
    public double leastDropVelocity_mPerS(double density_kgPerM3, double solids_kgPerS) {
        return !rises || solids_kgPerS == 0
                ? 0
                : leastDrop_mPerS(density_kgPerM3, solids_kgPerS / area_m2, terminal_mPerS(density_kgPerM3));
    }

    /** Everything at one flow, as a sheet. */
    public SolidsDrop at(double air_kgPerS, double density_kgPerM3, double solids_kgPerS) {
        double flux = solids_kgPerS / area_m2;
        double terminal_mPerS = terminal_mPerS(density_kgPerM3);
        double v = air_kgPerS / (density_kgPerM3 * area_m2);
        double u = dilute_mPerS(v, density_kgPerM3, flux, terminal_mPerS);
        double level_mPerS = u * (1 - lag);
        double rising_mPerS = u - terminal_mPerS;
        double level_Pa = frictionLevel_Pa(u, density_kgPerM3, flux);
        double weightLevel_Pa = flux == 0 ? 0 : flux * G * path.level_m() / level_mPerS;
        boolean lifts = rises && flux > 0;
        return new SolidsDrop(
                faded(v, flux * (path.startLevel() * level_mPerS + path.startRising() * rising_mPerS)),
                faded(v, level_Pa + frictionUpright_Pa(u, flux, terminal_mPerS)),
                faded(v, lift_Pa(u, flux, terminal_mPerS)),
                faded(v, flux * (path.bendsLevel() * level_mPerS + path.bendsRising() * rising_mPerS)),
                new Velocity(v),
                new Velocity(level_mPerS),
                lifts ? Optional.of(new Velocity(rising_mPerS)) : Optional.empty(),
                lifts
                        ? Optional.of(new Velocity(leastDrop_mPerS(density_kgPerM3, flux, terminal_mPerS)))
                        : Optional.empty(),
                weightLevel_Pa > 0 && v > 0 ? level_Pa / weightLevel_Pa : 0,
                u > v);
    }

    private static PressureDifference faded(double v, double part_Pa) {
        return new PressureDifference(fade(v) * part_Pa);
    }

    private static double fade(double v) {
        return Math.min(1, v / STANDSTILL_mPerS);
    }

    private double terminal_mPerS(double density_kgPerM3) {
        // between the two densities it was computed for, a power of density is within 0.5 % of the sphere's own law
        return rises || friction == Friction.YANG
                ? terminalAtUnitDensity_mPerS * Math.pow(density_kgPerM3, terminalExponent)
                : 0;
    }

    // ---- the parts, at a gas velocity u on the dilute branch

    private double sum_Pa(double u, double density_kgPerM3, double flux, double terminal_mPerS) {
        double momentum_Pa = flux * (startsAndBends * u - (path.startRising() + path.bendsRising()) * terminal_mPerS);
        return momentum_Pa
                + frictionLevel_Pa(u, density_kgPerM3, flux)
                + frictionUpright_Pa(u, flux, terminal_mPerS)
                + lift_Pa(u, flux, terminal_mPerS);
    }

    private double lift_Pa(double u, double flux, double terminal_mPerS) {
        return rises ? flux * G * path.lift_m() / (u - terminal_mPerS) : 0;
    }

    private double frictionLevel_Pa(double u, double density_kgPerM3, double flux) {
        if (friction == Friction.YANG) {
            return levelFactor * Math.pow(flux, YANG_LEVEL_POWER);
        }
        double reynolds = slipReynoldsPerMassFlux * density_kgPerM3 * u;
        return reynolds < CREEPING_UP_TO
                ? levelFactor * flux * 24 / slipReynoldsPerMassFlux
                : levelFactor * flux * density_kgPerM3 * u * Math.max(18.5 * Math.pow(reynolds, -0.6), COARSE_DRAG);
    }

    private double frictionUpright_Pa(double u, double flux, double terminal_mPerS) {
        if (friction == Friction.YANG) {
            double rising =
                    path.rising_m() > 0 ? path.rising_m() * Math.pow(u - terminal_mPerS, YANG_UPRIGHT_POWER) : 0;
            double falling =
                    path.falling_m() > 0 ? path.falling_m() * Math.pow(u + terminal_mPerS, YANG_UPRIGHT_POWER) : 0;
            return uprightFactor * Math.pow(flux, 2 - YANG_UPRIGHT_POWER) * (rising + falling);
        }
        return uprightFactor * flux * (path.rising_m() + path.falling_m());
    }

    /** How everything but lift grows with the gas velocity [Pa s/m]. */
    private double growth_PaSPerM(double u, double density_kgPerM3, double flux, double terminal_mPerS) {
        return flux * startsAndBends
                + frictionLevelGrowth_PaSPerM(u, density_kgPerM3, flux)
                + frictionUprightGrowth_PaSPerM(u, flux, terminal_mPerS);
    }

    private double frictionLevelGrowth_PaSPerM(double u, double density_kgPerM3, double flux) {
        if (friction == Friction.YANG) {
            return 0;
        }
        double reynolds = slipReynoldsPerMassFlux * density_kgPerM3 * u;
        if (reynolds < CREEPING_UP_TO) {
            return 0;
        }
        double middle = 18.5 * Math.pow(reynolds, -0.6);
        return levelFactor * flux * density_kgPerM3 * (middle > COARSE_DRAG ? 0.4 * middle : COARSE_DRAG);
    }

    private double frictionUprightGrowth_PaSPerM(double u, double flux, double terminal_mPerS) {
        if (friction != Friction.YANG) {
            return 0;
        }
        double power = YANG_UPRIGHT_POWER - 1;
        double rising = path.rising_m() > 0 ? path.rising_m() * Math.pow(u - terminal_mPerS, power) : 0;
        double falling = path.falling_m() > 0 ? path.falling_m() * Math.pow(u + terminal_mPerS, power) : 0;
        return uprightFactor * Math.pow(flux, 2 - YANG_UPRIGHT_POWER) * YANG_UPRIGHT_POWER * (rising + falling);
    }

    private double liftFall_PaSPerM(double u, double flux, double terminal_mPerS) {
        double rising_mPerS = u - terminal_mPerS;
        return rises ? flux * G * path.lift_m() / (rising_mPerS * rising_mPerS) : 0;
    }

    // ---- the least drop of a rising leg

    /** The gas velocity, or that of the least drop where the air is slower. */
    private double dilute_mPerS(double v, double density_kgPerM3, double flux, double terminal_mPerS) {
        if (!rises || flux == 0 || (v > terminal_mPerS && wholeDropGrows(v, density_kgPerM3, flux, terminal_mPerS))) {
            return v;
        }
        return leastDrop_mPerS(density_kgPerM3, flux, terminal_mPerS);
    }

    private boolean wholeDropGrows(double u, double density_kgPerM3, double flux, double terminal_mPerS) {
        return airLoss * density_kgPerM3 * u + growth_PaSPerM(u, density_kgPerM3, flux, terminal_mPerS)
                >= liftFall_PaSPerM(u, flux, terminal_mPerS);
    }

    /** Air alone against lift puts an upper bound on the particle velocity sought; from there halving in its logarithm. */
    private double leastDrop_mPerS(double density_kgPerM3, double flux, double terminal_mPerS) {
        double high = Math.cbrt(flux * G * path.lift_m() / (airLoss * density_kgPerM3));
        double low = high / 10;
        while (wholeDropGrows(terminal_mPerS + low, density_kgPerM3, flux, terminal_mPerS)) {
            high = low;
            low /= 10;
        }
        for (int n = 0; n < HALVINGS && low < high * (1 - 1e-13); n++) {
            double middle = Math.sqrt(low * high);
            if (wholeDropGrows(terminal_mPerS + middle, density_kgPerM3, flux, terminal_mPerS)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return terminal_mPerS + high;
    }
}
