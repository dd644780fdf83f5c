package dustwright.engine.quantity;

/** A pressure over the site's barometer, as a gauge on compressed air or on an inflated seal shows it [Pa]. */
public record GaugePressure(double pascals) implements Quantity, Comparable<GaugePressure> {
    public GaugePressure {
        Finite.atLeastZero("GaugePressure", pascals);
    }

    @Override
    public double si() {
        return pascals;
    }

    @Override
    public Dimension dimension() {
        return Dimension.GAUGE_PRESSURE;
    }

    @Override
    public int compareTo(GaugePressure other) {
        return Double.compare(pascals, other.pascals);
    }
}
