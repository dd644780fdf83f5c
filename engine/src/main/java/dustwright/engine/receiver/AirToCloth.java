package dustwright.engine.receiver;

import dustwright.engine.quantity.Range;
import dustwright.engine.quantity.Units;
import dustwright.engine.reference.ReferenceTable;
import java.util.List;
import java.util.Optional;

/**
 * How much air each area of filter cloth may pass, always at the <em>actual</em> flow in the receiver: free air expands by ambient over
 * receiver pressure, at 12 inHg by two thirds. Published ratios come from continuous dust collectors; for vacuum receivers they are an
 * upper guide. 4 to 8 ft/min is usual there (common practice, no source).
 */
public final class AirToCloth {
    private static final double GRAIN_PER_CUBIC_FOOT_kgPerM3 = 64.79891e-6 / Units.CUBIC_FOOT_m3;

    private static final ReferenceTable RATIOS = ReferenceTable.bundled("receiver/gas-to-cloth.csv");
    private static final ReferenceTable FACTORS = ReferenceTable.bundled("receiver/pulse-jet-factors.csv");
    private static final ReferenceTable GROSS = ReferenceTable.bundled("receiver/gross-cloth.csv");

    private static final Range FLOW = new Range("filtration velocity", "Q", "m³/s", 0, 1e4);
    private static final Range AREA = new Range("filtration velocity", "A", "m²", 1e-6, 1e6);
    private static final Range MATERIAL = new Range("the pulse-jet factor method", "A", "-", 6, 15);
    private static final Range APPLICATION = new Range("the pulse-jet factor method", "B", "-", 0.8, 1);
    private static final Range TEMPERATURE = new Range("the pulse-jet factor method", "T", "K", 200, 600);
    private static final Range LOAD = new Range("the pulse-jet factor method", "L", "kg/m³", 0, 100);
    private static final Range SIZE = new Range("the pulse-jet factor method", "D", "m", 1e-8, 0.01);

    private AirToCloth() {}

    /**
     * Filtration velocity, the air-to-cloth ratio [m/s] (equation FLT-8).
     *
     * <pre>
     * V = Q / A
     * </pre>
     *
     * @param actualFlow_m3PerS Q at the receiver's pressure [m³/s]
     * @param cloth_m2 A, net cloth area [m²]
     * @source definition
     * @example velocity_mPerS(1, 36.19) = 0.02763
     */
    public static double velocity_mPerS(double actualFlow_m3PerS, double cloth_m2) {
        return FLOW.check(actualFlow_m3PerS) / AREA.check(cloth_m2);
    }

    /**
     * Air volume flow at the receiver from the same air at ambient pressure and the same temperature [m³/s] (equation FLT-9).
     *
     * <pre>
     * Q = Q_a p_a / p
     * </pre>
     *
     * @param ambientFlow_m3PerS Q_a [m³/s]
     * @param ambient_Pa p_a, the site's barometer [Pa absolute]
     * @param receiver_Pa p in the receiver [Pa absolute], not its vacuum
     * @source Boyle
     * @example actualFlow_m3PerS(0.235974, 101325, 60688.3) = 0.39398
     */
    public static double actualFlow_m3PerS(double ambientFlow_m3PerS, double ambient_Pa, double receiver_Pa) {
        Range pressure = new Range("the flow at the filter", "p", "Pa absolute", 1000, 200_000);
        return FLOW.check(ambientFlow_m3PerS) * pressure.check(ambient_Pa) / pressure.check(receiver_Pa);
    }

    /**
     * What the factor method answers, and where it stood at an end of its range: the manual takes temperature and load at the nearer
     * end of their range then.
     *
     * @param velocity_mPerS recommended filtration velocity [m/s]
     * @param temperatureAtEnd the temperature lies outside 50 to 275 °F
     * @param loadAtEnd the dust load lies outside 0.05 to 100 gr/ft³
     */
    public record FactorMethod(double velocity_mPerS, boolean temperatureAtEnd, boolean loadAtEnd) {}

    /**
     * Filtration velocity of a pulse-jet felt filter by the factor method (equation FLT-10). For coarse flour it gives 15 ft/min, more
     * than most designers accept: show the table's ratio beside it.
     *
     * <pre>
     * V = 2.878 A B T^−0.2335 L^−0.06021 (0.7471 + 0.0853 ln D)   ft/min
     * T 50 to 275 °F, L 0.05 to 100 gr/ft³, D in µm; the bracket is 0.8 below 3 µm and 1.2 above 100 µm
     * </pre>
     *
     * @param material A [-], 6 to 15, see {@link #materialFactor}
     * @param application B [-], 0.8 to 1, see {@link #applicationFactor}
     * @param temperature_K T of the air [K]
     * @param load_kgPerM3 L, dust per volume of air [kg/m³]
     * @param diameter_m D, mass mean diameter of the dust [m]
     * @source EPA Air Pollution Control Cost Manual, 6th ed., EPA/452/B-02-001, Section 6 Chapter 1; constants from memory, they
     *     reproduce the printed 4.69 ft/min of its example
     * @example pulseJet(9, 0.8, 435.93, 0.0091534, 7e-6).velocity_mPerS() = 0.02382
     */
    public static FactorMethod pulseJet(
            double material, double application, double temperature_K, double load_kgPerM3, double diameter_m) {
        double fahrenheit = TEMPERATURE.check(temperature_K) * 1.8 - 459.67;
        double grains = LOAD.check(load_kgPerM3) / GRAIN_PER_CUBIC_FOOT_kgPerM3;
        double takenFahrenheit = Math.min(Math.max(fahrenheit, 50), 275);
        double takenGrains = Math.min(Math.max(grains, 0.05), 100);
        double feetPerMinute = 2.878
                * MATERIAL.check(material)
                * APPLICATION.check(application)
                * Math.pow(takenFahrenheit, -0.2335)
                * Math.pow(takenGrains, -0.06021)
                * sizeFactor(SIZE.check(diameter_m) * 1e6);
        return new FactorMethod(
                feetPerMinute * Units.FOOT_PER_MINUTE_mPerS,
                fahrenheit < 50 || fahrenheit > 275,
                grains < 0.05 || grains > 100);
    }

    private static double sizeFactor(double micrometres) {
        if (micrometres < 3) {
            return 0.8;
        }
        return micrometres > 100 ? 1.2 : 0.7471 + 0.0853 * Math.log(micrometres);
    }

    /** Factor A of a material in the manual's list [-]. */
    public static double materialFactor(String material) {
        return factor("A", material);
    }

    /** Factor B of an application in the manual's list, with or without its examples in brackets [-]. */
    public static double applicationFactor(String application) {
        return FACTORS.rows().stream()
                .filter(row -> row.text("factor").equals("B")
                        && withoutExamples(row.text("item")).equals(withoutExamples(application)))
                .findFirst()
                .map(row -> row.number("value"))
                .orElseGet(() -> factor("B", application));
    }

    private static String withoutExamples(String item) {
        int bracket = item.indexOf(" (");
        return bracket < 0 ? item : item.substring(0, bracket);
    }

    /** Materials of the manual's list, in its order. */
    public static List<String> materials() {
        return items("A");
    }

    /** Applications of the manual's list, in its order, without its examples. */
    public static List<String> applications() {
        return items("B").stream().map(AirToCloth::withoutExamples).toList();
    }

    private static List<String> items(String factor) {
        return FACTORS.rows().stream()
                .filter(row -> row.text("factor").equals(factor))
                .map(row -> row.text("item"))
                .toList();
    }

    /** Dusts in the manual's table of ratios, in its order. */
    public static List<String> tabulatedDusts() {
        return RATIOS.rows().stream().map(row -> row.text("dust")).toList();
    }

    private static double factor(String factor, String item) {
        ReferenceTable.Row row = FACTORS.row("item", item);
        if (!row.text("factor").equals(factor)) {
            throw new IllegalArgumentException("'" + item + "' is a factor " + row.text("factor") + ", not " + factor);
        }
        return row.number("value");
    }

    /** Ratio of a pulse-jet felt filter for a dust in the manual's table [m/s]; empty where the table leaves it out. */
    public static Optional<Double> tabulatedPulseJet_mPerS(String dust) {
        return RATIOS.row("dust", dust)
                .find("felt_pulse_jet_ftPerMin")
                .map(ratio -> ratio * Units.FOOT_PER_MINUTE_mPerS);
    }

    /** Ratio of a woven filter with shaker or reverse air for a dust in the manual's table [m/s]. */
    public static double tabulatedWoven_mPerS(String dust) {
        return RATIOS.row("dust", dust).number("woven_shaker_ftPerMin") * Units.FOOT_PER_MINUTE_mPerS;
    }

    /**
     * Gross cloth area of a filter of compartments that are cleaned in turn [m²] (equation FLT-11): net area times the table's
     * multiplier, 2 for small ones down to 1.125 at 48 000 ft². A single-compartment receiver cleaned while it stands needs none.
     *
     * @param net_m2 net cloth area [m²], up to 48 000 ft²
     * @source EPA Cost Manual, as FLT-10, from memory
     * @example grossCloth_m2(1858.06) = 2322.6
     */
    public static double grossCloth_m2(double net_m2) {
        double squareFeet = net_m2 / (Units.FOOT_m * Units.FOOT_m);
        double most = GROSS.rows().get(GROSS.rows().size() - 1).number("net_up_to_ft2");
        new Range("the net-to-gross multipliers", "A_net", "ft²", Double.MIN_NORMAL, most).check(squareFeet);
        for (ReferenceTable.Row row : GROSS.rows()) {
            if (squareFeet <= row.number("net_up_to_ft2")) {
                return net_m2 * row.number("multiplier");
            }
        }
        throw new IllegalStateException("multipliers do not cover " + squareFeet + " ft²");
    }

    /**
     * Cloth area of cylindrical filter bags [m²] (equation FLT-12).
     *
     * <pre>
     * A = n π d L
     * </pre>
     *
     * @param count n
     * @param diameter_m d of a bag [m]
     * @param length_m L of a bag [m]
     * @source geometry
     * @example bagCloth_m2(32, 0.15, 2.4) = 36.19
     */
    public static double bagCloth_m2(int count, double diameter_m, double length_m) {
        new Range("a number of bags", "n", "-", 1, 1e6).check(count);
        Range length = new Range("cloth area", "d, L", "m", 1e-3, 20);
        return count * Math.PI * length.check(diameter_m) * length.check(length_m);
    }

    /**
     * Upward velocity in the whole shell just below the bags, the can velocity [m/s] (equation FLT-13). It matters only where dusty air
     * enters below the bags.
     *
     * <pre>
     * v = 4 Q / (π D²)
     * </pre>
     *
     * @param actualFlow_m3PerS Q at the receiver's pressure [m³/s]
     * @param shellDiameter_m D [m]
     * @source definition; limits differ by source: 1.5 to 2.5 m/s in one glossary, 0.5 to 1.25 m/s interstitial for light dust (common
     *     practice, no source)
     * @example canVelocity_mPerS(1, 1.5) = 0.56588
     */
    public static double canVelocity_mPerS(double actualFlow_m3PerS, double shellDiameter_m) {
        return interstitialVelocity_mPerS(actualFlow_m3PerS, shellDiameter_m, 0, 0);
    }

    /**
     * Upward velocity between the bags [m/s] (equation FLT-14); always more than the can velocity.
     *
     * <pre>
     * v = 4 Q / (π (D² − n d²))
     * </pre>
     *
     * @param actualFlow_m3PerS Q at the receiver's pressure [m³/s]
     * @param shellDiameter_m D [m]
     * @param bags n
     * @param bagDiameter_m d [m]
     * @source definition in a public guideline on interstitial velocity
     * @example interstitialVelocity_mPerS(1, 1.5, 32, 0.15) = 0.83218
     */
    public static double interstitialVelocity_mPerS(
            double actualFlow_m3PerS, double shellDiameter_m, int bags, double bagDiameter_m) {
        double free_m2 = (shellDiameter_m * shellDiameter_m - bags * bagDiameter_m * bagDiameter_m) * Math.PI / 4;
        if (!(free_m2 > 0)) {
            throw new IllegalArgumentException(bags + " bags of " + bagDiameter_m
                    + " m leave no free area in a shell of " + shellDiameter_m + " m");
        }
        return FLOW.check(actualFlow_m3PerS) / free_m2;
    }
}
