package dustwright.engine.quantity;

/** A pressure counted from perfect vacuum [Pa abs]. Never a vacuum reading: that is a {@link PressureDifference}. */
public record AbsolutePressure(double pascals) implements Quantity, Comparable<AbsolutePressure> {
    public AbsolutePressure {
        Finite.atLeastZero("AbsolutePressure", pascals);
    }

    @Override
    public double si() {
        return pascals;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ABSOLUTE_PRESSURE;
    }

    @Override
    public int compareTo(AbsolutePressure other) {
        return Double.compare(pascals, other.pascals);
    }

    /** Absolute − difference = absolute. */
    public AbsolutePressure minus(PressureDifference lower) {
        return new AbsolutePressure(pascals - lower.pascals());
    }

    /** How far the other pressure lies below this one (its vacuum, if this is the site barometer). */
    public PressureDifference above(AbsolutePressure other) {
        return new PressureDifference(pascals - other.pascals);
    }
}
