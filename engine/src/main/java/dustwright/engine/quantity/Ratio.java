package dustwright.engine.quantity;

/** A pure number: a fraction, an efficiency, a loss coefficient [-]. */
public record Ratio(double value) implements Quantity, Comparable<Ratio> {
    public Ratio {
        Finite.check("Ratio", value);
    }

    @Override
    public double si() {
        return value;
    }

    @Override
    public Dimension dimension() {
        return Dimension.RATIO;
    }

    @Override
    public int compareTo(Ratio other) {
        return Double.compare(value, other.value);
    }
}
