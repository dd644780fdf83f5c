package dustwright.engine.electrical;

import dustwright.engine.quantity.Range;
import dustwright.engine.quantity.Units;
import dustwright.engine.reference.ReferenceTable;
import java.util.List;

/** Which motor a producer needs, and how far it is loaded. */
public final class MotorRating {
    /** Highest site for which the rating of motors is told [m] (equation ELE-43). */
    public static final double HIGHEST_m = 4000;

    private static final List<Double> HORSEPOWERS =
            ReferenceTable.bundled("electrical/full-load-current-60hz.csv").rows().stream()
                    .map(row -> row.number("motor_hp"))
                    .toList();
    private static final List<Double> KILOWATTS =
            ReferenceTable.bundled("electrical/motor-current-400v-50hz.csv").rows().stream()
                    .map(row -> row.number("motor_kW"))
                    .toList();

    /** By how much metric and inch names of one size differ at most. */
    private static final double SAME_SIZE = 0.02;

    private static final Range SHAFT = new Range("the choice of a motor", "P", "W", 1, 1e7);
    private static final Range MARGIN = new Range("the choice of a motor", "margin", "-", 0, 1);
    private static final Range SPEED = new Range("the torque of a motor", "n", "1/s", 0.1, 1000);
    private static final Range SERVICE_FACTOR = new Range("a motor", "service factor", "-", 1, 1.5);

    private MotorRating() {}

    /**
     * Next standard horsepower that gives a shaft power with a margin [hp] (equation ELE-1).
     *
     * <pre>
     * P_motor ≥ P_shaft (1 + margin)
     * </pre>
     *
     * @param shaft_W P_shaft at the worst point, relief valve open [W]
     * @param margin [-], 0 to 1; the service factor is a reserve and no part of it
     * @source standard ratings of NEMA MG 1, as in NEC Table 430.250
     * @example nextHorsepower(20805, 0.1) = 40
     */
    public static double nextHorsepower(double shaft_W, double margin) {
        return next(HORSEPOWERS, SHAFT.check(shaft_W) * (1 + MARGIN.check(margin)) / Units.HORSEPOWER_W, "hp");
    }

    /**
     * Next standard kilowatt rating that gives a shaft power with a margin [kW] (equation ELE-1).
     *
     * @param shaft_W P_shaft [W]
     * @param margin [-], 0 to 1
     * @source ratings of IEC 60072-1, as in IEC 60947-4-1 Annex G
     * @example nextKilowatts(20805, 0.1) = 30
     */
    public static double nextKilowatts(double shaft_W, double margin) {
        return next(KILOWATTS, SHAFT.check(shaft_W) * (1 + MARGIN.check(margin)) / 1000, "kW");
    }

    /**
     * Listed horsepower under which a motor of another rating is looked up [hp] (equation ELE-31): the next one at or above it, as table
     * currents rise with the rating. Sizes of metric and inch name that differ by up to 2 % are the same size: 0.75 kW is 1 hp.
     *
     * @param nameplate_W [W]
     * @source own reading; NEC 430.6(A)(1) looks motors up by their horsepower
     * @example listedHorsepower(750) = 1
     * @example listedHorsepower(4000) = 7.5
     */
    public static double listedHorsepower(double nameplate_W) {
        return next(HORSEPOWERS, SHAFT.check(nameplate_W) / Units.HORSEPOWER_W * (1 - SAME_SIZE), "hp");
    }

    /**
     * Listed kilowatts under which a motor of another rating is looked up [kW] (equation ELE-31).
     *
     * @param nameplate_W [W]
     * @source own reading, as {@link #listedHorsepower}
     * @example listedKilowatts(11185.5) = 11
     */
    public static double listedKilowatts(double nameplate_W) {
        return next(KILOWATTS, SHAFT.check(nameplate_W) / 1000 * (1 - SAME_SIZE), "kW");
    }

    private static double next(List<Double> ratings, double asked, String unit) {
        return ratings.stream()
                .filter(rating -> rating >= asked * (1 - 1e-9))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(asked + " " + unit
                        + " is beyond the largest tabulated motor, " + ratings.get(ratings.size() - 1) + " " + unit));
    }

    /**
     * Load of a motor over its nameplate [-] (equation ELE-2). Above 1 it draws on its service factor, and above that it overheats.
     *
     * <pre>
     * load = P_shaft / P_nameplate
     * </pre>
     *
     * @param shaft_W [W]
     * @param nameplate_W [W]
     * @source definition
     * @example load(8000, 11185.5) = 0.71521
     */
    public static double load(double shaft_W, double nameplate_W) {
        return new Range("the load of a motor", "P", "W", 0, 1e9).check(shaft_W) / SHAFT.check(nameplate_W);
    }

    /**
     * Greatest ambient at which a motor gives its nameplate at an altitude [K] (equation ELE-43).
     *
     * <pre>
     * T = 40 °C up to 1000 m, then 1 K less for each 100 m
     * </pre>
     *
     * @param altitude_m of the standard atmosphere at the site's barometer [m], up to 4000
     * @source IEC 60034-1: 40 °C and 1000 m, above it the lower ambient makes up for thinner air, NEMA MG 1 part 14 likewise by 10 K per
     *     3300 ft; from memory
     * @example greatestAmbient_K(3000) = 293.15
     */
    public static double greatestAmbient_K(double altitude_m) {
        double altitude = new Range("the rating of a motor", "altitude", "m", -2000, 4000).check(altitude_m);
        return 313.15 - Math.max(0, altitude - 1000) / 100;
    }

    /** Whether motors give their nameplate at an altitude and ambient (equation ELE-43); above 4000 m nothing is told. */
    public static boolean givesNameplate(double altitude_m, double ambient_K) {
        return altitude_m <= HIGHEST_m && ambient_K <= greatestAmbient_K(altitude_m);
    }

    /**
     * Rating that gives a power and its torque [W] (equation ELE-46): below its rated speed a motor on a drive gives no more than its rated
     * torque, above it no more than its rated power.
     *
     * <pre>
     * P_r = P max(1, n_r / n_m)
     * </pre>
     *
     * @param shaft_W P [W]
     * @param rated_perS n_r, rated speed [1/s], 0.1 to 1000
     * @param motor_perS n_m, speed of the motor [1/s], 0.1 to 1000
     * @source ELE-40 at both speeds
     * @example onDrive_W(7904.4, 29.4, 15) = 15492.6
     */
    public static double onDrive_W(double shaft_W, double rated_perS, double motor_perS) {
        return new Range("the choice of a motor", "P", "W", 0, 1e7).check(shaft_W)
                * Math.max(1, SPEED.check(rated_perS) / SPEED.check(motor_perS));
    }

    /**
     * Torque at a shaft [N·m] (equation ELE-40). At its nameplate's power and speed it is the most a motor gives in continuous service at
     * that speed and, on a drive, below it: a pump that asks the same torque at every speed loads it as much at half speed.
     *
     * <pre>
     * M = P / (2 π n)
     * </pre>
     *
     * @param shaft_W P [W]
     * @param speed_perS n of the same shaft [1/s], 0.1 to 1000
     * @source definition of power
     * @example torque_Nm(11185.5, 29.4166667) = 60.5171
     */
    public static double torque_Nm(double shaft_W, double speed_perS) {
        return new Range("the torque of a motor", "P", "W", 0, 1e7).check(shaft_W)
                / (2 * Math.PI * SPEED.check(speed_perS));
    }

    /**
     * Power a motor gives for a while at rated voltage and frequency [W] (equation ELE-3): a reserve, lost on a drive and at altitude.
     *
     * <pre>
     * P = P_nameplate × service factor
     * </pre>
     *
     * @param nameplate_W [W]
     * @param serviceFactor on the nameplate [-], 1 to 1.5
     * @source NEMA MG 1, definition of service factor
     * @example serviceFactorPower_W(11185.5, 1.15) = 12863.3
     */
    public static double serviceFactorPower_W(double nameplate_W, double serviceFactor) {
        return SHAFT.check(nameplate_W) * SERVICE_FACTOR.check(serviceFactor);
    }
}
