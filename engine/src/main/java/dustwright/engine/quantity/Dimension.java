package dustwright.engine.quantity;

import java.util.function.DoubleFunction;

/**
 * What a number measures. Kinds the trade confuses at its cost are kept apart: absolute pressure and vacuum, free air and actual
 * flow, temperature and temperature rise.
 */
public enum Dimension {
    LENGTH("length", "m", Length::new),
    OPENING("clear width", "m", Opening::new),
    AREA("area", "m²", Area::new),
    VOLUME("volume", "m³", Volume::new),
    ABSOLUTE_PRESSURE("absolute pressure", "Pa", AbsolutePressure::new),
    PRESSURE_DIFFERENCE("vacuum or pressure difference", "Pa", PressureDifference::new),
    GAUGE_PRESSURE("pressure over the barometer", "Pa", GaugePressure::new),
    TEMPERATURE("temperature", "K", Temperature::new),
    TEMPERATURE_RISE("temperature difference", "K", TemperatureRise::new),
    MASS_FLOW("mass flow", "kg/s", MassFlow::new),
    ACTUAL_FLOW("actual volume flow", "m³/s", ActualVolumeFlow::new),
    FREE_AIR_FLOW("free-air flow", "m³/s", FreeAirFlow::new),
    VELOCITY("velocity", "m/s", Velocity::new),
    TIP_SPEED("speed of blade tips", "m/s", TipSpeed::new),
    POWER("power", "W", Power::new),
    DENSITY("density", "kg/m³", Density::new),
    MASS("mass", "kg", Mass::new),
    ANGLE("angle", "rad", Angle::new),
    ROTATIONAL_SPEED("rotational speed", "1/s", RotationalSpeed::new),
    DURATION("time", "s", Duration::new),
    WORKING_TIME("working time", "s", WorkingTime::new),
    LEAK_COEFFICIENT("leak coefficient", "kg/(s·Pa)", LeakCoefficient::new),
    FILTER_RESISTANCE("filter resistance", "Pa·s/m", FilterResistance::new),
    CAKE_RESISTANCE("cake resistance", "1/s", CakeResistance::new),
    CLOTH_LOAD("mass over area", "kg/m²", ClothLoad::new),
    STRESS("stress", "Pa", Stress::new),
    EXPLOSION_CONSTANT("dust explosion constant", "Pa·m/s", ExplosionConstant::new),
    SPARK_ENERGY("spark energy", "J", SparkEnergy::new),
    RESISTANCE("electric resistance", "Ω", ElectricResistance::new),
    CAPACITANCE("capacitance", "F", Capacitance::new),
    FORCE("force", "N", Force::new),
    TORQUE("torque", "N·m", Torque::new),
    VISCOSITY("viscosity", "Pa·s", Viscosity::new),
    GAS_CONSTANT("gas constant", "J/(kg·K)", GasConstant::new),
    RATIO("ratio", "", Ratio::new),
    COUNT("number of pieces", "", Count::new),
    ELECTRIC_CURRENT("electric current", "A", ElectricCurrent::new),
    VOLTAGE("voltage", "V", Voltage::new),
    SUPPLY_FREQUENCY("supply frequency", "Hz", SupplyFrequency::new),
    ELECTRIC_POWER("electrical power", "W", ElectricPower::new),
    ENERGY("energy", "J", ElectricalEnergy::new),
    FREE_AIR_VOLUME("free-air volume", "m³ free", FreeAirVolume::new),
    FREQUENCY("how often", "1/s", Frequency::new),
    SOUND_LEVEL("sound level", "dBA", SoundPressureLevel::new),
    LEVEL_DIFFERENCE("difference of sound levels", "dB", LevelDifference::new),
    MONEY("amount of money", "¤", amount -> new Money(amount, Money.UNNAMED)),
    ENERGY_PRICE("price of energy", "¤/J", Price::ofEnergy),
    AIR_PRICE("price of compressed air", "¤/m³ free", Price::ofAir),
    TIME_PRICE("cost per time", "¤/s", Price::ofTime),
    LENGTH_PRICE("price per length", "¤/m", Price::ofLength);

    private final String words;
    private final String siSymbol;

    private final DoubleFunction<Quantity> fromSi;

    Dimension(String words, String siSymbol, DoubleFunction<Quantity> fromSi) {
        this.words = words;
        this.siSymbol = siSymbol;
        this.fromSi = fromSi;
    }

    /** The kind in plain words, for messages. */
    public String words() {
        return words;
    }

    /** Symbol of the SI unit. */
    public String siSymbol() {
        return siSymbol;
    }

    /** The quantity of this kind with the given SI number. */
    public Quantity of(double si) {
        return fromSi.apply(si);
    }
}
