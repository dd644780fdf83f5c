package dustwright.engine.quantity;

/** A difference of two temperatures [K]. */
public record TemperatureRise(double kelvin) implements Quantity, Comparable<TemperatureRise> {
    public TemperatureRise {
        Finite.check("TemperatureRise", kelvin);
    }

    @Override
    public double si() {
        return kelvin;
    }

    @Override
    public Dimension dimension() {
        return Dimension.TEMPERATURE_RISE;
    }

    @Override
    public int compareTo(TemperatureRise other) {
        return Double.compare(kelvin, other.kelvin);
    }
}
