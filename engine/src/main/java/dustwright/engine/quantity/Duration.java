package dustwright.engine.quantity;

/** A span of time [s]. */
public record Duration(double seconds) implements Quantity, Comparable<Duration> {
    public Duration {
        Finite.check("Duration", seconds);
    }

    @Override
    public double si() {
        return seconds;
    }

    @Override
    public Dimension dimension() {
        return Dimension.DURATION;
    }

    @Override
    public int compareTo(Duration other) {
        return Double.compare(seconds, other.seconds);
    }
}
