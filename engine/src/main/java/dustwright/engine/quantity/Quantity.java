package dustwright.engine.quantity;

/** A physical quantity: a finite number in SI and the kind of thing it measures. */
public sealed interface Quantity
        permits Length,
                Opening,
                Area,
                Capacitance,
                Volume,
                AbsolutePressure,
                PressureDifference,
                GaugePressure,
                Temperature,
                TemperatureRise,
                MassFlow,
                ActualVolumeFlow,
                FreeAirFlow,
                Velocity,
                TipSpeed,
                Power,
                Density,
                Mass,
                Angle,
                RotationalSpeed,
                Duration,
                WorkingTime,
                LeakCoefficient,
                FilterResistance,
                CakeResistance,
                ClothLoad,
                Stress,
                ExplosionConstant,
                SparkEnergy,
                ElectricResistance,
                Force,
                Torque,
                Viscosity,
                GasConstant,
                Ratio,
                Count,
                ElectricCurrent,
                Voltage,
                SupplyFrequency,
                ElectricPower,
                ElectricalEnergy,
                FreeAirVolume,
                Frequency,
                SoundPressureLevel,
                LevelDifference,
                Money,
                Price {
    /** The number in the SI unit of its {@link #dimension()}. */
    double si();

    /** What the number measures. */
    Dimension dimension();

    /** A unit of this kind as written behind this quantity: money puts its currency's name in. */
    default String named(String unit) {
        return unit;
    }

    /** Symbol of the SI unit. */
    default String siSymbol() {
        return named(dimension().siSymbol());
    }
}
