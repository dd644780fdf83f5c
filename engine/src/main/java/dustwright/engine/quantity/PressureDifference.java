package dustwright.engine.quantity;

/** A difference of two pressures, or a vacuum: how far below the site barometer [Pa]. */
public record PressureDifference(double pascals) implements Quantity, Comparable<PressureDifference> {
    public PressureDifference {
        Finite.check("PressureDifference", pascals);
    }

    @Override
    public double si() {
        return pascals;
    }

    @Override
    public Dimension dimension() {
        return Dimension.PRESSURE_DIFFERENCE;
    }

    @Override
    public int compareTo(PressureDifference other) {
        return Double.compare(pascals, other.pascals);
    }
}
