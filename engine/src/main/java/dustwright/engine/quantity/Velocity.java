package dustwright.engine.quantity;

/** Mean gas velocity at the local density [m/s]. */
public record Velocity(double metresPerSecond) implements Quantity, Comparable<Velocity> {
    public Velocity {
        Finite.check("Velocity", metresPerSecond);
    }

    @Override
    public double si() {
        return metresPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.VELOCITY;
    }

    @Override
    public int compareTo(Velocity other) {
        return Double.compare(metresPerSecond, other.metresPerSecond);
    }
}
