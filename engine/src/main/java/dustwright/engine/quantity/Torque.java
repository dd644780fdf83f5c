package dustwright.engine.quantity;

/** A torque [N·m]. */
public record Torque(double newtonMetres) implements Quantity, Comparable<Torque> {
    public Torque {
        Finite.atLeastZero("Torque", newtonMetres);
    }

    @Override
    public double si() {
        return newtonMetres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.TORQUE;
    }

    @Override
    public int compareTo(Torque other) {
        return Double.compare(newtonMetres, other.newtonMetres);
    }
}
