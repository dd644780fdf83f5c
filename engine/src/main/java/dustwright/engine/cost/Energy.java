package dustwright.engine.cost;

import dustwright.engine.quantity.Range;

/** Electrical energy of a producer over a year. Money is in the plant's own currency. */
public final class Energy {
    private static final Range POWER = new Range("annual energy", "P", "W", 0, 1e8);
    private static final Range EFFICIENCY = new Range("annual energy", "η", "-", 0.1, 1);
    private static final Range HOURS = new Range("annual energy", "h", "h/year", 0, 8784);
    private static final Range PRICE = new Range("energy cost", "price", "currency/kWh", 0, 1e6);
    private static final Range FLOW = new Range("air power", "Q", "m³/s", 0, 1e4);
    private static final Range DIFFERENCE = new Range("air power", "Δp", "Pa", 0, 101_325);

    private Energy() {}

    /**
     * Electrical energy of a year [kWh] (equation CST-11) at one working point; add the points of a usage pattern.
     *
     * <pre>
     * E = P h / (η_motor η_drive)
     * </pre>
     *
     * @param shaft_W P at the producer's shaft [W]
     * @param motorEfficiency η_motor [-]
     * @param driveEfficiency η_drive of belts and variable-frequency drive together [-]; belts 0.93 to 0.97, drives 0.95 to 0.98 (common
     *     practice, no source); 1 where directly coupled
     * @param hours at this point in a year [h]
     * @source energy balance
     * @example annual_kWh(18600, 0.93, 0.95, 4000) = 84210.5
     */
    public static double annual_kWh(double shaft_W, double motorEfficiency, double driveEfficiency, double hours) {
        return POWER.check(shaft_W)
                * HOURS.check(hours)
                / (EFFICIENCY.check(motorEfficiency) * EFFICIENCY.check(driveEfficiency))
                / 1000;
    }

    /**
     * Cost of energy [currency] (equation CST-12).
     *
     * <pre>
     * cost = E × price
     * </pre>
     *
     * @param energy_kWh E [kWh]
     * @param price_perKWh stated by the plant [currency/kWh]
     * @source definition
     * @example cost(84210.5, 0.1) = 8421.05
     */
    public static double cost(double energy_kWh, double price_perKWh) {
        return new Range("energy cost", "E", "kWh", 0, 1e12).check(energy_kWh) * PRICE.check(price_perKWh);
    }

    /**
     * Power to move air against a pressure difference [W] (equation CST-13): what a filter's pressure drop costs at the producer.
     *
     * <pre>
     * P = Q Δp / η
     * </pre>
     *
     * @param flow_m3PerS Q, actual at the producer's inlet [m³/s]
     * @param difference_Pa Δp [Pa]
     * @param efficiency η of producer, drive and motor together [-]; the EPA manual takes 0.65 for fans
     * @source definition; gives the EPA Cost Manual's 0.000181 kW per acfm and inH2O
     * @example airPower_W(4.719474e-4, 249.089, 0.65) = 0.180857
     */
    public static double airPower_W(double flow_m3PerS, double difference_Pa, double efficiency) {
        return FLOW.check(flow_m3PerS) * DIFFERENCE.check(difference_Pa) / EFFICIENCY.check(efficiency);
    }

    /**
     * Specific energy [J/m³], shaft power over inlet flow at suction conditions (equation CST-14); always told with the vacuum.
     *
     * <pre>
     * e = P_shaft / Q
     * </pre>
     *
     * @param shaft_W P_shaft [W]
     * @param inletFlow_m3PerS Q at suction conditions [m³/s], above 0
     * @source definition; 1 kW per m³/min is 60 000 J/m³
     * @example specific_JPerM3(14191, 0.221577) = 64045
     */
    public static double specific_JPerM3(double shaft_W, double inletFlow_m3PerS) {
        return POWER.check(shaft_W) / new Range("specific energy", "Q", "m³/s", 1e-9, 1e4).check(inletFlow_m3PerS);
    }
}
