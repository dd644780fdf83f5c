package dustwright.engine.noise;

import dustwright.engine.quantity.Range;

/**
 * Levels in decibels: adding, distance, silencer, weighting. A screening: rooms, directions and enclosures are left out, and sound
 * spreads as in the open unless said otherwise.
 */
public final class SoundLevel {
    private static final Range LEVEL = new Range("sound levels", "L", "dB", -50, 200);
    private static final Range LOSS = new Range("a silencer", "insertion loss", "dB", 0, 60);
    private static final Range DISTANCE = new Range("distance from a source", "r", "m", 0.1, 1e4);
    private static final Range POWER = new Range("sound power", "W", "W", 1e-12, 1e6);
    private static final Range BAND = new Range("A-weighting", "f", "Hz", 10, 20_000);
    private static final Range SPEED = new Range("pulsation", "n", "1/s", 0, 200);

    private SoundLevel() {}

    /**
     * Level of several sources together [dB] (equation CST-1). Never the sum of decibels: two of 70 dB make 73.
     *
     * <pre>
     * L = 10 log10 Σ 10^(L_i/10)
     * </pre>
     *
     * @param levels_dB L_i, at least one [dB]
     * @source definition; OSHA prints 85 + 83 + 88 = 90.6 dB
     * @example sum_dB(85, 83, 88) = 90.5945
     */
    public static double sum_dB(double... levels_dB) {
        if (levels_dB.length == 0) {
            throw new IllegalArgumentException("no source: there is no level to add");
        }
        double energy = 0;
        for (double level_dB : levels_dB) {
            energy += Math.pow(10, LEVEL.check(level_dB) / 10);
        }
        return 10 * Math.log10(energy);
    }

    /**
     * Level at another distance in the open [dB] (equation CST-2): 6 dB less for each doubling. Indoors it falls less.
     *
     * <pre>
     * L_2 = L_1 − 20 log10(r_2/r_1)
     * </pre>
     *
     * @param level_dB L_1 at r_1 [dB]
     * @param from_m r_1 [m]
     * @param to_m r_2 [m]
     * @source inverse square law
     * @example atDistance_dB(88, 1, 4) = 75.9588
     */
    public static double atDistance_dB(double level_dB, double from_m, double to_m) {
        return LEVEL.check(level_dB) - 20 * Math.log10(DISTANCE.check(to_m) / DISTANCE.check(from_m));
    }

    /**
     * Level after a silencer or hood [dB] (equation CST-3). What it does not cover, such as the casing, is added by CST-1.
     *
     * <pre>
     * L_2 = L_1 − D
     * </pre>
     *
     * @param level_dB L_1 [dB]
     * @param insertionLoss_dB D [dB]; silencers of lobe pumps 20 to 30, hoods 15 to 20 (common practice, no source)
     * @source definition of insertion loss
     * @example silenced_dB(105, 25) = 80
     */
    public static double silenced_dB(double level_dB, double insertionLoss_dB) {
        return LEVEL.check(level_dB) - LOSS.check(insertionLoss_dB);
    }

    /**
     * Sound power level [dB over 1 pW] (equation CST-4).
     *
     * <pre>
     * L_W = 10 log10(W / 1 pW)
     * </pre>
     *
     * @param power_W W, sound power [W]
     * @source definition
     * @example powerLevel_dB(0.01) = 100
     */
    public static double powerLevel_dB(double power_W) {
        return 10 * Math.log10(POWER.check(power_W) / 1e-12);
    }

    /**
     * A-weighting of an octave or third-octave band [dB] (equation CST-5), at the exact base-ten mid frequency nearest to the nominal
     * one: 125.9 Hz for the 125 Hz band.
     *
     * <pre>
     * A(f) = 20 log10[ 12194² f⁴ / ((f²+20.6²) √((f²+107.7²)(f²+737.9²)) (f²+12194²)) ] + 2.00
     * </pre>
     *
     * @param nominal_Hz nominal mid frequency of the band [Hz], 10 to 20 000
     * @source IEC 61672-1, A-weighting; from memory
     * @example aWeighting_dB(125) = -16.10
     */
    public static double aWeighting_dB(double nominal_Hz) {
        double f = Math.pow(10, Math.round(10 * Math.log10(BAND.check(nominal_Hz))) / 10.0);
        double square = f * f;
        double response = square(12_194)
                * square
                * square
                / ((square + square(20.6))
                        * Math.sqrt((square + square(107.7)) * (square + square(737.9)))
                        * (square + square(12_194)));
        return 20 * Math.log10(response) + 2.00;
    }

    private static double square(double value) {
        return value * value;
    }

    /**
     * Pulsation of a lobe pump [Hz] (equation CST-6): each of both rotors' lobes makes a pulse. So low that an absorbing silencer alone
     * does little.
     *
     * <pre>
     * f = 2 z n
     * </pre>
     *
     * @param lobes z of one rotor: 2 or 3
     * @param speed_perS n [1/s]
     * @source Boettcher, "Basics and limitations of blowers", Pumps and Systems, 2019: four pulses a turn with two lobes
     * @example pulsation_Hz(2, 30) = 120
     */
    public static double pulsation_Hz(int lobes, double speed_perS) {
        if (lobes != 2 && lobes != 3) {
            throw new IllegalArgumentException("lobe pumps have two or three lobes, not " + lobes);
        }
        return 2 * lobes * SPEED.check(speed_perS);
    }
}
