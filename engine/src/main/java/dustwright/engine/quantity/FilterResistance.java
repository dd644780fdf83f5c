package dustwright.engine.quantity;

/** Pressure drop of a filter over its filtration velocity [Pa·s/m]. */
public record FilterResistance(double pascalSecondsPerMetre) implements Quantity, Comparable<FilterResistance> {
    public FilterResistance {
        Finite.atLeastZero("FilterResistance", pascalSecondsPerMetre);
    }

    @Override
    public double si() {
        return pascalSecondsPerMetre;
    }

    @Override
    public Dimension dimension() {
        return Dimension.FILTER_RESISTANCE;
    }

    @Override
    public int compareTo(FilterResistance other) {
        return Double.compare(pascalSecondsPerMetre, other.pascalSecondsPerMetre);
    }
}
