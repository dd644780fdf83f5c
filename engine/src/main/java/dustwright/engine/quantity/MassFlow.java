package dustwright.engine.quantity;

/** Mass per time, of air or of dust [kg/s]. */
public record MassFlow(double kgPerSecond) implements Quantity, Comparable<MassFlow> {
    public MassFlow {
        Finite.check("MassFlow", kgPerSecond);
    }

    @Override
    public double si() {
        return kgPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.MASS_FLOW;
    }

    @Override
    public int compareTo(MassFlow other) {
        return Double.compare(kgPerSecond, other.kgPerSecond);
    }
}
