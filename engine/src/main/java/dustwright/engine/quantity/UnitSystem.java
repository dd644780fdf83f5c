package dustwright.engine.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Which units a reader wants, and to how many places a number of each kind is worth printing. Rounding is half up, digits and decimal
 * point are the same in every country. A vacuum ("inHg", "kPa") is counted below the site's barometer; absolute pressures say "abs",
 * free air says "scfm" or "free" (101 325 Pa, 20 °C, dry), actual flow says "acfm" or is a bare volume flow.
 */
public enum UnitSystem {
    /** kPa, m³/h, m. */
    SI(List.of(
            show(Dimension.LENGTH, "µm", 1, 0.0005),
            show(Dimension.LENGTH, "mm", 1, 0.5),
            show(Dimension.LENGTH, "m", 2),
            show(Dimension.OPENING, "mm", 1),
            show(Dimension.AREA, "cm2", 2, 0.05),
            show(Dimension.AREA, "m2", 4, 1),
            show(Dimension.AREA, "m2", 2),
            show(Dimension.VOLUME, "L", 2, 0.1),
            show(Dimension.VOLUME, "m3", 3),
            show(Dimension.ABSOLUTE_PRESSURE, "kPa abs", 2),
            show(Dimension.GAUGE_PRESSURE, "kPa", 1),
            show(Dimension.PRESSURE_DIFFERENCE, "Pa", 0, 1000),
            show(Dimension.PRESSURE_DIFFERENCE, "kPa", 2),
            show(Dimension.TEMPERATURE, "degC", 1),
            show(Dimension.TEMPERATURE_RISE, "K", 1),
            show(Dimension.MASS_FLOW, "kg/h", 1),
            show(Dimension.ACTUAL_FLOW, "m3/h", 1),
            show(Dimension.FREE_AIR_FLOW, "m3/h free", 1),
            show(Dimension.VELOCITY, "m/min", 2, 0.5),
            show(Dimension.VELOCITY, "m/s", 1),
            show(Dimension.TIP_SPEED, "m/s", 2),
            show(Dimension.POWER, "kW", 2),
            show(Dimension.DENSITY, "kg/m3", 3, 10),
            show(Dimension.DENSITY, "kg/m3", 0),
            show(Dimension.MASS, "kg", 3, 1),
            show(Dimension.MASS, "kg", 1),
            show(Dimension.FILTER_RESISTANCE, "Pa.s/m", 0),
            show(Dimension.FREE_AIR_VOLUME, "L free", 1, 1),
            show(Dimension.FREE_AIR_VOLUME, "m3 free", 1),
            show(Dimension.AIR_PRICE, "¤/m3 free", 4),
            show(Dimension.LENGTH_PRICE, "¤/m", 2),
            show(Dimension.CAKE_RESISTANCE, "1/s", 0),
            show(Dimension.CLOTH_LOAD, "kg/m2", 3),
            show(Dimension.STRESS, "kPa", 2, 1e6),
            show(Dimension.STRESS, "MPa", 1, 1e9),
            show(Dimension.STRESS, "GPa", 0),
            show(Dimension.FORCE, "kN", 1),
            show(Dimension.TORQUE, "N.m", 0))),
    /** inHg, scfm and acfm, ft and in. */
    US(List.of(
            show(Dimension.LENGTH, "µm", 1, 0.0005),
            show(Dimension.LENGTH, "in", 3, 0.3),
            show(Dimension.LENGTH, "ft", 1),
            show(Dimension.OPENING, "in", 2),
            show(Dimension.AREA, "in2", 2, 0.05),
            show(Dimension.AREA, "ft2", 3, 1),
            show(Dimension.AREA, "ft2", 1),
            show(Dimension.VOLUME, "ft3", 3),
            show(Dimension.ABSOLUTE_PRESSURE, "inHg abs", 2),
            show(Dimension.GAUGE_PRESSURE, "psi", 1),
            show(Dimension.PRESSURE_DIFFERENCE, "inH2O", 2, 1700),
            show(Dimension.PRESSURE_DIFFERENCE, "inHg", 2),
            show(Dimension.TEMPERATURE, "degF", 1),
            show(Dimension.TEMPERATURE_RISE, "degF rise", 1),
            show(Dimension.MASS_FLOW, "lb/h", 1),
            show(Dimension.ACTUAL_FLOW, "acfm", 1),
            show(Dimension.FREE_AIR_FLOW, "scfm", 1),
            show(Dimension.VELOCITY, "ft/min", 1, 0.5),
            show(Dimension.VELOCITY, "ft/min", 0),
            show(Dimension.TIP_SPEED, "ft/min", 1),
            show(Dimension.POWER, "hp", 2),
            show(Dimension.DENSITY, "lb/ft3", 4, 10),
            show(Dimension.DENSITY, "lb/ft3", 1),
            show(Dimension.MASS, "lb", 3, Units.POUND_kg),
            show(Dimension.MASS, "lb", 1),
            show(Dimension.FILTER_RESISTANCE, "inH2O/(ft/min)", 3),
            show(Dimension.FREE_AIR_VOLUME, "scf", 1),
            show(Dimension.AIR_PRICE, "¤/1000scf", 3),
            show(Dimension.LENGTH_PRICE, "¤/ft", 2),
            show(Dimension.CAKE_RESISTANCE, "inH2O/(ft/min)/(lb/ft2)", 1),
            show(Dimension.CLOTH_LOAD, "lb/ft2", 4),
            show(Dimension.STRESS, "psf", 1, 100_000),
            show(Dimension.STRESS, "psi", 0, 1e9),
            show(Dimension.STRESS, "Mpsi", 1),
            show(Dimension.FORCE, "lbf", 0),
            show(Dimension.TORQUE, "lbf.ft", 0)));

    private final List<Display> displays;

    UnitSystem(List<Display> own) {
        this.displays = Stream.concat(own.stream(), Common.ROWS.stream()).toList();
    }

    /** What is shown alike in both systems. */
    private static final class Common {
        private static final List<Display> ROWS = List.of(
                show(Dimension.ANGLE, "deg", 1),
                show(Dimension.ROTATIONAL_SPEED, "rpm", -1, 1 / 60.0),
                show(Dimension.ROTATIONAL_SPEED, "rpm", 2, 10 / 60.0),
                show(Dimension.ROTATIONAL_SPEED, "rpm", 0),
                show(Dimension.DURATION, "s", 2, 3),
                show(Dimension.DURATION, "s", 0, 120),
                show(Dimension.DURATION, "min", 0, 7200),
                show(Dimension.DURATION, "h", 1, 172_800),
                show(Dimension.DURATION, "d", 1),
                show(Dimension.WORKING_TIME, "s", 0, 120),
                show(Dimension.WORKING_TIME, "min", 0, 7200),
                show(Dimension.WORKING_TIME, "h", 1),
                show(Dimension.ELECTRIC_CURRENT, "A", 2, 10),
                show(Dimension.ELECTRIC_CURRENT, "A", 1, 1000),
                show(Dimension.ELECTRIC_CURRENT, "kA", 1),
                show(Dimension.VOLTAGE, "V", 0),
                show(Dimension.SUPPLY_FREQUENCY, "Hz", 0),
                show(Dimension.ELECTRIC_POWER, "W", 0),
                show(Dimension.ENERGY, "kWh", 3, 3.6e6),
                show(Dimension.ENERGY, "kWh", 1),
                show(Dimension.EXPLOSION_CONSTANT, "bar.m/s", 0),
                show(Dimension.SPARK_ENERGY, "mJ", 1),
                show(Dimension.RESISTANCE, "ohm", 0, 2e6),
                show(Dimension.RESISTANCE, "Mohm", 2),
                show(Dimension.CAPACITANCE, "pF", 0),
                show(Dimension.FREQUENCY, "/week", 4, 1 / 6.048e6),
                show(Dimension.FREQUENCY, "/week", 2),
                show(Dimension.SOUND_LEVEL, "dBA", 1),
                show(Dimension.LEVEL_DIFFERENCE, "dB", 1),
                show(Dimension.MONEY, "¤", 2, 100),
                show(Dimension.MONEY, "¤", 0),
                show(Dimension.ENERGY_PRICE, "¤/kWh", 4),
                show(Dimension.TIME_PRICE, "¤/h", 2));
    }

    /**
     * How quantities of one kind and size are shown.
     *
     * @param decimals places behind the point
     * @param below_si this row serves numbers smaller than this, in SI
     */
    public record Display(Unit unit, int decimals, double below_si) {}

    /**
     * A quantity as text.
     *
     * @param number digits with a decimal point, no grouping
     * @param unit with its reference state: "scfm", "inHg abs"; empty for a plain ratio
     */
    public record Text(String number, String unit) {
        @Override
        public String toString() {
            return unit.isEmpty() ? number : number + " " + unit;
        }
    }

    /** How a quantity is shown in this system. */
    public Display display(Quantity quantity) {
        return displays.stream()
                .filter(d -> d.unit().dimension() == quantity.dimension() && Math.abs(quantity.si()) < d.below_si())
                .findFirst()
                .orElseGet(() -> new Display(
                        new Unit(quantity.dimension().siSymbol(), quantity.dimension(), 1, 0, List.of()),
                        quantity.dimension() == Dimension.COUNT ? 0 : -1,
                        Double.POSITIVE_INFINITY));
    }

    /** Number and unit in this system, rounded for reading; kinds without a row keep SI and four figures. */
    public Text format(Quantity quantity) {
        Display display = display(quantity);
        BigDecimal number = BigDecimal.valueOf(display.unit().fromSi(quantity.si()));
        return new Text(
                rounded(number, display.decimals()),
                quantity.named(typographic(display.unit().symbol())));
    }

    private static String rounded(BigDecimal number, int decimals) {
        if (decimals < 0) {
            BigDecimal four =
                    number.round(new MathContext(4, RoundingMode.HALF_UP)).stripTrailingZeros();
            double size = Math.abs(four.doubleValue());
            boolean plain = size == 0 || (size >= 1e-4 && size < 1e7);
            return plain ? four.toPlainString() : four.toString().toLowerCase(Locale.ROOT);
        }
        BigDecimal rounded = number.setScale(decimals, RoundingMode.HALF_UP);
        return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
    }

    /** The unit as printed: {@code m³/h free}, {@code °C}. */
    private static String typographic(String symbol) {
        return symbol.replace("degC", "°C")
                .replace("degF", "°F")
                .replace("deg", "°")
                .replace("m3", "m³")
                .replace("ft3", "ft³")
                .replace("m2", "m²")
                .replace("ft2", "ft²")
                .replace("in2", "in²")
                .replace("H2O", "H₂O")
                .replace("Pa.s", "Pa·s")
                .replace("bar.m", "bar·m")
                .replace("Mohm", "MΩ")
                .replace("ohm", "Ω")
                .replace("N.m", "N·m")
                .replace("lbf.ft", "lbf·ft");
    }

    private static Display show(Dimension dimension, String unit, int decimals) {
        return show(dimension, unit, decimals, Double.POSITIVE_INFINITY);
    }

    private static Display show(Dimension dimension, String unit, int decimals, double below_si) {
        return new Display(Units.find(unit, dimension).orElseThrow(), decimals, below_si);
    }
}
