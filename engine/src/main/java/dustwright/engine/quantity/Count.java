package dustwright.engine.quantity;

/** How many of something. */
public record Count(double number) implements Quantity, Comparable<Count> {
    public Count {
        Finite.atLeastZero("Count", number);
        if (number != Math.rint(number)) {
            throw new IllegalArgumentException("Count must be a whole number, not " + number);
        }
    }

    @Override
    public double si() {
        return number;
    }

    @Override
    public Dimension dimension() {
        return Dimension.COUNT;
    }

    /** What is counted stands beside the number: no unit is written. */
    @Override
    public String named(String unit) {
        return "";
    }

    @Override
    public int compareTo(Count other) {
        return Double.compare(number, other.number);
    }
}
