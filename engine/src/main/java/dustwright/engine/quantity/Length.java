package dustwright.engine.quantity;

/** A length or distance [m]. */
public record Length(double metres) implements Quantity, Comparable<Length> {
    public Length {
        Finite.check("Length", metres);
    }

    @Override
    public double si() {
        return metres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.LENGTH;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(metres, other.metres);
    }

    public static Length ofMillimetres(double millimetres) {
        return new Length(millimetres / 1000);
    }

    /** Cross-section of a circle of this diameter. */
    public Area circle() {
        return new Area(Math.PI / 4 * metres * metres);
    }
}
