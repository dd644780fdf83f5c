package dustwright.engine.quantity;

/** Volume flow at the pressure and temperature of a named place [m³/s actual]. Not free air. */
public record ActualVolumeFlow(double cubicMetresPerSecond) implements Quantity, Comparable<ActualVolumeFlow> {
    public ActualVolumeFlow {
        Finite.check("ActualVolumeFlow", cubicMetresPerSecond);
    }

    @Override
    public double si() {
        return cubicMetresPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ACTUAL_FLOW;
    }

    @Override
    public int compareTo(ActualVolumeFlow other) {
        return Double.compare(cubicMetresPerSecond, other.cubicMetresPerSecond);
    }
}
