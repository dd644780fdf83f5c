package dustwright.engine.conveying;

import dustwright.engine.quantity.Range;

/** Drag coefficient C_D of a sphere on its frontal area, by its Reynolds number on size and slip. */
public final class SphereDrag {
    private static final Range CREEPING = new Range("Stokes' drag", "Re", "-", Double.MIN_NORMAL, 0.3);
    private static final Range BARATI = new Range("Barati's drag of a sphere", "Re", "-", Double.MIN_NORMAL, 2e5);
    private static final Range SCHILLER = new Range("Schiller and Naumann's drag", "Re", "-", Double.MIN_NORMAL, 2e5);
    private static final double STOKES_UP_TO = 0.01;
    private static final double BARATI_FROM = 0.1;

    private SphereDrag() {}

    /**
     * Drag of creeping flow, Re up to 0.3 (equation CON-3).
     *
     * <pre>
     * C_D = 24 / Re
     * </pre>
     *
     * @source Stokes 1851; 4 % low at Re 0.3
     * @example stokes(0.1) = 240
     */
    public static double stokes(double reynolds) {
        return 24 / CREEPING.check(reynolds);
    }

    /**
     * Drag of a smooth sphere up to Re 2e5, before its boundary layer turns turbulent (equation CON-4). Below Re 0.01 it is Stokes'
     * law, up to 0.1 a straight line between both.
     *
     * <pre>
     * C_D = 5.4856e9 tanh(4.3774e-9/Re) + 0.0709 tanh(700.6574/Re) + 0.3894 tanh(74.1539/Re)
     *       − 0.1198 tanh(7429.0843/Re) + 1.7174 tanh(9.9851/(Re + 2.3384)) + 0.4744
     * </pre>
     *
     * @source Barati, Neyshabouri and Ahmadi, Powder Technology 257, 2014, 11-19, as given with python3-fluids 1.0.22
     * @example barati(200) = 0.7682237950
     */
    public static double barati(double reynolds) {
        double re = BARATI.check(reynolds);
        if (re <= STOKES_UP_TO) {
            return 24 / re;
        }
        if (re >= BARATI_FROM) {
            return baratiSum(re);
        }
        double share = (re - STOKES_UP_TO) / (BARATI_FROM - STOKES_UP_TO);
        return share * baratiSum(re) + (1 - share) * 24 / re;
    }

    private static double baratiSum(double re) {
        return 5.4856e9 * Math.tanh(4.3774e-9 / re)
                + 0.0709 * Math.tanh(700.6574 / re)
                + 0.3894 * Math.tanh(74.1539 / re)
                - 0.1198 * Math.tanh(7429.0843 / re)
                + 1.7174 * Math.tanh(9.9851 / (re + 2.3384))
                + 0.4744;
    }

    /**
     * Drag of a sphere, the older and simpler form (equation CON-5); within 6 % of {@link #barati}.
     *
     * <pre>
     * C_D = 24/Re · (1 + 0.15 Re^0.687)  up to Re 1000,  0.44 above
     * </pre>
     *
     * @source Schiller and Naumann 1935, as in most texts on particles
     */
    public static double schillerNaumann(double reynolds) {
        double re = SCHILLER.check(reynolds);
        return re <= 1000 ? 24 / re * (1 + 0.15 * Math.pow(re, 0.687)) : 0.44;
    }

    /**
     * Drag in three straight pieces, as the line pressure-drop method takes it (equation CON-33). It falls by a quarter at Re 1.
     *
     * <pre>
     * C_D = 24/Re  below Re 1,  18.5 Re^−0.6  to 500,  0.44 above
     * </pre>
     *
     * @source Rhodes, Introduction to Particle Technology, single particles in a fluid
     */
    public static double threePieces(double reynolds) {
        double re = SCHILLER.check(reynolds);
        if (re < 1) {
            return 24 / re;
        }
        return re <= 500 ? 18.5 * Math.pow(re, -0.6) : 0.44;
    }
}
