package dustwright.engine.quantity;

/** Mechanical or electrical power [W]. */
public record Power(double watts) implements Quantity, Comparable<Power> {
    public Power {
        Finite.check("Power", watts);
    }

    @Override
    public double si() {
        return watts;
    }

    @Override
    public Dimension dimension() {
        return Dimension.POWER;
    }

    @Override
    public int compareTo(Power other) {
        return Double.compare(watts, other.watts);
    }
}
