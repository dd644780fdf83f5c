package dustwright.engine.conveying;

import dustwright.engine.air.Air;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Velocity;
import java.util.Optional;

/**
 * Extra pressure drop of one leg because it carries one dust (equation CON-39), at the leg's mean density ρ. Made once per leg, then
 * asked by a solver without allocation; {@link #at} gives the same figures as a sheet.
 *
 * <pre>
 * Δp = G c start + friction + G g Δz / c_r + G Σ c slowing        G = m_s/A,  v = w/(ρ A)
 * level:   c   = v (1 − lag),   friction 2 f_p G c L/D  ({@link LevelFriction})
 * rising:  c_r = v − U_T,       friction 0.057 G L √(g/D)  (Konno and Saito)
 * </pre>
 *
 * <p>Every part grows with the feed. With the air's velocity every part grows or stays, except lift, which falls: so a rising leg has
 * a velocity of least drop, air friction included (equation CON-42), below which one drop would have two flows. There the parts are
 * held at their values of that velocity, so that drop grows with flow everywhere; a state found there is {@link SolidsDrop#held()} and
 * no operating state. Below {@link #STANDSTILL_mPerS} everything is led straight to nothing, so that a solver passes through rest.
 *
 * <p>Several dusts in one leg: their drops add up, each at the flux of its own; Yang's factor goes by all of them together, and the
 * air's share in the least drop is given to each by its share of the feed, so that one dust entered as two costs the same.
 *
 * <p>The share of the tube that is dust is neglected against 1 (below 1 % up to 5 kg/kg in this service). Flows are not negative: for a
 * leg flowing against its drawn direction make the path of the other way.
 */
public final class SolidsLoss {
    /** Gas velocity below which nothing is carried; a continuation for solvers, no physics [m/s]. */
    public static final double STANDSTILL_mPerS = 1;

    private static final double G = Gravity.G_mPerS2;

    /** Where 24/Re meets 18.5 Re^−0.6: the drag of CON-33 without its step at Re 1. */
    private static final double CREEPING_UP_TO = Math.pow(24 / 18.5, 2.5);

    private static final double COARSE_DRAG = 0.44;
    private static final double YANG_POWER = -0.15;
    private static final double FASTEST_mPerS = 1e4;
    private static final int HALVINGS = 60;

    /** What {@link #evaluate} finds, kept by the one who asks. */
    public static final class Found {
        /** Extra drop [Pa]. */
        public double drop_Pa;
        /** How it changes with the air flow at constant density and feed [Pa s/kg]; negative where lift rules. */
        public double perFlow_PaSPerKg;
        /** How it changes with the density at constant flow and feed [Pa m³/kg]. */
        public double perDensity_PaM3PerKg;
        /** How it changes when all dust in the leg grows in proportion, d(Δp)/d ln m_s [Pa]. */
        public double perFeed_Pa;

        /** Starts a sum. */
        public void clear() {
            drop_Pa = 0;
            perFlow_PaSPerKg = 0;
            perDensity_PaM3PerKg = 0;
            perFeed_Pa = 0;
        }

        /** Adds what another dust costs. */
        public void add(Found other) {
            drop_Pa += other.drop_Pa;
            perFlow_PaSPerKg += other.perFlow_PaSPerKg;
            perDensity_PaM3PerKg += other.perDensity_PaM3PerKg;
            perFeed_Pa += other.perFeed_Pa;
        }
    }

    private final SolidsPath path;
    private final LevelFriction friction;
    private final boolean rises;
    private final double area_m2;
    private final AirLoss airLoss;
    private final double lag;
    /** Momentum given to the dust in starting and in bends, per flux and gas velocity [-]. */
    private final double startsAndBends;
    /** The part of it in rising stretches, where dust is slower than the air by U_T [-]. */
    private final double startsAndBendsRising;
    /** Reynolds number of the lag per mass flux ρ u. */
    private final double slipReynoldsPerMassFlux;
    /** What the friction law makes of the level stretch, with everything that does not change. */
    private final double levelFactor;
    /** Friction of upright stretches per flux. */
    private final double uprightFactor;

    private final double terminalAtUnitDensity_mPerS;
    private final double terminalExponent;

    /**
     * Prepares a leg.
     *
     * @param air of the site; made for densities from half the site's to all of it
     */
    public SolidsLoss(
            SolidsPath path, Length bore, Particle particle, Air air, AirLoss airLoss, LevelFriction friction) {
        double size_m = particle.size().metres();
        double heavy = particle.density().kgPerCubicMetre();
        double bore_m = bore.metres();
        this.path = path;
        this.friction = friction;
        this.airLoss = airLoss;
        rises = path.lift_m() > 0;
        area_m2 = bore.circle().squareMetres();
        lag = SolidsFriction.lag(particle);
        startsAndBendsRising = path.startRising() + path.bendsRising();
        startsAndBends = (path.startLevel() + path.bendsLevel()) * (1 - lag) + startsAndBendsRising;
        slipReynoldsPerMassFlux = lag * size_m / air.viscosity_PaS();
        levelFactor = friction == LevelFriction.YANG
                ? 2
                        * 0.117
                        / 4
                        / heavy
                        * Math.pow(heavy * (1 - lag) * Math.sqrt(G * bore_m), 1.15)
                        * path.level_m()
                        / bore_m
                : 0.75 * lag * lag / (1 - lag) / (heavy * size_m) * path.level_m();
        uprightFactor = SolidsFriction.konnoSaito_Pa(1, path.rising_m() + path.falling_m(), bore_m);
        double site = air.density_kgPerM3(air.ambient().pascals());
        double atSite_mPerS =
                TerminalVelocity.ofSphere(particle, site, air.viscosity_PaS()).metresPerSecond();
        double atHalf_mPerS = TerminalVelocity.ofSphere(particle, site / 2, air.viscosity_PaS())
                .metresPerSecond();
        terminalExponent = Math.log(atHalf_mPerS / atSite_mPerS) / Math.log(0.5);
        terminalAtUnitDensity_mPerS = atSite_mPerS * Math.pow(site, -terminalExponent);
    }

    /** The way of the dust through the leg. */
    public SolidsPath path() {
        return path;
    }

    /**
     * Extra drop and its slopes at w ≥ 0 of air at the leg's mean density.
     *
     * @param solids_kgPerS m_s of this dust, ≥ 0
     * @param allSolids_kgPerS of all dusts in the leg, this one included
     */
    public void evaluate(
            double air_kgPerS, double density_kgPerM3, double solids_kgPerS, double allSolids_kgPerS, Found into) {
        if (solids_kgPerS == 0) {
            into.clear();
            return;
        }
        double flux = solids_kgPerS / area_m2;
        double share = solids_kgPerS / allSolids_kgPerS;
        double terminal = terminal_mPerS(density_kgPerM3);
        double terminalSlope = terminalExponent * terminal / density_kgPerM3;
        double perFlow = 1 / (density_kgPerM3 * area_m2);
        double v = air_kgPerS * perFlow;
        double u = v;
        double uByFlow = perFlow;
        double uByDensity = -v / density_kgPerM3;
        double uByFeed = 0;
        if (held(v, density_kgPerM3, flux, share, terminal)) {
            u = leastDrop_mPerS(density_kgPerM3, flux, share, terminal);
            uByFlow = 0;
            double growthSlope = wholeGrowthSlope(u, density_kgPerM3, flux, share, terminal);
            uByDensity = -wholeGrowthByDensity(u, density_kgPerM3, flux, share, terminal, terminalSlope) / growthSlope;
            uByFeed = share * airLoss.growth_PaSPerM(u, density_kgPerM3) / growthSlope;
        }
        double lift_Pa = lift_Pa(u, flux, terminal);
        double liftByTerminal = rises ? lift_Pa / (u - terminal) : 0;
        double levelByMassFlux = levelByMassFlux(u * density_kgPerM3, flux);
        double byVelocity = flux * startsAndBends + density_kgPerM3 * levelByMassFlux - liftByTerminal;
        double byDensity = u * levelByMassFlux + (liftByTerminal - flux * startsAndBendsRising) * terminalSlope;
        double level_Pa = level_Pa(u * density_kgPerM3, flux, flux / share);
        double sum_Pa = flux * (startsAndBends * u - startsAndBendsRising * terminal)
                + level_Pa
                + uprightFactor * flux
                + lift_Pa;
        double fade = fade(v);
        double fadeByVelocity = v < STANDSTILL_mPerS ? sum_Pa / STANDSTILL_mPerS : 0;
        into.drop_Pa = sum_Pa * fade;
        into.perFlow_PaSPerKg = byVelocity * uByFlow * fade + fadeByVelocity * perFlow;
        into.perDensity_PaM3PerKg = (byDensity + byVelocity * uByDensity) * fade - fadeByVelocity * v / density_kgPerM3;
        double byFeed_Pa = sum_Pa + (friction == LevelFriction.YANG ? YANG_POWER * level_Pa : 0);
        into.perFeed_Pa = (byFeed_Pa + byVelocity * uByFeed) * fade;
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
    public double leastDropVelocity_mPerS(double density_kgPerM3, double solids_kgPerS, double allSolids_kgPerS) {
        return !rises || solids_kgPerS == 0
                ? 0
                : leastDrop_mPerS(
                        density_kgPerM3,
                        solids_kgPerS / area_m2,
                        solids_kgPerS / allSolids_kgPerS,
                        terminal_mPerS(density_kgPerM3));
    }

    /** Everything at one flow, as a sheet. */
    public SolidsDrop at(double air_kgPerS, double density_kgPerM3, double solids_kgPerS, double allSolids_kgPerS) {
        double flux = solids_kgPerS / area_m2;
        double share = solids_kgPerS == 0 ? 1 : solids_kgPerS / allSolids_kgPerS;
        double terminal = terminal_mPerS(density_kgPerM3);
        double v = air_kgPerS / (density_kgPerM3 * area_m2);
        boolean lifts = rises && flux > 0;
        boolean held = lifts && held(v, density_kgPerM3, flux, share, terminal);
        double least = lifts ? leastDrop_mPerS(density_kgPerM3, flux, share, terminal) : 0;
        double u = held ? least : v;
        double level_mPerS = u * (1 - lag);
        double rising_mPerS = u - terminal;
        double level_Pa = flux == 0 ? 0 : level_Pa(u * density_kgPerM3, flux, flux / share);
        double weightLevel_Pa = flux == 0 ? 0 : flux * G * path.level_m() / level_mPerS;
        return new SolidsDrop(
                faded(v, flux * (path.startLevel() * level_mPerS + path.startRising() * rising_mPerS)),
                faded(v, level_Pa),
                faded(v, uprightFactor * flux),
                faded(v, lift_Pa(u, flux, terminal)),
                faded(v, flux * (path.bendsLevel() * level_mPerS + path.bendsRising() * rising_mPerS)),
                friction,
                path,
                new Velocity(v),
                new Velocity(level_mPerS),
                lifts ? Optional.of(new Velocity(rising_mPerS)) : Optional.empty(),
                lifts ? Optional.of(new Velocity(least)) : Optional.empty(),
                weightLevel_Pa > 0 && v > 0 ? level_Pa / weightLevel_Pa : 0,
                held);
    }

    private static PressureDifference faded(double v, double part_Pa) {
        return new PressureDifference(fade(v) * part_Pa);
    }

    private static double fade(double v) {
        return Math.min(1, v / STANDSTILL_mPerS);
    }

    /** Between the two densities it was computed for, a power of density is within 0.5 % of the sphere's own law. */
    private double terminal_mPerS(double density_kgPerM3) {
        return rises ? terminalAtUnitDensity_mPerS * Math.pow(density_kgPerM3, terminalExponent) : 0;
    }

    // ---- the parts, at a gas velocity u on the dilute branch

    private double lift_Pa(double u, double flux, double terminal) {
        return rises ? flux * G * path.lift_m() / (u - terminal) : 0;
    }

    /** None without level tubes, and by its drag none of particles as fast as the air: their drag goes to nothing with the lag. */
    private double level_Pa(double massFlux, double flux, double fluxOfAll) {
        if (levelFactor == 0) {
            return 0;
        }
        if (friction == LevelFriction.YANG) {
            return levelFactor * flux * Math.pow(fluxOfAll, YANG_POWER);
        }
        double reynolds = slipReynoldsPerMassFlux * massFlux;
        return reynolds < CREEPING_UP_TO
                ? levelFactor * flux * 24 / slipReynoldsPerMassFlux
                : levelFactor * flux * massFlux * Math.max(18.5 * Math.pow(reynolds, -0.6), COARSE_DRAG);
    }

    private double levelByMassFlux(double massFlux, double flux) {
        double reynolds = slipReynoldsPerMassFlux * massFlux;
        if (friction == LevelFriction.YANG || reynolds < CREEPING_UP_TO) {
            return 0;
        }
        double middle = 18.5 * Math.pow(reynolds, -0.6);
        return levelFactor * flux * (middle > COARSE_DRAG ? 0.4 * middle : COARSE_DRAG);
    }

    // ---- the least drop of a rising leg

    private boolean held(double v, double density_kgPerM3, double flux, double share, double terminal) {
        return rises && (v <= terminal || wholeGrowth(v, density_kgPerM3, flux, share, terminal) < 0);
    }

    /** How the whole drop, air and dust, grows with the velocity [Pa s/m]; rises with u from far below nothing. */
    private double wholeGrowth(double u, double density_kgPerM3, double flux, double share, double terminal) {
        double rising = u - terminal;
        return share * airLoss.growth_PaSPerM(u, density_kgPerM3)
                + flux * startsAndBends
                + density_kgPerM3 * levelByMassFlux(u * density_kgPerM3, flux)
                - flux * G * path.lift_m() / (rising * rising);
    }

    /** Bracketed in the particle velocity, then halved in its logarithm. */
    private double leastDrop_mPerS(double density_kgPerM3, double flux, double share, double terminal) {
        double high = 1;
        while (high < FASTEST_mPerS && wholeGrowth(terminal + high, density_kgPerM3, flux, share, terminal) < 0) {
            high *= 4;
        }
        double low = high / 4;
        while (wholeGrowth(terminal + low, density_kgPerM3, flux, share, terminal) >= 0) {
            high = low;
            low /= 4;
        }
        for (int n = 0; n < HALVINGS && low < high * (1 - 1e-14); n++) {
            double middle = Math.sqrt(low * high);
            if (wholeGrowth(terminal + middle, density_kgPerM3, flux, share, terminal) >= 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return terminal + high;
    }

    /** How the growth changes with the velocity. */
    private double wholeGrowthSlope(double u, double density_kgPerM3, double flux, double share, double terminal) {
        double rising = u - terminal;
        double massFlux = u * density_kgPerM3;
        return share * airLoss.growthSlope(u, density_kgPerM3)
                + levelPower(massFlux) * levelByMassFlux(massFlux, flux) * density_kgPerM3 / u
                + 2 * flux * G * path.lift_m() / (rising * rising * rising);
    }

    /** How the growth changes with the density. */
    private double wholeGrowthByDensity(
            double u, double density_kgPerM3, double flux, double share, double terminal, double terminalSlope) {
        double rising = u - terminal;
        double massFlux = u * density_kgPerM3;
        return share * airLoss.growthSlope(u, density_kgPerM3) * u / density_kgPerM3
                + (1 + levelPower(massFlux)) * levelByMassFlux(massFlux, flux)
                - 2 * flux * G * path.lift_m() / (rising * rising * rising) * terminalSlope;
    }

    /** Drag falls as a power of the mass flux between creeping and coarse, and is a constant beyond. */
    private double levelPower(double massFlux) {
        return 18.5 * Math.pow(slipReynoldsPerMassFlux * massFlux, -0.6) > COARSE_DRAG ? -0.6 : 0;
    }
}
