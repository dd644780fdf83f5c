package dustwright.engine.conveying;

import dustwright.engine.air.Air;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Velocity;

/**
 * Choking of one dust in a rising stretch, judged where air is slowest in it: at its foot, at the density there, by the least drop of
 * that stretch alone (equation CON-44). Fittings, bends and level tube of the same run have no say, so the answer is that of the pipe and
 * does not depend on how it is divided into runs.
 *
 * <pre>
 * d/dv [ f/D ρ_f v²/2 + Δps(v) per metre ] = 0
 * </pre>
 */
public final class RiserFoot {
    private final Rise rise;
    private final SolidsLoss metre;
    private final double area_m2;
    private final double rt_JPerKg;

    /** What is found at the foot: the air's velocity there, and that of least drop. */
    public record Found(Rise rise, AbsolutePressure pressure, Velocity gas, Velocity leastDrop) {
        /** Whether the stream collapses there: less air would need more pressure. */
        public boolean chokes() {
            return gas.compareTo(leastDrop) < 0;
        }

        /** How far the air lies above the least drop [-]: 0 at it, negative below. */
        public double distance() {
            return gas.metresPerSecond() / leastDrop.metresPerSecond() - 1;
        }
    }

    /**
     * Prepares a riser.
     *
     * @param airLoss of one metre of its tube, without loss coefficients
     */
    public RiserFoot(Rise rise, Length bore, Particle particle, Air air, AirLoss airLoss, LevelFriction friction) {
        this.rise = rise;
        metre = new SolidsLoss(rise.metre(), bore, particle, air, airLoss, friction);
        area_m2 = bore.circle().squareMetres();
        rt_JPerKg = air.rt();
    }

    public Rise rise() {
        return rise;
    }

    /** Velocity of least drop at a pressure of the foot [m/s]; 0 where no dust is carried. */
    public double leastDropVelocity_mPerS(double foot_Pa, double solids_kgPerS, double allSolids_kgPerS) {
        return metre.leastDropVelocity_mPerS(foot_Pa / rt_JPerKg, solids_kgPerS, allSolids_kgPerS);
    }

    /** The sheet of one state, at w ≥ 0 of air and m_s > 0 of dust. */
    public Found at(
            double air_kgPerS,
            double upstream_Pa,
            double downstream_Pa,
            double solids_kgPerS,
            double allSolids_kgPerS) {
        double foot_Pa = rise.foot_Pa(upstream_Pa, downstream_Pa);
        return new Found(
                rise,
                new AbsolutePressure(foot_Pa),
                new Velocity(air_kgPerS * rt_JPerKg / (foot_Pa * area_m2)),
                new Velocity(leastDropVelocity_mPerS(foot_Pa, solids_kgPerS, allSolids_kgPerS)));
    }
}
