package dustwright.engine.coverage;

import java.util.function.DoubleUnaryOperator;

/**
 * A velocity that a load asks, over the pressure, and the pressures that states of a pair may have.
 *
 * @param asked_mPerS by pressure
 */
record Carried(DoubleUnaryOperator asked_mPerS, double from_Pa, double to_Pa) {
    /** Places between two pressures at which the laws of conveying are looked at. */
    private static final int LOOKS = 8;

    /**
     * Greatest velocity asked over all pressures; at the extreme itself where what is asked falls with the pressure, but no faster than the
     * velocity there is, for then the extreme is the least margin.
     *
     * @param same velocities count as one within this share
     */
    double mostAsked_mPerS(double at_Pa, double same) {
        double most = asked_mPerS.applyAsDouble(at_Pa);
        double last = asked_mPerS.applyAsDouble(Math.min(from_Pa, to_Pa));
        double greatest = Math.max(most, last);
        boolean ordered = true;
        double step = Math.abs(from_Pa - to_Pa) / LOOKS;
        for (int n = 1; n <= LOOKS && step > 0; n++) {
            double p = Math.min(from_Pa, to_Pa) + n * step;
            double asked = asked_mPerS.applyAsDouble(p);
            ordered &= asked <= last * (1 + same) && asked * p >= last * (p - step) * (1 - same);
            greatest = Math.max(greatest, asked);
            last = asked;
        }
        return ordered ? most : greatest;
    }
}
