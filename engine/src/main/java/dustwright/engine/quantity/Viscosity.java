package dustwright.engine.quantity;

/** Dynamic viscosity [Pa·s]. */
public record Viscosity(double pascalSeconds) implements Quantity, Comparable<Viscosity> {
    public Viscosity {
        Finite.atLeastZero("Viscosity", pascalSeconds);
    }

    @Override
    public double si() {
        return pascalSeconds;
    }

    @Override
    public Dimension dimension() {
        return Dimension.VISCOSITY;
    }

    @Override
    public int compareTo(Viscosity other) {
        return Double.compare(pascalSeconds, other.pascalSeconds);
    }
}
