package dustwright.engine.quantity;

/** Electric resistance [Ω]. */
public record ElectricResistance(double ohms) implements Quantity, Comparable<ElectricResistance> {
    public ElectricResistance {
        Finite.atLeastZero("ElectricResistance", ohms);
    }

    @Override
    public double si() {
        return ohms;
    }

    @Override
    public Dimension dimension() {
        return Dimension.RESISTANCE;
    }

    @Override
    public int compareTo(ElectricResistance other) {
        return Double.compare(ohms, other.ohms);
    }
}
