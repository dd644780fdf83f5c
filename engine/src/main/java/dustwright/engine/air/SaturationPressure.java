package dustwright.engine.air;

import dustwright.engine.quantity.Range;

/** Pressure of water vapour in equilibrium with water or ice. */
public final class SaturationPressure {
    private static final Range IF97 = new Range("IAPWS-IF97 region 4", "T", "K", 273.15, 647.096);
    private static final Range WATER = new Range("Hyland and Wexler over water", "T", "K", 273.15, 473.15);
    private static final Range ICE = new Range("Hyland and Wexler over ice", "T", "K", 173.15, 273.15);

    private SaturationPressure() {}

    /**
     * Saturation pressure [Pa] at T [K], 173.15 to 647.096 K: over water by IAPWS-IF97 (AIR-5), below 0 °C over ice by Hyland and
     * Wexler (AIR-6). The two differ by 1e-4 of the value where they meet.
     */
    public static double of_Pa(double temperature_K) {
        return temperature_K < 273.15 ? hylandWexlerOverIce_Pa(temperature_K) : if97_Pa(temperature_K);
    }

    /**
     * Saturation pressure over water [Pa] at T [K], 273.15 to 647.096 K (equation AIR-5, the backward form of region 4).
     *
     * @source IAPWS R7-97(2012), equation 30 and table 34
     * @example if97_Pa(300) = 3536.58941
     */
    public static double if97_Pa(double temperature_K) {
        IF97.check(temperature_K);
        double theta = temperature_K - 0.23855557567849 / (temperature_K - 0.65017534844798e3);
        double a = (theta + 0.11670521452767e4) * theta - 0.72421316703206e6;
        double b = (-0.17073846940092e2 * theta + 0.12020824702470e5) * theta - 0.32325550322333e7;
        double c = (0.14915108613530e2 * theta - 0.48232657361591e4) * theta + 0.40511340542057e6;
        double root_MPa = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
        double square = root_MPa * root_MPa;
        return square * square * 1e6;
    }

    /**
     * Saturation pressure over water [Pa] at T [K], 273.15 to 473.15 K (equation AIR-6).
     *
     * @source Hyland and Wexler 1983, as in ASHRAE Fundamentals, psychrometrics; coefficients agree with IF97 within 2e-4
     */
    public static double hylandWexlerOverWater_Pa(double temperature_K) {
        double t = WATER.check(temperature_K);
        return Math.exp(-5.8002206e3 / t
                + 1.3914993
                + t * (-4.8640239e-2 + t * (4.1764768e-5 - t * 1.4452093e-8))
                + 6.5459673 * Math.log(t));
    }

    /**
     * Saturation pressure over ice [Pa] at T [K], 173.15 to 273.15 K (equation AIR-6).
     *
     * @source Hyland and Wexler 1983, as in ASHRAE Fundamentals, psychrometrics
     */
    public static double hylandWexlerOverIce_Pa(double temperature_K) {
        double t = ICE.check(temperature_K);
        return Math.exp(-5.6745359e3 / t
                + 6.3925247
                + t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - t * 9.484024e-13)))
                + 4.1635019 * Math.log(t));
    }
}
