package dustwright.engine.quantity;

/** Specific gas constant of the moist air [J/(kg·K)]. */
public record GasConstant(double joulesPerKilogramKelvin) implements Quantity, Comparable<GasConstant> {
    public GasConstant {
        Finite.atLeastZero("GasConstant", joulesPerKilogramKelvin);
    }

    @Override
    public double si() {
        return joulesPerKilogramKelvin;
    }

    @Override
    public Dimension dimension() {
        return Dimension.GAS_CONSTANT;
    }

    @Override
    public int compareTo(GasConstant other) {
        return Double.compare(joulesPerKilogramKelvin, other.joulesPerKilogramKelvin);
    }
}
