package dustwright.engine.cost;

import dustwright.engine.quantity.Range;

/** Compressed air for filter pulses and neck seals, as free air. */
public final class CompressedAir {
    /** Free air of pulse cleaning over air filtered: 2 scfm per 1000 cfm, EPA Cost Manual, from memory [-]. */
    public static final double USUAL_PULSE_SHARE = 0.002;

    private static final Range FLOW = new Range("pulse air", "Q", "m³/s", 0, 1e3);
    private static final Range FREE_AIR = new Range("compressed air", "V", "m³ free air", 0, 1e3);
    private static final Range COUNT = new Range("compressed air", "count", "-", 0, 1e9);
    private static final Range GAUGE = new Range("compressed air", "p", "Pa gauge", 0, 2e6);
    private static final Range BAROMETER = new Range("compressed air", "p_a", "Pa absolute", 30_000, 110_000);
    private static final Range VOLUME = new Range("compressed air", "V", "m³", 0, 100);
    private static final Range SPECIFIC = new Range("compressed air", "specific energy", "J/m³ free air", 1e5, 2e6);

    private CompressedAir() {}

    /**
     * Free air of pulse cleaning by the air filtered [m³/s] (equation CST-15), where nothing else is known.
     *
     * <pre>
     * Q_air = 0.002 Q
     * </pre>
     *
     * @param filtered_m3PerS Q through the filter [m³/s]
     * @source EPA Air Pollution Control Cost Manual, about 2 scfm per 1000 cfm; from memory
     * @example usualPulseAir_m3PerS(0.943895) = 0.00188779
     */
    public static double usualPulseAir_m3PerS(double filtered_m3PerS) {
        return USUAL_PULSE_SHARE * FLOW.check(filtered_m3PerS);
    }

    /**
     * Free air of a number of pulses [m³] (equation CST-16).
     *
     * <pre>
     * V = N V_pulse
     * </pre>
     *
     * @param pulses N
     * @param perPulse_m3 V_pulse, free air of one pulse, stated by the valve's maker [m³ free air]
     * @source definition
     * @example pulses_m3(240, 0.03) = 7.2
     */
    public static double pulses_m3(double pulses, double perPulse_m3) {
        return COUNT.check(pulses) * FREE_AIR.check(perPulse_m3);
    }

    /**
     * Free air to inflate a neck seal once [m³] (equation CST-17).
     *
     * <pre>
     * V_free = V (1 + p/p_a)
     * </pre>
     *
     * @param volume_m3 V of the inflated seal [m³]
     * @param gauge_Pa p of the seal [Pa gauge]
     * @param barometer_Pa p_a [Pa absolute]
     * @source Boyle; the air that fills it at ambient pressure is counted too
     * @example seal_m3(0.004, 27579, 101325) = 0.0050887
     */
    public static double seal_m3(double volume_m3, double gauge_Pa, double barometer_Pa) {
        return VOLUME.check(volume_m3) * (1 + GAUGE.check(gauge_Pa) / BAROMETER.check(barometer_Pa));
    }

    /**
     * Electrical energy for compressed air [kWh] (equation CST-18).
     *
     * <pre>
     * E = V e
     * </pre>
     *
     * @param freeAir_m3 V, free air of a year or another span [m³]
     * @param specific_JPerM3 e of the site's compressor [J/m³ free air]; 3.6e5 to 4.7e5 at 7 bar gauge (common practice, no source)
     * @source definition
     * @example energy_kWh(1000, 400000) = 111.11
     */
    public static double energy_kWh(double freeAir_m3, double specific_JPerM3) {
        return new Range("compressed air", "V", "m³ free air", 0, 1e10).check(freeAir_m3)
                * SPECIFIC.check(specific_JPerM3)
                / 3.6e6;
    }
}
