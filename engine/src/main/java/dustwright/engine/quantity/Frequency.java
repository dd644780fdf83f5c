package dustwright.engine.quantity;

/** How often something happens, on the average of a long time [1/s]. */
public record Frequency(double perSecond) implements Quantity, Comparable<Frequency> {
    public Frequency {
        Finite.check("Frequency", perSecond);
    }

    @Override
    public double si() {
        return perSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.FREQUENCY;
    }

    @Override
    public int compareTo(Frequency other) {
        return Double.compare(perSecond, other.perSecond);
    }
}
