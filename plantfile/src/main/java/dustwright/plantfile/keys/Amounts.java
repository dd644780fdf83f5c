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
    static final Amount FILL = amount(Dimension.RATIO, "1 %", "100 %", "30 %");
    static final Amount VELOCITY = amount(Dimension.VELOCITY, "1 m/s", "150 m/s", "18 m/s");
    static final Amount SLOW_VELOCITY = amount(Dimension.VELOCITY, "0.001 m/s", "10 m/s", "5 ft/min");
    static final Amount BULK_DENSITY = amount(Dimension.DENSITY, "5 kg/m3", "12000 kg/m3", "550 kg/m3");
    static final Amount PARTICLE_SIZE = amount(Dimension.LENGTH, "0.001 mm", "20 mm", "0.06 mm");
    static final Amount PARTICLE_DENSITY = amount(Dimension.DENSITY, "50 kg/m3", "25000 kg/m3", "1450 kg/m3");
    static final Amount RISE_HEIGHT = amount(Dimension.LENGTH, "-200 m", "200 m", "5 m");
    static final Amount LEVEL_SPEED = amount(Dimension.RATIO, "5 %", "100 %", "40 %");
    static final Amount LOADING = amount(Dimension.RATIO, "0.01", "30", "1");
    static final Amount SALTATION_FACTOR = amount(Dimension.RATIO, "1", "5", "1.5");
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
    static final Amount ABSOLUTE = amount(Dimension.ABSOLUTE_PRESSURE, "1 kPa abs", "100 bar abs", "80 kPa abs");
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
    static final Amount MOTOR_TURNS = amount(Dimension.ROTATIONAL_SPEED, "100 rpm", "12000 rpm", "1765 rpm");
    static final Amount SLIP = amount(Dimension.ROTATIONAL_SPEED, "0 rpm", "2000 rpm", "130 rpm");
    static final Amount MOTOR = amount(Dimension.POWER, "0.1 kW", "1000 kW", "15 hp");
    static final Amount SMALL_MOTOR = amount(Dimension.POWER, "10 W", "20 kW", "1/2 hp");
    static final Amount IDLE = amount(Dimension.POWER, "0 kW", "1000 kW", "0.4 hp");
    static final Amount RISE = amount(Dimension.TEMPERATURE_RISE, "1 K", "400 K", "130 K");
    static final Amount SHEAVE = amount(Dimension.LENGTH, "30 mm", "2 m", "8 in");
    static final Amount BELT_SLIP = amount(Dimension.RATIO, "0 %", "5 %", "1 %");
    static final Amount MOTOR_SLIP = amount(Dimension.RATIO, "0 %", "8 %", "2 %");
    static final Amount SERVICE_FACTOR = amount(Dimension.RATIO, "1", "1.5", "1.15");
    static final Amount POWER_FACTOR = amount(Dimension.RATIO, "0.1", "1", "0.86");
    static final Amount CURRENT = amount(Dimension.ELECTRIC_CURRENT, "0.1 A", "2000 A", "18.5 A");
    static final Amount FAULT_CURRENT = amount(Dimension.ELECTRIC_CURRENT, "0.1 kA", "200 kA", "22 kA");
    static final Amount VOLTS = amount(Dimension.VOLTAGE, "100 V", "15 kV", "480 V");
    static final Amount HERTZ = amount(Dimension.SUPPLY_FREQUENCY, "50 Hz", "60 Hz", "60 Hz");
    static final Amount PANEL_INSIDE = amount(Dimension.TEMPERATURE, "30 degC", "70 degC", "50 degC");
    static final Amount PANEL_AIR = amount(Dimension.ACTUAL_FLOW, "1 m3/h", "10000 m3/h", "60 m3/h");
    static final Amount PANEL_HEAT = amount(Dimension.POWER, "1 W", "20 kW", "60 W");
    static final Amount PANEL_SURFACE = amount(Dimension.AREA, "0.1 m2", "50 m2", "3 m2");
    static final Amount SEAL_WATER = amount(Dimension.TEMPERATURE, "2 degC", "60 degC", "25 degC");
    static final Amount HALF_ANGLE = amount(Dimension.ANGLE, "5 deg", "60 deg", "30 deg");
    static final Amount WALL_FRICTION = amount(Dimension.ANGLE, "5 deg", "45 deg", "22 deg");
    static final Amount INTERNAL_FRICTION = amount(Dimension.ANGLE, "25 deg", "70 deg", "45 deg");
    static final Amount REPOSE = amount(Dimension.ANGLE, "15 deg", "85 deg", "42 deg");
    static final Amount STRENGTH = amount(Dimension.STRESS, "0.001 kPa", "1000 kPa", "1.5 kPa");
    static final Amount CAKE = amount(Dimension.CAKE_RESISTANCE, "1000 1/s", "1e7 1/s", "100000 1/s");
    static final Amount KST = amount(Dimension.EXPLOSION_CONSTANT, "0 bar.m/s", "2000 bar.m/s", "115 bar.m/s");
    static final Amount EXPLOSION_PRESSURE = amount(Dimension.GAUGE_PRESSURE, "0.5 bar", "25 bar", "9 bar");
    static final Amount IGNITION_ENERGY = amount(Dimension.SPARK_ENERGY, "0.01 mJ", "10 J", "50 mJ");
    static final Amount MACHINE_SURFACE = amount(Dimension.TEMPERATURE, "40 degC", "450 degC", "120 degC");

    static final Amount IGNITION = amount(Dimension.TEMPERATURE, "50 degC", "1200 degC", "380 degC");
    static final Amount EXPLOSIBLE = amount(Dimension.DENSITY, "1 g/m3", "2000 g/m3", "60 g/m3");
    static final Amount VENT_PRESSURE = amount(Dimension.GAUGE_PRESSURE, "0.01 bar", "10 bar", "0.4 bar");
    static final Amount VENT = amount(Dimension.AREA, "1 cm2", "100 m2", "0.5 m2");
    static final Amount VESSEL_VOLUME = amount(Dimension.VOLUME, "10 L", "1000 m3", "2.4 m3");
    static final Amount SLENDERNESS = amount(Dimension.RATIO, "1", "20", "1.8");
    static final Amount DUCT = amount(Dimension.LENGTH, "0 m", "20 m", "1 m");
    static final Amount VESSEL_AIR = amount(Dimension.VELOCITY, "0 m/s", "56 m/s", "5 m/s");
    static final Amount PANEL_MASS = amount(Dimension.CLOTH_LOAD, "0.1 kg/m2", "200 kg/m2", "10 kg/m2");
    static final Amount CLOUD_SHARE = amount(Dimension.RATIO, "1 %", "100 %", "50 %");
    static final Amount SAMPLE_SIZE = amount(Dimension.LENGTH, "0.0001 mm", "1 mm", "0.03 mm");
    static final Amount MOISTURE = amount(Dimension.RATIO, "0 %", "50 %", "5 %");
    static final Amount HOSE_RESISTANCE = amount(Dimension.RESISTANCE, "0.1 ohm", "1e12 ohm", "1e5 ohm");
    static final Amount PART_RESISTANCE = amount(Dimension.RESISTANCE, "0.001 ohm", "1e15 ohm", "10 ohm");
    static final Amount DEVICE_DISTANCE = amount(Dimension.LENGTH, "0 m", "50 m", "5 m");
    static final Amount LUMP = amount(Dimension.LENGTH, "0.01 mm", "200 mm", "10 mm");
    static final Amount OUTLET = amount(Dimension.LENGTH, "20 mm", "2 m", "250 mm");
    static final Amount SLOT = amount(Dimension.LENGTH, "10 mm", "1 m", "75 mm");
    static final Amount HEIGHT = amount(Dimension.LENGTH, "0.05 m", "20 m", "1.8 m");
    static final Amount SHEET = amount(Dimension.LENGTH, "0.5 mm", "50 mm", "3 mm");
    static final Amount GAP = amount(Dimension.LENGTH, "0.01 mm", "5 mm", "0.15 mm");
    static final Amount MARGIN = amount(Dimension.RATIO, "1", "20", "3");
    static final Amount SEPARATED = amount(Dimension.RATIO, "0 %", "99.9 %", "90 %");
    static final Amount DUST_TEMPERATURE = amount(Dimension.TEMPERATURE, "-40 degC", "300 degC", "60 degC");
    static final Amount TORQUE = amount(Dimension.TORQUE, "0.1 N.m", "100000 N.m", "120 N.m");
    static final Amount ACROSS_CLOTH = amount(Dimension.PRESSURE_DIFFERENCE, "0.5 kPa", "120 kPa", "20 inH2O");
    static final Amount ACROSS = amount(Dimension.PRESSURE_DIFFERENCE, "1 kPa", "500 kPa", "70 kPa");
    static final Amount RUNNING_TIME = amount(Dimension.DURATION, "1 min", "2000 h", "8 h");
    static final Amount AIR_FLOW = new Amount(
            List.of(
                    Range.of(Dimension.MASS_FLOW, "0 kg/s", "100 kg/s"),
                    Range.of(Dimension.FREE_AIR_FLOW, "0 m3/h free", "300000 m3/h free")),
            "0.05 kg/s");

    static final Amount CHANGE_TIME = amount(Dimension.DURATION, "0 s", "1 d", "10 min");
    static final Amount CONTAINER_LIFE = amount(Dimension.DURATION, "1 min", "3650 d", "8 h");
    static final Amount SHIFT = amount(Dimension.DURATION, "1 min", "24 h", "8 h");
    static final Amount CLEANING = amount(Dimension.DURATION, "0 s", "24 h", "30 min");
    static final Amount PICKED_UP = amount(Dimension.MASS, "0 kg", "100 t", "60 kg");
    static final Amount SOCK = amount(Dimension.AREA, "0.001 m2", "20 m2", "0.6 m2");
    static final Amount SEAL = amount(Dimension.GAUGE_PRESSURE, "0 psi", "60 psi", "4 psi");
    static final Amount SMALL_VOLUME = amount(Dimension.VOLUME, "0.01 L", "100 L", "4 L");
    static final Amount PALLET = amount(Dimension.LENGTH, "0 mm", "2 m", "150 mm");
    static final Amount ARMS = amount(Dimension.MASS, "1 kg", "5 t", "40 kg");
    static final Amount HEADROOM = amount(Dimension.LENGTH, "0.5 m", "20 m", "2.4 m");
    static final Amount BAG_SIDE = amount(Dimension.LENGTH, "50 mm", "5 m", "0.9 m");
    static final Amount EMPTY_BAG = amount(Dimension.MASS, "0.1 kg", "50 kg", "3 kg");
    static final Amount FILLED_SHARE = amount(Dimension.RATIO, "10 %", "100 %", "80 %");
    static final Amount ELECTRICITY = amount(Dimension.ENERGY_PRICE, "0 EUR/kWh", "100000 EUR/kWh", "0.12 EUR/kWh");
    static final Amount AIR_COST =
            amount(Dimension.AIR_PRICE, "0 EUR/m3 free", "10000 EUR/m3 free", "0.02 EUR/m3 free");
    static final Amount PIECE_COST = amount(Dimension.MONEY, "0 EUR", "1e9 EUR", "14 EUR");
    static final Amount TUBE_COST = amount(Dimension.LENGTH_PRICE, "0 EUR/m", "1e6 EUR/m", "45 EUR/m");
    static final Amount LABOUR = amount(Dimension.TIME_PRICE, "0 EUR/h", "1e7 EUR/h", "38 EUR/h");
    static final Amount UPKEEP = amount(Dimension.TIME_PRICE, "0 EUR/year", "1e10 EUR/year", "1500 EUR/year");
    static final Amount INVESTMENT = amount(Dimension.MONEY, "0 EUR", "1e11 EUR", "85000 EUR");
    static final Amount INTEREST = amount(Dimension.RATIO, "0 %", "50 %", "4 %");
    static final Amount GROWTH = amount(Dimension.RATIO, "-20 %", "50 %", "1 %");
    static final Amount PULSE = amount(Dimension.FREE_AIR_VOLUME, "0.1 L free", "1000 L free", "40 L free");
    static final Amount PULSES = amount(Dimension.FREQUENCY, "0 /h", "10000 /h", "120 /h");
    static final Amount SOUND_LEVEL = amount(Dimension.SOUND_LEVEL, "40 dBA", "140 dBA", "88 dBA");
    static final Amount INSERTION_LOSS = amount(Dimension.LEVEL_DIFFERENCE, "0 dB", "60 dB", "25 dB");
    static final Amount DISTANCE = amount(Dimension.LENGTH, "0.5 m", "500 m", "4 m");

    private static Amount amount(Dimension dimension, String least, String greatest, String example) {
        return new Amount(List.of(Range.of(dimension, least, greatest)), example);
    }
}
