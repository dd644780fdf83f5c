package dustwright.engine.quantity;

/** Stress in a solid or a powder, its strength, or the stiffness of a material [Pa]. */
public record Stress(double pascals) implements Quantity, Comparable<Stress> {
    public Stress {
        Finite.atLeastZero("Stress", pascals);
    }

    @Override
    public double si() {
        return pascals;
    }

    @Override
    public Dimension dimension() {
        return Dimension.STRESS;
    }

    @Override
    public int compareTo(Stress other) {
        return Double.compare(pascals, other.pascals);
    }
}
