package dustwright.engine.quantity;

/** A mass [kg]. */
public record Mass(double kilograms) implements Quantity, Comparable<Mass> {
    public Mass {
        Finite.check("Mass", kilograms);
    }

    @Override
    public double si() {
        return kilograms;
    }

    @Override
    public Dimension dimension() {
        return Dimension.MASS;
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(kilograms, other.kilograms);
    }
}
