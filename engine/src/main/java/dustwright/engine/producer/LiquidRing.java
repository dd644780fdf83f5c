package dustwright.engine.producer;

import dustwright.engine.quantity.Range;

/** Liquid-ring pump: what its seal liquid leaves of the vacuum. */
public final class LiquidRing {
    private static final Range BAROMETER = new Range("a liquid-ring pump", "p_a", "Pa absolute", 30_000, 110_000);
    private static final Range VAPOUR = new Range("a liquid-ring pump", "p_v", "Pa absolute", 100, 30_000);

    private LiquidRing() {}

    /**
     * Deepest possible vacuum of a liquid-ring pump [Pa] (equation PRD-11): its seal boils there. In practice it is limited to about 25
     * mmHg absolute before (a trade article).
     *
     * <pre>
     * vacuum = p_a − p_v
     * </pre>
     *
     * @param barometer_Pa p_a of the site [Pa absolute]
     * @param vapour_Pa p_v of the seal liquid at its temperature [Pa absolute]
     * @source Ryans and Roper, Process Vacuum System Design and Operation; from memory
     * @example deepestVacuum_Pa(101325, 4247) = 97078
     */
    public static double deepestVacuum_Pa(double barometer_Pa, double vapour_Pa) {
        return BAROMETER.check(barometer_Pa) - VAPOUR.check(vapour_Pa);
    }
}
