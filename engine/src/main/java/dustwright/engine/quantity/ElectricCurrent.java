package dustwright.engine.quantity;

/** Electric current in one line conductor [A]. */
public record ElectricCurrent(double amperes) implements Quantity, Comparable<ElectricCurrent> {
    public ElectricCurrent {
        Finite.check("ElectricCurrent", amperes);
    }

    @Override
    public double si() {
        return amperes;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ELECTRIC_CURRENT;
    }

    @Override
    public int compareTo(ElectricCurrent other) {
        return Double.compare(amperes, other.amperes);
    }
}
