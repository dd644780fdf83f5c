package dustwright.engine.quantity;

/** A physical quantity: a finite number in SI and the kind of thing it measures. */
public sealed interface Quantity
        permits Length,
                Area,
                Volume,
                AbsolutePressure,
                PressureDifference,
                Temperature,
                TemperatureRise,
                MassFlow,
                ActualVolumeFlow,
                FreeAirFlow,
                Velocity,
                Power,
                Density,
                Mass,
                Angle,
                RotationalSpeed,
                Duration,
                LeakCoefficient,
                FilterResistance,
                Viscosity,
                GasConstant,
                Ratio {
    /** The number in the SI unit of its {@link #dimension()}. */
    double si();

    /** What the number measures. */
    Dimension dimension();
}
