package dustwright.engine.network;

/**
 * What one leg of one bore takes from the air, in pressure squared (equation NET-1), for kernels that fold and for coverage.
 *
 * <pre>
 * P1 − P2 = loss(w) + c w² ln(P1/P2),   loss(w) = c w² ( f(Re) L/D + K ),   c = R T/A²
 * </pre>
 *
 * @param c R T/A² [J/(kg m⁴)]
 * @param lengthOverBore L/D with what the bends add; 0 where a stated friction factor has gone into K [-]
 * @param k ΣK [-]
 * @param unitPerFlow x = Re/2000 of one kg/s [s/kg]
 * @param laminar f w² of one kg/s in laminar flow [kg/s]
 */
public record LegLaw(
        double c, double lengthOverBore, double k, double unitPerFlow, double laminar, FrictionTable friction) {
    /** Within this the series of {@link #logarithm} leaves an error below 1e-14. */
    private static final double SERIES_UP_TO = 0.06;

    /** Greatest flow the friction table reaches, well beyond what air can do [kg/s]. */
    public double most_kgPerS() {
        return FrictionTable.END / unitPerFlow;
    }

    /** Whether the flow is beyond the range of Reynolds numbers, up to 4 000, in which the friction law bends fast. */
    public boolean turbulent(double flow_kgPerS) {
        return lengthOverBore == 0 || flow_kgPerS * unitPerFlow >= 2;
    }

    /** loss(w), odd in w [Pa²]. */
    public double loss_Pa2(double flow_kgPerS) {
        double w = Math.abs(flow_kgPerS);
        double x = w * unitPerFlow;
        double friction_w2 = laminar * w;
        if (x >= 1) {
            friction_w2 = friction.at(FrictionTable.piece(x), FrictionTable.into(x)) * w * w;
        }
        return Math.copySign(c * (lengthOverBore * friction_w2 + k * w * w), flow_kgPerS);
    }

    /** d loss/dw [Pa² s/kg]. */
    public double lossSlope(double flow_kgPerS) {
        double w = Math.abs(flow_kgPerS);
        double x = w * unitPerFlow;
        double frictionSlope = laminar;
        if (x >= 1) {
            int piece = FrictionTable.piece(x);
            double into = FrictionTable.into(x);
            frictionSlope = w * (2 * friction.at(piece, into) + x * friction.slope(piece, into));
        }
        return c * (lengthOverBore * frictionSlope + 2 * k * w);
    }

    /** ln(a/b), by a short series where a and b are close, as they are over most legs. */
    public static double logarithm(double a, double b) {
        double z = (a - b) / (a + b);
        if (Math.abs(z) >= SERIES_UP_TO) {
            return Math.log(a / b);
        }
        double y = z * z;
        return 2 * z * (1 + y * (1.0 / 3 + y * (1.0 / 5 + y * (1.0 / 7 + y * (1.0 / 9)))));
    }
}
