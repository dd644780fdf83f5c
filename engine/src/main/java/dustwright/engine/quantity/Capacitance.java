package dustwright.engine.quantity;

/** Electric capacitance of an object to ground [F]. */
public record Capacitance(double farads) implements Quantity, Comparable<Capacitance> {
    public Capacitance {
        Finite.atLeastZero("Capacitance", farads);
    }

    @Override
    public double si() {
        return farads;
    }

    @Override
    public Dimension dimension() {
        return Dimension.CAPACITANCE;
    }

    @Override
    public int compareTo(Capacitance other) {
        return Double.compare(farads, other.farads);
    }
}
