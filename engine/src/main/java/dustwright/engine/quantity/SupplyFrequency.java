package dustwright.engine.quantity;

/** Frequency of an electrical supply [Hz]. */
public record SupplyFrequency(double hertz) implements Quantity, Comparable<SupplyFrequency> {
    public SupplyFrequency {
        Finite.check("SupplyFrequency", hertz);
    }

    @Override
    public double si() {
        return hertz;
    }

    @Override
    public Dimension dimension() {
        return Dimension.SUPPLY_FREQUENCY;
    }

    @Override
    public int compareTo(SupplyFrequency other) {
        return Double.compare(hertz, other.hertz);
    }
}
