package dustwright.engine.quantity;

/** Turns per time [1/s]. */
public record RotationalSpeed(double revolutionsPerSecond) implements Quantity, Comparable<RotationalSpeed> {
    public RotationalSpeed {
        Finite.check("RotationalSpeed", revolutionsPerSecond);
    }

    @Override
    public double si() {
        return revolutionsPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ROTATIONAL_SPEED;
    }

    @Override
    public int compareTo(RotationalSpeed other) {
        return Double.compare(revolutionsPerSecond, other.revolutionsPerSecond);
    }

    public static RotationalSpeed ofRpm(double revolutionsPerMinute) {
        return new RotationalSpeed(revolutionsPerMinute / 60);
    }

    public double rpm() {
        return revolutionsPerSecond * 60;
    }
}
