package dustwright.engine.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The trade's units. Factors are exact definitions where there is one (inch, pound, standard gravity, horsepower of 550 ft·lbf/s);
 * columns of mercury and water are the conventional ones of NIST SP 811 (mercury 13 595.1 kg/m³, water 1000 kg/m³, standard gravity)
 * unless a temperature is written. UCUM codes are read as well. A figure quoted in one of these units is made with the unit's own factor
 * from here, so what a plant file states in that unit equals it.
 */
public final class Units {
    /** One inch [m]. */
    public static final double INCH_m = 0.0254;

    /** One foot [m]. */
    public static final double FOOT_m = 0.3048;

    /** One foot per minute [m/s]. */
    public static final double FOOT_PER_MINUTE_mPerS = FOOT_m / 60;

    /** One cubic foot [m³]. */
    public static final double CUBIC_FOOT_m3 = FOOT_m * FOOT_m * FOOT_m;

    /** One US gallon, 231 cubic inches [m³]. */
    public static final double US_GALLON_m3 = 231 * INCH_m * INCH_m * INCH_m;

    /** One pound [kg]. */
    public static final double POUND_kg = 0.45359237;

    /** One pound per cubic foot [kg/m³]. */
    public static final double POUND_PER_CUBIC_FOOT_kgPerM3 = POUND_kg / CUBIC_FOOT_m3;

    private static final double GRAVITY = 9.80665;

    /** One pound-force per square inch [Pa]. */
    public static final double PSI_Pa = POUND_kg * GRAVITY / (INCH_m * INCH_m);

    private static final double MM_HG = 13.5951 * GRAVITY;
    private static final double MM_H2O = GRAVITY;

    /** One inch of mercury, conventional [Pa]. */
    public static final double INCH_OF_MERCURY_Pa = 25.4 * MM_HG;

    /** One inch of water, conventional [Pa]. */
    public static final double INCH_OF_WATER_Pa = 25.4 * MM_H2O;

    /** One horsepower of 550 ft·lbf/s [W]. */
    public static final double HORSEPOWER_W = 550 * FOOT_m * POUND_kg * GRAVITY;

    private static final double MINUTE = 60;
    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;

    /** A year of 52 weeks, as the trade counts shifts [s]. */
    public static final double YEAR_s = 52 * 7 * DAY;

    /** Air of 0 °C in one volume over air of our reference, 20 °C, in the same volume, both dry at 101 325 Pa [-]. */
    private static final double NORMAL_OVER_REFERENCE = 293.15 / 273.15;

    private static final Pattern SPACES = Pattern.compile("[ \\u00A0\\u202F]+");
    private static final Pattern ENDS_IN_SIGN = Pattern.compile("[/.*·×^(]$");
    private static final Pattern STARTS_WITH_SIGN = Pattern.compile("^[/.*·×^()°\\[\"″]");

    /** What stands apart from the unit it begins: {@code sq ft}, {@code deg C}, {@code per week}, {@code 1000 scf}, {@code N m}. */
    private static final Pattern FIRST_WORD = Pattern.compile("(^|/)(sq|cu|deg|°|per|a|N|1000)$");

    /** What stands apart from the unit it ends: {@code kPa abs}, {@code m3/h free}, {@code in H2O}, {@code inHg (32 degF)}. */
    private static final Pattern SECOND_WORD =
            Pattern.compile("^(abs(olute)?|a|free|FAD|actual|rise|gauge|Hg|H[2₂]O|w\\.?[gc]|W[SC]|deg[CF])");

    private static final List<Unit> ALL = new ArrayList<>();
    private static final Map<String, List<Unit>> BY_NAME = new LinkedHashMap<>();

    static {
        lengths();
        areasAndVolumes();
        pressures();
        temperatures();
        flows();
        speedsAndAngles();
        massesAndPowers();
        rest();
        money();
    }

    private Units() {}

    /** Every unit, in the order of the table. */
    public static List<Unit> all() {
        return List.copyOf(ALL);
    }

    /** Units of one kind, in the order of the table. */
    public static List<Unit> of(Dimension dimension) {
        return ALL.stream().filter(u -> u.dimension() == dimension).toList();
    }

    /** The unit of this kind with this spelling. */
    public static Optional<Unit> find(String text, Dimension dimension) {
        return named(text).stream().filter(u -> u.dimension() == dimension).findFirst();
    }

    /** Units with this spelling: several when one symbol serves several kinds, such as K; none when it is unknown. */
    public static List<Unit> named(String text) {
        return spacedAsOne(text) ? BY_NAME.getOrDefault(spelling(text), List.of()) : List.of();
    }

    /** Whether every space in a unit stands where one may: beside a sign, or between two words of one unit. {@code m m} is no millimetre. */
    private static boolean spacedAsOne(String text) {
        String[] words = SPACES.split(text.strip());
        for (int n = 1; n < words.length; n++) {
            boolean sign = ENDS_IN_SIGN.matcher(words[n - 1]).find()
                    || STARTS_WITH_SIGN.matcher(words[n]).find();
            boolean word = FIRST_WORD.matcher(words[n - 1]).find()
                    || SECOND_WORD.matcher(words[n]).find();
            if (!sign && !word) {
                return false;
            }
        }
        return true;
    }

    /** Every spelling of the units of a kind, superscripts written as digits and spaces left out. */
    public static List<String> spellings(Dimension dimension) {
        return BY_NAME.entrySet().stream()
                .filter(e -> e.getValue().stream().anyMatch(u -> u.dimension() == dimension))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Typographic variants of one spelling come out alike: {@code in H₂O} and {@code inH2O}, {@code m³/h} and {@code m3/h}. */
    static String spelling(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case ' ', '\u00A0', '\u202F', '^' -> {}
                case '²', '₂' -> plain.append('2');
                case '³' -> plain.append('3');
                case '·', '*', '×' -> plain.append('.');
                case 'º' -> plain.append('°');
                case 'μ' -> plain.append('µ');
                default -> plain.append(c);
            }
        }
        return plain.toString();
    }

    private static void lengths() {
        add(Dimension.LENGTH, 1, "m");
        add(Dimension.LENGTH, 0.001, "mm");
        add(Dimension.LENGTH, 0.01, "cm");
        add(Dimension.LENGTH, 1e-6, "µm", "um", "micron");
        add(Dimension.LENGTH, 1000, "km");
        add(Dimension.OPENING, 1, "m");
        add(Dimension.OPENING, 0.001, "mm");
        add(Dimension.OPENING, INCH_m, "in");
        add(Dimension.LENGTH, INCH_m, "in", "[in_i]", "inch", "inches", "\"", "″");
        add(Dimension.LENGTH, FOOT_m, "ft", "[ft_i]", "foot", "feet", "'", "′");
        add(Dimension.LENGTH, 3 * FOOT_m, "yd", "[yd_i]");
        add(Dimension.LENGTH, INCH_m / 1000, "mil", "[mil_i]", "thou");
    }

    private static void areasAndVolumes() {
        add(Dimension.AREA, 1, "m2", "sqm");
        add(Dimension.AREA, 1e-4, "cm2");
        add(Dimension.AREA, 1e-6, "mm2");
        add(Dimension.AREA, FOOT_m * FOOT_m, "ft2", "[sft_i]", "[ft_i]2", "sqft");
        add(Dimension.AREA, INCH_m * INCH_m, "in2", "[sin_i]", "[in_i]2", "sqin");
        add(Dimension.VOLUME, 1, "m3");
        add(Dimension.VOLUME, 0.001, "L", "l", "dm3", "litre", "liter");
        add(Dimension.VOLUME, 1e-6, "cm3", "mL", "ml");
        add(Dimension.VOLUME, CUBIC_FOOT_m3, "ft3", "[cft_i]", "[ft_i]3", "cuft");
        add(Dimension.VOLUME, INCH_m * INCH_m * INCH_m, "in3", "[cin_i]", "[in_i]3", "cuin");
        add(Dimension.VOLUME, US_GALLON_m3, "gal", "[gal_us]");
    }

    private static void pressures() {
        pressure(1, "Pa");
        pressure(100, "mbar", "hPa");
        pressure(1000, "kPa");
        pressure(100_000, "bar");
        pressure(1e6, "MPa");
        pressure(INCH_OF_MERCURY_Pa, "inHg", "[in_i'Hg]", "inchHg", "in.Hg", "\"Hg", "inHgV");
        pressure(
                INCH_OF_WATER_Pa,
                "inH2O",
                "[in_i'H2O]",
                "inchH2O",
                "in.H2O",
                "\"H2O",
                "inwg",
                "inwc",
                "in.w.g.",
                "\"wg",
                "\"wc");
        pressure(12 * INCH_OF_WATER_Pa, "ftH2O", "[ft_i'H2O]");
        pressure(MM_HG, "mmHg", "mm[Hg]", "Torr", "torr");
        pressure(1000 * MM_HG, "mHg", "m[Hg]");
        pressure(MM_H2O, "mmH2O", "mm[H2O]", "mmwg", "mmWS", "mmWC");
        pressure(1000 * MM_H2O, "mH2O", "m[H2O]");
        pressure(PSI_Pa, "psi", "[psi]", "PSI", "lbf/in2");
        pressure(PSI_Pa / 144, "psf", "lbf/ft2");
        pressure(3386.38, "inHg(32degF)");
        pressure(3376.85, "inHg(60degF)");
        pressure(249.082, "inH2O(39.2degF)", "inH2O(4degC)");
        pressure(248.84, "inH2O(60degF)");
        add(Dimension.ABSOLUTE_PRESSURE, 101_325, "atm", "atmabs");
        add(Dimension.GAUGE_PRESSURE, 1, "Pa");
        add(Dimension.GAUGE_PRESSURE, 100, "mbar", "hPa");
        add(Dimension.GAUGE_PRESSURE, 1000, "kPa");
        add(Dimension.GAUGE_PRESSURE, 100_000, "bar", "barg");
        add(Dimension.GAUGE_PRESSURE, PSI_Pa, "psi", "[psi]", "PSI", "psig", "lbf/in2");
    }

    /** A unit of pressure is two units: of a vacuum or difference, and, with "abs" behind it, of absolute pressure. */
    private static void pressure(double factor, String symbol, String... otherNames) {
        add(Dimension.PRESSURE_DIFFERENCE, factor, symbol, otherNames);
        List<String> absolute = new ArrayList<>(List.of(symbol + "a", symbol + "absolute"));
        for (String other : otherNames) {
            absolute.add(other + "abs");
            absolute.add(other + "absolute");
        }
        add(Dimension.ABSOLUTE_PRESSURE, factor, symbol + " abs", absolute.toArray(String[]::new));
    }

    private static void temperatures() {
        add(Dimension.TEMPERATURE, 1, 273.15, "degC", "°C", "Cel", "C");
        add(Dimension.TEMPERATURE, 5.0 / 9, 273.15 - 32 * 5.0 / 9, "degF", "°F", "[degF]", "F");
        add(Dimension.TEMPERATURE, 1, "K");
        add(Dimension.TEMPERATURE, 5.0 / 9, "degR", "°R", "[degR]");
        add(Dimension.TEMPERATURE_RISE, 1, "K", "degC rise", "°C rise", "Cel rise");
        add(Dimension.TEMPERATURE_RISE, 5.0 / 9, "degF rise", "°F rise", "[degF] rise", "F rise", "degR", "[degR]");
    }

    private static void flows() {
        add(Dimension.FREE_AIR_FLOW, CUBIC_FOOT_m3 / MINUTE, "scfm", "SCFM", "cfm free", "ft3/min free", "cfm FAD");
        add(Dimension.FREE_AIR_FLOW, 1 / HOUR, "m3/h free", "m3/hr free", "m3/h FAD");
        add(Dimension.FREE_AIR_FLOW, 1 / MINUTE, "m3/min free");
        add(Dimension.FREE_AIR_FLOW, 1, "m3/s free");
        add(Dimension.FREE_AIR_FLOW, 0.001, "L/s free", "l/s free");
        add(Dimension.FREE_AIR_FLOW, 0.001 / MINUTE, "L/min free", "l/min free");
        add(Dimension.FREE_AIR_FLOW, NORMAL_OVER_REFERENCE / HOUR, "Nm3/h", "Nm3/hr", "m3/h(0degC)");
        add(Dimension.FREE_AIR_FLOW, NORMAL_OVER_REFERENCE / MINUTE, "Nm3/min");
        add(Dimension.FREE_AIR_FLOW, NORMAL_OVER_REFERENCE, "Nm3/s");
        add(
                Dimension.ACTUAL_FLOW,
                CUBIC_FOOT_m3 / MINUTE,
                "acfm",
                "ACFM",
                "icfm",
                "ICFM",
                "cfm actual",
                "ft3/min actual");
        actualFlow(1 / HOUR, "m3/h", "m3/hr");
        actualFlow(1 / MINUTE, "m3/min");
        actualFlow(1, "m3/s");
        actualFlow(0.001, "L/s", "l/s");
        actualFlow(0.001 / MINUTE, "L/min", "l/min");
        add(Dimension.MASS_FLOW, 1, "kg/s");
        add(Dimension.MASS_FLOW, 1 / MINUTE, "kg/min");
        add(Dimension.MASS_FLOW, 1 / HOUR, "kg/h", "kg/hr");
        add(Dimension.MASS_FLOW, 0.001, "g/s");
        add(Dimension.MASS_FLOW, 0.001 / MINUTE, "g/min");
        add(Dimension.MASS_FLOW, 1000 / HOUR, "t/h");
        add(Dimension.MASS_FLOW, POUND_kg, "lb/s", "[lb_av]/s");
        add(Dimension.MASS_FLOW, POUND_kg / MINUTE, "lb/min", "[lb_av]/min");
        add(Dimension.MASS_FLOW, POUND_kg / HOUR, "lb/h", "lb/hr", "[lb_av]/h");
    }

    private static void actualFlow(double factor, String symbol, String... otherNames) {
        String[] names = Arrays.copyOf(otherNames, otherNames.length + 1);
        names[otherNames.length] = symbol + " actual";
        add(Dimension.ACTUAL_FLOW, factor, symbol, names);
    }

    private static void speedsAndAngles() {
        add(Dimension.VELOCITY, 1, "m/s");
        add(Dimension.VELOCITY, 1 / MINUTE, "m/min");
        add(Dimension.VELOCITY, FOOT_PER_MINUTE_mPerS, "ft/min", "[ft_i]/min", "fpm", "FPM");
        add(Dimension.TIP_SPEED, 1, "m/s");
        add(Dimension.TIP_SPEED, FOOT_PER_MINUTE_mPerS, "ft/min");
        add(Dimension.VELOCITY, FOOT_m, "ft/s", "[ft_i]/s", "fps");
        add(Dimension.ROTATIONAL_SPEED, 1 / MINUTE, "rpm", "RPM", "1/min", "/min", "r/min", "rev/min", "min-1");
        add(Dimension.ROTATIONAL_SPEED, 1, "1/s", "/s", "s-1", "Hz", "rev/s");
        add(Dimension.ANGLE, Math.PI / 180, "deg", "°", "degree", "degrees");
        add(Dimension.ANGLE, 1, "rad");
    }

    private static void massesAndPowers() {
        add(Dimension.MASS, 1, "kg");
        add(Dimension.MASS, 0.001, "g");
        add(Dimension.MASS, 1000, "t");
        add(Dimension.MASS, POUND_kg, "lb", "[lb_av]", "lbs", "lbm");
        add(Dimension.POWER, 1, "W");
        add(Dimension.POWER, 1000, "kW");
        add(Dimension.POWER, HORSEPOWER_W, "hp", "[HP]", "HP", "bhp");
        add(Dimension.DENSITY, 1, "kg/m3", "g/L", "g/l");
        add(Dimension.DENSITY, 0.001, "g/m3");
        add(Dimension.DENSITY, 1000, "g/cm3", "kg/L", "kg/l", "t/m3");
        add(Dimension.DENSITY, POUND_PER_CUBIC_FOOT_kgPerM3, "lb/ft3", "[lb_av]/[cft_i]", "pcf");
    }

    private static void rest() {
        add(Dimension.DURATION, 1, "s", "sec");
        add(Dimension.DURATION, MINUTE, "min");
        add(Dimension.DURATION, HOUR, "h", "hr");
        add(Dimension.DURATION, DAY, "d", "day", "days");
        add(Dimension.DURATION, YEAR_s, "year", "years");
        add(Dimension.WORKING_TIME, 1, "s", "sec");
        add(Dimension.WORKING_TIME, MINUTE, "min");
        add(Dimension.WORKING_TIME, HOUR, "h", "hr");
        add(Dimension.FREQUENCY, 1 / (7 * DAY), "/week", "perweek", "aweek");
        add(Dimension.FREQUENCY, 1 / DAY, "/d", "/day");
        add(Dimension.FREQUENCY, 1 / HOUR, "/h");
        add(Dimension.FREQUENCY, 1 / YEAR_s, "/year", "/a");
        add(Dimension.LEAK_COEFFICIENT, 1, "kg/(s.Pa)", "kg/s/Pa", "kg/(Pa.s)");
        add(Dimension.FILTER_RESISTANCE, 1, "Pa.s/m", "Pa/(m/s)");
        add(Dimension.FILTER_RESISTANCE, 1000, "kPa.s/m", "kPa/(m/s)");
        add(
                Dimension.FILTER_RESISTANCE,
                INCH_OF_WATER_Pa / FOOT_PER_MINUTE_mPerS,
                "inH2O/(ft/min)",
                "inH2O/fpm",
                "inwg/(ft/min)");
        add(Dimension.ENERGY, 1000 * HOUR, "kWh");
        add(Dimension.ENERGY, 1e6 * HOUR, "MWh");
        add(Dimension.ENERGY, 1, "J");
        add(Dimension.FREE_AIR_VOLUME, 1, "m3 free");
        add(Dimension.FREE_AIR_VOLUME, 0.001, "L free", "l free");
        add(Dimension.FREE_AIR_VOLUME, CUBIC_FOOT_m3, "scf", "ft3 free");
        add(Dimension.FREE_AIR_VOLUME, NORMAL_OVER_REFERENCE, "Nm3");
        add(Dimension.SOUND_LEVEL, 1, "dBA", "dB(A)");
        add(Dimension.LEVEL_DIFFERENCE, 1, "dB");
        add(Dimension.ELECTRIC_CURRENT, 1, "A", "amp", "amps");
        add(Dimension.ELECTRIC_CURRENT, 0.001, "mA");
        add(Dimension.ELECTRIC_CURRENT, 1000, "kA");
        add(Dimension.VOLTAGE, 1, "V", "volt", "volts");
        add(Dimension.VOLTAGE, 1000, "kV");
        add(Dimension.SUPPLY_FREQUENCY, 1, "Hz");
        add(Dimension.ELECTRIC_POWER, 1, "W");
        add(Dimension.ELECTRIC_POWER, 1000, "kW");
        add(Dimension.CAKE_RESISTANCE, 1, "1/s", "/s", "s-1", "Pa/((m/s)(kg/m2))", "Pa.s.m/kg");
        add(
                Dimension.CAKE_RESISTANCE,
                INCH_OF_WATER_Pa / FOOT_PER_MINUTE_mPerS / (POUND_kg / (FOOT_m * FOOT_m)),
                "inH2O/(ft/min)/(lb/ft2)",
                "inH2O/fpm/(lb/ft2)",
                "inH2O.ft.min/lb");
        add(Dimension.CLOTH_LOAD, 1, "kg/m2");
        add(Dimension.CLOTH_LOAD, 0.001, "g/m2");
        add(Dimension.CLOTH_LOAD, POUND_kg / (FOOT_m * FOOT_m), "lb/ft2", "[lb_av]/[sft_i]");
        add(Dimension.EXPLOSION_CONSTANT, 100_000, "bar.m/s");
        add(Dimension.SPARK_ENERGY, 0.001, "mJ");
        add(Dimension.SPARK_ENERGY, 1, "J");
        add(Dimension.RESISTANCE, 1, "ohm", "Ω", "Ohm");
        add(Dimension.RESISTANCE, 1000, "kohm", "kΩ", "kOhm");
        add(Dimension.RESISTANCE, 1e6, "Mohm", "MΩ", "MOhm");
        add(Dimension.CAPACITANCE, 1e-12, "pF");
        add(Dimension.CAPACITANCE, 1, "F");
        add(Dimension.FORCE, 1, "N");
        add(Dimension.FORCE, 1000, "kN");
        add(Dimension.FORCE, POUND_kg * GRAVITY, "lbf", "[lbf_av]");
        add(Dimension.STRESS, 1, "Pa", "N/m2");
        add(Dimension.STRESS, 1000, "kPa", "kN/m2");
        add(Dimension.STRESS, 1e6, "MPa", "N/mm2");
        add(Dimension.STRESS, 1e9, "GPa");
        add(Dimension.STRESS, PSI_Pa / 144, "psf", "lbf/ft2");
        add(Dimension.STRESS, PSI_Pa, "psi", "[psi]", "PSI", "lbf/in2");
        add(Dimension.STRESS, 1e6 * PSI_Pa, "Mpsi");
        add(Dimension.TORQUE, 1, "N.m", "Nm");
        add(Dimension.TORQUE, POUND_kg * GRAVITY * FOOT_m, "lbf.ft", "ft.lbf", "lbf-ft", "ft-lb");
        add(Dimension.TORQUE, POUND_kg * GRAVITY * INCH_m, "lbf.in", "in.lbf", "lbf-in", "in-lb");
        add(Dimension.RATIO, 0.01, "%", "percent");
        add(Dimension.RATIO, 1, "-");
    }

    /** With ¤ in the place of the currency's three letters. */
    private static void money() {
        add(Dimension.MONEY, 1, "¤");
        add(Dimension.ENERGY_PRICE, 1 / (1000 * HOUR), "¤/kWh");
        add(Dimension.ENERGY_PRICE, 1 / (1e6 * HOUR), "¤/MWh");
        add(Dimension.AIR_PRICE, 1, "¤/m3 free");
        add(Dimension.AIR_PRICE, 1 / NORMAL_OVER_REFERENCE, "¤/Nm3");
        add(Dimension.AIR_PRICE, 1 / CUBIC_FOOT_m3, "¤/scf", "¤/ft3 free");
        add(Dimension.AIR_PRICE, 1 / (1000 * CUBIC_FOOT_m3), "¤/1000scf", "¤/kscf", "¤/1000 ft3 free");
        add(Dimension.TIME_PRICE, 1 / HOUR, "¤/h", "¤/hr");
        add(Dimension.TIME_PRICE, 1 / YEAR_s, "¤/year", "¤/a");
        add(Dimension.LENGTH_PRICE, 1, "¤/m");
        add(Dimension.LENGTH_PRICE, 1 / FOOT_m, "¤/ft");
    }

    private static void add(Dimension dimension, double factor, String symbol, String... otherNames) {
        add(dimension, factor, 0, symbol, otherNames);
    }

    private static void add(Dimension dimension, double factor, double offset, String symbol, String... otherNames) {
        Unit unit = new Unit(symbol, dimension, factor, offset, List.of(otherNames));
        ALL.add(unit);
        name(symbol, unit);
        for (String other : otherNames) {
            name(other, unit);
        }
    }

    private static void name(String text, Unit unit) {
        List<Unit> units = BY_NAME.computeIfAbsent(spelling(text), k -> new ArrayList<>());
        if (units.stream().anyMatch(u -> u.dimension() == unit.dimension())) {
            throw new IllegalStateException("two units of " + unit.dimension().words() + " are called " + text);
        }
        units.add(unit);
    }
}
