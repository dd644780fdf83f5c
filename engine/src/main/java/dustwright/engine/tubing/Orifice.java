package dustwright.engine.tubing;

import dustwright.engine.air.Air;
import dustwright.engine.quantity.Range;
import dustwright.engine.quantity.Units;

/**
 * A sharp-edged measuring orifice with taps at D and D/2 (equations TUB-24 to TUB-26).
 *
 * <pre>
 * w = C ε /√(1 − β⁴) · π/4 d² √(2 ρ1 (p1 − p2))
 * </pre>
 *
 * @param bore_m D, bore of the tube [m], 0.05 to 1
 * @param opening_m d, bore of the orifice [m], from 0.0125; β = d/D from 0.1 to 0.75
 * @source ISO 5167-2:2003
 */
public record Orifice(double bore_m, double opening_m) {
    private static final Range BORE = new Range("ISO 5167-2", "D", "m", 0.05, 1);
    private static final Range OPENING = new Range("ISO 5167-2", "d", "m", 0.0125, 0.75);
    private static final Range BETA = new Range("ISO 5167-2", "β", "-", 0.1, 0.75);
    private static final Range RATIO = new Range("the expansibility of ISO 5167-2", "p2/p1", "-", 0.75, 1);
    private static final Range REYNOLDS_SMALL = new Range("ISO 5167-2, β up to 0.56", "Re", "-", 5000, 1e9);
    private static final double LARGE_BETA = 0.56;
    private static final double SMALL_BORE_m = 0.07112;
    private static final int STEP_LIMIT = 50;

    public Orifice {
        BORE.check(bore_m);
        OPENING.check(opening_m);
        BETA.check(opening_m / bore_m);
    }

    /** β = d/D [-]. */
    public double beta() {
        return opening_m / bore_m;
    }

    /**
     * Expansibility ε of air [-] (equation TUB-24), p2/p1 from 0.75.
     *
     * <pre>
     * ε = 1 − (0.351 + 0.256 β⁴ + 0.93 β⁸) [1 − (p2/p1)^(1/γ)]
     * </pre>
     */
    public double expansibility(double pressureRatio) {
        double fourth = Math.pow(beta(), 4);
        return 1
                - (0.351 + fourth * (0.256 + 0.93 * fourth))
                        * (1 - Math.pow(RATIO.check(pressureRatio), 1 / Air.GAMMA));
    }

    /**
     * Discharge coefficient C [-] (equation TUB-25, Reader-Harris and Gallagher; L1 = 1, L2' = 0.47).
     *
     * <pre>
     * C = 0.5961 + 0.0261 β² − 0.216 β⁸ + 0.000521 (10⁶ β/Re)^0.7 + (0.0188 + 0.0063 A) β^3.5 (10⁶/Re)^0.3
     *   + (0.043 + 0.080 e^(−10 L1) − 0.123 e^(−7 L1)) (1 − 0.11 A) β⁴/(1 − β⁴)
     *   − 0.031 (M2 − 0.8 M2^1.1) β^1.3 + [0.011 (0.75 − β)(2.8 − D/25.4 mm) for D below 71.12 mm]
     * A = (19000 β/Re)^0.8,   M2 = 2 L2'/(1 − β)
     * </pre>
     *
     * @param reynolds on the tube's bore [-], from 5000 (β up to 0.56) or 16000 β²
     */
    public double dischargeCoefficient(double reynolds) {
        double beta = beta();
        if (beta <= LARGE_BETA) {
            REYNOLDS_SMALL.check(reynolds);
        } else {
            new Range("ISO 5167-2, β above 0.56", "Re", "-", 16_000 * beta * beta, 1e9).check(reynolds);
        }
        double square = beta * beta;
        double fourth = square * square;
        double a = Math.pow(19_000 * beta / reynolds, 0.8);
        double dam = 2 * 0.47 / (1 - beta);
        double corner = 0.5961
                + 0.0261 * square
                - 0.216 * fourth * fourth
                + 0.000521 * Math.pow(1e6 * beta / reynolds, 0.7)
                + (0.0188 + 0.0063 * a) * Math.pow(beta, 3.5) * Math.pow(1e6 / reynolds, 0.3);
        double upstreamTap =
                (0.043 + 0.080 * Math.exp(-10) - 0.123 * Math.exp(-7)) * (1 - 0.11 * a) * fourth / (1 - fourth);
        double downstreamTap = -0.031 * (dam - 0.8 * Math.pow(dam, 1.1)) * Math.pow(beta, 1.3);
        double smallTube = bore_m < SMALL_BORE_m ? 0.011 * (0.75 - beta) * (2.8 - bore_m / Units.INCH_m) : 0;
        return corner + upstreamTap + downstreamTap + smallTube;
    }

    /** Mass flow of air [kg/s] at two tap pressures, with the density at the upstream tap. */
    public double airFlow_kgPerS(double p1_Pa, double p2_Pa, double density1_kgPerM3, double viscosity_PaS) {
        return massFlow_kgPerS(p1_Pa - p2_Pa, density1_kgPerM3, viscosity_PaS, expansibility(p2_Pa / p1_Pa));
    }

    /**
     * Mass flow [kg/s] at a tap difference above 0, solved with C at its own Reynolds number by direct substitution, which gains two
     * digits or more with every step.
     *
     * @param expansibility ε, 1 for a liquid
     */
    public double massFlow_kgPerS(
            double difference_Pa, double density1_kgPerM3, double viscosity_PaS, double expansibility) {
        double perC = expansibility
                / Math.sqrt(1 - Math.pow(beta(), 4))
                * Math.PI
                / 4
                * opening_m
                * opening_m
                * Math.sqrt(2 * density1_kgPerM3 * difference_Pa);
        double flow = 0.6 * perC;
        for (int n = 0; n < STEP_LIMIT; n++) {
            double next = perC * dischargeCoefficient(Friction.reynolds(flow, bore_m, viscosity_PaS));
            double step = next - flow;
            flow = next;
            if (Math.abs(step) <= 1e-14 * flow) {
                break;
            }
        }
        return flow;
    }

    /**
     * Pressure that does not come back behind the orifice [Pa] (equation TUB-26).
     *
     * <pre>
     * Δp_lost = (p1 − p2) (√(1 − β⁴ (1 − C²)) − C β²) / (√(1 − β⁴ (1 − C²)) + C β²)
     * </pre>
     */
    public double permanentLoss_Pa(double difference_Pa, double dischargeCoefficient) {
        double root = root(dischargeCoefficient);
        double jet = dischargeCoefficient * beta() * beta();
        return difference_Pa * (root - jet) / (root + jet);
    }

    /**
     * The permanent loss as an incompressible coefficient on the tube's velocity [-] (equation TUB-26); for air divide it by ε².
     *
     * <pre>
     * K = ( √(1 − β⁴ (1 − C²)) / (C β²) − 1 )²
     * </pre>
     */
    public double k(double dischargeCoefficient) {
        double k = root(dischargeCoefficient) / (dischargeCoefficient * beta() * beta()) - 1;
        return k * k;
    }

    private double root(double dischargeCoefficient) {
        return Math.sqrt(1 - Math.pow(beta(), 4) * (1 - dischargeCoefficient * dischargeCoefficient));
    }
}
