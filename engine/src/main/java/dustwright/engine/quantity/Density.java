package dustwright.engine.quantity;

/** Density of air or bulk density of dust [kg/m³]. */
public record Density(double kgPerCubicMetre) implements Quantity, Comparable<Density> {
    public Density {
        Finite.atLeastZero("Density", kgPerCubicMetre);
    }

    @Override
    public double si() {
        return kgPerCubicMetre;
    }

    @Override
    public Dimension dimension() {
        return Dimension.DENSITY;
    }

    @Override
    public int compareTo(Density other) {
        return Double.compare(kgPerCubicMetre, other.kgPerCubicMetre);
    }
}
