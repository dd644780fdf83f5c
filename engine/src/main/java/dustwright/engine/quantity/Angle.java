package dustwright.engine.quantity;

/** An angle [rad]. */
public record Angle(double radians) implements Quantity, Comparable<Angle> {
    public Angle {
        Finite.check("Angle", radians);
    }

    @Override
    public double si() {
        return radians;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ANGLE;
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(radians, other.radians);
    }

    public static Angle ofDegrees(double degrees) {
        return new Angle(Math.toRadians(degrees));
    }

    public double degrees() {
        return Math.toDegrees(radians);
    }
}
