package dustwright.engine.quantity;

/** An absolute temperature [K]. */
public record Temperature(double kelvin) implements Quantity, Comparable<Temperature> {
    public Temperature {
        Finite.atLeastZero("Temperature", kelvin);
    }

    @Override
    public double si() {
        return kelvin;
    }

    @Override
    public Dimension dimension() {
        return Dimension.TEMPERATURE;
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(kelvin, other.kelvin);
    }
}
