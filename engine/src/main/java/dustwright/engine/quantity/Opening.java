package dustwright.engine.quantity;

/** Clear width of an opening that dust falls through, of a hopper, a valve's throat [m]: told in inches or millimetres however wide it is. */
public record Opening(double metres) implements Quantity, Comparable<Opening> {
    public Opening {
        Finite.check("Opening", metres);
    }

    public Opening(Length width) {
        this(width.metres());
    }

    @Override
    public double si() {
        return metres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.OPENING;
    }

    @Override
    public int compareTo(Opening other) {
        return Double.compare(metres, other.metres);
    }
}
