package dustwright.plantfile.keys;

import dustwright.engine.quantity.Dimension;
import dustwright.plantfile.keys.Shape.Amount;
import dustwright.plantfile.keys.Shape.Range;
import java.util.List;

/**
 * Amounts with what is sensible for each. The bounds catch slips of a decimal point or a unit; they are no design limits.
 */
final class Amounts {
    private Amounts() {}

    static final Shape TITLE = new Shape.Text(120);
    static final Shape NOTE = new Shape.Text(2000);

    static final Amount ALTITUDE = amount(Dimension.LENGTH, "-430 m", "5500 m", "120 m");
    static final Amount BAROMETER = amount(Dimension.ABSOLUTE_PRESSURE, "45 kPa abs", "110 kPa abs", "29.5 inHg abs");
    static final Amount AIR_TEMPERATURE = amount(Dimension.TEMPERATURE, "-40 degC", "60 degC", "20 degC");
    static final Amount SHARE = amount(Dimension.RATIO, "0 %", "100 %", "50 %");
    static final Amount VELOCITY = amount(Dimension.VELOCITY, "1 m/s", "150 m/s", "18 m/s");
    static final Amount SLOW_VELOCITY = amount(Dimension.VELOCITY, "0.001 m/s", "10 m/s", "5 ft/min");
    static final Amount BULK_DENSITY = amount(Dimension.DENSITY, "5 kg/m3", "12000 kg/m3", "550 kg/m3");
    static final Amount AIR_DENSITY = amount(Dimension.DENSITY, "0.2 kg/m3", "2 kg/m3", "1.2 kg/m3");
    static final Amount BORE = amount(Dimension.LENGTH, "5 mm", "1 m", "3 in");
    static final Amount THICKNESS = amount(Dimension.LENGTH, "0.2 mm", "25 mm", "0.065 in");
    static final Amount ROUGHNESS = amount(Dimension.LENGTH, "0 mm", "5 mm", "0.045 mm");
    static final Amount PITCH = amount(Dimension.LENGTH, "1 mm", "50 mm", "6 mm");
    static final Amount FRICTION = amount(Dimension.RATIO, "0", "1", "0.02");
    static final Amount HOSE_LENGTH = amount(Dimension.LENGTH, "0.5 m", "60 m", "25 ft");
    static final Amount RUN_LENGTH = amount(Dimension.LENGTH, "1 mm", "3 km", "24 m");
    static final Amount BEND_RADIUS = amount(Dimension.LENGTH, "5 mm", "5 m", "300 mm");
    static final Amount WYE = amount(Dimension.ANGLE, "30 deg", "90 deg", "45 deg");
    static final Amount LOSS = amount(Dimension.RATIO, "0", "1000", "0.5");
    static final Amount SIGNED_LOSS = amount(Dimension.RATIO, "-10", "1e6", "1.2");
    static final Amount FACTOR = amount(Dimension.RATIO, "0.5", "3", "1.1");
    static final Amount COEFFICIENT = amount(Dimension.RATIO, "0.1", "1", "0.6");
    static final Amount EFFICIENCY = amount(Dimension.RATIO, "0.3", "1", "0.9");
    static final Amount OPENING = amount(Dimension.AREA, "1 mm2", "1 m2", "4 cm2");
    static final Amount SMALL_DIAMETER = amount(Dimension.LENGTH, "1 mm", "500 mm", "75 mm");
    static final Amount VESSEL = amount(Dimension.LENGTH, "0.1 m", "6 m", "1.2 m");
    static final Amount CLOTH = amount(Dimension.AREA, "0.01 m2", "1000 m2", "95 ft2");
    static final Amount VACUUM = amount(Dimension.PRESSURE_DIFFERENCE, "0.01 kPa", "100 kPa", "7 inHg");
    static final Amount CURVE_VACUUM = amount(Dimension.PRESSURE_DIFFERENCE, "0 kPa", "100 kPa", "5 inHg");
    static final Amount LOSS_PRESSURE = amount(Dimension.PRESSURE_DIFFERENCE, "0 kPa", "30 kPa", "4 inH2O");
    static final Amount ABSOLUTE = amount(Dimension.ABSOLUTE_PRESSURE, "1 kPa abs", "10 bar abs", "80 kPa abs");
    static final Amount FREE_AIR = amount(Dimension.FREE_AIR_FLOW, "0.1 m3/h free", "100000 m3/h free", "100 scfm");
    static final Amount ACTUAL_FLOW = amount(Dimension.ACTUAL_FLOW, "1 m3/h", "100000 m3/h", "450 acfm");
    static final Amount CURVE_FLOW = amount(Dimension.ACTUAL_FLOW, "0 m3/h", "100000 m3/h", "300 acfm");
    static final Amount FEED = amount(Dimension.MASS_FLOW, "0 kg/h", "20000 kg/h", "60 kg/h");
    static final Amount LEAK = amount(Dimension.LEAK_COEFFICIENT, "0 kg/(s.Pa)", "1e-5 kg/(s.Pa)", "8e-9 kg/(s.Pa)");
    static final Amount FILTER_RESISTANCE =
            amount(Dimension.FILTER_RESISTANCE, "0 Pa.s/m", "1e6 Pa.s/m", "40000 Pa.s/m");
    static final Amount POCKETS = amount(Dimension.VOLUME, "0.1 L", "1 m3", "0.0113 m3");
    static final Amount DISPLACEMENT = amount(Dimension.VOLUME, "0.05 L", "1 m3", "0.0076 m3");
    static final Amount CONTAINER_VOLUME = amount(Dimension.VOLUME, "1 L", "50 m3", "0.9 m3");
    static final Amount CONTAINER_MASS = amount(Dimension.MASS, "1 kg", "50000 kg", "1000 kg");
    static final Amount SLOW_ROTATION = amount(Dimension.ROTATIONAL_SPEED, "0.1 rpm", "200 rpm", "15 rpm");
    static final Amount ROTATION = amount(Dimension.ROTATIONAL_SPEED, "10 rpm", "60000 rpm", "1860 rpm");
    static final Amount SLIP = amount(Dimension.ROTATIONAL_SPEED, "0 rpm", "2000 rpm", "130 rpm");
    static final Amount MOTOR = amount(Dimension.POWER, "0.1 kW", "1000 kW", "15 hp");
    static final Amount IDLE = amount(Dimension.POWER, "0 kW", "1000 kW", "0.4 hp");
    static final Amount RISE = amount(Dimension.TEMPERATURE_RISE, "1 K", "400 K", "130 K");
    static final Amount SHEAVE = amount(Dimension.LENGTH, "30 mm", "2 m", "8 in");
    static final Amount BELT_SLIP = amount(Dimension.RATIO, "0 %", "5 %", "1 %");
    static final Amount SERVICE_FACTOR = amount(Dimension.RATIO, "1", "1.5", "1.15");
    static final Amount POWER_FACTOR = amount(Dimension.RATIO, "0.1", "1", "0.86");
    static final Amount CURRENT = amount(Dimension.ELECTRIC_CURRENT, "0.1 A", "2000 A", "18.5 A");
    static final Amount SEAL_WATER = amount(Dimension.TEMPERATURE, "2 degC", "60 degC", "25 degC");
    static final Amount AIR_FLOW = new Amount(
            List.of(
                    Range.of(Dimension.MASS_FLOW, "0 kg/s", "100 kg/s"),
                    Range.of(Dimension.FREE_AIR_FLOW, "0 m3/h free", "300000 m3/h free")),
            "0.05 kg/s");

    private static Amount amount(Dimension dimension, String least, String greatest, String example) {
        return new Amount(List.of(Range.of(dimension, least, greatest)), example);
    }
}
