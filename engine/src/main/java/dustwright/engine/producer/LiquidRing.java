package dustwright.engine.producer;

import dustwright.engine.quantity.Range;

/** Liquid-ring pump: what its seal liquid leaves of the vacuum. */
public final class LiquidRing {
    private static final Range BAROMETER = new Range("a liquid-ring pump", "p_a", "Pa absolute", 30_000, 110_000);
    private static final Range VAPOUR = new Range("a liquid-ring pump", "p_v", "Pa absolute", 100, 30_000);

    /** Seal water that curves are taken with: 15 °C, common practice, no source [K]. */
    public static final double CURVE_WATER_K = 288.15;

    private LiquidRing() {}

    /**
     * Share of its flow of dry air that a liquid-ring pump keeps with seal water warmer than that of its curve [-] (equation PRD-36): the
     * vapour of the seal fills its part of every pocket. 0 where the water boils at the inlet.
     *
     * <pre>
     * s = (p_in − p_v) / (p_in − p_v0)
     * </pre>
     *
     * @param inlet_Pa p_in [Pa absolute]
     * @param vapour_Pa p_v of the seal liquid at its temperature [Pa absolute]
     * @param curveVapour_Pa p_v0 of that its curve was taken with, less than p_in [Pa absolute]
     * @source partial pressures, as in the performance standard for liquid-ring pumps of the Heat Exchange Institute; from memory
     * @example flowShare(14400, 9590, 1705) = 0.378889
     */
    public static double flowShare(double inlet_Pa, double vapour_Pa, double curveVapour_Pa) {
        return Math.max(0, inlet_Pa - VAPOUR.check(vapour_Pa)) / (inlet_Pa - VAPOUR.check(curveVapour_Pa));
    }

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
