package dustwright.engine.quantity;

/** Speed of the tips of a rotor's blades [m/s]: told in one unit however slowly it turns, unlike the velocities of air. */
public record TipSpeed(double metresPerSecond) implements Quantity, Comparable<TipSpeed> {
    public TipSpeed {
        Finite.check("TipSpeed", metresPerSecond);
    }

    @Override
    public double si() {
        return metresPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.TIP_SPEED;
    }

    @Override
    public int compareTo(TipSpeed other) {
        return Double.compare(metresPerSecond, other.metresPerSecond);
    }
}
