package dustwright.engine.quantity;

/** C in the leak law w = C √(p_a² − p²) [kg/(s·Pa)]. */
public record LeakCoefficient(double kgPerSecondPascal) implements Quantity, Comparable<LeakCoefficient> {
    public LeakCoefficient {
        Finite.atLeastZero("LeakCoefficient", kgPerSecondPascal);
    }

    @Override
    public double si() {
        return kgPerSecondPascal;
    }

    @Override
    public Dimension dimension() {
        return Dimension.LEAK_COEFFICIENT;
    }

    @Override
    public int compareTo(LeakCoefficient other) {
        return Double.compare(kgPerSecondPascal, other.kgPerSecondPascal);
    }
}
