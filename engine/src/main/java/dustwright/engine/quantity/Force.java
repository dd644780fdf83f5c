package dustwright.engine.quantity;

/** Force [N]. */
public record Force(double newtons) implements Quantity, Comparable<Force> {
    public Force {
        Finite.atLeastZero("Force", newtons);
    }

    @Override
    public double si() {
        return newtons;
    }

    @Override
    public Dimension dimension() {
        return Dimension.FORCE;
    }

    @Override
    public int compareTo(Force other) {
        return Double.compare(newtons, other.newtons);
    }
}
