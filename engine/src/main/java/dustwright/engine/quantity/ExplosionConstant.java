package dustwright.engine.quantity;

/** Dust explosion constant Kst: greatest rate of pressure rise times the cube root of the volume [Pa m/s]. */
public record ExplosionConstant(double pascalMetresPerSecond) implements Quantity, Comparable<ExplosionConstant> {
    public ExplosionConstant {
        Finite.atLeastZero("ExplosionConstant", pascalMetresPerSecond);
    }

    @Override
    public double si() {
        return pascalMetresPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.EXPLOSION_CONSTANT;
    }

    @Override
    public int compareTo(ExplosionConstant other) {
        return Double.compare(pascalMetresPerSecond, other.pascalMetresPerSecond);
    }
}
